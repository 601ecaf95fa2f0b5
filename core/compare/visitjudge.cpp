#include "compare/visitjudge.h"

#include "compare/judge.h"

namespace rhizograph {
namespace {

constexpr double kGrave = 500; ///< a grave fall goes before every other

} // namespace

std::optional<Value> valueOf(const Exam& exam, const FindingKey& key) {
    const Finding* finding = exam.find(key);
    return finding == nullptr ? std::nullopt : std::optional{finding->value};
}

std::string whyNotComparable(const Catalogue& catalogue, const FindingKey& key,
                             const std::optional<Value>& value, const std::string& when) {
    if (!value) return "not examined " + when;
    if (!value->testable()) return "could not be tested " + when + " (" + value->word() + ")";
    // The catalogue grows and changes; what an older one meant cannot be held against this one.
    return check(catalogue, key, *value) ? "its value " + when + " is not on today's scale" : std::string{};
}

bool abnormal(const Item& item, const std::optional<Value>& value) {
    if (!value || !value->testable()) return false;
    const Look look = lookOf(item.scale, *value);
    return look != Look::normal && look != Look::plain;
}

double rank(Change change) {
    switch (change) {
    case Change::worse:
    case Change::created:
        return 4000;
    case Change::better:
    case Change::resolved:
        return 3000;
    case Change::different:
        return 2000;
    case Change::notComparable:
        return 0;
    case Change::same:
        break;
    }
    return 1000;
}

ItemChange VisitJudge::judge(const FindingKey& key) const {
    ItemChange out;
    out.key = key;
    out.before = valueOf(earlier_, key);
    out.now = valueOf(later_, key);
    const Item* item = knowledge_.catalogue().find(key.item);
    if (item != nullptr && item->sided == (key.side == Side::right || key.side == Side::left))
        return judgeKnown(*item, std::move(out));
    out.because = "the question is not in today's catalogue";
    out.importance = kLostSight; // nobody can say that it was normal
    return out;
}

ItemChange VisitJudge::judgeKnown(const Item& item, ItemChange out) const {
    const ChangeRule& rule = knowledge_.thresholds().rule(item.id);
    out.threshold = rule.words;
    out.source = rule.source;
    out.because = reason(out, rule.sameText.text());
    out.importance = rule.weight;
    if (!out.because.empty()) {
        if (abnormal(item, out.before) || abnormal(item, out.now)) out.importance += kLostSight;
        return out;
    }
    const FindingKey beside{out.key.item, mirrored(out.key.side)};
    const bool sided = out.key.side != Side::none;
    const auto otherBefore = sided ? valueOf(earlier_, beside) : std::nullopt;
    const auto otherNow = sided ? valueOf(later_, beside) : std::nullopt;
    const OtherSide other{otherBefore ? &*otherBefore : nullptr, otherNow ? &*otherNow : nullptr};
    out.change = judgeChange(item, rule, *out.before, *out.now, other, examiner_);
    out.importance += rank(out.change) + (isGrave(rule, out.change, *out.now) ? kGrave : 0);
    return out;
}

std::string VisitJudge::reason(const ItemChange& change, const std::string& sameText) const {
    const Catalogue& catalogue = knowledge_.catalogue();
    std::string out = whyNotComparable(catalogue, change.key, change.before, "at the earlier visit");
    const std::string here = whyNotComparable(catalogue, change.key, change.now, "at this visit");
    if (!here.empty()) out += (out.empty() ? "" : "; ") + here;
    if (!out.empty() || sameText.empty()) return out;
    const auto then = valueOf(earlier_, {ItemId{sameText}, Side::none});
    const auto today = valueOf(later_, {ItemId{sameText}, Side::none});
    if (!then || !today) return "what was rated is not named at both visits";
    return *then == *today ? std::string{} : "another activity was rated";
}

} // namespace rhizograph
