#pragma once

#include "compare/compare.h"
#include "shell/theme.h"

#include <QString>

class QPainter;

namespace rhizograph::app {

/// How a change is shown: shape, word and color together, since none of them is enough alone.
struct ChangeMark {
    enum class Shape { down, up, bars, diamond, dash };
    Shape shape = Shape::bars;
    QString word;
    QColor color;
    bool strong = false; ///< set in bold
};

[[nodiscard]] ChangeMark markOf(Change change, const Theme& theme);

/// The mark of a difference between the sides: which side stands out, if it does.
[[nodiscard]] ChangeMark markOf(const SideDifference& difference, const Theme& theme);

void paintChangeShape(QPainter& painter, ChangeMark::Shape shape, const QPointF& center, const QColor& color);

} // namespace rhizograph::app
