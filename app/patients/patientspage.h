#pragma once

#include "record/store.h"

#include <QWidget>
#include <variant>

class QBoxLayout;
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
    void chooseNeedsALook(); ///< as its tab does

signals:
    void refreshWanted(); ///< another list or another word: refresh() is due
    void visitChosen(const rhizograph::VisitId& visit);
    void patientChosen(const rhizograph::PatientId& patient);
    void newPatientWanted(const QString& searched);
    void listWanted(); ///< a list of patients is to be brought in

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    using Target = std::variant<VisitId, PatientId>;
    void build();
    void buildTop(QBoxLayout& column);
    void buildTabs(QBoxLayout& column);
    void buildList(QBoxLayout& column);
    void arrangeHead();
    Outcome showVisits(Store& store, const std::vector<Visit>& visits, const QString& whenEmpty);
    Outcome showPatients(Store& store, const std::string& text);
    Outcome showPractice(Store& store);
    void countUp(const std::vector<Visit>& dayVisits, const std::vector<Visit>& unsignedVisits);
    void choose(int row);

    QLineEdit* search_ = nullptr;
    QButtonGroup* which_;
    QBoxLayout* top_ = nullptr;  ///< search and what makes patients
    QBoxLayout* head_ = nullptr; ///< tabs and what is to be said of the list
    Label* order_ = nullptr;
    VisitList* list_ = nullptr;
    PlainButton* newPatient_ = nullptr;
    PlainButton* fromList_ = nullptr;
    std::vector<Target> targets_; ///< one a row
};

} // namespace rhizograph::app
