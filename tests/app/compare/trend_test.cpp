#include "compare/changelist.h"
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

class WhatChanged : public ::testing::Test {
protected:
    WhatChanged()
        : course(
              {{"2026-09-02", {found(toe, Side::left, Value::token("5"))}},
               {"2026-10-02",
                {found(toe, Side::left, Value::token("4")), found("pain.back", Side::none, Value::number(7)),
                 found("touch.outer_shin", Side::left, Value::token("normal")),
                 found("gait.heel_walk", Side::left, Value::token("normal")),
                 found("reflex.knee", Side::left, Value::token("2"))}},
               {"2026-11-24",
                {found(toe, Side::left, Value::token("2")), found("pain.back", Side::none, Value::number(2)),
                 found("touch.outer_shin", Side::left, Value::token("absent")),
                 found("gait.heel_walk", Side::left, Value::token("unable")),
                 found("reflex.knee", Side::left, Value::token("2"))}}}),
          page(*course.session, *course.store) {
        page.resize(1176, 700);
        page.show();
        QApplication::processEvents();
    }
    int rowOf(const std::string& item) {
        const auto& rows = page.changes().rows();
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (rows[i].finding && rows[i].finding->item.text() == item) return static_cast<int>(i);
        return -1;
    }

    Course course;
    TrendPage page;
};

TEST_F(WhatChanged, BetweenTheLastTwoVisitsStandsBesideTheCourseInTheOrderOfTheComparison) {
    ASSERT_TRUE(page.changes().isVisible());
    const VisitComparison comparison =
        compareVisits(taken(course.store->exam(course.ids[1])), course.session->exam(), knowledge());
    std::vector<std::string> expected;
    for (const ItemChange& each : comparison.items)
        if (each.change != Change::same && each.change != Change::notComparable)
            expected.push_back(each.key.item.text());
    std::vector<std::string> shown;
    for (const ChangeRow& row : page.changes().rows())
        if (row.finding) shown.push_back(row.finding->item.text());
    EXPECT_EQ(shown, expected);
    EXPECT_EQ(rowOf("reflex.knee"), -1) << "it is as it was";
    EXPECT_EQ(page.changes().rows().at(static_cast<std::size_t>(rowOf(toe))).before, "4")
        << "not as at first";
}

TEST_F(WhatChanged, APressShowsTheCurveOrTheVisitBeforeWhereThereIsNone) {
    QList<VisitId> asked;
    QObject::connect(&page, &TrendPage::visitChosen, &page, [&](const VisitId& id) { asked.push_back(id); });
    page.setShown("pain.back", false);
    page.changes().pressCell(rowOf("pain.back"));
    EXPECT_EQ(page.chart().chosen(), "pain.back") << "taken away, and brought back";
    page.changes().pressCell(rowOf("touch.outer_shin"));
    EXPECT_TRUE(page.chart().chosen().startsWith("area ")) << page.chart().chosen().toStdString();
    EXPECT_TRUE(asked.empty());
    page.changes().pressCell(rowOf("gait.heel_walk"));
    EXPECT_EQ(asked, QList<VisitId>{course.ids[1]});
}

TEST_F(WhatChanged, GivesWayToTheEventsAndGoesBelowOnAnUprightScreen) {
    const auto at = [&] { return page.changes().mapTo(&page, QPoint()); };
    const auto chart = [&] { return page.chart().mapTo(&page, QPoint()); };
    EXPECT_GT(at().x(), chart().x() + page.width() / 2);
    page.showEvents(true);
    EXPECT_FALSE(page.changes().isVisible());
    page.showEvents(false);
    page.resize(800, 1100);
    QApplication::processEvents();
    EXPECT_TRUE(page.changes().isVisible());
    EXPECT_GT(at().y(), chart().y() + 300);
}

} // namespace
} // namespace rhizograph::app
