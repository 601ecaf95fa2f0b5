#include "cli/commands.h"
#include "cli/footing.h"
#include "cli/load.h"
#include "cli/resources.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

/// A cell of a table: the bar would end it.
std::string cell(std::string text) {
    for (std::size_t at = text.find('|'); at != std::string::npos; at = text.find('|', at + 2))
        text.replace(at, 1, "\\|");
    return text;
}

std::string asText(const Knowledge& knowledge, const std::vector<Sourced>& entries) {
    const auto& items = knowledge.catalogue().items();
    const auto core =
        std::count_if(items.begin(), items.end(), [](const Item& item) { return item.tier == Tier::core; });
    std::string out = fmt::format("version {}\nsteps {}\nitems {}\ncore items {}\n", knowledge.version(),
                                  knowledge.catalogue().steps().size(), items.size(), core);
    for (const Sourced& entry : entries)
        out += fmt::format("{}: {}: {}: {}\n", nameOf(entry.footing), entry.file, entry.place, entry.source);
    for (const auto& [footing, count] : countFootings(entries))
        out += fmt::format("{:>5} of {} {}\n", count, entries.size(), nameOf(footing));
    return out;
}

std::string asMarkdown(const std::vector<Sourced>& entries) {
    std::string out =
        "# Sources\n\nWritten by `rhizo knowledge --format markdown` from the knowledge files: every entry "
        "that carries "
        "numbers or a rule, with what it\nstands on. Row ids (CES-01, N213) are those of the evidence "
        "table in `resources/knowledge/evidence.json` or of the tables of published\nfigures behind it. "
        "An entry is named by the ids on the way to it.\n\n| entries | share | footing |\n|---:|---:|---|\n";
    for (const auto& [footing, count] : countFootings(entries))
        out += fmt::format("| {} | {:.0f} % | {} |\n", count,
                           100.0 * static_cast<double>(count) / static_cast<double>(entries.size()),
                           nameOf(footing));
    std::string file;
    for (const Sourced& entry : entries) {
        if (entry.file != file)
            out += fmt::format("\n## {}\n\n| entry | footing | source |\n|---|---|---|\n", entry.file);
        file = entry.file;
        out +=
            fmt::format("| {} | {} | {} |\n", cell(entry.place), nameOf(entry.footing), cell(entry.source));
    }
    return out;
}

} // namespace

Reply runKnowledge(const Arguments& arguments) {
    const std::string format = arguments.option("--format").value_or("text");
    if (format != "text" && format != "markdown")
        return refused({Problem{"", "--format", "is text or markdown, not " + format}});
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto resources = findResources();
    if (!resources) return failed(resources.problems());
    const auto entries = sourcedEntries(*resources / "knowledge");
    if (!entries) return failed(entries.problems());
    return done(format == "text" ? asText(*knowledge, *entries) : asMarkdown(*entries));
}

} // namespace rhizograph::cli
