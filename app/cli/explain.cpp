#include "cli/commands.h"
#include "cli/load.h"

#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

/// Writes an assessment for people, part by part.
class Explanation {
public:
    Explanation(const Exam& exam, const Knowledge& knowledge) : exam_(exam), knowledge_(knowledge) {}

    std::string of(const Assessment& a) {
        redSigns(a);
        sites(a);
        fit(a);
        for (const Level& level : a.levels)
            line("Would fit: {} disc, {} ({:.0f} %)", level.disc, level.zone, 100 * level.share);
        screens(a);
        for (const ConsistencyNote& note : a.consistency)
            line("Consistency: {} ({})", note.sentence, keys(note.because));
        nextTests(a);
        for (const WorkupNote& note : a.workup)
            line("Usually considered: {} [{}]", note.text, note.source);
        for (const Code& code : a.codes)
            line("Code that would fit: {} {} {}", code.system, code.code, code.text);
        line("\nDecision support for a licensed clinician, not a diagnosis; local pathways apply.");
        return out_;
    }

private:
    template <class... Values> void line(fmt::format_string<Values...> format, Values&&... values) {
        out_ += fmt::format(format, std::forward<Values>(values)...) + "\n";
    }

    [[nodiscard]] static std::string sided(const std::string& what, Side side) {
        return side == Side::none
                   ? what
                   : fmt::format("{}, {}", what, side == Side::both ? "both sides" : name(side));
    }

    [[nodiscard]] std::string finding(const FindingKey& key) const {
        const Item* item = knowledge_.catalogue().find(key.item);
        const std::string label = sided(item == nullptr ? key.item.text() : item->label, key.side);
        const Finding* found = exam_.find(key);
        if (item == nullptr || found == nullptr) return label;
        return label + ": " + display(item->scale, found->value);
    }

    [[nodiscard]] std::string keys(const std::vector<FindingKey>& list) const {
        std::string out;
        for (const FindingKey& key : list)
            out += (out.empty() ? "" : "; ") + finding(key);
        return out;
    }

    void redSigns(const Assessment& a) {
        for (const RedSign& sign : a.redSigns) {
            const char* urgency = sign.urgency == Urgency::emergency ? "EMERGENCY"
                                  : sign.urgency == Urgency::urgent  ? "URGENT"
                                                                     : "Note";
            line("{}: {}\n    because {}\n    {} [{}]", urgency, sign.sentence, keys(sign.because),
                 sign.action, sign.source);
        }
    }

    void sites(const Assessment& a) {
        if (a.nothingKnown) line("No finding bears on the site yet: these are the starting weights.");
        for (const SiteResult& result : a.localization) {
            line("{}: {:.1f} %{}", sided(knowledge_.siteLabel(result.site), result.side),
                 100 * result.probability, supportWords(result.support));
            for (const Reason& reason : result.speaksFor)
                line("    {:+5.1f} decibans  {}", reason.decibans, finding(reason.finding));
            for (const Reason& reason : result.speaksAgainst)
                line("    {:+5.1f} decibans  {}", reason.decibans, finding(reason.finding));
        }
    }

    [[nodiscard]] static const char* supportWords(Support support) {
        switch (support) {
        case Support::strong:
            return ", strong support";
        case Support::moderate:
            return ", moderate support";
        case Support::weak:
            return ", weak support";
        case Support::none:
            break;
        }
        return "";
    }

    void fit(const Assessment& a) {
        if (a.nothingKnown) return;
        if (a.fit.verdict == FitVerdict::fits)
            return line("The findings fit the first site (z {:.1f}).", a.fit.z);
        line("The findings fit {} site (z {:.1f}).",
             a.fit.verdict == FitVerdict::partly ? "only in part one" : "no one", a.fit.z);
        for (const FitWorst& worst : a.fit.worst)
            line("    surprising: {} ({:.1f} standard deviations)", keys(worst.findings), worst.surprise);
    }

    void screens(const Assessment& a) {
        for (const ScreenResult& screen : a.screens) {
            if (screen.verdict == ScreenVerdict::notExamined) {
                line("Screen {}: not examined", sided(screen.label, screen.side));
                continue;
            }
            const char* verdict = screen.verdict == ScreenVerdict::low      ? "low"
                                  : screen.verdict == ScreenVerdict::raised ? "raised"
                                                                            : "high";
            line("Screen {}: {} ({:.0f} %) {}", sided(screen.label, screen.side), verdict,
                 100 * screen.probability, keys(screen.because));
        }
    }

    void nextTests(const Assessment& a) {
        for (const NextTest& test : a.nextTests) {
            std::string parted;
            for (const SiteId& site : test.separates)
                parted += (parted.empty() ? "" : " and ") + knowledge_.siteLabel(site);
            line("Next: {} ({:.2f} bits{}{})", finding(test.test), test.gainBits,
                 parted.empty() ? "" : ", parts " + parted, test.urgent ? ", red-sign question" : "");
        }
    }

    const Exam& exam_;
    const Knowledge& knowledge_;
    std::string out_;
};

} // namespace

Reply runExplain(const Arguments& arguments) {
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto visit = readVisit(arguments, knowledge->catalogue());
    if (!visit) return refused(visit.problems());
    return done(Explanation{visit->exam, *knowledge}.of(assess(visit->exam, *knowledge, visit->before())));
}

} // namespace rhizograph::cli
