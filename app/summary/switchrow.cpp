#include "summary/switchrow.h"

#include "parts/button.h"
#include "parts/textsize.h"

#include <QPainter>

namespace rhizograph::app {

SwitchRow::SwitchRow(const QString& text, QWidget* parent) : QAbstractButton(parent) {
    setText(text);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

QSize SwitchRow::sizeHint() const {
    return {200, grown(this, 44)};
}

void SwitchRow::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(sized(this, 16));
    painter.setPen(theme.ink);
    painter.drawText(rect(), Qt::AlignVCenter | Qt::AlignLeft, text());
    const QRectF track(width() - 47.0, (height() - 27) / 2.0, 46, 27);
    painter.setBrush(isChecked() ? theme.spruce : theme.raised);
    painter.setPen(QPen(isChecked() ? theme.spruce : theme.edge, 1.5));
    painter.drawRoundedRect(track, 13.5, 13.5);
    painter.setPen(Qt::NoPen);
    painter.setBrush(isChecked() ? theme.onSpruce : theme.edge);
    painter.drawEllipse(QPointF(isChecked() ? track.right() - 13.5 : track.left() + 13.5, track.center().y()),
                        9, 9);
    if (hasFocus()) paintFocusRing(painter, track, 13.5, theme);
}

} // namespace rhizograph::app
