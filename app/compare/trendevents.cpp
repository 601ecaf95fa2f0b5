#include "compare/trendchart.h"
#include "parts/textsize.h"
#include "shell/theme.h"

#include <algorithm>
#include <QPainter>

// What happened between the visits: one lane of marks and words above the rows, or a few.

namespace rhizograph::app {
namespace {

constexpr int mostLanes = 3;   ///< with words; marks that find no room for theirs stand in one more
constexpr qreal longest = 200; ///< px of words at 100 % text
constexpr qreal mark = 5;      ///< half the side of a mark

} // namespace

void TrendChart::placeEvents() {
    eventMarks_.clear();
    lanes_ = 0;
    if (!axis_.dated() || visits_.empty()) return;
    const QFontMetricsF metrics(sized(this, 15));
    const qreal begin = left() - grown(this, 60);
    const qreal end = width() - 8;
    std::vector<qreal> free(mostLanes, begin); // right end of what stands in each lane
    for (std::size_t i = 0; i < events_.size(); ++i) {
        const QDate date = dateOf(events_[i].date);
        const auto onAxis = axis_.day(date);
        const bool before = axis_.before(date);
        const qreal x = onAxis ? *onAxis : before ? left() - 14.0 : right() + 14.0;
        QString label = metrics.elidedText(events_[i].words, Qt::ElideRight, longest * textScale(this));
        // Of what lies outside the visits the day is not seen, so it is said.
        if (!onAxis)
            label +=
                QStringLiteral(" ") + QLocale(QLocale::English).toString(date, QStringLiteral("MMM yyyy"));
        const qreal wide = metrics.horizontalAdvance(label) + 4;
        const bool leftward = x + mark + 6 + wide > end;
        const qreal from = leftward ? x - mark - 6 - wide : x - mark;
        const auto fits = std::find_if(free.begin(), free.end(), [&](qreal at) { return from >= at + 6; });
        const auto lane = static_cast<int>(fits - free.begin());
        const qreal y = visitsHeight() + (lane + 0.5) * laneHeight();
        EventMark placed{i, {x, y}, {}, {}, onAxis.has_value()};
        if (fits != free.end()) {
            placed.label = label;
            placed.words = QRectF(leftward ? from : x + mark + 6, y - laneHeight() / 2.0, wide, laneHeight());
            *fits = leftward ? x + mark : placed.words.right();
        }
        lanes_ = std::max(lanes_, lane + 1);
        eventMarks_.push_back(placed);
    }
}

void TrendChart::paintEvents(QPainter& painter) const {
    const Theme& theme = Theme::of(this);
    const qreal foot = rowBox(rows_.size()).top();
    for (const EventMark& each : eventMarks_) {
        if (!each.onAxis) continue;
        painter.setPen(QPen(theme.ochre, 1.4, Qt::DashDotLine));
        painter.drawLine(each.at, QPointF(each.at.x(), foot));
    }
    painter.setFont(sized(this, 15));
    for (const EventMark& each : eventMarks_) {
        const bool awaited = events_[each.event].awaited;
        painter.setPen(QPen(theme.ochre, 1.8));
        painter.setBrush(awaited ? theme.raised : theme.ochre);
        painter.drawRect(QRectF(each.at.x() - mark, each.at.y() - mark, 2 * mark, 2 * mark));
        if (each.label.isEmpty()) continue;
        painter.fillRect(each.words.adjusted(-2, 3, 2, -3), theme.raised);
        painter.setPen(theme.ochreInk);
        painter.drawText(each.words, Qt::AlignVCenter | Qt::AlignLeft, each.label);
    }
}

} // namespace rhizograph::app
