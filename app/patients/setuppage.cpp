#include "patients/setuppage.h"

#include "parts/button.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/scrolling.h"
#include "parts/textsize.h"
#include "record/store.h"

#include <QLineEdit>
#include <QVBoxLayout>

namespace rhizograph::app {

SetupPage::SetupPage(const QString& file, QWidget* parent) : QWidget(parent) {
    auto* outer = new QVBoxLayout(scrolledInside(*this));
    outer->addStretch(1);
    auto* middle = new QHBoxLayout;
    outer->addLayout(middle);
    outer->addStretch(2);
    auto* card = new Card(this);
    card->setMinimumWidth(440);
    card->setMaximumWidth(grown(this, 560));
    middle->addStretch(1);
    middle->addWidget(card, 12);
    middle->addStretch(1);

    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(24, 24, 24, 24);
    column->setSpacing(8);
    column->addWidget(new Label(tr("A new clinic"), 22, QFont::DemiBold, Label::Tone::ink, card));
    auto* where = new Label(tr("The record will be kept, sealed, in %1").arg(file), 15, QFont::Normal,
                            Label::Tone::quiet, card);
    where->setWordWrap(true);
    column->addWidget(where);
    clinic_ = field(tr("Name of the clinic"), false);
    administrator_ = field(tr("Your name (administrator)"), false);
    passphrase_ = field(tr("Passphrase, at least %1 characters").arg(shortestPassphrase), true);
    again_ = field(tr("The same passphrase again"), true);
    auto* warning =
        new Label(tr("Nobody can open the record without a passphrase. Keep this one safe: it cannot be "
                     "recovered from the file."),
                  15, QFont::Normal, Label::Tone::warning, card);
    warning->setWordWrap(true);
    column->addWidget(warning);
    problem_ = new Label({}, 15, QFont::Medium, Label::Tone::brick, card);
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    button_ = new PlainButton(tr("Create the clinic"), PlainButton::Kind::primary, card);
    column->addSpacing(4);
    column->addWidget(button_);
    restore_ = new PlainButton(tr("Restore a backup instead …"), PlainButton::Kind::quiet, card);
    auto* instead = new FlowLayout(8); // its words may need two lines
    instead->addWidget(restore_);
    instead->setAlignment(restore_, Qt::AlignHCenter);
    column->addLayout(instead);
    connect(restore_, &PlainButton::clicked, this, &SetupPage::restoreWanted);
    connect(button_, &PlainButton::clicked, this, &SetupPage::submit);
    connect(again_, &QLineEdit::returnPressed, this, &SetupPage::submit);
    clinic_->setFocus();
}

QLineEdit* SetupPage::field(const QString& name, bool secret) {
    auto* card = findChild<Card*>();
    auto* label = new Label(name, 15, QFont::Medium, Label::Tone::quiet, card);
    auto* edit = new QLineEdit(card);
    edit->setAccessibleName(name);
    label->setWordWrap(true);
    label->setBuddy(edit);
    if (secret) edit->setEchoMode(QLineEdit::Password);
    card->layout()->addWidget(label);
    card->layout()->addWidget(edit);
    return edit;
}

void SetupPage::setBusy(bool busy) {
    button_->setText(busy ? tr("Creating …") : tr("Create the clinic"));
    button_->setEnabled(!busy);
    restore_->setEnabled(!busy);
}

void SetupPage::refuse(const QString& reason) {
    problem_->setText(reason);
    problem_->show();
}

void SetupPage::submit() {
    problem_->hide();
    const QString clinic = clinic_->text().simplified();
    const QString administrator = administrator_->text().simplified();
    if (clinic.isEmpty()) return refuse(tr("The clinic needs a name; it stands on every page."));
    if (administrator.isEmpty()) return refuse(tr("The administrator needs a name."));
    if (passphrase_->text() != again_->text()) return refuse(tr("The two passphrases differ."));
    if (passphrase_->text().size() < static_cast<int>(shortestPassphrase))
        return refuse(tr("The passphrase needs at least %1 characters.").arg(shortestPassphrase));
    emit createWanted(clinic, administrator, passphrase_->text());
}

} // namespace rhizograph::app
