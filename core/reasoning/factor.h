#pragma once

#include "exam/exam.h"
#include "reasoning/featuretable.h"
#include "reasoning/grid.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace rhizograph {

/// What a factor needs to know of the exam besides its own readings.
struct Setting {
    int ageBand = 1;
    std::array<bool, 2> unreliable{false, false}; ///< left, right: grades of this side count less
    bool operator==(const Setting&) const = default;
};

/// One reading of a factor: the findings it is made from and how many values it has.
struct Slot {
    std::vector<FindingKey> keys;
    std::size_t values = 0;
};

/// The hidden levels a factor depends on besides the block, and whether it asks for the setting.
struct Depends {
    bool motor = false, sensory = false, irritable = false;
    bool setting = false;
};

constexpr int kUnread = -1;

/// A factor of the likelihood: findings that read one hidden quantity. Factors are independent given the
/// hypothesis. A factor first boils a hypothesis down to a few features; hypotheses with equal features share
/// one evaluation.
class Factor {
public:
    Factor(std::vector<Slot> slots, Depends depends) : slots_(std::move(slots)), depends_(depends) {}
    virtual ~Factor() = default;
    Factor(const Factor&) = delete;
    Factor& operator=(const Factor&) = delete;

    [[nodiscard]] const std::vector<Slot>& slots() const { return slots_; }
    [[nodiscard]] const Depends& depends() const { return depends_; }

    /// Value of a slot in this exam, or kUnread when it was not examined or not testable.
    [[nodiscard]] virtual int read(std::size_t slot, const Exam& exam) const = 0;
    /// Appends the numbers of the hypothesis that the probability depends on, always the same count. Asked of
    /// every hypothesis once, while the model is loaded; finish() follows.
    virtual void features(const Hypothesis& hypothesis, std::vector<double>& out) = 0;
    /// Whether all hypotheses of a block are sure to have the same features, as where no lesion reaches what
    /// is read: one of them is asked for then. "No" is always right.
    [[nodiscard]] virtual bool alike(std::size_t block) const {
        static_cast<void>(block);
        return false;
    }
    /// Whether the features of a hypothesis are those that the same factor of the other side has for the
    /// mirror image of the hypothesis. They are then asked for on one side only.
    [[nodiscard]] virtual bool mirrors() const { return false; }
    /// All features are known now: what can be worked out ahead is worked out here.
    virtual void finish() {}
    /// P(values | features), mixed with noise; slots that are kUnread are summed out.
    [[nodiscard]] virtual double probability(std::span<const double> features, std::span<const int> values,
                                             const Setting& setting) const = 0;
    /// The same for every row of a table; factors that can share work between rows override it.
    [[nodiscard]] virtual std::vector<double>
    probabilities(const FeatureTable& table, std::span<const int> values, const Setting& setting) const;
    /// The same for several readings, by reading and row.
    using Readings = std::vector<std::vector<int>>;
    [[nodiscard]] virtual std::vector<std::vector<double>>
    probabilitiesOf(const FeatureTable& table, const Readings& readings, const Setting& setting) const;
    /// By slot the probabilities if that slot were unread; empty for a slot that is.
    [[nodiscard]] virtual std::vector<std::vector<double>>
    withoutEach(const FeatureTable& table, std::span<const int> values, const Setting& setting) const;
    /// By value that one slot can take, the others as they are.
    [[nodiscard]] virtual std::vector<std::vector<double>> slotProbabilities(const FeatureTable& table,
                                                                             std::span<const int> values,
                                                                             std::size_t slot,
                                                                             const Setting& setting) const;

private:
    std::vector<Slot> slots_;
    Depends depends_;
};

using Factors = std::vector<std::unique_ptr<Factor>>;

/// A token's position on the scale, or for numbers the bin it falls into; kUnread for anything else,
/// a value without judgement ("long-standing") among them.
[[nodiscard]] int readSlot(const Exam& exam, const FindingKey& key, const Scale& scale,
                           const std::vector<double>& bins);
/// (1 - eps) model + eps spread evenly over the joint values.
[[nodiscard]] double mixed(double model, double epsilon, double jointValues);

/// The grades of one side together.
Factors makeStrengthFactors(const Model& model, const Grid& grid, const Catalogue& catalogue);
/// All reflexes together.
Factors makeReflexFactors(const Model& model, const Grid& grid, const Catalogue& catalogue);
/// Walking tests, felt weakness, counts, wasting, girths, gait pattern.
Factors makeLossFactors(const Model& model, const Grid& grid, const Catalogue& catalogue);
/// Regions (touch and pin), deep sensation, drawings.
Factors makeSenseFactors(const Model& model, const Grid& grid, const Catalogue& catalogue);
/// Tables, shared symptoms, rash.
Factors makeSiteFactors(const Model& model, const Grid& grid, const Catalogue& catalogue);

} // namespace rhizograph
