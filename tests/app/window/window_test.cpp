#include "windowfixture.h"

#include "patients/setuppage.h"
#include "window/finder.h"
#include "window/holdbutton.h"
#include "window/noticebar.h"
#include "window/options.h"
#include "window/patientstrip.h"
#include "window/problempage.h"
#include "window/redsignbar.h"

#include <fstream>
#include <gtest/gtest.h>

namespace rhizograph::app::testing {
namespace {

TEST_F(WindowTest, TheLetterUTakesTheLastTapBack) {
    VisitPage& page = opened();
    const FindingKey key{ItemId{"reflex.knee"}, Side::left};
    Finger(page).record(key, Value::token("1"));
    ASSERT_EQ(page.session().exam().find(key)->value, Value::token("1"));
    QTest::keyClick(window.get(), Qt::Key_U);
    EXPECT_EQ(page.session().exam().find(key)->value, Value::token("2"));
}

TEST_F(WindowTest, TheSlashFindsAnItemAndTurnsToItsPage) {
    VisitPage& page = opened();
    page.showPage(0);
    QTest::keyClick(window.get(), Qt::Key_Slash);
    ASSERT_TRUE(page.finder().isVisible());
    QTest::keyClicks(&page.finder().field(), "ankle refl");
    QTest::keyClick(&page.finder().field(), Qt::Key_Return);
    EXPECT_FALSE(page.finder().isVisible());
    auto& step = dynamic_cast<StepPage&>(page.page(page.pageIndex()));
    ASSERT_NE(step.row(ItemId{"reflex.ankle"}), nullptr);
    EXPECT_FALSE(step.row(ItemId{"reflex.ankle"})->visibleRegion().isEmpty());
}

TEST_F(WindowTest, ARedSignIsNotAcknowledgedByAShortPressButByHolding) {
    VisitPage& page = opened();
    ASSERT_TRUE(page.redSignBar().needed()); // the toe fell from 4 to 3 within twelve days
    auto* button = page.redSignBar().findChild<HoldButton*>();
    const std::size_t before = page.session().start().acknowledgements.size();
    press(*button, button->rect().center());
    EXPECT_EQ(page.session().start().acknowledgements.size(), before);
    QTest::mousePress(button, Qt::LeftButton);
    EXPECT_TRUE(
        waitUntil([&] { return page.session().start().acknowledgements.size() == before + 1; }, 3000));
    QTest::mouseRelease(button, Qt::LeftButton);
    EXPECT_EQ(page.session().start().acknowledgements.back().by, administrator);
}

TEST_F(WindowTest, EnterTwiceAcknowledgesARedSignAndOnceDoesNot) {
    VisitPage& page = opened();
    auto* button = page.redSignBar().findChild<HoldButton*>();
    const std::size_t before = page.session().start().acknowledgements.size();
    button->setFocus();
    QTest::keyClick(button, Qt::Key_Return);
    EXPECT_EQ(page.session().start().acknowledgements.size(), before);
    QTest::keyClick(button, Qt::Key_Return);
    EXPECT_EQ(page.session().start().acknowledgements.size(), before + 1);
}

TEST_F(WindowTest, WhatCannotBeSavedIsSaidAndKeptUntilItCan) {
    VisitPage& page = opened();
    OtherProgram other(clinic.file());
    other.run("begin immediate");
    Finger(page).record({ItemId{"reflex.knee"}, Side::left}, Value::token("0"));
    ASSERT_TRUE(waitUntil([&] { return page.strip().savedMark().state() == SavedMark::State::failing; }));
    EXPECT_TRUE(page.saveNotice().isVisible());
    EXPECT_TRUE(page.saveNotice().text().contains("kept here")) << page.saveNotice().text().toStdString();
    other.run("rollback");
    pressButton(page.saveNotice(), "Try again");
    EXPECT_TRUE(waitUntil([&] { return page.strip().savedMark().state() == SavedMark::State::saved; }));
    EXPECT_FALSE(page.saveNotice().isVisible());
    const Exam stored = need(clinic.opened()->exam(visit));
    EXPECT_EQ(stored.find("reflex.knee", Side::left)->value, Value::token("0"));
}

TEST_F(WindowTest, TheLockKeepsTheVisitAndHidesIt) {
    VisitPage& page = opened();
    page.showPage(3);
    window->lock();
    EXPECT_EQ(window->screen(), &window->signInPage());
    EXPECT_FALSE(window->store()->signedIn().has_value());
    EXPECT_EQ(window->patientsPage().list().cellCount(), 0);
    signIn(*window);
    EXPECT_EQ(window->screen(), &page);
    EXPECT_EQ(page.pageIndex(), 3);
}

TEST_F(WindowTest, SomeoneElseGoesOnWithTheOpenVisitUnderTheirOwnName) {
    const User second = need(window->store()->addUser("Fenwick Tarn", Role::clinician, passphrase));
    opened().showPage(2);
    window->lock();
    emit window->signInPage().signInWanted(second.id, passphrase);
    ASSERT_TRUE(waitUntil([&] { return window->screen() != &window->signInPage(); }));
    ASSERT_EQ(window->screen(), window->visitPage());
    EXPECT_EQ(window->visitPage()->pageIndex(), 2);
    EXPECT_EQ(window->session()->start().userName, "Fenwick Tarn");
}

TEST_F(WindowTest, TheNurseHandsTheVisitOver) {
    const Patient patient =
        need(window->store()->addPatient({"Hyacinth Mossgrave", "00711", {}, {}, {}, {}}));
    visit = need(window->store()->addVisit(patient.id, day(0))).id;
    pressButton(opened(), "Hand over");
    EXPECT_EQ(stateNow(), VisitState::inRoom);
    EXPECT_EQ(window->screen(), &window->patientsPage());
}

TEST_F(WindowTest, ASignedVisitTakesNoMoreTaps) {
    need(window->store()->sign(visit, "test"));
    VisitPage& page = opened();
    EXPECT_TRUE(page.session().readOnly());
    EXPECT_EQ(page.strip().savedMark().state(), SavedMark::State::readOnly);
    const FindingKey key{ItemId{"reflex.knee"}, Side::left};
    const Value before = page.session().exam().find(key)->value;
    page.goTo(key);
    QApplication::processEvents();
    auto& step = dynamic_cast<StepPage&>(page.page(page.pageIndex()));
    FindingRow& row = *step.row(key.item);
    pressCell(row, row, row.cellOf(key.side, Value::token("0")));
    EXPECT_EQ(page.session().exam().find(key)->value, before);
}

class OpeningTest : public ::testing::Test {
protected:
    std::string problemOn(const std::filesystem::path& file) {
        MainWindow::Setup setup{file, {}, clinic.options};
        MainWindow window(promised(materials()), setup);
        window.openDatabase();
        EXPECT_EQ(window.screen(), &window.problemPage());
        return window.problemPage().text().toStdString();
    }
    AppClinic clinic;
};

TEST_F(OpeningTest, WhereThereIsNoClinicOneIsSetUp) {
    auto window = clinic.window();
    window->openDatabase();
    window->show();
    SetupPage& page = *window->setupPage();
    ASSERT_EQ(window->screen(), &page);
    QTest::keyClicks(&field(page, "Name of the clinic"), clinicName);
    QTest::keyClicks(&field(page, "Your name (administrator)"), administrator);
    QTest::keyClicks(&field(page, "Passphrase, at least 8 characters"), passphrase);
    QTest::keyClicks(&field(page, "The same passphrase again"), "another one");
    pressButton(page, "Create the clinic");
    EXPECT_FALSE(std::filesystem::exists(clinic.file()));
    field(page, "The same passphrase again").setText(passphrase);
    pressButton(page, "Create the clinic");
    ASSERT_TRUE(waitUntil([&] { return window->screen() == &window->signInPage(); }));
    signIn(*window);
    EXPECT_EQ(window->screen(), &window->patientsPage());
}

TEST_F(OpeningTest, AFileThatIsNoClinicIsSaidToBeNone) {
    std::ofstream(clinic.file())
        << "Dear diary, this is a letter and nothing else, long enough to be read as pages.\n";
    EXPECT_NE(problemOn(clinic.file()).find("not a clinic"), std::string::npos);
}

TEST_F(OpeningTest, AFolderIsSaidToBeNoFile) {
    EXPECT_NE(problemOn(clinic.file().parent_path()).find("not a file"), std::string::npos);
}

TEST_F(OpeningTest, AClinicOfANewerProgramIsLeftAlone) {
    clinic.create();
    { OtherProgram(clinic.file()).run("pragma user_version = 9999"); }
    EXPECT_NE(problemOn(clinic.file()).find("newer"), std::string::npos) << problemOn(clinic.file());
}

TEST_F(OpeningTest, AWrongPassphraseIsSaidAndAskedForAgain) {
    clinic.create();
    auto window = clinic.window();
    window->openDatabase();
    window->show();
    QTest::keyClicks(&field(window->signInPage(), "Passphrase"), "guess guess");
    pressButton(window->signInPage(), "Sign in");
    EXPECT_TRUE(waitUntil([&] {
        for (const auto* label : window->signInPage().findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains("passphrase is wrong")) return true;
        return false;
    }));
    EXPECT_EQ(window->screen(), &window->signInPage());
}

TEST(ProgramOptions, NameTheClinicFile) {
    const Options options = readOptions({"rhizograph", "--database", "/somewhere/day.rhizo"}, "1.2.3");
    EXPECT_EQ(options.database, "/somewhere/day.rhizo");
    EXPECT_TRUE(options.problem.isEmpty());
    EXPECT_TRUE(readOptions({"rhizograph"}, "1.2.3").database.endsWith("/rhizograph/clinic.rhizo"));
}

TEST(ProgramOptions, AnswerHelpAndVersionAndRefuseWhatTheyDoNotKnow) {
    EXPECT_EQ(readOptions({"rhizograph", "--version"}, "1.2.3").answer, "rhizograph 1.2.3\n");
    EXPECT_TRUE(readOptions({"rhizograph", "--help"}, "1.2.3").answer.contains("--database"));
    EXPECT_TRUE(readOptions({"rhizograph", "--colour"}, "1.2.3").problem.contains("colour"));
    EXPECT_FALSE(readOptions({"rhizograph", "file.rhizo"}, "1.2.3").problem.isEmpty());
}

} // namespace
} // namespace rhizograph::app::testing
