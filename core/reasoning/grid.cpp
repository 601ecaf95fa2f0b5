#include "reasoning/grid.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <tuple>

namespace rhizograph {
namespace {

constexpr double kImpossible = -std::numeric_limits<double>::infinity();

std::array<double, 2> scaleOf(Side side, int asymmetry, double minor) {
    if (side == Side::left) return {1, 0};
    if (side == Side::right) return {0, 1};
    if (side == Side::none) return {0, 0};
    if (asymmetry == 1) return {1, minor};
    if (asymmetry == 2) return {minor, 1};
    return {1, 1};
}

double totalWeight(const SiteModel& site) {
    double sum = 0;
    for (const Variant& variant : site.variants)
        sum += variant.weight;
    return sum;
}

} // namespace

Grid::Grid(const Model& model) : model_(&model) {
    for (const Target& target : model.anatomy.targets()) {
        const auto trunk = model.umnTrunk.find(target.name);
        feltWeight_.push_back(model.umnSensoryWeight * (trunk == model.umnTrunk.end() ? 1 : trunk->second));
    }
    makeBlocks();
    findMirrorImages();
    findHits();
    workOutLosses();
    workOutPrior();
}

void Grid::makeBlocks() {
    double sum = 0;
    const auto tempered = [&](double weight) { return std::pow(weight, model_->priorExponent); };
    for (const SiteModel& site : model_->sites)
        for (const auto& [side, weight] : site.sides)
            sum += tempered(weight);
    std::size_t firstVariant = 0;
    for (std::size_t s = 0; s < model_->sites.size(); ++s) {
        const SiteModel& site = model_->sites[s];
        const double variants = totalWeight(site);
        for (const auto& [side, raw] : site.sides) {
            const double weight = tempered(raw);
            siteSides_.push_back({s, side, weight / sum});
            for (std::size_t v = 0; v < site.variants.size(); ++v) {
                const Variant& variant = site.variants[v];
                const int last = side == Side::both && site.equal < 1 ? 2 : 0;
                for (int asymmetry = 0; asymmetry <= last; ++asymmetry) {
                    const double share = side != Side::both ? 1
                                         : asymmetry == 0   ? site.equal
                                                            : (1 - site.equal) / 2;
                    if (share <= 0 || variant.weight <= 0) continue;
                    blocks_.push_back({siteSides_.size() - 1, s, side, &variant, firstVariant + v,
                                       scaleOf(side, asymmetry, site.minor), asymmetry,
                                       weight / sum * variant.weight / variants * share});
                }
            }
        }
        firstVariant += site.variants.size();
    }
}

void Grid::findMirrorImages() {
    std::map<std::tuple<std::size_t, Side, int>, std::size_t> places; // by variant, side and asymmetry
    for (std::size_t b = 0; b < blocks_.size(); ++b)
        places.emplace(std::tuple{blocks_[b].variantNumber, blocks_[b].side, blocks_[b].asymmetry}, b);
    for (const Block& block : blocks_) {
        const int asymmetry = block.asymmetry == 0 ? 0 : 3 - block.asymmetry;
        mirrored_.push_back(places.at({block.variantNumber, rhizograph::mirrored(block.side), asymmetry}));
    }
}

void Grid::workOutPrior() {
    logPrior_.reserve(hypotheses());
    for (const Block& block : blocks_) {
        const HiddenPrior& hidden = model_->sites[block.site].hidden;
        for (std::size_t m = 0; m < motorLevels(); ++m)
            for (std::size_t s = 0; s < sensoryLevels(); ++s)
                for (const double i : {1 - hidden.irritable, hidden.irritable}) {
                    const double p = block.weight * hidden.motor[m] * hidden.sensoryGivenMotor[m][s] * i;
                    logPrior_.push_back(p > 0 ? std::log(p) : kImpossible);
                }
    }
}

std::vector<double> Grid::logPrior(std::optional<int> age) const {
    std::vector<double> out = logPrior_;
    if (!age) return out;
    const std::size_t perBlock = motorLevels() * sensoryLevels() * 2;
    for (std::size_t b = 0; b < blocks_.size(); ++b) {
        const SiteModel& site = model_->sites[blocks_[b].site];
        if (!site.age) continue;
        const double factor = std::log(*age >= site.age->from ? site.age->above : site.age->below);
        for (std::size_t h = b * perBlock; h < (b + 1) * perBlock; ++h)
            out[h] += factor;
    }
    return out;
}

/// The lesions that each bundle of a target passes, with the bundle's share.
void Grid::findHits() {
    for (const SiteModel& site : model_->sites)
        for (const Variant& variant : site.variants)
            for (const Target& target : model_->anatomy.targets()) {
                Hits& hits = hits_.emplace_back();
                for (const Bundle& bundle : target.supply) {
                    std::vector<double> factors;
                    for (const auto& [node, factor] : variant.lesions)
                        if (std::find(bundle.path.begin(), bundle.path.end(), node) != bundle.path.end())
                            factors.push_back(factor);
                    if (!factors.empty()) hits.emplace_back(bundle.share, std::move(factors));
                }
            }
}

const Grid::Hits& Grid::hits(const Block& block, std::size_t target) const {
    return hits_[block.variantNumber * model_->anatomy.targets().size() + target];
}

double Grid::fibre(const Hits& hits, double severity) {
    double loss = 0;
    for (const auto& [share, factors] : hits) {
        double kept = 1;
        for (const double factor : factors)
            kept *= 1 - factor * severity;
        loss += share * (1 - kept);
    }
    return loss;
}

double Grid::length(const Block& block, std::size_t side, const Target& target, double severity) const {
    const double factor = block.variant->length * block.scale[side];
    if (factor <= 0) return 0;
    const double reached = (target.distance - (1 - model_->lengthReach * severity)) / model_->lengthRamp;
    return severity * std::clamp(reached, 0.0, 1.0) * factor;
}

double Grid::deep(const Block& block, std::size_t side, double severity) {
    const double scale = std::max(block.scale[side], block.variant->umnOtherSide * block.scale[1 - side]);
    return block.variant->umn * scale * severity;
}

double Grid::felt(std::size_t b, std::size_t side, std::size_t target, double severity) const {
    return deep(blocks_[b], side, severity) * feltWeight_[target];
}

Grid::Parts Grid::regionParts(std::size_t b, std::size_t side, std::size_t target, double severity) const {
    const Block& block = blocks_[b];
    const Target& region = model_->anatomy.targets()[target];
    Parts parts;
    parts.fibre = fibre(hits(block, target), block.scale[side] * severity);
    parts.length = length(block, side, region, severity);
    parts.deep = deep(block, side, severity);
    parts.umn = felt(b, side, target, severity) * block.variant->umnSkin;
    return parts;
}

void Grid::workOutLosses() {
    const auto& targets = model_->anatomy.targets();
    const std::size_t count = blocks_.size() * 2 * targets.size();
    movement_.assign(count * motorLevels(), 0);
    region_.assign(count * sensoryLevels(), 0);
    fullRegion_.assign(count, 0);
    reflex_.assign(count * motorLevels() * sensoryLevels(), 0);
    const double a = model_->reflex.motorSeverity;
    const double c = model_->reflex.sensorySeverity;
    for (std::size_t b = 0; b < blocks_.size(); ++b) {
        const Block& block = blocks_[b];
        for (std::size_t side = 0; side < 2; ++side) {
            if (block.scale[side] <= 0 && block.variant->umnOtherSide <= 0) continue;
            for (std::size_t t = 0; t < targets.size(); ++t) {
                const Target& target = targets[t];
                const std::size_t at = (b * 2 + side) * targets.size() + t;
                const Hits& lesions = hits(block, t);
                const double k = block.scale[side];
                if (target.kind == TargetKind::movement) {
                    for (std::size_t m = 0; m < motorLevels(); ++m) {
                        const double x = model_->motorLevels[m];
                        const double umn = block.variant->umn * block.scale[side] * x *
                                           (target.pyramidal + (1 - target.pyramidal) * x * x);
                        movement_[at * motorLevels() + m] = 1 - (1 - fibre(lesions, k * x)) *
                                                                    (1 - length(block, side, target, x)) *
                                                                    (1 - umn);
                    }
                } else if (target.kind == TargetKind::region) {
                    for (std::size_t s = 0; s < sensoryLevels(); ++s) {
                        const Parts p = regionParts(b, side, t, model_->sensoryLevels[s]);
                        region_[at * sensoryLevels() + s] = 1 - (1 - p.fibre) * (1 - p.length) * (1 - p.umn);
                    }
                    const Parts full = regionParts(b, side, t, 1);
                    fullRegion_[at] = 1 - (1 - full.fibre) * (1 - full.length);
                } else {
                    for (std::size_t m = 0; m < motorLevels(); ++m)
                        for (std::size_t s = 0; s < sensoryLevels(); ++s) {
                            const double lost = block.variant->areflexia;
                            const double r = 1 - (1 - a * model_->motorLevels[m]) *
                                                     (1 - c * model_->sensoryLevels[s]) * (1 - lost);
                            const double flaccid = lost * block.variant->umn * block.scale[side];
                            reflex_[(at * motorLevels() + m) * sensoryLevels() + s] =
                                1 - (1 - fibre(lesions, k * r)) * (1 - length(block, side, target, r)) *
                                        (1 - flaccid);
                        }
                }
            }
        }
    }
}

double Grid::movementLoss(std::size_t block, std::size_t side, std::size_t target, std::size_t motor) const {
    return movement_[((block * 2 + side) * model_->anatomy.targets().size() + target) * motorLevels() +
                     motor];
}

double Grid::regionLoss(std::size_t block, std::size_t side, std::size_t target, std::size_t sensory) const {
    return region_[((block * 2 + side) * model_->anatomy.targets().size() + target) * sensoryLevels() +
                   sensory];
}

double Grid::fullRegionLoss(std::size_t block, std::size_t side, std::size_t target) const {
    return fullRegion_[(block * 2 + side) * model_->anatomy.targets().size() + target];
}

double Grid::reflexLoss(std::size_t block, std::size_t side, std::size_t target, std::size_t motor,
                        std::size_t sensory) const {
    const std::size_t at = (block * 2 + side) * model_->anatomy.targets().size() + target;
    return reflex_[(at * motorLevels() + motor) * sensoryLevels() + sensory];
}

} // namespace rhizograph
