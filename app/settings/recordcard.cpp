#include "settings/recordcard.h"

#include "parts/button.h"
#include "parts/flow.h"
#include "parts/segmented.h"
#include "patients/words.h"

#include <algorithm>
#include <array>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

namespace fs = std::filesystem;

constexpr std::array keptChoices{0, 7, 14, 30, 90};

/// The newest backup of this clinic in the folder, in words.
QString newestIn(const fs::path& folder, const std::string& clinicName) {
    std::optional<BackupInfo> newest;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder, error)) {
        if (entry.path().extension() != backupSuffix) continue;
        auto info = inspectBackup(entry.path());
        if (info && info->clinicName == clinicName && (!newest || newest->madeAt < info->madeAt))
            newest = std::move(*info);
    }
    if (!newest) return RecordCard::tr("There is no backup in this folder yet.");
    return RecordCard::tr("The newest is of %1, %2.")
        .arg(dayText(newest->madeAt.substr(0, 10)), timeText(newest->madeAt));
}

} // namespace

RecordCard::RecordCard(QWidget* parent) : Card(parent) {
    build();
}

void RecordCard::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 20);
    column->setSpacing(8);
    const auto words = [&](const QString& text, Label::Tone tone) {
        auto* label = new Label(text, 15, QFont::Medium, tone, this);
        label->setWordWrap(true);
        column->addWidget(label);
        return label;
    };
    column->addWidget(new Label(tr("Record and backups"), 17, QFont::DemiBold, Label::Tone::ink, this));
    where_ = words({}, Label::Tone::quiet);
    newest_ = words({}, Label::Tone::quiet);
    keptName_ = words(tr("Daily backups to keep"), Label::Tone::quiet);
    QStringList choices{tr("Make none")};
    for (std::size_t i = 1; i < keptChoices.size(); ++i)
        choices << QString::number(keptChoices.at(i));
    kept_ = new Segmented(tr("Daily backups to keep"), choices, this);
    column->addWidget(kept_, 0, Qt::AlignLeft);
    news_ = words({}, Label::Tone::quiet);
    auto* buttons = new FlowLayout(8);
    column->addLayout(buttons);
    const auto button = [&](const QString& text, PlainButton::Kind kind) {
        auto* out = new PlainButton(text, kind, this);
        buttons->addWidget(out);
        return out;
    };
    backUp_ = button(tr("Back up now …"), PlainButton::Kind::action);
    folder_ = button(tr("Another folder …"), PlainButton::Kind::quiet);
    verify_ = button(tr("Verify the record"), PlainButton::Kind::quiet);
    audit_ = button(tr("Audit"), PlainButton::Kind::quiet);
    restore_ = button(tr("Restore a backup …"), PlainButton::Kind::quiet);
    connect(kept_, &Segmented::chosenChanged, this,
            [this](int index) { emit backupsKeptChosen(keptChoices.at(static_cast<std::size_t>(index))); });
    connect(backUp_, &PlainButton::clicked, this, &RecordCard::backUpWanted);
    connect(folder_, &PlainButton::clicked, this, &RecordCard::folderWanted);
    connect(verify_, &PlainButton::clicked, this, &RecordCard::verifyWanted);
    connect(audit_, &PlainButton::clicked, this, &RecordCard::auditWanted);
    connect(restore_, &PlainButton::clicked, this, &RecordCard::restoreWanted);
}

void RecordCard::show(Store& store, const ClinicSettings& clinic, const fs::path& folder) {
    const auto user = store.signedIn();
    const auto may = [&](Permission permission) { return user && allows(user->role, permission); };
    where_->setText(
        tr("Backups are encrypted and open only with a passphrase of their day. Each day’s goes to %1")
            .arg(QString::fromStdString(folder.string())));
    const auto name = store.clinicName();
    newest_->setText(newestIn(folder, name ? *name : std::string{}));
    const auto nearest = std::min_element(keptChoices.begin(), keptChoices.end(), [&](int a, int b) {
        return std::abs(a - clinic.backupsKept) < std::abs(b - clinic.backupsKept);
    });
    {
        const QSignalBlocker quiet(kept_);
        kept_->choose(static_cast<int>(nearest - keptChoices.begin()));
    }
    for (QWidget* each : std::initializer_list<QWidget*>{kept_, keptName_})
        each->setVisible(may(Permission::changeSettings));
    backUp_->setVisible(may(Permission::backUp));
    folder_->setVisible(may(Permission::backUp));
    verify_->setVisible(may(Permission::readAudit));
    audit_->setVisible(may(Permission::readAudit));
    restore_->setVisible(may(Permission::restore));
}

void RecordCard::say(const QString& text, bool good) {
    news_->setTone(good ? Label::Tone::spruce : Label::Tone::brick);
    news_->setText(text);
}

void RecordCard::setBusy(const QString& doing) {
    for (PlainButton* each : {backUp_, verify_, restore_})
        each->setEnabled(false);
    news_->setTone(Label::Tone::quiet);
    news_->setText(doing);
}

void RecordCard::setIdle() {
    for (PlainButton* each : {backUp_, verify_, restore_})
        each->setEnabled(true);
}

} // namespace rhizograph::app
