#pragma once

#include <QWidget>

class QLineEdit;

namespace rhizograph::app {

class Label;
class PlainButton;

/// The first run: name of the clinic, its administrator, a passphrase, typed twice.
class SetupPage : public QWidget {
    Q_OBJECT

public:
    explicit SetupPage(const QString& file, QWidget* parent = nullptr);

    void setBusy(bool busy);
    void refuse(const QString& reason);

signals:
    void createWanted(const QString& clinic, const QString& administrator, const QString& passphrase);
    void restoreWanted();

private:
    void submit();
    QLineEdit* field(const QString& name, bool secret);

    QLineEdit* clinic_;
    QLineEdit* administrator_;
    QLineEdit* passphrase_;
    QLineEdit* again_;
    Label* problem_;
    PlainButton* button_;
    PlainButton* restore_;
};

} // namespace rhizograph::app
