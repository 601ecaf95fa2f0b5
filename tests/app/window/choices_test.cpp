#include "hands.h"
#include "support/inventedvisits.h"

#include "exam/groupcard.h"
#include "window/rail.h"
#include "window/tour.h"

#include <gtest/gtest.h>
#include <QPlainTextEdit>

namespace rhizograph::app::testing {
namespace {

class Choices : public ::testing::Test {
protected:
    Choices() {
        clinic.create();
        visit = inventDay(*clinic.opened());
        window = clinic.window();
        window->openDatabase();
        window->show();
        signIn(*window);
    }
    ~Choices() override { apply({ThemeName::light, 100, false, Language::english}); }

    void choose(Language language) {
        Preferences changed{ThemeName::light, 100, false, language};
        window->setPreferences(changed);
        for (int i = 0; i < 3; ++i)
            QApplication::processEvents();
    }
    QStringList railLabels() {
        QStringList out;
        for (const RailPlace& place : window->visitPage()->rail().places())
            out << place.label;
        return out;
    }

    AppClinic clinic;
    VisitId visit;
    std::unique_ptr<MainWindow> window;
};

TEST_F(Choices, TheLanguageChangesAtOnceAndKeepsTheOpenVisitItsPageAndItsUndo) {
    window->openVisitById(visit);
    window->visitPage()->showPage(3);
    VisitSession* session = window->session();
    session->tap({ItemId{"reflex.knee"}, Side::left}, Value::token("1"));
    const Exam before = session->exam();
    EXPECT_TRUE(railLabels().contains("Seated"));
    choose(Language::german);
    ASSERT_NE(window->visitPage(), nullptr);
    EXPECT_EQ(window->session(), session);
    EXPECT_TRUE(session->exam() == before);
    EXPECT_EQ(window->visitPage()->pageIndex(), 3);
    EXPECT_TRUE(railLabels().contains("Sitzend")) << railLabels().join(' ').toStdString();
    EXPECT_FALSE(railLabels().contains("Seated"));
    QTest::keyClick(window.get(), Qt::Key_U);
    EXPECT_FALSE(session->exam() == before);
    choose(Language::spanish);
    EXPECT_TRUE(railLabels().contains("Sentado")) << railLabels().join(' ').toStdString();
    choose(Language::english);
    EXPECT_TRUE(railLabels().contains("Seated"));
}

TEST_F(Choices, TheLanguageTouchesNothingThatIsStored) {
    window->openVisitById(visit);
    choose(Language::german);
    Finger(*window->visitPage()).record({ItemId{"reflex.ankle"}, Side::right}, Value::token("0"));
    window->showPatients();
    const Exam stored = need(window->store()->exam(visit));
    const Finding* found = stored.find("reflex.ankle", Side::right);
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->value, Value::token("0"));
}

TEST_F(Choices, TheSignInScreenAndThePatientsSpeakTheLanguageToo) {
    choose(Language::german);
    EXPECT_NO_THROW(pressButton(window->patientsPage(), "Neuer Patient"));
    window->lock();
    EXPECT_NO_THROW(field(window->signInPage(), "Passphrase"));
    choose(Language::spanish);
    EXPECT_NO_THROW(field(window->signInPage(), "Frase de paso"));
}

TEST_F(Choices, AClinicMayOrderItsStepsAndMoveItemsButNeverHideWhatWasRecorded) {
    ClinicSettings settings = need(loadClinicSettings(*window->store()));
    const ClinicSettings before = settings;
    settings.stepOrder = {"seated", "intake"};
    settings.places.behindMore = {ItemId{"reflex.knee"}, ItemId{"strength.great_toe_extension"}};
    settings.places.atOnce = {ItemId{"hip.log_roll"}};
    settings.phrases = "Walk every day.\nCome back on Monday.";
    need(saveClinicSettings(*window->store(), before, settings));
    EXPECT_EQ(need(loadClinicSettings(*window->store())), settings);
    window->lock();
    signIn(*window);
    window->openVisitById(visit);
    const QStringList labels = railLabels();
    EXPECT_EQ(labels.at(0), "Seated");
    EXPECT_EQ(labels.at(1), "Intake");
    EXPECT_EQ(labels.at(2), "Standing"); // not named: in the catalogue's order
    auto& step = dynamic_cast<StepPage&>(window->visitPage()->page(0));
    // Recorded in this visit: it shows although the clinic moved it behind More.
    EXPECT_FALSE(step.row(ItemId{"strength.great_toe_extension"})->isHidden());
    const auto& catalogue = window->session()->catalogue();
    EXPECT_FALSE(window->session()->everyday(*catalogue.find("reflex.knee")));
    EXPECT_TRUE(window->session()->everyday(*catalogue.find("hip.log_roll")));
}

TEST_F(Choices, TheTourShowsEveryPartInAMinuteAndIsNotShownAgain) {
    window->openVisitById(visit);
    window->showTour();
    auto* tour = window->visitPage()->findChild<Tour*>();
    ASSERT_NE(tour, nullptr);
    EXPECT_GE(tour->length(), 5u);
    EXPECT_LE(tour->length(), 6u); // ten seconds each
    const Exam before = window->session()->exam();
    QTest::mouseClick(tour, Qt::LeftButton, {}, QPoint(300, 300));
    EXPECT_TRUE(window->session()->exam() == before);
    const std::size_t stops = tour->length();
    for (std::size_t stop = 0; stop < stops; ++stop)
        QTest::keyClick(tour, Qt::Key_Right);
    QApplication::processEvents();
    EXPECT_TRUE(loadPreferences(QString::fromStdString(clinic.path("preferences.ini").string())).tourSeen);
}

} // namespace
} // namespace rhizograph::app::testing
