#pragma once

namespace rhizograph::app {

inline constexpr int slimScrollBarWidth = 12;

/// Style of a vertical scroll bar that is only a handle: no arrows, no track, in the color of outlines.
inline constexpr const char* slimScrollBar =
    "QScrollBar:vertical { width: 12px; background: transparent; margin: 0; }"
    "QScrollBar::handle:vertical { background: palette(dark); border-radius: 3px; margin: 0 3px; min-height: "
    "44px; }"
    "QScrollBar::add-line, QScrollBar::sub-line { height: 0; }"
    "QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }";

} // namespace rhizograph::app
