#pragma once

#include "base/problem.h"

#include <filesystem>
#include <string>
#include <vector>

namespace rhizograph {

/// A kind of thing that happens to a patient between visits.
struct EventKind {
    std::string id; ///< what the record holds
    std::string label;
    bool awaited = false; ///< a day to come: overdue once it has passed without a visit
    std::string source;
};

/// Reads events.json, in its order. Unknown keys, doubled ids and empty labels are problems.
[[nodiscard]] Result<std::vector<EventKind>> loadEventKinds(const std::filesystem::path& file);

} // namespace rhizograph
