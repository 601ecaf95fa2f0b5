#pragma once

#include "record/store.h"

#include <QWidget>

class QBoxLayout;

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
    void joinWanted(const rhizograph::Patient& patient); ///< a duplicate is to be joined to this one
    void partWanted(const rhizograph::Patient& duplicate);
    void handOutWanted(const rhizograph::Patient& patient);
    void eraseWanted(const rhizograph::Patient& patient);
    void back();

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    void showMore();
    void arrangeHead();

    Patient patient_;
    std::vector<Patient> joined_; ///< duplicates that were joined to it
    std::optional<User> user_;
    std::vector<Visit> visits_; ///< newest first
    QBoxLayout* head_;
    Label* name_;
    Label* about_;
    PlainButton* edit_;
    PlainButton* visit_;
    PlainButton* more_;
    VisitList* list_;
};

} // namespace rhizograph::app
