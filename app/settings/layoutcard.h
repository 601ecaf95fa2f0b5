#pragma once

#include "catalogue/catalogue.h"
#include "parts/card.h"
#include "settings/clinicsettings.h"

class QLineEdit;
class QVBoxLayout;

namespace rhizograph::app {

/// In which order the clinic takes the steps, and which items show at once.
class LayoutCard : public Card {
    Q_OBJECT

public:
    explicit LayoutCard(QWidget* parent = nullptr);
    /// The catalogue outlives the card.
    void show(const Catalogue& catalogue, const ClinicSettings& settings);
    /// What was chosen here, put into the settings.
    void store(ClinicSettings& settings) const;

private:
    void buildSteps(QVBoxLayout& column);
    void buildItems(QVBoxLayout& column);
    void fillSteps();
    void fillItems();
    void move(std::size_t place, int direction);
    void turn(const Item& item);
    [[nodiscard]] bool atOnce(const Item& item) const;

    const Catalogue* catalogue_ = nullptr;
    std::vector<StepId> order_;
    ItemPlaces places_;
    QVBoxLayout* steps_ = nullptr;
    QLineEdit* search_ = nullptr;
    QVBoxLayout* items_ = nullptr;
};

/// The catalogue's steps that hold items, in the clinic's order.
[[nodiscard]] std::vector<StepId> orderedSteps(const Catalogue& catalogue,
                                               const std::vector<std::string>& order);

} // namespace rhizograph::app
