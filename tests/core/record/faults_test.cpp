#include "clinicfixture.h"
#include "disk.h"

#include "record/sqlite.h"
#include "record/writer.h"

#include <csignal>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <sqlite3.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>

namespace rhizograph::testing {
namespace {

namespace fs = std::filesystem;
using ::testing::AnyOf;
using ::testing::HasSubstr;

/// A sentence for people: begins with a capital, ends with a full stop, and holds no jargon of the engine.
void expectSentence(const Problems& problems) {
    ASSERT_EQ(problems.size(), 1U);
    const std::string& reason = problems[0].reason;
    ASSERT_FALSE(reason.empty());
    EXPECT_TRUE(std::isupper(static_cast<unsigned char>(reason[0])) || reason[0] == '/') << reason;
    EXPECT_EQ(reason.back(), '.') << reason;
    for (const char* jargon : {"SQLITE", "errno", "WAL", "pragma", "malformed", "disk I/O error"})
        EXPECT_EQ(reason.find(jargon), std::string::npos) << reason;
}

/// Runs `work` in a child of its own and hands back what it says.
std::string inAChild(const std::function<std::string()>& work) {
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
    const pid_t child = ::fork();
    if (child == 0) {
        std::string said;
        try {
            said = work();
        } catch (const std::exception& error) {
            said = std::string{"exception: "} + error.what();
        }
        (void)!::write(ends[1], said.data(), said.size());
        std::_Exit(0);
    }
    ::close(ends[1]);
    std::string said;
    std::array<char, 4096> part{};
    for (ssize_t count = 0; (count = ::read(ends[0], part.data(), part.size())) > 0;)
        said.append(part.data(), static_cast<std::size_t>(count));
    ::close(ends[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? said : said + fmt::format(" (ended by signal {})", WTERMSIG(status));
}

class AFault : public Clinic {
protected:
    AFault() { visit = someVisit().id; }

    static FindingChange numbered(int number) {
        return {{ItemId{"single"}, Side::left}, Finding{Value::number(number), false, ""}};
    }
    Outcome tap(int number) { return store->record(visit, {numbered(number)}); }
    /// How many taps are there, when they are the first ones in order.
    int taps(Store& record) {
        int last = 0;
        for (const FindingEvent& event : need(record.eventsAfter(visit, 0)))
            if (static_cast<int>(event.finding->value.number()) != ++last) return -1;
        return last;
    }
    /// What opening and signing in say; empty when both go well and the record is sound.
    std::string complaint(const fs::path& clinic) {
        auto opened = openClinic(clinic, options);
        if (!opened) {
            expectSentence(opened.problems());
            return reasons(opened.problems());
        }
        const auto users = (*opened)->users();
        if (!users) return reasons(users.problems());
        if (users->empty()) return "no users";
        if (const Outcome in = (*opened)->signIn(users->front().id, passphrase); !in)
            return reasons(in.problems());
        const auto verified = (*opened)->verify();
        if (!verified) return reasons(verified.problems());
        return verified->sound() ? "" : verified->damage.front().what;
    }

    VisitId visit;
};

class AFaultyDisk : public AFault {
protected:
    AFaultyDisk() {
        store.reset();
        disk = std::make_unique<WatchedDisk>(folder.path());
        store = signedIn("Ada Thornfield");
    }
    ~AFaultyDisk() override {
        disk->setWriteFault({});
        disk->setSyncFault({});
        disk->setReadFault({});
        store.reset();
        disk.reset();
    }
    std::unique_ptr<WatchedDisk> disk;
};

TEST_F(AFaultyDisk, AtAnyStepOfATapIsToldAndLosesNothing) {
    struct Kind {
        int code;
        Failure failure;
        const char* words;
        bool atSync;
    };
    const std::vector<Kind> kinds{{SQLITE_FULL, Failure::full, "disk is full", false},
                                  {SQLITE_IOERR_WRITE, Failure::device, "did not accept", false},
                                  {SQLITE_IOERR_FSYNC, Failure::device, "did not accept", true}};
    int saved = 0;
    int failures = 0;
    for (const Kind& kind : kinds)
        for (int attempt = 0; attempt < 48; ++attempt) {
            int left = attempt / 2; // each step twice
            const auto fault = [&](const std::string&, std::size_t) {
                return left-- <= 0 ? kind.code : SQLITE_OK;
            };
            if (kind.atSync)
                disk->setSyncFault(fault);
            else
                disk->setWriteFault(fault);
            const Outcome outcome = tap(saved + 1);
            disk->setWriteFault({});
            disk->setSyncFault({});
            if (outcome) {
                ++saved;
                continue;
            }
            ++failures;
            expectSentence(outcome.problems());
            EXPECT_EQ(store->lastFailure(), kind.failure);
            EXPECT_THAT(reasons(outcome.problems()), HasSubstr(kind.words));
            ASSERT_EQ(taps(*store), saved) << "what was saved before is lost, or what failed is there";
            ASSERT_TRUE(tap(++saved).ok()) << "the same again must work once the disk does";
        }
    EXPECT_EQ(taps(*store), saved);
    EXPECT_TRUE(need(store->verify()).sound());
    EXPECT_GT(failures, 30);
    fmt::print("faults: {} taps failed at every step by a full or failing disk, each told in a sentence, "
               "each saved when tried "
               "again; {} taps in the record, none lost\n",
               failures, saved);
}

TEST_F(AFaultyDisk, ThatCannotBeReadIsToldAndNotTakenForAnEmptyRecord) {
    for (int number = 1; number <= 50; ++number)
        need(tap(number));
    store.reset();
    store = signedIn("Ada Thornfield");
    disk->setReadFault([](const std::string&, std::size_t) { return SQLITE_IOERR_READ; });
    const auto read = store->eventsAfter(visit, 0);
    const auto fresh = openClinic(file, options);
    disk->setReadFault({});
    ASSERT_FALSE(fresh);
    expectSentence(fresh.problems());
    if (!read) expectSentence(read.problems());
    EXPECT_EQ(taps(*store), 50);
}

TEST_F(AFaultyDisk, HoldsTheWritersQueueUntilItCanBeSavedHereOrElsewhere) {
    std::mutex mutex;
    std::vector<RecordWriter::Report> reports;
    RecordWriter writer{need(store->duplicate()), [&](const RecordWriter::Report& report) {
                            const std::scoped_lock held{mutex};
                            reports.push_back(report);
                        }};
    writer.write({visit, std::vector{numbered(1)}});
    ASSERT_TRUE(writer.flush(std::chrono::seconds{5}));
    disk->setWriteFault([](const std::string&, std::size_t) { return SQLITE_FULL; });
    for (int number = 2; number <= 6; ++number)
        writer.write({visit, std::vector{numbered(number)}});
    EXPECT_FALSE(writer.flush(std::chrono::seconds{5}));
    EXPECT_EQ(writer.waiting(), 5U);
    {
        const std::scoped_lock held{mutex};
        EXPECT_TRUE(reports.back().kept());
        EXPECT_EQ(reports.back().failure, Failure::full);
        EXPECT_FALSE(reports.back().savedUntil.empty());
    }
    // Elsewhere, while the clinic's disk is still full.
    const Folder other{Folder::Place::disk};
    const fs::path copy = other.path() / "unsaved";
    EXPECT_TRUE(writer.saveCopy(copy).ok());
    EXPECT_EQ(need(store->backUp(other.path() / "b.rhzbackup")).noted, false)
        << "a way out that must work on a full disk";
    // And here, when there is room again.
    disk->setWriteFault({});
    writer.retry();
    EXPECT_TRUE(writer.flush(std::chrono::seconds{5}));
    EXPECT_EQ(taps(*store), 6);
    EXPECT_EQ(need(store->replayUnsaved(copy)), 5);
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(AFault, OfASmallDiskIsToldAndNothingIsLost) {
    store.reset();
    const fs::path small = folder.path() / "small";
    fs::create_directory(small);
    const bool mounted = ::mount("tmpfs", small.c_str(), "tmpfs", 0, "size=1m,mode=0700") == 0;
    fs::copy_file(file, small / "clinic.rhz");
    const std::string said = inAChild([&] {
        if (!mounted) { // not allowed to mount: a limit of the system does the same
            ::signal(SIGXFSZ, SIG_IGN);
            const rlimit limit{700'000, 700'000};
            ::setrlimit(RLIMIT_FSIZE, &limit);
        }
        file = small / "clinic.rhz";
        store = signedIn("Ada Thornfield");
        int saved = 0;
        Outcome outcome;
        while (saved < 5000 && (outcome = tap(saved + 1)).ok())
            ++saved;
        if (outcome) return std::string{"it never became full"};
        const std::string first = reasons(outcome.problems());
        if (taps(*store) != saved) return std::string{"saved taps are not readable"};
        return fmt::format("{} {}", saved, first);
    });
    EXPECT_THAT(said, AnyOf(HasSubstr("disk is full"), HasSubstr("did not accept"))) << said;
    const int saved = std::atoi(said.c_str());
    EXPECT_GT(saved, 20);
    const fs::path rescued = folder.path() / "rescued.rhz";
    for (const char* suffix : {"", "-wal"})
        if (fs::exists(small.string() + "/clinic.rhz" + suffix))
            fs::copy_file(small.string() + "/clinic.rhz" + suffix, rescued.string() + suffix);
    if (mounted) ::umount(small.c_str());
    file = rescued;
    EXPECT_EQ(taps(*signedIn("Ada Thornfield")), saved);
    EXPECT_EQ(complaint(rescued), "");
    fmt::print("faults: a disk of 1 MB ({}) filled up after {} taps, all of them readable afterwards\n",
               mounted ? "a real one" : "by a limit", saved);
}

TEST_F(AFault, OfAReadOnlyPlaceIsTold) {
    store.reset();
    ::chmod(folder.path().c_str(), 0755);
    // Root may write everywhere, so another user tries.
    const uid_t nobody = 65534;
    const auto tryAsNobody = [&](mode_t folderMode, mode_t fileMode) {
        ::chmod(file.c_str(), fileMode);
        ::chmod(folder.path().c_str(), folderMode);
        return inAChild([&]() -> std::string {
            if (::getuid() == 0 && ::setuid(nobody) != 0) return "cannot become another user";
            const auto opened = openClinic(file, options);
            return opened ? "opened" : opened.problems()[0].reason;
        });
    };
    const std::string bytes = contentOf(file);
    EXPECT_THAT(tryAsNobody(0555, 0444), HasSubstr("read-only"));
    EXPECT_THAT(tryAsNobody(0555, 0400), AnyOf(HasSubstr("cannot be opened"), HasSubstr("may not use")));
    EXPECT_THAT(tryAsNobody(0555, 0666), AnyOf(HasSubstr("folder"), HasSubstr("read-only")));
    ::chmod(folder.path().c_str(), 0755);
    ::chmod(file.c_str(), 0600);
    EXPECT_EQ(contentOf(file), bytes);
    EXPECT_EQ(complaint(file), "") << "and all is well once it may be written";
}

TEST_F(AFault, OfAnotherProgramThatDoesNotLetGoIsToldAndPasses) {
    need(tap(1));
    sqlite::Database other{file, 50};
    other.run("begin immediate");
    const Outcome outcome = tap(2);
    ASSERT_FALSE(outcome);
    expectSentence(outcome.problems());
    EXPECT_EQ(store->lastFailure(), Failure::busy);
    EXPECT_EQ(taps(*store), 1) << "reading goes on meanwhile";
    other.run("rollback");
    EXPECT_TRUE(tap(2).ok());
    EXPECT_EQ(taps(*store), 2);
}

TEST_F(AFault, OfAFileThatVanishedIsToldInsteadOfWritingIntoNothing) {
    need(tap(1));
    const fs::path moved = folder.path() / "moved.rhz";
    for (const bool replaced : {false, true}) {
        fs::rename(file, moved);
        if (replaced) std::ofstream(file) << "something else";
        const Outcome outcome = tap(2);
        ASSERT_FALSE(outcome) << "the tap was acknowledged, but no one will find it again";
        expectSentence(outcome.problems());
        EXPECT_EQ(store->lastFailure(), Failure::device);
        EXPECT_THAT(reasons(outcome.problems()), HasSubstr("moved"));
        fs::remove(file);
        fs::rename(moved, file);
    }
    EXPECT_TRUE(tap(2).ok());
    EXPECT_EQ(taps(*store), 2);
}

TEST_F(AFault, OfATruncatedFileIsFoundAndTheBackupRestores) {
    for (int number = 1; number <= 40; ++number)
        need(tap(number));
    const fs::path backup = folder.path() / "b.rhzbackup";
    need(store->backUp(backup));
    store.reset();
    const std::string whole = contentOf(file);
    std::mt19937 random{23};
    const fs::path cut = folder.path() / "cut.rhz";
    int found = 0;
    constexpr int tries = 120;
    for (int i = 0; i < tries; ++i) {
        for (const char* suffix : {"-wal", "-shm"})
            fs::remove(cut.string() + suffix);
        const std::size_t size =
            i % 2 == 0 ? random() % whole.size() : random() % (whole.size() / 4096) * 4096;
        std::ofstream(cut, std::ios::binary | std::ios::trunc) << whole.substr(0, size);
        const std::string said = complaint(cut);
        EXPECT_NE(said, "") << size << " of " << whole.size() << " bytes are left";
        found += said.empty() ? 0 : 1;
    }
    fs::remove(cut);
    for (const char* suffix : {"-wal", "-shm"})
        fs::remove(cut.string() + suffix);
    std::ofstream(cut, std::ios::binary) << whole.substr(0, whole.size() / 2);
    const auto restored = restoreBackup({backup, cut, "Ada Thornfield", passphrase, false}, options);
    ASSERT_TRUE(restored.ok()) << reasons(restored.problems());
    file = cut;
    EXPECT_EQ(taps(*signedIn("Ada Thornfield")), 40);
    fmt::print("faults: {} truncated files, {} found; one restored from its backup with every tap\n", tries,
               found);
}

TEST_F(AFault, OfAFileOfSomethingElseIsToldAndTheFileLeftAsItWas) {
    std::mt19937 random{29};
    const fs::path other = folder.path() / "other.rhz";
    const auto expectRefused = [&](const std::string& bytes) {
        std::ofstream(other, std::ios::binary | std::ios::trunc) << bytes;
        const auto opened = openClinic(other, options);
        ASSERT_FALSE(opened);
        expectSentence(opened.problems());
        EXPECT_EQ(contentOf(other), bytes);
    };
    expectRefused("");
    for (int i = 0; i < 200; ++i) {
        std::string bytes(1 + random() % 20'000, '\0');
        for (char& byte : bytes)
            byte = static_cast<char>(random());
        if (i % 3 == 0) bytes.replace(0, std::min<std::size_t>(16, bytes.size()), "SQLite format 3\0", 16);
        expectRefused(bytes);
    }
    fs::remove(other);
    const auto database = [&](const std::string& script) {
        fs::remove(other);
        std::ofstream{other};
        sqlite::Database{other, 50}.script(script);
        return contentOf(other);
    };
    expectRefused(database("create table letter (text text); insert into letter values ('Dear colleague')"));
    expectRefused(database(fmt::format("create table meta (x); pragma application_id = {};", 0x525a4731)));
    const std::string newer = database(fmt::format(
        "create table meta (x); pragma application_id = {}; pragma user_version = 9000;", 0x525a4731));
    expectRefused(newer);
    EXPECT_THAT(reasons(openClinic(other, options).problems()), HasSubstr("newer version of the program"));
    for (const fs::path& none : {folder.path(), folder.path() / "nothing"}) {
        const auto opened = openClinic(none, options);
        ASSERT_FALSE(opened);
        expectSentence(opened.problems());
    }
}

TEST_F(AFault, OfATornLogLeavesTheTapsBeforeTheTear) {
    constexpr int all = 60;
    for (int number = 1; number <= all; ++number)
        need(tap(number));
    const std::string database = contentOf(file);
    const std::string log = contentOf(file.string() + "-wal");
    ASSERT_GT(log.size(), 100'000U);
    std::mt19937 random{31};
    const fs::path torn = folder.path() / "torn.rhz";
    int least = all;
    int most = 0;
    constexpr int tries = 200;
    for (int i = 0; i < tries; ++i) {
        std::string part = log;
        const std::size_t at = random() % part.size();
        if (i % 3 == 0)
            part.resize(at);
        else if (i % 3 == 1)
            part[at] = static_cast<char>(part[at] ^ static_cast<char>(1U << (random() % 8)));
        else
            part.replace(at, 512, std::string(std::min<std::size_t>(512, part.size() - at), '\0'));
        fs::remove(torn.string() + "-shm");
        std::ofstream(torn, std::ios::binary | std::ios::trunc) << database;
        std::ofstream(torn.string() + "-wal", std::ios::binary | std::ios::trunc) << part;
        ASSERT_EQ(complaint(torn), "") << "kind " << i % 3 << " at " << at;
        auto opened = need(openClinic(torn, options));
        need(opened->signIn(need(opened->users()).front().id, passphrase));
        const auto events = opened->eventsAfter(visit, 0);
        // Torn before the visit itself was written, there are none.
        const int left = events ? taps(*opened) : 0;
        ASSERT_GE(left, 0) << "a later tap without an earlier one";
        least = std::min(least, left);
        most = std::max(most, left);
    }
    EXPECT_LT(least, most);
    fmt::print("faults: {} torn logs of {} taps: every one opened sound, with the first {} to {} taps\n",
               tries, all, least, most);
}

} // namespace
} // namespace rhizograph::testing
