#include "patients/patientspage.h"
#include "patients/restorepage.h"
#include "patients/signinpage.h"
#include "patients/words.h"
#include "settings/auditpage.h"
#include "settings/recordcard.h"
#include "settings/settingspage.h"
#include "window/mainwindow.h"
#include "window/problempage.h"

#include <QDateTime>
#include <QFileDialog>
#include <QLineEdit>
#include <QLocale>
#include <QStackedWidget>
#include <utility>

namespace rhizograph::app {
namespace {

constexpr std::chrono::hours betweenLooks{1};

QString placesText(std::size_t places) {
    return places == 1 ? MainWindow::tr("1 place") : MainWindow::tr("%1 places").arg(places);
}

/// The first places of damage, a line each.
QString damageList(const Verification& found) {
    constexpr std::size_t most = 6;
    QStringList lines;
    for (std::size_t i = 0; i < std::min(most, found.damage.size()); ++i) {
        const Damage& each = found.damage[i];
        const QString visit =
            each.visit.empty()
                ? QString{}
                : MainWindow::tr("Visit %1: ").arg(QString::fromStdString(each.visit.text().substr(0, 8)));
        lines << visit + QString::fromStdString(each.what);
    }
    if (found.damage.size() > most) lines << QStringLiteral("…");
    return lines.join('\n');
}

QString sizeText(std::uintmax_t bytes) {
    return QLocale().formattedDataSize(static_cast<qint64>(bytes), 1, QLocale::DataSizeTraditionalFormat);
}

} // namespace

void MainWindow::connectUpkeep() {
    daily_.setSingleShot(true);
    connect(&daily_, &QTimer::timeout, this, &MainWindow::backUpToday, Qt::UniqueConnection);
    RecordCard& card = settings_->recordCard();
    connect(&card, &RecordCard::backUpWanted, this, &MainWindow::backUpNow);
    connect(&card, &RecordCard::folderWanted, this, &MainWindow::chooseBackupFolder);
    connect(&card, &RecordCard::verifyWanted, this, &MainWindow::verifyRecord);
    connect(&card, &RecordCard::auditWanted, this, &MainWindow::showAudit);
    connect(&card, &RecordCard::restoreWanted, this, &MainWindow::showRestore);
    connect(audit_, &AuditPage::back, this, &MainWindow::showSettings);
    connect(restore_, &RestorePage::restoreWanted, this, &MainWindow::restoreClinic);
    connect(restore_, &RestorePage::canceled, this, &MainWindow::openDatabase);
}

std::filesystem::path MainWindow::backupFolder() const {
    if (!preferences_.backupFolder.isEmpty()) return preferences_.backupFolder.toStdString();
    return std::filesystem::absolute(setup_.database).parent_path() / "backups";
}

/// Does something slow with a connection of its own, so that nobody waits for it.
template <class T>
void MainWindow::besides(const QString& doing, std::function<Result<T>(Store&)> work,
                         std::function<void(const Result<T>&)> done) {
    auto second = store_->duplicate();
    if (!second) return done(second.problems());
    settings_->recordCard().setBusy(doing);
    auto result = std::make_shared<std::optional<Result<T>>>();
    upkeep_.run(
        [result, work = std::move(work), store = std::shared_ptr<Store>(std::move(second).value())] {
            result->emplace(work(*store));
            return Outcome{};
        },
        [this, result, done = std::move(done)](const Outcome&) {
            settings_->recordCard().setIdle();
            done(**result);
        });
}

void MainWindow::tellBackup(const Backup& made) {
    const Verification& found = made.verification;
    if (!found.sound()) {
        const QString text =
            tr("The backup %1 is whole, but the record it holds is damaged in %2. Older backups are "
               "kept; do not remove them.\n%3")
                .arg(QString::fromStdString(made.file.filename().string()), placesText(found.damage.size()),
                     damageList(found));
        settings_->recordCard().say(text, false);
        if (locked_)
            untold_ = text;
        else
            tell(text);
        return;
    }
    QString text = tr("Backed up: %1, %2, read back and verified (%3 visits).")
                       .arg(QString::fromStdString(made.file.filename().string()), sizeText(made.bytes))
                       .arg(found.visits);
    if (!made.noted) text += QLatin1Char(' ') + tr("The audit could not be written.");
    if (store_->signedIn()) settings_->recordCard().show(*store_, clinic_, backupFolder());
    settings_->recordCard().say(text, true);
}

void MainWindow::backUpToday() {
    daily_.start(betweenLooks);
    if (store_ == nullptr || !store_->signedIn() || upkeep_.busy() || clinic_.backupsKept == 0) return;
    if (!allows(user_->role, Permission::backUp)) return;
    const auto work = [folder = backupFolder(), keep = clinic_.backupsKept](Store& store) {
        return store.backUpDaily(folder, keep);
    };
    besides<DailyBackup>(
        tr("Today’s backup is being made …"), work, [this](const Result<DailyBackup>& round) {
            settings_->recordCard().say({}, true);
            if (round) {
                lastUntold_.clear();
                if (round->made) tellBackup(*round->made);
                return;
            }
            const QString text = tr("Today’s backup was not made.\n%1").arg(reasonText(round.problems()));
            settings_->recordCard().say(text, false);
            if (std::exchange(lastUntold_, text) == text) return;
            if (locked_)
                untold_ = text;
            else
                tell(text);
        });
}

void MainWindow::backUpNow() {
    if (upkeep_.busy()) return;
    const QString stamp = QDateTime::currentDateTime().toString("yyyyMMdd-HHmm");
    const QString name = QStringLiteral("clinic-%1%2").arg(stamp, QLatin1String(backupSuffix));
    const QString file = QFileDialog::getSaveFileName(this, tr("Back up the clinic"), name,
                                                      tr("Backups (*%1)").arg(QLatin1String(backupSuffix)));
    if (file.isEmpty() || !store_->signedIn()) return;
    backUpTo(file.toStdString());
}

void MainWindow::backUpTo(const std::filesystem::path& file) {
    const auto work = [file](Store& store) { return store.backUp(file); };
    besides<Backup>(tr("Being backed up …"), work, [this](const Result<Backup>& made) {
        if (made)
            tellBackup(*made);
        else
            settings_->recordCard().say(tr("Not backed up. %1").arg(reasonText(made.problems())), false);
    });
}

void MainWindow::chooseBackupFolder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder for the daily backups"),
                                                             QString::fromStdString(backupFolder().string()));
    if (folder.isEmpty() || !store_->signedIn()) return;
    Preferences changed = preferences_;
    changed.backupFolder = folder;
    setPreferences(changed);
    settings_->recordCard().show(*store_, clinic_, backupFolder());
    if (!upkeep_.busy()) backUpToday();
}

void MainWindow::verifyRecord() {
    if (upkeep_.busy()) return;
    const auto work = [](Store& store) { return store.verify(); };
    besides<Verification>(
        tr("Every entry is being recomputed …"), work, [this](const Result<Verification>& found) {
            RecordCard& card = settings_->recordCard();
            if (!found) return card.say(reasonText(found.problems()), false);
            const QString counts = tr("%1 visits, %2 entries, %3 lines of audit")
                                       .arg(found->visits)
                                       .arg(found->events)
                                       .arg(found->auditEntries);
            if (found->sound()) return card.say(tr("The record is as it was written: %1.").arg(counts), true);
            card.say(tr("Damaged in %1 (%2). Keep the older backups.\n%3")
                         .arg(placesText(found->damage.size()), counts, damageList(*found)),
                     false);
        });
}

void MainWindow::showAudit() {
    if (!succeeded(audit_->show(*store_))) return;
    rooms_->setCurrentWidget(audit_);
    audit_->searchField().setFocus();
}

/// Whoever restores closes the clinic first: nothing may be open that is to be replaced.
void MainWindow::showRestore() {
    if (work_.busy()) return;
    if (upkeep_.busy())
        return tell(tr("A backup is being made or the record verified. Wait until it is done."));
    if (!closeVisit()) return;
    needHouse();
    idle_.stop();
    daily_.stop();
    store_.reset();
    user_.reset();
    locked_ = false;
    patients_->clear();
    audit_->clear();
    restore_->begin(std::filesystem::absolute(setup_.database));
    stack_->setCurrentWidget(restore_);
}

void MainWindow::restoreClinic(const RestoreOrder& order) {
    if (work_.busy()) return;
    restore_->setBusy(true);
    auto restored = std::make_shared<std::optional<Restored>>();
    const auto work = [restored, order, options = setup_.clinic]() -> Outcome {
        auto result = restoreBackup(order, options);
        if (!result) return result.problems();
        *restored = std::move(result).value();
        return {};
    };
    work_.run(work, [this, restored](const Outcome& outcome) {
        restore_->setBusy(false);
        if (!outcome) return restore_->refuse(reasonText(outcome.problems()));
        openDatabase();
        const Restored& done = **restored;
        QString text = tr("Restored as of %1, %2: %3 visits.")
                           .arg(dayText(done.info.madeAt.substr(0, 10)), timeText(done.info.madeAt))
                           .arg(done.verification.visits);
        if (done.keptAside)
            text += QLatin1Char(' ') + tr("What stood here before is kept as %1.")
                                           .arg(QString::fromStdString(done.keptAside->filename().string()));
        signIn_->setNotice(text);
    });
}

} // namespace rhizograph::app
