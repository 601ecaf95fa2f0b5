#include "windowfixture.h"

#include "patients/restorepage.h"
#include "patients/setuppage.h"
#include "settings/auditpage.h"
#include "settings/recordcard.h"
#include "settings/settingspage.h"
#include "window/problempage.h"

#include <fstream>
#include <QComboBox>
#include <QTableWidget>

namespace rhizograph::app::testing {
namespace {

namespace fs = std::filesystem;

class UpkeepTest : public WindowTest {
protected:
    /// A second window, signed in, whose daily backup is due at once.
    std::unique_ptr<MainWindow> withBackupDue() {
        window.reset();
        MainWindow::Setup setup{clinic.file(),
                                QString::fromStdString(clinic.path("preferences.ini").string()),
                                clinic.options, std::chrono::milliseconds{0}};
        auto out = std::make_unique<MainWindow>(promised(materials()), std::move(setup));
        out->openDatabase();
        out->show();
        signIn(*out);
        return out;
    }
    [[nodiscard]] std::vector<fs::path> backups() const {
        std::vector<fs::path> out;
        std::error_code error;
        for (const auto& entry : fs::directory_iterator(clinic.path("backups"), error))
            if (entry.path().extension() == backupSuffix) out.push_back(entry.path());
        return out;
    }
    /// A backup made through the settings.
    fs::path backedUp() {
        const fs::path file = clinic.path("safe.rhzbackup");
        window->showSettings();
        answerFileDialog(file);
        pressButton(window->settingsPage(), "Back up now …");
        if (!waitUntil([&] { return shows(window->settingsPage(), "read back and verified"); }))
            throw std::runtime_error("no backup was made");
        return file;
    }
    void restoreFrom(const fs::path& backup, const char* secret = passphrase) {
        RestorePage& page = window->restorePage();
        answerFileDialog(backup);
        pressButton(page, "Choose the backup …");
        QTest::keyClicks(&field(page, "Passphrase of that day"), secret);
        pressButton(page, "Restore");
    }
    void spoil(std::uintmax_t bytesLeft) {
        window.reset();
        fs::resize_file(clinic.file(), bytesLeft);
        window = clinic.window();
        window->openDatabase();
        window->show();
    }
};

TEST_F(UpkeepTest, TheDaysBackupIsMadeByItselfAndOnce) {
    window = withBackupDue();
    ASSERT_TRUE(waitUntil([&] { return backups().size() == 1; }));
    const auto info = need(inspectBackup(backups().front()));
    EXPECT_EQ(info.clinicName, clinicName);
    window->lock();
    signIn(*window);
    waitUntil([] { return false; }, 300);
    EXPECT_EQ(backups().size(), 1U);
    EXPECT_EQ(saidInABox(), "");
}

TEST_F(UpkeepTest, TheDaysBackupThatCannotBeMadeIsSaid) {
    std::ofstream(clinic.path("backups")) << "no folder";
    window = withBackupDue();
    EXPECT_TRUE(waitUntil([] { return saidInABox().contains("backup was not made"); }));
}

TEST_F(UpkeepTest, WhereTheClinicWantsNoBackupsNoneIsMade) {
    need(window->store()->setSetting("backups_kept", "0"));
    window = withBackupDue();
    waitUntil([] { return false; }, 400);
    EXPECT_TRUE(backups().empty());
}

TEST_F(UpkeepTest, VerifyingSaysSoundOrWhatWasChanged) {
    window->showSettings();
    pressButton(window->settingsPage(), "Verify the record");
    EXPECT_TRUE(waitUntil([&] { return shows(window->settingsPage(), "as it was written"); }));
    OtherProgram(clinic.file()).run("update visit set age = 17 where rowid = 1");
    pressButton(window->settingsPage(), "Verify the record");
    EXPECT_TRUE(waitUntil([&] { return shows(window->settingsPage(), "Damaged in 1 place"); }));
}

TEST_F(UpkeepTest, TheAuditNamesWhoDidWhatToWhomAndIsNarrowedDown) {
    const Visit seen = need(window->store()->visit(visit));
    const QString name = QString::fromStdString(need(window->store()->patient(seen.patient)).identity.name);
    opened();
    window->showSettings();
    pressButton(window->settingsPage(), "Audit");
    ASSERT_EQ(window->screen(), &window->auditPage());
    QTableWidget& table = window->auditPage().table();
    ASSERT_GT(table.rowCount(), 3);
    EXPECT_EQ(table.item(0, 1)->text(), administrator);
    EXPECT_EQ(table.item(0, 2)->text(), "Visit opened");
    EXPECT_TRUE(table.item(0, 3)->text().startsWith(name)) << table.item(0, 3)->text().toStdString();
    QTest::keyClicks(&window->auditPage().searchField(), "signed in");
    EXPECT_TRUE(table.isRowHidden(0));
    int shown = 0;
    for (int row = 0; row < table.rowCount(); ++row)
        shown += table.isRowHidden(row) ? 0 : 1;
    EXPECT_EQ(shown, 2) << "to invent the day, and through the window";
    window->lock();
    EXPECT_EQ(table.rowCount(), 0) << "names behind the lock";
}

TEST_F(UpkeepTest, ANurseSeesNeitherTheAuditNorRestoring) {
    const User nurse = need(window->store()->addUser("Fenwick Tarn", Role::nurse, passphrase));
    window->lock();
    emit window->signInPage().signInWanted(nurse.id, passphrase);
    ASSERT_TRUE(waitUntil([&] { return window->screen() == &window->patientsPage(); }));
    window->showSettings();
    for (const char* words : {"Audit", "Restore a backup …", "Verify the record"})
        EXPECT_THROW(pressButton(window->settingsPage(), words), std::runtime_error) << words;
    EXPECT_NO_THROW(pressButton(window->settingsPage(), "Leave the settings"));
}

TEST_F(UpkeepTest, ATruncatedClinicIsSaidAndComesBackFromItsBackup) {
    const fs::path backup = backedUp();
    spoil(20'000);
    ASSERT_EQ(window->screen(), &window->problemPage());
    EXPECT_TRUE(window->problemPage().text().contains("damaged"))
        << window->problemPage().text().toStdString();
    pressButton(window->problemPage(), "Restore a backup …");
    ASSERT_EQ(window->screen(), &window->restorePage());
    restoreFrom(backup);
    ASSERT_TRUE(waitUntil([&] { return window->screen() == &window->signInPage(); }));
    EXPECT_TRUE(shows(window->signInPage(), "is kept as"));
    signIn(*window);
    EXPECT_FALSE(need(window->store()->exam(visit)).findings().empty());
    EXPECT_TRUE(need(window->store()->verify()).sound());
}

TEST_F(UpkeepTest, ALostClinicComesBackFromItsBackupWhereOneWouldBeSetUp) {
    const fs::path backup = backedUp();
    window.reset();
    for (const char* suffix : {"", "-wal", "-shm"})
        fs::remove(clinic.file().string() + suffix);
    window = clinic.window();
    window->openDatabase();
    window->show();
    pressButton(*window->setupPage(), "Restore a backup instead …");
    restoreFrom(backup);
    ASSERT_TRUE(waitUntil([&] { return window->screen() == &window->signInPage(); }));
    signIn(*window);
    EXPECT_FALSE(need(window->store()->exam(visit)).findings().empty());
}

TEST_F(UpkeepTest, RestoringIsRefusedWithTheWrongPassphraseOrFileAndChangesNothing) {
    const fs::path backup = backedUp();
    const fs::path letter = clinic.path("letter.rhzbackup");
    std::ofstream(letter) << "Dear colleague, this is no backup at all.";
    pressButton(window->settingsPage(), "Restore a backup …");
    ASSERT_EQ(window->screen(), &window->restorePage());
    answerFileDialog(letter);
    pressButton(window->restorePage(), "Choose the backup …");
    EXPECT_TRUE(shows(window->restorePage(), "not a backup"));
    restoreFrom(backup, "guess guess");
    EXPECT_TRUE(waitUntil([&] { return shows(window->restorePage(), "passphrase is wrong"); }));
    pressButton(window->restorePage(), "Cancel");
    ASSERT_EQ(window->screen(), &window->signInPage());
    signIn(*window);
    EXPECT_EQ(need(window->store()->audit(50)).back().action, AuditAction::clinicCreated);
}

} // namespace
} // namespace rhizograph::app::testing
