#pragma once

#include "exchange/narrative.h"
#include "exchange/wording.h"

#include <vector>

namespace rhizograph {

/// Warning signs and impression.
[[nodiscard]] std::vector<NarrativeSection> impressionSections(const Wording& words, const Exam& exam,
                                                               const Assessment& assessment);

} // namespace rhizograph
