#pragma once

#include "record/store.h"

#include <QWidget>

namespace rhizograph::app {

class Label;
class PlainButton;
class VisitList;

/// One patient: who it is and every visit, the newest first.
class PatientPage : public QWidget {
    Q_OBJECT

public:
    explicit PatientPage(QWidget* parent = nullptr);

    /// The reason when the record cannot be read; the page then shows what it showed before.
    Outcome show(Store& store, const PatientId& patient);
    [[nodiscard]] const Patient& patient() const { return patient_; }

signals:
    void visitChosen(const rhizograph::VisitId& visit);
    void newVisitWanted(const rhizograph::PatientId& patient);
    void editWanted(const rhizograph::Patient& patient);
    void back();

private:
    Patient patient_;
    std::vector<Visit> visits_; ///< newest first
    Label* name_;
    Label* about_;
    PlainButton* edit_;
    PlainButton* visit_;
    VisitList* list_;
};

} // namespace rhizograph::app
