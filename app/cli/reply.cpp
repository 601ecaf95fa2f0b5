#include "cli/reply.h"

#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

/// Bytes of the UTF-8 sequence that begins at `at`, or 0 where none does. Control characters count as none.
std::size_t printableLength(const std::string& text, std::size_t at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(at);
    if (lead < 0x80) return lead >= 0x20 && lead != 0x7F ? 1 : 0;
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || at + length > text.size()) return 0;
    for (std::size_t i = at + 1; i < at + length; ++i)
        if ((byte(i) & 0xC0U) != 0x80U) return 0;
    const bool controlOfLatin1 = lead == 0xC2 && byte(at + 1) < 0xA0;
    return controlOfLatin1 ? 0 : length;
}

Reply withProblems(Exit code, const Problems& problems) {
    Reply reply{code, {}, {}};
    for (const Problem& problem : problems)
        reply.err +=
            "rhizo: " +
            Problem{printable(problem.file), printable(problem.place), printable(problem.reason)}.text() +
            "\n";
    return reply;
}

} // namespace

Reply done(std::string out) {
    return {Exit::ok, std::move(out), {}};
}

Reply refused(const Problems& problems) {
    return withProblems(Exit::input, problems);
}

Reply failed(const Problems& problems) {
    return withProblems(Exit::machine, problems);
}

std::string printable(const std::string& text, std::size_t limit) {
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        if (out.size() >= limit) return out + " …";
        const std::size_t length = printableLength(text, at);
        if (length == 0)
            out += fmt::format("\\x{:02X}", static_cast<unsigned char>(text[at]));
        else
            out.append(text, at, length);
        at += length == 0 ? 1 : length;
    }
    return out;
}

} // namespace rhizograph::cli
