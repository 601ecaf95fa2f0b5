#include "examvisit.h"

#include "exam/groupcard.h"
#include "figures/paindrawing.h"
#include "figures/skinfigure.h"
#include "parts/button.h"

#include <gtest/gtest.h>
#include <QPlainTextEdit>

namespace rhizograph::app {
namespace {

class PaintCounter : public QObject {
public:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint) painted.insert(watched->objectName());
        return false;
    }
    std::set<QString> painted;
};

class StepPageTest : public testing::Test {
protected:
    StepPageTest() : session(knowledge(), {}, nullptr) {}
    StepPage& make(const std::string& step, int width = 848) {
        page = std::make_unique<StepPage>(session, figures(), step);
        page->resize(width, 744);
        page->show();
        QApplication::processEvents();
        return *page;
    }

    VisitSession session;
    std::unique_ptr<StepPage> page;
};

TEST_F(StepPageTest, EveryItemOfTheCatalogueIsShownBySomeStepAndCanBeGoneTo) {
    int items = 0;
    for (const Step& step : session.catalogue().steps()) {
        make(step.id.text());
        for (const Item& item : session.catalogue().items()) {
            const FindingKey key{item.id, item.sided ? Side::left : Side::none};
            EXPECT_EQ(page->shows(key), item.step == step.id) << item.id.text();
            if (item.step != step.id) continue;
            ++items;
            page->goTo(key);
            QApplication::processEvents();
            if (FindingRow* row = page->row(item.id)) {
                EXPECT_TRUE(row->isVisible()) << item.id.text();
                EXPECT_FALSE(row->visibleRegion().isEmpty()) << item.id.text();
                EXPECT_EQ(row->rowLayout().cells[static_cast<std::size_t>(row->focusedCell())].side,
                          key.side);
            }
        }
    }
    EXPECT_EQ(items, static_cast<int>(session.catalogue().items().size()));
}

TEST_F(StepPageTest, OnlyTheRowThatChangedIsRepainted) {
    make("seated");
    PaintCounter counter;
    for (const GroupCard* card : page->cards())
        for (FindingRow* row : card->shownRows())
            row->installEventFilter(&counter);
    for (int i = 0; i < 5; ++i)
        QApplication::processEvents();
    counter.painted.clear();
    session.tap({ItemId{"reflex.ankle"}, Side::left}, Value::token("1"));
    QApplication::processEvents();
    EXPECT_EQ(counter.painted, std::set<QString>{"reflex.ankle"});
}

TEST_F(StepPageTest, ExtendedItemsWaitBehindMoreAndComeForwardOnceRecorded) {
    session.tap({ItemId{"reflex.plantar"}, Side::left}, Value::token("down"));
    make("seated");
    EXPECT_TRUE(page->row(ItemId{"reflex.plantar"})->isVisible());
    FindingRow* waiting = page->row(ItemId{"tone.leg"});
    EXPECT_FALSE(waiting->isVisible());
    page->goTo({waiting->item().id, Side::right});
    EXPECT_TRUE(waiting->isVisible());
}

TEST_F(StepPageTest, TheRestOfAStepIsOneUndoStepAndLeavesWhatIsHidden) {
    make("seated");
    page->restOfStep();
    EXPECT_EQ(session.undoStack().count(), 1);
    EXPECT_EQ(session.exam().find("tone.leg", Side::left), nullptr);
    EXPECT_EQ(session.exam().find("reflex.knee", Side::left)->value, Value::token("2"));
    EXPECT_TRUE(session.exam().find("reflex.knee", Side::left)->bulk);
    EXPECT_FALSE(page->restButton()->isEnabled());
    session.undoStack().undo();
    EXPECT_TRUE(session.exam().findings().empty());
}

TEST_F(StepPageTest, AWholeStepOfQuestionsCannotBeFilledInOnePress) {
    make("intake");
    EXPECT_EQ(page->restButton(), nullptr);
    page->restOfStep();
    for (const FindingKey& open : session.assessment().notAsked)
        EXPECT_EQ(session.exam().find(open), nullptr);
    EXPECT_FALSE(session.assessment().notAsked.empty());
}

TEST_F(StepPageTest, TheDrawingStandsBesideTheQuestionsWhereThereIsRoom) {
    make("intake", 1176);
    EXPECT_TRUE(page->drawing()->isVisible());
    EXPECT_EQ(page->currentPage(), 0);
    page->resize(768, 1000);
    QApplication::processEvents();
    EXPECT_FALSE(page->drawing()->isVisible());
    page->goTo({ItemId{"drawn.great_toe"}, Side::left});
    EXPECT_TRUE(page->drawing()->isVisible());
}

TEST_F(StepPageTest, WordsAreRecordedWhenTheFieldIsLeft) {
    make("intake");
    const Item& item = *session.catalogue().find("history.complaint");
    QPlainTextEdit* edit = nullptr;
    for (auto* each : page->findChildren<QPlainTextEdit*>())
        if (each->accessibleName().toStdString() == item.label) edit = each;
    ASSERT_NE(edit, nullptr);
    edit->setPlainText("Leg gives way on stairs");
    QFocusEvent leave(QEvent::FocusOut);
    QApplication::sendEvent(edit, &leave);
    const Finding* found = session.exam().find(item.id.text());
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->value, Value::text("Leg gives way on stairs"));
    session.undoStack().undo();
    EXPECT_EQ(edit->toPlainText(), "");
}

TEST_F(StepPageTest, TheRingCountsItemsAndClosesOnlyWhenBothSidesAreRecorded) {
    const int shown = stepTally(session, "gait").shown;
    EXPECT_GT(shown, 0);
    session.tap({ItemId{"gait.heel_walk"}, Side::left}, Value::token("unable"));
    EXPECT_EQ(stepTally(session, "gait").recorded, 0);
    EXPECT_EQ(stepTally(session, "gait").abnormal, 1);
    session.tap({ItemId{"gait.heel_walk"}, Side::right}, Value::token("normal"));
    EXPECT_EQ(stepTally(session, "gait").recorded, 1);
    EXPECT_EQ(stepTally(session, "gait").shown, shown);
}

TEST_F(StepPageTest, AnyItemMayBeTheOnlyOneRecorded) {
    const auto some = [](const Scale& scale) {
        if (scale.numeric()) return Value::number(scale.maximum);
        return scale.listed() ? Value::token(scale.values.back().token) : Value::text("words");
    };
    for (const Item& item : session.catalogue().items()) {
        const FindingKey key = keysOf(item).front();
        session.change("set", {{key, Finding{some(item.scale), false, {}}}});
        EXPECT_EQ(session.exam().findings().size(), 1U) << item.id.text();
        for (const SiteResult& site : session.assessment().localization)
            EXPECT_TRUE(site.probability >= 0 && site.probability <= 1) << item.id.text();
        session.change("clear", {{key, std::nullopt}});
    }
}

TEST_F(StepPageTest, AllNoAnswersTheQuestionsAndLeavesAScoreOpen) {
    make("intake");
    for (GroupCard* card : page->cards())
        if (card->holds(ItemId{"pain.back"})) card->restNormal();
    const Finding* below = session.exam().find("history.leg_pain_below_knee", Side::left);
    ASSERT_NE(below, nullptr);
    EXPECT_EQ(below->value, Value::token("no"));
    EXPECT_EQ(session.exam().find("pain.back", Side::none), nullptr);
    EXPECT_EQ(session.exam().find("pain.leg", Side::left), nullptr);
}

} // namespace
} // namespace rhizograph::app
