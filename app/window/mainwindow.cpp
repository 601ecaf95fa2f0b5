#include "window/mainwindow.h"

#include "parts/button.h"
#include "parts/label.h"
#include "parts/strip.h"
#include "patients/listdialog.h"
#include "patients/patientform.h"
#include "patients/patientpage.h"
#include "patients/patientspage.h"
#include "patients/restorepage.h"
#include "patients/setuppage.h"
#include "patients/signinpage.h"
#include "patients/words.h"
#include "settings/auditpage.h"
#include "settings/settingspage.h"
#include "window/problempage.h"
#include "window/visitpage.h"
#include "window/visitwatch.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDate>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QLocale>
#include <QMessageBox>
#include <QShortcut>
#include <QStackedWidget>
#include <utility>

namespace rhizograph::app {

MainWindow::MainWindow(Materials materials, Setup setup, QWidget* parent)
    : QMainWindow(parent), materials_(std::move(materials)), setup_(std::move(setup)) {
    preferences_ = loadPreferences(setup_.preferencesFile);
    build();
    addShortcuts();
    idle_.setSingleShot(true);
    connect(&idle_, &QTimer::timeout, this, &MainWindow::lock);
    qApp->installEventFilter(this);
    setWindowTitle(tr("Rhizograph"));
    resize(1280, 800);
    setMinimumSize(720, 560);
}

MainWindow::~MainWindow() {
    qApp->removeEventFilter(this);
}

void MainWindow::build() {
    stack_ = new QStackedWidget(this);
    setCentralWidget(stack_);
    problem_ = new ProblemPage(stack_);
    signIn_ = new SignInPage(stack_);
    stack_->addWidget(problem_);
    restore_ = new RestorePage(stack_);
    stack_->addWidget(signIn_);
    stack_->addWidget(restore_);
    buildHouse();
    connectUpkeep();
    connectPerson();
    connect(problem_, &ProblemPage::retryWanted, this, &MainWindow::openDatabase);
    connect(problem_, &ProblemPage::otherFileWanted, this, &MainWindow::otherFile);
    connect(problem_, &ProblemPage::quitWanted, this, &MainWindow::close);
    connect(signIn_, &SignInPage::signInWanted, this, &MainWindow::signIn);
}

void MainWindow::buildHouse() {
    house_ = new QWidget(stack_);
    stack_->addWidget(house_);
    auto* column = new QVBoxLayout(house_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    strip_ = new Strip(house_);
    auto& row = strip_->content();
    row.addWidget(new Label(tr("Patients"), 19, QFont::DemiBold, Label::Tone::ink, strip_));
    row.addWidget(Strip::divider(strip_));
    row.addWidget(new Label(QLocale().toString(QDate::currentDate(), "dddd d MMM yyyy"), 16, QFont::Normal,
                            Label::Tone::ink, strip_));
    row.addStretch(1);
    column->addWidget(strip_);
    rooms_ = new QStackedWidget(house_);
    column->addWidget(rooms_, 1);
    patients_ = new PatientsPage(rooms_);
    patient_ = new PatientPage(rooms_);
    form_ = new PatientForm(rooms_);
    settings_ = new SettingsPage(rooms_);
    audit_ = new AuditPage(rooms_);
    for (QWidget* room : std::initializer_list<QWidget*>{patients_, patient_, form_, settings_, audit_})
        rooms_->addWidget(room);
    connect(strip_, &Strip::lockWanted, this, &MainWindow::lock);
    connect(strip_, &Strip::menuWanted, this, [this] { showMenu(*strip_); });
    connect(patients_, &PatientsPage::refreshWanted, this,
            [this] { succeeded(patients_->refresh(*store_)); });
    connect(patients_, &PatientsPage::visitChosen, this, [this](const VisitId& id) { openVisitById(id); });
    connect(patients_, &PatientsPage::patientChosen, this, &MainWindow::showPatient);
    connect(patients_, &PatientsPage::newPatientWanted, this, [this](const QString& searched) {
        form_->begin(searched);
        showForm();
    });
    connect(patients_, &PatientsPage::listWanted, this, [this] {
        const QString path = QFileDialog::getOpenFileName(this, tr("A list of patients"), {},
                                                          tr("Tables (*.csv *.tsv *.txt)"));
        if (path.isEmpty()) return;
        ListDialog dialog(*store_, this);
        dialog.open(path);
        if (dialog.exec() == QDialog::Accepted) succeeded(patients_->refresh(*store_));
    });
    connect(patient_, &PatientPage::back, this, &MainWindow::showPatients);
    connect(patient_, &PatientPage::visitChosen, this, [this](const VisitId& id) { openVisitById(id); });
    connect(patient_, &PatientPage::newVisitWanted, this, &MainWindow::beginVisit);
    connect(patient_, &PatientPage::editWanted, this, [this](const Patient& patient) {
        form_->edit(patient);
        showForm();
    });
    connect(form_, &PatientForm::saveWanted, this, &MainWindow::savePatient);
    connect(form_, &PatientForm::canceled, this, &MainWindow::showPatients);
    connect(settings_, &SettingsPage::preferencesChanged, this, &MainWindow::setPreferences);
    connect(settings_, &SettingsPage::clinicChanged, this, [this](const ClinicSettings& settings) {
        clinic_ = settings;
        followVisit();
    });
    connect(settings_, &SettingsPage::back, this, [this] {
        if (visitPage_ != nullptr)
            stack_->setCurrentWidget(visitPage_.get());
        else
            showPatients();
    });
}

void MainWindow::addShortcuts() {
    connect(new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_L), this), &QShortcut::activated, this,
            &MainWindow::lock);
    connect(new QShortcut(QKeySequence::Quit, this), &QShortcut::activated, this, &MainWindow::close);
}

QWidget* MainWindow::screen() const {
    QWidget* shown = stack_->currentWidget();
    return shown == house_ ? rooms_->currentWidget() : shown;
}

void MainWindow::openDatabase() {
    store_.reset();
    const QString file = QString::fromStdString(setup_.database.string());
    std::error_code error;
    if (std::filesystem::status(setup_.database, error).type() == std::filesystem::file_type::not_found) {
        delete setUp_;
        setUp_ = new SetupPage(file, stack_);
        stack_->addWidget(setUp_);
        connect(setUp_, &SetupPage::createWanted, this, &MainWindow::createClinicFile);
        connect(setUp_, &SetupPage::restoreWanted, this, &MainWindow::showRestore);
        stack_->setCurrentWidget(setUp_);
        return;
    }
    auto opened = openClinic(setup_.database, setup_.clinic);
    if (!opened) {
        showProblem(tr("The clinic cannot be opened"), reasonText(opened.problems()));
        return;
    }
    store_ = std::move(opened).value();
    askSignIn({});
}

void MainWindow::showProblem(const QString& title, const QString& reason) {
    problem_->say(title, QString::fromStdString(setup_.database.string()), reason);
    stack_->setCurrentWidget(problem_);
}

void MainWindow::otherFile() {
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Open a clinic"), {}, tr("Clinics (*.rhizo);;All files (*)"));
    if (file.isEmpty()) return;
    setup_.database = file.toStdString();
    openDatabase();
}

void MainWindow::createClinicFile(const QString& clinic, const QString& administrator,
                                  const QString& passphrase) {
    if (work_.busy()) return;
    setUp_->setBusy(true);
    const auto create = [file = setup_.database, options = setup_.clinic, name = clinic.toStdString(),
                         first = FirstUser{administrator.toStdString(), Role::administrator,
                                           passphrase.toStdString()}]() -> Outcome {
        std::error_code error;
        if (file.has_parent_path()) std::filesystem::create_directories(file.parent_path(), error);
        return createClinic(file, name, first, options);
    };
    work_.run(create, [this](const Outcome& outcome) {
        setUp_->setBusy(false);
        if (outcome)
            openDatabase();
        else
            setUp_->refuse(reasonText(outcome.problems()));
    });
}

void MainWindow::askSignIn(const QString& notice) {
    auto users = store_->users();
    auto name = store_->clinicName();
    if (!users || !name) {
        showProblem(tr("The clinic cannot be read"), reasonText(!users ? users.problems() : name.problems()));
        return;
    }
    signIn_->setUsers(QString::fromStdString(*name), *users, user_ ? user_->id : UserId{});
    signIn_->setNotice(notice);
    stack_->setCurrentWidget(signIn_);
    setWindowTitle(tr("Rhizograph"));
}

void MainWindow::signIn(const UserId& user, const QString& passphrase) {
    if (work_.busy()) return;
    signIn_->setBusy(true);
    // Deriving the key takes a noticeable time; the store is left alone until it is done.
    const auto unseal = [store = store_.get(), user, secret = passphrase.toStdString()] {
        return store->signIn(user, secret);
    };
    work_.run(unseal, [this](const Outcome& outcome) {
        signIn_->setBusy(false);
        if (outcome)
            enter();
        else
            signIn_->refuse(reasonText(outcome.problems()));
    });
}

void MainWindow::enter() {
    const std::optional<User> before = user_;
    user_ = store_->signedIn();
    locked_ = false;
    auto settings = loadClinicSettings(*store_);
    if (settings) clinic_ = *settings;
    idle_.start(std::chrono::minutes(clinic_.idleMinutes));
    daily_.start(setup_.backupAfter);
    strip_->setUser(QString::fromStdString(user_->name));
    if (!settings) complain(settings.problems());
    if (!untold_.isEmpty()) tell(std::exchange(untold_, {}));
    if (visitPage_ == nullptr) return showPatients();
    if (before && before->id == user_->id) {
        stack_->setCurrentWidget(visitPage_.get());
        return;
    }
    // Someone else goes on with the open visit, under their own name.
    const VisitId open = visit_.session->start().visit.id;
    const int page = visitPage_->pageIndex();
    if (closeVisit()) openVisitById(open, page);
}

void MainWindow::lock() {
    if (locked_ || store_ == nullptr || !store_->signedIn()) return;
    locked_ = true;
    if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
    if (QWidget* dialog = QApplication::activeModalWidget()) dialog->close();
    idle_.stop();
    store_->signOut(); // what is still to be written goes on with the record's own connection
    patients_->clear();
    audit_->clear();
    rooms_->setCurrentWidget(patients_);
    askSignIn(visitPage_ != nullptr ? tr("Locked. The open visit is kept.") : tr("Locked."));
}

void MainWindow::setPreferences(const Preferences& preferences) {
    if (preferences == preferences_) return;
    preferences_ = preferences;
    savePreferences(setup_.preferencesFile, preferences_);
    apply(preferences_);
}

void MainWindow::showSettings() {
    if (!succeeded(settings_->show(*store_, preferences_, backupFolder()))) return;
    rooms_->setCurrentWidget(settings_);
    stack_->setCurrentWidget(house_);
}

void MainWindow::complain(const Problems& problems) {
    tell(reasonText(problems));
}

void MainWindow::tell(const QString& text) {
    auto* box = new QMessageBox(QMessageBox::Warning, tr("Rhizograph"), text, QMessageBox::Ok, this);
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->open();
}

bool MainWindow::succeeded(const Outcome& outcome) {
    if (!outcome) complain(outcome.problems());
    return outcome.ok();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (closeVisit())
        QMainWindow::closeEvent(event);
    else
        event->ignore();
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
    switch (event->type()) {
    case QEvent::MouseButtonPress:
    case QEvent::KeyPress:
    case QEvent::TouchBegin:
    case QEvent::Wheel:
        if (idle_.isActive()) idle_.start();
        break;
    default:
        break;
    }
    return QMainWindow::eventFilter(watched, event);
}

} // namespace rhizograph::app
