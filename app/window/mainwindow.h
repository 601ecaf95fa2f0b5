#pragma once

#include "patients/offthread.h"
#include "settings/clinicsettings.h"
#include "settings/preferences.h"
#include "window/clinic.h"

#include <memory>
#include <optional>
#include <QMainWindow>
#include <QTimer>

class QMenu;
class QStackedWidget;

namespace rhizograph::app {

class AuditPage;
class PatientForm;
class PatientPage;
class PatientsPage;
class ProblemPage;
class RestorePage;
class SettingsPage;
class SetupPage;
class SignInPage;
class Strip;
class VisitPage;
class VisitWatch;

/// The program's one window, from sign-in to the signed visit.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    struct Setup {
        std::filesystem::path database;
        QString preferencesFile;
        ClinicOptions clinic; ///< how the record is opened; tests put in a stopped clock and cheap keys
        std::chrono::milliseconds backupAfter{60'000}; ///< from sign-in to the day's backup
        bool tour = false;                             ///< shows newcomers round at their first visit
    };

    /// The materials are read beside the first screen and waited for when the first visit is opened.
    MainWindow(PromisedMaterials materials, Setup setup, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens the clinic file, or offers to set one up where there is none.
    void openDatabase();
    [[nodiscard]] SignInPage& signInPage() { return *signIn_; }
    [[nodiscard]] SetupPage* setupPage() { return setUp_; }
    [[nodiscard]] ProblemPage& problemPage();
    [[nodiscard]] PatientsPage& patientsPage() {
        needHouse();
        return *patients_;
    }
    [[nodiscard]] PatientPage& patientPage() {
        needHouse();
        return *patient_;
    }
    [[nodiscard]] PatientForm& patientForm() {
        needHouse();
        return *form_;
    }
    [[nodiscard]] SettingsPage& settingsPage() {
        needHouse();
        return *settings_;
    }
    [[nodiscard]] AuditPage& auditPage() {
        needHouse();
        return *audit_;
    }
    [[nodiscard]] RestorePage& restorePage() {
        needHouse();
        return *restore_;
    }
    /// Where the daily backups go.
    [[nodiscard]] std::filesystem::path backupFolder() const;
    [[nodiscard]] VisitPage* visitPage() { return visitPage_.get(); }
    [[nodiscard]] VisitSession* session() { return visit_.session.get(); }
    [[nodiscard]] Store* store() { return store_.get(); }
    /// What is on the screen now.
    [[nodiscard]] QWidget* screen() const;

    void openVisitById(const VisitId& id, int page = -1);
    /// An earlier visit, opened from the course of the open one: nothing in it can be changed, and a way
    /// leads back.
    void readVisit(const VisitId& id);
    void showPatients();
    void showSettings();
    void showTour(); ///< over the open visit
    void lock();
    void setPreferences(const Preferences& preferences);

signals:
    void materialsUnreadable(const rhizograph::Problems& problems);

protected:
    void closeEvent(QCloseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    // mainwindow.cpp
    void build();
    void awaitMaterials();
    void rebuild();
    void addShortcuts();
    void showProblem(const QString& title, const QString& reason);
    void createClinicFile(const QString& clinic, const QString& administrator, const QString& passphrase);
    void askSignIn(const QString& notice);
    void signIn(const UserId& user, const QString& passphrase);
    void enter();
    void lockSaying(const QString& notice);
    void complain(const Problems& problems);
    bool succeeded(const Outcome& outcome);
    void otherFile();
    // upkeep.cpp
    void connectUpkeep();
    template <class T>
    void besides(const QString& doing, std::function<Result<T>(Store&)> work,
                 std::function<void(const Result<T>&)> done);
    void tell(const QString& text);
    void tellBackup(const Backup& made);
    void backUpToday();
    void backUpNow();
    void backUpTo(const std::filesystem::path& file);
    void chooseBackupFolder();
    void verifyRecord();
    void showAudit();
    void showRestore();
    void restoreClinic(const RestoreOrder& order);
    // person.cpp
    void connectPerson();
    void joinDuplicate(const Patient& patient);
    void partDuplicate(const Patient& duplicate);
    void handOut(const Patient& patient);
    void handOutTo(const Patient& patient, const QString& file);
    void erase(const Patient& patient);
    // house.cpp
    void needHouse();
    void buildStrip();
    void connectHouse();
    // menu.cpp
    void showMenu(Strip& strip);
    void addLooks(QMenu& menu);
    void addVisitWork(QMenu& menu);
    void bringBackUnsaved();
    // visits.cpp
    void showPatient(const PatientId& id);
    void showForm();
    void savePatient(const PatientId& id, const Identity& identity, bool visit);
    void beginVisit(const PatientId& patient);
    /// The visit whose course led to the open one, which is only read, and the page it showed.
    struct WayBack {
        VisitId visit;
        int page = 0;
    };
    void showVisit(const VisitId& id, int page, const std::optional<WayBack>& back);
    bool reopenVisit();
    void judgeVisitAnew();
    [[nodiscard]] bool signedMeanwhile();
    void connectWayBack();
    void showVisitPage(int page);
    bool closeVisit();
    bool settleRecord();
    void saveCopy();
    void followVisit();
    void offerHandOver();
    void moveVisitOn(VisitState state);
    void signVisit();

    [[nodiscard]] const Materials& materials() const { return *materials_.get(); }

    PromisedMaterials materials_;
    Setup setup_;
    Preferences preferences_;
    ClinicSettings clinic_;
    std::unique_ptr<Store> store_;
    std::optional<User> user_; ///< who is signed in, or was before the lock
    bool locked_ = false;
    bool painted_ = false;   ///< the first screen is there
    bool copySaved_ = false; ///< what the last "save a copy" came to
    OpenVisit visit_;
    std::optional<WayBack> wayBack_;
    std::unique_ptr<VisitPage> visitPage_; ///< uses visit_, so it goes first
    std::unique_ptr<VisitWatch> watch_;    ///< uses visit_ and store_
    QTimer idle_;
    QTimer daily_;
    QString untold_;     ///< news of a backup that came while the screen was locked
    QString lastUntold_; ///< what was told last, so that the same is not told every hour
    OffThread work_;
    OffThread upkeep_; ///< backing up and verifying, which may take minutes
    OffThread reading_;

    QStackedWidget* stack_ = nullptr;
    ProblemPage* problem_ = nullptr;
    SetupPage* setUp_ = nullptr;
    SignInPage* signIn_ = nullptr;
    QWidget* house_ = nullptr; ///< everything around the visit: patients, one patient, form, settings; made
                               ///< at the first sign-in
    Strip* strip_ = nullptr;
    QStackedWidget* rooms_ = nullptr;
    PatientsPage* patients_ = nullptr;
    PatientPage* patient_ = nullptr;
    PatientForm* form_ = nullptr;
    SettingsPage* settings_ = nullptr;
    AuditPage* audit_ = nullptr;
    RestorePage* restore_ = nullptr;
};

} // namespace rhizograph::app
