#include "figures/figurecanvas.h"

#include <cmath>
#include <QGestureEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPinchGesture>
#include <QWheelEvent>

// How fingers, mouse and keys reach the regions of a FigureCanvas.

namespace rhizograph::app {

void FigureCanvas::resizeEvent(QResizeEvent*) {
    zoom_ = 1;
    offset_ = {};
    place();
    emit zoomChanged(zoom_);
}

void FigureCanvas::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) place();
    if (event->type() == QEvent::PaletteChange) refreshAll();
    QWidget::changeEvent(event);
}

bool FigureCanvas::event(QEvent* event) {
    if (event->type() == QEvent::Gesture) return pinch(static_cast<QGestureEvent*>(event));
    if (event->type() == QEvent::NativeGesture) {
        const auto* native = static_cast<QNativeGestureEvent*>(event);
        if (native->gestureType() == Qt::ZoomNativeGesture) {
            setZoom(zoom_ * (1 + native->value()), native->position());
            return true;
        }
    }
    return QWidget::event(event);
}

bool FigureCanvas::pinch(QGestureEvent* event) {
    const auto* gesture = static_cast<QPinchGesture*>(event->gesture(Qt::PinchGesture));
    if (gesture == nullptr) return QWidget::event(event);
    if (stroking_) {
        stroking_ = false;
        longPress_.stop();
        emit strokeCancelled();
    }
    const QPointF center = mapFromGlobal(gesture->centerPoint());
    if (gesture->changeFlags().testFlag(QPinchGesture::ScaleFactorChanged)) {
        setZoom(zoom_ * gesture->scaleFactor(), center);
    }
    if (gesture->changeFlags().testFlag(QPinchGesture::CenterPointChanged)) {
        pan(gesture->centerPoint() - gesture->lastCenterPoint());
    }
    return true;
}

void FigureCanvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::MiddleButton || event->button() == Qt::RightButton) {
        panning_ = true;
        panFrom_ = event->position();
        return;
    }
    const auto region = regionAt(event->position());
    if (event->button() != Qt::LeftButton || !region) return;
    focusRegion(*region);
    if (readOnly_) return;
    stroking_ = true;
    stroke_ = region;
    strokeFrom_ = event->position();
    longPress_.start();
    emit strokeBegan(*region);
}

void FigureCanvas::mouseMoveEvent(QMouseEvent* event) {
    if (panning_) {
        pan(event->position() - panFrom_);
        panFrom_ = event->position();
        return;
    }
    if (!stroking_) {
        const auto region = regionAt(event->position());
        setHover(region);
        if (!readOnly_) setCursor(region ? Qt::PointingHandCursor : Qt::ArrowCursor);
        return;
    }
    if (QLineF(strokeFrom_, event->position()).length() > 8) longPress_.stop();
    strokeTo(event->position());
}

void FigureCanvas::strokeTo(const QPointF& position) {
    const auto region = regionAt(position);
    if (!region || region == stroke_) return;
    longPress_.stop();
    stroke_ = region;
    focusRegion(*region);
    emit strokeMovedOver(*region);
}

void FigureCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) {
        panning_ = false;
        return;
    }
    longPress_.stop();
    if (!stroking_) return;
    stroking_ = false;
    stroke_.reset();
    emit strokeEnded();
}

void FigureCanvas::longPress() {
    if (!stroking_ || !stroke_) return;
    const FigurePanel* panel = detailOf(*stroke_);
    if (panel == nullptr && zoom_ <= 1) return;
    stroking_ = false;
    emit strokeCancelled();
    if (zoom_ > 1) {
        resetZoom();
    } else {
        zoomTo(*panel);
    }
}

void FigureCanvas::wheelEvent(QWheelEvent* event) {
    setZoom(zoom_ * std::pow(1.0015, event->angleDelta().y()), event->position());
    event->accept();
}

void FigureCanvas::leaveEvent(QEvent*) {
    setHover(std::nullopt);
}

void FigureCanvas::setHover(std::optional<RegionKey> region) {
    if (region == hover_) return;
    if (hover_) update(extent(*hover_));
    hover_ = std::move(region);
    if (hover_) update(extent(*hover_));
}

void FigureCanvas::focusInEvent(QFocusEvent* event) {
    if (focus_ < 0 && !cells_.empty() && event->reason() != Qt::MouseFocusReason) focusCell(0);
    QWidget::focusInEvent(event);
    update();
}

void FigureCanvas::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
        return moveFocus(event->key());
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return pressCell(focus_);
    case Qt::Key_Plus:
        return setZoom(zoom_ * 1.5, rect().center());
    case Qt::Key_Minus:
        return setZoom(zoom_ / 1.5, rect().center());
    default:
        break;
    }
    const QString text = event->text();
    const bool mine =
        event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace ||
        (!text.isEmpty() && text.at(0).isLetterOrNumber() && event->modifiers() == Qt::NoModifier);
    if (mine && focus_ >= 0 && !readOnly_) {
        emit keyTyped(event->key(), text);
    }
    event->setAccepted(mine && text != u"u" && text != u"/");
    if (!event->isAccepted()) QWidget::keyPressEvent(event);
}

void FigureCanvas::moveFocus(int key) {
    if (focus_ < 0) {
        focusCell(0);
        return;
    }
    const auto from = placeOf(cells_[static_cast<std::size_t>(focus_)]);
    if (!from) return;
    const QPointF way(key == Qt::Key_Right  ? 1
                      : key == Qt::Key_Left ? -1
                                            : 0,
                      key == Qt::Key_Down ? 1
                      : key == Qt::Key_Up ? -1
                                          : 0);
    int best = -1;
    qreal least = std::numeric_limits<qreal>::infinity();
    for (int i = 0; i < cellCount(); ++i) {
        const auto to = placeOf(cells_[static_cast<std::size_t>(i)]);
        if (i == focus_ || !to) continue;
        const QPointF off = *to - *from;
        const qreal along = QPointF::dotProduct(off, way);
        const qreal aside = std::abs(off.x() * way.y()) + std::abs(off.y() * way.x());
        if (along <= 0.5) continue;
        if (const qreal cost = along + 2.5 * aside; cost < least) {
            least = cost;
            best = i;
        }
    }
    if (best >= 0) focusCell(best);
}

void FigureCanvas::focusRegion(const RegionKey& region) {
    const auto found = std::ranges::find(cells_, region);
    if (found != cells_.end()) focusCell(static_cast<int>(found - cells_.begin()));
}

std::optional<RegionKey> FigureCanvas::focusedRegion() const {
    return focus_ < 0 ? std::nullopt : std::optional(cells_[static_cast<std::size_t>(focus_)]);
}

void FigureCanvas::focusCell(int index) {
    if (index == focus_ || index < 0 || index >= cellCount()) return;
    if (const auto before = focusedRegion()) update(extent(*before));
    focus_ = index;
    update(extent(cells_[static_cast<std::size_t>(index)]));
    announceCell(this, index, QAccessible::Focus);
}

void FigureCanvas::pressCell(int index) {
    if (index < 0 || index >= cellCount() || readOnly_) return;
    focusCell(index);
    emit strokeBegan(cells_[static_cast<std::size_t>(index)]);
    emit strokeEnded();
}

int FigureCanvas::cellAt(const QPoint& position) const {
    const auto region = regionAt(position);
    const auto found = region ? std::ranges::find(cells_, *region) : cells_.end();
    return found == cells_.end() ? -1 : static_cast<int>(found - cells_.begin());
}

Cell FigureCanvas::cell(int index) const {
    const RegionKey& key = cells_.at(static_cast<std::size_t>(index));
    const Picture* main = mainPicture(key);
    return {speaker_ ? speaker_(key) : QString::fromStdString(key.region),
            readOnly_ ? QString() : tr("A press moves on to the next state"),
            main == nullptr ? QRect() : main->path.boundingRect().toAlignedRect(),
            QAccessible::PushButton,
            !readOnly_,
            false};
}

} // namespace rhizograph::app
