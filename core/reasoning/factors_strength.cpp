#include "reasoning/discretized.h"
#include "reasoning/factor.h"

#include <algorithm>
#include <cmath>

namespace rhizograph {
namespace {

/// All grades of one side. Given the hypothesis they are independent, except that pain or effort may lower the
/// whole limb alike: a hidden yes/no shared by the side.
class StrengthFactor : public Factor {
public:
    struct Muscle {
        const Item* item = nullptr;
        std::size_t target = 0;
    };

    StrengthFactor(const Model& model, const Grid& grid, std::vector<Muscle> muscles, Side side)
        : Factor(slotsOf(muscles, side), {.motor = true}), model_(model), grid_(grid), muscles_(std::move(muscles)),
          side_(sideIndex(side)) {}

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), muscles_[slot].item->scale, {});
    }

    [[nodiscard]] std::vector<double> features(const Hypothesis& h) const override {
        std::vector<double> losses;
        losses.reserve(muscles_.size());
        for (const Muscle& muscle : muscles_)
            losses.push_back(grid_.movementLoss(h.block, side_, muscle.target, h.motor));
        return losses;
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting& setting) const override {
        double free = 1;
        double guarded = 1;
        for (std::size_t slot = 0; slot < values.size(); ++slot) {
            if (values[slot] == kUnread) continue;
            const Pair p = grade(slot, features[slot], static_cast<std::size_t>(values[slot]), setting);
            free *= p.free;
            guarded *= p.guarded;
        }
        return mix(free, guarded);
    }

    [[nodiscard]] std::vector<double> probabilities(const std::vector<std::vector<double>>& features,
                                                    std::span<const int> values, const Setting& setting) const override {
        std::vector<double> free(features.size(), 1.0);
        std::vector<double> guarded(features.size(), 1.0);
        for (std::size_t slot = 0; slot < values.size(); ++slot) {
            if (values[slot] == kUnread) continue;
            std::map<double, Pair> known;
            for (std::size_t c = 0; c < features.size(); ++c) {
                const auto [found, added] = known.try_emplace(features[c][slot]);
                if (added) found->second = grade(slot, found->first, static_cast<std::size_t>(values[slot]), setting);
                free[c] *= found->second.free;
                guarded[c] *= found->second.guarded;
            }
        }
        for (std::size_t c = 0; c < free.size(); ++c)
            free[c] = mix(free[c], guarded[c]);
        return free;
    }

private:
    /// P(grade) in a limb that gives its best, and in one held back.
    struct Pair {
        double free = 1, guarded = 1;
    };

    static std::vector<Slot> slotsOf(const std::vector<Muscle>& muscles, Side side) {
        std::vector<Slot> slots;
        for (const Muscle& muscle : muscles)
            slots.push_back({{{muscle.item->id, side}}, muscle.item->scale.values.size()});
        return slots;
    }

    [[nodiscard]] double mix(double free, double guarded) const {
        const double share = model_.strength.guardedShare;
        return (1 - share) * free + share * guarded;
    }

    [[nodiscard]] Pair grade(std::size_t slot, double loss, std::size_t value, const Setting& setting) const {
        const StrengthModel& strength = model_.strength;
        const double reserve = model_.anatomy.targets()[muscles_[slot].target].reserve;
        const double expected = strength.curve(std::max(0.0, (loss - reserve) / (1 - reserve)));
        const double toFull = std::clamp((5 - expected) / (5 - strength.sdFullAtGrade), 0.0, 1.0);
        const double sd = strength.sdAt5 + (strength.sdBelow - strength.sdAt5) * toFull;
        const double epsilon = model_.epsilon.at(setting.unreliable[side_] ? "strength_give_way" : "strength");
        const double noise = epsilon * strength.noise[value];
        const double held = std::max(0.0, expected - strength.guardedDrop);
        return {(1 - epsilon) * gradeMass(strength.grades, value, expected, sd) + noise,
                (1 - epsilon) * gradeMass(strength.grades, value, held, std::max(sd, strength.guardedSd)) + noise};
    }

    const Model& model_;
    const Grid& grid_;
    std::vector<Muscle> muscles_;
    std::size_t side_;
};

} // namespace

Factors makeStrengthFactors(const Model& model, const Grid& grid, const Catalogue& catalogue) {
    std::vector<StrengthFactor::Muscle> muscles;
    const std::string& prefix = model.strength.prefix;
    for (const Item& item : catalogue.items()) {
        if (!item.id.text().starts_with(prefix) || item.scale.kind != Scale::Kind::grade) continue;
        const std::size_t target = model.anatomy.target(TargetKind::movement, item.id.text().substr(prefix.size()));
        if (target < model.anatomy.targets().size()) muscles.push_back({&item, target});
    }
    Factors factors;
    for (const Side side : {Side::left, Side::right})
        factors.push_back(std::make_unique<StrengthFactor>(model, grid, muscles, side));
    return factors;
}

} // namespace rhizograph
