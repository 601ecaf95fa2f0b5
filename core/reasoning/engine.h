#pragma once

#include "reasoning/factor.h"

#include <array>
#include <cstdint>
#include <map>
#include <vector>

namespace rhizograph {

/// Blocks of one site-side that lean to the same side: what is summed together before mirror images are.
using GroupNumber = std::uint16_t;

/// The hypotheses of a factor boiled down to classes of equal features.
struct Classes {
    std::vector<FeatureTable::Number> of; ///< class by state of the factor's space
    FeatureTable features;                ///< by class

    /// The states of one class in one group of blocks.
    struct Cell {
        GroupNumber group = 0;
        FeatureTable::Number of = 0; ///< its class
    };
    std::vector<Cell> cells;
    std::vector<std::uint16_t> cellOf; ///< cell by state of the factor's space
    /// By value its chance by class, for a factor of one slot that does not ask for the setting; else empty.
    std::vector<std::vector<double>> ahead;
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

/// There are eight spaces: one for each set of hidden levels. A space's number has bit 0 set for motor, bit 1
/// for sensory, bit 2 for irritability.
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
    [[nodiscard]] std::span<const double> features(std::size_t factor, const Hypothesis& h) const {
        return classes_[factor].features.row(classes_[factor].of[spaces_[spaceOf_[factor]].state(h)]);
    }
    /// Where a finding is read; null when the model does not use it.
    [[nodiscard]] const Place* place(const FindingKey& key) const;
    [[nodiscard]] Setting setting(const Exam& exam) const;
    /// Whether a finding changes how others are read rather than being read itself.
    [[nodiscard]] bool changesSetting(const FindingKey& key) const;

    [[nodiscard]] GroupNumber groupOf(std::size_t block) const { return groupOf_[block]; }
    /// One more than there are groups: the last sum stays 0.
    [[nodiscard]] std::size_t groupSums() const { return groups_ + 1; }
    /// Sums of groups added up by site-side. The two lopsided groups of a site are mirror images and are
    /// added to each other first, so that a mirrored exam gives the mirrored answer to the last bit.
    [[nodiscard]] std::vector<double> bySiteSide(const std::vector<double>& groupSums) const;

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
    void group();
    void makeClasses();
    /// By factor the one before it that reads the same on the other side, or itself.
    [[nodiscard]] std::vector<std::size_t> twins() const;
    void boilDown(std::size_t factor);
    /// Takes the classes of the same factor of the other side, hypothesis by mirror image.
    void mirror(std::size_t factor, std::size_t twin);
    void workAhead(std::size_t factor);
    void findCells(std::size_t factor);

    Model model_;
    Grid grid_;
    Factors factors_;
    std::vector<Classes> classes_;
    std::array<Space, kSpaces> spaces_;
    std::vector<std::size_t> spaceOf_;
    std::map<FindingKey, Place> places_;
    std::size_t groups_ = 0;
    std::vector<GroupNumber> groupOf_;                     ///< by block
    std::vector<std::array<GroupNumber, 3>> groupsOfSide_; ///< by site-side: even, left leads, right leads
};

} // namespace rhizograph
