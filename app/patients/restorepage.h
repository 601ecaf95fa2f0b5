#pragma once

#include "record/store.h"

#include <QWidget>

class QComboBox;
class QLineEdit;

namespace rhizograph::app {

class Label;
class PlainButton;

/// Which backup is to take the place of the clinic, and who says so.
class RestorePage : public QWidget {
    Q_OBJECT

public:
    explicit RestorePage(QWidget* parent = nullptr);

    /// Starts anew for the clinic that stands, or is to stand, in this file.
    void begin(const std::filesystem::path& clinic);
    /// Reads what the backup says of itself; a reason is shown when it is none.
    void setBackup(const std::filesystem::path& file);
    void setBusy(bool busy);
    void refuse(const QString& reason);

signals:
    void restoreWanted(const rhizograph::RestoreOrder& order);
    void canceled();

private:
    void build();
    void choose();
    void submit();

    std::filesystem::path clinic_;
    std::filesystem::path backup_;
    Label* where_;
    Label* about_;
    Label* problem_;
    QComboBox* user_;
    QLineEdit* passphrase_;
    PlainButton* damaged_; ///< checked: a record that was damaged already is taken too
    PlainButton* choose_;
    PlainButton* restore_;
    PlainButton* cancel_;
};

} // namespace rhizograph::app
