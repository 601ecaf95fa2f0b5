#include "window/holdbutton.h"

#include "parts/button.h"
#include "parts/textsize.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

namespace rhizograph::app {

HoldButton::HoldButton(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::StrongFocus);
    beat_.setInterval(30);
    connect(&beat_, &QTimer::timeout, this, [this] {
        update();
        if (held_.elapsed() < holdMilliseconds) return;
        stop();
        emit confirmed();
    });
    connect(this, &QAbstractButton::clicked, this, &HoldButton::confirmed);
}

QSize HoldButton::sizeHint() const {
    const QFontMetrics metrics(sized(this, 16, QFont::Medium));
    return {metrics.horizontalAdvance(text()) + 36, grown(this, 44)};
}

void HoldButton::stop() {
    beat_.stop();
    holding_ = false;
    setDown(false);
    update();
}

void HoldButton::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    setDown(true);
    holding_ = true;
    held_.start();
    beat_.start();
    update();
}

void HoldButton::mouseReleaseEvent(QMouseEvent*) {
    if (holding_) stop(); // released too early: nothing happens
}

void HoldButton::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!enter || event->isAutoRepeat()) {
        if (event->key() != Qt::Key_Space) event->ignore();
        return;
    }
    if (armed_) {
        armed_ = false;
        emit confirmed();
    } else {
        armed_ = true;
        update();
    }
}

void HoldButton::focusOutEvent(QFocusEvent* event) {
    armed_ = false;
    QAbstractButton::focusOutEvent(event);
}

void HoldButton::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const qreal inset = hasFocus() ? 5 : 0.75;
    const QRectF shape = QRectF(rect()).adjusted(inset, inset, -inset, -inset);
    QPainterPath path;
    path.addRoundedRect(shape, 10, 10);
    painter.fillPath(path, theme.onRedbar);
    const double share = holding_ ? std::min(1.0, static_cast<double>(held_.elapsed()) / holdMilliseconds)
                         : armed_ ? 0.5
                                  : 0.0;
    if (share > 0) {
        painter.save();
        painter.setClipPath(path);
        QColor fill = theme.redbar;
        fill.setAlphaF(0.25F);
        painter.fillRect(QRectF(shape.left(), shape.top(), shape.width() * share, shape.height()), fill);
        painter.restore();
    }
    painter.setFont(sized(this, 16, QFont::Medium));
    painter.setPen(theme.redbar);
    painter.drawText(rect(), Qt::AlignCenter, armed_ ? tr("Enter again") : text());
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.onRedbar, 2));
        painter.drawRoundedRect(shape.adjusted(-3, -3, 3, 3), 12, 12);
    }
}

} // namespace rhizograph::app
