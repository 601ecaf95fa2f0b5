#pragma once

#include "reasoning/assessment.h"

#include <nlohmann/json.hpp>

namespace rhizograph {

/// The assessment under the keys of the file contract (format "rhizograph.assessment", version 1), in a fixed
/// order: equal assessments give equal text. Probabilities and decibans stand as computed; rounding is the
/// reader's business.
[[nodiscard]] nlohmann::ordered_json assessmentToJson(const Assessment& assessment);

} // namespace rhizograph
