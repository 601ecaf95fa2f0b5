#include "exchange/impressionwords.h"

#include "exchange/familywriter.h"
#include "reasoning/names.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph {
namespace {

constexpr std::size_t kOtherSites = 3;
constexpr double kWorthNaming = 0.05; ///< probability from which another site is named
constexpr double kCertain = 0.99;     ///< above it no number is written: it would claim too much
constexpr double kLikeShare = 0.3;    ///< share from which a second disc level is said beside the first
constexpr std::size_t kReasons = 5;   ///< strongest reasons said each way

class ImpressionWriter {
public:
    ImpressionWriter(const Wording& words, const Exam& exam, const Assessment& assessment)
        : words_(words), exam_(exam), assessment_(assessment) {}

    NarrativeSection warnings() {
        NarrativeSection out{"red_signs", words_.word("red_signs"), {}, {}, {}};
        for (const RedSign& sign : assessment_.redSigns)
            addSentence(
                out.positives,
                fill("red_sign", {{"urgency", words_.word("urgency." + std::string{name(sign.urgency)})},
                                  {"sentence", sign.sentence},
                                  {"because", findingWords(words_, exam_, sign.because)},
                                  {"action", sign.action}}));
        if (assessment_.redSigns.empty() && !exam_.findings().empty()) out.rest = words_.word("no_red_sign");
        if (!assessment_.notAsked.empty())
            out.notExamined = fill("not_asked", {{"items", subjects(assessment_.notAsked)}});
        return out;
    }

    NarrativeSection impression() {
        NarrativeSection out{"impression", words_.word("impression"), {}, {}, {}};
        if (assessment_.nothingKnown || assessment_.localization.empty())
            out.rest = words_.word("nothing_known");
        else
            sites(out);
        for (const ScreenResult& screen : assessment_.screens)
            if (screen.verdict == ScreenVerdict::raised || screen.verdict == ScreenVerdict::high)
                addSentence(out.rest, screenWords(screen));
        for (const ConsistencyNote& note : assessment_.consistency)
            addSentence(out.rest, fill("consistency", {{"sentence", withSide(note.sentence, note.side)}}));
        for (const WorkupNote& note : assessment_.workup)
            addSentence(out.rest, fill("workup", {{"text", note.text}}));
        return out;
    }

private:
    [[nodiscard]] std::string fill(const std::string& key, std::map<std::string, std::string> text) const {
        PhraseFields fields;
        fields.text = std::move(text);
        return fillPhrase(words_.word(key), fields);
    }

    [[nodiscard]] std::string percent(double probability) const {
        if (probability > kCertain) return words_.word("percent_over");
        return fill("percent", {{"number", fmt::format("{:.0f}", 100 * probability)}});
    }

    [[nodiscard]] std::string withSide(const std::string& text, Side side) const {
        return side == Side::none ? text : words_.side(side) + ": " + lowerFirst(text);
    }

    [[nodiscard]] std::string subjects(const std::vector<FindingKey>& keys) const {
        std::string out;
        for (const FindingKey& key : keys)
            out += (out.empty() ? "" : "; ") + words_.subject(key);
        return out;
    }

    [[nodiscard]] std::string supportWord(Support support) const {
        switch (support) {
        case Support::weak:
            return words_.word("support.weak");
        case Support::moderate:
            return words_.word("support.moderate");
        case Support::strong:
            return words_.word("support.strong");
        case Support::none:
            break;
        }
        return words_.word("support.none");
    }

    [[nodiscard]] std::string reasons(const std::vector<Reason>& all) const {
        std::vector<FindingKey> keys;
        for (const Reason& reason : all)
            if (keys.size() < kReasons) keys.push_back(reason.finding);
        return findingWords(words_, exam_, keys);
    }

    void sites(NarrativeSection& out) const {
        const SiteResult& first = assessment_.localization.front();
        const std::string own = "leading." + first.site.text();
        out.positives = fill(words_.book().findWord(own) == nullptr ? "leading" : own,
                             {{"site", words_.site(first.site, first.side)},
                              {"support", supportWord(first.support)},
                              {"percent", percent(first.probability)}});
        if (!first.speaksFor.empty())
            addSentence(out.rest, fill("speaks_for", {{"findings", reasons(first.speaksFor)}}));
        if (!first.speaksAgainst.empty())
            addSentence(out.rest, fill("speaks_against", {{"findings", reasons(first.speaksAgainst)}}));
        addSentence(out.rest, others());
        levels(out);
        fit(out);
    }

    void levels(NarrativeSection& out) const {
        for (std::size_t i = 0; i < assessment_.levels.size(); ++i) {
            const Level& level = assessment_.levels[i];
            const char* key = i == 0 ? "level" : level.share < kLikeShare ? "level_rarer" : "level_or";
            addSentence(out.rest, fill(key, {{"zone", level.zone}, {"disc", level.disc}}));
        }
    }

    [[nodiscard]] std::string others() const {
        std::string list;
        for (std::size_t i = 1; i < assessment_.localization.size() && i <= kOtherSites; ++i) {
            const SiteResult& site = assessment_.localization[i];
            if (site.probability < kWorthNaming) break;
            list += fmt::format("{}{} ({})", list.empty() ? "" : "; ", words_.site(site.site, site.side),
                                percent(site.probability));
        }
        return list.empty() ? list : fill("other_site", {{"sites", list}});
    }

    void fit(NarrativeSection& out) const {
        const Fit& fit = assessment_.fit;
        addSentence(out.rest, words_.word(fit.verdict == FitVerdict::fits     ? "fit.fits"
                                          : fit.verdict == FitVerdict::partly ? "fit.partly"
                                                                              : "fit.poor"));
        std::string surprising;
        if (fit.verdict != FitVerdict::fits)
            for (const FitWorst& worst : fit.worst)
                surprising += (surprising.empty() ? "" : "; ") + findingWords(words_, exam_, worst.findings);
        if (!surprising.empty()) addSentence(out.rest, fill("surprising", {{"findings", surprising}}));
    }

    [[nodiscard]] std::string screenWords(const ScreenResult& screen) const {
        const char* verdict = screen.verdict == ScreenVerdict::high ? "screen.high" : "screen.raised";
        const std::string label = screen.side == Side::none
                                      ? lowerFirst(screen.label)
                                      : words_.side(screen.side) + " " + lowerFirst(screen.label);
        return fill("screen", {{"label", label},
                               {"verdict", words_.word(verdict)},
                               {"percent", percent(screen.probability)},
                               {"findings", findingWords(words_, exam_, screen.because)}});
    }

    const Wording& words_;
    const Exam& exam_;
    const Assessment& assessment_;
};

} // namespace

std::vector<NarrativeSection> impressionSections(const Wording& words, const Exam& exam,
                                                 const Assessment& assessment) {
    ImpressionWriter writer{words, exam, assessment};
    std::vector<NarrativeSection> out;
    for (NarrativeSection section : {writer.warnings(), writer.impression()})
        if (!section.positives.empty() || !section.rest.empty() || !section.notExamined.empty())
            out.push_back(std::move(section));
    return out;
}

} // namespace rhizograph
