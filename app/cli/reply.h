#pragma once

#include "base/problem.h"

#include <string>

namespace rhizograph::cli {

/// Exit codes of the program.
enum class Exit { ok = 0, machine = 1, input = 2 };

/// What one run yields. A refused input yields nothing on standard output.
struct Reply {
    Exit code = Exit::ok;
    std::string out; ///< for standard output
    std::string err; ///< for standard error, a line a problem
};

[[nodiscard]] Reply done(std::string out);
/// The input is at fault: one line a problem, exit code 2.
[[nodiscard]] Reply refused(const Problems& problems);
/// The machine is at fault (disk, installation): one line a problem, exit code 1.
[[nodiscard]] Reply failed(const Problems& problems);

/// Text that is safe on a terminal: control characters and broken UTF-8 written as \xNN, cut after `limit`
/// bytes.
[[nodiscard]] std::string printable(const std::string& text, std::size_t limit = 300);

} // namespace rhizograph::cli
