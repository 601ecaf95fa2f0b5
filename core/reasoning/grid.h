#pragma once

#include "reasoning/model.h"

#include <array>
#include <cstdint>

namespace rhizograph {

/// A site on one side: the unit over which posteriors are reported.
struct SiteSide {
    std::size_t site = 0; ///< index into Model::sites
    Side side = Side::none;
    double weight = 0;
};

/// A site-side with one variant and one asymmetry; its hidden severities are still open.
struct Block {
    std::size_t siteSide = 0;
    std::size_t site = 0;
    Side side = Side::none;
    const Variant* variant = nullptr;
    std::size_t variantNumber = 0;     ///< among all variants of all sites
    std::array<double, 2> scale{0, 0}; ///< left, right
    int asymmetry = 0;                 ///< 0 even, 1 left leads, 2 right leads
    double weight = 0;                 ///< prior of the block before the age factor and the hidden severities
};

/// Position of a side in pairs: left 0, right 1.
[[nodiscard]] constexpr std::size_t sideIndex(Side side) {
    return side == Side::right ? 1 : 0;
}

/// One joint hypothesis: a block with motor, sensory and irritability levels.
struct Hypothesis {
    std::size_t block = 0;
    std::size_t motor = 0;
    std::size_t sensory = 0;
    std::size_t irritable = 0;
};

/// All joint hypotheses of a model and the losses each implies, worked out once on load.
/// Hypotheses are numbered ((block * motor levels + motor) * sensory levels + sensory) * 2 + irritability.
class Grid {
public:
    explicit Grid(const Model& model);

    [[nodiscard]] const Model& model() const { return *model_; }
    [[nodiscard]] const std::vector<SiteSide>& siteSides() const { return siteSides_; }
    [[nodiscard]] const std::vector<Block>& blocks() const { return blocks_; }
    [[nodiscard]] std::size_t motorLevels() const { return model_->motorLevels.size(); }
    [[nodiscard]] std::size_t sensoryLevels() const { return model_->sensoryLevels.size(); }
    [[nodiscard]] std::size_t hypotheses() const {
        return blocks_.size() * motorLevels() * sensoryLevels() * 2;
    }

    /// The block with left and right exchanged.
    [[nodiscard]] std::size_t mirrored(std::size_t block) const { return mirrored_[block]; }

    /// Log prior of every hypothesis for this age, not normalized; minus infinity for what cannot be.
    [[nodiscard]] std::vector<double> logPrior(std::optional<int> age) const;

    /// Loss of a movement at this motor level.
    [[nodiscard]] double movementLoss(std::size_t block, std::size_t side, std::size_t target,
                                      std::size_t motor) const;
    /// Loss of a region at this sensory level.
    [[nodiscard]] double regionLoss(std::size_t block, std::size_t side, std::size_t target,
                                    std::size_t sensory) const;
    /// Loss of a region's fibres alone at full sensory severity, for drawings.
    [[nodiscard]] double fullRegionLoss(std::size_t block, std::size_t side, std::size_t target) const;
    /// Loss of a reflex arc's fibres at motor and sensory level.
    [[nodiscard]] double reflexLoss(std::size_t block, std::size_t side, std::size_t target,
                                    std::size_t motor, std::size_t sensory) const;
    /// Fibre, upper motor neuron and length-dependent parts of a region's loss at a sensory severity.
    struct Parts {
        double fibre = 0, umn = 0, length = 0;
        double deep = 0; ///< the upper motor neuron part that deep sensation shows
    };
    [[nodiscard]] Parts regionParts(std::size_t block, std::size_t side, std::size_t target,
                                    double severity) const;
    /// Upper motor neuron part of a region's loss that the patient feels as numbness.
    [[nodiscard]] double felt(std::size_t block, std::size_t side, std::size_t target, double severity) const;

private:
    using Hits = std::vector<std::pair<double, std::vector<double>>>;
    void findHits();
    [[nodiscard]] const Hits& hits(const Block& block, std::size_t target) const;
    [[nodiscard]] static double fibre(const Hits& hits, double severity);
    [[nodiscard]] double length(const Block& block, std::size_t side, const Target& target,
                                double severity) const;
    /// The upper motor neuron part as it is, the worse of this side and the share of the other.
    [[nodiscard]] static double deep(const Block& block, std::size_t side, double severity);
    void makeBlocks();
    void findMirrorImages();
    void workOutLosses();
    void workOutPrior();

    const Model* model_;
    std::vector<SiteSide> siteSides_;
    std::vector<Block> blocks_;
    std::vector<std::size_t> mirrored_; ///< by block
    std::vector<double> feltWeight_;    ///< by target: how much of an upper motor neuron loss is felt there
    std::vector<Hits> hits_;            ///< by variant and target
    std::vector<double> movement_, region_, fullRegion_, reflex_;
    std::vector<double> logPrior_; ///< of an unknown age
};

} // namespace rhizograph
