#pragma once

#include "parts/card.h"
#include "reasoning/knowledge.h"
#include "record/store.h"

#include <vector>

class QLineEdit;
class QVBoxLayout;

namespace rhizograph::app {

class Label;
class PlainButton;

/// What happened to a patient between the visits, as a list that can be written: injections, operations, the
/// start of a therapy, a follow-up that is awaited.
class EventsCard : public Card {
    Q_OBJECT

public:
    /// Both outlive the card.
    EventsCard(const Knowledge& knowledge, Store& store, PatientId patient, QWidget* parent = nullptr);

    /// Reads the list anew; the reason where that fails.
    Outcome refresh();
    [[nodiscard]] const std::vector<PatientEvent>& events() const { return events_; }
    /// The label of a kind; its id where the knowledge does not know it any more.
    [[nodiscard]] QString kindWords(const std::string& kind) const;
    /// "Injection: L5, left"
    [[nodiscard]] QString wordsOf(const PatientEvent& event) const;
    /// Puts an event into the form to be corrected.
    void edit(const PatientEventId& event);
    [[nodiscard]] QLineEdit& day() { return *day_; }
    [[nodiscard]] PlainButton& kindButton() { return *kind_; }
    void chooseKind(const std::string& kind);
    [[nodiscard]] QLineEdit& words() { return *words_; }
    [[nodiscard]] QString problem() const;
    void save();

signals:
    void changed();

private:
    void buildForm(QVBoxLayout& column);
    void addRow(const PatientEvent& event);
    void askKind();
    void begin(); ///< an empty form
    void remove(const PatientEventId& event);
    void report(const Outcome& outcome);

    const Knowledge& knowledge_;
    Store& store_;
    PatientId patient_;
    std::vector<PatientEvent> events_;
    PatientEventId edited_; ///< in the form; empty: a new one
    QVBoxLayout* rows_ = nullptr;
    Label* formTitle_ = nullptr;
    QLineEdit* day_ = nullptr;
    PlainButton* kind_ = nullptr; ///< opens the list of kinds
    std::string chosenKind_;
    QLineEdit* words_ = nullptr;
    PlainButton* save_ = nullptr;
    PlainButton* cancel_ = nullptr;
    Label* problem_ = nullptr;
};

} // namespace rhizograph::app
