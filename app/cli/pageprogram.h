#pragma once

#include "cli/arguments.h"
#include "cli/reply.h"

namespace rhizograph::cli {

/// Has rhizo-page, the program beside this one, write the page. It is a program of its own so that the
/// commands that write text do not load what draws.
[[nodiscard]] Reply writePage(const Arguments& arguments);

} // namespace rhizograph::cli
