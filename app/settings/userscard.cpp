#include "settings/userscard.h"

#include "parts/button.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/textsize.h"
#include "patients/words.h"

#include <algorithm>
#include <array>
#include <QComboBox>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr std::array roles{Role::nurse, Role::clinician, Role::reviewer, Role::administrator};

QString wordOf(Role role) {
    switch (role) {
    case Role::nurse:
        return UsersCard::tr("Nurse");
    case Role::clinician:
        return UsersCard::tr("Clinician");
    case Role::reviewer:
        return UsersCard::tr("Reviewer");
    case Role::administrator:
        break;
    }
    return UsersCard::tr("Administrator");
}

} // namespace

UsersCard::UsersCard(QWidget* parent) : Card(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 20);
    column->setSpacing(8);
    column->addWidget(new Label(tr("People"), 17, QFont::DemiBold, Label::Tone::ink, this));
    rows_ = new QVBoxLayout;
    rows_->setSpacing(8);
    column->addLayout(rows_);
    column->addSpacing(8);
    column->addWidget(new Label(tr("Add someone"), 15, QFont::Medium, Label::Tone::quiet, this));
    auto* line = new FlowLayout(8);
    column->addLayout(line);
    name_ = new QLineEdit(this);
    name_->setPlaceholderText(tr("Name"));
    name_->setAccessibleName(tr("Name of the new user"));
    role_ = roleBox(Role::clinician);
    role_->setAccessibleName(tr("Role of the new user"));
    passphrase_ = new QLineEdit(this);
    passphrase_->setPlaceholderText(tr("First passphrase"));
    passphrase_->setAccessibleName(tr("First passphrase of the new user"));
    passphrase_->setEchoMode(QLineEdit::Password);
    add_ = new PlainButton(tr("Add"), PlainButton::Kind::action, this);
    name_->setMinimumWidth(grown(this, 150));
    passphrase_->setMinimumWidth(fontMetrics().horizontalAdvance(passphrase_->placeholderText()) +
                                 grown(this, 40));
    line->addWidget(name_);
    line->addWidget(role_);
    line->addWidget(passphrase_);
    line->addWidget(add_);
    problem_ = new Label({}, 15, QFont::Medium, Label::Tone::brick, this);
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    connect(add_, &PlainButton::clicked, this, &UsersCard::add);
}

QComboBox* UsersCard::roleBox(Role role) {
    auto* box = new QComboBox(this);
    for (const Role each : roles)
        box->addItem(wordOf(each), static_cast<int>(each));
    box->setCurrentIndex(box->findData(static_cast<int>(role)));
    int widest = 0;
    for (const Role each : roles)
        widest = std::max(widest, box->fontMetrics().horizontalAdvance(wordOf(each)));
    box->setMinimumWidth(widest + grown(this, 56));
    return box;
}

Outcome UsersCard::show(Store& store) {
    store_ = &store;
    auto users = store.users();
    if (!users) return users.problems();
    while (QLayoutItem* item = rows_->takeAt(0)) {
        if (QWidget* widget = item->widget()) widget->deleteLater();
        delete item;
    }
    for (const User& user : *users)
        addRow(user);
    return {};
}

void UsersCard::addRow(const User& user) {
    auto* row = new QWidget(this);
    auto* line = new FlowLayout(8);
    line->setContentsMargins(0, 0, 0, 0);
    row->setLayout(line);
    const QString person = QString::fromStdString(user.name);
    auto* who = new Label(user.active ? person : tr("%1 (may no longer sign in)").arg(person), 16,
                          QFont::Normal, user.active ? Label::Tone::ink : Label::Tone::quiet, row);
    who->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    line->addWidget(who);
    line->setAlignment(who, Qt::AlignVCenter);
    auto* role = roleBox(user.role);
    role->setAccessibleName(tr("Role of %1").arg(person));
    auto* active =
        new PlainButton(user.active ? tr("Stop") : tr("Let in again"), PlainButton::Kind::quiet, row);
    active->setAccessibleName(user.active ? tr("%1 may no longer sign in").arg(person)
                                          : tr("%1 may sign in again").arg(person));
    line->addWidget(role);
    line->addWidget(active);
    rows_->addWidget(row);
    connect(role, &QComboBox::activated, this, [this, user, role] {
        User changedUser = user;
        changedUser.role = static_cast<Role>(role->currentData().toInt());
        report(store_->updateUser(changedUser));
    });
    connect(active, &PlainButton::clicked, this, [this, user] {
        User changedUser = user;
        changedUser.active = !user.active;
        report(store_->updateUser(changedUser));
    });
}

void UsersCard::add() {
    if (work_.busy()) return;
    auto second = store_->duplicate();
    if (!second) return report(second.problems());
    // Deriving the key takes a noticeable time.
    const std::shared_ptr<Store> store = std::move(*second);
    name_->setFocus(); // a disabled button would hand the keyboard on, and the page would scroll there
    add_->setEnabled(false);
    work_.run(
        [store, name = name_->text().simplified().toStdString(),
         role = static_cast<Role>(role_->currentData().toInt()),
         secret = passphrase_->text().toStdString()]() -> Outcome {
            auto added = store->addUser(name, role, secret);
            return added ? Outcome{} : Outcome{added.problems()};
        },
        [this](const Outcome& outcome) {
            add_->setEnabled(true);
            if (outcome) {
                name_->clear();
                passphrase_->clear();
            }
            report(outcome);
        });
}

void UsersCard::report(const Outcome& outcome) {
    problem_->setText(outcome ? QString{} : reasonText(outcome.problems()));
    problem_->setVisible(!outcome);
    const Outcome shown = show(*store_);
    if (!shown) problem_->setText(reasonText(shown.problems()));
    emit changed();
}

} // namespace rhizograph::app
