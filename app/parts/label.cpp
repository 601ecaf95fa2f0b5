#include "parts/label.h"

#include <algorithm>
#include <QApplication>
#include <QEvent>
#include <QFontInfo>
#include <QPainter>

namespace rhizograph::app {
namespace {

QColor colorOf(Label::Tone tone, const Theme& theme) {
    switch (tone) {
    case Label::Tone::ink:
        return theme.ink;
    case Label::Tone::quiet:
        return theme.quiet;
    case Label::Tone::warning:
        return theme.ochreInk;
    case Label::Tone::brick:
        return theme.brick;
    case Label::Tone::spruce:
        return theme.spruce;
    }
    throw std::logic_error("no such tone");
}

} // namespace

Label::Label(const QString& text, int pixels, QFont::Weight weight, Tone tone, QWidget* parent)
    : QLabel(text, parent), pixels_(pixels), weight_(weight), tone_(tone) {
    setTextFormat(Qt::PlainText);
    dress();
}

void Label::setTone(Tone tone) {
    tone_ = tone;
    dress();
}

void Label::dress() {
    if (dressing_) return;
    dressing_ = true;
    // Measured against the application's font: this label's own is already grown.
    QFont font = QApplication::font();
    font.setPixelSize(qRound(pixels_ * std::max(1.0, QFontInfo(font).pixelSize() / 16.0)));
    font.setWeight(weight_);
    setFont(font);
    QPalette colors = palette();
    colors.setColor(QPalette::WindowText, colorOf(tone_, Theme::of(this)));
    setPalette(colors);
    dressing_ = false;
}

void Label::changeEvent(QEvent* event) {
    QLabel::changeEvent(event);
    switch (event->type()) {
    case QEvent::FontChange:
    case QEvent::ApplicationFontChange:
    case QEvent::ApplicationPaletteChange:
    case QEvent::PaletteChange:
        dress();
        break;
    default:
        break;
    }
}

void Label::setElided(bool elided) {
    elided_ = elided;
    setSizePolicy(elided ? QSizePolicy::Maximum : QSizePolicy::Preferred, QSizePolicy::Preferred);
    updateGeometry();
}

QSize Label::minimumSizeHint() const {
    const QSize whole = QLabel::minimumSizeHint();
    return elided_ ? QSize(std::min(whole.width(), minimumWidth()), whole.height()) : whole;
}

void Label::paintEvent(QPaintEvent* event) {
    if (!elided_) return QLabel::paintEvent(event);
    QPainter painter(this);
    painter.setFont(font());
    painter.setPen(palette().color(foregroundRole()));
    const QString shown = fontMetrics().elidedText(text(), Qt::ElideRight, width());
    if (const QString tip = shown == text() ? QString{} : text(); tip != toolTip()) setToolTip(tip);
    painter.drawText(rect(), alignment() | Qt::TextSingleLine, shown);
}

} // namespace rhizograph::app
