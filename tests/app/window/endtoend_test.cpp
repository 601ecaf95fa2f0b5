#include "hands.h"

#include "impression/impressionlist.h"
#include "impression/impressionpanel.h"
#include "patients/patientform.h"
#include "patients/visitlist.h"

#include <gtest/gtest.h>

namespace rhizograph::app::testing {
namespace {

struct Told {
    FindingKey key;
    Value value;
};

Told told(const std::string& item, Side side, const std::string& token) {
    return {{ItemId{item}, side}, Value::token(token)};
}

/// A left fifth lumbar root as textbooks describe it (common practice): toe and ankle extensors and hip
/// abductors weak, the top of the foot numb, reflexes kept, the straight leg raise painful.
std::vector<Told> leftFifthRoot() {
    return {told("history.back_pain", Side::none, "yes"),
            told("history.leg_pain", Side::left, "yes"),
            told("history.leg_pain_below_knee", Side::left, "yes"),
            told("history.bladder", Side::none, "normal"),
            told("history.saddle_numbness", Side::none, "no"),
            told("drawn.outer_shin", Side::left, "sharp"),
            told("drawn.great_toe", Side::left, "numb"),
            told("inspect.iliac_crest", Side::none, "level"),
            told("motion.flexion_pain", Side::none, "leg"),
            told("gait.heel_walk", Side::left, "difficult"),
            told("gait.toe_walk", Side::left, "normal"),
            told("reflex.knee", Side::left, "2"),
            told("reflex.ankle", Side::left, "2"),
            told("strength.ankle_dorsiflexion", Side::left, "4"),
            told("strength.great_toe_extension", Side::left, "3"),
            told("strength.ankle_eversion", Side::left, "4"),
            told("strength.ankle_plantarflexion", Side::left, "5"),
            told("strength.knee_extension", Side::left, "5"),
            told("touch.dorsum_central", Side::left, "reduced"),
            told("touch.great_toe", Side::left, "absent"),
            told("tension.slr_supine", Side::left, "leg_pain"),
            told("tension.slr_supine", Side::right, "negative")};
}

bool panelNames(VisitPage& page, const QString& words) {
    const ImpressionList& list = page.impression().list();
    for (int index = 0; index < list.cellCount(); ++index)
        if (list.cell(index).name.contains(words)) return true;
    return false;
}

class EndToEnd : public ::testing::Test {
protected:
    EndToEnd() { clinic.create(); }

    std::unique_ptr<MainWindow> open() {
        auto window = clinic.window();
        window->resize(1280, 800);
        window->openDatabase();
        window->show();
        signIn(*window);
        return window;
    }

    static void addPatientAndBegin(MainWindow& window) {
        pressButton(window.patientsPage(), "New patient");
        QTest::keyClicks(&field(window.patientForm(), "Name"), "Barnaby Oxlip");
        QTest::keyClicks(&field(window.patientForm(), "Record number"), "00502");
        QTest::keyClicks(&field(window.patientForm(), "Birth date"), "2.7.1992");
        pressButton(window.patientForm(), "Save and begin a visit");
    }

    AppClinic clinic;
};

TEST_F(EndToEnd, AVisitIsRecordedOnTheScreensLocatedSavedAndFoundAgain) {
    const std::vector<Told> visit = leftFifthRoot();
    {
        auto window = open();
        addPatientAndBegin(*window);
        ASSERT_NE(window->visitPage(), nullptr);
        Finger finger(*window->visitPage());
        for (const Told& each : visit)
            finger.record(each.key, each.value);
        const Assessment& assessment = window->session()->assessment();
        EXPECT_EQ(assessment.localization.front().site, SiteId{"root.L5"});
        EXPECT_EQ(assessment.localization.front().side, Side::left);
        EXPECT_TRUE(panelNames(*window->visitPage(), "L5 root"));
        pressButton(*window->visitPage(), "Back to the patients");
        EXPECT_EQ(window->screen(), &window->patientsPage());
    }
    auto window = open();
    VisitList& list = window->patientsPage().list();
    ASSERT_EQ(list.cellCount(), 1);
    EXPECT_EQ(list.rows().front().name, "Barnaby Oxlip");
    pressCell(list, list, 0);
    ASSERT_NE(window->session(), nullptr);
    const Exam& exam = window->session()->exam();
    for (const Told& each : visit) {
        const Finding* finding = exam.find(each.key);
        ASSERT_NE(finding, nullptr) << each.key.item.text();
        EXPECT_EQ(finding->value, each.value) << each.key.item.text();
    }
    EXPECT_EQ(exam.findings().size(), visit.size());
    const Identity& identity = window->session()->start().patient.identity;
    EXPECT_EQ(identity.birthDate, "1992-07-02");
}

} // namespace
} // namespace rhizograph::app::testing
