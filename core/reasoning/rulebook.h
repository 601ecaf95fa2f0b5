#pragma once

#include "base/problem.h"
#include "catalogue/catalogue.h"
#include "exam/exam.h"
#include "reasoning/assessment.h"
#include "reasoning/condition.h"
#include "reasoning/evidence.h"

#include <filesystem>
#include <string>
#include <unordered_map>
#include <vector>

namespace rhizograph {

/// The rules around the localization: red signs, screens, consistency, behavioral signs, work-up and codes.
/// Loaded once from resources/knowledge, immutable, checked against the catalogue on load.
///
/// Nothing here is averaged away: a red sign stands whatever the localization says, whatever a screen says
/// and whatever the behavioral signs say. Rules fire on what was found, never on what was left out.
class RuleBook {
public:
    /// Reads redsigns, screens, consistency, workup, codes, evidence and the site ids of sites.json.
    static Result<RuleBook> load(const std::filesystem::path& directory, const Catalogue& catalogue);

    /// Every screen, per side where it has sides; not examined where no rule but age or risk could be read.
    [[nodiscard]] std::vector<ScreenResult> screens(const Exam& exam) const;
    /// Gravest first, then in the order of the file. `previous` holds the latest earlier value of each
    /// finding (see carriedForward), or is null.
    [[nodiscard]] std::vector<RedSign> redSigns(const Exam& exam, const Exam* previous) const;
    /// Pairs of findings that disagree, and the note on behavioral signs when there are enough groups.
    [[nodiscard]] std::vector<ConsistencyNote> consistency(const Exam& exam) const;
    /// How many of the five groups of behavioral signs are present.
    [[nodiscard]] int behavioralGroups(const Exam& exam) const;
    /// What is usually considered next; `assessment` must hold localization, screens and red signs.
    [[nodiscard]] std::vector<WorkupNote> workup(const Exam& exam, const Assessment& assessment) const;
    /// Diagnosis codes that would fit, for the clinician to pick from.
    [[nodiscard]] std::vector<Code> codes(const Exam& exam, const Assessment& assessment) const;
    /// The warning questions (bladder, saddle, …) not yet answered: a page has to print them as not asked.
    [[nodiscard]] std::vector<FindingKey> notAsked(const Exam& exam) const;

    [[nodiscard]] const Evidence& evidence() const { return evidence_; }
    /// Ids in the order of the files.
    [[nodiscard]] std::vector<std::string> redSignIds() const;
    [[nodiscard]] std::vector<std::string> screenIds() const;

private:
    friend class RuleBookLoader;

    struct RedSignLevel {
        Urgency urgency = Urgency::note;
        std::string due;
        Condition when;
        std::string sentence;
        std::string action;
        std::string source;
    };
    struct RedSignRule {
        std::string id;
        std::vector<RedSignLevel> levels;
    };
    struct ScreenRule {
        std::string group;
        Condition when;
        double ifTrue = 1;       ///< likelihood ratio when the condition holds
        double ifFalse = 1;      ///< likelihood ratio when it does not
        bool background = false; ///< age or risk: moves the odds, but is no look at the joint or vessel
    };
    struct Screen {
        std::string id;
        std::string label;
        bool perSide = false;
        double prior = 0;
        double raised = 0;
        double high = 0;
        double cap = 1;
        std::vector<ScreenRule> rules;
    };
    struct ConsistencyRule {
        std::string id;
        bool perSide = false;
        Condition when;
        std::string sentence;
        std::string source;
    };
    struct Behavior {
        std::vector<Condition> groups;
        int noteAt = 3;
        std::string sentence;
        std::string source;
    };
    struct WorkupRule {
        WorkupNote note;
        Condition when;
    };
    struct CodeRule {
        Code code;
        Condition when;
    };

    [[nodiscard]] ScreenResult judge(const Screen& screen, const Exam& exam, Side side) const;
    [[nodiscard]] std::vector<Answer> behavior(const Exam& exam) const;
    [[nodiscard]] std::vector<FindingKey> inOrder(std::vector<FindingKey> keys) const;

    std::vector<RedSignRule> redSigns_;
    std::vector<FindingKey> askAlways_;
    std::vector<Screen> screens_;
    std::vector<ConsistencyRule> consistency_;
    Behavior behavior_;
    std::vector<WorkupRule> workup_;
    std::vector<CodeRule> codes_;
    Evidence evidence_;
    std::unordered_map<ItemId, std::size_t> order_; ///< place of an item in the examination
};

/// One sheet with the latest earlier value of every finding, oldest visit first: what a new visit is compared
/// with. A muscle not tested last time is so compared with the last time it was. Not testable values carry
/// nothing forward.
[[nodiscard]] Exam carriedForward(const std::vector<Exam>& earlier);

} // namespace rhizograph
