#include "reasoning/posterior.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <limits>

namespace rhizograph {

Space::Space(const Grid& grid, Depends depends) {
    if (depends.motor) {
        motor_ = grid.motorLevels();
        motorUse_ = 1;
    }
    if (depends.sensory) {
        sensory_ = grid.sensoryLevels();
        sensoryUse_ = 1;
    }
    if (depends.irritable) {
        irritable_ = 2;
        irritableUse_ = 1;
    }
    size_ = grid.blocks().size() * motor_ * sensory_ * irritable_;
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
    spaces_.resize(factors_.size());
    for (std::size_t g = 0; g < factors_.size(); ++g) {
        boilDown(g);
        for (std::size_t slot = 0; slot < factors_[g]->slots().size(); ++slot)
            for (const FindingKey& key : factors_[g]->slots()[slot].keys)
                places_.emplace(key, Place{g, slot});
    }
}

void Engine::boilDown(std::size_t g) {
    const Factor& factor = *factors_[g];
    const Depends& depends = factor.depends();
    spaces_[g] = Space{grid_, depends};
    Classes& classes = classes_[g];
    classes.of.resize(spaces_[g].size());
    struct Hash {
        std::size_t operator()(const std::vector<double>& f) const { return hashOf(f); }
    };
    std::unordered_map<std::vector<double>, std::uint16_t, Hash> seen;
    std::size_t state = 0;
    for (std::size_t b = 0; b < grid_.blocks().size(); ++b)
        for (std::size_t m = 0; m < (depends.motor ? grid_.motorLevels() : 1); ++m)
            for (std::size_t s = 0; s < (depends.sensory ? grid_.sensoryLevels() : 1); ++s)
                for (std::size_t i = 0; i < (depends.irritable ? 2 : 1); ++i) {
                    std::vector<double> features = factor.features({b, m, s, i});
                    const auto found = seen.try_emplace(features, static_cast<std::uint16_t>(seen.size()));
                    if (found.second) classes.features.push_back(std::move(features));
                    classes.of[state++] = found.first->second;
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

Posterior::Posterior(const Engine& engine, const Exam& exam)
    : engine_(&engine), exam_(exam), setting_(engine.setting(exam)), logWeight_(engine.grid().logPrior(exam.subject.age)) {
    const Factors& factors = engine.factors();
    values_.resize(factors.size());
    std::vector<double> evidence(logWeight_.size(), 0.0);
    std::vector<double> logs;
    for (std::size_t g = 0; g < factors.size(); ++g) {
        bool any = false;
        for (std::size_t slot = 0; slot < factors[g]->slots().size(); ++slot) {
            values_[g].push_back(factors[g]->read(slot, exam));
            any = any || values_[g].back() != kUnread;
        }
        if (!any) continue;
        readFactors_.push_back(g);
        logs = classProbabilities(g, values_[g]);
        for (double& p : logs)
            p = std::log(p);
        const Classes& classes = engine.classes(g);
        const Space& space = engine.space(g);
        engine.forHypotheses(
            [&](std::size_t index, const Hypothesis& h) { evidence[index] += logs[classes.of[space.state(h)]]; });
    }
    const double temper = engine.model().temper;
    for (std::size_t i = 0; i < logWeight_.size(); ++i)
        logWeight_[i] += temper * evidence[i];
    normalize();
}

std::vector<double> Posterior::classProbabilities(std::size_t g, const std::vector<int>& values) const {
    return engine_->factors()[g]->probabilities(engine_->classes(g).features, values, setting_);
}

void Posterior::normalize() {
    const double highest = *std::max_element(logWeight_.begin(), logWeight_.end());
    weight_.resize(logWeight_.size());
    for (std::size_t i = 0; i < weight_.size(); ++i)
        weight_[i] = std::exp(logWeight_[i] - highest);
    siteSides_ = sumBySite(weight_);
    double sum = 0;
    // Mirror images are added in pairs, so that a mirrored exam gives the mirrored answer to the last bit.
    const auto& sides = engine_->grid().siteSides();
    for (std::size_t i = 0; i < sides.size(); ++i) {
        if (sides[i].side == Side::left && i + 1 < sides.size() && sides[i + 1].side == Side::right) {
            sum += siteSides_[i] + siteSides_[i + 1];
            ++i;
        } else {
            sum += siteSides_[i];
        }
    }
    for (double& p : siteSides_)
        p /= sum;
    for (double& w : weight_)
        w /= sum;
}

std::vector<double> Posterior::sumBySite(const std::vector<double>& weight) const {
    const Grid& grid = engine_->grid();
    std::vector<double> out(grid.siteSides().size(), 0.0);
    const std::size_t size = grid.motorLevels() * grid.sensoryLevels() * 2;
    double leading = 0;
    for (std::size_t b = 0; b < grid.blocks().size(); ++b) {
        double sum = 0;
        for (std::size_t k = 0; k < size; ++k)
            sum += weight[b * size + k];
        // The two asymmetries of a site are mirror images: add them to each other first.
        const Block& block = grid.blocks()[b];
        if (block.asymmetry == 1) leading = sum;
        else out[block.siteSide] += block.asymmetry == 2 ? leading + sum : sum;
    }
    return out;
}

std::vector<double> Posterior::without(const FindingKey& key) const {
    if (engine_->changesSetting(key)) {
        Exam less = exam_;
        less.clear(key);
        return Posterior{*engine_, less}.siteSides();
    }
    const Engine::Place* place = engine_->place(key);
    if (place == nullptr) return siteSides_;
    std::vector<int> fewer = values_[place->factor];
    fewer[place->slot] = kUnread;
    const std::vector<double> with = classProbabilities(place->factor, values_[place->factor]);
    std::vector<double> ratio = classProbabilities(place->factor, fewer);
    for (std::size_t c = 0; c < ratio.size(); ++c)
        ratio[c] = std::pow(ratio[c] / with[c], engine_->model().temper);
    const Classes& classes = engine_->classes(place->factor);
    const Space& space = engine_->space(place->factor);
    const auto& blocks = engine_->grid().blocks();
    std::vector<double> out(siteSides_.size(), 0.0);
    engine_->forHypotheses([&](std::size_t index, const Hypothesis& h) {
        out[blocks[h.block].siteSide] += weight_[index] * ratio[classes.of[space.state(h)]];
    });
    double sum = 0;
    for (const double p : out)
        sum += p;
    for (double& p : out)
        p /= sum;
    return out;
}

std::vector<std::vector<double>> Posterior::jointWith(std::size_t factor, std::size_t slot) const {
    const Factor& asked = *engine_->factors()[factor];
    const Classes& classes = engine_->classes(factor);
    const Space& space = engine_->space(factor);
    const std::size_t values = asked.slots()[slot].values;
    const std::vector<double> now = classProbabilities(factor, values_[factor]);
    std::vector<std::vector<double>> chance(values);
    for (std::size_t v = 0; v < values; ++v) {
        std::vector<int> more = values_[factor];
        more[slot] = static_cast<int>(v);
        chance[v] = classProbabilities(factor, more);
        for (std::size_t c = 0; c < now.size(); ++c)
            chance[v][c] /= now[c];
    }
    // First gather the weight of each class within each site-side, then spread it over the values.
    const auto& blocks = engine_->grid().blocks();
    std::vector<std::vector<double>> joint(values, std::vector<double>(siteSides_.size(), 0.0));
    std::vector<double> gathered(classes.features.size(), 0.0);
    std::vector<std::uint16_t> touched;
    std::size_t current = 0;
    const auto flush = [&] {
        for (const std::uint16_t c : touched) {
            for (std::size_t v = 0; v < values; ++v)
                joint[v][current] += gathered[c] * chance[v][c];
            gathered[c] = 0;
        }
        touched.clear();
    };
    engine_->forHypotheses([&](std::size_t index, const Hypothesis& h) {
        const std::size_t siteSide = blocks[h.block].siteSide;
        if (siteSide != current) {
            flush();
            current = siteSide;
        }
        if (weight_[index] <= 0) return;
        const std::uint16_t c = classes.of[space.state(h)];
        if (gathered[c] == 0) touched.push_back(c);
        gathered[c] += weight_[index];
    });
    flush();
    return joint;
}

Hypothesis Posterior::best(std::size_t siteSide) const {
    Hypothesis best;
    double highest = -std::numeric_limits<double>::infinity();
    const auto& blocks = engine_->grid().blocks();
    engine_->forHypotheses([&](std::size_t index, const Hypothesis& h) {
        if (blocks[h.block].siteSide == siteSide && logWeight_[index] > highest) {
            highest = logWeight_[index];
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
