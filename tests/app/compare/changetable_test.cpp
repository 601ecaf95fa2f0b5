#include "compare/changetable.h"

#include "compare/comparepage.h"
#include "visits.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <QApplication>
#include <QEvent>
#include <set>

namespace rhizograph::app {
namespace {

const char* const toe = "strength.great_toe_extension";
const char* const ankle = "reflex.ankle";
const char* const knee = "reflex.knee";

class ComparePageTest : public ::testing::Test {
protected:
    ComparePageTest()
        : course(
              {{"2026-11-12",
                {found(toe, Side::left, Value::token("4")), found(ankle, Side::left, Value::token("2"))}},
               {"2026-11-24",
                {found(toe, Side::left, Value::token("3")), found(toe, Side::right, Value::token("5")),
                 found(ankle, Side::left, Value::token("2")), found(knee, Side::left, Value::token("2"))}}}),
          page(*course.session, *course.store, nullptr) {
        page.resize(1104, 680);
        page.show();
        QApplication::processEvents();
    }
    const ChangeRow* row(const std::string& item, Side side = Side::left) {
        const auto& rows = page.table().shown();
        const auto at = std::ranges::find_if(rows, [&](const ChangeRow& each) {
            return each.finding && *each.finding == FindingKey{ItemId{item}, side};
        });
        return at == rows.end() ? nullptr : &*at;
    }
    void openFolds() {
        for (int i = 0; i < page.table().cellCount(); ++i)
            if (page.table().shown().at(static_cast<std::size_t>(i)).fold) page.table().pressCell(i);
    }

    Course course;
    ComparePage page;
};

TEST_F(ComparePageTest, OpensAgainstTheVisitBeforeWithTheWorseFirst) {
    ASSERT_FALSE(page.table().shown().empty());
    const ChangeRow& first = page.table().shown().front();
    ASSERT_TRUE(first.finding);
    EXPECT_EQ(first.finding->item.text(), toe);
    EXPECT_EQ(first.mark.word, "worse");
    EXPECT_EQ(first.before, "4");
    EXPECT_EQ(first.now, "3");
    EXPECT_FALSE(first.threshold.isEmpty());
}

TEST_F(ComparePageTest, WhatWasNotExaminedThenIsNotCalledTheSame) {
    EXPECT_EQ(row(knee), nullptr);
    openFolds();
    ASSERT_NE(row(knee), nullptr);
    EXPECT_EQ(row(knee)->before, "not examined");
    EXPECT_EQ(row(knee)->mark.word, "not comparable");
}

TEST_F(ComparePageTest, WhatStayedTheSameWaitsUnderItsCount) {
    EXPECT_EQ(row(ankle), nullptr);
    openFolds();
    ASSERT_NE(row(ankle), nullptr);
    EXPECT_EQ(row(ankle)->mark.word, "same");
}

TEST_F(ComparePageTest, SidesStandWithTheRightFirst) {
    page.showSides();
    ASSERT_NE(row(toe), nullptr);
    EXPECT_EQ(row(toe)->before, "5"); // the right
    EXPECT_EQ(row(toe)->now, "3");
    EXPECT_EQ(page.table().rows().heads.at(2), "Right");
    EXPECT_EQ(page.table().rows().heads.at(3), "Left");
    EXPECT_TRUE(row(toe)->mark.word.contains("left"));
}

TEST_F(ComparePageTest, APressGoesToTheFinding) {
    std::vector<FindingKey> heard;
    QObject::connect(&page, &ComparePage::goToItem, [&](const FindingKey& key) { heard.push_back(key); });
    page.table().pressCell(0);
    ASSERT_EQ(heard.size(), 1U);
    EXPECT_EQ(heard.front(), (FindingKey{ItemId{toe}, Side::left}));
}

/// Asks for the height where a scroll area does: when the width has changed, before the table is told.
class AskingEarly : public QObject {
public:
    explicit AskingEarly(ChangeTable& table) : table_(table) { table.installEventFilter(this); }
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Resize) heard[table_.width()] = table_.heightForWidth(table_.width());
        return false;
    }
    std::map<int, int> heard;

private:
    ChangeTable& table_;
};

TEST_F(ComparePageTest, TheTableNamesOneHeightForAWidthWheneverItIsAsked) {
    openFolds();
    AskingEarly asking(page.table());
    for (const int width : {1104, 700, 520, 900})
        page.resize(width, 680), QApplication::processEvents();
    ASSERT_GE(asking.heard.size(), 3U);
    for (const auto& [width, height] : asking.heard)
        EXPECT_EQ(height, page.table().heightForWidth(width)) << width;
}

TEST_F(ComparePageTest, EveryRowIsReadAloudWithItsChange) {
    openFolds();
    for (int i = 0; i < page.table().cellCount(); ++i) {
        const Cell cell = page.table().cell(i);
        const ChangeRow& shown = page.table().shown().at(static_cast<std::size_t>(i));
        EXPECT_TRUE(shown.fold || cell.name.contains(shown.mark.word)) << cell.name.toStdString();
        EXPECT_GE(cell.rect.height(), 44);
    }
}

TEST(ChangeMarks, DifferByShapeAndWordAndNotByColorAlone) {
    const Theme& theme = Theme::named(ThemeName::light);
    std::set<QString> words;
    for (const Change change : {Change::better, Change::same, Change::worse, Change::created,
                                Change::resolved, Change::different, Change::notComparable})
        words.insert(markOf(change, theme).word);
    EXPECT_EQ(words.size(), 7U);
    EXPECT_NE(markOf(Change::worse, theme).shape, markOf(Change::better, theme).shape);
    EXPECT_NE(markOf(Change::same, theme).shape, markOf(Change::notComparable, theme).shape);
}

TEST(ComparePageAlone, ShowsTheSidesWhereThereIsNoEarlierVisit) {
    const Course course({{"2026-11-24", {found(toe, Side::left, Value::token("3"))}}});
    ComparePage page(*course.session, *course.store, nullptr);
    page.show();
    EXPECT_TRUE(page.earlierVisits().empty());
    EXPECT_EQ(page.table().rows().heads.at(2), "Right");
}

} // namespace
} // namespace rhizograph::app
