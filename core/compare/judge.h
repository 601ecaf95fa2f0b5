#pragma once

#include "compare/compare.h"
#include "reasoning/thresholds.h"

namespace rhizograph {

/// The same question on the other side, where it has one, at both visits.
struct OtherSide {
    const Value* before = nullptr;
    const Value* now = nullptr;
};

/// What became of one question whose two values were both tested.
[[nodiscard]] Change judgeChange(const Item& item, const ChangeRule& rule, const Value& before,
                                 const Value& now, const OtherSide& other, Examiner examiner);

/// Whether the change is a fall to a grade that goes before others.
[[nodiscard]] bool isGrave(const ChangeRule& rule, Change change, const Value& now);

/// Right against left; both tested. `beyond` and `lesser` as in SideDifference.
struct SideVerdict {
    bool beyond = false;
    Side lesser = Side::none;
};
[[nodiscard]] SideVerdict judgeSides(const Item& item, const ChangeRule& rule, const Value& right,
                                     const Value& left);

} // namespace rhizograph
