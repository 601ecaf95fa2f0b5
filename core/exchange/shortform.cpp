#include "exchange/narrative.h"

#include "exchange/wording.h"

#include <algorithm>

namespace rhizograph {
namespace {

std::string filled(const Wording& words, const std::string& key, const std::string& sections) {
    if (sections.empty()) return {};
    PhraseFields fields;
    fields.text = {{"sections", sections}};
    return fillPhrase(words.word(key), fields);
}

} // namespace

Narrative inShort(const Narrative& narrative, const Knowledge& knowledge,
                  const std::set<std::string>& whole) {
    const Wording words{knowledge, Units::metric};
    const auto& examined = words.book().sections();
    const auto isExamined = [&](const NarrativeSection& section) {
        return std::any_of(examined.begin(), examined.end(),
                           [&](const PhraseSection& each) { return each.id == section.id; });
    };
    Narrative out;
    out.cautions = narrative.cautions;
    std::string more;
    std::string missing;
    const auto name = [](std::string& list, const NarrativeSection& section) {
        list += (list.empty() ? "" : "; ") + lowerFirst(section.title);
    };
    std::size_t end = 0;
    for (const NarrativeSection& section : narrative.sections) {
        const bool shortened = isExamined(section) && !whole.contains(section.id);
        if (!shortened) {
            out.sections.push_back(section);
        } else {
            if (!section.rest.empty()) name(more, section);
            if (!section.notExamined.empty()) name(missing, section);
            if (!section.positives.empty())
                out.sections.push_back({section.id, section.title, section.positives, {}, {}});
        }
        if (isExamined(section)) end = out.sections.size();
    }
    if (!more.empty() || !missing.empty())
        out.sections.insert(out.sections.begin() + static_cast<std::ptrdiff_t>(end),
                            {"elsewhere",
                             words.word("elsewhere"),
                             {},
                             filled(words, "elsewhere_more", more),
                             filled(words, "elsewhere_missing", missing)});
    return out;
}

} // namespace rhizograph
