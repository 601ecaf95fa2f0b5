#pragma once

#include "exchange/narrative.h"
#include "record/model.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

/// What people wrote and did beside the findings of a visit.
struct VisitPapers {
    std::string plan;
    std::vector<AuthoredText> notes; ///< among them changed words of the summary
    std::vector<RedSignAcknowledgement> acknowledgements;
    std::optional<Signature> signature;
    std::vector<AuthoredText> addenda;
    bool operator==(const VisitPapers&) const = default;
};

/// Words a person put in place of those the program wrote for one section of the summary.
struct ChangedWords {
    std::string words;
    std::string basis; ///< the program's words at that time
    std::string by;
    bool operator==(const ChangedWords&) const = default;
};

/// The note that records one change of words.
[[nodiscard]] std::string noteOf(const std::string& section, const ChangedWords& changed);
/// The changes among the notes of a visit by section, oldest note first: the last of a section counts, and
/// one whose words equal the program's takes the change back. Other notes are left alone.
[[nodiscard]] std::map<std::string, ChangedWords> changedWords(const std::vector<AuthoredText>& notes);

/// Whether somebody answered for this red sign at its present urgency or a graver one; the last who did.
[[nodiscard]] const RedSignAcknowledgement* acknowledgementOf(const RedSign& sign,
                                                              const std::vector<RedSignAcknowledgement>& all);

/// Puts changed words in place of the program's, says of every graver red sign who acknowledged it and when,
/// and adds plan, addenda and signature. Times are written as `moment` writes them.
void addPapers(Narrative& narrative, const VisitPapers& papers, const Assessment& assessment,
               const Knowledge& knowledge, std::string (*moment)(const std::string& utc));

/// "2026-03-04 09:30 UTC".
[[nodiscard]] std::string utcMoment(const std::string& utc);

} // namespace rhizograph
