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
        : Factor(slotsOf(arcs), {.motor = true, .sensory = true, .setting = true}), model_(model),
          grid_(grid), arcs_(std::move(arcs)), sides_(arcs_.size(), FeatureTable{2}),
          pairs_(arcs_.size(), FeatureTable{2}) {
        for (std::size_t i = 0; i < arcs_.front().item->scale.values.size(); ++i)
            grades_.push_back(static_cast<double>(i));
    }

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), arcs_[slot / 2].item->scale, {});
    }

    [[nodiscard]] bool alike(std::size_t block) const override {
        for (std::size_t side = 0; side < 2; ++side) {
            if (gain(grid_.blocks()[block], side, 1) != 0) return false;
            for (const Arc& arc : arcs_)
                if (!sameLoss(block, side, arc.target)) return false;
        }
        return true;
    }

    /// By arc the number of its distinct (left, right), each side the number of its distinct (loss, gain).
    void features(const Hypothesis& h, std::vector<double>& out) override {
        const Block& block = grid_.blocks()[h.block];
        const double m = model_.motorLevels[h.motor];
        for (std::size_t arc = 0; arc < arcs_.size(); ++arc) {
            std::array<double, 2> state{};
            for (std::size_t side = 0; side < 2; ++side)
                state[side] = sides_[arc].number(
                    std::array{grid_.reflexLoss(h.block, side, arcs_[arc].target, h.motor, h.sensory),
                               arcs_[arc].umnWeight * gain(block, side, 0.5 + 0.5 * m)});
            out.push_back(pairs_[arc].number(state));
        }
    }

    void finish() override {
        const std::size_t count = grades_.size();
        const double epsilon = model_.epsilon.at("reflex");
        for (const FeatureTable& states : sides_) {
            std::vector<double>& chances = readings_.emplace_back(states.size() * count * count);
            for (std::size_t state = 0; state < states.size(); ++state)
                for (std::size_t b = 0; b < count; ++b) {
                    const std::vector<double> masses =
                        readings(grades_[b], states.row(state)[0], states.row(state)[1]);
                    for (std::size_t value = 0; value < count; ++value)
                        chances[(state * count + value) * count + b] =
                            mixed(masses[value], epsilon, static_cast<double>(count));
                }
        }
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting& setting) const override {
        Levels product{1, 1, 1};
        for (std::size_t arc = 0; arc < arcs_.size(); ++arc) {
            if (values[arc * 2] == kUnread && values[arc * 2 + 1] == kUnread) continue;
            const auto pair = static_cast<std::size_t>(features[arc]);
            const Levels p = read(arc, pairs_[arc].row(pair), values, baselines(arc, setting));
            for (std::size_t level = 0; level < p.size(); ++level)
                product[level] *= p[level];
        }
        return overLevels(product);
    }

    [[nodiscard]] std::vector<double> probabilities(const FeatureTable& table, std::span<const int> values,
                                                    const Setting& setting) const override {
        return overLevels(products(table, byPairs(values, setting)));
    }

    [[nodiscard]] std::vector<std::vector<double>> withoutEach(const FeatureTable& table,
                                                               std::span<const int> values,
                                                               const Setting& setting) const override {
        const auto read = byPairs(values, setting);
        const std::vector<Levels> all = products(table, read);
        std::vector<std::vector<double>> out(values.size());
        std::vector<int> fewer(values.begin(), values.end());
        for (std::size_t slot = 0; slot < values.size(); ++slot) {
            if (values[slot] == kUnread) continue;
            fewer[slot] = kUnread;
            out[slot] = overLevels(exchanged(all, table, slot / 2, read, fewer, setting));
            fewer[slot] = values[slot];
        }
        return out;
    }

    [[nodiscard]] std::vector<std::vector<double>> slotProbabilities(const FeatureTable& table,
                                                                     std::span<const int> values,
                                                                     std::size_t slot,
                                                                     const Setting& setting) const override {
        const auto read = byPairs(values, setting);
        const std::vector<Levels> all = products(table, read);
        std::vector<int> changed(values.begin(), values.end());
        std::vector<std::vector<double>> out;
        for (std::size_t v = 0; v < grades_.size(); ++v) {
            changed[slot] = static_cast<int>(v);
            out.push_back(overLevels(exchanged(all, table, slot / 2, read, changed, setting)));
        }
        return out;
    }

private:
    /// How much livelier a lesion above the arc makes it at this share of its severity, before the arc's
    /// weight.
    [[nodiscard]] double gain(const Block& block, std::size_t side, double share) const {
        return model_.reflex.umnGain * block.variant->umn * block.scale[side] * share *
               (1 - block.variant->areflexia) * block.variant->umnReflex;
    }

    [[nodiscard]] bool sameLoss(std::size_t block, std::size_t side, std::size_t target) const {
        const double first = grid_.reflexLoss(block, side, target, 0, 0);
        for (std::size_t m = 0; m < grid_.motorLevels(); ++m)
            for (std::size_t s = 0; s < grid_.sensoryLevels(); ++s)
                if (grid_.reflexLoss(block, side, target, m, s) != first) return false;
        return true;
    }

    /// P of something in quiet, usual and lively people.
    using Levels = std::array<double, 3>;
    /// P of an arc's readings by pair of states; empty when neither side is read.
    using ByPair = std::vector<Levels>;

    [[nodiscard]] ByPair byPair(std::size_t arc, std::span<const int> values, const Setting& setting) const {
        const bool left = values[arc * 2] != kUnread;
        const bool right = values[arc * 2 + 1] != kUnread;
        ByPair out;
        if (!left && !right) return out;
        const auto base = baselines(arc, setting);
        out.reserve(pairs_[arc].size());
        if (left && right) {
            for (std::size_t pair = 0; pair < pairs_[arc].size(); ++pair)
                out.push_back(read(arc, pairs_[arc].row(pair), values, base));
            return out;
        }
        std::vector<Levels> byState; // one side is enough, and has fewer states than pairs of sides have
        for (std::size_t state = 0; state < sides_[arc].size(); ++state) {
            const std::array both{static_cast<double>(state), static_cast<double>(state)};
            byState.push_back(read(arc, both, values, base));
        }
        for (std::size_t pair = 0; pair < pairs_[arc].size(); ++pair)
            out.push_back(byState[static_cast<std::size_t>(pairs_[arc].row(pair)[left ? 0 : 1])]);
        return out;
    }

    [[nodiscard]] std::vector<ByPair> byPairs(std::span<const int> values, const Setting& setting) const {
        std::vector<ByPair> out;
        for (std::size_t arc = 0; arc < arcs_.size(); ++arc)
            out.push_back(byPair(arc, values, setting));
        return out;
    }

    /// P of the readings of all arcs, by row of the table.
    [[nodiscard]] std::vector<Levels> products(const FeatureTable& table,
                                               const std::vector<ByPair>& read) const {
        std::vector<Levels> out(table.size(), Levels{1, 1, 1});
        for (std::size_t arc = 0; arc < arcs_.size(); ++arc)
            if (!read[arc].empty()) multiply(out, table, arc, read[arc]);
        return out;
    }

    static void multiply(std::vector<Levels>& out, const FeatureTable& table, std::size_t arc,
                         const ByPair& byPair) {
        for (std::size_t c = 0; c < out.size(); ++c) {
            const Levels& p = byPair[static_cast<std::size_t>(table.row(c)[arc])];
            for (std::size_t level = 0; level < p.size(); ++level)
                out[c][level] *= p[level];
        }
    }

    /// The same if one arc had been read otherwise. No reading is impossible, so what was read can be
    /// divided out.
    [[nodiscard]] std::vector<Levels> exchanged(std::vector<Levels> all, const FeatureTable& table,
                                                std::size_t arc, const std::vector<ByPair>& read,
                                                std::span<const int> values, const Setting& setting) const {
        ByPair ratio = byPair(arc, values, setting);
        if (ratio.empty()) ratio.assign(pairs_[arc].size(), Levels{1, 1, 1});
        if (!read[arc].empty())
            for (std::size_t pair = 0; pair < ratio.size(); ++pair)
                for (std::size_t level = 0; level < ratio[pair].size(); ++level)
                    ratio[pair][level] /= read[arc][pair][level];
        multiply(all, table, arc, ratio);
        return all;
    }

    [[nodiscard]] std::vector<double> overLevels(const std::vector<Levels>& byRow) const {
        std::vector<double> out;
        out.reserve(byRow.size());
        for (const Levels& p : byRow)
            out.push_back(overLevels(p));
        return out;
    }

    [[nodiscard]] double overLevels(const Levels& p) const {
        const Levels& share = model_.reflex.levels;
        return share[0] * p[0] + share[1] * p[1] + share[2] * p[2];
    }

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
    [[nodiscard]] Levels read(std::size_t arc, std::span<const double> pair, std::span<const int> values,
                              const std::array<Row, 3>& base) const {
        std::array<const double*, 2> chance{nullptr, nullptr}; // by baseline; null for a side not read
        for (std::size_t side = 0; side < 2; ++side)
            if (const int value = values[arc * 2 + side]; value != kUnread)
                chance[side] = &readings_[arc][(static_cast<std::size_t>(pair[side]) * grades_.size() +
                                                static_cast<std::size_t>(value)) *
                                               grades_.size()];
        Levels sums{0, 0, 0};
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
    std::vector<FeatureTable> sides_;           ///< by arc
    std::vector<FeatureTable> pairs_;           ///< by arc
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
