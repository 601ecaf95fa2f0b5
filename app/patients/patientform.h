#pragma once

#include "record/model.h"

#include <optional>
#include <QWidget>

class QLineEdit;
class QPlainTextEdit;

namespace rhizograph::app {

class Label;
class PlainButton;
class Segmented;

/// Identity of a new patient, or of one to be corrected.
class PatientForm : public QWidget {
    Q_OBJECT

public:
    explicit PatientForm(QWidget* parent = nullptr);

    /// Empty fields for a new patient; `name` is what was searched for in vain.
    void begin(const QString& name = {});
    void edit(const Patient& patient);
    void refuse(const QString& reason);

signals:
    /// `visit`: a visit is to begin at once. `id` is empty for a new patient.
    void saveWanted(const rhizograph::PatientId& id, const rhizograph::Identity& identity, bool visit);
    void canceled();

private:
    void fill(const Identity& identity);
    [[nodiscard]] std::optional<Identity> checked();
    void submit(bool visit);
    QLineEdit* field(const QString& name, const QString& hint);

    PatientId id_;
    Label* title_;
    QLineEdit* name_;
    QLineEdit* record_;
    QLineEdit* birth_;
    Segmented* sex_;
    QLineEdit* contact_;
    QLineEdit* notes_;
    Label* problem_;
    PlainButton* save_;
    PlainButton* saveAndVisit_;
};

} // namespace rhizograph::app
