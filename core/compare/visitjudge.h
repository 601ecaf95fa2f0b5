#pragma once

#include "compare/compare.h"

namespace rhizograph {

/// Judges single questions of two visits. Both exams and the knowledge outlive it.
class VisitJudge {
public:
    VisitJudge(const Exam& earlier, const Exam& later, const Knowledge& knowledge, Examiner examiner)
        : earlier_(earlier), later_(later), knowledge_(knowledge), examiner_(examiner) {}

    /// What became of a question that at least one visit recorded. One that today's catalogue does not know,
    /// or whose value is not on today's scale, is not comparable.
    [[nodiscard]] ItemChange judge(const FindingKey& key) const;

private:
    [[nodiscard]] ItemChange judgeKnown(const Item& item, ItemChange out) const;
    [[nodiscard]] std::string reason(const ItemChange& change, const std::string& sameText) const;

    const Exam& earlier_;
    const Exam& later_;
    const Knowledge& knowledge_;
    Examiner examiner_;
};

/// Why a value says nothing for a comparison: not examined, not testable, not on today's scale. `when` is
/// "at this visit" or "on the right". Empty when it can be compared.
[[nodiscard]] std::string whyNotComparable(const Catalogue& catalogue, const FindingKey& key,
                                           const std::optional<Value>& value, const std::string& when);

[[nodiscard]] std::optional<Value> valueOf(const Exam& exam, const FindingKey& key);

/// Whether the value stands out on its scale.
[[nodiscard]] bool abnormal(const Item& item, const std::optional<Value>& value);

/// Sorts what changed before what did not; no other meaning.
[[nodiscard]] double rank(Change change);

constexpr double kLostSight = 1500; ///< abnormal at one visit, unknown at the other: above what is unchanged

} // namespace rhizograph
