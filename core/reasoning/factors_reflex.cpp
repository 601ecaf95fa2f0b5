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
        : Factor(slotsOf(arcs), {.motor = true, .sensory = true}), model_(model), grid_(grid),
          arcs_(std::move(arcs)), sides_(arcs_.size()), pairs_(arcs_.size()) {
        for (std::size_t i = 0; i < arcs_.front().item->scale.values.size(); ++i)
            grades_.push_back(static_cast<double>(i));
    }

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), arcs_[slot / 2].item->scale, {});
    }

    /// By arc the number of its distinct (left, right), each side the number of its distinct (loss, gain).
    void features(const Hypothesis& h, std::vector<double>& out) override {
        const Block& block = grid_.blocks()[h.block];
        const double m = model_.motorLevels[h.motor];
        for (std::size_t arc = 0; arc < arcs_.size(); ++arc) {
            std::array<double, 2> state{};
            for (std::size_t side = 0; side < 2; ++side)
                state[side] = sides_[arc].index(
                    grid_.reflexLoss(h.block, side, arcs_[arc].target, h.motor, h.sensory),
                    model_.reflex.umnGain * arcs_[arc].umnWeight * block.variant->umn * block.scale[side] *
                        (0.5 + 0.5 * m) * (1 - block.variant->areflexia) * block.variant->umnReflex);
            out.push_back(pairs_[arc].index(state[0], state[1]));
        }
    }

    void finish() override {
        const std::size_t count = grades_.size();
        const double epsilon = model_.epsilon.at("reflex");
        for (const Distinct& states : sides_) {
            std::vector<double>& chances = readings_.emplace_back(states.values().size() * count * count);
            for (std::size_t state = 0; state < states.values().size(); ++state)
                for (std::size_t b = 0; b < count; ++b) {
                    const std::vector<double> masses =
                        readings(grades_[b], states.values()[state][0], states.values()[state][1]);
                    for (std::size_t value = 0; value < count; ++value)
                        chances[(state * count + value) * count + b] =
                            mixed(masses[value], epsilon, static_cast<double>(count));
                }
        }
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting& setting) const override {
        return probabilities({std::vector<double>(features.begin(), features.end())}, values, setting)
            .front();
    }

    [[nodiscard]] std::vector<double> probabilities(const std::vector<std::vector<double>>& features,
                                                    std::span<const int> values,
                                                    const Setting& setting) const override {
        std::vector<std::array<double, 3>> byLevel(features.size(), {1, 1, 1});
        for (std::size_t arc = 0; arc < arcs_.size(); ++arc) {
            if (values[arc * 2] == kUnread && values[arc * 2 + 1] == kUnread) continue;
            const auto base = baselines(arc, setting);
            std::vector<std::optional<std::array<double, 3>>> byPair(pairs_[arc].values().size());
            for (std::size_t c = 0; c < features.size(); ++c) {
                auto& known = byPair[static_cast<std::size_t>(features[c][arc])];
                if (!known)
                    known = read(arc, pairs_[arc].values()[static_cast<std::size_t>(features[c][arc])],
                                 values, base);
                for (std::size_t level = 0; level < 3; ++level)
                    byLevel[c][level] *= (*known)[level];
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

    /// Baseline of an arc for quiet, usual and lively people: the age's distribution, in part cut to the
    /// lowest, middle and highest share of it, so that over all people it stays what it is.
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

    /// P(the arc's readings) for quiet, usual and lively people.
    [[nodiscard]] std::array<double, 3> read(std::size_t arc, const std::array<double, 2>& pair,
                                             std::span<const int> values,
                                             const std::array<Row, 3>& base) const {
        std::array<const double*, 2> chance{nullptr, nullptr}; // by baseline; null for a side not read
        for (std::size_t side = 0; side < 2; ++side)
            if (const int value = values[arc * 2 + side]; value != kUnread)
                chance[side] = &readings_[arc][(static_cast<std::size_t>(pair[side]) * grades_.size() +
                                                static_cast<std::size_t>(value)) *
                                               grades_.size()];
        std::array<double, 3> sums{0, 0, 0};
        for (std::size_t b = 0; b < grades_.size(); ++b) {
            const double p =
                (chance[0] == nullptr ? 1 : chance[0][b]) * (chance[1] == nullptr ? 1 : chance[1][b]);
            for (std::size_t level = 0; level < 3; ++level)
                sums[level] += base[level][b] * p;
        }
        return sums;
    }

    [[nodiscard]] std::vector<double> readings(double baseline, double loss, double gain) const {
        const ReflexModel& reflex = model_.reflex;
        const double drop = reflex.dropGain * std::max(0.0, (loss - reflex.deadZone) / (1 - reflex.deadZone));
        const double expected = std::clamp(baseline - drop + gain, 0.0, grades_.back());
        const double sd =
            reflex.sdQuiet + (reflex.sdLost - reflex.sdQuiet) * std::min(1.0, std::abs(baseline - expected));
        return gradeMasses(grades_, expected, sd);
    }

    const Model& model_;
    const Grid& grid_;
    std::vector<Arc> arcs_;
    std::vector<Distinct> sides_;               ///< by arc
    std::vector<Distinct> pairs_;               ///< by arc
    std::vector<std::vector<double>> readings_; ///< by arc: P(value | side state, baseline), baseline fastest
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
