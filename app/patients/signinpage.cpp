#include "patients/signinpage.h"

#include "parts/button.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/scrolling.h"
#include "parts/textsize.h"

#include <algorithm>
#include <QButtonGroup>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rhizograph::app {

SignInPage::SignInPage(QWidget* parent) : QWidget(parent), group_(new QButtonGroup(this)) {
    auto* outer = new QVBoxLayout(scrolledInside(*this));
    outer->addStretch(1);
    auto* middle = new QHBoxLayout;
    outer->addLayout(middle);
    outer->addStretch(2);
    auto* card = new Card(this);
    card->setMinimumWidth(440);
    card->setMaximumWidth(grown(this, 560));
    middle->addStretch(1);
    middle->addWidget(card, 3);
    middle->addStretch(1);

    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(24, 24, 24, 24);
    column->setSpacing(12);
    clinic_ = new Label({}, 22, QFont::DemiBold, Label::Tone::ink, card);
    clinic_->setWordWrap(true);
    notice_ = new Label({}, 16, QFont::Normal, Label::Tone::quiet, card);
    notice_->setWordWrap(true);
    column->addWidget(clinic_);
    column->addWidget(notice_);

    // Side by side, so that a practice of many still fits; the page scrolls where it does not.
    names_ = new FlowLayout(8);
    column->addLayout(names_);

    auto* ask = new Label(tr("Passphrase"), 15, QFont::Medium, Label::Tone::quiet, card);
    column->addWidget(ask);
    passphrase_ = new QLineEdit(card);
    passphrase_->setEchoMode(QLineEdit::Password);
    passphrase_->setAccessibleName(tr("Passphrase"));
    ask->setBuddy(passphrase_);
    column->addWidget(passphrase_);
    problem_ = new Label({}, 15, QFont::Medium, Label::Tone::brick, card);
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    button_ = new PlainButton(tr("Sign in"), PlainButton::Kind::primary, card);
    column->addWidget(button_);
    connect(button_, &PlainButton::clicked, this, &SignInPage::submit);
    connect(passphrase_, &QLineEdit::returnPressed, this, &SignInPage::submit);
    connect(group_, &QButtonGroup::idClicked, this, [this] { passphrase_->setFocus(); });
}

void SignInPage::setUsers(const QString& clinic, const std::vector<User>& users, const UserId& chosen) {
    clinic_->setText(clinic);
    users_.clear();
    for (QAbstractButton* button : group_->buttons())
        delete button;
    for (const User& user : users) {
        if (!user.active) continue;
        auto* button = new PlainButton(QString::fromStdString(user.name), PlainButton::Kind::choice, this);
        button->setAccessibleDescription(QString::fromStdString(std::string{name(user.role)}));
        group_->addButton(button, static_cast<int>(users_.size()));
        names_->addWidget(button);
        users_.push_back(user);
        if (user.id == chosen) button->setChecked(true);
    }
    if (group_->checkedButton() == nullptr && !users_.empty()) group_->button(0)->setChecked(true);
    passphrase_->clear();
    problem_->hide();
    passphrase_->setFocus();
}

void SignInPage::setNotice(const QString& text) {
    notice_->setText(text);
    notice_->setVisible(!text.isEmpty());
}

void SignInPage::setBusy(bool busy) {
    button_->setText(busy ? tr("Opening …") : tr("Sign in"));
    button_->setEnabled(!busy);
    passphrase_->setEnabled(!busy);
    for (QAbstractButton* each : group_->buttons())
        each->setEnabled(!busy);
}

void SignInPage::refuse(const QString& reason) {
    problem_->setText(reason);
    problem_->show();
    passphrase_->clear();
    passphrase_->setFocus();
}

void SignInPage::submit() {
    const int index = group_->checkedId();
    if (index < 0 || !button_->isEnabled()) return;
    if (passphrase_->text().isEmpty()) {
        refuse(tr("Type your passphrase."));
        return;
    }
    problem_->hide();
    emit signInWanted(users_.at(static_cast<std::size_t>(index)).id, passphrase_->text());
}

} // namespace rhizograph::app
