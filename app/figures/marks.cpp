#include "figures/marks.h"

#include "parts/textsize.h"

#include <QPainter>

namespace rhizograph::app {
namespace {

constexpr int swatchWidth = 25;
constexpr int swatchHeight = 18;
constexpr int toWord = 8;
constexpr int toNext = 18;

} // namespace

void paintSwatch(QPainter& painter, const QRectF& box, SkinMark mark, const Theme& theme) {
    QPainterPath shape;
    shape.addRoundedRect(box, 5, 5);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.skin);
    painter.drawPath(shape);
    paintMark(painter, shape, mark, theme, 1);
    painter.setBrush(Qt::NoBrush);
    painter.setPen({theme.region, 1.25});
    painter.drawPath(shape);
}

MarkButton::MarkButton(const QString& text, SkinMark mark, QWidget* parent)
    : PlainButton(text, Kind::choice, parent), mark_(mark) {}

int MarkButton::pictureWidth() const {
    return grown(this, swatchWidth);
}

void MarkButton::paintPicture(QPainter& painter, const QPointF& center, const QColor&) {
    QRectF box(0, 0, grown(this, swatchWidth), grown(this, swatchHeight));
    box.moveCenter(center);
    paintSwatch(painter, box, mark_, theme());
}

MarkLegend::MarkLegend(std::vector<Entry> entries, const QString& hint, QWidget* parent)
    : QWidget(parent), entries_(std::move(entries)), hint_(hint) {
    QStringList words;
    for (const auto& entry : entries_)
        words << entry.word;
    setAccessibleName(tr("Legend: %1").arg(words.join(QStringLiteral(", "))));
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

int MarkLegend::entryWidth(const Entry& entry) const {
    return grown(this, swatchWidth) + toWord + QFontMetrics(sized(this, 15)).horizontalAdvance(entry.word) +
           toNext;
}

int MarkLegend::rowHeight() const {
    return grown(this, 28);
}

std::vector<QPoint> MarkLegend::places(int width) const {
    std::vector<QPoint> out;
    QPoint at(1, 0);
    for (const Entry& entry : entries_) {
        const int next = entryWidth(entry);
        if (at.x() > 1 && at.x() + next - toNext > width) at = QPoint(1, at.y() + rowHeight());
        out.push_back(at);
        at.rx() += next;
    }
    return out;
}

QSize MarkLegend::sizeHint() const {
    int width = 0;
    for (const Entry& entry : entries_)
        width += entryWidth(entry);
    return {width, rowHeight()};
}

QSize MarkLegend::minimumSizeHint() const {
    return {100, rowHeight()};
}

int MarkLegend::heightForWidth(int width) const {
    return entries_.empty() ? rowHeight() : places(width).back().y() + rowHeight();
}

void MarkLegend::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(sized(this, 15));
    const std::vector<QPoint> at = places(width());
    QPoint end;
    for (std::size_t i = 0; i < entries_.size(); ++i) {
        const QSizeF swatch(grown(this, swatchWidth), grown(this, swatchHeight));
        const QRectF box(QPointF(at[i].x(), at[i].y() + (rowHeight() - swatch.height()) / 2), swatch);
        paintSwatch(painter, box, entries_[i].mark, theme);
        end = at[i] + QPoint(entryWidth(entries_[i]), 0);
        painter.setPen(theme.quiet);
        painter.drawText(
            QRectF(QPointF(box.right() + toWord, at[i].y()), QPointF(end.x(), at[i].y() + rowHeight())),
            Qt::AlignVCenter | Qt::AlignLeft, entries_[i].word);
    }
    const int hint = painter.fontMetrics().horizontalAdvance(hint_);
    if (end.x() + hint < width())
        painter.drawText(QRectF(width() - hint - 2, end.y(), hint + 2, rowHeight()),
                         Qt::AlignVCenter | Qt::AlignRight, hint_);
}

} // namespace rhizograph::app
