// What holds for any two visits, whatever was found.

#include "compare/compare.h"
#include "support/randomexam.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h> // after gtest.h, which it needs
#include <set>

namespace rhizograph {
namespace {

using testing::anyExam;

const Knowledge& knowledge() {
    static const auto loaded = Knowledge::load(std::filesystem::path{RHIZOGRAPH_RESOURCES} / "knowledge");
    return *loaded;
}

bool better(Change change) {
    return change == Change::better || change == Change::resolved;
}
bool worse(Change change) {
    return change == Change::worse || change == Change::created;
}

bool tested(const Exam& exam, const FindingKey& key) {
    const Finding* finding = exam.find(key);
    return finding != nullptr && finding->value.testable();
}

/// As if some of it came from a catalogue of another day.
Exam fromAnotherDay(Exam exam) {
    if (*rc::gen::arbitrary<bool>())
        exam.set({ItemId{"question.long_gone"}, *rc::gen::element(Side::none, Side::left, Side::both)},
                 {Value::token("yes"), false, {}});
    for (const auto& [key, finding] : Exam::Findings{exam.findings()})
        if (*rc::gen::inRange(0, 6) == 0)
            exam.set(key, {*rc::gen::element(Value::token("another"), Value::number(-1e9)), false, {}});
    return exam;
}

RC_GTEST_PROP(AnyTwoVisits, CallNothingUnchangedThatWasNotExaminedAtBoth, ()) {
    const Exam before = *anyExam(knowledge().catalogue());
    const Exam now = *anyExam(knowledge().catalogue());
    std::size_t listed = 0;
    for (const ItemChange& each : compareVisits(before, now, knowledge()).items) {
        ++listed;
        if (tested(before, each.key) && tested(now, each.key)) continue;
        RC_ASSERT(each.change == Change::notComparable);
        RC_ASSERT(!each.because.empty());
    }
    std::set<FindingKey> recorded;
    for (const Exam* exam : {&before, &now})
        for (const auto& [key, finding] : exam->findings())
            recorded.insert(key);
    RC_ASSERT(listed == recorded.size());
}

RC_GTEST_PROP(AnyTwoVisits, CallNothingUnchangedInACourseThatWasNotExamined, ()) {
    const std::vector<Exam> visits{*anyExam(knowledge().catalogue()), *anyExam(knowledge().catalogue()),
                                   *anyExam(knowledge().catalogue())};
    const Trend trend = trendOf(visits, knowledge());
    for (const TrendSeries& series : trend.series)
        for (std::size_t i = 0; i < visits.size(); ++i) {
            if (tested(visits[i], series.key)) continue;
            RC_ASSERT(!series.position[i].has_value());
            RC_ASSERT(series.sincePrevious[i] == Change::notComparable);
            RC_ASSERT(series.sinceFirst[i] == Change::notComparable);
        }
    for (const TrendArea& area : trend.areas)
        for (std::size_t i = 0; i < visits.size(); ++i)
            RC_ASSERT(area.cm2[i].has_value() || area.sincePrevious[i] == Change::notComparable);
}

RC_GTEST_PROP(AnyTwoVisits, NeverFindAnExamChangedAgainstItself, ()) {
    const Exam exam = *anyExam(knowledge().catalogue());
    for (const ItemChange& each : compareVisits(exam, exam, knowledge()).items)
        RC_ASSERT(each.change == Change::same || each.change == Change::notComparable);
}

RC_GTEST_PROP(AnyTwoVisits, AreNeverBetterBothWays, ()) {
    const Exam before = *anyExam(knowledge().catalogue());
    const Exam now = *anyExam(knowledge().catalogue());
    std::map<FindingKey, Change> back;
    for (const ItemChange& each : compareVisits(now, before, knowledge()).items)
        back[each.key] = each.change;
    for (const ItemChange& each : compareVisits(before, now, knowledge()).items) {
        RC_ASSERT(!better(each.change) || !better(back.at(each.key)));
        RC_ASSERT(!worse(each.change) || !worse(back.at(each.key)));
    }
}

RC_GTEST_PROP(AnyTwoVisits, ReadTheSameWithTheSidesExchanged, ()) {
    const Exam before = *anyExam(knowledge().catalogue());
    const Exam now = *anyExam(knowledge().catalogue());
    std::map<FindingKey, Change> turned;
    for (const ItemChange& each : compareVisits(before.mirrored(), now.mirrored(), knowledge()).items)
        turned[each.key] = each.change;
    for (const ItemChange& each : compareVisits(before, now, knowledge()).items)
        RC_ASSERT(turned.at({each.key.item, mirrored(each.key.side)}) == each.change);
}

RC_GTEST_PROP(AnyTwoVisits, OfAnotherCatalogueAreComparedWithoutAGuess, ()) {
    const Exam before = fromAnotherDay(*anyExam(knowledge().catalogue()));
    const Exam now = fromAnotherDay(*anyExam(knowledge().catalogue()));
    for (const ItemChange& each : compareVisits(before, now, knowledge()).items)
        for (const std::optional<Value>* value : {&each.before, &each.now})
            if (*value && (*value)->testable() && check(knowledge().catalogue(), each.key, **value))
                RC_ASSERT(each.change == Change::notComparable);
    (void)compareSides(now, knowledge());
    (void)trendOf({before, now}, knowledge());
}

} // namespace
} // namespace rhizograph
