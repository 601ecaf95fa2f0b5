#include "parts/card.h"

#include "shell/theme.h"

#include <QPainter>

namespace rhizograph::app {

void Card::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen({theme.line, 1});
    painter.setBrush(theme.raised);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 10, 10);
}

} // namespace rhizograph::app
