#pragma once

#include "base/strong.h"
#include "exam/exam.h"

#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

/// How far one finding moves one site: change in log odds when that finding alone is removed.
struct Reason {
    FindingKey finding;
    double decibans = 0; ///< 10 log10 of the odds ratio; positive speaks for the site
    bool operator==(const Reason&) const = default;
};

/// Words for a probability, by thresholds of observation.json.
enum class Support { none, weak, moderate, strong };

/// One site on one side (none for "no root or nerve lesion") with its posterior probability.
struct SiteResult {
    SiteId site;
    Side side = Side::none;
    double probability = 0;
    Support support = Support::none;
    std::vector<Reason> speaksFor;     ///< strongest first
    std::vector<Reason> speaksAgainst; ///< strongest first
};

/// Whether the findings, taken together, look like the best site at all.
enum class FitVerdict { fits, partly, poor };

struct FitWorst {
    std::vector<FindingKey> findings; ///< the group of findings that surprised most
    double surprise = 0;              ///< standard deviations below what the site would show
};

struct Fit {
    FitVerdict verdict = FitVerdict::fits;
    double z = 0;
    std::vector<FitWorst> worst;
};

/// A disc level that would fit the leading root.
struct Level {
    std::string disc;
    std::string zone;
    double share = 0;
};

enum class ScreenVerdict { notExamined, low, raised, high };

struct ScreenResult {
    std::string id;
    std::string label;
    Side side = Side::none;
    double probability = 0;
    ScreenVerdict verdict = ScreenVerdict::notExamined;
    std::vector<FindingKey> because;
};

enum class Urgency { note, urgent, emergency };

struct RedSign {
    std::string id;
    Urgency urgency = Urgency::note;
    std::string due;      ///< now, same_day, days, next_visit
    std::string sentence; ///< what stands out
    std::string action;   ///< what is usually done, deferring to the local pathway
    std::vector<FindingKey> because;
    std::string source;
};

struct ConsistencyNote {
    std::string id;
    Side side = Side::none;
    std::string sentence;
    std::vector<FindingKey> because;
    std::string source;
};

/// An unexamined item that would help most now.
struct NextTest {
    FindingKey test;
    double gainBits = 0;           ///< expected drop of the entropy of the site posterior
    std::vector<SiteId> separates; ///< the two leading sites it would part
    bool urgent = false;           ///< a red-sign question still open: asked first whatever the gain
};

struct WorkupNote {
    std::string id;
    std::string text;
    std::string source;
};

struct Code {
    std::string system; ///< "ICD-10-CM"
    std::string code;
    std::string text;
};

/// Everything the engine says about one visit. A value; equal inputs give equal assessments.
struct Assessment {
    std::vector<SiteResult> localization; ///< sorted by probability; all sites of 0.01 or more
    bool nothingKnown = false;            ///< no finding bears on the site: the priors stand as they are
    Fit fit;
    std::vector<Level> levels;
    std::vector<ScreenResult> screens;
    std::vector<RedSign> redSigns; ///< gravest first
    std::vector<FindingKey>
        notAsked; ///< warning questions still open: to be printed as not asked, never as normal
    std::vector<ConsistencyNote> consistency;
    int behavioralGroups = 0;
    std::vector<NextTest> nextTests;
    std::vector<WorkupNote> workup;
    std::vector<Code> codes;
    std::string knowledgeVersion;
};

} // namespace rhizograph
