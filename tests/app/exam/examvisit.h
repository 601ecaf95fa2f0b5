#pragma once

#include "exam/findingrow.h"
#include "exam/steppage.h"
#include "figures/figureart.h"
#include "shell/visitsession.h"

#include <memory>
#include <QApplication>
#include <QMouseEvent>
#include <stdexcept>

namespace rhizograph::app {

/// The knowledge of the source tree, read once a program.
inline Knowledge knowledge() {
    static const Knowledge loaded = [] {
        auto read = Knowledge::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "knowledge");
        if (!read) throw std::runtime_error(read.problems().front().text());
        return std::move(*read);
    }();
    return loaded;
}

inline std::shared_ptr<const FigureArt> figures() {
    static const auto loaded = [] {
        auto art = FigureArt::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "figures");
        if (!art) throw std::runtime_error(art.problems().front().text());
        return std::make_shared<const FigureArt>(std::move(*art));
    }();
    return loaded;
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

} // namespace rhizograph::app
