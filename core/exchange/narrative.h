#pragma once

#include "exchange/wording.h"
#include "reasoning/knowledge.h"

#include <set>
#include <string>
#include <vector>

namespace rhizograph {

/// One head of the written examination, in the order in which clinicians write it.
struct NarrativeSection {
    std::string id;    ///< fixed name from phrases.json ("strength", "sensation", "impression"); for the page
    std::string title; ///< "Strength"
    std::string positives;   ///< what is not normal, specific, to be printed first and bold; may be empty
    std::string rest;        ///< normal findings grouped, and what carries no judgement; may be empty
    std::string notExamined; ///< "Not examined: …" for everyday items without a finding; may be empty
};

/// The examination in words. Every sentence rests on findings of the exam: what was not examined is never
/// called normal, it is named as not examined or left out.
struct Narrative {
    std::vector<NarrativeSection> sections; ///< sections without any words are left out
    std::string cautions;                   ///< to stand under every impression, on screen and paper
};

/// Words for one exam and what the engine makes of it; `previous` adds what changed since that visit.
/// Measures are written in `units`.
[[nodiscard]] Narrative narrate(const Exam& exam, const Assessment& assessment, const Knowledge& knowledge,
                                const Exam* previous = nullptr, Units units = Units::metric);

/// The same in a form for one page: of the examination only what is not normal. Where something else was
/// found, and where something was not examined, is named in one line, so that nothing left off seems not to
/// be there. Sections in `whole` (those whose words a person changed) stay as they are.
[[nodiscard]] Narrative inShort(const Narrative& narrative, const Knowledge& knowledge,
                                const std::set<std::string>& whole = {});

/// The narrative as plain text, 78 columns at most, ending with a line break.
[[nodiscard]] std::string asText(const Narrative& narrative);

} // namespace rhizograph
