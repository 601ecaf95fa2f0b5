// What may be done to the open visit, whoever goes on with it: judged by what the record itself does.
#include "windowfixture.h"

#include "compare/trendpage.h"
#include "settings/settingspage.h"
#include "summary/summarypage.h"
#include "summary/summarypanel.h"
#include "window/patientstrip.h"
#include "window/redsignbar.h"

#include <QPlainTextEdit>
#include <QUndoStack>

namespace rhizograph::app::testing {
namespace {

const FindingKey knee{ItemId{"reflex.knee"}, Side::left};

class RightsTest : public WindowTest {
protected:
    RightsTest() : self(window->store()->signedIn()->id) {}
    /// Another program of the clinic, the administrator's.
    std::unique_ptr<Store> record() { return as(self); }
    User add(const std::string& name, Role role) { return need(record()->addUser(name, role, passphrase)); }
    void switchTo(const UserId& user) {
        window->lock();
        ASSERT_EQ(window->screen(), &window->signInPage());
        emit window->signInPage().signInWanted(user, passphrase);
        ASSERT_TRUE(waitUntil([&] { return window->screen() != &window->signInPage(); }));
    }
    std::unique_ptr<Store> as(const UserId& user) {
        auto store = need(openClinic(clinic.file(), clinic.options));
        need(store->signIn(user, passphrase));
        return store;
    }
    [[nodiscard]] VisitSession& session() { return window->visitPage()->session(); }
    template <class T> T& pageOf() {
        VisitPage& page = *window->visitPage();
        for (int i = 0; i < page.pageCount(); ++i)
            if (auto* found = qobject_cast<T*>(&page.page(i))) {
                page.showPage(i);
                QApplication::processEvents();
                return *found;
            }
        throw std::runtime_error("no such page");
    }

    UserId self;
};

TEST_F(RightsTest, WhoeverGoesOnMayDoToTheVisitWhatTheRecordLetsThemDo) {
    const std::vector<User> people{add("Fenwick Tarn", Role::reviewer), add("Isolde Quarrier", Role::nurse),
                                   add("Ambrose Linden", Role::clinician),
                                   add("Perpetua Vane", Role::reviewer)};
    opened();
    int turn = 0;
    for (const User& person : people) {
        SCOPED_TRACE(person.name);
        switchTo(person.id);
        ASSERT_EQ(window->screen(), window->visitPage());
        EXPECT_EQ(session().start().userName.toStdString(), person.name);
        const auto record = as(person.id);
        const std::string value = turn++ % 2 == 0 ? "0" : "3";
        EXPECT_EQ(!session().readOnly(),
                  record->record(visit, {word("reflex.adductor", Side::left, value)}).ok());
        EXPECT_EQ(session().mayPlan(), record->setPlan(visit, "walk " + value).ok());
        EXPECT_EQ(session().mayAcknowledge(), record->acknowledge(visit, "cauda_equina", "urgent").ok());
        SummaryPanel& panel = pageOf<SummaryPage>().panel();
        EXPECT_EQ(panel.planField().isReadOnly(), !session().mayPlan());
        EXPECT_EQ(panel.signButton().isVisible(), session().maySign());
        EXPECT_EQ(session().maySign(), allows(person.role, Permission::sign));
        EXPECT_FALSE(shows(*window->visitPage(), "Addendum")) << "the record takes none before signing";
        const Value before = session().exam().find(knee)->value;
        session().tap(knee, Value::token(value));
        EXPECT_EQ(session().exam().find(knee)->value == before, session().readOnly());
    }
    const auto history = need(record()->history(visit, knee));
    EXPECT_EQ(history.size(), 3U) << "as invented, by the nurse and by the clinician";
}

TEST_F(RightsTest, AnEarlierVisitThatIsOnlyReadStaysSoForTheNextPersonAndKeepsItsWayBack) {
    const User second = add("Ambrose Linden", Role::clinician);
    const auto patient = need(window->store()->visit(visit)).patient;
    const VisitId later = need(window->store()->addVisit(patient, day(1))).id;
    window->openVisitById(later);
    window->readVisit(visit);
    ASSERT_TRUE(session().readOnly()) << "though it is not signed";
    switchTo(second.id);
    ASSERT_EQ(session().start().visit.id, visit);
    EXPECT_TRUE(session().readOnly());
    session().tap(knee, Value::token("0"));
    EXPECT_NE(session().exam().find(knee)->value, Value::token("0"));
    pressButton(*window->visitPage(), "Back to the course");
    ASSERT_TRUE(waitUntil([&] { return session().start().visit.id == later; }));
    EXPECT_FALSE(session().readOnly());
}

TEST_F(RightsTest, OtherWordsOnTheScreenKeepTheWayBack) {
    const auto patient = need(window->store()->visit(visit)).patient;
    const VisitId later = need(window->store()->addVisit(patient, day(1))).id;
    window->openVisitById(later);
    window->readVisit(visit);
    emit window->settingsPage().clinicChanged({});
    window->showSettings();
    emit window->settingsPage().back();
    EXPECT_TRUE(session().readOnly());
    pressButton(*window->visitPage(), "Back to the course");
    EXPECT_TRUE(waitUntil([&] { return session().start().visit.id == later; }));
}

TEST_F(RightsTest, AVisitSignedElsewhereWhileTheScreenWasLockedIsOnlyReadBySamePersonToo) {
    opened();
    window->lock();
    need(record()->sign(visit, "test"));
    emit window->signInPage().signInWanted(self, passphrase);
    ASSERT_TRUE(waitUntil([&] { return window->screen() == window->visitPage(); }));
    EXPECT_TRUE(session().readOnly());
    EXPECT_EQ(window->visitPage()->strip().savedMark().state(), SavedMark::State::readOnly);
}

TEST_F(RightsTest, ARoleTakenAwayWhileTheScreenWasLockedIsGone) {
    User second = add("Ambrose Linden", Role::clinician);
    opened();
    switchTo(second.id);
    ASSERT_FALSE(session().readOnly());
    window->lock();
    second.role = Role::reviewer;
    need(record()->updateUser(second));
    emit window->signInPage().signInWanted(second.id, passphrase);
    ASSERT_TRUE(waitUntil([&] { return window->screen() == window->visitPage(); }));
    EXPECT_TRUE(session().readOnly());
}

TEST_F(RightsTest, AVisitSignedElsewhereWhileItIsOpenCanOnlyBeReadFromThenOn) {
    opened();
    session().tap(knee, Value::token("0"));
    ASSERT_TRUE(waitUntil(
        [&] { return window->visitPage()->strip().savedMark().state() == SavedMark::State::saved; }));
    need(record()->sign(visit, "test"));
    ASSERT_TRUE(waitUntil([&] { return session().readOnly(); }, 5000));
    ASSERT_TRUE(waitUntil([&] { return shows(*window->visitPage(), "signed meanwhile"); }, 5000));
    EXPECT_EQ(session().start().visit.state, VisitState::signedOff);
    EXPECT_FALSE(session().undoStack().canUndo());
    session().tap(knee, Value::token("3"));
    EXPECT_EQ(session().exam().find(knee)->value, Value::token("0"));
    EXPECT_FALSE(pageOf<SummaryPage>().panel().signButton().isVisible());
}

TEST_F(RightsTest, ARoleTakenAwayWhileTheVisitIsOpenIsGoneAtOnce) {
    User second = add("Ambrose Linden", Role::clinician);
    opened();
    switchTo(second.id);
    second.role = Role::reviewer;
    need(record()->updateUser(second));
    EXPECT_TRUE(waitUntil([&] { return session().readOnly(); }, 5000));
    EXPECT_TRUE(waitUntil([&] { return shows(*window->visitPage(), "role"); }, 5000));
}

TEST_F(RightsTest, AnothersPlanShowsAndIsToldWhereItContradicts) {
    opened();
    SummaryPage& page = pageOf<SummaryPage>();
    const QString before = session().plan();
    ASSERT_FALSE(before.isEmpty());
    const auto other = as(add("Ambrose Linden", Role::clinician).id);
    need(other->setPlan(visit, "Review in three days."));
    ASSERT_TRUE(waitUntil([&] { return session().plan() == "Review in three days."; }, 5000));
    EXPECT_EQ(page.panel().plan(), "Review in three days.");
    EXPECT_TRUE(shows(*window->visitPage(), before)) << "what stood there before is not lost";
    window->showPatients();
    EXPECT_EQ(need(record()->plan(visit)), "Review in three days.") << "and is not written again";
}

TEST_F(RightsTest, WhatIsBeingTypedIsNotReplacedByAnothersPlan) {
    opened();
    QPlainTextEdit& typed = pageOf<SummaryPage>().panel().planField();
    const auto other = as(add("Ambrose Linden", Role::clinician).id);
    need(other->setPlan(visit, "Review in three days."));
    typed.setPlainText("Review in two days.");
    ASSERT_TRUE(waitUntil([&] { return need(record()->plan(visit)) == "Review in two days."; }, 5000));
    EXPECT_EQ(typed.toPlainText(), "Review in two days.");
}

TEST_F(RightsTest, AnothersAcknowledgementOfARedSignShowsByName) {
    opened();
    ASSERT_TRUE(window->visitPage()->redSignBar().needed());
    const auto other = as(add("Ambrose Linden", Role::clinician).id);
    for (const RedSign& sign : session().assessment().redSigns)
        need(other->acknowledge(visit, sign.id, urgencyWord(sign.urgency).toStdString()));
    EXPECT_TRUE(waitUntil([&] { return !window->visitPage()->redSignBar().needed(); }, 5000));
    EXPECT_TRUE(shows(*window->visitPage(), "Ambrose Linden"));
    const std::size_t given = session().start().acknowledgements.size();
    EXPECT_EQ(given, need(record()->acknowledgements(visit)).size());
    window->showPatients();
    EXPECT_EQ(need(record()->visit(visit)).openRedSigns, 0);
}

} // namespace
} // namespace rhizograph::app::testing
