#include "reasoning/posterior.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rhizograph {
namespace {

/// Hypotheses that are less likely than the best one by this factor (as a natural logarithm) weigh nothing:
/// no reading is so telling that it could bring one back to where it can be seen.
constexpr double kNegligible = -80;

} // namespace

Posterior::Posterior(const Engine& engine, const Exam& exam)
    : engine_(&engine), setting_(engine.setting(exam)) {
    read(exam);
    weigh(logEvidence(), exam.subject.age);
    gather();
}

void Posterior::read(const Exam& exam) {
    const Factors& factors = engine_->factors();
    values_.resize(factors.size());
    chance_.resize(factors.size());
    for (const auto& [key, finding] : exam.findings()) {
        const Engine::Place* place = engine_->place(key);
        if (place == nullptr) continue;
        const int value = factors[place->factor]->read(place->slot, exam);
        if (value == kUnread) continue;
        std::vector<int>& values = values_[place->factor];
        if (values.empty()) {
            values.assign(factors[place->factor]->slots().size(), kUnread);
            readFactors_.push_back(place->factor);
        }
        values[place->slot] = value;
    }
    std::sort(readFactors_.begin(), readFactors_.end());
    for (std::size_t g = 0; g < factors.size(); ++g)
        if (values_[g].empty()) values_[g].assign(factors[g]->slots().size(), kUnread);
}

/// Log likelihood of what was read, kept apart by the hidden levels it depends on: most of it needs few of
/// them.
Posterior::BySpace Posterior::logEvidence() {
    BySpace evidence;
    for (std::size_t number = 0; number < kSpaces; ++number)
        evidence[number].assign(engine_->space(number).size(), 0.0);
    own_.reserve(readFactors_.size()); // chances are looked at where they lie
    std::vector<double> logs;
    for (const std::size_t g : readFactors_) {
        const Classes& classes = engine_->classes(g);
        if (classes.ahead.empty()) {
            own_.push_back(engine_->factors()[g]->probabilities(classes.features, values_[g], setting_));
            chance_[g] = own_.back();
        } else {
            chance_[g] = classes.ahead[static_cast<std::size_t>(values_[g].front())];
        }
        logs.assign(chance_[g].begin(), chance_[g].end());
        for (double& p : logs)
            p = std::log(p);
        addEvidence(g, logs, evidence);
    }
    return evidence;
}

void Posterior::addEvidence(std::size_t g, std::span<const double> logs, BySpace& evidence) const {
    std::vector<double>& sum = evidence[engine_->spaceOf(g)];
    const std::vector<FeatureTable::Number>& of = engine_->classes(g).of;
    for (std::size_t state = 0; state < of.size(); ++state)
        sum[state] += logs[of[state]];
}

void Posterior::weigh(const BySpace& evidence, std::optional<int> age) {
    const Grid& grid = engine_->grid();
    const std::size_t motor = grid.motorLevels();
    const std::size_t sensory = grid.sensoryLevels();
    std::vector<double> weight = grid.logPrior(age);
    double highest = -std::numeric_limits<double>::infinity();
    std::size_t h = 0;
    for (std::size_t b = 0; b < grid.blocks().size(); ++b)
        for (std::size_t m = b * motor; m < (b + 1) * motor; ++m)
            for (std::size_t s = 0; s < sensory; ++s) {
                const std::size_t bs = b * sensory + s;
                const std::size_t ms = m * sensory + s;
                const double calm = evidence[0][b] + evidence[1][m] + evidence[2][bs] + evidence[3][ms];
                for (std::size_t i = 0; i < 2; ++i, ++h) {
                    weight[h] += calm + evidence[4][b * 2 + i] + evidence[5][m * 2 + i] +
                                 evidence[6][bs * 2 + i] + evidence[7][ms * 2 + i];
                    highest = std::max(highest, weight[h]);
                }
            }
    for (double& each : weight)
        each = each - highest < kNegligible ? 0 : std::exp(each - highest);
    states_[kSpaces - 1] = std::move(weight);
}

/// Sums the weights over what each space leaves out, and makes them probabilities.
void Posterior::gather() {
    const Grid& grid = engine_->grid();
    const std::size_t motor = grid.motorLevels();
    const std::size_t sensory = grid.sensoryLevels();
    for (std::size_t number = 0; number + 1 < kSpaces; ++number)
        states_[number].assign(engine_->space(number).size(), 0.0);
    const std::vector<double>& weight = states_[kSpaces - 1];
    std::vector<double> groups(engine_->groupSums(), 0.0);
    for (std::size_t b = 0; b < grid.blocks().size(); ++b) {
        for (std::size_t m = b * motor; m < (b + 1) * motor; ++m)
            for (std::size_t s = 0; s < sensory; ++s) {
                const std::size_t bs = b * sensory + s;
                const std::size_t ms = m * sensory + s;
                for (std::size_t i = 0; i < 2; ++i) {
                    const double w = weight[ms * 2 + i];
                    states_[3][ms] += w;
                    states_[5][m * 2 + i] += w;
                    states_[6][bs * 2 + i] += w;
                }
                states_[1][m] += states_[3][ms];
                states_[2][bs] += states_[3][ms];
            }
        for (std::size_t i = 0; i < 2; ++i) {
            for (std::size_t m = b * motor; m < (b + 1) * motor; ++m)
                states_[4][b * 2 + i] += states_[5][m * 2 + i];
            states_[0][b] += states_[4][b * 2 + i];
        }
        groups[engine_->groupOf(b)] += states_[0][b];
    }
    siteSides_ = engine_->bySiteSide(groups);
    const double sum = total(grid.siteSides(), siteSides_);
    for (double& p : siteSides_)
        p /= sum;
    for (auto& space : states_)
        for (double& p : space)
            p /= sum;
}

Hypothesis Posterior::best(std::size_t siteSide) const {
    Hypothesis best;
    double highest = -1;
    const auto& blocks = engine_->grid().blocks();
    engine_->forHypotheses([&](std::size_t index, const Hypothesis& h) {
        if (blocks[h.block].siteSide == siteSide && states_[kSpaces - 1][index] > highest) {
            highest = states_[kSpaces - 1][index];
            best = h;
        }
    });
    return best;
}

WhatIf::WhatIf(const Posterior& posterior, std::size_t g)
    : posterior_(&posterior), factor_(g), mass_(posterior.engine().classes(g).cells.size(), 0.0) {
    const Engine& engine = posterior.engine();
    const Classes& classes = engine.classes(g);
    const std::vector<double>& states = posterior.states(engine.spaceOf(g));
    for (std::size_t state = 0; state < states.size(); ++state)
        mass_[classes.cellOf[state]] += states[state];
    const std::span<const double> read = posterior.chance(g);
    if (read.empty()) return;
    for (std::size_t cell = 0; cell < mass_.size(); ++cell)
        mass_[cell] /= read[classes.cells[cell].of];
}

/// The sites when every class of the factor has this chance in place of that of what was read.
std::vector<double> WhatIf::reweighed(const std::vector<double>& byClass) const {
    const Engine& engine = posterior_->engine();
    const std::vector<Classes::Cell>& cells = engine.classes(factor_).cells;
    std::vector<double> groups(engine.groupSums(), 0.0);
    for (std::size_t cell = 0; cell < mass_.size(); ++cell)
        groups[cells[cell].group] += mass_[cell] * byClass[cells[cell].of];
    return engine.bySiteSide(groups);
}

/// The same as probabilities of the sites.
std::vector<double> WhatIf::normalized(const std::vector<double>& byClass) const {
    std::vector<double> sites = reweighed(byClass);
    const double sum = total(posterior_->engine().grid().siteSides(), sites);
    for (double& p : sites)
        p /= sum;
    return sites;
}

std::vector<std::vector<double>> WhatIf::withoutEach() const {
    const Engine& engine = posterior_->engine();
    const Classes& classes = engine.classes(factor_);
    const std::vector<int>& values = posterior_->values(factor_);
    if (!classes.ahead.empty()) return {normalized(std::vector<double>(classes.features.size(), 1.0))};
    std::vector<std::vector<double>> out(values.size());
    const auto without =
        engine.factors()[factor_]->withoutEach(classes.features, values, posterior_->setting());
    for (std::size_t slot = 0; slot < values.size(); ++slot)
        if (!without[slot].empty()) out[slot] = normalized(without[slot]);
    return out;
}

std::vector<std::vector<double>> WhatIf::jointWith(std::size_t slot) const {
    const Engine& engine = posterior_->engine();
    const Classes& classes = engine.classes(factor_);
    std::vector<std::vector<double>> ofSlot;
    if (classes.ahead.empty())
        ofSlot = engine.factors()[factor_]->slotProbabilities(classes.features, posterior_->values(factor_),
                                                              slot, posterior_->setting());
    std::vector<std::vector<double>> joint;
    for (const std::vector<double>& byClass : classes.ahead.empty() ? ofSlot : classes.ahead)
        joint.push_back(reweighed(byClass));
    return joint;
}

double total(const std::vector<SiteSide>& order, const std::vector<double>& siteSides) {
    double sum = 0;
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (order[i].side == Side::left && i + 1 < order.size() && order[i + 1].side == Side::right) {
            sum += siteSides[i] + siteSides[i + 1];
            ++i;
        } else {
            sum += siteSides[i];
        }
    }
    return sum;
}

double entropyBits(const std::vector<double>& weights) {
    double sum = 0;
    double weighed = 0;
    for (const double w : weights)
        if (w > 0) {
            sum += w;
            weighed += w * std::log2(w);
        }
    return sum > 0 ? std::max(0.0, std::log2(sum) - weighed / sum) : 0;
}

} // namespace rhizograph
