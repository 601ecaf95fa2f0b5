#pragma once

#include "record/store.h"

#include <QDialog>

class QLineEdit;
class QListWidget;

namespace rhizograph::app {

class Label;
class PlainButton;

/// Which other entry is the same person; says what joining will do before it is done.
class JoinDialog : public QDialog {
    Q_OBJECT

public:
    JoinDialog(Store& store, const Patient& patient, QWidget* parent);

    [[nodiscard]] QLineEdit& searchField() { return *search_; }
    [[nodiscard]] QListWidget& list() { return *list_; }
    /// The entry chosen; valid after the dialog was accepted.
    [[nodiscard]] const PatientId& chosen() const { return chosen_; }

private:
    void build();
    void search();
    void choose(int row);

    Store& store_;
    Patient patient_;
    std::vector<Patient> found_;
    PatientId chosen_;
    QLineEdit* search_;
    QListWidget* list_;
    Label* consequence_;
    PlainButton* join_;
};

} // namespace rhizograph::app
