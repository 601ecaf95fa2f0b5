#include "exchange/papers.h"

#include "exchange/wording.h"
#include "reasoning/names.h"

#include <algorithm>

namespace rhizograph {
namespace {

// Notes are plain text that people read in the record; these two lines mark the ones that hold words of the
// summary.
constexpr std::string_view kHead = "Summary words for section ";
constexpr std::string_view kInstead = "\nInstead of:\n";

class PapersWriter {
public:
    PapersWriter(const VisitPapers& papers, const Knowledge& knowledge,
                 std::string (*moment)(const std::string& utc))
        : papers_(papers), words_(knowledge, Units::metric), moment_(moment) {}

    void changeWords(Narrative& narrative) const {
        const auto changes = changedWords(papers_.notes);
        for (NarrativeSection& section : narrative.sections) {
            const auto found = changes.find(section.id);
            if (found == changes.end()) continue;
            const ChangedWords& changed = found->second;
            // What stands in bold stays bold where it is still the beginning.
            if (!section.positives.empty() && changed.words.starts_with(section.positives)) {
                section.rest = changed.words.substr(section.positives.size());
                section.rest.erase(0, section.rest.find_first_not_of(' '));
            } else {
                section.positives.clear();
                section.rest = changed.words;
            }
            addSentence(section.notExamined, fill("words_changed", {{"by", changed.by}}));
        }
    }

    void answerRedSigns(Narrative& narrative, const Assessment& assessment) const {
        const auto section =
            std::find_if(narrative.sections.begin(), narrative.sections.end(),
                         [](const NarrativeSection& each) { return each.id == "red_signs"; });
        if (section == narrative.sections.end()) return;
        for (const RedSign& sign : assessment.redSigns) {
            if (sign.urgency == Urgency::note) continue;
            std::string said = sign.sentence;
            if (said.ends_with('.')) said.pop_back();
            const RedSignAcknowledgement* given = acknowledgementOf(sign, papers_.acknowledgements);
            addSentence(section->rest,
                        given == nullptr
                            ? fill("not_acknowledged", {{"sign", said}})
                            : fill(given->by.empty() ? "acknowledged_unnamed" : "acknowledged",
                                   {{"sign", said}, {"by", given->by}, {"at", moment_(given->at)}}));
        }
    }

    void addPlanAndSignature(Narrative& narrative) const {
        narrative.sections.push_back({"plan",
                                      words_.word("plan"),
                                      {},
                                      papers_.plan.empty() ? words_.word("no_plan") : papers_.plan,
                                      {}});
        const auto& signature = papers_.signature;
        narrative.sections.push_back({"signature",
                                      words_.word("signature"),
                                      {},
                                      !signature
                                          ? words_.word("not_signed")
                                          : fill(signature->by.empty() ? "signed_unnamed" : "signed",
                                                 {{"by", signature->by}, {"at", moment_(signature->at)}}),
                                      {}});
        for (const AuthoredText& each : papers_.addenda)
            narrative.sections.push_back({"addendum",
                                          words_.word("addendum"),
                                          {},
                                          each.text,
                                          fill("written", {{"by", each.by}, {"at", moment_(each.at)}})});
    }

private:
    [[nodiscard]] std::string fill(const std::string& key, std::map<std::string, std::string> text) const {
        PhraseFields fields;
        fields.text = std::move(text);
        return fillPhrase(words_.word(key), fields);
    }

    const VisitPapers& papers_;
    Wording words_;
    std::string (*moment_)(const std::string& utc);
};

} // namespace

std::string noteOf(const std::string& section, const ChangedWords& changed) {
    return std::string{kHead} + section + "\n" + changed.words + std::string{kInstead} + changed.basis;
}

std::map<std::string, ChangedWords> changedWords(const std::vector<AuthoredText>& notes) {
    std::map<std::string, ChangedWords> out;
    for (const AuthoredText& note : notes) {
        const std::string& text = note.text;
        if (!text.starts_with(kHead)) continue;
        const std::size_t line = text.find('\n');
        const std::size_t basis = line == std::string::npos ? line : text.find(kInstead, line);
        if (basis == std::string::npos) continue;
        const std::string section = text.substr(kHead.size(), line - kHead.size());
        // With no words at all both lines share a line end.
        const std::size_t words = std::min(line + 1, basis);
        ChangedWords changed{text.substr(words, basis - words), text.substr(basis + kInstead.size()),
                             note.by};
        if (changed.words == changed.basis)
            out.erase(section);
        else
            out[section] = std::move(changed);
    }
    return out;
}

const RedSignAcknowledgement* acknowledgementOf(const RedSign& sign,
                                                const std::vector<RedSignAcknowledgement>& all) {
    const auto covers = [&](const RedSignAcknowledgement& given) {
        if (given.sign != sign.id) return false;
        for (const Urgency urgency : {Urgency::note, Urgency::urgent, Urgency::emergency})
            if (name(urgency) == given.urgency) return urgency >= sign.urgency;
        return false;
    };
    const auto last = std::find_if(all.rbegin(), all.rend(), covers);
    return last == all.rend() ? nullptr : &*last;
}

void addPapers(Narrative& narrative, const VisitPapers& papers, const Assessment& assessment,
               const Knowledge& knowledge, std::string (*moment)(const std::string& utc)) {
    const PapersWriter writer{papers, knowledge, moment};
    writer.changeWords(narrative);
    writer.answerRedSigns(narrative, assessment);
    writer.addPlanAndSignature(narrative);
}

std::string utcMoment(const std::string& utc) {
    if (utc.size() < 16) return utc;
    return utc.substr(0, 10) + " " + utc.substr(11, 5) + " UTC";
}

} // namespace rhizograph
