#include "windowfixture.h"

#include "exam/historysheet.h"
#include "patients/erasedialog.h"
#include "patients/joindialog.h"
#include "patients/patientpage.h"
#include "window/noticebar.h"
#include "window/patientstrip.h"

#include <fstream>
#include <QListWidget>
#include <QMenu>

namespace rhizograph::app::testing {
namespace {

class PersonTest : public WindowTest {
protected:
    PersonTest() {
        patient = need(window->store()->visit(visit)).patient;
        const Identity identity = need(window->store()->patient(patient)).identity;
        twin = need(window->store()->addPatient({identity.name, "TWIN-1", {}, {}, {}, {}})).id;
        need(window->store()->addVisit(twin, day(-40)));
        visits = need(window->store()->visitsOf(patient)).size();
        name = QString::fromStdString(identity.name);
    }
    void show(const PatientId& id) {
        window->showPatients();
        emit window->patientsPage().patientChosen(id);
        ASSERT_EQ(window->screen(), &window->patientPage());
    }
    /// Chooses from the menu of the patient on the screen.
    void choose(const QString& words) {
        pressButton(window->patientPage(), "More for this patient");
        for (auto* menu : window->patientPage().findChildren<QMenu*>())
            for (QAction* action : menu->actions())
                if (action->text().startsWith(words)) {
                    menu->close();
                    if (!action->isEnabled()) throw std::runtime_error("not offered: " + words.toStdString());
                    return action->trigger();
                }
        throw std::runtime_error("no " + words.toStdString());
    }

    PatientId patient;
    PatientId twin;
    std::size_t visits = 0;
    QString name;
};

TEST_F(PersonTest, ADuplicateIsJoinedAndPartedAgain) {
    show(patient);
    inNextDialog([&](QDialog& dialog) {
        auto& join = dynamic_cast<JoinDialog&>(dialog);
        ASSERT_EQ(join.list().count(), 1) << "the one of the same name";
        EXPECT_TRUE(join.list().item(0)->text().contains("TWIN-1"));
        join.list().setCurrentRow(0);
        EXPECT_TRUE(shows(join, "1 visit"));
        pressButton(join, "Join");
    });
    choose("Join a duplicate");
    EXPECT_EQ(need(window->store()->visitsOf(patient)).size(), visits + 1);
    EXPECT_TRUE(shows(window->patientPage(), "1 duplicate joined"));
    choose("Part again");
    EXPECT_EQ(need(window->store()->visitsOf(patient)).size(), visits);
    EXPECT_EQ(need(window->store()->visitsOf(twin)).size(), 1U);
    EXPECT_FALSE(shows(window->patientPage(), "duplicate joined"));
}

TEST_F(PersonTest, JoiningGivenUpChangesNothing) {
    show(patient);
    inNextDialog([](QDialog& dialog) { pressButton(dialog, "Cancel"); });
    choose("Join a duplicate");
    EXPECT_EQ(need(window->store()->visitsOf(patient)).size(), visits);
}

TEST_F(PersonTest, EverythingIsHandedOutAndNoted) {
    show(patient);
    const auto file = clinic.path("out.json");
    answerFileDialog(file);
    choose("Hand out everything");
    ASSERT_TRUE(std::filesystem::exists(file));
    EXPECT_EQ(std::filesystem::status(file).permissions(),
              std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
    std::ifstream in(file);
    const std::string content{std::istreambuf_iterator<char>(in), {}};
    EXPECT_NE(content.find(name.toStdString()), std::string::npos);
    EXPECT_EQ(content.find("TWIN-1"), std::string::npos);
    EXPECT_TRUE(saidInABox().contains("readable")) << saidInABox().toStdString();
    EXPECT_EQ(need(window->store()->audit(1)).front().action, AuditAction::exported);
}

TEST_F(PersonTest, ErasingNeedsAReasonAndTheNameAndLeavesNothing) {
    show(patient);
    inNextDialog([&](QDialog& dialog) {
        QTest::keyClicks(&field(dialog, "Reason"), "asked for it in writing");
        pressButton(dialog, "Erase for good");
        EXPECT_TRUE(dialog.isVisible()) << "without the name";
        QTest::keyClicks(&field(dialog, "Name of the patient"), name);
        pressButton(dialog, "Erase for good");
    });
    choose("Erase for good");
    EXPECT_EQ(window->screen(), &window->patientsPage());
    EXPECT_FALSE(window->store()->patient(patient).ok());
    EXPECT_TRUE(window->store()->patient(twin).ok());
    EXPECT_EQ(need(window->store()->audit(1)).front().detail, "asked for it in writing");
}

TEST_F(PersonTest, ANurseIsNotOfferedJoiningOrErasing) {
    const User nurse = need(window->store()->addUser("Fenwick Tarn", Role::nurse, passphrase));
    window->lock();
    emit window->signInPage().signInWanted(nurse.id, passphrase);
    ASSERT_TRUE(waitUntil([&] { return window->screen() == &window->patientsPage(); }));
    show(patient);
    EXPECT_THROW(choose("Join a duplicate"), std::runtime_error);
    EXPECT_THROW(choose("Erase for good"), std::runtime_error);
}

TEST_F(PersonTest, AFindingTellsWhoWroteWhatBefore) {
    VisitPage& page = opened();
    const FindingKey key{ItemId{"reflex.knee"}, Side::left};
    Finger(page).record(key, Value::token("1"));
    Finger(page).record(key, Value::token("0"));
    const Item& item = *page.session().catalogue().find(key.item);
    const std::unique_ptr<HistorySheet> sheet{HistorySheet::open(page.session(), item, key.side, &page)};
    sheet->setAttribute(Qt::WA_DeleteOnClose, false);
    const QString all = sheet->lines().join('|');
    const auto first = all.indexOf("|0");
    const auto second = all.indexOf("|1");
    const auto third = all.indexOf("|2");
    EXPECT_TRUE(first > 0 && second > first && third > second) << all.toStdString();
    EXPECT_TRUE(all.contains(administrator));
}

TEST_F(PersonTest, WhatSomebodyElseRecordsShowsAndIsToldWhereItContradicts) {
    VisitPage& page = opened();
    const FindingKey ours{ItemId{"reflex.knee"}, Side::left};
    const FindingKey empty{ItemId{"reflex.adductor"}, Side::right};
    Finger(page).record(ours, Value::token("1"));
    ASSERT_TRUE(waitUntil([&] { return page.strip().savedMark().state() == SavedMark::State::saved; }));
    const User second = need(window->store()->addUser("Fenwick Tarn", Role::clinician, passphrase));
    auto other = need(openClinic(clinic.file(), clinic.options));
    need(other->signIn(second.id, passphrase));
    need(other->record(visit, {word("reflex.adductor", Side::right, "1")}));
    ASSERT_TRUE(waitUntil([&] { return page.session().exam().find(empty) != nullptr; }, 3000));
    EXPECT_FALSE(shows(page, "Changed by somebody else")) << "it contradicts nobody";
    need(other->record(visit, {word("reflex.knee", Side::left, "3")}));
    ASSERT_TRUE(
        waitUntil([&] { return page.session().exam().find(ours)->value == Value::token("3"); }, 3000));
    EXPECT_TRUE(shows(page, "Fenwick Tarn"));
    EXPECT_TRUE(shows(page, "was 1"));
    page.session().undoStack().undo();
    EXPECT_EQ(page.session().exam().find(ours)->value, Value::token("3"))
        << "another's value is not taken back";
    EXPECT_EQ(need(clinic.opened()->history(visit, ours)).size(), 3U)
        << "both writes are kept, none is repeated";
}

} // namespace
} // namespace rhizograph::app::testing
