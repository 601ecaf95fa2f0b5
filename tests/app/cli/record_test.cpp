#include "core/record/clinicfixture.h"
#include "support/process.h"

#include "record/sqlite.h"

#include <array>
#include <fcntl.h>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <pty.h>
#include <sys/mount.h>
#include <sys/stat.h>
#include <sys/wait.h>

namespace rhizograph::testing {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;
using ::testing::Not;

class RhizoOnAClinic : public Clinic {
protected:
    RhizoOnAClinic() {
        visit = someVisit().id;
        need(store->record(visit,
                           {token("one", Side::left, "2"),
                            {{ItemId{"two"}, Side::right}, Finding{Value::notTestable("pain"), false, ""}}}));
        need(store->sign(visit, "knowledge-7"));
        store.reset();
        secret = write("secret", std::string{passphrase} + "\nthis line is not part of it\n");
    }

    fs::path write(const std::string& name, const std::string& content, mode_t mode = 0600) {
        const fs::path path = folder.path() / name;
        std::ofstream(path) << content;
        ::chmod(path.c_str(), mode);
        return path;
    }

    ProcessResult rhizo(const std::vector<std::string>& words) {
        std::vector<std::string> command{RHIZO_PROGRAM};
        command.insert(command.end(), words.begin(), words.end());
        return runProcess(command);
    }
    /// With the administrator's name and passphrase.
    ProcessResult rhizoAsAda(std::vector<std::string> words) {
        for (const std::string& word : {std::string{"--user"}, std::string{"Ada Thornfield"},
                                        std::string{"--passphrase-file"}, secret.string()})
            words.push_back(word);
        return rhizo(words);
    }

    VisitId visit;
    fs::path secret;
    fs::path backup = folder.path() / "safe.rhzbackup";
};

TEST_F(RhizoOnAClinic, BacksUpAndRestoresAndVerifies) {
    const ProcessResult made = rhizoAsAda({"backup", "--database", file.string(), backup.string()});
    ASSERT_EQ(made.code, 0) << made.err;
    EXPECT_THAT(made.out, HasSubstr("1 visits"));
    const fs::path to = folder.path() / "again.rhz";
    const ProcessResult restored = rhizoAsAda({"restore", backup.string(), "--database", to.string()});
    ASSERT_EQ(restored.code, 0) << restored.err;
    EXPECT_THAT(restored.out, HasSubstr("Clinic of the Nine Bridges"));
    const ProcessResult verified = rhizoAsAda({"verify", "--database", to.string()});
    EXPECT_EQ(verified.code, 0) << verified.err;
    EXPECT_THAT(verified.out, HasSubstr("Sound: 1 visits, 3 events"));
    const ProcessResult over = rhizoAsAda({"restore", backup.string(), "--database", to.string()});
    EXPECT_EQ(over.code, 0) << over.err;
    EXPECT_THAT(over.out, HasSubstr("is kept as"));
}

TEST_F(RhizoOnAClinic, KeepsSoManyDailyBackups) {
    const fs::path daily = folder.path() / "daily";
    const ProcessResult first =
        rhizoAsAda({"backup", "--database", file.string(), "--keep", "3", daily.string()});
    EXPECT_EQ(first.code, 0) << first.err;
    const ProcessResult second =
        rhizoAsAda({"backup", "--database", file.string(), "--keep", "3", daily.string()});
    EXPECT_EQ(second.code, 0) << second.err;
    EXPECT_THAT(second.out, HasSubstr("there already"));
    EXPECT_EQ(rhizoAsAda({"backup", "--database", file.string(), "--keep", "0", daily.string()}).code, 2);
    EXPECT_EQ(rhizoAsAda({"backup", "--database", file.string(), "--keep", "3 days", daily.string()}).code,
              2);
}

TEST_F(RhizoOnAClinic, NamesTheVisitThatWasTamperedWith) {
    sqlite::Database{file, 100}.script(
        "drop trigger visit_event_is_append_only; update visit_event set at = '2001-01-01T00:00:00Z'");
    const ProcessResult verified = rhizoAsAda({"verify", "--database", file.string()});
    EXPECT_EQ(verified.code, 2);
    EXPECT_EQ(verified.out, "");
    EXPECT_THAT(verified.err, HasSubstr("visit " + visit.text() + ": Event 1 was changed"));
    const ProcessResult made = rhizoAsAda({"backup", "--database", file.string(), backup.string()});
    EXPECT_EQ(made.code, 0);
    EXPECT_THAT(made.err, HasSubstr("warning"));
    const std::string to = (folder.path() / "again.rhz").string();
    EXPECT_EQ(rhizoAsAda({"restore", backup.string(), "--database", to}).code, 2);
    EXPECT_EQ(rhizoAsAda({"restore", backup.string(), "--database", to, "--damage", "accept"}).code, 0);
}

TEST_F(RhizoOnAClinic, ListsAddsAndClosesUsers) {
    const ProcessResult listed = rhizo({"users", "--database", file.string()});
    EXPECT_EQ(listed.code, 0) << listed.err;
    EXPECT_EQ(listed.out, "Ada Thornfield\tadministrator\tactive\n");
    const fs::path first = write("first", "a nurse's own words\n");
    const ProcessResult added = rhizoAsAda({"users", "--database", file.string(), "--add", "Nell Ashgrove",
                                            "--role", "nurse", "--new-passphrase-file", first.string()});
    EXPECT_EQ(added.code, 0) << added.err;
    EXPECT_THAT(added.out, HasSubstr("Nell Ashgrove\tnurse\tactive"));
    auto opened = need(openClinic(file, options));
    const User nell = need(opened->users())[1];
    EXPECT_TRUE(opened->signIn(nell.id, "a nurse's own words").ok());
    const ProcessResult closed =
        rhizoAsAda({"users", "--database", file.string(), "--close", "Nell Ashgrove"});
    EXPECT_EQ(closed.code, 0) << closed.err;
    EXPECT_THAT(closed.out, HasSubstr("Nell Ashgrove\tnurse\tnot active"));
    EXPECT_FALSE(opened->searchPatients("")) << "whoever is signed in at that moment is out at once";
    EXPECT_FALSE(opened->signIn(nell.id, "a nurse's own words"));
    EXPECT_EQ(rhizoAsAda({"users", "--database", file.string(), "--close", "Ada Thornfield"}).code, 2)
        << "the last administrator stays";
}

TEST_F(RhizoOnAClinic, HandsOutEverythingOfOnePersonAndNotesIt) {
    store = signedIn("Ada Thornfield");
    need(store->addAddendum(visit, "phoned: better"));
    need(store->writeEvent({{},
                            need(store->searchPatients("Q-1077")).at(0).id,
                            "2026-03-20",
                            "follow_up",
                            "after the injection",
                            true,
                            "",
                            ""}));
    somebody("Another Person", "Q-10770");
    store.reset();
    const fs::path out = folder.path() / "person.json";
    const ProcessResult given =
        rhizoAsAda({"person", "--database", file.string(), "--patient", "Q-1077", "--output", out.string()});
    ASSERT_EQ(given.code, 0) << given.err;
    struct stat info {};
    ASSERT_EQ(::stat(out.c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 0777U, 0600U);
    const auto json = nlohmann::json::parse(contentOf(out));
    EXPECT_EQ(json.at("identity").at("name"), "Quillon Fernwhistle");
    EXPECT_EQ(json.at("identity").at("contact"), "Harbor Lane 9");
    ASSERT_EQ(json.at("visits").size(), 1U);
    const auto& one = json.at("visits")[0];
    ASSERT_EQ(one.at("events").size(), 2U);
    EXPECT_EQ(one.at("events")[0].at("value"), "2");
    EXPECT_EQ(one.at("events")[0].at("by"), "Ada Thornfield");
    EXPECT_EQ(one.at("events")[1].at("value"), "not_testable");
    EXPECT_EQ(one.at("events")[1].at("because"), "pain");
    EXPECT_EQ(one.at("signature").at("knowledge_version"), "knowledge-7");
    EXPECT_EQ(one.at("addenda")[0].at("text"), "phoned: better");
    ASSERT_EQ(json.at("events").size(), 1U);
    EXPECT_EQ(json.at("events")[0].at("text"), "after the injection");
    EXPECT_EQ(json.at("events")[0].at("date"), "2026-03-20");
    EXPECT_EQ(contentOf(out).find("Another Person"), std::string::npos);
    store = signedIn("Ada Thornfield");
    bool noted = false;
    for (const AuditEntry& entry : need(store->audit(10)))
        noted = noted || (entry.action == AuditAction::exported && entry.subject == json.at("id"));
    EXPECT_TRUE(noted);
}

TEST_F(RhizoOnAClinic, HandsOutNobodyWhenTheNumberIsNotOnePersons) {
    EXPECT_THAT(rhizoAsAda({"person", "--database", file.string(), "--patient", "Q-10"}).err,
                HasSubstr("no patient with the record number"));
    store = signedIn("Ada Thornfield");
    somebody("Another Person", "Q-1077");
    store.reset();
    const ProcessResult two = rhizoAsAda({"person", "--database", file.string(), "--patient", "Q-1077"});
    EXPECT_EQ(two.code, 2);
    EXPECT_EQ(two.out, "");
    EXPECT_THAT(two.err, HasSubstr("2 patients have"));
}

TEST_F(RhizoOnAClinic, RefusesWithAReasonAndExitCodeTwo) {
    const std::string clinic = file.string();
    const fs::path open = write("open", std::string{passphrase} + "\n", 0644);
    const fs::path empty = write("empty", "\n");
    const fs::path wrong = write("wrong", "not the right words\n");
    const fs::path letter = write("letter", "Dear colleague, this is no clinic at all.\n");
    const std::string ada = "Ada Thornfield";
    const std::string to = (folder.path() / "again.rhz").string();
    const std::vector<std::pair<std::vector<std::string>, const char*>> cases{
        {{"verify", "--database", clinic, "--user", ada, "--passphrase-file", open.string()}, "other users"},
        {{"verify", "--database", clinic, "--user", ada, "--passphrase-file", empty.string()},
         "no passphrase"},
        {{"verify", "--database", clinic, "--user", ada, "--passphrase-file", wrong.string()},
         "passphrase is wrong"},
        {{"verify", "--database", clinic, "--user", ada, "--passphrase-file", folder.path().string()},
         "is not a file"},
        {{"verify", "--database", clinic, "--user", ada, "--passphrase-file", "/no/such/file"},
         "No such file"},
        {{"verify", "--database", clinic, "--user", ada, "--passphrase-fd", "x"},
         "no number of a file descriptor"},
        {{"verify", "--database", clinic, "--user", ada, "--passphrase-fd", "77"}, "Bad file descriptor"},
        {{"verify", "--database", clinic, "--user", ada, "--passphrase-fd", "0", "--passphrase-file", "x"},
         "both"},
        {{"verify", "--database", clinic, "--user", "Nobody", "--passphrase-file", secret.string()},
         "no user named"},
        {{"verify", "--database", clinic, "--passphrase-file", secret.string()}, "--user is missing"},
        {{"verify", "--user", ada, "--passphrase-file", secret.string()}, "--database is missing"},
        {{"verify", "--database", to, "--user", ada, "--passphrase-file", secret.string()},
         "no such clinic file"},
        {{"verify", "--database", letter.string(), "--user", ada, "--passphrase-file", secret.string()},
         "not a clinic file"},
        {{"verify", "--database", clinic, "--user", ada, "--passphrase", passphrase},
         "unknown option --passphrase"},
        {{"backup", "--database", clinic, "--user", ada, "--passphrase-file", secret.string(),
          letter.string()},
         "already a file"},
        {{"backup", "--database", clinic, "--user", ada, "--passphrase-file", secret.string(),
          "/no/such/folder/b"},
         "no folder"},
        {{"restore", letter.string(), "--database", to, "--user", ada, "--passphrase-file", secret.string()},
         "not a backup"},
        {{"restore", "/no/such/backup", "--database", to, "--user", ada, "--passphrase-file",
          secret.string()},
         "no file"},
        {{"users", "--database", clinic, "--user", ada, "--passphrase-file", secret.string(), "--add", "X",
          "--role", "chief"},
         "none of nurse"},
        {{"users", "--database", clinic, "--user", ada, "--passphrase-file", secret.string(), "--close", "X"},
         "no user named"},
        {{"users", "--database", clinic, "--close", "X", "--reopen", "Y"}, "at a time"},
    };
    for (const auto& [words, reason] : cases) {
        const ProcessResult refused = rhizo(words);
        EXPECT_EQ(refused.code, 2) << words[0] << ": " << refused.err;
        EXPECT_EQ(refused.out, "");
        EXPECT_THAT(refused.err, HasSubstr(reason));
        EXPECT_THAT(refused.err, Not(HasSubstr(passphrase)));
        EXPECT_THAT(refused.err, Not(HasSubstr("Fernwhistle")));
    }
    EXPECT_FALSE(fs::exists(to));
}

TEST_F(RhizoOnAClinic, TakesThePassphraseFromADescriptor) {
    const int descriptor = ::open(secret.c_str(), O_RDONLY);
    const ProcessResult verified = rhizo({"verify", "--database", file.string(), "--user", "Ada Thornfield",
                                          "--passphrase-fd", std::to_string(descriptor)});
    ::close(descriptor);
    EXPECT_EQ(verified.code, 0) << verified.err;
}

/// Runs rhizo at a terminal, types `typed` once it asks, and returns what the terminal showed.
std::string atATerminal(const std::vector<std::string>& words, const std::string& typed, int& code) {
    int terminal = -1;
    const pid_t child = ::forkpty(&terminal, nullptr, nullptr, nullptr);
    if (child == 0) {
        std::vector<std::string> command{RHIZO_PROGRAM};
        command.insert(command.end(), words.begin(), words.end());
        std::vector<char*> arguments;
        for (std::string& word : command)
            arguments.push_back(word.data());
        arguments.push_back(nullptr);
        ::execv(RHIZO_PROGRAM, arguments.data());
        ::_exit(127);
    }
    std::string shown;
    bool answered = false;
    std::array<char, 4096> part{};
    for (ssize_t count = 0; (count = ::read(terminal, part.data(), part.size())) > 0;) {
        shown.append(part.data(), static_cast<std::size_t>(count));
        if (answered || shown.find(": ") == std::string::npos) continue;
        answered = ::write(terminal, typed.data(), typed.size()) == static_cast<ssize_t>(typed.size());
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ::close(terminal);
    code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return shown;
}

TEST_F(RhizoOnAClinic, AsksForThePassphraseWithoutShowingIt) {
    const std::vector<std::string> words{"verify", "--database", file.string(), "--user", "Ada Thornfield"};
    int code = -1;
    // One letter too many, taken back.
    std::string shown = atATerminal(words, std::string{passphrase} + "x\x7f\r", code);
    EXPECT_EQ(code, 0) << shown;
    EXPECT_THAT(shown, HasSubstr("Passphrase of Ada Thornfield: "));
    EXPECT_THAT(shown, HasSubstr("Sound"));
    EXPECT_THAT(shown, Not(HasSubstr("correct")));
    EXPECT_THAT(shown, Not(HasSubstr("horse")));
    shown = atATerminal(words, "corr\x03", code);
    EXPECT_EQ(code, 2);
    EXPECT_THAT(shown, HasSubstr("given up"));
    EXPECT_THAT(shown, Not(HasSubstr("corr")));
}

/// Runs rhizo as somebody to whom the rights of files apply.
std::string saidToNobody(const std::vector<std::string>& words) {
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0) throw std::runtime_error("no pipe");
    const pid_t child = ::fork();
    if (child == 0) {
        ::dup2(ends[1], STDERR_FILENO);
        if (::getuid() == 0 && ::setuid(65534) != 0) ::_exit(126);
        std::vector<std::string> command{RHIZO_PROGRAM};
        command.insert(command.end(), words.begin(), words.end());
        std::vector<char*> arguments;
        for (std::string& word : command)
            arguments.push_back(word.data());
        arguments.push_back(nullptr);
        ::execv(RHIZO_PROGRAM, arguments.data());
        ::_exit(127);
    }
    ::close(ends[1]);
    std::string said;
    std::array<char, 1024> part{};
    for (ssize_t count = 0; (count = ::read(ends[0], part.data(), part.size())) > 0;)
        said.append(part.data(), static_cast<std::size_t>(count));
    ::close(ends[0]);
    int status = 0;
    ::waitpid(child, &status, 0);
    return fmt::format("{} {}", WIFEXITED(status) ? WEXITSTATUS(status) : -1, said);
}

TEST_F(RhizoOnAClinic, SaysWhatIsWrongWithTheFileAndLeavesItAsItIs) {
    const std::string whole = contentOf(file);
    const auto verify = [&](const fs::path& clinic) {
        return rhizoAsAda({"verify", "--database", clinic.string()});
    };
    const auto expectSaid = [&](const std::string& bytes, const char* reason, int code = 2) {
        const fs::path other = folder.path() / "other.rhz";
        for (const char* suffix : {"", "-wal", "-shm"})
            fs::remove(other.string() + suffix);
        std::ofstream(other, std::ios::binary) << bytes;
        const ProcessResult said = verify(other);
        EXPECT_EQ(said.code, code) << reason << ": " << said.err;
        EXPECT_EQ(said.out, "");
        EXPECT_THAT(said.err, HasSubstr(reason));
        EXPECT_EQ(contentOf(other), bytes) << reason;
    };
    expectSaid(whole.substr(0, whole.size() / 2), "damaged");
    expectSaid(std::string(4000, '\x5a'), "not a clinic");
    expectSaid("SQLite format 3\0" + std::string(3000, '\x17'), "not a clinic");
    const fs::path letters = folder.path() / "letters.db";
    std::ofstream{letters};
    sqlite::Database{letters, 50}.script("create table letter (text text)");
    expectSaid(contentOf(letters), "another program");
    sqlite::Database{letters, 50}.script(
        "create table meta (x); pragma application_id = 1381648177; pragma user_version = 9000;");
    expectSaid(contentOf(letters), "newer version");
    ::chmod(folder.path().c_str(), 0555);
    ::chmod(secret.c_str(), 0644);
    ::chmod(file.c_str(), 0444);
    EXPECT_THAT(saidToNobody({"verify", "--database", file.string(), "--user", "Ada Thornfield",
                              "--passphrase-file", secret.string()}),
                HasSubstr("read-only"));
    ::chmod(folder.path().c_str(), 0700);
    ::chmod(secret.c_str(), 0600);
    ::chmod(file.c_str(), 0600);
    {
        sqlite::Database other{file, 50};
        other.script("pragma locking_mode = exclusive; begin exclusive;");
        const ProcessResult locked = verify(file);
        EXPECT_NE(locked.code, 0);
        EXPECT_THAT(locked.err, HasSubstr("nother program"));
    }
    EXPECT_EQ(verify(file).code, 0) << "and all is well afterwards";
}

TEST_F(RhizoOnAClinic, SaysThatTheDiskIsFullAndLeavesNoHalfBackup) {
    const fs::path small = folder.path() / "small";
    fs::create_directory(small);
    if (::mount("tmpfs", small.c_str(), "tmpfs", 0, "size=64k,mode=0700") != 0) return; // not allowed here
    const ProcessResult full =
        rhizoAsAda({"backup", "--database", file.string(), (small / "b.rhzbackup").string()});
    EXPECT_EQ(full.code, 1) << full.err;
    EXPECT_THAT(full.err, HasSubstr("full"));
    EXPECT_TRUE(fs::is_empty(small));
    ::umount2(small.c_str(), MNT_DETACH);
    EXPECT_EQ(rhizoAsAda({"backup", "--database", file.string(), backup.string()}).code, 0)
        << "elsewhere there is room";
}

} // namespace
} // namespace rhizograph::testing
