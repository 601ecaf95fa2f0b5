#pragma once

#include "record/store.h"

#include <QDialog>

class QLineEdit;

namespace rhizograph::app {

class PlainButton;

/// Asks for the reason, and for the patient's name as a proof that this is the one.
class EraseDialog : public QDialog {
    Q_OBJECT

public:
    EraseDialog(const Patient& patient, int visits, QWidget* parent);
    [[nodiscard]] std::string reason() const;

private:
    void check();

    QString name_;
    QLineEdit* typed_;
    QLineEdit* reason_;
    PlainButton* erase_;
};

} // namespace rhizograph::app
