#include "clinicfixture.h"

#include "record/sqlite.h"

#include <atomic>
#include <csignal>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <random>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>

namespace rhizograph::testing {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

class ABackup : public Clinic {
protected:
    ABackup() {
        patient = somebody();
        visit = need(store->addVisit(patient.id, "2026-03-04")).id;
        need(store->record(visit, {token("one", Side::left, "2"), token("one", Side::right, "1")}));
        need(store->addNote(visit, "came by taxi"));
    }

    Backup made() { return need(store->backUp(backup)); }

    [[nodiscard]] RestoreOrder order(const fs::path& to) const {
        return {backup, to, "Ada Thornfield", passphrase, false};
    }
    Problems refusal(const RestoreOrder& what) {
        const auto restored = restoreBackup(what, options);
        return restored ? Problems{} : restored.problems();
    }
    std::unique_ptr<Store> openedAt(const fs::path& where) {
        auto opened = need(openClinic(where, options));
        need(opened->signIn(need(opened->users()).front().id, passphrase));
        return opened;
    }
    [[nodiscard]] std::vector<std::string> files() const {
        std::vector<std::string> out;
        for (const auto& entry : fs::directory_iterator(folder.path()))
            out.push_back(entry.path().filename().string());
        std::sort(out.begin(), out.end());
        return out;
    }
    /// One row of a signed visit changed with a database tool.
    void damage() {
        sqlite::Database tool{file, 100};
        tool.script(
            "drop trigger visit_event_is_append_only; update visit_event set at = '2001-01-01T00:00:00Z'");
    }

    Patient patient;
    VisitId visit;
    fs::path backup = folder.path() / "safe.rhzbackup";
    fs::path elsewhere = folder.path() / "elsewhere.rhz";
};

TEST_F(ABackup, BringsEverythingBack) {
    const Backup written = made();
    EXPECT_TRUE(written.verification.sound());
    EXPECT_TRUE(written.noted);
    EXPECT_EQ(written.bytes, fs::file_size(backup));
    const Restored restored = need(restoreBackup(order(elsewhere), options));
    EXPECT_FALSE(restored.keptAside);
    EXPECT_EQ(restored.info.clinicName, "Clinic of the Nine Bridges");
    EXPECT_EQ(restored.verification.visits, 1);
    auto again = openedAt(elsewhere);
    EXPECT_EQ(need(again->patient(patient.id)).identity, patient.identity);
    EXPECT_EQ(need(again->exam(visit)), need(store->exam(visit)));
    EXPECT_EQ(need(again->notes(visit))[0].text, "came by taxi");
    EXPECT_TRUE(need(again->verify()).sound());
    EXPECT_EQ(need(again->audit(3))[2].action, AuditAction::restored)
        << "before the verification and the sign-in";
    EXPECT_EQ(need(store->audit(1))[0].action, AuditAction::backedUp);
}

TEST_F(ABackup, IsItsOwnersAloneAndLeavesNoWorkingFiles) {
    const std::vector<std::string> before = files();
    made();
    std::vector<std::string> after = before;
    after.emplace_back("safe.rhzbackup");
    std::sort(after.begin(), after.end());
    EXPECT_EQ(files(), after);
    struct stat info {};
    ASSERT_EQ(::stat(backup.c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777U, 0600U);
}

TEST_F(ABackup, IsOfOneMomentWhileOthersGoOnTapping) {
    auto nurse = signedInAs(Role::nurse);
    std::atomic<bool> stop = false;
    std::atomic<int> tapped = 0;
    std::thread tapping{[&] {
        while (!stop) {
            if (nurse->record(visit, {token("one", Side::left, "2"), token("two", Side::left, "2")}).ok())
                ++tapped;
            std::this_thread::sleep_for(std::chrono::milliseconds{1});
        }
    }};
    int rounds = 0;
    for (; rounds < 12; ++rounds) {
        backup = folder.path() / fmt::format("{}.rhzbackup", rounds);
        EXPECT_TRUE(made().verification.sound());
        const fs::path to = folder.path() / fmt::format("{}.rhz", rounds);
        need(restoreBackup(order(to), options));
        EXPECT_EQ(need(openedAt(to)->eventsAfter(visit, 0)).size() % 2, 0U) << "half of a change";
    }
    stop = true;
    tapping.join();
    EXPECT_GT(tapped, rounds);
    fmt::print("backup while in use: {} backups during {} taps, all sound, none with half a change\n", rounds,
               tapped.load());
}

TEST_F(ABackup, IsNotWrittenOverAnything) {
    made();
    const std::string bytes = contentOf(backup);
    EXPECT_FALSE(store->backUp(backup));
    EXPECT_EQ(contentOf(backup), bytes);
    EXPECT_FALSE(store->backUp(folder.path() / "no such folder" / "b.rhzbackup"));
}

TEST_F(ABackup, DamagedAnywhereIsRefusedBeforeAnythingIsTouched) {
    made();
    const std::string good = contentOf(backup);
    const std::string clinic = contentOf(file);
    const std::vector<std::string> before = files();
    std::mt19937 random{5};
    int refused = 0;
    constexpr int tries = 300;
    for (int i = 0; i < tries; ++i) {
        std::string bad = good;
        const std::size_t at = random() % bad.size();
        if (i % 3 == 0)
            bad.resize(at);
        else if (i % 3 == 1)
            bad[at] = static_cast<char>(bad[at] ^ static_cast<char>(1U << (random() % 8)));
        else
            bad.insert(at, 1, static_cast<char>(random()));
        std::ofstream(backup, std::ios::binary | std::ios::trunc) << bad;
        const Problems problems = refusal(order(elsewhere));
        EXPECT_FALSE(problems.empty()) << "byte " << at << " of " << good.size() << ", kind " << i % 3;
        refused += problems.empty() ? 0 : 1;
        ASSERT_EQ(files(), before) << reasons(problems);
    }
    EXPECT_EQ(contentOf(file), clinic);
    fmt::print(
        "restore: {} damaged backups (cut off, a bit changed, a byte added), {} refused, nothing touched\n",
        tries, refused);
}

TEST_F(ABackup, IsRefusedToWhoMayNotRestore) {
    signedInAs(Role::clinician);
    made();
    RestoreOrder wrong = order(elsewhere);
    wrong.passphrase = "wrong horse!";
    EXPECT_THAT(reasons(refusal(wrong)), HasSubstr("passphrase is wrong"));
    RestoreOrder stranger = order(elsewhere);
    stranger.user = "Nobody";
    EXPECT_THAT(reasons(refusal(stranger)), HasSubstr("no user named Nobody"));
    RestoreOrder clinician = order(elsewhere);
    clinician.user = "The clinician";
    EXPECT_THAT(reasons(refusal(clinician)), HasSubstr("Only an administrator restores"));
    EXPECT_FALSE(fs::exists(elsewhere));
}

TEST_F(ABackup, OfSomethingElseIsRefused) {
    const fs::path other = folder.path() / "other";
    std::ofstream(other) << "a letter to somebody";
    for (const fs::path& what : {other, folder.path(), folder.path() / "nothing", file}) {
        RestoreOrder wrong = order(elsewhere);
        wrong.backup = what;
        EXPECT_FALSE(refusal(wrong).empty()) << what;
        EXPECT_FALSE(inspectBackup(what)) << what;
    }
    EXPECT_FALSE(fs::exists(elsewhere));
}

TEST_F(ABackup, RestoredOverTheClinicKeepsWhatStoodThere) {
    made();
    need(store->record(visit, {token("one", Side::left, "0")}));
    store.reset();
    const Restored restored = need(restoreBackup(order(file), options));
    ASSERT_TRUE(restored.keptAside);
    EXPECT_EQ(need(openedAt(file)->exam(visit)).find("one", Side::left)->value, Value::token("2"));
    EXPECT_EQ(need(openedAt(*restored.keptAside)->exam(visit)).find("one", Side::left)->value,
              Value::token("0"));
}

TEST_F(ABackup, IsNotPutOverAClinicThatSomebodyHasOpen) {
    made();
    need(store->record(visit, {token("one", Side::left, "0")}));
    const std::vector<std::string> before = files();
    EXPECT_THAT(reasons(refusal(order(file))), HasSubstr("open in another program"));
    EXPECT_EQ(files(), before);
    need(store->record(visit, {token("one", Side::right, "0")})); // and who has it open works on undisturbed
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(ABackup, IsNotPutOverAnotherClinicOrAnotherFile) {
    made();
    need(createClinic(elsewhere, "Another clinic", {"Bo", Role::administrator, passphrase}, options));
    EXPECT_THAT(reasons(refusal(order(elsewhere))), HasSubstr("another clinic"));
    EXPECT_EQ(need(need(openClinic(elsewhere, options))->clinicName()), "Another clinic");
    const fs::path letter = folder.path() / "letter.txt";
    std::ofstream(letter) << std::string(5000, 'a');
    EXPECT_FALSE(refusal(order(letter)).empty());
    EXPECT_EQ(contentOf(letter), std::string(5000, 'a'));
}

TEST_F(ABackup, ReplacesADamagedClinic) {
    made();
    store.reset();
    std::string bytes = contentOf(file);
    for (std::size_t page = 4096; page < bytes.size(); page += 8192)
        bytes.replace(page, 2000, std::string(2000, '\x55'));
    std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes;
    const Restored restored = need(restoreBackup(order(file), options));
    EXPECT_TRUE(need(openedAt(file)->verify()).sound());
    EXPECT_EQ(contentOf(*restored.keptAside), bytes)
        << "the damaged file is evidence and perhaps more recent";
}

TEST_F(ABackup, OfADamagedRecordIsMadeAndSaysSoButRestoredOnlyOnDemand) {
    damage();
    const Backup written = made();
    EXPECT_FALSE(written.verification.sound());
    EXPECT_THAT(reasons(refusal(order(elsewhere))), HasSubstr("already damaged when the backup was made"));
    EXPECT_FALSE(fs::exists(elsewhere));
    RestoreOrder insisting = order(elsewhere);
    insisting.despiteDamage = true;
    EXPECT_TRUE(restoreBackup(insisting, options).ok());
}

class DailyBackups : public ABackup {
protected:
    [[nodiscard]] std::vector<std::string> kept() const {
        std::vector<std::string> out;
        for (const auto& entry : fs::directory_iterator(daily))
            out.push_back(entry.path().filename().string());
        std::sort(out.begin(), out.end());
        return out;
    }
    fs::path daily = folder.path() / "backups";
};

TEST_F(DailyBackups, AreMadeOnceADayAndTheOldestGo) {
    for (int day = 0; day < 5; ++day) {
        const DailyBackup first = need(store->backUpDaily(daily, 3));
        EXPECT_TRUE(first.made);
        EXPECT_FALSE(need(store->backUpDaily(daily, 3)).made) << "there is one of today";
        time.pass(std::chrono::hours{24});
    }
    const std::vector<std::string> left = kept();
    ASSERT_EQ(left.size(), 3U);
    EXPECT_THAT(left[0], HasSubstr("2026-03-06.rhzbackup"));
    EXPECT_THAT(left[2], HasSubstr("2026-03-08.rhzbackup"));
    EXPECT_FALSE(store->backUpDaily(daily, 0));
}

TEST_F(DailyBackups, LeaveWhatIsNotTheirsAlone) {
    need(store->backUpDaily(daily, 1));
    const std::string own = kept().front();
    std::ofstream(daily / "notes.txt") << "mine";
    std::string otherDay = own;
    otherDay.replace(otherDay.find("2026"), 4, "2019");
    std::ofstream(daily / otherDay) << "looks like one by its name only";
    time.pass(std::chrono::hours{24});
    EXPECT_EQ(need(store->backUpDaily(daily, 1)).removed.size(), 1U);
    EXPECT_TRUE(fs::exists(daily / "notes.txt"));
    EXPECT_TRUE(fs::exists(daily / otherDay));
    EXPECT_FALSE(fs::exists(daily / own));
}

TEST_F(DailyBackups, OfADamagedRecordDoNotPushOutTheGoodOnes) {
    need(store->backUpDaily(daily, 1));
    damage();
    time.pass(std::chrono::hours{24});
    const DailyBackup round = need(store->backUpDaily(daily, 1));
    EXPECT_FALSE(round.made->verification.sound());
    EXPECT_TRUE(round.removed.empty());
    EXPECT_EQ(kept().size(), 2U);
}

/// Runs `work` in a child that is killed after a random time; whether it came to its end before.
bool killedAfter(std::chrono::microseconds time, const std::function<void()>& work) {
    const pid_t child = ::fork();
    if (child == 0) {
        work();
        std::_Exit(0);
    }
    std::this_thread::sleep_for(time);
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status);
}

/// How long `work` takes in a child that is left alone.
std::chrono::microseconds durationOf(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        work();
        std::_Exit(0);
    }
    ::waitpid(child, nullptr, 0);
    return std::chrono::duration_cast<std::chrono::microseconds>(std::chrono::steady_clock::now() - start);
}

/// Moments spread over the whole of some work and somewhat beyond, however fast the machine is.
std::chrono::microseconds anyMoment(std::mt19937& random, std::chrono::microseconds whole) {
    const double share = std::uniform_real_distribution<double>{0, 1.5}(random);
    return std::chrono::microseconds{static_cast<std::int64_t>(share * static_cast<double>(whole.count()))};
}

TEST_F(ABackup, AndItsRestoringKilledAtAnyMomentLeaveAWholeClinicAndNoHalfBackup) {
    made();
    need(store->record(visit, {token("one", Side::left, "0")}));
    store.reset();
    std::mt19937 random{11};
    int restored = 0;
    int before = 0;
    int finished = 0;
    constexpr int tries = 150;
    const auto restoring = durationOf([&] { (void)restoreBackup(order(file), options); });
    need(openedAt(file)->record(visit, {token("one", Side::left, "0")}));
    for (int i = 0; i < tries; ++i) {
        const std::chrono::microseconds when = anyMoment(random, restoring);
        finished += killedAfter(when, [&] { (void)restoreBackup(order(file), options); }) ? 1 : 0;
        auto opened = openedAt(file);
        ASSERT_TRUE(need(opened->verify()).sound()) << "try " << i;
        const bool isRestored = need(opened->exam(visit)).find("one", Side::left)->value == Value::token("2");
        (isRestored ? restored : before) += 1;
        need(opened->record(visit, {token("one", Side::left, "0")}));
    }
    EXPECT_GT(restored, tries / 20);
    EXPECT_GT(before, tries / 20);
    int whole = 0;
    int none = 0;
    backup = folder.path() / "measured.rhzbackup";
    const auto backingUp = durationOf([&] { (void)openedAt(file)->backUp(backup); });
    for (int i = 0; i < tries; ++i) {
        backup = folder.path() / fmt::format("{}.rhzbackup", i);
        // The child opens the clinic itself: a database connection does not survive a fork.
        killedAfter(anyMoment(random, backingUp), [&] { (void)openedAt(file)->backUp(backup); });
        const bool there = fs::exists(backup);
        (there ? whole : none) += 1;
        if (there) need(restoreBackup(order(folder.path() / fmt::format("{}.rhz", i)), options));
    }
    EXPECT_GT(whole, tries / 20);
    EXPECT_GT(none, tries / 20);
    fmt::print("restore killed {} times: {} found the clinic as before, {} restored, none damaged; backup "
               "killed {} times: "
               "{} left none, {} a whole one\n",
               tries, before, restored, tries, none, whole);
}

} // namespace
} // namespace rhizograph::testing
