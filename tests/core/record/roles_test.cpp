#include "clinicfixture.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace rhizograph::testing {
namespace {

using ::testing::HasSubstr;

/// What an action needs to act on: a clinic with one open and one signed visit and a joined duplicate.
struct Scene {
    Patient patient;
    Patient lonely;
    Patient joined;
    VisitId open;
    VisitId signedOff;
    PatientEventId event;
    User ada;
    User nurse;
    std::filesystem::path folder;
    std::filesystem::path unsaved;
};

struct Action {
    const char* name;
    const char* roles; ///< the initials of those who may, by the clinic's division of work
    std::function<Outcome(Store&, const Scene&)> run;
};

template <class T> Outcome outcomeOf(const Result<T>& result) {
    return result ? Outcome{} : Outcome{result.problems()};
}

// The division of work, written down here independently of the record's own table: n nurse, c clinician, r
// reviewer, a administrator. A nurse never signs, a reviewer never changes, only an administrator manages
// users, erases, restores.
const std::vector<Action>& actions() {
    static const std::vector<Action> all{
        {"find patients", "ncra", [](Store& s, const Scene&) { return outcomeOf(s.searchPatients("a")); }},
        {"read a patient", "ncra",
         [](Store& s, const Scene& x) { return outcomeOf(s.patient(x.patient.id)); }},
        {"read a visit", "ncra", [](Store& s, const Scene& x) { return outcomeOf(s.visit(x.open)); }},
        {"list a patient's visits", "ncra",
         [](Store& s, const Scene& x) { return outcomeOf(s.visitsOf(x.patient.id)); }},
        {"see the newest visits of several", "ncra",
         [](Store& s, const Scene& x) {
             return outcomeOf(s.newestVisits({x.patient.id, x.lonely.id}));
         }},
        {"list a day's visits", "ncra",
         [](Store& s, const Scene&) { return outcomeOf(s.visitsOn("2026-03-04")); }},
        {"list unsigned visits", "ncra",
         [](Store& s, const Scene&) { return outcomeOf(s.unsignedVisits()); }},
        {"read findings", "ncra", [](Store& s, const Scene& x) { return outcomeOf(s.exam(x.open)); }},
        {"read a finding's history", "ncra",
         [](Store& s, const Scene& x) {
             return outcomeOf(s.history(x.open, {ItemId{"one"}, Side::left}));
         }},
        {"read new events", "ncra",
         [](Store& s, const Scene& x) { return outcomeOf(s.eventsAfter(x.open, 0)); }},
        {"read the plan", "ncra", [](Store& s, const Scene& x) { return outcomeOf(s.plan(x.open)); }},
        {"read notes", "ncra", [](Store& s, const Scene& x) { return outcomeOf(s.notes(x.open)); }},
        {"read addenda", "ncra", [](Store& s, const Scene& x) { return outcomeOf(s.addenda(x.signedOff)); }},
        {"read the signature", "ncra",
         [](Store& s, const Scene& x) { return outcomeOf(s.signature(x.signedOff)); }},
        {"read acknowledgements", "ncra",
         [](Store& s, const Scene& x) { return outcomeOf(s.acknowledgements(x.open)); }},
        {"log an opening", "ncra",
         [](Store& s, const Scene& x) { return s.log(AuditAction::opened, x.open.text(), ""); }},
        {"log an export", "ncra",
         [](Store& s, const Scene& x) { return s.log(AuditAction::exported, x.open.text(), "chart"); }},
        {"log a print", "ncra",
         [](Store& s, const Scene& x) { return s.log(AuditAction::printed, x.open.text(), ""); }},
        {"add a patient", "nca",
         [](Store& s, const Scene&) {
             return outcomeOf(s.addPatient({"New Person", "", "", "", "", ""}));
         }},
        {"correct a patient", "nca", [](Store& s, const Scene& x) { return s.updatePatient(x.patient); }},
        {"open a visit", "nca",
         [](Store& s, const Scene& x) { return outcomeOf(s.addVisit(x.patient.id, "2026-03-05")); }},
        {"move a visit on", "nca",
         [](Store& s, const Scene& x) { return s.setState(x.open, VisitState::inRoom); }},
        {"record a finding", "nca",
         [](Store& s, const Scene& x) { return s.record(x.open, {token("one", Side::left, "1")}); }},
        {"count red signs", "nca", [](Store& s, const Scene& x) { return s.setOpenRedSigns(x.open, 1); }},
        {"count what got worse", "nca", [](Store& s, const Scene& x) { return s.setWorse(x.open, 1); }},
        {"read a patient's events", "ncra",
         [](Store& s, const Scene& x) { return outcomeOf(s.eventsOf(x.patient.id)); }},
        {"write an event", "nca",
         [](Store& s, const Scene& x) {
             return outcomeOf(s.writeEvent({{}, x.patient.id, "2026-03-02", "injection", "", false, "", ""}));
         }},
        {"take an event off the list", "nca",
         [](Store& s, const Scene& x) { return s.removeEvent(x.event); }},
        {"see who in the clinic needs an eye", "cra",
         [](Store& s, const Scene&) { return outcomeOf(s.practice("2026-03-04", 10)); }},
        {"write a note", "nca", [](Store& s, const Scene& x) { return s.addNote(x.open, "late"); }},
        {"replay unsaved changes", "nca",
         [](Store& s, const Scene& x) { return outcomeOf(s.replayUnsaved(x.unsaved)); }},
        {"back up", "nca",
         [](Store& s, const Scene& x) { return outcomeOf(s.backUp(x.folder / "b.rhzbackup")); }},
        {"back up daily", "nca",
         [](Store& s, const Scene& x) { return outcomeOf(s.backUpDaily(x.folder / "daily", 3)); }},
        {"write the plan", "ca", [](Store& s, const Scene& x) { return s.setPlan(x.open, "rest"); }},
        {"acknowledge a red sign", "ca",
         [](Store& s, const Scene& x) { return s.acknowledge(x.open, "a.sign", "urgent"); }},
        {"sign", "ca", [](Store& s, const Scene& x) { return s.sign(x.open, "knowledge-7"); }},
        {"sign by the state", "ca",
         [](Store& s, const Scene& x) { return s.setState(x.open, VisitState::signedOff); }},
        {"write an addendum", "ca",
         [](Store& s, const Scene& x) { return s.addAddendum(x.signedOff, "phoned"); }},
        {"join duplicates", "ca",
         [](Store& s, const Scene& x) { return s.mergePatients(x.lonely.id, x.patient.id); }},
        {"part duplicates", "ca", [](Store& s, const Scene& x) { return s.partPatients(x.joined.id); }},
        {"list joined duplicates", "ncra",
         [](Store& s, const Scene& x) { return outcomeOf(s.duplicatesOf(x.patient.id)); }},
        {"read the audit", "ra", [](Store& s, const Scene&) { return outcomeOf(s.audit(10)); }},
        {"verify", "ra", [](Store& s, const Scene&) { return outcomeOf(s.verify()); }},
        {"add a user", "a",
         [](Store& s, const Scene&) {
             return outcomeOf(s.addUser("New User", Role::administrator, passphrase));
         }},
        {"change a user", "a",
         [](Store& s, const Scene& x) {
             User changed = x.nurse;
             changed.role = Role::administrator;
             return s.updateUser(changed);
         }},
        {"change another's passphrase", "a",
         [](Store& s, const Scene& x) { return s.setPassphrase(x.ada.id, "another passphrase"); }},
        {"change settings", "a", [](Store& s, const Scene&) { return s.setSetting("idle_minutes", "99"); }},
        {"erase a patient", "a",
         [](Store& s, const Scene& x) { return s.erasePatient(x.patient.id, "asked to"); }},
    };
    return all;
}

class ARole : public Clinic {
protected:
    ARole() {
        for (const Role role : {Role::nurse, Role::clinician, Role::reviewer})
            need(store->addUser("The " + std::string{name(role)}, role, passphrase));
        for (const User& user : need(store->users()))
            (user.name == "Ada Thornfield" ? scene.ada
             : user.role == Role::nurse    ? scene.nurse
                                           : ignored) = user;
        scene.patient = somebody();
        scene.lonely = somebody("Lone Duplicate", "L-2");
        scene.joined = somebody("Joined Duplicate", "J-3");
        need(store->mergePatients(scene.joined.id, scene.patient.id));
        scene.open = need(store->addVisit(scene.patient.id, "2026-03-04")).id;
        scene.signedOff = need(store->addVisit(scene.patient.id, "2026-03-01")).id;
        need(store->sign(scene.signedOff, "knowledge-7"));
        scene.event =
            need(store->writeEvent({{}, scene.patient.id, "2026-03-01", "surgery", "", false, "", ""})).id;
        scene.unsaved = folder.path() / "unsaved";
        need(store->saveUnsaved(scene.unsaved, {{scene.open, NoteAdded{"kept aside"}}}));
        store.reset();
        prepared = contentOf(file);
    }

    /// The clinic as prepared, whatever an action did to it.
    void prepare() {
        store.reset();
        for (const char* suffix : {"-wal", "-shm"})
            std::filesystem::remove(file.string() + suffix);
        std::ofstream(file, std::ios::binary | std::ios::trunc) << prepared;
        scene.folder = folder.path() / fmt::format("try{}", ++tries);
        std::filesystem::create_directory(scene.folder);
    }

    static const char* userOf(Role role) {
        switch (role) {
        case Role::nurse:
            return "The nurse";
        case Role::clinician:
            return "The clinician";
        case Role::reviewer:
            return "The reviewer";
        case Role::administrator:
            break;
        }
        return "Ada Thornfield";
    }

    Scene scene;
    User ignored;
    std::string prepared;
    int tries = 0;
};

TEST_F(ARole, IsHeldToItsRightsByTheRecordItself) {
    int allowed = 0;
    int forbidden = 0;
    for (const Action& action : actions())
        for (const Role role : {Role::nurse, Role::clinician, Role::reviewer, Role::administrator}) {
            SCOPED_TRACE(fmt::format("{} as {}", action.name, name(role)));
            prepare();
            store = signedIn(userOf(role));
            auto watcher = need(openClinic(file, options));
            const std::int64_t before = need(watcher->changeCounter());
            const Outcome outcome = action.run(*store, scene);
            if (std::string_view{action.roles}.find(name(role)[0]) != std::string_view::npos) {
                EXPECT_TRUE(outcome.ok()) << reasons(outcome.problems());
                ++allowed;
                continue;
            }
            ++forbidden;
            ASSERT_FALSE(outcome.ok());
            EXPECT_EQ(store->lastFailure(), Failure::refused);
            EXPECT_THAT(reasons(outcome.problems()),
                        HasSubstr(std::string{"signed in as "} + std::string{name(role)}));
            EXPECT_EQ(need(watcher->changeCounter()), before) << "something was written all the same";
            EXPECT_TRUE(std::filesystem::is_empty(scene.folder));
        }
    fmt::print("roles: {} actions x 4 roles: {} allowed and done, {} forbidden and refused without a trace "
               "of writing\n",
               actions().size(), allowed, forbidden);
}

TEST_F(ARole, IsNeededForEveryAction) {
    for (const Action& action : actions()) {
        SCOPED_TRACE(action.name);
        prepare();
        auto nobody = need(openClinic(file, options));
        const Outcome outcome = action.run(*nobody, scene);
        ASSERT_FALSE(outcome.ok());
        EXPECT_THAT(reasons(outcome.problems()), HasSubstr("Sign in first"));
    }
}

TEST_F(ARole, TakenAwayIsGoneAtOnceForWhoIsSignedIn) {
    for (const bool closed : {false, true})
        for (const Action& action : actions()) {
            if (std::string_view{action.roles}.find('c') == std::string_view::npos) continue;
            SCOPED_TRACE(action.name);
            prepare();
            store = signedIn("The clinician");
            auto administrator = signedIn("Ada Thornfield");
            User user = *store->signedIn();
            if (closed)
                user.active = false;
            else
                user.role = Role::reviewer;
            need(administrator->updateUser(user));
            const bool left = !closed && std::string_view{action.roles}.find('r') != std::string_view::npos;
            EXPECT_EQ(action.run(*store, scene).ok(), left);
        }
}

TEST_F(ARole, SetsItsOwnPassphrase) {
    prepare();
    store = signedIn("The nurse");
    EXPECT_TRUE(store->setPassphrase(scene.nurse.id, "a new passphrase").ok());
    EXPECT_FALSE(store->setPassphrase(scene.nurse.id, "short"));
    EXPECT_FALSE(store->signIn(scene.nurse.id, passphrase));
    EXPECT_TRUE(store->signIn(scene.nurse.id, "a new passphrase").ok());
}

TEST_F(ARole, OfAdministratorIsNeverLeftWithoutAnybody) {
    prepare();
    store = signedIn("Ada Thornfield");
    User last = scene.ada;
    last.role = Role::clinician;
    EXPECT_FALSE(store->updateUser(last));
    last = scene.ada;
    last.active = false;
    EXPECT_FALSE(store->updateUser(last));
}

TEST_F(ARole, IsSlowedDownAfterWrongPassphrasesAndTheAuditTells) {
    prepare();
    auto door = need(openClinic(file, options));
    for (int i = 0; i < 3; ++i)
        EXPECT_THAT(reasons(door->signIn(scene.nurse.id, "wrong passphrase").problems()), HasSubstr("wrong"));
    EXPECT_THAT(reasons(door->signIn(scene.nurse.id, passphrase).problems()),
                HasSubstr("Try again in 2 seconds"));
    time.pass(std::chrono::seconds{3});
    need(door->signIn(scene.nurse.id, passphrase));
    store = signedIn("Ada Thornfield");
    int failures = 0;
    for (const AuditEntry& entry : need(store->audit(20)))
        failures +=
            entry.action == AuditAction::signInFailed && entry.subject == scene.nurse.id.text() ? 1 : 0;
    EXPECT_EQ(failures, 3);
}

} // namespace
} // namespace rhizograph::testing
