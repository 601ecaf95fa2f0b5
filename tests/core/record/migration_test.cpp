#include "clinicfixture.h"

#include "record/failure.h"
#include "record/schema.h"

#include <chrono>
#include <csignal>
#include <gmock/gmock.h>
#include <random>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>

namespace rhizograph::testing {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

/// A clinic as an earlier version of the program wrote it, kept as SQL text: tests/core/record/schemaN.sql.
class AnOldClinic : public ::testing::TestWithParam<int> {
protected:
    AnOldClinic() {
        options.clock = time.clock();
        options.cost = KeyCost::cheapest();
        options.busyMilliseconds = 50;
        write(file);
    }

    static fs::path fixture() {
        return fs::path{RHIZOGRAPH_TEST_DATA} / "core" / "record" /
               ("schema" + std::to_string(GetParam()) + ".sql");
    }

    static void write(const fs::path& to) {
        std::ofstream{to};
        ::chmod(to.c_str(), 0600);
        sqlite::Database database{to, 100};
        database.script(contentOf(fixture()));
        // Such clinics were in use with a write-ahead log.
        database.prepareForWriting();
    }

    static int eventsInTheFixture() {
        const std::string text = contentOf(fixture());
        int count = 0;
        for (std::size_t at = 0; (at = text.find("INSERT INTO visit_event", at)) != std::string::npos; ++at)
            ++count;
        return count;
    }

    std::unique_ptr<Store> opened(const std::string& user = "Ada Thornfield") {
        auto store = need(openClinic(file, options));
        for (const User& candidate : need(store->users()))
            if (candidate.name == user) need(store->signIn(candidate.id, passphrase));
        return store;
    }

    [[nodiscard]] std::vector<fs::path> keptCopies() const {
        std::vector<fs::path> out;
        for (const auto& entry : fs::directory_iterator(folder.path()))
            if (entry.path().string().find(".schema-") != std::string::npos &&
                entry.path().string().find("-wal") == std::string::npos &&
                entry.path().string().find("-shm") == std::string::npos)
                out.push_back(entry.path());
        return out;
    }

    Folder folder;
    fs::path file = folder.path() / "clinic.rhz";
    StoppedClock time;
    ClinicOptions options;
};

TEST_P(AnOldClinic, IsBroughtUpToDateWithNothingLost) {
    auto store = opened();
    EXPECT_EQ(need(store->clinicName()), "Clinic of the Nine Bridges");
    EXPECT_EQ(need(store->users()).size(), 4U);
    const auto patients = need(store->searchPatients(""));
    ASSERT_EQ(patients.size(), 2U) << "and one joined duplicate";
    EXPECT_EQ(patients[0].identity.name, "Øydis Marlbrook");
    EXPECT_EQ(patients[1].identity.name, "Quillon Fernwhistle");
    const auto visits = need(store->visitsOf(patients[1].id));
    ASSERT_EQ(visits.size(), 2U) << "the duplicate's visit is the patient's";
    EXPECT_EQ(visits[0].state, VisitState::signedOff);
    const Exam exam = need(store->exam(visits[0].id));
    ASSERT_EQ(exam.findings().size(), 3U);
    EXPECT_EQ(exam.find("reflex.ankle", Side::left)->value, Value::token("1"));
    EXPECT_TRUE(exam.find("reflex.ankle", Side::right)->bulk);
    EXPECT_EQ(exam.find("measure.slr", Side::left)->note, "to the calf");
    EXPECT_EQ(need(store->history(visits[0].id, {ItemId{"gait.heel"}, Side::left})).size(), 2U);
    EXPECT_EQ(need(store->plan(visits[0].id)), "walk daily");
    EXPECT_EQ(need(store->notes(visits[0].id))[0].text, "came by taxi");
    EXPECT_EQ(need(store->addenda(visits[0].id))[0].text, "phoned later");
    EXPECT_EQ(need(store->acknowledgements(visits[0].id))[0].sign, "a.sign");
    EXPECT_EQ(need(store->signature(visits[0].id))->knowledgeVersion, "knowledge-7");
    EXPECT_EQ(need(store->setting("idle_minutes")), "7");
    if (GetParam() >= 3) { // events of patients came with it
        const auto events = need(store->eventsOf(patients[1].id));
        ASSERT_EQ(events.size(), 2U);
        EXPECT_EQ(events[0].text, "left side");
        EXPECT_TRUE(events[1].awaited);
        EXPECT_EQ(visits[1].worse, 2);
    }
    EXPECT_GT(need(store->audit(100)).size(), 10U);
    const Verification whole = need(store->verify());
    EXPECT_TRUE(whole.sound()) << whole.damage.front().what;
    EXPECT_EQ(whole.visits, 3);
}

TEST_P(AnOldClinic, IsWorkedInAfterwards) {
    auto store = opened();
    Patient patient = need(store->searchPatients("fernwhistle"))[0];
    patient.identity.contact = "Harbor Lane 10";
    need(store->updatePatient(patient));
    const Visit visit = need(store->addVisit(patient.id, "2026-03-05"));
    need(store->record(visit.id, {token("one", Side::left, "1")}));
    const std::size_t eventsBefore = need(store->eventsOf(patient.id)).size();
    need(store->writeEvent({{}, patient.id, "2026-03-05", "injection", "", false, "", ""}));
    need(store->setWorse(visit.id, 1));
    need(store->sign(visit.id, "knowledge-8"));
    EXPECT_EQ(need(store->eventsOf(patient.id)).size(), eventsBefore + 1);
    EXPECT_EQ(need(store->practice("2026-03-06")).withWorse, 1);
    need(store->setPassphrase(store->signedIn()->id, "another passphrase"));
    EXPECT_TRUE(need(store->verify()).sound());
    need(store->backUp(folder.path() / "b.rhzbackup"));
    EXPECT_TRUE(opened("The nurse")->signedIn());
}

TEST_P(AnOldClinic, IsKeptBesideAsItWas) {
    (void)opened();
    const auto copies = keptCopies();
    ASSERT_EQ(copies.size(), 1U);
    struct stat info {};
    ASSERT_EQ(::stat(copies[0].c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777U, 0600U);
    sqlite::Database copy{copies[0], 100};
    EXPECT_EQ(schema::versionOf(copy), GetParam());
    EXPECT_EQ(copy.first("select count(*) from visit_event")->integer(0), eventsInTheFixture());
    (void)opened();
    EXPECT_EQ(keptCopies().size(), 1U) << "once is enough";
}

TEST_P(AnOldClinic, ComesOutAsANewOneIsMade) {
    (void)opened();
    const fs::path fresh = folder.path() / "fresh.rhz";
    need(createClinic(fresh, "Fresh", {"Bo", Role::administrator, passphrase}, options));
    const auto objects = [](const fs::path& of) {
        sqlite::Database database{of, 100};
        std::vector<std::string> out;
        for (const sql::Row& row :
             database.rows("select type || ' ' || name || ': ' || coalesce(sql, '') from sqlite_schema "
                           "order by type, name"))
            out.push_back(row.text(0));
        return out;
    };
    EXPECT_EQ(objects(file), objects(fresh));
    sqlite::Database database{file, 100};
    EXPECT_EQ(schema::versionOf(database), schema::currentVersion());
    EXPECT_EQ(database.first("select value from meta where key = 'schema'")->text(0),
              std::to_string(schema::currentVersion()));
}

TEST_P(AnOldClinic, StaysAsItIsWhenAStepFails) {
    sqlite::Database database{file, 100};
    const auto before = database.first("select count(*) from sqlite_schema")->integer(0);
    const std::vector<schema::Migration> steps{
        {GetParam() + 1, "create table half (x integer) strict; create table meta (x);"}};
    EXPECT_THROW(schema::migrate(database, steps), RecordError);
    EXPECT_EQ(schema::versionOf(database), GetParam());
    EXPECT_EQ(database.first("select count(*) from sqlite_schema")->integer(0), before)
        << "half a step was left";
}

TEST_P(AnOldClinic, SurvivesBeingKilledWhileItIsBroughtUpToDate) {
    std::mt19937 random{3};
    int untouched = 0;
    int done = 0;
    const auto begun = [&] {
        for (const auto& entry : fs::directory_iterator(folder.path()))
            fs::remove(entry.path());
        write(file);
        const pid_t child = ::fork();
        if (child == 0) {
            (void)openClinic(file, options);
            std::_Exit(0);
        }
        return child;
    };
    // The moments reach from before the first step to beyond the last, however fast this machine is.
    const auto start = std::chrono::steady_clock::now();
    ::waitpid(begun(), nullptr, 0);
    const std::chrono::duration<double, std::micro> unhurried = std::chrono::steady_clock::now() - start;
    std::uniform_real_distribution<double> moment{0, 1.5 * unhurried.count()};
    for (int i = 0; i < 80; ++i) {
        const pid_t child = begun();
        std::this_thread::sleep_for(std::chrono::duration<double, std::micro>{moment(random)});
        ::kill(child, SIGKILL);
        ::waitpid(child, nullptr, 0);
        {
            sqlite::Database database{file, 100};
            (schema::versionOf(database) == GetParam() ? untouched : done) += 1;
        }
        ASSERT_TRUE(need(opened()->verify()).sound());
    }
    EXPECT_GT(untouched, 0);
    EXPECT_GT(done, 0);
}

INSTANTIATE_TEST_SUITE_P(OfSchema, AnOldClinic, ::testing::Range(1, schema::currentVersion()));

TEST(TheFixtures, CoverEverySchemaBeforeThisOne) {
    for (int version = 1; version < schema::currentVersion(); ++version)
        EXPECT_TRUE(fs::exists(fs::path{RHIZOGRAPH_TEST_DATA} / "core" / "record" /
                               ("schema" + std::to_string(version) + ".sql")))
            << version;
}

} // namespace
} // namespace rhizograph::testing
