#include "compare/changemark.h"
#include "compare/trendchart.h"
#include "parts/button.h"
#include "parts/textsize.h"

#include <algorithm>
#include <cmath>
#include <QLocale>
#include <QPainter>
#include <QPaintEvent>

// How the course over all visits is painted.

namespace rhizograph::app {

void TrendChart::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    paintTo(painter, event->rect());
    if (hasFocus() && focus_ >= 0)
        paintFocusRing(painter, QRectF(cell(focus_).rect).adjusted(10, 10, -10, -10), 8, Theme::of(this));
}

void TrendChart::paintTo(QPainter& painter, const QRect& part) const {
    painter.setRenderHint(QPainter::Antialiasing);
    if (visits_.empty()) return;
    paintHead(painter);
    for (std::size_t row = 0; row < rows_.size(); ++row)
        if (rowBox(row).toAlignedRect().intersects(part)) paintRow(painter, row);
}

void TrendChart::paintHead(QPainter& painter) const {
    const Theme& theme = Theme::of(this);
    painter.setFont(sized(this, 15));
    painter.setPen(theme.quiet);
    painter.drawText(QRect(16, 0, left(), visitsHeight()), Qt::AlignVCenter | Qt::AlignLeft, tr("Visit"));
    painter.setPen(QPen(theme.line, 1));
    for (std::size_t visit = 0; visit < visits_.size(); ++visit) {
        const qreal x = xOf(visit);
        painter.drawLine(QPointF(x, visitsHeight()), QPointF(x, rowBox(rows_.size()).top()));
    }
    paintVisitNames(painter);
    paintEvents(painter);
}

/// The number of each visit over its day; of visits too close for that, the last and every one that has room.
void TrendChart::paintVisitNames(QPainter& painter) const {
    const Theme& theme = Theme::of(this);
    const QFont small = sized(this, 15);
    const QFontMetricsF metrics(small);
    const QString form = axis_.severalYears() ? QStringLiteral("d MMM yy") : QStringLiteral("d MMM");
    const auto dayOf = [&](std::size_t visit) {
        return QLocale(QLocale::English).toString(dateOf(visits_[visit].date), form);
    };
    const auto widthOf = [&](std::size_t visit) {
        return std::max(metrics.horizontalAdvance(dayOf(visit)), metrics.horizontalAdvance(u'9') * 3) + 8;
    };
    const std::size_t last = visits_.size() - 1;
    const qreal kept = xOf(last) - widthOf(last) / 2; // the last visit's name always shows
    qreal free = left() - 60;
    for (std::size_t visit = 0; visit <= last; ++visit) {
        const qreal wide = widthOf(visit);
        const qreal x = xOf(visit);
        if (x - wide / 2 < free || (visit != last && x + wide / 2 > kept)) continue;
        const qreal half = visitsHeight() / 2.0;
        painter.setFont(small);
        painter.setPen(theme.quiet);
        painter.drawText(QRectF(x - wide / 2, half, wide, half - 2), Qt::AlignCenter, dayOf(visit));
        painter.setFont(sized(this, 15, QFont::DemiBold));
        painter.setPen(theme.ink);
        painter.drawText(QRectF(x - wide / 2, 2, wide, half - 1), Qt::AlignCenter,
                         QString::number(visits_[visit].number));
        free = x + wide / 2 + 2;
    }
}

void TrendChart::paintRow(QPainter& painter, std::size_t index) const {
    const Theme& theme = Theme::of(this);
    const TrendRow& row = rows_[index];
    const QRectF box = rowBox(index);
    if (row.id == chosen_) {
        QColor over = theme.spruce;
        over.setAlphaF(0.1F);
        painter.fillRect(box, over);
        painter.fillRect(QRectF(0, box.top(), 5, box.height()), theme.spruce);
    }
    painter.fillRect(QRectF(0, box.top(), width(), 1), theme.line);
    const QRectF name(16, box.top() + 6, nameRoom(), box.height() - 12);
    painter.setFont(sized(this, 15, QFont::DemiBold));
    painter.setPen(theme.ink);
    const QRectF used = painter.boundingRect(name, Qt::AlignLeft | Qt::TextWordWrap, row.title);
    painter.setFont(sized(this, 15));
    const QRectF unit = painter.boundingRect(name, Qt::AlignLeft | Qt::TextWordWrap, row.unit);
    const qreal top = box.center().y() - std::min(name.height(), used.height() + unit.height()) / 2;
    painter.setFont(sized(this, 15, QFont::DemiBold));
    painter.drawText(QRectF(name.left(), top, name.width(), used.height()), Qt::AlignLeft | Qt::TextWordWrap,
                     row.title);
    painter.setFont(sized(this, 15));
    painter.setPen(theme.quiet);
    painter.drawText(QRectF(name.left(), top + used.height(), name.width(), unit.height()),
                     Qt::AlignLeft | Qt::TextWordWrap, row.unit);

    qreal above = box.bottom() + 20; // ticks written so far, from the bottom up
    for (const auto& [at, label] : row.ticks) {
        const qreal y = yOf(row, box, at);
        if (y < box.top() + 4 || y > box.bottom() - 4) continue;
        painter.setPen(QPen(theme.line, 1, Qt::DotLine));
        painter.drawLine(QPointF(left(), y), QPointF(right(), y));
        if (above - y < painter.fontMetrics().height()) continue;
        painter.setPen(theme.quiet);
        const int high = grown(this, 24);
        const int wide = grown(this, 60);
        painter.drawText(QRectF(left() - 10 - wide, y - high / 2.0, wide, high),
                         Qt::AlignVCenter | Qt::AlignRight, label);
        above = y;
    }
    for (const TrendLine& line : row.lines)
        paintLine(painter, row, line, box);
    for (const TrendLine& line : row.lines)
        paintMarks(painter, row, line, box);
    paintValues(painter, row, box);
}

void TrendChart::paintLine(QPainter& painter, const TrendRow& row, const TrendLine& line,
                           const QRectF& box) const {
    const Theme& theme = Theme::of(this);
    const QColor color = line.dashed ? theme.quiet : theme.ink;
    const std::size_t count = std::min(line.place.size(), visits_.size());
    // Not examined at a visit: no line across the gap, which would claim to know.
    for (std::size_t visit = 1; visit < count; ++visit) {
        if (!line.place[visit] || !line.place[visit - 1]) continue;
        painter.setPen(QPen(color, 2.4, line.dashed ? Qt::DashLine : Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(xOf(visit - 1), yOf(row, box, *line.place[visit - 1])),
                         QPointF(xOf(visit), yOf(row, box, *line.place[visit])));
    }
    for (std::size_t visit = 0; visit < count; ++visit) {
        if (!line.place[visit]) continue;
        const qreal radius = dotRadius() - (line.dashed ? 0.5 : 0);
        painter.setPen(line.dashed ? QPen(color, radius < 4 ? 1.6 : 2.4) : QPen(Qt::NoPen));
        painter.setBrush(line.dashed ? theme.raised : color);
        painter.drawEllipse(QPointF(xOf(visit), yOf(row, box, *line.place[visit])), radius, radius);
    }
}

/// Whether the dot of another line of the row lies where a mark would.
bool TrendChart::dotNear(const TrendRow& row, const TrendLine& line, std::size_t visit, const QRectF& box,
                         qreal y) const {
    return std::any_of(row.lines.begin(), row.lines.end(), [&](const TrendLine& other) {
        return &other != &line && visit < other.place.size() && other.place[visit] &&
               std::abs(yOf(row, box, *other.place[visit]) - y) < 12;
    });
}

void TrendChart::paintMarks(QPainter& painter, const TrendRow& row, const TrendLine& line,
                            const QRectF& box) const {
    const std::size_t count = std::min({line.change.size(), line.place.size(), visits_.size()});
    for (std::size_t visit = 0; visit < count; ++visit) {
        if (!line.place[visit]) continue;
        const Change change = line.change[visit];
        if (change != Change::worse && change != Change::better && change != Change::created &&
            change != Change::resolved)
            continue;
        const ChangeMark mark = markOf(change, Theme::of(this));
        const qreal y = yOf(row, box, *line.place[visit]);
        // Above the dot where there is room, else below; smaller where many visits stand close.
        const bool above = y - 18 > box.top() + 6 && !dotNear(row, line, visit, box, y - 16);
        const qreal at = above ? y - 16 : y + 16;
        const qreal scale = std::clamp(axis_.narrowest() / 16, 0.55, 1.0);
        painter.save();
        painter.translate(xOf(visit), at);
        painter.scale(scale, scale);
        paintChangeShape(painter, mark.shape, {0, 0}, mark.color);
        painter.restore();
    }
}

void TrendChart::paintValues(QPainter& painter, const TrendRow& row, const QRectF& box) const {
    struct Word {
        qreal y;
        QString text;
        bool dashed;
    };
    std::vector<Word> words;
    for (const TrendLine& line : row.lines) {
        if (line.place.empty() || !line.place.back()) continue;
        const QString text =
            (line.name.isEmpty() ? QString() : line.name + QStringLiteral(" ")) + line.value.back();
        words.push_back({yOf(row, box, *line.place.back()), text, line.dashed});
    }
    std::sort(words.begin(), words.end(), [](const Word& a, const Word& b) { return a.y < b.y; });
    const qreal height = grown(this, 20);
    for (std::size_t i = 1; i < words.size(); ++i)
        words[i].y = std::max(words[i].y, words[i - 1].y + height);
    painter.setFont(sized(this, 15, QFont::DemiBold));
    const Theme& theme = Theme::of(this);
    for (const Word& word : words) {
        painter.setPen(word.dashed ? theme.quiet : theme.ink);
        const QRectF place(right() + 14, word.y - height / 2, width() - right() - 16, height);
        painter.drawText(
            place, Qt::AlignVCenter | Qt::AlignLeft,
            painter.fontMetrics().elidedText(word.text, Qt::ElideRight, static_cast<int>(place.width())));
    }
}

} // namespace rhizograph::app
