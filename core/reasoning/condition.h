#pragma once

#include "base/json.h"
#include "catalogue/catalogue.h"
#include "exam/exam.h"
#include "reasoning/assessment.h"

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

namespace rhizograph {

/// Three-valued logic after Kleene: what was not examined is unknown, and unknown never fires a rule.
enum class Truth { no, unknown, yes };

[[nodiscard]] Truth negated(Truth truth);

/// What a condition came to, and the findings that decided it (empty while unknown).
struct Answer {
    Truth truth = Truth::unknown;
    std::vector<FindingKey> because; ///< sorted, each once
    [[nodiscard]] bool holds() const { return truth == Truth::yes; }
};

/// What conditions may look at. `assessment` is there only for rules that run after it (work-up, codes).
struct Circumstances {
    const Exam* exam = nullptr;
    const Exam* previous = nullptr;
    const Assessment* assessment = nullptr;
    Side same = Side::none; ///< the side "same" stands for; none outside a rule that runs once a side
};

class Condition;

/// A condition that others may name, so that what belongs together is said once.
struct Term;
using Terms = std::map<std::string, Term>;

/// What a condition may name; anything else is refused on load.
struct Vocabulary {
    const Catalogue* catalogue = nullptr;
    std::shared_ptr<const Terms> terms; ///< null: none
    std::set<std::string> sites;
    std::set<std::string> redSigns;
    std::set<std::string> screens;
    bool sidedRule = false;  ///< "same" and "other" have a meaning here
    bool assessment = false; ///< site_in, red_sign and screen are allowed here
};

/// One condition of a rule file, compiled. Forms (each an object):
///   {"item": id | "group.*" | [ids], "side": left|right|both|same|other, "except": [ids],
///    "is": token | [tokens] | "at_least": x | "at_most": x | "recorded": true|false,
///    "was": token | [tokens] | "fell_by": whole grades      against the earlier visit; alone or beside one
///    of those "minus": {"item": id, "side": …}}            the number of the item less that of another
///   {"any": […]}  {"all": […]}  {"not": …}  {"count_at_least": n, "of": […]}
///   {"unless": …}                                 true but where the inner condition is known to hold
///   {"term": name}                                a condition named in the same files
///   {"either_side": …}  {"both_sides": …}         inside, "same" is one side and "other" its opposite
///   {"age_at_least": years}  {"age_at_most": years}  {"sex": word}
///   {"site_in": [ids], "probability_at_least": p, "side": …}
///   {"red_sign": id | "*", "urgency_at_least": word}   {"screen": id, "verdict": word | [words], "side": …}
/// A sided item named without a side is true when either side is; a wildcard or list when any of its items
/// is. Every form but "recorded" and "unless" is unknown for what was not examined or not testable. "unless"
/// is there for what lowers an alarm ("unless long-standing"): a question not asked must not lower it.
class Condition {
public:
    /// Problems go to the node's list; the result is then not to be used.
    static Condition parse(const JsonNode& node, const Vocabulary& vocabulary);

    [[nodiscard]] Answer evaluate(const Circumstances& circumstances) const;
    /// The truth alone, several times as fast.
    [[nodiscard]] Truth truth(const Circumstances& circumstances) const {
        return judge(circumstances, nullptr);
    }

private:
    /// Where the findings that decide are added, sorted, each once; null when nobody asks for them. Nothing
    /// is added while the truth is unknown.
    using Because = std::vector<FindingKey>*;

    enum class Which { given, same, other };
    /// A finding to look at: a fixed side, or one relative to the side the rule runs for.
    struct Place {
        Place() = default;
        explicit Place(const ItemId& item, Which which = Which::given, Side side = Side::none);
        [[nodiscard]] const FindingKey& key(Side same) const;
        std::array<FindingKey, 3> keys; ///< when "same" is left, right, none
    };
    struct FindingTest {
        Place place;
        std::vector<std::string> accepted; ///< tokens that satisfy the test; empty for numbers
        std::optional<double> atLeast;
        std::optional<double> atMost;
        std::optional<int> fellBy;
        std::vector<std::string> was; ///< tokens the earlier visit must have; empty for whatever
        std::optional<bool> recorded;
        std::optional<Place> minus;
    };
    struct AgeTest {
        int least = 0;
        int most = 200;
    };
    struct SexTest {
        std::string sex;
    };
    struct SiteTest {
        std::set<std::string> sites;
        double probability = 0;
        Which which = Which::given;
        std::optional<Side> side; ///< none: whatever the side
    };
    struct RedSignTest {
        std::string id; ///< "*": any
        Urgency least = Urgency::note;
    };
    struct ScreenTest {
        std::string id;
        std::set<ScreenVerdict> verdicts;
        Which which = Which::given;
        std::optional<Side> side;
    };
    /// True when at least `needed` parts are; any is 1, all is every one.
    struct Count {
        std::size_t needed = 1;
        std::vector<Condition> parts;
    };
    struct Not {
        std::vector<Condition> part; ///< exactly one
    };
    struct Unless {
        std::vector<Condition> part; ///< exactly one
    };
    struct Sides {
        bool both = false;
        std::vector<Condition> part; ///< exactly one
    };
    using Form = std::variant<std::monostate, Count, Not, Unless, Sides, FindingTest, AgeTest, SexTest,
                              SiteTest, RedSignTest, ScreenTest>;
    friend class ConditionParser;

    [[nodiscard]] Truth judge(const Circumstances& at, Because because) const;
    /// Refused on load: unknown.
    [[nodiscard]] static Truth of(std::monostate, const Circumstances&, Because) { return Truth::unknown; }
    [[nodiscard]] static Truth of(const Count& count, const Circumstances& at, Because because);
    [[nodiscard]] static Truth of(const Not& negation, const Circumstances& at, Because because);
    [[nodiscard]] static Truth of(const Unless& unless, const Circumstances& at, Because because);
    [[nodiscard]] static Truth of(const Sides& sides, const Circumstances& at, Because because);
    [[nodiscard]] static Truth of(const FindingTest& test, const Circumstances& at, Because because);
    [[nodiscard]] static Truth now(const FindingTest& test, const Value& value, const Circumstances& at,
                                   Because because);
    [[nodiscard]] static Truth before(const FindingTest& test, const FindingKey& key, const Value& value,
                                      const Exam* previous);
    [[nodiscard]] static Truth of(const AgeTest& test, const Circumstances& at, Because because);
    [[nodiscard]] static Truth of(const SexTest& test, const Circumstances& at, Because because);
    [[nodiscard]] static Truth of(const SiteTest& test, const Circumstances& at, Because because);
    [[nodiscard]] static Truth of(const RedSignTest& test, const Circumstances& at, Because because);
    [[nodiscard]] static Truth of(const ScreenTest& test, const Circumstances& at, Because because);

    Form form_;
};

struct Term {
    Condition condition;
    bool perSide = false; ///< speaks of "same" and "other", so only rules that run side by side may name it
};

/// The whole grade of a token: "4-", "4" and "4+" are 4. Visits are compared on whole grades, since plus and
/// minus lower the agreement between examiners (O'Neill, Chiropr Man Therap 2017). None when it has no digit.
[[nodiscard]] std::optional<int> wholeGrade(const std::string& token);

} // namespace rhizograph
