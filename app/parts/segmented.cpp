#include "parts/segmented.h"

#include "parts/button.h"
#include "parts/textsize.h"

#include <algorithm>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>

namespace rhizograph::app {

Segmented::Segmented(const QString& name, const QStringList& words, QWidget* parent)
    : QWidget(parent), name_(name), words_(words) {
    installCellAccess();
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void Segmented::choose(int index) {
    if (index == chosen_ || index < 0 || index >= cellCount()) return;
    chosen_ = index;
    update();
    announceCell(this, index, QAccessible::Focus);
    emit chosenChanged(index);
}

qreal Segmented::wordWidth(int index) const {
    return QFontMetricsF(sized(this, 16, QFont::DemiBold)).horizontalAdvance(words_.at(index)) + 32;
}

QSize Segmented::sizeHint() const {
    qreal width = 2;
    for (int i = 0; i < cellCount(); ++i)
        width += wordWidth(i);
    return {qCeil(width), grown(this, 44)};
}

QSize Segmented::minimumSizeHint() const {
    qreal width = 0;
    for (int i = 0; i < cellCount(); ++i)
        width = std::max(width, wordWidth(i));
    return {qCeil(width) + 2, grown(this, 44)};
}

/// The segment's place when this width is broken into rows, of heights of one.
QRectF Segmented::place(int index, int width) const {
    qreal left = 1;
    int row = 0;
    for (int i = 0; i < index; ++i) {
        left += wordWidth(i);
        if (left + wordWidth(i + 1) <= width + 0.5) continue;
        left = 1;
        ++row;
    }
    return {left, static_cast<qreal>(row), wordWidth(index), 1};
}

int Segmented::rows(int width) const {
    return cellCount() == 0 ? 1 : qRound(place(cellCount() - 1, width).top()) + 1;
}

int Segmented::heightForWidth(int width) const {
    return rows(width) * grown(this, 44);
}

QRectF Segmented::shape(int index) const {
    const QRectF at = place(index, width());
    const qreal high = static_cast<qreal>(height()) / rows(width());
    return {at.left(), at.top() * high + 1, at.width(), high - 2};
}

QRect Segmented::pressArea(int index) const {
    const QRectF drawn = shape(index);
    return drawn.adjusted(0, -1, 0, 1).toAlignedRect();
}

Cell Segmented::cell(int index) const {
    return {words_.at(index), {}, pressArea(index), QAccessible::RadioButton, isEnabled(), index == chosen_};
}

int Segmented::cellAt(const QPoint& position) const {
    for (int i = 0; i < cellCount(); ++i) {
        if (pressArea(i).contains(position)) return i;
    }
    return -1;
}

void Segmented::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(0.75, 0.75, -0.75, -0.75);
    QPainterPath outline;
    outline.addRoundedRect(frame, 10, 10);
    painter.fillPath(outline, theme.raised);
    for (int i = 0; i < cellCount(); ++i) {
        if (i == chosen_) {
            painter.save();
            painter.setClipPath(outline);
            painter.fillRect(shape(i), theme.spruce);
            painter.restore();
        }
        painter.setFont(sized(this, 16, i == chosen_ ? QFont::DemiBold : QFont::Medium));
        painter.setPen(i == chosen_ ? theme.onSpruce : theme.quiet);
        painter.drawText(shape(i), Qt::AlignCenter, words_.at(i));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen({theme.edge, 1.5});
    painter.drawPath(outline);
    if (hasFocus()) {
        painter.setPen({theme.ink, 2});
        painter.drawRoundedRect(shape(chosen_).adjusted(4, 4, -4, -4), 7, 7);
    }
}

void Segmented::mousePressEvent(QMouseEvent* event) {
    choose(cellAt(event->position().toPoint()));
}

void Segmented::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Left) return choose(chosen_ - 1);
    if (event->key() == Qt::Key_Right) return choose(chosen_ + 1);
    QWidget::keyPressEvent(event);
}

} // namespace rhizograph::app
