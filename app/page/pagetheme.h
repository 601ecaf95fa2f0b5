#pragma once

#include "shell/theme.h"

namespace rhizograph::app {

/// Colors of the printed page: white paper, ink for everything, marks that stay apart when printed in grey.
[[nodiscard]] const Theme& pageTheme();

} // namespace rhizograph::app
