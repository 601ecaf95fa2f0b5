#include "settings/layoutcard.h"

#include "language/language.h"
#include "parts/button.h"
#include "parts/label.h"

#include <algorithm>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr std::size_t mostItems = 8; ///< listed at a time; more are found by typing more

void clear(QVBoxLayout& column) {
    while (QLayoutItem* item = column.takeAt(0)) {
        if (QWidget* widget = item->widget()) widget->deleteLater();
        delete item;
    }
}

QString stepName(const Catalogue& catalogue, const StepId& id) {
    for (const Step& step : catalogue.steps())
        if (step.id == id) return medical(step.label);
    return {};
}

/// A line with its name at the left and buttons at the right.
QHBoxLayout* addLine(QVBoxLayout& column, const QString& name, QWidget* parent, QWidget** row) {
    *row = new QWidget(parent);
    auto* line = new QHBoxLayout(*row);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(8);
    auto* label = new Label(name, 16, QFont::Normal, Label::Tone::ink, *row);
    label->setWordWrap(true);
    line->addWidget(label, 1);
    column.addWidget(*row);
    return line;
}

} // namespace

std::vector<StepId> orderedSteps(const Catalogue& catalogue, const std::vector<std::string>& order) {
    std::vector<StepId> steps;
    const auto add = [&](const StepId& step) {
        const bool holds =
            std::ranges::any_of(catalogue.items(), [&](const Item& item) { return item.step == step; });
        if (holds && std::ranges::find(steps, step) == steps.end()) steps.push_back(step);
    };
    for (const std::string& id : order)
        add(StepId{id});
    for (const Step& step : catalogue.steps())
        add(step.id);
    return steps;
}

LayoutCard::LayoutCard(QWidget* parent) : Card(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 20);
    column->setSpacing(8);
    buildSteps(*column);
    column->addSpacing(8);
    buildItems(*column);
}

void LayoutCard::buildSteps(QVBoxLayout& column) {
    column.addWidget(new Label(tr("Order of the steps"), 17, QFont::DemiBold, Label::Tone::ink, this));
    steps_ = new QVBoxLayout;
    steps_->setSpacing(8);
    column.addLayout(steps_);
}

void LayoutCard::buildItems(QVBoxLayout& column) {
    column.addWidget(new Label(tr("Items that show at once"), 17, QFont::DemiBold, Label::Tone::ink, this));
    auto* words =
        new Label(tr("The others wait behind More. What was recorded, what a red sign asks for and what the "
                     "program suggests always comes forward."),
                  15, QFont::Normal, Label::Tone::quiet, this);
    words->setWordWrap(true);
    column.addWidget(words);
    search_ = new QLineEdit(this);
    search_->setPlaceholderText(tr("Find an item"));
    search_->setAccessibleName(tr("Find an item"));
    search_->setClearButtonEnabled(true);
    column.addWidget(search_);
    items_ = new QVBoxLayout;
    items_->setSpacing(8);
    column.addLayout(items_);
    connect(search_, &QLineEdit::textChanged, this, &LayoutCard::fillItems);
}

void LayoutCard::show(const Catalogue& catalogue, const ClinicSettings& settings) {
    catalogue_ = &catalogue;
    order_ = orderedSteps(catalogue, settings.stepOrder);
    places_ = settings.places;
    search_->clear();
    fillSteps();
    fillItems();
}

void LayoutCard::store(ClinicSettings& settings) const {
    if (catalogue_ == nullptr) return;
    settings.places = places_;
    settings.stepOrder.clear();
    if (order_ == orderedSteps(*catalogue_, {})) return; // the catalogue's own
    for (const StepId& step : order_)
        settings.stepOrder.push_back(step.text());
}

void LayoutCard::fillSteps() {
    clear(*steps_);
    for (std::size_t place = 0; place < order_.size(); ++place) {
        const QString name = stepName(*catalogue_, order_[place]);
        QWidget* row = nullptr;
        QHBoxLayout* line = addLine(*steps_, name, this, &row);
        for (const int direction : {-1, 1}) {
            auto* button = new PlainButton({}, PlainButton::Kind::quiet, row);
            button->setGlyph(direction < 0 ? Glyph::up : Glyph::down);
            button->setAccessibleName(direction < 0 ? tr("%1 earlier").arg(name) : tr("%1 later").arg(name));
            button->setEnabled(direction < 0 ? place > 0 : place + 1 < order_.size());
            line->addWidget(button);
            connect(button, &QAbstractButton::clicked, this,
                    [this, place, direction] { move(place, direction); });
        }
    }
}

void LayoutCard::move(std::size_t place, int direction) {
    const auto other = static_cast<std::size_t>(static_cast<std::ptrdiff_t>(place) + direction);
    if (other >= order_.size()) return;
    std::swap(order_[place], order_[other]);
    fillSteps();
}

bool LayoutCard::atOnce(const Item& item) const {
    return item.tier == Tier::core ? !places_.behindMore.contains(item.id) : places_.atOnce.contains(item.id);
}

void LayoutCard::fillItems() {
    clear(*items_);
    const QString wanted = search_->text().trimmed();
    if (wanted.isEmpty() || catalogue_ == nullptr) return;
    std::size_t shown = 0;
    for (const Item& item : catalogue_->items()) {
        if (!medical(item.label).contains(wanted, Qt::CaseInsensitive) || shown == mostItems) continue;
        ++shown;
        QWidget* row = nullptr;
        QHBoxLayout* line = addLine(*items_, medical(item.label), this, &row);
        auto* button = new PlainButton(atOnce(item) ? tr("Shows at once") : tr("Behind More"),
                                       PlainButton::Kind::choice, row);
        button->setCheckable(true);
        button->setChecked(atOnce(item));
        button->setAccessibleName(tr("%1 shows at once").arg(medical(item.label)));
        line->addWidget(button);
        connect(button, &QAbstractButton::clicked, this, [this, &item] { turn(item); });
    }
    if (shown == 0)
        items_->addWidget(
            new Label(tr("No item by this name."), 15, QFont::Normal, Label::Tone::quiet, this));
}

void LayoutCard::turn(const Item& item) {
    std::set<ItemId>& moved = item.tier == Tier::core ? places_.behindMore : places_.atOnce;
    if (moved.erase(item.id) == 0) moved.insert(item.id);
    fillItems();
}

} // namespace rhizograph::app
