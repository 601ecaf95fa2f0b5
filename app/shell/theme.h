#pragma once

#include "catalogue/scale.h"

#include <QBrush>
#include <QColor>

class QWidget;

namespace rhizograph::app {

enum class ThemeName { light, dark, highContrast };

/// The colors of one theme by role; all text pairs reach 4.5:1, control edges 3:1.
struct Theme {
    ThemeName name = ThemeName::light;
    QColor paper, raised, sunk;          ///< window; cards, strip, panel; tracks and page desk
    QColor line, edge;                   ///< hairlines; outline of anything that can be pressed
    QColor ink, quiet;                   ///< text; second text
    QColor spruce, onSpruce, spruceTint; ///< chosen normal and main action; text on it; bulk fill
    QColor ochre, ochreInk, ochreTint;   ///< reduced: border and hatch; the only ochre for text; ground
    QColor brick, onBrick, brickTint;    ///< marked or absent; text on it; red sign in the panel
    QColor plum, plumTint;               ///< heightened
    QColor redbar, onRedbar;             ///< the red-sign bar
    QColor skin, region;                 ///< bare skin; borders between regions

    static const Theme& named(ThemeName name);
    /// The theme of the window the widget lives in (set by the shell on the application).
    static const Theme& of(const QWidget* widget);
    static void apply(ThemeName name); ///< sets palette, style and repaints all windows
};

/// Hatch that makes a look readable without color: diagonal lines for reduced, dots for heightened, solid for
/// marked, plain tint for normal; a null brush for plain. Texture in device pixels whatever the painter's
/// scale. `strength` (0 to 1) weakens lines and dots where words lie over them; nothing is transparent.
QBrush hatch(const Theme& theme, Look look, qreal devicePixelRatio = 1.0, qreal strength = 1.0);

} // namespace rhizograph::app
