#pragma once

#include "exchange/narrative.h"
#include "exchange/wording.h"

#include <vector>

namespace rhizograph {

/// Warning signs, impression, and what changed since `previous` where one is given.
[[nodiscard]] std::vector<NarrativeSection> impressionSections(const Wording& words, const Exam& exam,
                                                               const Assessment& assessment,
                                                               const Exam* previous);

} // namespace rhizograph
