#include "cli/passphrase.h"

#include <cerrno>
#include <charconv>
#include <fcntl.h>
#include <optional>
#include <sys/stat.h>
#include <system_error>
#include <termios.h>
#include <unistd.h>

namespace rhizograph::cli {
namespace {

constexpr std::size_t longest = 1024;

class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    ~Descriptor() {
        if (number_ >= 0) ::close(number_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int number() const { return number_; }

private:
    int number_;
};

Problem systemProblem(const std::string& file, int error) {
    return {file, "", std::generic_category().message(error)};
}

/// The bytes up to the first line end or the end, one at a time: what follows belongs to somebody else.
Result<std::string> firstLine(int descriptor, const std::string& from) {
    std::string line;
    char one = 0;
    for (;;) {
        const ssize_t count = ::read(descriptor, &one, 1);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return systemProblem(from, errno);
        if (count == 0 || one == '\n') break;
        line += one;
        if (line.size() > longest) return Problem{from, "", "holds a first line too long for a passphrase"};
    }
    if (!line.empty() && line.back() == '\r') line.pop_back();
    if (line.empty()) return Problem{from, "", "holds no passphrase in its first line"};
    return line;
}

Result<std::string> fromFile(const std::string& file) {
    const Descriptor in{::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK)};
    if (in.number() < 0) return systemProblem(file, errno);
    struct stat info {};
    if (::fstat(in.number(), &info) != 0) return systemProblem(file, errno);
    if (!S_ISREG(info.st_mode)) return Problem{file, "", "is not a file"};
    if ((info.st_mode & (S_IRWXG | S_IRWXO)) != 0)
        return Problem{file, "",
                       "can be read or written by other users; chmod 600 it, and change the passphrase"};
    return firstLine(in.number(), file);
}

Result<std::string> fromDescriptor(const std::string& option, const std::string& text) {
    int number = -1;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size() || number < 0)
        return Problem{"", option, "\"" + text + "\" is no number of a file descriptor"};
    return firstLine(number, option + " " + text);
}

/// Keys pressed do not show, and Ctrl-C is a key like any other, so that the terminal is always put back.
class QuietTerminal {
public:
    explicit QuietTerminal(int terminal) : terminal_(terminal) {
        if (::tcgetattr(terminal_, &before_) != 0) return;
        termios quiet = before_;
        quiet.c_lflag &= ~static_cast<tcflag_t>(ECHO | ICANON | ISIG);
        quiet.c_cc[VMIN] = 1;
        quiet.c_cc[VTIME] = 0;
        changed_ = ::tcsetattr(terminal_, TCSAFLUSH, &quiet) == 0;
    }
    ~QuietTerminal() {
        if (changed_) ::tcsetattr(terminal_, TCSAFLUSH, &before_);
    }
    QuietTerminal(const QuietTerminal&) = delete;
    QuietTerminal& operator=(const QuietTerminal&) = delete;
    [[nodiscard]] bool quiet() const { return changed_; }

private:
    int terminal_;
    termios before_{};
    bool changed_ = false;
};

/// The line typed, or nothing when given up with Ctrl-C or Ctrl-D.
std::optional<std::string> typedLine(int terminal) {
    std::string line;
    char one = 0;
    while (::read(terminal, &one, 1) == 1 && line.size() <= longest) {
        if (one == '\n' || one == '\r') return line;
        if (one == '\x03' || one == '\x04') return std::nullopt;
        if (one != '\x7f' && one != '\b') {
            line += one;
            continue;
        }
        // One letter back: all bytes of it.
        while (!line.empty() && (static_cast<unsigned char>(line.back()) & 0xC0U) == 0x80U)
            line.pop_back();
        if (!line.empty()) line.pop_back();
    }
    return std::nullopt;
}

void say(int terminal, const std::string& text) {
    if (::write(terminal, text.data(), text.size()) < 0) return; // what was typed decides, not what was shown
}

Result<std::string> typed(const std::string& option, const std::string& prompt) {
    const Problem noTerminal{
        "", "", "no terminal to type the passphrase at; give " + option + "-file or " + option + "-fd"};
    const Descriptor terminal{::open("/dev/tty", O_RDWR | O_CLOEXEC | O_NOCTTY)};
    if (terminal.number() < 0) return noTerminal;
    const QuietTerminal quiet{terminal.number()};
    if (!quiet.quiet()) return noTerminal;
    say(terminal.number(), prompt);
    auto line = typedLine(terminal.number());
    say(terminal.number(), "\n");
    if (!line) return Problem{"", "", "given up at the passphrase; nothing was done"};
    if (line->empty()) return Problem{"", "", "no passphrase was typed"};
    return std::move(*line);
}

} // namespace

Result<std::string> readPassphrase(const Arguments& arguments, const std::string& option,
                                   const std::string& prompt) {
    const auto file = arguments.option(option + "-file");
    const auto descriptor = arguments.option(option + "-fd");
    if (file && descriptor)
        return Problem{"", "", "both " + option + "-file and " + option + "-fd are given"};
    if (file) return fromFile(*file);
    if (descriptor) return fromDescriptor(option + "-fd", *descriptor);
    return typed(option, prompt);
}

} // namespace rhizograph::cli
