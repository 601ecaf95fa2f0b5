#include "support/process.h"

#include <array>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <poll.h>
#include <stdexcept>
#include <sys/wait.h>
#include <unistd.h>

namespace rhizograph::testing {
namespace {

struct Pipe {
    std::array<int, 2> ends{-1, -1};
    Pipe() {
        if (pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
    }
};

[[noreturn]] void becomeProgram(const std::vector<std::string>& command, const ProcessOptions& options,
                                const Pipe& out, const Pipe& err) {
    const int target =
        options.standardOutput.empty() ? out.ends[1] : open(options.standardOutput.c_str(), O_WRONLY);
    dup2(target, STDOUT_FILENO);
    dup2(err.ends[1], STDERR_FILENO);
    for (const int end : {out.ends[0], out.ends[1], err.ends[0], err.ends[1]})
        close(end);
    for (const std::string& setting : options.environment)
        putenv(strdup(setting.c_str()));
    if (options.user != 0 && setuid(options.user) != 0) _exit(127);
    std::vector<char*> arguments;
    for (const std::string& word : command)
        arguments.push_back(const_cast<char*>(word.c_str()));
    arguments.push_back(nullptr);
    execv(arguments[0], arguments.data());
    _exit(127);
}

/// Reads both ends until both are closed, so that neither can fill up and block the child.
void drain(int outEnd, int errEnd, ProcessResult& result) {
    std::array<pollfd, 2> ends{pollfd{outEnd, POLLIN, 0}, pollfd{errEnd, POLLIN, 0}};
    const std::array<std::string*, 2> texts{&result.out, &result.err};
    int open = 2;
    while (open > 0) {
        if (poll(ends.data(), ends.size(), -1) < 0 && errno != EINTR) break;
        for (std::size_t i = 0; i < ends.size(); ++i) {
            if (ends[i].fd < 0 || ends[i].revents == 0) continue;
            std::array<char, 65536> buffer;
            const ssize_t got = read(ends[i].fd, buffer.data(), buffer.size());
            if (got > 0) {
                texts[i]->append(buffer.data(), static_cast<std::size_t>(got));
                continue;
            }
            close(ends[i].fd);
            ends[i].fd = -1;
            --open;
        }
    }
}

} // namespace

ProcessResult runProcess(const std::vector<std::string>& command, const ProcessOptions& options) {
    const Pipe out;
    const Pipe err;
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = fork();
    if (child < 0) throw std::runtime_error("no process");
    if (child == 0) becomeProgram(command, options, out, err);
    close(out.ends[1]);
    close(err.ends[1]);
    ProcessResult result;
    drain(out.ends[0], err.ends[0], result);
    int status = 0;
    waitpid(child, &status, 0);
    result.milliseconds =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
    if (WIFEXITED(status)) result.code = WEXITSTATUS(status);
    if (WIFSIGNALED(status)) result.signal = WTERMSIG(status);
    return result;
}

} // namespace rhizograph::testing
