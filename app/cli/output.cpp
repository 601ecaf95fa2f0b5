#include "cli/output.h"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

namespace rhizograph::cli {
namespace {

bool writeAll(int file, const std::string& content) {
    for (std::size_t at = 0; at < content.size();) {
        const ssize_t written = ::write(file, content.data() + at, content.size() - at);
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return false;
        at += static_cast<std::size_t>(written);
    }
    return ::fsync(file) == 0;
}

/// Readable by the owner only: what is written may be about a patient.
Outcome writeWhole(const std::string& path, const std::string& content) {
    std::error_code error;
    if (std::filesystem::is_directory(path, error)) return Problem{path, "", "is a folder"};
    std::string beside = path + ".XXXXXX";
    const int file = ::mkstemp(beside.data());
    if (file < 0) return Problem{path, "", std::string{"cannot be written: "} + std::strerror(errno)};
    const bool written = writeAll(file, content);
    const int reason = errno;
    ::close(file);
    if (written && ::rename(beside.c_str(), path.c_str()) == 0) return {};
    const int last = written ? errno : reason;
    ::unlink(beside.c_str());
    return Problem{path, "", std::string{"cannot be written: "} + std::strerror(last)};
}

} // namespace

Reply deliver(const Arguments& arguments, std::string content) {
    const auto path = arguments.option("--output");
    if (!path) return done(std::move(content));
    const Outcome written = writeWhole(*path, content);
    if (!written) return failed(written.problems());
    return done("");
}

} // namespace rhizograph::cli
