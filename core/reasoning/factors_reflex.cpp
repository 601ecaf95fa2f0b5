#include "reasoning/discretized.h"
#include "reasoning/factor.h"

#include <algorithm>
#include <cmath>

namespace rhizograph {
namespace {

/// All reflexes of both sides. Each has a baseline of this person, shared by both sides; the baselines of one
/// person rise and fall together in part (quiet, usual, lively people).
class ReflexFactor : public Factor {
public:
    struct Arc {
        const Item* item = nullptr;
        std::size_t target = 0;
        const AgeRows* baseline = nullptr;
        double umnWeight = 0;
    };

    ReflexFactor(const Model& model, const Grid& grid, std::vector<Arc> arcs)
        : Factor(slotsOf(arcs), {.motor = true, .sensory = true}), model_(model), grid_(grid), arcs_(std::move(arcs)),
          states_(arcs_.size()) {
        for (std::size_t i = 0; i < arcs_.front().item->scale.values.size(); ++i)
            grades_.push_back(static_cast<double>(i));
    }

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), arcs_[slot / 2].item->scale, {});
    }

    /// By arc the number of its distinct (loss, gain) of both sides.
    [[nodiscard]] std::vector<double> features(const Hypothesis& h) const override {
        const Block& block = grid_.blocks()[h.block];
        const double m = model_.motorLevels[h.motor];
        std::vector<double> out;
        for (std::size_t arc = 0; arc < arcs_.size(); ++arc) {
            std::vector<double> state;
            for (std::size_t side = 0; side < 2; ++side) {
                state.push_back(grid_.reflexLoss(h.block, side, arcs_[arc].target, h.motor, h.sensory));
                state.push_back(model_.reflex.umnGain * arcs_[arc].umnWeight * block.variant->umn * block.scale[side] *
                                (0.5 + 0.5 * m) * (1 - block.variant->areflexia));
            }
            out.push_back(states_[arc].index(state));
        }
        return out;
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting& setting) const override {
        return probabilities({std::vector<double>(features.begin(), features.end())}, values, setting).front();
    }

    [[nodiscard]] std::vector<double> probabilities(const std::vector<std::vector<double>>& features,
                                                    std::span<const int> values, const Setting& setting) const override {
        std::vector<std::array<double, 3>> byLevel(features.size(), {1, 1, 1});
        for (std::size_t arc = 0; arc < arcs_.size(); ++arc) {
            if (values[arc * 2] == kUnread && values[arc * 2 + 1] == kUnread) continue;
            const auto base = baselines(arc, setting);
            std::map<double, std::array<double, 3>> known;
            for (std::size_t c = 0; c < features.size(); ++c) {
                const auto [found, added] = known.try_emplace(features[c][arc]);
                if (added) found->second = read(arc, features[c][arc], values, base);
                for (std::size_t level = 0; level < 3; ++level)
                    byLevel[c][level] *= found->second[level];
            }
        }
        std::vector<double> out;
        out.reserve(features.size());
        for (const auto& levels : byLevel) {
            double sum = 0;
            for (std::size_t level = 0; level < 3; ++level)
                sum += model_.reflex.levels[level] * levels[level];
            out.push_back(sum);
        }
        return out;
    }

private:
    static std::vector<Slot> slotsOf(const std::vector<Arc>& arcs) {
        std::vector<Slot> slots;
        for (const Arc& arc : arcs)
            for (const Side side : {Side::left, Side::right})
                slots.push_back({{{arc.item->id, side}}, arc.item->scale.values.size()});
        return slots;
    }

    /// Baseline of an arc for quiet, usual and lively people: the age's distribution, in part cut to the lowest,
    /// middle and highest share of it, so that over all people it stays what it is.
    [[nodiscard]] std::array<Row, 3> baselines(std::size_t arc, const Setting& setting) const {
        const Row& all = (*arcs_[arc].baseline)[static_cast<std::size_t>(setting.ageBand)];
        const double common = model_.reflex.liveliness;
        std::array<Row, 3> out;
        double from = 0;
        for (std::size_t level = 0; level < 3; ++level) {
            const double to = from + model_.reflex.levels[level];
            double below = 0;
            for (const double p : all) {
                const double slice = std::max(0.0, std::min(to, below + p) - std::max(from, below));
                out[level].push_back((1 - common) * p + common * slice / model_.reflex.levels[level]);
                below += p;
            }
            from = to;
        }
        return out;
    }

    [[nodiscard]] std::array<double, 3> read(std::size_t arc, double state, std::span<const int> values,
                                             const std::array<Row, 3>& base) const {
        const std::vector<double>& both = states_[arc].values()[static_cast<std::size_t>(state)];
        const double epsilon = model_.epsilon.at("reflex");
        std::array<double, 3> sums{0, 0, 0};
        for (std::size_t b = 0; b < grades_.size(); ++b) {
            double p = 1;
            for (std::size_t side = 0; side < 2; ++side)
                if (const int value = values[arc * 2 + side]; value != kUnread)
                    p *= mixed(reading(static_cast<double>(b), both[side * 2], both[side * 2 + 1],
                                       static_cast<std::size_t>(value)),
                               epsilon, static_cast<double>(grades_.size()));
            for (std::size_t level = 0; level < 3; ++level)
                sums[level] += base[level][b] * p;
        }
        return sums;
    }

    [[nodiscard]] double reading(double baseline, double loss, double gain, std::size_t value) const {
        const ReflexModel& reflex = model_.reflex;
        const double drop = reflex.dropGain * std::max(0.0, (loss - reflex.deadZone) / (1 - reflex.deadZone));
        const double expected = std::clamp(baseline - drop + gain, 0.0, grades_.back());
        const double sd = reflex.sdQuiet + (reflex.sdLost - reflex.sdQuiet) * std::min(1.0, std::abs(baseline - expected));
        return gradeMass(grades_, value, expected, sd);
    }

    const Model& model_;
    const Grid& grid_;
    std::vector<Arc> arcs_;
    mutable std::vector<Distinct> states_; ///< filled while the grid is boiled down, read only afterwards
    std::vector<double> grades_;
};

} // namespace

Factors makeReflexFactors(const Model& model, const Grid& grid, const Catalogue& catalogue) {
    std::vector<ReflexFactor::Arc> arcs;
    for (const auto& [reflex, baseline] : model.reflex.baseline) {
        const Item* item = catalogue.find(model.reflex.prefix + reflex);
        if (item == nullptr) continue;
        const auto umn = model.reflex.umnTargets.find(reflex);
        arcs.push_back({item, model.anatomy.target(TargetKind::reflex, reflex), &baseline,
                        umn == model.reflex.umnTargets.end() ? 0 : umn->second});
    }
    Factors factors;
    if (!arcs.empty()) factors.push_back(std::make_unique<ReflexFactor>(model, grid, std::move(arcs)));
    return factors;
}

} // namespace rhizograph
