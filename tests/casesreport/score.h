#pragma once

#include "casesreport/casefile.h"
#include "reasoning/knowledge.h"

#include <string>
#include <vector>

namespace rhizograph::casesreport {

/// One site and side with its probability, whatever its size.
struct Ranked {
    SiteId site;
    Side side = Side::none;
    double probability = 0;
};

/// Whether an answer names an accepted site on the true side.
[[nodiscard]] bool accepted(const Case& given, const Ranked& answer);

/// How one case came out.
struct CaseScore {
    const Case* given = nullptr;
    std::vector<Ranked> ranking; ///< most likely first
    std::size_t rank = 0;        ///< 1 when an accepted site stands first on the true side; 0 when nowhere
    bool sideRight = false;      ///< the first answer lies on the true side
    double truthProbability = 0; ///< summed over the accepted sites on the true side
    std::vector<std::string> redMissed;   ///< expected and not raised
    std::vector<std::string> falseAlarms; ///< emergencies the report does not warrant
    std::vector<std::string> screensMissed;
};

/// Counts over a set of cases. Localization counts localizable cases only; side those with a true side.
struct Summary {
    int cases = 0;
    int localizable = 0;
    int first = 0;
    int three = 0;
    int sided = 0;
    int sideRight = 0;
    int sure = 0;      ///< first answers of 0.8 or more
    int sureWrong = 0; ///< of those, wrong
    double meanLog = 0;
    int redExpected = 0;
    int redRaised = 0;
    int falseAlarms = 0;
    int screensExpected = 0;
    int screensRaised = 0;
};

/// Localization alone, without red signs and screens.
[[nodiscard]] CaseScore localizationScore(const Case& given, const Knowledge& knowledge);
[[nodiscard]] CaseScore score(const Case& given, const Knowledge& knowledge);
[[nodiscard]] Summary summarize(const std::vector<CaseScore>& scores);

/// "first 55/67 three 65/67 side … log -0.57 red 40/40 false_alarms 0 …" on one line.
[[nodiscard]] std::string line(const Summary& summary);
/// One line for a case: what was expected, what came first, what was missed.
[[nodiscard]] std::string line(const CaseScore& score);
/// "id<tab>rank<tab>probability of the true site".
[[nodiscard]] std::string row(const CaseScore& score);
/// Stated probability of the first answer, in bins, against the share that was right.
[[nodiscard]] std::string calibration(const std::vector<CaseScore>& scores);

} // namespace rhizograph::casesreport
