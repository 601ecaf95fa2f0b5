#pragma once

#include "shell/theme.h"

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace rhizograph::app {

/// How one painted button looks now.
struct CellFace {
    enum class State { unexamined, chosen, bulk, notTestable, field };

    QRectF rect;
    QString text;
    Look look = Look::plain; ///< of the chosen value
    State state = State::unexamined;
    bool ghost = false; ///< the last visit had this value
    bool pressed = false;
    bool hovered = false;
    bool focused = false;
    bool readOnly = false;
    QFont font;    ///< plain weight; chosen states make it bolder
    QString aside; ///< quiet words at the end of a field
    qreal scale = 1;
    qreal corner = 10; ///< radius
};

/// Ground, outline, hatch, text and ghost by the table of states; every state differs in more than color.
void paintCell(QPainter& painter, const Theme& theme, const CellFace& face);

} // namespace rhizograph::app
