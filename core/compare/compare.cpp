#include "compare/judge.h"
#include "compare/visitjudge.h"

#include <algorithm>
#include <set>

namespace rhizograph {
namespace {

template <class T> void sortByImportance(std::vector<T>& list) {
    std::stable_sort(list.begin(), list.end(),
                     [](const T& a, const T& b) { return a.importance > b.importance; });
}

/// Every question recorded at either visit: the catalogue's in its order, then those it does not know.
std::vector<FindingKey> recordedAt(const Exam& earlier, const Exam& later, const Catalogue& catalogue) {
    std::set<FindingKey> open;
    for (const Exam* exam : {&earlier, &later})
        for (const auto& [key, finding] : exam->findings())
            open.insert(key);
    std::vector<FindingKey> out;
    for (const Item& item : catalogue.items())
        for (const Side side : {Side::none, Side::right, Side::left})
            if (open.erase({item.id, side}) > 0) out.push_back({item.id, side});
    out.insert(out.end(), open.begin(), open.end());
    return out;
}

SideDifference differenceOf(const Item& item, const Exam& exam, const Knowledge& knowledge) {
    const ChangeRule& rule = knowledge.thresholds().rule(item.id);
    const FindingKey onRight{item.id, Side::right};
    const FindingKey onLeft{item.id, Side::left};
    SideDifference out;
    out.item = item.id;
    out.right = valueOf(exam, onRight);
    out.left = valueOf(exam, onLeft);
    out.threshold = rule.sides ? rule.sides->words : rule.words;
    out.source = rule.sides ? rule.sides->source : rule.source;
    out.because = whyNotComparable(knowledge.catalogue(), onRight, out.right, "on the right");
    const std::string here = whyNotComparable(knowledge.catalogue(), onLeft, out.left, "on the left");
    if (!here.empty()) out.because += (out.because.empty() ? "" : "; ") + here;
    out.comparable = out.because.empty();
    out.importance = rule.weight;
    if (out.comparable) {
        const SideVerdict verdict = judgeSides(item, rule, *out.right, *out.left);
        out.beyondError = verdict.beyond;
        out.lesser = verdict.lesser;
        out.importance += verdict.beyond ? rank(Change::worse) : rank(Change::same);
    } else if (abnormal(item, out.right) || abnormal(item, out.left)) {
        out.importance += kLostSight;
    }
    return out;
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
    for (const FindingKey& key : recordedAt(earlier, later, knowledge.catalogue()))
        out.items.push_back(judge.judge(key));
    sortByImportance(out.items);
    out.numbAreas = compareNumbAreas(earlier, later, knowledge);
    return out;
}

int worseCount(const VisitComparison& comparison) {
    return static_cast<int>(
        std::count_if(comparison.items.begin(), comparison.items.end(), [](const ItemChange& each) {
            return each.change == Change::worse || each.change == Change::created;
        }));
}

std::vector<SideDifference> compareSides(const Exam& exam, const Knowledge& knowledge) {
    std::vector<SideDifference> out;
    for (const Item& item : knowledge.catalogue().items())
        if (exam.find({item.id, Side::right}) != nullptr || exam.find({item.id, Side::left}) != nullptr)
            out.push_back(differenceOf(item, exam, knowledge));
    sortByImportance(out);
    return out;
}

} // namespace rhizograph
