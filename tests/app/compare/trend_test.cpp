#include "compare/trendpage.h"
#include "visits.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <QApplication>
#include <QDate>

namespace rhizograph::app {
namespace {

const char* const toe = "strength.great_toe_extension";

class TrendPageTest : public ::testing::Test {
protected:
    TrendPageTest()
        : course({{"2026-10-02",
                   {found(toe, Side::left, Value::token("4")), found(toe, Side::right, Value::token("5"))}},
                  {"2026-10-23", {found(toe, Side::right, Value::token("5"))}},
                  {"2026-11-24",
                   {found(toe, Side::left, Value::token("2")), found(toe, Side::right, Value::token("5"))}}}),
          page(*course.session, *course.store) {
        page.resize(1104, 680);
        page.show();
        QApplication::processEvents();
    }
    const TrendRow& toeRow() {
        const auto& rows = page.chart().rows();
        return *std::ranges::find(rows, QString(toe), &TrendRow::id);
    }

    Course course;
    TrendPage page;
};

TEST_F(TrendPageTest, PlacesVisitsTrueToTheDays) {
    const double first = page.chart().xOf(0);
    const double share = (page.chart().xOf(1) - first) / (page.chart().xOf(2) - first);
    // 21 of 53 days, by the calendar.
    EXPECT_NEAR(share, 21.0 / 53.0, 1e-9);
}

TEST_F(TrendPageTest, LeavesAGapWhereASideWasNotExamined) {
    for (const TrendLine& line : toeRow().lines) {
        ASSERT_EQ(line.place.size(), 3U);
        if (line.name != "L") continue;
        EXPECT_FALSE(line.place[1].has_value());
        EXPECT_EQ(line.value[1], "not examined");
    }
}

TEST_F(TrendPageTest, TheLeftIsSolidAndTheRightDashed) {
    ASSERT_EQ(toeRow().lines.size(), 2U);
    for (const TrendLine& line : toeRow().lines)
        EXPECT_EQ(line.dashed, line.name == "R");
}

TEST_F(TrendPageTest, AFallOfTwoGradesIsMarkedAsAChange) {
    EXPECT_TRUE(toeRow().changed);
}

TEST_F(TrendPageTest, APressOnADotAsksForItsVisit) {
    std::vector<VisitId> heard;
    QObject::connect(&page, &TrendPage::visitChosen, [&](const VisitId& id) { heard.push_back(id); });
    for (int i = 0; i < page.chart().cellCount() && heard.empty(); ++i)
        if (page.chart().cell(i).name.contains("visit 1")) page.chart().pressCell(i);
    ASSERT_EQ(heard.size(), 1U);
    EXPECT_EQ(heard.front(), course.ids.front());
}

TEST_F(TrendPageTest, EveryDotHasRoomForAFingerAndAName) {
    ASSERT_GT(page.chart().cellCount(), 0);
    for (int i = 0; i < page.chart().cellCount(); ++i) {
        EXPECT_GE(page.chart().cell(i).rect.width(), 44);
        EXPECT_FALSE(page.chart().cell(i).name.isEmpty());
    }
}

TEST_F(TrendPageTest, AMeasureCanBeTakenAwayAndBroughtBack) {
    const auto shows = [&] {
        return std::ranges::any_of(page.chart().rows(), [](const TrendRow& row) { return row.id == toe; });
    };
    ASSERT_TRUE(shows());
    page.setShown(toe, false);
    EXPECT_FALSE(shows());
    page.setShown(toe, true);
    EXPECT_TRUE(shows());
}

/// A record of two visits in which more changed than fits a screen.
class FullTrend : public ::testing::Test {
protected:
    static std::vector<FindingChange> visit(bool later) {
        std::vector<FindingChange> out{
            found("pain.back", Side::none, Value::number(later ? 8 : 2)),
            found("pain.leg", Side::left, Value::number(later ? 9 : 1)),
            found("score.oswestry", Side::none, Value::number(later ? 60 : 10)),
            found("motion.flexion", Side::none, Value::number(later ? 10 : 60)),
            found("touch.great_toe", Side::left, Value::token(later ? "absent" : "normal"))};
        for (const char* item : {"hip_flexion", "knee_extension", "ankle_dorsiflexion", "great_toe_extension",
                                 "ankle_plantarflexion", "knee_flexion", "ankle_eversion"})
            out.push_back(
                found(std::string{"strength."} + item, Side::left, Value::token(later ? "3" : "5")));
        return out;
    }
    FullTrend()
        : course({{"2026-10-02", visit(false)}, {"2026-11-24", visit(true)}}),
          page(*course.session, *course.store) {
        page.resize(1104, 680);
        page.show();
        QApplication::processEvents();
    }
    [[nodiscard]] QStringList ids() {
        QStringList out;
        for (const TrendRow& row : page.chart().rows())
            out << row.id;
        return out;
    }
    Course course;
    TrendPage page;
};

TEST_F(FullTrend, KeepsRoomForTheNumbSkinAndTheLeadingSite) {
    EXPECT_EQ(ids().size(), 8);
    EXPECT_EQ(ids().filter("area ").size(), 1);
    EXPECT_EQ(ids().filter("site ").size(), 1);
}

TEST_F(FullTrend, ShowsPainAndQuestionnairesAsScoresAndNoMeasureOfTheBody) {
    page.setScoresOnly(true);
    QStringList shown = ids();
    shown.sort();
    EXPECT_EQ(shown, (QStringList{"pain.back", "pain.leg", "score.oswestry"}));
}

} // namespace
} // namespace rhizograph::app
