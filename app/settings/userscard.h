#pragma once

#include "parts/card.h"
#include "patients/offthread.h"
#include "record/store.h"

#include <vector>

class QComboBox;
class QLineEdit;
class QVBoxLayout;

namespace rhizograph::app {

class Label;
class PlainButton;

/// Who may sign in, with role; an administrator adds people and lets them no longer in.
class UsersCard : public Card {
    Q_OBJECT

public:
    explicit UsersCard(QWidget* parent = nullptr);
    Outcome show(Store& store);

signals:
    void changed();

private:
    void addRow(const User& user);
    void add();
    void report(const Outcome& outcome);
    [[nodiscard]] QComboBox* roleBox(Role role);

    Store* store_ = nullptr;
    QVBoxLayout* rows_;
    QLineEdit* name_;
    QComboBox* role_;
    QLineEdit* passphrase_;
    Label* problem_;
    PlainButton* add_;
    OffThread work_; ///< derives the newcomer's key
};

} // namespace rhizograph::app
