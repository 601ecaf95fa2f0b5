#pragma once

#include "cli/arguments.h"

#include <string>

namespace rhizograph::cli {

/// A passphrase from where its options say: `option`-file FILE (its first line; a file others may read is
/// refused), `option`-fd N (an open file descriptor, up to its first line end), or else typed at the terminal
/// without showing. Never from the command line itself, which every user of the computer can list.
Result<std::string> readPassphrase(const Arguments& arguments, const std::string& option,
                                   const std::string& prompt);

} // namespace rhizograph::cli
