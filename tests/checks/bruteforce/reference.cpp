#include "checks/bruteforce/reference.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <stdexcept>

namespace bruteforce {

double mixed(double model, double epsilon, std::size_t jointValues) {
    return (1 - epsilon) * model + epsilon / static_cast<double>(jointValues);
}
double sigmoid(double x) {
    return 1 / (1 + std::exp(-x));
}
double clamp01(double x) {
    return std::min(1.0, std::max(0.0, x));
}

double between(const Line& points, double x) {
    if (x <= points.front().first) return points.front().second;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const auto& [x0, y0] = points[i - 1];
        const auto& [x1, y1] = points[i];
        if (x <= x1) return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
    }
    return points.back().second;
}

double nearest(const Row& values, std::size_t index, double center, double sd) {
    const auto below = [&](double x) { return 0.5 * std::erfc(-(x - center) / (sd * std::sqrt(2.0))); };
    const double upper = index + 1 < values.size() ? below((values[index] + values[index + 1]) / 2) : 1.0;
    const double lower = index > 0 ? below((values[index - 1] + values[index]) / 2) : 0.0;
    return upper - lower;
}

std::size_t place(const Json& values, const Json& token) {
    for (std::size_t i = 0; i < values.size(); ++i)
        if (values[i] == token) return i;
    throw std::runtime_error("no value " + token.dump() + " in " + values.dump());
}

std::size_t bin(const Json& limits, double number) {
    std::size_t n = 0;
    for (const Json& limit : limits)
        if (number >= limit.get<double>()) ++n;
    return n;
}

namespace {

Json read(const std::string& path) {
    std::ifstream in(path);
    if (!in) throw std::runtime_error("cannot read " + path);
    return Json::parse(in);
}

std::string nameOf(const Json& target) {
    const std::string full = target["target"];
    return full.substr(full.find('.') + 1);
}

std::vector<Bundle> supplyOf(const Json& target, const Json& anatomy) {
    std::vector<Bundle> supply;
    for (const Json& bundle : target["supply"]) {
        const std::string root = bundle[0];
        std::set<std::string> nodes{root};
        for (const Json& node : anatomy["routes"][bundle[2].get<std::string>()])
            nodes.insert(node.get<std::string>());
        for (const Json& join : anatomy["joins"]) { // a trunk only some roots pass before the node named
            const bool passes = nodes.count(join["before"].get<std::string>()) > 0;
            const auto& roots = join["roots"];
            if (passes && std::find(roots.begin(), roots.end(), root) != roots.end())
                nodes.insert(join["node"].get<std::string>());
        }
        supply.push_back({bundle[1], nodes});
    }
    return supply;
}

const Json& named(const Json& list, const Json& id) {
    for (const Json& entry : list)
        if (entry["id"] == id) return entry;
    throw std::runtime_error("no entry " + id.dump());
}

struct Scales {
    double left, right, probability;
};

/// A two-sided site without an asymmetry has both sides alike.
std::vector<Scales> scalesOf(const std::string& side, const Json* asymmetry) {
    if (side == "left") return {{1, 0, 1}};
    if (side == "right") return {{0, 1, 1}};
    if (side == "none") return {{0, 0, 1}};
    if (!asymmetry) return {{1, 1, 1}};
    const double equal = (*asymmetry)["equal"], minor = (*asymmetry)["minor"];
    return {{1, 1, equal}, {1, minor, (1 - equal) / 2}, {minor, 1, (1 - equal) / 2}};
}

Hypothesis withoutSeverity(const Json& site, const Json& variant, const std::string& side,
                           const Scales& scales) {
    Hypothesis h;
    h.site = site["site"];
    h.reportAs = site.value("report_as", h.site);
    h.group = site["group"];
    h.side = side;
    h.left = scales.left;
    h.right = scales.right;
    h.lesions = variant["lesions"].get<std::map<std::string, double>>();
    h.umn = variant.value("umn", 0.0);
    h.umnSkin = variant.value("umn_skin", 1.0);
    h.umnOtherSide = variant.value("umn_other_side", 0.0);
    h.umnReflex = variant.value("umn_reflex", 1.0);
    h.length = variant.value("length", 0.0);
    h.areflexia = variant.value("areflexia", 0.0);
    return h;
}

void weigh(Hypothesis& h, const Json& site, double prior) {
    h.prior = h.priorAbove = h.priorBelow = prior;
    if (!site.contains("age")) return;
    h.ageLimit = site["age"]["from"];
    h.priorAbove = prior * site["age"]["above"].get<double>();
    h.priorBelow = prior * site["age"]["below"].get<double>();
}

} // namespace

Reference::Reference(const std::string& knowledgeDirectory) {
    anatomy_ = read(knowledgeDirectory + "/anatomy.json");
    observation_ = read(knowledgeDirectory + "/observation.json");
    sites_ = read(knowledgeDirectory + "/sites.json");
    const Json catalogue = read(knowledgeDirectory + "/catalogue.json");
    for (const Json& entry : anatomy_["targets"]) {
        Target target;
        target.index = targets_.size();
        target.supply = supplyOf(entry, anatomy_);
        target.distance = entry.value("distance", 0.0);
        target.pyramidal = entry.value("pyramidal", 0.0);
        target.reserve = entry.value("reserve", 0.0);
        target.trunkWeight = observation_["umn"]["trunk_regions"].value(nameOf(entry), 1.0);
        target.reflexWeight = observation_["reflex"]["umn_targets"].value(nameOf(entry), 0.0);
        targets_[entry["target"]] = target;
    }
    for (const Json& item : catalogue["items"]) {
        const bool isShared = item["scale"].is_string();
        if (isShared && !catalogue["scales"].contains(item["scale"])) continue; // free text bears on nothing
        const Json& scale =
            isShared ? catalogue["scales"].at(item["scale"].get<std::string>()) : item["scale"];
        scaleValues_[item["id"]] = scale.value("values", Json::array());
    }
    makeHypotheses();
}

void Reference::makeHypotheses() {
    const Json& severity = observation_["severity"];
    const double exponent = observation_["prior_exponent"]["value"];
    double total = 0;
    for (const Json& site : sites_["sites"])
        for (const auto& [side, weight] : site["sides"].items()) {
            total += std::pow(weight.get<double>(), exponent);
            sidesOf_[site["site"]].insert(side);
        }
    for (const Json& site : sites_["sites"]) {
        const Json& hidden = named(sites_["hidden"], site["hidden"]);
        const Json* asymmetry =
            site.contains("asymmetry") ? &named(sites_["asymmetry"], site["asymmetry"]) : nullptr;
        double variants = 0;
        for (const Json& variant : site["variants"])
            variants += variant["weight"].get<double>();
        for (const auto& [side, weight] : site["sides"].items())
            for (const Json& variant : site["variants"])
                for (const Scales& scales : scalesOf(side, asymmetry))
                    for (std::size_t m = 0; m < severity["m"].size(); ++m)
                        for (std::size_t s = 0; s < severity["s"].size(); ++s)
                            for (const bool i : {false, true}) {
                                const double irritable = hidden["i"];
                                const double prior = std::pow(weight.get<double>(), exponent) / total *
                                                     variant["weight"].get<double>() / variants *
                                                     scales.probability * hidden["m"][m].get<double>() *
                                                     hidden["s_given_m"][m][s].get<double>() *
                                                     (i ? irritable : 1 - irritable);
                                if (prior <= 0) continue;
                                Hypothesis h = withoutSeverity(site, variant, side, scales);
                                h.m = severity["m"][m];
                                h.s = severity["s"][s];
                                h.irritable = i;
                                weigh(h, site, prior);
                                makeLosses(h);
                                hypotheses_.push_back(h);
                            }
    }
}

void Reference::makeLosses(Hypothesis& h) const {
    h.losses.resize(targets_.size());
    for (const auto& [name, target] : targets_) {
        const std::string kind = name.substr(0, name.find('.'));
        h.losses[target.index] = {lossOf(h, kind, target, "left"), lossOf(h, kind, target, "right")};
    }
}

/// Share of the fibres lost when the hidden severity of the lesions is x.
double Reference::fibre(const Hypothesis& h, const Target& t, const std::string& side, double x) const {
    double loss = 0;
    for (const Bundle& bundle : t.supply) {
        double kept = 1;
        for (const auto& [node, factor] : h.lesions)
            if (bundle.nodes.count(node) > 0) kept *= 1 - factor * h.scale(side) * x;
        loss += bundle.share * (1 - kept);
    }
    return loss;
}

double Reference::lengthLoss(const Hypothesis& h, const Target& t, const std::string& side, double x) const {
    if (h.length == 0) return 0;
    const double reach = observation_["length"]["reach"], ramp = observation_["length"]["ramp"];
    return x * clamp01((t.distance - (1 - reach * x)) / ramp) * h.length * h.scale(side);
}

double Reference::deepLoss(const Hypothesis& h, const std::string& side) const {
    return h.umn * std::max(h.scale(side), h.umnOtherSide * h.scale(otherSide(side))) * h.s;
}

double Reference::felt(const Hypothesis& h, const Target& region, const std::string& side) const {
    if (h.umn == 0) return 0;
    return deepLoss(h, side) * observation_["umn"]["sensory_weight"].get<double>() * region.trunkWeight;
}

double Reference::reflexSeverity(const Hypothesis& h) const {
    const Json& severity = observation_["reflex"]["severity"];
    const double a = severity["motor"], b = severity["sensory"];
    return 1 - (1 - a * h.m) * (1 - b * h.s) * (1 - h.areflexia);
}

double Reference::lossOf(const Hypothesis& h, const std::string& kind, const Target& t,
                         const std::string& side) const {
    double x = 0, umn = 0;
    if (kind == "movement") {
        x = h.m;
        umn = h.umn * h.scale(side) * h.m * (t.pyramidal + (1 - t.pyramidal) * h.m * h.m);
    } else if (kind == "region") {
        x = h.s;
        umn = felt(h, t, side) * h.umnSkin;
    } else if (kind == "reflex") {
        x = reflexSeverity(h);
        umn = h.areflexia * h.umn * h.scale(side);
    } else {
        throw std::runtime_error("no such kind of target: " + kind);
    }
    return 1 - (1 - fibre(h, t, side, x)) * (1 - lengthLoss(h, t, side, x)) * (1 - umn);
}

std::pair<std::string, std::string> Reference::reported(const Hypothesis& h) const {
    const std::set<std::string>& sides = sidesOf_.at(h.reportAs);
    const bool sideless = sides.size() == 1 && sides.count("none") > 0;
    return {h.reportAs, sideless ? "none" : h.side};
}

std::map<std::pair<std::string, std::string>, double> Reference::posterior(const Json& exam) const {
    const auto parts = factors(exam);
    const Json patient = exam.value("patient", Json::object());
    std::vector<double> logs;
    for (const Hypothesis& h : hypotheses_) {
        double sum = std::log(h.priorAt(patient));
        for (const Factor& factor : parts)
            sum += std::log(factor(h));
        logs.push_back(sum);
    }
    const double highest = *std::max_element(logs.begin(), logs.end());
    std::map<std::pair<std::string, std::string>, double> out;
    double total = 0;
    for (std::size_t i = 0; i < hypotheses_.size(); ++i) {
        const double p = std::exp(logs[i] - highest);
        out[reported(hypotheses_[i])] += p;
        total += p;
    }
    for (auto& entry : out)
        entry.second /= total;
    return out;
}

std::vector<Factor> Reference::factors(const Json& exam) const {
    const Json patient = exam.value("patient", Json::object());
    Findings findings;
    for (const Json& finding : exam["findings"])
        if (finding["value"] != "not_testable")
            findings[{finding["item"], finding.value("side", "")}] = finding["value"];
    std::vector<Factor> out;
    strength(findings, out);
    abilities(findings, out);
    yesByLoss(findings, out);
    regions(findings, out);
    reflexes(findings, patient, out);
    deep(findings, patient, out);
    counts(findings, out);
    wasting(findings, out);
    girth(findings, out);
    gait(findings, out);
    tables(findings, out);
    shared(findings, out);
    rash(findings, out);
    drawings(findings, out);
    return out;
}

} // namespace bruteforce
