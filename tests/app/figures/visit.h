#pragma once

#include "shell/visitsession.h"

#include <QApplication>
#include <QMouseEvent>
#include <stdexcept>

namespace rhizograph::app {

inline Knowledge knowledge() {
    auto loaded = Knowledge::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "knowledge");
    if (!loaded) throw std::runtime_error(loaded.problems().front().text());
    return std::move(*loaded);
}

inline void sendMouse(QWidget& widget, QEvent::Type type, const QPointF& at, Qt::MouseButtons buttons) {
    const Qt::MouseButton button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, widget.mapToGlobal(at), button, buttons, Qt::NoModifier);
    QApplication::sendEvent(&widget, &event);
}

inline void press(QWidget& widget, const QPointF& at) {
    sendMouse(widget, QEvent::MouseButtonPress, at, Qt::LeftButton);
    sendMouse(widget, QEvent::MouseButtonRelease, at, Qt::NoButton);
}

inline void drag(QWidget& widget, const std::vector<QPointF>& way) {
    sendMouse(widget, QEvent::MouseButtonPress, way.front(), Qt::LeftButton);
    for (const auto& at : way)
        sendMouse(widget, QEvent::MouseMove, at, Qt::LeftButton);
    sendMouse(widget, QEvent::MouseButtonRelease, way.back(), Qt::NoButton);
}

} // namespace rhizograph::app
