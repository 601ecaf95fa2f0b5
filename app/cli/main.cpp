#include "cli/commands.h"
#include "record/privacy.h"

#include <cstdio>
#include <exception>
#include <fmt/format.h>

namespace {

bool write(std::FILE* stream, const std::string& text) {
    return std::fwrite(text.data(), 1, text.size(), stream) == text.size() && std::fflush(stream) == 0;
}

} // namespace

int main(int argc, char* argv[]) {
    using namespace rhizograph::cli;
    rhizograph::forbidCrashImages();
    try {
        const Reply reply = run({argv + 1, argv + (argc > 0 ? argc : 1)});
        write(stderr, reply.err);
        if (!write(stdout, reply.out)) {
            std::perror("rhizo: standard output");
            return static_cast<int>(Exit::machine);
        }
        return static_cast<int>(reply.code);
    } catch (const std::exception& error) {
        fmt::print(stderr, "rhizo: {}\n", printable(error.what()));
        return static_cast<int>(Exit::machine);
    }
}
