#include "examvisit.h"

#include "exam/groupcard.h"
#include "figures/paindrawing.h"
#include "figures/skinfigure.h"
#include "parts/button.h"

#include <gtest/gtest.h>

namespace rhizograph::app {
namespace {

/// A hand that counts. Every press goes to a widget that is on the screen, where it is drawn.
class TapsTest : public testing::Test {
protected:
    TapsTest() : session(knowledge(), {}, nullptr) {
        for (const Step& step : session.catalogue().steps()) {
            auto page = std::make_unique<StepPage>(session, figures(), step.id.text());
            page->resize(step.id.text() == "intake" ? 1176 : 848, 744);
            pages[step.id.text()] = std::move(page);
        }
    }

    /// The step rail belongs to the window: choosing a step there is one press.
    StepPage& turnTo(const std::string& step) {
        for (auto& [id, page] : pages)
            page->hide();
        ++taps;
        pages.at(step)->show();
        QApplication::processEvents();
        return *pages.at(step);
    }
    void tapButton(QAbstractButton* button) {
        ASSERT_TRUE(button != nullptr && button->isVisible() && button->isEnabled());
        press(*button, QPointF(button->width() / 2.0, button->height() / 2.0));
        ++taps;
        QApplication::processEvents();
    }
    void tapValue(StepPage& page, const std::string& item, Side side, const Value& value) {
        FindingRow* row = page.row(ItemId{item});
        ASSERT_NE(row, nullptr) << item;
        ASSERT_TRUE(row->isVisible()) << item;
        const int cell = row->cellOf(side, value);
        ASSERT_GE(cell, 0) << item;
        press(*row, row->cell(cell).rect.center());
        ++taps;
        const Finding* found = session.exam().find(FindingKey{ItemId{item}, side});
        ASSERT_TRUE(found != nullptr && found->value == value) << item;
    }
    void tapSkin(StepPage& page, const RegionKey& region) {
        ASSERT_TRUE(page.skin()->isVisible());
        press(page.skin()->canvas(), page.skin()->canvas().placeOf(region).value());
        ++taps;
    }
    int tabOf(StepPage& page, const std::string& item) {
        const Item& wanted = *session.catalogue().find(item);
        const Group& group = *session.catalogue().group(wanted.step, wanted.group);
        return static_cast<int>(page.pageNames().indexOf(QString::fromStdString(group.page)));
    }
    void tapTab(StepPage& page, const std::string& item) { tapButton(page.tab(tabOf(page, item))); }
    void tapCardRest(StepPage& page, const std::string& item) {
        for (GroupCard* card : page.cards())
            if (card->holds(ItemId{item})) return tapButton(card->restButton());
        FAIL() << item;
    }
    void tapRestOf(StepPage& page) {
        tapButton(page.restButton() != nullptr ? page.restButton() : page.cards().front()->restButton());
    }
    /// Everyday items of the step that have a normal value and are still not examined.
    std::vector<std::string> unexamined(const std::string& step) {
        std::vector<std::string> left;
        for (const Item& item : session.catalogue().items())
            if (item.step.text() == step && item.tier == Tier::core && normalValue(item.scale) &&
                !recordedWhole(session.exam(), item))
                left.push_back(item.id.text());
        return left;
    }

    VisitSession session;
    std::map<std::string, std::unique_ptr<StepPage>> pages;
    int taps = 0;
};

const std::vector<std::string> examinationSteps{"standing", "gait", "seated", "lying"};

TEST_F(TapsTest, ACompleteNormalExaminationAfterIntakeTakesEightPressesAtMost) {
    for (const auto& step : examinationSteps) {
        StepPage& page = turnTo(step);
        tapRestOf(page);
        EXPECT_EQ(unexamined(step), std::vector<std::string>{}) << step;
    }
    int measures = 0;
    for (const Item& item : session.catalogue().items())
        if (item.step.text() != "intake" && item.tier == Tier::core && !normalValue(item.scale)) ++measures;
    std::printf("[ taps ] complete normal examination: %d presses (at most 8), %zu findings; %d everyday "
                "measures have no "
                "normal value and stay not examined\n",
                taps, session.exam().findings().size(), measures);
    EXPECT_LE(taps, 8);
    for (const auto& [key, finding] : session.exam().findings())
        EXPECT_TRUE(finding.bulk);
}

TEST_F(TapsTest, ATypicalOneRootExaminationTakesTwentyTwoPressesAtMost) {
    tapRestOf(turnTo("standing"));
    tapRestOf(turnTo("gait"));
    StepPage& seated = turnTo("seated");
    tapValue(seated, "strength.great_toe_extension", Side::left, Value::token("3"));
    tapValue(seated, "strength.ankle_dorsiflexion", Side::left, Value::token("4"));
    tapTab(seated, "touch.great_toe");
    for (const char* region : {"dorsum_medial", "dorsum_central", "great_toe"})
        for (int i = 0; i < 2; ++i)
            tapSkin(seated, {region, Side::left});
    tapTab(seated, "tension.slr_seated");
    tapValue(seated, "tension.slr_seated", Side::left, Value::token("leg_pain"));
    tapRestOf(seated);
    StepPage& lying = turnTo("lying");
    tapValue(lying, "tension.slr_supine", Side::left, Value::token("leg_pain"));
    tapRestOf(lying);
    for (const auto& step : examinationSteps)
        EXPECT_EQ(unexamined(step), std::vector<std::string>{}) << step;
    const Finding* toe = session.exam().find("touch.great_toe", Side::left);
    ASSERT_NE(toe, nullptr);
    EXPECT_EQ(toe->value, Value::token("reduced"));
    EXPECT_EQ(session.exam().find("strength.great_toe_extension", Side::left)->value, Value::token("3"));
    std::printf("[ taps ] typical one-root examination: %d presses (at most 22)\n", taps);
    EXPECT_LE(taps, 22);
}

TEST_F(TapsTest, ANursesIntakeTakesTwentyPressesAtMost) {
    StepPage& intake = turnTo("intake");
    tapValue(intake, "history.leg_pain", Side::left, Value::token("yes"));
    tapValue(intake, "history.back_pain", Side::none, Value::token("yes"));
    tapValue(intake, "pain.back", Side::none, Value::number(4));
    tapValue(intake, "pain.leg", Side::left, Value::number(7));
    tapCardRest(intake, "history.leg_pain");
    tapTab(intake, "history.bladder");
    tapCardRest(intake, "history.bladder");
    tapCardRest(intake, "history.cancer");
    tapTab(intake, "history.worse_sitting");
    tapCardRest(intake, "history.worse_sitting");
    tapCardRest(intake, "history.onset_before_40");
    ASSERT_TRUE(intake.drawing()->isVisible());
    for (const char* region : {"buttock_lower", "posterior_thigh", "calf_lateral"}) {
        press(intake.drawing()->canvas(), intake.drawing()->canvas().placeOf({region, Side::left}).value());
        ++taps;
        EXPECT_NE(session.exam().find("drawn." + std::string(region), Side::left), nullptr);
    }
    EXPECT_EQ(session.exam().find("history.leg_pain", Side::left)->value, Value::token("yes"));
    EXPECT_EQ(session.exam().find("history.leg_pain", Side::right)->value, Value::token("no"));
    EXPECT_TRUE(session.assessment().notAsked.empty());
    std::printf(
        "[ taps ] nurse's intake with two positives, pain scores and drawing: %d presses (at most 20)\n",
        taps);
    EXPECT_LE(taps, 20);
}

} // namespace
} // namespace rhizograph::app
