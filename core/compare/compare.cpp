#include "compare/judge.h"

#include <algorithm>

namespace rhizograph {
namespace {

const Value* valueOf(const Exam& exam, const FindingKey& key) {
    const Finding* finding = exam.find(key);
    return finding == nullptr ? nullptr : &finding->value;
}

std::string whyNot(const Value* value, const std::string& when) {
    if (value == nullptr) return "not examined " + when;
    return value->testable() ? std::string{} : "could not be tested " + when + " (" + value->word() + ")";
}

bool abnormal(const Item& item, const Value* value) {
    if (value == nullptr || !value->testable()) return false;
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

constexpr double kGrave = 500;      ///< a grave fall goes before every other
constexpr double kLostSight = 1500; ///< abnormal at one visit, unknown at the other: above what is unchanged

class VisitJudge {
public:
    VisitJudge(const Exam& earlier, const Exam& later, const Knowledge& knowledge, Examiner examiner)
        : earlier_(earlier), later_(later), knowledge_(knowledge), examiner_(examiner) {}

    [[nodiscard]] ItemChange judge(const Item& item, const FindingKey& key) const {
        const ChangeRule& rule = knowledge_.thresholds().rule(item.id);
        const Value* before = valueOf(earlier_, key);
        const Value* now = valueOf(later_, key);
        ItemChange out;
        out.key = key;
        if (before != nullptr) out.before = *before;
        if (now != nullptr) out.now = *now;
        out.threshold = rule.words;
        out.source = rule.source;
        out.because = reason(rule, before, now);
        out.importance = rule.weight;
        if (!out.because.empty()) {
            if (abnormal(item, before) || abnormal(item, now)) out.importance += kLostSight;
            return out;
        }
        const FindingKey beside{key.item, mirrored(key.side)};
        const OtherSide other = key.side == Side::none
                                    ? OtherSide{}
                                    : OtherSide{valueOf(earlier_, beside), valueOf(later_, beside)};
        out.change = judgeChange(item, rule, *before, *now, other, examiner_);
        out.importance += rank(out.change) + (isGrave(rule, out.change, *now) ? kGrave : 0);
        return out;
    }

private:
    [[nodiscard]] std::string reason(const ChangeRule& rule, const Value* before, const Value* now) const {
        std::string out = whyNot(before, "at the earlier visit");
        const std::string here = whyNot(now, "at this visit");
        if (!here.empty()) out += (out.empty() ? "" : "; ") + here;
        if (!out.empty() || rule.sameText.empty()) return out;
        const Value* then = valueOf(earlier_, {rule.sameText, Side::none});
        const Value* today = valueOf(later_, {rule.sameText, Side::none});
        if (then == nullptr || today == nullptr) return "what was rated is not named at both visits";
        return *then == *today ? std::string{} : "another activity was rated";
    }

    const Exam& earlier_;
    const Exam& later_;
    const Knowledge& knowledge_;
    Examiner examiner_;
};

template <class T> void sortByImportance(std::vector<T>& list) {
    std::stable_sort(list.begin(), list.end(),
                     [](const T& a, const T& b) { return a.importance > b.importance; });
}

} // namespace

std::string_view name(Change change) {
    switch (change) {
    case Change::better:
        return "better";
    case Change::same:
        return "same";
    case Change::worse:
        return "worse";
    case Change::created:
        return "new";
    case Change::resolved:
        return "resolved";
    case Change::different:
        return "different";
    case Change::notComparable:
        break;
    }
    return "not_comparable";
}

VisitComparison compareVisits(const Exam& earlier, const Exam& later, const Knowledge& knowledge,
                              Examiner examiner) {
    VisitComparison out{earlier.date, later.date, {}, {}};
    const VisitJudge judge{earlier, later, knowledge, examiner};
    for (const Item& item : knowledge.catalogue().items())
        for (const Side side : {Side::none, Side::right, Side::left}) {
            const FindingKey key{item.id, side};
            if (earlier.find(key) != nullptr || later.find(key) != nullptr)
                out.items.push_back(judge.judge(item, key));
        }
    sortByImportance(out.items);
    out.numbAreas = compareNumbAreas(earlier, later, knowledge);
    return out;
}

std::vector<SideDifference> compareSides(const Exam& exam, const Knowledge& knowledge) {
    std::vector<SideDifference> out;
    for (const Item& item : knowledge.catalogue().items()) {
        const Value* right = valueOf(exam, {item.id, Side::right});
        const Value* left = valueOf(exam, {item.id, Side::left});
        if (right == nullptr && left == nullptr) continue;
        const ChangeRule& rule = knowledge.thresholds().rule(item.id);
        SideDifference difference;
        difference.item = item.id;
        if (right != nullptr) difference.right = *right;
        if (left != nullptr) difference.left = *left;
        difference.threshold = rule.sides ? rule.sides->words : rule.words;
        difference.source = rule.sides ? rule.sides->source : rule.source;
        difference.because = whyNot(right, "on the right");
        const std::string here = whyNot(left, "on the left");
        if (!here.empty()) difference.because += (difference.because.empty() ? "" : "; ") + here;
        difference.comparable = difference.because.empty();
        difference.importance = rule.weight;
        if (difference.comparable) {
            const SideVerdict verdict = judgeSides(item, rule, *right, *left);
            difference.beyondError = verdict.beyond;
            difference.lesser = verdict.lesser;
            difference.importance += verdict.beyond ? rank(Change::worse) : rank(Change::same);
        } else if (abnormal(item, right) || abnormal(item, left))
            difference.importance += kLostSight;
        out.push_back(std::move(difference));
    }
    sortByImportance(out);
    return out;
}

} // namespace rhizograph
