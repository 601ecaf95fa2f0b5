#include "compare/changemark.h"
#include "compare/trendchart.h"
#include "parts/button.h"
#include "parts/textsize.h"

#include <algorithm>
#include <QDate>
#include <QLocale>
#include <QPainter>
#include <QPaintEvent>

// How the course over all visits is painted.

namespace rhizograph::app {

void TrendChart::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (visits_.empty()) return;
    paintHead(painter);
    for (std::size_t row = 0; row < rows_.size(); ++row)
        if (rowBox(row).toAlignedRect().intersects(event->rect())) paintRow(painter, row);
    if (hasFocus() && focus_ >= 0)
        paintFocusRing(painter, QRectF(cell(focus_).rect).adjusted(10, 10, -10, -10), 8, Theme::of(this));
}

void TrendChart::paintHead(QPainter& painter) const {
    const Theme& theme = Theme::of(this);
    const int height = headHeight();
    painter.setFont(sized(this, 15));
    painter.setPen(theme.quiet);
    painter.drawText(QRect(16, 0, left(), height), Qt::AlignVCenter | Qt::AlignLeft, tr("Visit"));
    qreal free = 0; // labels of visits close together would lie over one another
    for (std::size_t visit = 0; visit < visits_.size(); ++visit) {
        const qreal x = xOf(visit);
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(x, height), QPointF(x, rowBox(rows_.size()).top()));
        const QDate date = QDate::fromString(QString::fromStdString(visits_[visit].date), Qt::ISODate);
        const QString day = QLocale(QLocale::English).toString(date, QStringLiteral("d MMM"));
        painter.setFont(sized(this, 15));
        const qreal wide = painter.fontMetrics().horizontalAdvance(day) + 8;
        const bool last = visit + 1 == visits_.size();
        if (x - wide / 2 < free && !last) continue;
        const QRectF upper(x - wide / 2, 2, wide, height / 2.0 - 1);
        painter.fillRect(QRectF(upper.left(), 2, wide, height - 4), theme.raised);
        painter.setPen(theme.quiet);
        painter.drawText(upper.translated(0, height / 2.0 - 2), Qt::AlignCenter, day);
        painter.setFont(sized(this, 15, QFont::DemiBold));
        painter.setPen(theme.ink);
        painter.drawText(upper, Qt::AlignCenter, QString::number(visits_[visit].number));
        free = x + wide / 2 + 4;
    }
}

void TrendChart::paintRow(QPainter& painter, std::size_t index) const {
    const Theme& theme = Theme::of(this);
    const TrendRow& row = rows_[index];
    const QRectF box = rowBox(index);
    painter.fillRect(QRectF(0, box.top(), width(), 1), theme.line);
    const QRectF name(16, box.top() + 6, grown(this, 146) - 20, box.height() - 12);
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
        painter.drawText(QRectF(left() - 70, y - 12, 60, 24), Qt::AlignVCenter | Qt::AlignRight, label);
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
        painter.setPen(QPen(color, line.dashed ? 2.4 : 0));
        painter.setBrush(line.dashed ? theme.raised : color);
        const qreal radius = line.dashed ? 5 : 5.5;
        painter.drawEllipse(QPointF(xOf(visit), yOf(row, box, *line.place[visit])), radius, radius);
    }
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
        // Above the dot where there is room, else below.
        const qreal at = y - 18 > box.top() + 6 ? y - 16 : y + 16;
        paintChangeShape(painter, mark.shape, {xOf(visit), at}, mark.color);
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
