#include "patients/restorepage.h"

#include "parts/button.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/scrolling.h"
#include "parts/textsize.h"
#include "patients/words.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rhizograph::app {

RestorePage::RestorePage(QWidget* parent) : QWidget(parent) {
    build();
}

void RestorePage::build() {
    auto* outer = new QVBoxLayout(scrolledInside(*this));
    outer->addStretch(1);
    auto* middle = new QHBoxLayout;
    outer->addLayout(middle);
    outer->addStretch(2);
    auto* card = new Card(this);
    card->setMinimumWidth(440);
    card->setMaximumWidth(grown(this, 640));
    middle->addStretch(1);
    middle->addWidget(card, 12);
    middle->addStretch(1);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(24, 24, 24, 24);
    column->setSpacing(10);
    const auto words = [&](const QString& text, int pixels, Label::Tone tone) {
        auto* label = new Label(text, pixels, QFont::Normal, tone, card);
        label->setWordWrap(true);
        column->addWidget(label);
        return label;
    };
    auto* title = new Label(tr("Restore a backup"), 22, QFont::DemiBold, Label::Tone::ink, card);
    title->setWordWrap(true);
    column->addWidget(title);
    where_ = words({}, 15, Label::Tone::quiet);
    choose_ = new PlainButton(tr("Choose the backup …"), PlainButton::Kind::action, card);
    column->addWidget(choose_, 0, Qt::AlignLeft);
    about_ = words({}, 16, Label::Tone::ink);
    column->addWidget(new Label(tr("Administrator"), 15, QFont::Medium, Label::Tone::quiet, card));
    user_ = new QComboBox(card);
    user_->setAccessibleName(tr("Administrator"));
    column->addWidget(user_);
    column->addWidget(new Label(tr("Passphrase of that day"), 15, QFont::Medium, Label::Tone::quiet, card));
    passphrase_ = new QLineEdit(card);
    passphrase_->setEchoMode(QLineEdit::Password);
    passphrase_->setAccessibleName(tr("Passphrase of that day"));
    column->addWidget(passphrase_);
    damaged_ = new PlainButton(tr("Also when it was damaged"), PlainButton::Kind::choice, card);
    auto* damaged = new FlowLayout(8); // its words may need two lines
    damaged->addWidget(damaged_);
    column->addLayout(damaged);
    problem_ = new Label({}, 15, QFont::Medium, Label::Tone::brick, card);
    problem_->setWordWrap(true);
    column->addWidget(problem_);
    auto* buttons = new FlowLayout(8);
    column->addLayout(buttons);
    restore_ = new PlainButton(tr("Restore"), PlainButton::Kind::primary, card);
    cancel_ = new PlainButton(tr("Cancel"), PlainButton::Kind::quiet, card);
    buttons->addWidget(restore_);
    buttons->addWidget(cancel_);
    connect(choose_, &PlainButton::clicked, this, &RestorePage::choose);
    connect(restore_, &PlainButton::clicked, this, &RestorePage::submit);
    connect(passphrase_, &QLineEdit::returnPressed, this, &RestorePage::submit);
    connect(cancel_, &PlainButton::clicked, this, &RestorePage::canceled);
}

void RestorePage::begin(const std::filesystem::path& clinic) {
    clinic_ = clinic;
    backup_.clear();
    where_->setText(
        tr("The record of the backup takes the place of %1. What stands there now is kept beside it under "
           "another name.")
            .arg(QString::fromStdString(clinic.string())));
    about_->setText(tr("No backup is chosen yet."));
    user_->clear();
    passphrase_->clear();
    damaged_->setChecked(false);
    problem_->setText({});
    setBusy(false);
    choose_->setFocus();
}

void RestorePage::choose() {
    const QString beside = QString::fromStdString((clinic_.parent_path() / "backups").string());
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Choose the backup"), beside,
                                     tr("Backups (*%1);;All files (*)").arg(QLatin1String(backupSuffix)));
    if (!file.isEmpty()) setBackup(file.toStdString());
}

void RestorePage::setBackup(const std::filesystem::path& file) {
    problem_->setText({});
    user_->clear();
    backup_.clear();
    const auto info = inspectBackup(file);
    if (!info) {
        about_->setText(QString::fromStdString(file.filename().string()));
        return refuse(reasonText(info.problems()));
    }
    backup_ = file;
    about_->setText(tr("%1, as of %2, %3")
                        .arg(QString::fromStdString(info->clinicName), dayText(info->madeAt.substr(0, 10)),
                             timeText(info->madeAt)));
    for (const std::string& name : info->users)
        user_->addItem(QString::fromStdString(name));
    passphrase_->setFocus();
}

void RestorePage::setBusy(bool busy) {
    restore_->setText(busy ? tr("Checking and restoring …") : tr("Restore"));
    for (QWidget* each :
         std::initializer_list<QWidget*>{choose_, user_, passphrase_, damaged_, restore_, cancel_})
        each->setEnabled(!busy);
}

void RestorePage::refuse(const QString& reason) {
    problem_->setText(reason);
}

void RestorePage::submit() {
    if (!restore_->isEnabled()) return;
    if (backup_.empty()) return refuse(tr("Choose the backup first."));
    problem_->setText({});
    emit restoreWanted({backup_, clinic_, user_->currentText().toStdString(),
                        passphrase_->text().toStdString(), damaged_->isChecked()});
    passphrase_->clear();
}

} // namespace rhizograph::app
