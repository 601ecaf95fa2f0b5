#include "exam/columnheads.h"

#include "exam/rowlayout.h"
#include "parts/textsize.h"
#include "shell/theme.h"

#include <QPainter>

namespace rhizograph::app {

ColumnHeads::ColumnHeads(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize ColumnHeads::sizeHint() const {
    return {320, grown(this, 26)};
}

void ColumnHeads::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(sized(this, 15, QFont::Bold));
    painter.setPen(Theme::of(this).ink);
    const qreal side = sideWidth(width(), textScale(this));
    const qreal high = height() + 4;
    painter.drawText(QRectF(10, 0, side, high), Qt::AlignCenter, tr("Right"));
    painter.drawText(QRectF(width() - 10 - side, 0, side, high), Qt::AlignCenter, tr("Left"));
}

} // namespace rhizograph::app
