// Courses of several visits: changes in one, several and crossing directions, questions and values that only
// an older or a newer catalogue knows, visits of one day, and long records.

#include "compare/compare.h"

#include <algorithm>
#include <filesystem>
#include <gmock/gmock.h>

namespace rhizograph {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

const char* const toe = "strength.great_toe_extension";

const Knowledge& knowledge() {
    static const auto loaded = Knowledge::load(std::filesystem::path{RHIZOGRAPH_RESOURCES} / "knowledge");
    return *loaded;
}

FindingKey at(const std::string& item, Side side = Side::none) {
    return {ItemId{item}, side};
}

Exam exam(std::vector<std::pair<FindingKey, Value>> findings, std::string date = {}) {
    Exam out;
    out.date = std::move(date);
    for (auto& [key, value] : findings)
        out.set(key, {std::move(value), false, {}});
    return out;
}

ItemChange changeOf(const Exam& before, const Exam& now, const FindingKey& key) {
    for (ItemChange& each : compareVisits(before, now, knowledge()).items)
        if (each.key == key) return each;
    throw std::runtime_error(key.item.text() + " was not compared");
}

TEST(Courses, InCrossingDirectionsKeepEachDirectionApart) {
    const Exam before = exam({{at(toe, Side::left), Value::token("3")},
                              {at(toe, Side::right), Value::token("5")},
                              {at("pain.back"), Value::number(8)},
                              {at("pain.leg", Side::left), Value::number(3)},
                              {at("touch.great_toe", Side::left), Value::token("absent")}});
    const Exam now = exam({{at(toe, Side::left), Value::token("4")},
                           {at(toe, Side::right), Value::token("4")},
                           {at("pain.back"), Value::number(5)},
                           {at("pain.leg", Side::left), Value::number(7)},
                           {at("touch.great_toe", Side::left), Value::token("absent")}});
    EXPECT_EQ(changeOf(before, now, at(toe, Side::left)).change, Change::better);
    EXPECT_EQ(changeOf(before, now, at(toe, Side::right)).change, Change::created);
    EXPECT_EQ(changeOf(before, now, at("pain.back")).change, Change::better);
    EXPECT_EQ(changeOf(before, now, at("pain.leg", Side::left)).change, Change::worse);
    EXPECT_EQ(changeOf(before, now, at("touch.great_toe", Side::left)).change, Change::same);
    EXPECT_EQ(worseCount(compareVisits(before, now, knowledge())), 2);
}

TEST(Courses, ListWhatIsWorseBeforeWhatIsBetterBeforeWhatIsTheSame) {
    const Exam before = exam({{at("pain.back"), Value::number(2)},
                              {at(toe, Side::left), Value::token("3")},
                              {at("reflex.knee", Side::left), Value::token("2")},
                              {at("reflex.ankle", Side::left), Value::token("2")}});
    const Exam now = exam({{at("pain.back"), Value::number(6)},
                           {at(toe, Side::left), Value::token("5")},
                           {at("reflex.knee", Side::left), Value::token("2")}});
    std::vector<std::string> order;
    for (const ItemChange& each : compareVisits(before, now, knowledge()).items)
        order.emplace_back(name(each.change));
    EXPECT_THAT(order, ElementsAre("worse", "resolved", "same", "not_comparable"));
}

TEST(Courses, NameAQuestionThatTodaysCatalogueDoesNotAskAnyMore) {
    const FindingKey removed = at("strength.of_another_day", Side::left);
    const Exam before = exam({{removed, Value::token("3")}, {at(toe, Side::left), Value::token("4")}});
    const Exam now = exam({{at(toe, Side::left), Value::token("4")}});
    const ItemChange change = changeOf(before, now, removed);
    EXPECT_EQ(change.change, Change::notComparable);
    EXPECT_THAT(change.because, HasSubstr("not in today's catalogue"));
    EXPECT_EQ(change.before, Value::token("3")) << "what it held is still there to be read";
    EXPECT_EQ(changeOf(now, before, removed).change, Change::notComparable);
    EXPECT_THAT(trendOf({before, now}, knowledge()).unknown, ElementsAre(removed));
}

TEST(Courses, CompareNothingWithAValueThatIsNotOnTodaysScale) {
    struct Case {
        FindingKey key;
        Value old, now;
    };
    for (const Case& each : {Case{at(toe, Side::left), Value::token("4.5"), Value::token("4")},
                             {at("reflex.ankle", Side::left), Value::token("5"), Value::token("2")},
                             {at("touch.great_toe", Side::left), Value::token("odd"), Value::token("normal")},
                             {at("pain.back"), Value::number(70), Value::number(7)},
                             {at("pain.back"), Value::token("severe"), Value::number(7)}}) {
        for (const bool older : {true, false}) {
            const Exam first = exam({{each.key, older ? each.old : each.now}});
            const Exam second = exam({{each.key, older ? each.now : each.old}});
            const ItemChange change = changeOf(first, second, each.key);
            EXPECT_EQ(change.change, Change::notComparable) << each.key.item.text();
            EXPECT_THAT(change.because, HasSubstr("not on today's scale"));
        }
        const Trend trend = trendOf(
            {exam({{each.key, each.now}}), exam({{each.key, each.old}}), exam({{each.key, each.now}})},
            knowledge());
        ASSERT_EQ(trend.series.size(), 1U);
        EXPECT_FALSE(trend.series.front().position[1].has_value());
        EXPECT_EQ(trend.series.front().sincePrevious[2], Change::same) << "against the last that can be read";
    }
    Exam sides =
        exam({{at(toe, Side::left), Value::token("4.5")}, {at(toe, Side::right), Value::token("5")}});
    EXPECT_FALSE(compareSides(sides, knowledge()).front().comparable);
}

TEST(Courses, DoNotCountSkinWithAnUnknownValueAsFeeling) {
    const FindingKey shin = at("touch.outer_shin", Side::left);
    const auto numb = numbAreas(exam({{shin, Value::token("odd")}}), knowledge());
    EXPECT_TRUE(numb.empty()) << "nothing is known of it";
    const auto changes = compareNumbAreas(exam({{shin, Value::token("absent")}}),
                                          exam({{shin, Value::token("odd")}}), knowledge());
    ASSERT_EQ(changes.size(), 1U);
    EXPECT_EQ(changes.front().change, Change::notComparable);
}

TEST(Courses, OfVisitsOnOneDayKeepTheirOrder) {
    const std::string day = "2026-03-02";
    const Trend trend = trendOf({exam({{at(toe, Side::left), Value::token("5")}}, day),
                                 exam({{at(toe, Side::left), Value::token("3")}}, day),
                                 exam({{at(toe, Side::left), Value::token("4")}}, day)},
                                knowledge());
    EXPECT_THAT(trend.dates, ElementsAre(day, day, day));
    EXPECT_THAT(trend.series.front().sincePrevious,
                ElementsAre(Change::notComparable, Change::created, Change::better));
    EXPECT_THAT(trend.series.front().sinceFirst,
                ElementsAre(Change::notComparable, Change::created, Change::created));
}

TEST(Courses, LeaveAGapWhereNothingSpeaksOfASite) {
    const Trend trend = trendOf({exam({{at(toe, Side::left), Value::token("3")}}), Exam{},
                                 exam({{at(toe, Side::left), Value::token("2")}})},
                                knowledge());
    ASSERT_FALSE(trend.sites.empty());
    EXPECT_TRUE(trend.sites.front().probability[0].has_value());
    EXPECT_FALSE(trend.sites.front().probability[1].has_value());
    EXPECT_TRUE(trend.sites.front().probability[2].has_value());
}

TEST(Courses, AgreeWithTheImpressionOnTheLeadingSite) {
    const Exam visit = exam({{at(toe, Side::left), Value::token("3")},
                             {at("strength.ankle_dorsiflexion", Side::left), Value::token("4")},
                             {at("touch.great_toe", Side::left), Value::token("reduced")}});
    const SiteResult leading = assess(visit, knowledge()).localization.front();
    const Trend trend = trendOf({visit, visit}, knowledge());
    ASSERT_EQ(trend.sites.size(), 1U);
    EXPECT_EQ(trend.sites.front().site, leading.site);
    EXPECT_EQ(trend.sites.front().side, leading.side);
    EXPECT_NEAR(*trend.sites.front().probability.front(), leading.probability, 1e-12);
}

TEST(Courses, MarkAGrowingNumbAreaFromVisitToVisit) {
    const auto skin = [](std::vector<std::string> numb) {
        Exam out;
        for (const char* region : {"outer_shin", "inner_shin", "great_toe"}) {
            const bool is = std::find(numb.begin(), numb.end(), region) != numb.end();
            out.set(at(std::string{"touch."} + region, Side::left),
                    {Value::token(is ? "absent" : "normal"), false, {}});
        }
        return out;
    };
    const Trend trend =
        trendOf({skin({}), skin({"outer_shin"}), skin({"outer_shin", "inner_shin", "great_toe"}), skin({})},
                knowledge());
    ASSERT_EQ(trend.areas.size(), 1U);
    EXPECT_THAT(trend.areas.front().sincePrevious,
                ElementsAre(Change::notComparable, Change::created, Change::worse, Change::resolved));
}

TEST(Courses, OfSixtyVisitsFollowEveryOne) {
    std::vector<Exam> visits;
    for (int i = 0; i < 60; ++i)
        visits.push_back(exam({{at("pain.back"), Value::number(i % 2 == 0 ? 8 : 3)}}));
    const Trend trend = trendOf(visits, knowledge());
    ASSERT_EQ(trend.series.size(), 1U);
    for (std::size_t i = 1; i < 60; ++i)
        EXPECT_EQ(trend.series.front().sincePrevious[i], i % 2 == 0 ? Change::worse : Change::better);
}

} // namespace
} // namespace rhizograph
