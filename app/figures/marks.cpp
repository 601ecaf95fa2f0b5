#include "figures/marks.h"

#include "parts/textsize.h"

#include <QPainter>

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
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

int MarkLegend::entriesWidth() const {
    const QFontMetrics metrics(sized(this, 15));
    int width = 0;
    for (const auto& entry : entries_)
        width += grown(this, swatchWidth) + 8 + metrics.horizontalAdvance(entry.word) + 18;
    return width;
}

QSize MarkLegend::sizeHint() const {
    return {entriesWidth(), grown(this, 28)};
}
QSize MarkLegend::minimumSizeHint() const {
    return {100, grown(this, 28)};
}

void MarkLegend::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(sized(this, 15));
    const QFontMetrics metrics = painter.fontMetrics();
    qreal x = 1;
    for (const auto& entry : entries_) {
        const QRectF box(x, (height() - grown(this, swatchHeight)) / 2.0, grown(this, swatchWidth),
                         grown(this, swatchHeight));
        paintSwatch(painter, box, entry.mark, theme);
        const int words = metrics.horizontalAdvance(entry.word);
        painter.setPen(theme.quiet);
        painter.drawText(QRectF(box.right() + 8, 0, words + 2, height()), Qt::AlignVCenter | Qt::AlignLeft,
                         entry.word);
        x = box.right() + 8 + words + 18;
    }
    const int hint = metrics.horizontalAdvance(hint_);
    if (x + hint < width()) {
        painter.drawText(QRectF(width() - hint - 2, 0, hint + 2, height()), Qt::AlignVCenter | Qt::AlignRight,
                         hint_);
    }
}

} // namespace rhizograph::app
