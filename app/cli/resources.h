#pragma once

#include "base/problem.h"

#include <filesystem>

namespace rhizograph::cli {

/// Folder that holds knowledge/ and figures/: the environment's RHIZOGRAPH_RESOURCES where set, else
/// ../share/rhizograph beside the running program. A problem when there is no knowledge in it.
Result<std::filesystem::path> findResources();

} // namespace rhizograph::cli
