#include "figures/marks.h"

#include "parts/textsize.h"

#include <QPainter>
#include <QResizeEvent>

namespace rhizograph::app {
namespace {

constexpr int swatchWidth = 25;
constexpr int swatchHeight = 18;

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
    return grown(this, swatchWidth) + 8 + QFontMetrics(sized(this, 15)).horizontalAdvance(entry.word) + 18;
}

int MarkLegend::entriesWidth() const {
    int width = 0;
    for (const auto& entry : entries_)
        width += entryWidth(entry);
    return width;
}

/// Where each entry stands when the row breaks at this width.
std::vector<QPoint> MarkLegend::places(int width) const {
    std::vector<QPoint> out;
    int x = 1;
    int y = 0;
    for (const auto& entry : entries_) {
        const int wide = entryWidth(entry);
        if (x > 1 && x + wide - 18 > width) {
            x = 1;
            y += grown(this, 28);
        }
        out.emplace_back(x, y);
        x += wide;
    }
    return out;
}

QSize MarkLegend::sizeHint() const {
    return {entriesWidth(), grown(this, 28)};
}
QSize MarkLegend::minimumSizeHint() const {
    return {100, grown(this, 28)};
}
void MarkLegend::resizeEvent(QResizeEvent* event) {
    setMinimumHeight(heightForWidth(event->size().width()));
    QWidget::resizeEvent(event);
}
int MarkLegend::heightForWidth(int width) const {
    const std::vector<QPoint> at = places(width);
    return (at.empty() ? 0 : at.back().y()) + grown(this, 28);
}

void MarkLegend::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(sized(this, 15));
    const int row = grown(this, 28);
    const std::vector<QPoint> at = places(width());
    qreal end = 0;
    for (std::size_t i = 0; i < entries_.size(); ++i) {
        const QRectF box(at[i].x(), at[i].y() + (row - grown(this, swatchHeight)) / 2.0,
                         grown(this, swatchWidth), grown(this, swatchHeight));
        paintSwatch(painter, box, entries_[i].mark, theme);
        painter.setPen(theme.quiet);
        const QRectF words(box.right() + 8, at[i].y(), entryWidth(entries_[i]) - box.width() - 24, row);
        painter.drawText(words, Qt::AlignVCenter | Qt::AlignLeft, entries_[i].word);
        end = words.right() + 16;
    }
    const int hint = painter.fontMetrics().horizontalAdvance(hint_);
    if (height() <= row + 1 && end + hint < width())
        painter.drawText(QRectF(width() - hint - 2, height() - row, hint + 2, row),
                         Qt::AlignVCenter | Qt::AlignRight, hint_);
}

} // namespace rhizograph::app
