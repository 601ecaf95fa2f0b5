#pragma once

#include "reasoning/factor.h"

#include <cstdint>
#include <unordered_map>

namespace rhizograph {

/// The hypotheses of a factor boiled down to classes of equal features.
struct Classes {
    std::vector<std::uint16_t> of;             ///< class by state of the factor's space
    std::vector<std::vector<double>> features; ///< by class
};

/// Numbers the states of the part of the grid that depends on some hidden levels besides the block: motor,
/// sensory, irritability, the last one fastest.
class Space {
public:
    Space() = default;
    Space(const Grid& grid, Depends depends);
    [[nodiscard]] std::size_t size() const { return blocks_ * perBlock_; }
    [[nodiscard]] std::size_t perBlock() const { return perBlock_; }
    [[nodiscard]] std::size_t state(const Hypothesis& h) const { return h.block * perBlock_ + within(h); }
    /// The state within its block.
    [[nodiscard]] std::size_t within(const Hypothesis& h) const {
        return (h.motor * motorUse_ * sensory_ + h.sensory * sensoryUse_) * irritable_ +
               h.irritable * irritableUse_;
    }

private:
    std::size_t sensory_ = 1, irritable_ = 1;
    std::size_t motorUse_ = 0, sensoryUse_ = 0, irritableUse_ = 0;
    std::size_t perBlock_ = 1, blocks_ = 0;
};

/// There are eight spaces: one for each set of hidden levels.
constexpr std::size_t kSpaces = 8;

/// Everything that is fixed for one loaded model: grid, factors, their classes, and where each item is read.
class Engine {
public:
    Engine(Model model, const Catalogue& catalogue);
    Engine(const Engine&) = delete;
    Engine& operator=(const Engine&) = delete;

    struct Place {
        std::size_t factor = 0;
        std::size_t slot = 0;
    };

    [[nodiscard]] const Model& model() const { return model_; }
    [[nodiscard]] const Grid& grid() const { return grid_; }
    [[nodiscard]] const Factors& factors() const { return factors_; }
    [[nodiscard]] const Classes& classes(std::size_t factor) const { return classes_[factor]; }
    /// Number of the space a factor lives in.
    [[nodiscard]] std::size_t spaceOf(std::size_t factor) const { return spaceOf_[factor]; }
    [[nodiscard]] const Space& space(std::size_t number) const { return spaces_[number]; }
    [[nodiscard]] const std::vector<double>& features(std::size_t factor, const Hypothesis& h) const {
        return classes_[factor].features[classes_[factor].of[spaces_[spaceOf_[factor]].state(h)]];
    }
    /// Where a finding is read; null when the model does not use it.
    [[nodiscard]] const Place* place(const FindingKey& key) const;
    [[nodiscard]] Setting setting(const Exam& exam) const;
    /// Whether a finding changes how others are read rather than being read itself.
    [[nodiscard]] bool changesSetting(const FindingKey& key) const;

    /// Calls f(hypothesis index, hypothesis) over the whole grid in order.
    template <class F> void forHypotheses(F f) const {
        std::size_t index = 0;
        for (std::size_t b = 0; b < grid_.blocks().size(); ++b)
            for (std::size_t m = 0; m < grid_.motorLevels(); ++m)
                for (std::size_t s = 0; s < grid_.sensoryLevels(); ++s)
                    for (std::size_t i = 0; i < 2; ++i)
                        f(index++, Hypothesis{b, m, s, i});
    }

private:
    void boilDown(std::size_t factor);

    Model model_;
    Grid grid_;
    Factors factors_;
    std::vector<Classes> classes_;
    std::array<Space, kSpaces> spaces_;
    std::vector<std::size_t> spaceOf_;
    std::map<FindingKey, Place> places_;
};

/// The posterior over all hypotheses of one exam, with what is needed to ask what-if questions of it.
class Posterior {
public:
    Posterior(const Engine& engine, const Exam& exam);

    /// Probability of each site-side, in the order of Grid::siteSides.
    [[nodiscard]] const std::vector<double>& siteSides() const { return siteSides_; }
    /// The same if this finding had not been recorded.
    [[nodiscard]] std::vector<double> without(const FindingKey& key) const;
    /// P(value) of an unexamined slot, and the site-side posterior (not normalized: joint) for each value.
    [[nodiscard]] std::vector<std::vector<double>> jointWith(std::size_t factor, std::size_t slot) const;
    /// Values of a factor's slots in this exam.
    [[nodiscard]] const std::vector<int>& values(std::size_t factor) const { return values_[factor]; }
    [[nodiscard]] const std::vector<std::size_t>& readFactors() const { return readFactors_; }
    [[nodiscard]] const Setting& setting() const { return setting_; }
    /// Best hypothesis among those of one site-side.
    [[nodiscard]] Hypothesis best(std::size_t siteSide) const;

private:
    [[nodiscard]] std::vector<double> classProbabilities(std::size_t factor,
                                                         const std::vector<int>& values) const;
    [[nodiscard]] std::array<std::vector<double>, kSpaces> logEvidence();
    void weigh(const std::array<std::vector<double>, kSpaces>& evidence);
    void gather();
    /// Sums weight(state) of a space with so many states a block over each site-side.
    template <class Weight>
    [[nodiscard]] std::vector<double> sumBySite(std::size_t perBlock, Weight weight) const;
    [[nodiscard]] std::vector<double> reweighed(std::size_t factor, const std::vector<double>& byClass) const;
    [[nodiscard]] double total(const std::vector<double>& siteSides) const;

    const Engine* engine_;
    Exam exam_;
    Setting setting_;
    std::vector<std::vector<int>> values_;
    std::vector<std::size_t> readFactors_;
    std::vector<std::vector<double>>
        now_;                    ///< by factor: class probabilities of what was read; empty if unread
    std::vector<double> weight_; ///< posterior of each hypothesis
    std::array<std::vector<double>, kSpaces> gathered_; ///< the same summed over what a space leaves out
    std::vector<double> siteSides_;
};

/// Shannon entropy in bits of a distribution that need not be normalized.
[[nodiscard]] double entropyBits(const std::vector<double>& weights);

} // namespace rhizograph
