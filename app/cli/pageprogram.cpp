#include "cli/pageprogram.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <spawn.h>
#include <sys/wait.h>
#include <system_error>

extern char** environ;

namespace rhizograph::cli {
namespace {

std::vector<std::string> commandOf(const std::string& program, const Arguments& arguments) {
    std::vector<std::string> words{program};
    for (const char* option : {"--previous", "--output", "--paper", "--form"})
        if (const auto value = arguments.option(option)) words.insert(words.end(), {option, *value});
    words.insert(words.end(), {"--", arguments.files[0]});
    return words;
}

} // namespace

Reply writePage(const Arguments& arguments) {
    std::error_code error;
    const auto self = std::filesystem::read_symlink("/proc/self/exe", error);
    const std::string program = (self.parent_path() / "rhizo-page").string();
    std::vector<std::string> words = commandOf(program, arguments);
    std::vector<char*> pointers;
    for (std::string& word : words)
        pointers.push_back(word.data());
    pointers.push_back(nullptr);
    pid_t child = 0;
    const int failure = posix_spawn(&child, program.c_str(), nullptr, nullptr, pointers.data(), environ);
    if (failure != 0)
        return failed({Problem{program, "", std::string{"cannot be started: "} + std::strerror(failure)}});
    int status = 0;
    while (waitpid(child, &status, 0) < 0) {
        if (errno != EINTR) return failed({Problem{program, "", std::strerror(errno)}});
    }
    // It has said on standard error what was wrong.
    if (WIFEXITED(status) && WEXITSTATUS(status) <= 2)
        return {static_cast<Exit>(WEXITSTATUS(status)), {}, {}};
    return failed({Problem{program, "", "ended before the page was written"}});
}

} // namespace rhizograph::cli
