#include "reasoning/discretized.h"
#include "reasoning/factor.h"

#include <algorithm>
#include <cmath>

namespace rhizograph {

namespace {

/// A factor of one reading of one item on one side (or none).
class SingleFactor : public Factor {
public:
    SingleFactor(const Item& item, Side side, std::vector<double> bins, Depends depends)
        : Factor({{{{item.id, side}}, bins.empty() ? item.scale.values.size() : bins.size() + 1}}, depends),
          scale_(item.scale), bins_(std::move(bins)) {}

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), scale_, bins_);
    }

private:
    Scale scale_;
    std::vector<double> bins_;
};

/// Base of factors that look at the worst weighted loss of some movements: on the item's side, or on the
/// worse side for an item without one.
class WorstLossFactor : public SingleFactor {
public:
    WorstLossFactor(const Grid& grid, const Item& item, Side side, MovementWeights movements,
                    std::vector<double> bins = {})
        : SingleFactor(item, side, std::move(bins), {.motor = true}), grid_(grid),
          movements_(std::move(movements)) {
        if (side == Side::none)
            sides_ = {0, 1};
        else
            sides_ = {sideIndex(side)};
    }

    [[nodiscard]] bool mirrors() const override { return true; }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        double worst = 0;
        for (const std::size_t side : sides_)
            for (const auto& [target, weight] : movements_)
                worst = std::max(worst, weight * grid_.movementLoss(h.block, side, target, h.motor));
        out.push_back(worst);
    }

private:
    const Grid& grid_;
    MovementWeights movements_;
    std::vector<std::size_t> sides_;
};

class AbilityFactor : public WorstLossFactor {
public:
    AbilityFactor(const Model& model, const Grid& grid, const Item& item, Side side,
                  const AbilityModel& ability)
        : WorstLossFactor(grid, item, side, ability.movements), ability_(ability),
          epsilon_(model.epsilon.at("ability")) {}

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        if (values[0] == kUnread) return 1;
        const auto value = static_cast<std::size_t>(values[0]);
        const double a = logistic((features[0] - ability_.mid) / ability_.slope);
        const double u = logistic((features[0] - ability_.unable) / ability_.slope);
        const std::array<double, 3> lost{0, 1 - u, u};
        return mixed((1 - a) * ability_.base[value] + a * lost[value], epsilon_, 3);
    }

private:
    const AbilityModel& ability_;
    double epsilon_;
};

class YesByLossFactor : public WorstLossFactor {
public:
    YesByLossFactor(const Model& model, const Grid& grid, const Item& item, Side side,
                    const YesByLossModel& yes)
        : WorstLossFactor(grid, item, side, yes.movements), blocks_(grid.blocks()), yes_(yes), side_(side),
          epsilon_(model.epsilon.at("ability")) {
        for (const SiteModel& site : model.sites) {
            const auto low = yes.lowBySite.find(site.id.text());
            lows_.push_back(low == yes.lowBySite.end() ? yes.low : low->second);
        }
    }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        WorstLossFactor::features(h, out);
        const Block& block = blocks_[h.block];
        const bool here = side_ == Side::none || block.side == side_ || block.side == Side::both;
        out.push_back(here ? lows_[block.site] : yes_.low);
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        if (values[0] == kUnread) return 1;
        const double c0 = logistic(-yes_.mid / yes_.slope);
        const double c = (logistic((features[0] - yes_.mid) / yes_.slope) - c0) / (1 - c0);
        const double p = features[1] + (yes_.high - features[1]) * c;
        return mixed(values[0] == 1 ? p : 1 - p, epsilon_, 2);
    }

private:
    const std::vector<Block>& blocks_;
    std::vector<double> lows_; ///< by site
    const YesByLossModel& yes_;
    Side side_;
    double epsilon_;
};

class CountFactor : public WorstLossFactor {
public:
    CountFactor(const Model& model, const Grid& grid, const Item& item, Side side, const CountModel& count)
        : WorstLossFactor(grid, item, side, {{count.movement, 1.0}}, count.bins), count_(count),
          epsilon_(model.epsilon.at("count")) {}

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        if (values[0] == kUnread) return 1;
        std::vector<std::pair<double, double>> points;
        for (const auto& [loss, row] : count_.rows)
            points.emplace_back(loss, row[static_cast<std::size_t>(values[0])]);
        return mixed(Curve{std::move(points)}(features[0]), epsilon_,
                     static_cast<double>(count_.bins.size() + 1));
    }

private:
    const CountModel& count_;
    double epsilon_;
};

class WastingFactor : public SingleFactor {
public:
    WastingFactor(const Model& model, const Grid& grid, const Item& item, Side side)
        : SingleFactor(item, side, {}, {.motor = true}), wasting_(*model.wasting), grid_(grid),
          side_(sideIndex(side)), epsilon_(model.epsilon.at("wasting")) {}

    [[nodiscard]] bool mirrors() const override { return true; }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        for (const auto& movements : wasting_.movements) {
            double loss = 0;
            for (const std::size_t target : movements)
                loss = std::max(loss, grid_.movementLoss(h.block, side_, target, h.motor));
            out.push_back(loss);
        }
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        if (values[0] == kUnread) return 1;
        const double worst = *std::max_element(features.begin(), features.end());
        double sum = 0;
        double chosen = 0;
        for (std::size_t v = 0; v < features.size(); ++v) {
            const double weight = wasting_.movements[v].empty()
                                      ? wasting_.base[v] * (1 - wasting_.noneDrop * worst)
                                      : wasting_.base[v] + wasting_.gain * features[v];
            sum += weight;
            if (static_cast<int>(v) == values[0]) chosen = weight;
        }
        return mixed(chosen / sum, epsilon_, static_cast<double>(features.size()));
    }

private:
    const WastingModel& wasting_;
    const Grid& grid_;
    std::size_t side_;
    double epsilon_;
};

/// Both girths together: left smaller, alike, right smaller.
class GirthFactor : public Factor {
public:
    GirthFactor(const Model& model, const Grid& grid, const GirthModel& girth)
        : Factor({{{{girth.item, Side::left}, {girth.item, Side::right}}, 3}}, {.motor = true}),
          girth_(girth), grid_(grid), epsilon_(model.epsilon.at("wasting")) {}

    [[nodiscard]] int read(std::size_t, const Exam& exam) const override {
        const Finding* left = exam.find({girth_.item, Side::left});
        const Finding* right = exam.find({girth_.item, Side::right});
        if (left == nullptr || right == nullptr || !left->value.isNumber() || !right->value.isNumber())
            return kUnread;
        const double difference = right->value.number() - left->value.number();
        return difference > girth_.limit ? 0 : difference < -girth_.limit ? 2 : 1;
    }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        for (std::size_t side = 0; side < 2; ++side) {
            double loss = 0;
            for (const std::size_t target : girth_.movements)
                loss = std::max(loss, grid_.movementLoss(h.block, side, target, h.motor));
            out.push_back(loss);
        }
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        if (values[0] == kUnread) return 1;
        const double left = girth_.low + (girth_.high - girth_.low) * features[0];
        const double right = girth_.low + (girth_.high - girth_.low) * features[1];
        const double leftOnly = left * (1 - right);
        const double rightOnly = right * (1 - left);
        const std::array<double, 3> p{leftOnly, 1 - leftOnly - rightOnly, rightOnly};
        return mixed(p[static_cast<std::size_t>(values[0])], epsilon_, 3);
    }

private:
    const GirthModel& girth_;
    const Grid& grid_;
    double epsilon_;
};

class GaitFactor : public SingleFactor {
public:
    GaitFactor(const Model& model, const Grid& grid, const Item& item)
        : SingleFactor(item, Side::none, {}, {.motor = true, .irritable = true}), model_(model), grid_(grid),
          epsilon_(model.epsilon.at("ability")) {}

    void features(const Hypothesis& h, std::vector<double>& out) override {
        for (const GaitFeature& feature : model_.gait.features) {
            const double reach = feature.to - feature.from;
            out.push_back(std::clamp((strength(feature, h) - feature.from) / reach, 0.0, 1.0));
        }
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        if (values[0] == kUnread) return 1;
        double sum = 0;
        double chosen = 0;
        for (std::size_t v = 0; v < model_.gait.base.size(); ++v) {
            double weight = model_.gait.base[v];
            for (std::size_t f = 0; f < features.size(); ++f)
                weight += model_.gait.features[f].gain[v] * features[f];
            weight = std::max(model_.gait.floor, weight);
            sum += weight;
            if (static_cast<int>(v) == values[0]) chosen = weight;
        }
        return mixed(chosen / sum, epsilon_, static_cast<double>(model_.gait.base.size()));
    }

private:
    [[nodiscard]] double strength(const GaitFeature& feature, const Hypothesis& h) const {
        const Block& block = grid_.blocks()[h.block];
        const SiteModel& site = model_.sites[block.site];
        const double m = model_.motorLevels[h.motor];
        const double reach = std::max(block.scale[0], block.scale[1]);
        switch (feature.kind) {
        case GaitFeature::Kind::loss:
            return std::max(grid_.movementLoss(h.block, 0, feature.movement, h.motor),
                            grid_.movementLoss(h.block, 1, feature.movement, h.motor));
        case GaitFeature::Kind::umn:
            return block.variant->umn * reach * (0.5 + 0.5 * m);
        case GaitFeature::Kind::length:
            return block.variant->length * reach * (0.5 + 0.5 * m);
        case GaitFeature::Kind::irritable:
            return static_cast<double>(h.irritable);
        case GaitFeature::Kind::group:
            return site.group == feature.name ? 1 : 0;
        case GaitFeature::Kind::site:
            break;
        }
        return site.id.text() == feature.name ? 1 : 0;
    }

    const Model& model_;
    const Grid& grid_;
    double epsilon_;
};

/// Calls `make(item, side)` for each side an item has.
template <class Make> void forSides(const Catalogue& catalogue, const ItemId& id, Make make) {
    const Item* item = catalogue.find(id);
    if (item == nullptr) return;
    if (!item->sided)
        make(*item, Side::none);
    else
        for (const Side side : kSides)
            make(*item, side);
}

} // namespace

Factors makeLossFactors(const Model& model, const Grid& grid, const Catalogue& catalogue) {
    Factors factors;
    for (const AbilityModel& ability : model.abilities)
        forSides(catalogue, ability.item, [&](const Item& item, Side side) {
            factors.push_back(std::make_unique<AbilityFactor>(model, grid, item, side, ability));
        });
    for (const YesByLossModel& yes : model.yesByLoss)
        forSides(catalogue, yes.item, [&](const Item& item, Side side) {
            factors.push_back(std::make_unique<YesByLossFactor>(model, grid, item, side, yes));
        });
    for (const CountModel& count : model.counts)
        forSides(catalogue, count.item, [&](const Item& item, Side side) {
            factors.push_back(std::make_unique<CountFactor>(model, grid, item, side, count));
        });
    if (model.wasting)
        forSides(catalogue, model.wasting->item, [&](const Item& item, Side side) {
            factors.push_back(std::make_unique<WastingFactor>(model, grid, item, side));
        });
    for (const GirthModel& girth : model.girths)
        factors.push_back(std::make_unique<GirthFactor>(model, grid, girth));
    forSides(catalogue, model.gait.item, [&](const Item& item, Side) {
        factors.push_back(std::make_unique<GaitFactor>(model, grid, item));
    });
    return factors;
}

} // namespace rhizograph
