#pragma once

#include "reasoning/engine.h"

namespace rhizograph {

/// The posterior over all hypotheses of one exam.
class Posterior {
public:
    Posterior(const Engine& engine, const Exam& exam);
    Posterior(const Posterior&) = delete;
    Posterior& operator=(const Posterior&) = delete;

    [[nodiscard]] const Engine& engine() const { return *engine_; }
    /// Probability of each site-side, in the order of Grid::siteSides.
    [[nodiscard]] const std::vector<double>& siteSides() const { return siteSides_; }
    /// Values of a factor's slots in this exam.
    [[nodiscard]] const std::vector<int>& values(std::size_t factor) const { return values_[factor]; }
    /// P(what was read of a factor) by class; empty when nothing was.
    [[nodiscard]] std::span<const double> chance(std::size_t factor) const { return chance_[factor]; }
    [[nodiscard]] const std::vector<std::size_t>& readFactors() const { return readFactors_; }
    [[nodiscard]] const Setting& setting() const { return setting_; }
    /// Probability of each state of a space.
    [[nodiscard]] const std::vector<double>& states(std::size_t space) const { return states_[space]; }
    /// Best hypothesis among those of one site-side.
    [[nodiscard]] Hypothesis best(std::size_t siteSide) const;

private:
    using BySpace = std::array<std::vector<double>, kSpaces>;

    void read(const Exam& exam);
    [[nodiscard]] BySpace logEvidence();
    void addEvidence(std::size_t factor, std::span<const double> logs, BySpace& evidence) const;
    void weigh(const BySpace& evidence, std::optional<int> age);
    void gather();

    const Engine* engine_;
    Setting setting_;
    std::vector<std::vector<int>> values_;
    std::vector<std::size_t> readFactors_;
    std::vector<std::span<const double>> chance_;
    std::vector<std::vector<double>> own_; ///< chances that the engine does not hold
    BySpace states_;
    std::vector<double> siteSides_;
};

/// What the posterior would be if one reading of a factor were other than it is.
class WhatIf {
public:
    WhatIf(const Posterior& posterior, std::size_t factor);

    /// Probability of each site-side if one slot had not been read, by slot; empty for a slot that was not.
    [[nodiscard]] std::vector<std::vector<double>> withoutEach() const;
    /// By value of an unread slot the probability of the value and each site-side together.
    [[nodiscard]] std::vector<std::vector<double>> jointWith(std::size_t slot) const;

private:
    [[nodiscard]] std::vector<double> reweighed(const std::vector<double>& byClass) const;
    [[nodiscard]] std::vector<double> normalized(const std::vector<double>& byClass) const;

    const Posterior* posterior_;
    std::size_t factor_;
    std::vector<double> mass_; ///< by cell: its probability divided by that of what was read
};

/// Sum over site-sides. Mirror images are added in pairs, so that a mirrored exam gives the mirrored answer
/// to the last bit.
[[nodiscard]] double total(const std::vector<SiteSide>& order, const std::vector<double>& siteSides);

/// Shannon entropy in bits of a distribution that need not be normalized.
[[nodiscard]] double entropyBits(const std::vector<double>& weights);

} // namespace rhizograph
