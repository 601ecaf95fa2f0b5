#include "casesreport/score.h"

#include "reasoning/localizer.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace rhizograph::casesreport {
namespace {

/// Smallest probability that enters the mean log score, so that one case cannot make it infinite.
constexpr double leastProbability = 1e-6;
constexpr double sureFrom = 0.8;

bool names(const std::vector<std::string>& ids, const std::string& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

std::vector<Ranked> ranking(const Exam& exam, const Knowledge& knowledge) {
    std::vector<Ranked> out;
    for (const auto& entry : knowledge.localizer().posterior(exam))
        out.push_back({entry.site, entry.side, entry.probability});
    std::stable_sort(out.begin(), out.end(),
                     [](const Ranked& a, const Ranked& b) { return a.probability > b.probability; });
    return out;
}

void scoreAlarms(const Assessment& assessment, CaseScore& out) {
    const Case& given = *out.given;
    for (const std::string& id : given.redSigns)
        if (std::none_of(assessment.redSigns.begin(), assessment.redSigns.end(),
                         [&](const RedSign& sign) { return sign.id == id; }))
            out.redMissed.push_back(id);
    for (const RedSign& sign : assessment.redSigns)
        if (sign.urgency == Urgency::emergency && names(given.mustNot, sign.id) &&
            !names(given.redSigns, sign.id))
            out.falseAlarms.push_back(sign.id);
    for (const std::string& id : given.screens)
        if (std::none_of(
                assessment.screens.begin(), assessment.screens.end(), [&](const ScreenResult& screen) {
                    return screen.id == id &&
                           (screen.verdict == ScreenVerdict::raised || screen.verdict == ScreenVerdict::high);
                }))
            out.screensMissed.push_back(id);
}

std::string named(const Ranked& answer) {
    if (answer.side == Side::none) return fmt::format("{} {:.2f}", answer.site.text(), answer.probability);
    return fmt::format("{} {} {:.2f}", answer.site.text(), name(answer.side), answer.probability);
}

} // namespace

bool accepted(const Case& given, const Ranked& answer) {
    const bool site =
        std::find(given.sites.begin(), given.sites.end(), answer.site.text()) != given.sites.end();
    return site && (!given.side || answer.side == Side::none || answer.side == *given.side);
}

CaseScore localizationScore(const Case& given, const Knowledge& knowledge) {
    CaseScore out;
    out.given = &given;
    out.ranking = ranking(given.exam, knowledge);
    for (std::size_t i = 0; i < out.ranking.size(); ++i) {
        if (!accepted(given, out.ranking[i])) continue;
        out.truthProbability += out.ranking[i].probability;
        if (out.rank == 0) out.rank = i + 1;
    }
    out.sideRight = given.side && out.ranking.front().side == *given.side;
    return out;
}

CaseScore score(const Case& given, const Knowledge& knowledge) {
    CaseScore out = localizationScore(given, knowledge);
    scoreAlarms(assess(given.exam, knowledge), out);
    return out;
}

std::string row(const CaseScore& score) {
    return fmt::format("{}\t{}\t{:.9f}\n", score.given->id, score.rank, score.truthProbability);
}

Summary summarize(const std::vector<CaseScore>& scores) {
    Summary out;
    double logs = 0;
    for (const CaseScore& score : scores) {
        const Case& given = *score.given;
        ++out.cases;
        out.redExpected += static_cast<int>(given.redSigns.size());
        out.redRaised += static_cast<int>(given.redSigns.size() - score.redMissed.size());
        out.falseAlarms += static_cast<int>(score.falseAlarms.size());
        out.screensExpected += static_cast<int>(given.screens.size());
        out.screensRaised += static_cast<int>(given.screens.size() - score.screensMissed.size());
        if (!given.localizable) continue;
        ++out.localizable;
        out.first += score.rank == 1;
        out.three += score.rank >= 1 && score.rank <= 3;
        out.sided += given.side.has_value();
        out.sideRight += score.sideRight;
        const bool sure = score.ranking.front().probability >= sureFrom;
        out.sure += sure;
        out.sureWrong += sure && score.rank != 1;
        logs += std::log(std::max(score.truthProbability, leastProbability));
    }
    out.meanLog = out.localizable == 0 ? 0 : logs / out.localizable;
    return out;
}

std::string line(const Summary& s) {
    return fmt::format(
        "first {}/{} three {}/{} side {}/{} log {:.3f} sure {} sure_wrong {} red {}/{} false_alarms {} "
        "screens {}/{}",
        s.first, s.localizable, s.three, s.localizable, s.sideRight, s.sided, s.meanLog, s.sure, s.sureWrong,
        s.redRaised, s.redExpected, s.falseAlarms, s.screensRaised, s.screensExpected);
}

std::string line(const CaseScore& score) {
    const Case& given = *score.given;
    const std::string verdict = !given.localizable ? "-"
                                : score.rank == 0  ? "nowhere"
                                : score.rank == 1  ? "first"
                                                   : fmt::format("rank {}", score.rank);
    std::string out = fmt::format("{:<8} {:.3f}  {}  truth {}", verdict, score.truthProbability, given.id,
                                  fmt::join(given.sites, " or "));
    if (given.side) out += fmt::format(" {}", name(*given.side));
    out += "; said";
    for (std::size_t i = 0; i < std::min<std::size_t>(3, score.ranking.size()); ++i)
        out += fmt::format("{}{}", i == 0 ? " " : ", ", named(score.ranking[i]));
    if (!score.redMissed.empty()) out += fmt::format("; red missed {}", fmt::join(score.redMissed, " "));
    if (!score.falseAlarms.empty()) out += fmt::format("; false alarm {}", fmt::join(score.falseAlarms, " "));
    if (!score.screensMissed.empty())
        out += fmt::format("; screen missed {}", fmt::join(score.screensMissed, " "));
    return out;
}

std::string calibration(const std::vector<CaseScore>& scores) {
    struct Bin {
        double from, to;
        int answers = 0, right = 0;
        double stated = 0;
    };
    std::array<Bin, 6> bins{{{0, 0.25}, {0.25, 0.5}, {0.5, 0.7}, {0.7, 0.8}, {0.8, 0.9}, {0.9, 1.0001}}};
    for (const CaseScore& score : scores) {
        if (!score.given->localizable) continue;
        const double p = score.ranking.front().probability;
        for (Bin& bin : bins) {
            if (p < bin.from || p >= bin.to) continue;
            ++bin.answers;
            bin.right += score.rank == 1;
            bin.stated += p;
        }
    }
    std::string out = "stated       answers  mean stated  share right\n";
    for (const Bin& bin : bins)
        out +=
            fmt::format("{:.2f}-{:.2f}    {:>7}  {:>11}  {:>11}\n", bin.from, std::min(bin.to, 1.0),
                        bin.answers, bin.answers == 0 ? "-" : fmt::format("{:.2f}", bin.stated / bin.answers),
                        bin.answers == 0 ? "-" : fmt::format("{:.2f}", double(bin.right) / bin.answers));
    return out;
}

} // namespace rhizograph::casesreport
