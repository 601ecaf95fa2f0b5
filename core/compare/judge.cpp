#include "compare/judge.h"

#include <cmath>
#include <cstdlib>

namespace rhizograph {
namespace {

constexpr double kRounding = 1e-9; ///< 10 less 5.5 is 4.5, whatever binary fractions make of it

/// 0 normal, 1 abnormal, 2 gravely so; nothing for what carries no judgement.
std::optional<int> gravity(const Item& item, const Value& value) {
    switch (lookOf(item.scale, value)) {
    case Look::normal:
        return 0;
    case Look::reduced:
    case Look::heightened:
        return 1;
    case Look::marked:
        return 2;
    case Look::plain:
        break;
    }
    return std::nullopt;
}

/// Better or worse; from normal it is new, to normal it is resolved.
Change towards(bool better, const Item& item, const Value& before, const Value& now) {
    if (better) return lookOf(item.scale, now) == Look::normal ? Change::resolved : Change::better;
    return lookOf(item.scale, before) == Look::normal ? Change::created : Change::worse;
}

Change judgeCategory(const Item& item, const Value& before, const Value& now) {
    if (before == now) return Change::same;
    const auto was = gravity(item, before);
    const auto is = gravity(item, now);
    if (!was || !is || *was == *is) return Change::different;
    return towards(*is < *was, item, before, now);
}

int steps(const Item& item, const Value& value) {
    return static_cast<int>(item.scale.index(value.word()).value_or(0));
}

/// Steps away from the normal value of the scale.
int fromNormal(const Item& item, const Value& value) {
    const auto normal = item.scale.normal ? item.scale.index(*item.scale.normal) : std::nullopt;
    return std::abs(steps(item, value) - static_cast<int>(normal.value_or(0)));
}

Change judgeReflex(const Item& item, const ChangeRule& rule, const Value& before, const Value& now,
                   const OtherSide& other) {
    const bool was = before.word() != rule.absent;
    const bool is = now.word() != rule.absent;
    if (was != is) return towards(is, item, before, now);
    const int moved = std::abs(steps(item, now) - steps(item, before));
    const bool othersTested =
        other.before != nullptr && other.now != nullptr && other.before->testable() && other.now->testable();
    const bool newDifference = othersTested && *other.before == before && !(*other.now == now);
    if (moved == 0 || (moved == 1 && !newDifference)) return Change::same;
    const int away = fromNormal(item, now) - fromNormal(item, before);
    return away == 0 ? Change::different : towards(away < 0, item, before, now);
}

Change judgeGrades(const Item& item, const ChangeRule& rule, const Value& before, const Value& now) {
    const int moved = rule.grades.at(now.word()) - rule.grades.at(before.word());
    if (moved == 0 || (rule.change && std::abs(moved) < *rule.change)) return Change::same;
    if (rule.better == ChangeRule::Better::neither) return Change::different;
    return towards((moved > 0) == (rule.better == ChangeRule::Better::higher), item, before, now);
}

bool counts(const ChangeRule& rule, double before, double moved, Examiner examiner) {
    const auto& least =
        examiner == Examiner::same && rule.changeSameExaminer ? rule.changeSameExaminer : rule.change;
    if (least && moved >= *least - kRounding) return true;
    const bool share =
        rule.percent && before != 0 && moved >= *rule.percent / 100 * std::abs(before) - kRounding;
    return share && (!rule.error || moved > *rule.error);
}

Change judgeNumber(const Item& item, const ChangeRule& rule, const Value& before, const Value& now,
                   Examiner examiner) {
    const double moved = now.number() - before.number();
    if (moved == 0) return Change::same;
    if (!rule.change && !rule.percent) return Change::different;
    if (!counts(rule, before.number(), std::abs(moved), examiner)) return Change::same;
    if (rule.better == ChangeRule::Better::neither) return Change::different;
    return towards((moved > 0) == (rule.better == ChangeRule::Better::higher), item, before, now);
}

/// The side with the smaller number, or with the greater where lower is better.
Side lesserOf(double right, double left, ChangeRule::Better better) {
    if (right == left) return Side::none;
    return (right < left) == (better != ChangeRule::Better::lower) ? Side::right : Side::left;
}

bool differs(const ChangeRule& rule, double difference) {
    if (!rule.sides) return false;
    return rule.sides->beyond ? difference > rule.sides->least + kRounding
                              : difference >= rule.sides->least - kRounding;
}

} // namespace

Change judgeChange(const Item& item, const ChangeRule& rule, const Value& before, const Value& now,
                   const OtherSide& other, Examiner examiner) {
    switch (rule.kind) {
    case ChangeRule::Kind::wholeGrades:
        return judgeGrades(item, rule, before, now);
    case ChangeRule::Kind::reflex:
        return judgeReflex(item, rule, before, now, other);
    case ChangeRule::Kind::number:
        return judgeNumber(item, rule, before, now, examiner);
    case ChangeRule::Kind::text:
        return before == now ? Change::same : Change::different;
    case ChangeRule::Kind::category:
        break;
    }
    return judgeCategory(item, before, now);
}

bool isGrave(const ChangeRule& rule, Change change, const Value& now) {
    const bool down = change == Change::worse || change == Change::created;
    return down && rule.graveAtMost && rule.grades.at(now.word()) <= *rule.graveAtMost;
}

SideVerdict judgeSides(const Item& item, const ChangeRule& rule, const Value& right, const Value& left) {
    switch (rule.kind) {
    case ChangeRule::Kind::wholeGrades: {
        const int r = rule.grades.at(right.word());
        const int l = rule.grades.at(left.word());
        return {differs(rule, std::abs(r - l)), lesserOf(r, l, rule.better)};
    }
    case ChangeRule::Kind::reflex: {
        const int away = fromNormal(item, right) - fromNormal(item, left);
        const int moved = steps(item, right) - steps(item, left);
        const Side lesser = away != 0
                                ? (away > 0 ? Side::right : Side::left)
                                : lesserOf(steps(item, right), steps(item, left), ChangeRule::Better::higher);
        return {differs(rule, std::abs(moved)), lesser};
    }
    case ChangeRule::Kind::number:
        return {differs(rule, std::abs(right.number() - left.number())),
                lesserOf(right.number(), left.number(), rule.better)};
    case ChangeRule::Kind::text:
        return {};
    case ChangeRule::Kind::category:
        break;
    }
    const int r = gravity(item, right).value_or(0);
    const int l = gravity(item, left).value_or(0);
    return {!(right == left), lesserOf(r, l, ChangeRule::Better::lower)};
}

} // namespace rhizograph
