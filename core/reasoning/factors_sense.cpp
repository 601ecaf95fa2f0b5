#include "reasoning/discretized.h"
#include "reasoning/factor.h"

#include <algorithm>
#include <cmath>

namespace rhizograph {
namespace {

/// Touch and pin of one region on one side: two readings of one hidden state.
class RegionFactor : public Factor {
public:
    RegionFactor(const Model& model, const Grid& grid, std::vector<const Item*> items, Side side,
                 std::size_t target)
        : Factor(slotsOf(items, side), {.sensory = true}), region_(model.region), grid_(grid),
          side_(sideIndex(side)), target_(target), epsilon_(model.epsilon.at("region")),
          items_(std::move(items)) {}

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), items_[slot]->scale, {});
    }

    [[nodiscard]] bool mirrors() const override { return true; }

    [[nodiscard]] bool alike(std::size_t block) const override {
        for (std::size_t level = 1; level < grid_.sensoryLevels(); ++level)
            if (grid_.regionLoss(block, side_, target_, level) != grid_.regionLoss(block, side_, target_, 0))
                return false;
        return true;
    }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        out.push_back(grid_.regionLoss(h.block, side_, target_, h.sensory));
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        return probability(hidden(features[0]), values);
    }

    [[nodiscard]] std::vector<std::vector<double>>
    probabilitiesOf(const FeatureTable& table, const Readings& readings, const Setting&) const override {
        std::vector<std::vector<double>> out(readings.size(), std::vector<double>(table.size()));
        for (std::size_t c = 0; c < table.size(); ++c) {
            const Hidden state = hidden(table.row(c)[0]);
            for (std::size_t i = 0; i < readings.size(); ++i)
                out[i][c] = probability(state, readings[i]);
        }
        return out;
    }

private:
    /// P of the hidden states: unaffected, dulled, absent, oversensitive.
    using Hidden = std::array<double, 4>;

    [[nodiscard]] Hidden hidden(double loss) const {
        const double affected = region_.affected(loss);
        const double sensitised = affected * region_.sensitisedShare;
        const double along =
            std::clamp((loss - region_.completeFrom) / (region_.completeTo - region_.completeFrom), 0.0, 1.0);
        const double share = region_.completeAtFrom + (region_.completeAtTo - region_.completeAtFrom) * along;
        const double complete = (affected - sensitised) * share;
        return {1 - affected, affected - sensitised - complete, complete, sensitised};
    }

    [[nodiscard]] double probability(const Hidden& state, std::span<const int> values) const {
        Hidden p = state;
        double joint = 1;
        for (std::size_t slot = 0; slot < values.size(); ++slot) {
            if (values[slot] == kUnread) continue;
            for (std::size_t z = 0; z < p.size(); ++z)
                p[z] *= region_.readings[slot][z][static_cast<std::size_t>(values[slot])];
            joint *= static_cast<double>(slots()[slot].values);
        }
        return mixed(p[0] + p[1] + p[2] + p[3], epsilon_, joint);
    }

    static std::vector<Slot> slotsOf(const std::vector<const Item*>& items, Side side) {
        std::vector<Slot> slots;
        for (const Item* item : items)
            slots.push_back({{{item->id, side}}, item->scale.values.size()});
        return slots;
    }

    const RegionModel& region_;
    const Grid& grid_;
    std::size_t side_;
    std::size_t target_;
    double epsilon_;
    std::vector<const Item*> items_;
};

/// Vibration or joint position at one place on one side.
class DeepFactor : public Factor {
public:
    DeepFactor(const Model& model, const Grid& grid, const DeepModel& deep, const Item& item, Side side)
        : Factor({{{{deep.item, side}}, deep.high.size()}}, {.sensory = true, .setting = true}),
          model_(model), grid_(grid), deep_(deep), scale_(item.scale), side_(sideIndex(side)),
          epsilon_(model.epsilon.at("deep")) {}

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), scale_, {});
    }

    [[nodiscard]] bool mirrors() const override { return true; }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        const double severity = model_.sensoryLevels[h.sensory];
        const Grid::Parts parts = grid_.regionParts(h.block, side_, deep_.target, severity);
        out.push_back(1 - (1 - deep_.rootWeight * parts.fibre) * (1 - deep_.umnWeight * parts.deep) *
                              (1 - deep_.lengthWeight * parts.length));
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting& setting) const override {
        if (values[0] == kUnread) return 1;
        const auto value = static_cast<std::size_t>(values[0]);
        const Row& base = deep_.base[static_cast<std::size_t>(setting.ageBand)];
        return mixed((1 - features[0]) * base[value] + features[0] * deep_.high[value], epsilon_,
                     static_cast<double>(deep_.high.size()));
    }

private:
    const Model& model_;
    const Grid& grid_;
    const DeepModel& deep_;
    Scale scale_;
    std::size_t side_;
    double epsilon_;
};

/// What the patient marked on one region of one side.
class DrawnFactor : public Factor {
public:
    DrawnFactor(const Model& model, const Grid& grid, const Item& item, Side side, std::size_t target)
        : Factor({{{{item.id, side}}, item.scale.values.size()}}, {.sensory = true, .irritable = true}),
          model_(model), grid_(grid), scale_(item.scale), side_(sideIndex(side)), target_(target),
          epsilon_(model.epsilon.at("drawn")) {
        const auto base = model.drawn.base.find(item.region);
        base_ = base == model.drawn.base.end() ? model.drawn.baseDefault : base->second;
        const auto gain = model.drawn.irritableGain.find(item.region);
        gain_ = gain == model.drawn.irritableGain.end() ? 0 : gain->second;
        for (const SiteModel& site : model.sites)
            siteGain_.push_back(siteGain(model.drawn, site, item.region));
    }

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), scale_, {});
    }

    [[nodiscard]] bool mirrors() const override { return true; }

    [[nodiscard]] bool alike(std::size_t block) const override {
        if (grid_.fullRegionLoss(block, side_, target_) != 0 || irritableLesion(block)) return false;
        return std::all_of(model_.sensoryLevels.begin(), model_.sensoryLevels.end(),
                           [&](double severity) { return grid_.felt(block, side_, target_, severity) == 0; });
    }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        const double severity = model_.sensoryLevels[h.sensory];
        const double felt = grid_.felt(h.block, side_, target_, severity);
        const double loss = 1 - (1 - grid_.fullRegionLoss(h.block, side_, target_)) * (1 - felt);
        const DrawnModel& drawn = model_.drawn;
        double marked = base_ + (drawn.markMax - base_) * drawn.blur(loss) * drawn.visible;
        if (h.irritable == 1 && irritableLesion(h.block)) marked = std::max(marked, gain_);
        if (grid_.blocks()[h.block].scale[side_] > 0)
            marked = std::max(marked, siteGain_[grid_.blocks()[h.block].site]);
        out.push_back(marked);
        out.push_back(severity > 0 ? loss : 0);
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        if (values[0] == kUnread) return 1;
        double p = 1 - features[0];
        if (values[0] > 0) {
            const auto mark = static_cast<std::size_t>(values[0] - 1);
            const DrawnModel& drawn = model_.drawn;
            p = features[0] *
                ((1 - features[1]) * drawn.splitQuiet[mark] + features[1] * drawn.splitLost[mark]);
        }
        return mixed(p, epsilon_, static_cast<double>(slots()[0].values));
    }

private:
    static double siteGain(const DrawnModel& drawn, const SiteModel& site, const std::string& region) {
        const auto found = drawn.siteGain.find(site.id.text());
        if (found == drawn.siteGain.end()) return 0;
        const auto gain = found->second.find(region);
        return gain == found->second.end() ? 0 : gain->second;
    }

    [[nodiscard]] bool irritableLesion(std::size_t b) const {
        const Block& block = grid_.blocks()[b];
        if (block.scale[side_] <= 0) return false;
        return std::any_of(block.variant->lesions.begin(), block.variant->lesions.end(),
                           [&](const auto& lesion) {
                               const auto& roots = model_.drawn.irritableRoots;
                               return std::find(roots.begin(), roots.end(), lesion.first) != roots.end();
                           });
    }

    const Model& model_;
    const Grid& grid_;
    Scale scale_;
    std::size_t side_;
    std::size_t target_;
    double epsilon_;
    double base_ = 0;
    double gain_ = 0;
    std::vector<double> siteGain_; ///< by site
};

/// Whether another factor already reads this item.
bool shared(const Model& model, const ItemId& item) {
    for (const SharedModel& shared : model.shared)
        for (const SharedReading& reading : shared.readings)
            if (reading.item == item) return true;
    return false;
}

} // namespace

Factors makeSenseFactors(const Model& model, const Grid& grid, const Catalogue& catalogue) {
    Factors factors;
    const auto& targets = model.anatomy.targets();
    for (std::size_t t = 0; t < targets.size(); ++t) {
        if (targets[t].kind != TargetKind::region) continue;
        std::vector<const Item*> items;
        for (const std::string& prefix : model.region.prefixes)
            if (const Item* item = catalogue.find(prefix + "." + targets[t].name)) items.push_back(item);
        if (items.size() == model.region.prefixes.size())
            for (const Side side : kSides)
                factors.push_back(std::make_unique<RegionFactor>(model, grid, items, side, t));
    }
    for (const DeepModel& deep : model.deep)
        if (const Item* item = catalogue.find(deep.item))
            for (const Side side : kSides)
                factors.push_back(std::make_unique<DeepFactor>(model, grid, deep, *item, side));
    for (const Item& item : catalogue.items()) {
        if (!item.id.text().starts_with(model.drawn.prefix) || shared(model, item.id)) continue;
        const std::size_t target = model.anatomy.target(TargetKind::region, item.region);
        if (target == targets.size()) continue;
        for (const Side side : kSides)
            factors.push_back(std::make_unique<DrawnFactor>(model, grid, item, side, target));
    }
    return factors;
}

} // namespace rhizograph
