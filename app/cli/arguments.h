#pragma once

#include "base/problem.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace rhizograph::cli {

/// What one command takes on its command line.
struct Syntax {
    std::size_t files = 0;            ///< how many plain arguments it needs
    std::vector<std::string> options; ///< options that take a value, e.g. "--previous"
    std::size_t more = 0;             ///< how many further plain arguments may follow
};

/// A command line read by its syntax.
struct Arguments {
    std::vector<std::string> files;
    std::map<std::string, std::string> options;

    [[nodiscard]] std::optional<std::string> option(const std::string& name) const;
};

/// Reads "--option VALUE" and "--option=VALUE" in any place, plain arguments in their order; after "--" all
/// are plain. Unknown, repeated or empty options and a wrong number of plain arguments are problems.
Result<Arguments> parseArguments(const std::vector<std::string>& words, const Syntax& syntax);

} // namespace rhizograph::cli
