#include "window/mainwindow.h"

#include "parts/strip.h"
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
#include <QFileDialog>
#include <QMessageBox>
#include <QShortcut>
#include <QStackedWidget>
#include <utility>

namespace rhizograph::app {

MainWindow::MainWindow(PromisedMaterials materials, Setup setup, QWidget* parent)
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
    signIn_ = new SignInPage(stack_);
    stack_->addWidget(signIn_);
    connect(signIn_, &SignInPage::signInWanted, this, &MainWindow::signIn);
}

ProblemPage& MainWindow::problemPage() {
    if (problem_ == nullptr) {
        problem_ = new ProblemPage(stack_);
        stack_->addWidget(problem_);
        connect(problem_, &ProblemPage::retryWanted, this, &MainWindow::openDatabase);
        connect(problem_, &ProblemPage::otherFileWanted, this, &MainWindow::otherFile);
        connect(problem_, &ProblemPage::quitWanted, this, &MainWindow::close);
        connect(problem_, &ProblemPage::restoreWanted, this, &MainWindow::showRestore);
    }
    return *problem_;
}

void MainWindow::awaitMaterials() {
    const auto arrival = [materials = materials_]() -> Outcome {
        return materials.get() ? Outcome{} : Outcome{materials.get().problems()};
    };
    reading_.run(arrival, [this](const Outcome& outcome) {
        if (!outcome) emit materialsUnreadable(outcome.problems());
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
    problemPage().say(title, QString::fromStdString(setup_.database.string()), reason);
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
    needHouse(); // while the key is being derived
}

void MainWindow::enter() {
    needHouse();
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
    const bool same = before && before->id == user_->id && before->role == user_->role;
    if (same && !signedMeanwhile()) {
        stack_->setCurrentWidget(visitPage_.get());
        return;
    }
    // Someone else goes on with the open visit, under their own name and with their own rights.
    if (reopenVisit()) return;
    user_ = before;
    lockSaying(tr("What %1 recorded is not saved yet, so only they can go on with the open visit.")
                   .arg(QString::fromStdString(before->name)));
}

void MainWindow::lock() {
    lockSaying(visitPage_ != nullptr ? tr("Locked. The open visit is kept.") : tr("Locked."));
}

void MainWindow::lockSaying(const QString& notice) {
    if (locked_ || store_ == nullptr || !store_->signedIn()) return;
    locked_ = true;
    if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
    if (QWidget* dialog = QApplication::activeModalWidget()) dialog->close();
    idle_.stop();
    store_->signOut(); // what is still to be written goes on with the record's own connection
    patients_->clear();
    audit_->clear();
    rooms_->setCurrentWidget(patients_);
    askSignIn(notice);
}

void MainWindow::setPreferences(const Preferences& preferences) {
    if (preferences == preferences_) return;
    const bool otherWords = preferences.language != preferences_.language;
    preferences_ = preferences;
    savePreferences(setup_.preferencesFile, preferences_);
    apply(preferences_);
    // Not from inside the page that asked for it.
    if (otherWords) QMetaObject::invokeMethod(this, &MainWindow::rebuild, Qt::QueuedConnection);
}

void MainWindow::rebuild() {
    const bool settings = house_ != nullptr && screen() == settings_;
    const int page = visitPage_ != nullptr ? visitPage_->pageIndex() : -1;
    visitPage_.reset();
    delete setUp_;
    delete stack_;
    stack_ = nullptr;
    house_ = nullptr, problem_ = nullptr, setUp_ = nullptr;
    build();
    needHouse();    // work that goes on beside reports to its pages
    stack_->show(); // a new part of a window that shows already stays hidden until told
    if (store_ == nullptr) return openDatabase();
    if (!store_->signedIn()) return askSignIn({});
    strip_->setUser(QString::fromStdString(user_->name));
    if (visit_.session != nullptr) showVisitPage(page);
    if (settings) return showSettings();
    if (visit_.session == nullptr) showPatients();
}

void MainWindow::showSettings() {
    if (!succeeded(settingsPage().show(*store_, preferences_, backupFolder(),
                                       materials_.get() ? &materials().knowledge.catalogue() : nullptr)))
        return;
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

void MainWindow::paintEvent(QPaintEvent* event) {
    QMainWindow::paintEvent(event);
    if (painted_) return;
    painted_ = true;
    // What comes next must not keep the first screen from showing.
    QMetaObject::invokeMethod(this, &MainWindow::awaitMaterials, Qt::QueuedConnection);
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
