#pragma once

#include "cli/arguments.h"
#include "cli/reply.h"

#include <string>

namespace rhizograph::cli {

/// What a command made: into the file of --output, else onto standard output. The file is written beside its
/// place and moved there, so that it is whole or not there; an existing file is replaced.
[[nodiscard]] Reply deliver(const Arguments& arguments, std::string content);

} // namespace rhizograph::cli
