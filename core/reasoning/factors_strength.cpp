#include "reasoning/discretized.h"
#include "reasoning/factor.h"

#include <algorithm>
#include <cmath>

namespace rhizograph {
namespace {

/// All grades of one side. Given the hypothesis they are independent, except that pain or effort may lower
/// the whole limb alike: a hidden yes/no shared by the side.
class StrengthFactor : public Factor {
public:
    struct Muscle {
        const Item* item = nullptr;
        std::size_t target = 0;
    };

    /// P(grade) in a limb that gives its best, and in one held back.
    struct Pair {
        double free = 1, guarded = 1;
    };
    /// What both sides share: the losses that occur and the grades they lead to.
    struct GradeBook {
        std::vector<FeatureTable> losses; ///< by slot
        /// P(grade) by whether the side's grades count less, slot, value and loss.
        std::array<std::vector<std::vector<std::vector<Pair>>>, 2> grades;
    };

    StrengthFactor(const Model& model, const Grid& grid, std::vector<Muscle> muscles, Side side,
                   std::shared_ptr<GradeBook> book)
        : Factor(slotsOf(muscles, side), {.motor = true, .setting = true}), model_(model), grid_(grid),
          muscles_(std::move(muscles)), side_(sideIndex(side)), book_(std::move(book)) {
        book_->losses.resize(muscles_.size(), FeatureTable{1});
    }

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), muscles_[slot].item->scale, {});
    }

    [[nodiscard]] bool mirrors() const override { return true; }

    [[nodiscard]] bool alike(std::size_t block) const override {
        return std::all_of(muscles_.begin(), muscles_.end(), [&](const Muscle& muscle) {
            const double first = grid_.movementLoss(block, side_, muscle.target, 0);
            for (std::size_t level = 1; level < grid_.motorLevels(); ++level)
                if (grid_.movementLoss(block, side_, muscle.target, level) != first) return false;
            return true;
        });
    }

    /// By muscle the number of its loss among the distinct ones.
    void features(const Hypothesis& h, std::vector<double>& out) override {
        for (std::size_t slot = 0; slot < muscles_.size(); ++slot) {
            const std::array loss{grid_.movementLoss(h.block, side_, muscles_[slot].target, h.motor)};
            out.push_back(book_->losses[slot].number(loss));
        }
    }

    void finish() override {
        if (!book_->grades[0].empty()) return; // the other side has been there
        const std::array<double, 2> epsilon{model_.epsilon.at("strength"),
                                            model_.epsilon.at("strength_give_way")};
        for (std::size_t slot = 0; slot < muscles_.size(); ++slot) {
            const FeatureTable& losses = book_->losses[slot];
            for (auto& kind : book_->grades)
                kind.emplace_back(slots()[slot].values, std::vector<Pair>(losses.size()));
            for (std::size_t i = 0; i < losses.size(); ++i) {
                const std::vector<Pair> clean = massesOf(slot, losses.row(i)[0]);
                for (std::size_t value = 0; value < clean.size(); ++value)
                    for (std::size_t kind = 0; kind < 2; ++kind)
                        book_->grades[kind][slot][value][i] = noisy(clean[value], value, epsilon[kind]);
            }
        }
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting& setting) const override {
        FeatureTable one{features.size()};
        one.number(features);
        return probabilities(one, values, setting).front();
    }

    [[nodiscard]] std::vector<double> probabilities(const FeatureTable& table, std::span<const int> values,
                                                    const Setting& setting) const override {
        std::vector<double> out;
        out.reserve(table.size());
        for (const Pair& p : products(table, values, setting))
            out.push_back(mix(p.free, p.guarded));
        return out;
    }

    /// Grades are independent in either state of the limb: leaving one out divides by its share.
    [[nodiscard]] std::vector<std::vector<double>> withoutEach(const FeatureTable& table,
                                                               std::span<const int> values,
                                                               const Setting& setting) const override {
        const std::vector<Pair> all = products(table, values, setting);
        std::vector<std::vector<double>> out(values.size());
        for (std::size_t slot = 0; slot < values.size(); ++slot) {
            if (values[slot] == kUnread) continue;
            const std::vector<Pair>& byLoss =
                book_
                    ->grades[setting.unreliable[side_] ? 1 : 0][slot][static_cast<std::size_t>(values[slot])];
            out[slot].reserve(all.size());
            for (std::size_t c = 0; c < all.size(); ++c) {
                const Pair& p = byLoss[static_cast<std::size_t>(table.row(c)[slot])];
                out[slot].push_back(mix(all[c].free / p.free, all[c].guarded / p.guarded));
            }
        }
        return out;
    }

    [[nodiscard]] std::vector<std::vector<double>> slotProbabilities(const FeatureTable& table,
                                                                     std::span<const int> values,
                                                                     std::size_t slot,
                                                                     const Setting& setting) const override {
        std::vector<int> others(values.begin(), values.end());
        others[slot] = kUnread;
        const std::vector<Pair> rest = products(table, others, setting);
        std::vector<std::vector<double>> out;
        for (const std::vector<Pair>& byLoss : book_->grades[setting.unreliable[side_] ? 1 : 0][slot]) {
            std::vector<double>& chance = out.emplace_back();
            chance.reserve(rest.size());
            for (std::size_t c = 0; c < rest.size(); ++c) {
                const Pair& p = byLoss[static_cast<std::size_t>(table.row(c)[slot])];
                chance.push_back(mix(rest[c].free * p.free, rest[c].guarded * p.guarded));
            }
        }
        return out;
    }

private:
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

    [[nodiscard]] std::vector<Pair> products(const FeatureTable& table, std::span<const int> values,
                                             const Setting& setting) const {
        std::vector<Pair> out(table.size());
        const auto& grades = book_->grades[setting.unreliable[side_] ? 1 : 0];
        for (std::size_t slot = 0; slot < values.size(); ++slot) {
            if (values[slot] == kUnread) continue;
            const std::vector<Pair>& byLoss = grades[slot][static_cast<std::size_t>(values[slot])];
            for (std::size_t c = 0; c < table.size(); ++c) {
                const Pair& p = byLoss[static_cast<std::size_t>(table.row(c)[slot])];
                out[c].free *= p.free;
                out[c].guarded *= p.guarded;
            }
        }
        return out;
    }

    [[nodiscard]] std::vector<Pair> massesOf(std::size_t slot, double loss) const {
        const StrengthModel& strength = model_.strength;
        const double reserve = model_.anatomy.targets()[muscles_[slot].target].reserve;
        const double expected = strength.curve(std::max(0.0, (loss - reserve) / (1 - reserve)));
        const double toFull = std::clamp((5 - expected) / (5 - strength.sdFullAtGrade), 0.0, 1.0);
        const double sd = strength.sdAt5 + (strength.sdBelow - strength.sdAt5) * toFull;
        const double held = std::max(0.0, expected - strength.guardedDrop);
        const std::vector<double> free = gradeMasses(strength.grades, expected, sd);
        const std::vector<double> guarded =
            gradeMasses(strength.grades, held, std::max(sd, strength.guardedSd));
        std::vector<Pair> out;
        for (std::size_t value = 0; value < free.size(); ++value)
            out.push_back({free[value], guarded[value]});
        return out;
    }

    [[nodiscard]] Pair noisy(const Pair& mass, std::size_t value, double epsilon) const {
        const double noise = epsilon * model_.strength.noise[value];
        return {(1 - epsilon) * mass.free + noise, (1 - epsilon) * mass.guarded + noise};
    }

    const Model& model_;
    const Grid& grid_;
    std::vector<Muscle> muscles_;
    std::size_t side_;
    std::shared_ptr<GradeBook> book_;
};

} // namespace

Factors makeStrengthFactors(const Model& model, const Grid& grid, const Catalogue& catalogue) {
    std::vector<StrengthFactor::Muscle> muscles;
    const std::string& prefix = model.strength.prefix;
    for (const Item& item : catalogue.items()) {
        if (!item.id.text().starts_with(prefix) || item.scale.kind != Scale::Kind::grade) continue;
        const std::size_t target =
            model.anatomy.target(TargetKind::movement, item.id.text().substr(prefix.size()));
        if (target < model.anatomy.targets().size()) muscles.push_back({&item, target});
    }
    Factors factors;
    const auto book = std::make_shared<StrengthFactor::GradeBook>();
    for (const Side side : {Side::left, Side::right})
        factors.push_back(std::make_unique<StrengthFactor>(model, grid, muscles, side, book));
    return factors;
}

} // namespace rhizograph
