#include "reasoning/posterior.h"

#include "base/parallel.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <limits>

namespace rhizograph {

Space::Space(const Grid& grid, Depends depends) : blocks_(grid.blocks().size()) {
    if (depends.motor) {
        perBlock_ *= grid.motorLevels();
        motorUse_ = 1;
    }
    if (depends.sensory) {
        sensory_ = grid.sensoryLevels();
        sensoryUse_ = 1;
        perBlock_ *= sensory_;
    }
    if (depends.irritable) {
        irritable_ = 2;
        irritableUse_ = 1;
        perBlock_ *= 2;
    }
}

namespace {

/// Hash of the bytes of a feature vector; +0 and -0 do not both occur.
std::size_t hashOf(const std::vector<double>& features) {
    std::size_t hash = 1469598103934665603ULL;
    for (const double value : features) {
        std::uint64_t bits = 0;
        std::memcpy(&bits, &value, sizeof bits);
        hash = (hash ^ bits) * 1099511628211ULL;
        hash ^= hash >> 29U;
    }
    return hash;
}

Factors allFactors(const Model& model, const Grid& grid, const Catalogue& catalogue) {
    Factors all = makeLossFactors(model, grid, catalogue);
    for (auto make : {makeStrengthFactors, makeReflexFactors, makeSenseFactors, makeSiteFactors}) {
        Factors more = make(model, grid, catalogue);
        std::move(more.begin(), more.end(), std::back_inserter(all));
    }
    return all;
}

} // namespace

Engine::Engine(Model model, const Catalogue& catalogue)
    : model_(std::move(model)), grid_(model_), factors_(allFactors(model_, grid_, catalogue)) {
    classes_.resize(factors_.size());
    for (std::size_t number = 0; number < kSpaces; ++number)
        spaces_[number] = Space{grid_, {(number & 1U) != 0, (number & 2U) != 0, (number & 4U) != 0}};
    for (const auto& factor : factors_) {
        const Depends& depends = factor->depends();
        spaceOf_.push_back((depends.motor ? 1U : 0U) | (depends.sensory ? 2U : 0U) |
                           (depends.irritable ? 4U : 0U));
    }
    inTwoThreads(factors_.size(), [this](std::size_t g) {
        boilDown(g);
        factors_[g]->finish();
    });
    for (std::size_t g = 0; g < factors_.size(); ++g)
        for (std::size_t slot = 0; slot < factors_[g]->slots().size(); ++slot)
            for (const FindingKey& key : factors_[g]->slots()[slot].keys)
                places_.emplace(key, Place{g, slot});
}

void Engine::boilDown(std::size_t g) {
    Factor& factor = *factors_[g];
    const Depends& depends = factor.depends();
    Classes& classes = classes_[g];
    classes.of.resize(spaces_[spaceOf_[g]].size());
    struct Hash {
        std::size_t operator()(const std::vector<double>& f) const { return hashOf(f); }
    };
    std::unordered_map<std::vector<double>, std::uint16_t, Hash> seen;
    std::vector<double> features;
    std::vector<double> before; // of the state before: neighbors are often alike
    std::uint16_t last = 0;
    std::size_t state = 0;
    for (std::size_t b = 0; b < grid_.blocks().size(); ++b)
        for (std::size_t m = 0; m < (depends.motor ? grid_.motorLevels() : 1); ++m)
            for (std::size_t s = 0; s < (depends.sensory ? grid_.sensoryLevels() : 1); ++s)
                for (std::size_t i = 0; i < (depends.irritable ? 2 : 1); ++i) {
                    features.clear();
                    factor.features({b, m, s, i}, features);
                    if (state == 0 || features != before) {
                        const auto found =
                            seen.try_emplace(features, static_cast<std::uint16_t>(seen.size()));
                        if (found.second) classes.features.push_back(features);
                        last = found.first->second;
                        std::swap(features, before);
                    }
                    classes.of[state++] = last;
                }
}

const Engine::Place* Engine::place(const FindingKey& key) const {
    const auto found = places_.find(key);
    return found == places_.end() ? nullptr : &found->second;
}

Setting Engine::setting(const Exam& exam) const {
    Setting setting;
    setting.ageBand = model_.ageBand(exam.subject.age);
    for (const auto& [item, token] : model_.strength.unreliableWhen)
        for (const Side side : {Side::left, Side::right})
            if (const Finding* finding = exam.find({item, side});
                finding != nullptr && finding->value == Value::token(token))
                setting.unreliable[sideIndex(side)] = true;
    return setting;
}

bool Engine::changesSetting(const FindingKey& key) const {
    return std::any_of(model_.strength.unreliableWhen.begin(), model_.strength.unreliableWhen.end(),
                       [&](const auto& when) { return when.first == key.item; });
}

template <class Weight> std::vector<double> Posterior::sumBySite(std::size_t perBlock, Weight weight) const {
    const Grid& grid = engine_->grid();
    std::vector<double> out(grid.siteSides().size(), 0.0);
    double leading = 0;
    for (std::size_t b = 0; b < grid.blocks().size(); ++b) {
        double sum = 0;
        for (std::size_t state = b * perBlock; state < (b + 1) * perBlock; ++state)
            sum += weight(state);
        // The two asymmetries of a site are mirror images: add them to each other first.
        const Block& block = grid.blocks()[b];
        if (block.asymmetry == 1)
            leading = sum;
        else
            out[block.siteSide] += block.asymmetry == 2 ? leading + sum : sum;
    }
    return out;
}

Posterior::Posterior(const Engine& engine, const Exam& exam)
    : engine_(&engine), exam_(exam), setting_(engine.setting(exam)) {
    weigh(logEvidence());
    gather();
}

std::vector<double> Posterior::classProbabilities(std::size_t g, const std::vector<int>& values) const {
    return engine_->factors()[g]->probabilities(engine_->classes(g).features, values, setting_);
}

/// Log likelihood of what was read, kept apart by the hidden levels it depends on: most of it needs few of
/// them.
std::array<std::vector<double>, kSpaces> Posterior::logEvidence() {
    const Factors& factors = engine_->factors();
    std::array<std::vector<double>, kSpaces> evidence;
    values_.resize(factors.size());
    now_.resize(factors.size());
    for (std::size_t g = 0; g < factors.size(); ++g) {
        bool any = false;
        for (std::size_t slot = 0; slot < factors[g]->slots().size(); ++slot) {
            values_[g].push_back(factors[g]->read(slot, exam_));
            any = any || values_[g].back() != kUnread;
        }
        if (!any) continue;
        readFactors_.push_back(g);
        now_[g] = classProbabilities(g, values_[g]);
        std::vector<double> logs = now_[g];
        for (double& p : logs)
            p = std::log(p);
        const std::size_t number = engine_->spaceOf(g);
        evidence[number].resize(engine_->space(number).size(), 0.0);
        const Classes& classes = engine_->classes(g);
        for (std::size_t state = 0; state < classes.of.size(); ++state)
            evidence[number][state] += logs[classes.of[state]];
    }
    return evidence;
}

void Posterior::weigh(const std::array<std::vector<double>, kSpaces>& evidence) {
    weight_ = engine_->grid().logPrior(exam_.subject.age);
    double highest = -std::numeric_limits<double>::infinity();
    engine_->forHypotheses([&](std::size_t index, const Hypothesis& h) {
        double& weight = weight_[index];
        if (weight == -std::numeric_limits<double>::infinity()) return;
        double sum = 0;
        for (std::size_t number = 0; number < kSpaces; ++number)
            if (!evidence[number].empty()) sum += evidence[number][engine_->space(number).state(h)];
        weight += sum;
        highest = std::max(highest, weight);
    });
    for (double& weight : weight_)
        weight = std::exp(weight - highest);
    siteSides_ =
        sumBySite(engine_->space(kSpaces - 1).perBlock(), [&](std::size_t state) { return weight_[state]; });
    const double sum = total(siteSides_);
    for (double& p : siteSides_)
        p /= sum;
    for (double& weight : weight_)
        weight /= sum;
}

void Posterior::gather() {
    for (std::size_t number = 0; number < kSpaces; ++number)
        gathered_[number].assign(engine_->space(number).size(), 0.0);
    engine_->forHypotheses([&](std::size_t index, const Hypothesis& h) {
        if (weight_[index] <= 0) return;
        for (std::size_t number = 0; number < kSpaces; ++number)
            gathered_[number][engine_->space(number).state(h)] += weight_[index];
    });
}

/// Mirror images are added in pairs, so that a mirrored exam gives the mirrored answer to the last bit.
double Posterior::total(const std::vector<double>& siteSides) const {
    const auto& sides = engine_->grid().siteSides();
    double sum = 0;
    for (std::size_t i = 0; i < sides.size(); ++i) {
        if (sides[i].side == Side::left && i + 1 < sides.size() && sides[i + 1].side == Side::right) {
            sum += siteSides[i] + siteSides[i + 1];
            ++i;
        } else {
            sum += siteSides[i];
        }
    }
    return sum;
}

/// The sites when every class of a factor weighs so much more or less.
std::vector<double> Posterior::reweighed(std::size_t g, const std::vector<double>& byClass) const {
    const std::size_t number = engine_->spaceOf(g);
    const std::vector<double>& gathered = gathered_[number];
    const std::vector<std::uint16_t>& classOf = engine_->classes(g).of;
    return sumBySite(engine_->space(number).perBlock(),
                     [&](std::size_t state) { return gathered[state] * byClass[classOf[state]]; });
}

std::vector<double> Posterior::without(const FindingKey& key) const {
    if (engine_->changesSetting(key)) {
        Exam less = exam_;
        less.clear(key);
        return Posterior{*engine_, less}.siteSides();
    }
    const Engine::Place* place = engine_->place(key);
    if (place == nullptr) return siteSides_;
    const std::size_t g = place->factor;
    // Half of a pair that is only read together (one girth without the other) says nothing yet.
    if (now_[g].empty()) return siteSides_;
    std::vector<int> fewer = values_[g];
    fewer[place->slot] = kUnread;
    std::vector<double> ratio = classProbabilities(g, fewer);
    for (std::size_t c = 0; c < ratio.size(); ++c)
        ratio[c] /= now_[g][c];
    std::vector<double> out = reweighed(g, ratio);
    const double sum = total(out);
    for (double& p : out)
        p /= sum;
    return out;
}

std::vector<std::vector<double>> Posterior::jointWith(std::size_t g, std::size_t slot) const {
    const Factor& asked = *engine_->factors()[g];
    const Classes& classes = engine_->classes(g);
    std::vector<std::vector<double>> chance =
        asked.slotProbabilities(classes.features, values_[g], slot, setting_);
    if (!now_[g].empty())
        for (std::vector<double>& byClass : chance)
            for (std::size_t c = 0; c < byClass.size(); ++c)
                byClass[c] /= now_[g][c];
    std::vector<std::vector<double>> joint;
    for (const std::vector<double>& byClass : chance)
        joint.push_back(reweighed(g, byClass));
    return joint;
}

Hypothesis Posterior::best(std::size_t siteSide) const {
    Hypothesis best;
    double highest = -1;
    const auto& blocks = engine_->grid().blocks();
    engine_->forHypotheses([&](std::size_t index, const Hypothesis& h) {
        if (blocks[h.block].siteSide == siteSide && weight_[index] > highest) {
            highest = weight_[index];
            best = h;
        }
    });
    return best;
}

double entropyBits(const std::vector<double>& weights) {
    double sum = 0;
    for (const double w : weights)
        sum += w;
    if (sum <= 0) return 0;
    double bits = 0;
    for (const double w : weights)
        if (w > 0) bits -= w / sum * std::log2(w / sum);
    return bits;
}

} // namespace rhizograph
