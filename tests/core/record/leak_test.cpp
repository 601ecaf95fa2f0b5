#include "clinicfixture.h"

#include "exchange/democlinic.h"
#include "record/privacy.h"

#include <algorithm>
#include <csignal>
#include <fmt/format.h>
#include <set>
#include <sys/wait.h>

namespace rhizograph::testing {
namespace {

namespace fs = std::filesystem;

/// The demo clinic, lived in: searched, changed, backed up, failed to be signed into, with a log still open.
class ALeak : public ::testing::Test {
protected:
    ALeak() {
        const fs::path resources = RHIZOGRAPH_RESOURCES;
        const auto knowledge = need(Knowledge::load(resources / "knowledge"));
        demo = need(createDemoClinic(file, resources / "demo" / "clinic.json", knowledge, systemClock()()));
        temporary = folder.path() / "tmp";
        fs::create_directory(temporary);
        ::setenv("TMPDIR", temporary.c_str(), 1);
        ::setenv("SQLITE_TMPDIR", temporary.c_str(), 1);
    }

    std::unique_ptr<Store> opened() {
        auto store = need(openClinic(file));
        for (const User& user : need(store->users()))
            if (user.role == Role::administrator) need(store->signIn(user.id, demo.passphrase));
        return store;
    }

    /// A word is worth looking for when chance does not put it into sealed bytes: from five bytes on.
    void lookFor(const std::string& text) {
        for (const std::string& whole : {text, folded(text)}) {
            if (whole.size() >= 5) secrets.insert(whole);
            std::string word;
            for (const char c : whole + " ") {
                if (c != ' ' && c != ',') {
                    word += c;
                    continue;
                }
                if (word.size() >= 5) secrets.insert(word);
                word.clear();
            }
        }
    }
    static std::string folded(std::string text) {
        std::transform(text.begin(), text.end(), text.begin(),
                       [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
        return text;
    }

    void collect(Store& store) {
        for (const Patient& patient : need(store.searchPatients("", 10'000))) {
            const Identity& i = patient.identity;
            for (const std::string& text : {i.name, i.recordNumber, i.birthDate, i.contact, i.notes})
                if (!text.empty()) identities.insert(text);
            for (const Visit& visit : need(store.visitsOf(patient.id))) {
                const Exam exam = need(store.exam(visit.id));
                for (const auto& [key, finding] : exam.findings()) {
                    if (!finding.note.empty()) texts.insert(finding.note);
                    if (finding.value.kind() == Value::Kind::text) texts.insert(finding.value.word());
                }
                for (const AuthoredText& text : need(store.notes(visit.id)))
                    texts.insert(text.text);
                for (const AuthoredText& text : need(store.addenda(visit.id)))
                    texts.insert(text.text);
                if (const std::string plan = need(store.plan(visit.id)); !plan.empty()) texts.insert(plan);
            }
        }
        for (const std::string& text : identities)
            lookFor(text);
        for (const std::string& text : texts) // whole sentences: their words are everybody's
            if (text.size() >= 5) secrets.insert(text);
    }

    Folder folder{Folder::Place::disk};
    fs::path file = folder.path() / "clinic.rhz";
    fs::path temporary;
    DemoClinic demo;
    std::set<std::string> identities;
    std::set<std::string> texts;
    std::set<std::string> secrets;
};

TEST_F(ALeak, OfANameNumberOrNoteIsInNoFile) {
    ::testing::internal::CaptureStdout();
    ::testing::internal::CaptureStderr();
    auto store = opened();
    const Patient added =
        need(store->addPatient({"Thessaly Quintrell-Okonjo", "TQ-90210-77", "1949-11-02", "female",
                                "Underhill Terrace 41, phone 0555 0199", "afraid of needles"}));
    Patient changed = added;
    changed.identity.contact = "Overhill Crescent 7";
    need(store->updatePatient(changed));
    const Visit visit = need(store->addVisit(added.id, "2026-03-04"));
    need(store->record(visit.id, {{{ItemId{"one"}, Side::left},
                                   Finding{Value::text("tripped over the cat"), false, "cries a little"}}}));
    need(store->addNote(visit.id, "brought her sister along"));
    need(store->setPlan(visit.id, "telephone on the eleventh"));
    need(store->sign(visit.id, "knowledge-7"));
    need(store->addAddendum(visit.id, "sister telephoned instead"));
    need(store->log(AuditAction::exported, visit.id.text(), "summary of Thessaly Quintrell-Okonjo"));
    collect(*store);
    secrets.insert({"Thessaly", "Quintrell-Okonjo", "TQ-90210-77", "Underhill Terrace", "Overhill Crescent"});
    need(store->searchPatients("thessaly"));
    (void)store->patient(PatientId{"no such patient"});
    (void)store->record(visit.id, {token("one", Side::left, "1")}); // signed: refused
    need(store->saveUnsaved(folder.path() / "unsaved", {{visit.id, NoteAdded{"brought her sister along"}}}));
    need(store->backUp(folder.path() / "one.rhzbackup"));
    need(store->backUpDaily(folder.path() / "daily", 3));
    auto door = need(openClinic(file));
    (void)door->signIn(store->signedIn()->id, "tripped over the cat");
    ASSERT_TRUE(need(store->verify()).sound());
    const std::string said =
        ::testing::internal::GetCapturedStdout() + ::testing::internal::GetCapturedStderr();

    std::set<std::string> kinds;
    std::uintmax_t bytes = 0;
    int files = 0;
    bool control = false;
    for (const auto& entry : fs::recursive_directory_iterator(folder.path())) {
        if (!entry.is_regular_file()) continue;
        const std::string content = contentOf(entry.path());
        ++files;
        bytes += content.size();
        kinds.insert(entry.path().filename().string());
        control = control || content.find(demo.users.front().name) != std::string::npos;
        for (const std::string& secret : secrets) {
            EXPECT_EQ(content.find(secret), std::string::npos)
                << "\"" << secret << "\" is in " << entry.path();
            EXPECT_EQ(entry.path().string().find(secret), std::string::npos) << secret;
        }
    }
    for (const std::string& secret : secrets)
        EXPECT_EQ(said.find(secret), std::string::npos) << "\"" << secret << "\" was printed";
    EXPECT_TRUE(kinds.contains("clinic.rhz-wal")) << "the log was gone before it could be looked at";
    EXPECT_TRUE(control)
        << "not even the users' names, which stand open, were found: the search finds nothing";
    EXPECT_GT(identities.size(), 30U);
    EXPECT_TRUE(fs::is_empty(temporary)) << "temporary files were left";
    fmt::print("leak: {} words and sentences of {} identity fields and {} texts looked for in {} files ({} "
               "bytes: database, "
               "log, backups, unsaved changes) and in what was printed: 0 found\n",
               secrets.size(), identities.size(), texts.size(), files, bytes);
}

TEST(ACrashImage, IsNotLeftBehind) {
    const pid_t child = ::fork();
    if (child == 0) {
        if (!forbidCrashImages()) std::_Exit(9);
        std::abort();
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_TRUE(WIFSIGNALED(status));
    EXPECT_EQ(WTERMSIG(status), SIGABRT);
    EXPECT_FALSE(WCOREDUMP(status));
}

} // namespace
} // namespace rhizograph::testing
