#pragma once

#include "record/model.h"

#include <QWidget>
#include <vector>

class QButtonGroup;
class QLineEdit;

namespace rhizograph::app {

class FlowLayout;
class Label;
class PlainButton;

/// Pick your name, type your passphrase. Says nothing of patients but that a visit is kept open.
class SignInPage : public QWidget {
    Q_OBJECT

public:
    explicit SignInPage(QWidget* parent = nullptr);

    /// Who may sign in; `chosen` is picked already when it is among them.
    void setUsers(const QString& clinic, const std::vector<User>& users, const UserId& chosen = {});
    /// One line under the clinic's name: "Locked", "A visit is kept open".
    void setNotice(const QString& text);
    /// While the passphrase is tried nothing can be pressed.
    void setBusy(bool busy);
    /// Why signing in failed; the passphrase is asked for again.
    void refuse(const QString& reason);

signals:
    void signInWanted(const rhizograph::UserId& user, const QString& passphrase);

private:
    void submit();
    void choose(const UserId& user);

    Label* clinic_;
    Label* notice_;
    FlowLayout* names_;
    QButtonGroup* group_;
    QLineEdit* passphrase_;
    Label* problem_;
    PlainButton* button_;
    std::vector<User> users_;
};

} // namespace rhizograph::app
