#include "reasoning/localizer.h"

#include "base/parallel.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rhizograph {
namespace {

constexpr double kReported = 0.01;   ///< sites below this are not listed
constexpr double kReasonFloor = 0.1; ///< decibans below which a finding is no reason
constexpr double kOddsLimit = 1e-12; ///< keeps log odds finite

double logOdds(double p) {
    const double bounded = std::clamp(p, kOddsLimit, 1 - kOddsLimit);
    return std::log10(bounded / (1 - bounded));
}

} // namespace

Result<std::shared_ptr<const Localizer>> Localizer::load(const std::filesystem::path& directory,
                                                         const Catalogue& catalogue) {
    auto model = loadModel(directory, catalogue);
    if (!model) return model.problems();
    return std::make_shared<const Localizer>(std::move(model).value(), catalogue);
}

Localizer::Localizer(Model model, const Catalogue& catalogue)
    : engine_(std::move(model), catalogue), catalogue_(&catalogue) {
    const auto& siteSides = engine_.grid().siteSides();
    for (std::size_t i = 0; i < siteSides.size(); ++i) {
        const SiteModel& site = engine_.model().sites[siteSides[i].site];
        const Side side = sided(site.reportAs) ? siteSides[i].side : Side::none;
        auto found = std::find_if(reported_.begin(), reported_.end(), [&](const Reported& r) {
            return r.site == site.reportAs && r.side == side;
        });
        if (found == reported_.end()) {
            reported_.push_back({site.reportAs, side, {}});
            found = reported_.end() - 1;
        }
        found->parts.push_back(i);
    }
}

bool Localizer::sided(const SiteId& id) const {
    for (const SiteModel& site : engine_.model().sites)
        if (site.reportAs == id && site.id == id)
            return std::none_of(site.sides.begin(), site.sides.end(),
                                [](const auto& entry) { return entry.first == Side::none; });
    return true;
}

double Localizer::sum(const std::vector<double>& siteSides, const Reported& reported) const {
    return std::accumulate(reported.parts.begin(), reported.parts.end(), 0.0,
                           [&](double so, std::size_t part) { return so + siteSides[part]; });
}

Support Localizer::support(double probability) const {
    const Model& model = engine_.model();
    if (probability >= model.supportStrong) return Support::strong;
    if (probability >= model.supportModerate) return Support::moderate;
    return probability >= model.supportWeak ? Support::weak : Support::none;
}

std::vector<Localizer::SiteProbability> Localizer::posterior(const Exam& exam) const {
    const Posterior posterior{engine_, exam};
    std::vector<SiteProbability> out;
    for (const Reported& reported : reported_)
        out.push_back({reported.site, reported.side, sum(posterior.siteSides(), reported)});
    return out;
}

void Localizer::localize(const Exam& exam, Assessment& assessment) const {
    const Posterior posterior{engine_, exam};
    assessment.nothingKnown = posterior.readFactors().empty();
    std::vector<std::size_t> order(reported_.size());
    std::iota(order.begin(), order.end(), 0U);
    std::vector<double> probability;
    for (const Reported& reported : reported_)
        probability.push_back(sum(posterior.siteSides(), reported));
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return probability[a] > probability[b]; });
    std::vector<std::size_t> listed;
    for (const std::size_t index : order) {
        if (probability[index] < kReported) break;
        assessment.localization.push_back({reported_[index].site,
                                           reported_[index].side,
                                           probability[index],
                                           support(probability[index]),
                                           {},
                                           {}});
        listed.push_back(index);
    }
    addReasons(posterior, exam, assessment.localization, listed);
    if (listed.empty()) return;
    assessment.fit = fit(posterior, reported_[listed.front()]);
    assessment.levels = levels(reported_[listed.front()].site);
}

void Localizer::addReasons(const Posterior& posterior, const Exam& exam, std::vector<SiteResult>& results,
                           const std::vector<std::size_t>& listed) const {
    std::map<std::size_t, std::vector<std::vector<double>>> withoutEach; // by factor, then slot
    for (const std::size_t g : posterior.readFactors())
        withoutEach.emplace(g, WhatIf{posterior, g}.withoutEach());
    for (const auto& [key, finding] : exam.findings()) {
        if (!finding.value.testable()) continue;
        std::vector<double> without;
        if (engine_.changesSetting(key)) {
            Exam less = exam;
            less.clear(key);
            without = Posterior{engine_, less}.siteSides();
        } else if (const Engine::Place* place = engine_.place(key)) {
            const auto factor = withoutEach.find(place->factor);
            if (factor != withoutEach.end()) without = factor->second[place->slot];
        }
        if (without.empty()) continue;
        for (std::size_t i = 0; i < results.size(); ++i) {
            const double gain =
                10 * (logOdds(results[i].probability) - logOdds(sum(without, reported_[listed[i]])));
            if (gain >= kReasonFloor)
                results[i].speaksFor.push_back({key, gain});
            else if (gain <= -kReasonFloor)
                results[i].speaksAgainst.push_back({key, gain});
        }
    }
    for (SiteResult& result : results)
        for (auto* reasons : {&result.speaksFor, &result.speaksAgainst})
            std::stable_sort(reasons->begin(), reasons->end(), [](const Reason& a, const Reason& b) {
                return std::abs(a.decibans) > std::abs(b.decibans);
            });
}

Localizer::Surprise Localizer::surpriseOf(const Posterior& posterior, const Hypothesis& h, std::size_t g,
                                          std::size_t slot) const {
    const Factor& factor = *engine_.factors()[g];
    const std::span<const double> features = engine_.features(g, h);
    std::vector<int> values = posterior.values(g);
    const auto read = static_cast<std::size_t>(values[slot]);
    std::vector<double> chance;
    for (std::size_t v = 0; v < factor.slots()[slot].values; ++v) {
        values[slot] = static_cast<int>(v);
        chance.push_back(factor.probability(features, values, posterior.setting()));
    }
    const double sum = std::accumulate(chance.begin(), chance.end(), 0.0);
    Surprise surprise;
    double square = 0;
    for (double& p : chance) {
        p /= sum;
        if (p <= 0) continue;
        surprise.mean += p * std::log(p);
        square += p * std::log(p) * std::log(p);
    }
    surprise.observed = std::log(std::max(chance[read], 1e-12));
    surprise.variance = std::max(square - surprise.mean * surprise.mean, 0.0);
    return surprise;
}

Fit Localizer::fit(const Posterior& posterior, const Reported& best) const {
    const auto leading =
        std::max_element(best.parts.begin(), best.parts.end(), [&](std::size_t a, std::size_t b) {
            return posterior.siteSides()[a] < posterior.siteSides()[b];
        });
    const Hypothesis h = posterior.best(*leading);
    double excess = 0;
    double variance = 0;
    Fit result;
    for (const std::size_t g : posterior.readFactors())
        for (std::size_t slot = 0; slot < posterior.values(g).size(); ++slot)
            if (posterior.values(g)[slot] != kUnread) {
                const Surprise surprise = surpriseOf(posterior, h, g, slot);
                excess += surprise.observed - surprise.mean;
                variance += surprise.variance;
                const double sd = std::sqrt(surprise.variance);
                if (sd > 0 && surprise.observed - surprise.mean < -2 * sd)
                    result.worst.push_back(
                        {engine_.factors()[g]->slots()[slot].keys, (surprise.mean - surprise.observed) / sd});
            }
    std::stable_sort(result.worst.begin(), result.worst.end(),
                     [](const FitWorst& a, const FitWorst& b) { return a.surprise > b.surprise; });
    if (result.worst.size() > 5) result.worst.resize(5);
    result.z = variance > 0 ? excess / std::sqrt(variance) : 0;
    result.verdict = result.z > engine_.model().fitsAbove     ? FitVerdict::fits
                     : result.z > engine_.model().partlyAbove ? FitVerdict::partly
                                                              : FitVerdict::poor;
    return result;
}

std::vector<Level> Localizer::levels(const SiteId& site) const {
    for (const LevelModel& level : engine_.model().levels)
        if (level.site == site) return level.fits;
    return {};
}

double Localizer::cost(const Item& item) const {
    const Model& model = engine_.model();
    if (const auto own = model.itemCost.find(item.id.text()); own != model.itemCost.end()) return own->second;
    const std::string prefix = item.id.text().substr(0, item.id.text().find('.'));
    if (const auto kind = model.stepCost.find(prefix); kind != model.stepCost.end()) return kind->second;
    const auto step = model.stepCost.find(item.step.text());
    return step == model.stepCost.end() ? 1 : step->second;
}

std::vector<NextTest> Localizer::nextTests(const Exam& exam) const {
    const Posterior posterior{engine_, exam};
    const double now = entropyBits(posterior.siteSides());
    using Ranked = std::vector<std::pair<double, NextTest>>;
    std::vector<Ranked> byFactor(engine_.factors().size());
    inTwoThreads(byFactor.size(), [&](std::size_t g) {
        const Factor& factor = *engine_.factors()[g];
        const WhatIf whatIf{posterior, g};
        for (std::size_t slot = 0; slot < factor.slots().size(); ++slot) {
            const FindingKey& key = factor.slots()[slot].keys.front();
            if (exam.find(key) != nullptr || factor.slots()[slot].keys.size() > 1) continue;
            double after = 0;
            for (const std::vector<double>& joint : whatIf.jointWith(slot))
                after += std::accumulate(joint.begin(), joint.end(), 0.0) * entropyBits(joint);
            const double gain = std::max(0.0, now - after);
            byFactor[g].emplace_back(gain / cost(*catalogue_->find(key.item)),
                                     NextTest{key, gain, {}, false});
        }
    });
    Ranked ranked;
    for (Ranked& tests : byFactor)
        std::move(tests.begin(), tests.end(), std::back_inserter(ranked));
    std::stable_sort(ranked.begin(), ranked.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<NextTest> out;
    for (auto& [worth, test] : ranked)
        out.push_back(std::move(test));
    return out;
}

std::set<std::string> Localizer::siteNames() const {
    std::set<std::string> names;
    for (const SiteModel& site : engine_.model().sites)
        names.insert(site.id.text());
    return names;
}

const std::string* Localizer::label(const SiteId& id) const {
    for (const SiteModel& site : engine_.model().sites)
        if (site.id == id) return &site.label;
    return nullptr;
}

std::vector<std::string> Localizer::territory(const SiteId& id, double share) const {
    std::vector<std::string> out;
    const Grid& grid = engine_.grid();
    const auto& targets = engine_.model().anatomy.targets();
    for (std::size_t t = 0; t < targets.size(); ++t) {
        if (targets[t].kind != TargetKind::region) continue;
        double loss = 0;
        for (std::size_t b = 0; b < grid.blocks().size(); ++b)
            if (engine_.model().sites[grid.blocks()[b].site].id == id)
                loss = std::max({loss, grid.fullRegionLoss(b, 0, t), grid.fullRegionLoss(b, 1, t)});
        if (loss >= share) out.push_back(targets[t].name);
    }
    return out;
}

} // namespace rhizograph
