#pragma once

#include "base/problem.h"

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace rhizograph::cli {

/// What the numbers of one entry of the knowledge stand on.
enum class Footing { read, synthesis, standard, partly, memory, practice, estimate, unstated };

[[nodiscard]] std::string nameOf(Footing footing);

/// One entry of the knowledge files that says where it comes from.
struct Sourced {
    std::string file;  ///< "sites.json"
    std::string place; ///< the ids on the way to it
    std::string source;
    Footing footing = Footing::unstated;
};

/// Every entry with a source in the knowledge files of a folder, in the order of files and entries.
Result<std::vector<Sourced>> sourcedEntries(const std::filesystem::path& knowledge);

/// How many entries stand on each footing.
[[nodiscard]] std::map<Footing, std::size_t> countFootings(const std::vector<Sourced>& entries);

} // namespace rhizograph::cli
