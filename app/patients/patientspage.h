#pragma once

#include "record/store.h"

#include <QWidget>
#include <variant>

class QButtonGroup;
class QLineEdit;
class QTimer;

namespace rhizograph::app {

class Label;
class PlainButton;
class VisitList;

/// Search as you type, the visits of the day with where each stands, and who in the clinic needs a look.
class PatientsPage : public QWidget {
    Q_OBJECT

public:
    explicit PatientsPage(QWidget* parent = nullptr);

    /// Reads the lists anew. The reason when the record cannot be read; what showed before then stays.
    Outcome refresh(Store& store);
    void clear(); ///< forgets every name, for the lock
    [[nodiscard]] QLineEdit& searchField() { return *search_; }
    [[nodiscard]] VisitList& list() { return *list_; }

signals:
    void refreshWanted(); ///< another list or another word: refresh() is due
    void visitChosen(const rhizograph::VisitId& visit);
    void patientChosen(const rhizograph::PatientId& patient);
    void newPatientWanted(const QString& searched);
    void listWanted(); ///< a list of patients is to be brought in

private:
    using Target = std::variant<VisitId, PatientId>;
    void build();
    Outcome showVisits(Store& store, const std::vector<Visit>& visits, const QString& whenEmpty);
    Outcome showPatients(Store& store, const std::string& text);
    Outcome showPractice(Store& store);
    void countUp(const std::vector<Visit>& dayVisits, const std::vector<Visit>& unsignedVisits);
    void choose(int row);

    QLineEdit* search_;
    QButtonGroup* which_;
    Label* order_;
    VisitList* list_;
    PlainButton* newPatient_;
    PlainButton* fromList_;
    std::vector<Target> targets_; ///< one a row
};

} // namespace rhizograph::app
