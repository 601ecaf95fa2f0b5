#pragma once

#include <string>
#include <sys/types.h>
#include <vector>

namespace rhizograph::testing {

/// What a finished child process left behind.
struct ProcessResult {
    int code = -1;  ///< exit code, -1 when it did not exit by itself
    int signal = 0; ///< the signal that ended it, else 0
    std::string out;
    std::string err;
    double milliseconds = 0; ///< from fork to end
};

struct ProcessOptions {
    std::vector<std::string> environment; ///< "NAME=value", added to ours
    uid_t user = 0;                       ///< run as this user where we are root; 0 keeps ours
    std::string standardOutput;           ///< file to write standard output to instead of catching it
};

/// Runs a program to its end with both outputs caught. Throws std::runtime_error when it cannot be started at
/// all.
ProcessResult runProcess(const std::vector<std::string>& command, const ProcessOptions& options = {});

} // namespace rhizograph::testing
