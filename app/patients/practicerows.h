#pragma once

#include "patients/visitlist.h"

namespace rhizograph::app {

/// One patient of the list of who needs a look, with every reason in words.
[[nodiscard]] ListedVisit attentionRow(const Attention& one, const Identity& identity);

/// "3 with a red sign · 5 worse · 1 follow-up passed · 12 not signed"; and that the list is cut, where it is.
[[nodiscard]] QString practiceWords(const Practice& practice);

} // namespace rhizograph::app
