#pragma once

#include "shell/theme.h"

namespace rhizograph::app {

/// Gives the running application our typeface, style and colors. `textScale` is 1.0, 1.15 or 1.3 of the 16 px
/// text.
void dressApplication(ThemeName theme, qreal textScale);

} // namespace rhizograph::app
