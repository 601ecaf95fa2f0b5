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

double between(const Json& points, double x) {
    if (x <= points.front()[0].get<double>()) return points.front()[1];
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double x0 = points[i - 1][0], x1 = points[i][0], y0 = points[i - 1][1], y1 = points[i][1];
        if (x <= x1) return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
    }
    return points.back()[1];
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

Target targetOf(const Json& entry, const Json& anatomy) {
    Target target;
    target.distance = entry.value("distance", 0.0);
    target.pyramidal = entry.value("pyramidal", 0.0);
    target.reserve = entry.value("reserve", 0.0);
    for (const Json& bundle : entry["supply"]) {
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
        target.supply.push_back({bundle[1], nodes});
    }
    return target;
}

const Json& named(const Json& list, const std::string& id) {
    for (const Json& entry : list)
        if (entry["id"] == id) return entry;
    throw std::runtime_error("no entry " + id);
}

double sum(const Json& numbers) {
    double total = 0;
    for (const Json& number : numbers)
        total += number.get<double>();
    return total;
}

struct Scales {
    double left, right, probability;
};

std::vector<Scales> scalesOf(const std::string& side, const Json* asymmetry) {
    if (side == "left") return {{1, 0, 1}};
    if (side == "right") return {{0, 1, 1}};
    if (side == "none") return {{0, 0, 1}};
    const double equal = (*asymmetry)["equal"], minor = (*asymmetry)["minor"];
    return {{1, 1, equal}, {1, minor, (1 - equal) / 2}, {minor, 1, (1 - equal) / 2}};
}

} // namespace

Reference::Reference(const std::string& knowledgeDirectory) {
    anatomy_ = read(knowledgeDirectory + "/anatomy.json");
    observation_ = read(knowledgeDirectory + "/observation.json");
    sites_ = read(knowledgeDirectory + "/sites.json");
    const Json catalogue = read(knowledgeDirectory + "/catalogue.json");
    for (const Json& entry : anatomy_["targets"])
        targets_[entry["target"]] = targetOf(entry, anatomy_);
    for (const Json& item : catalogue["items"]) {
        const bool isShared = item["scale"].is_string();
        if (isShared && !catalogue["scales"].contains(item["scale"])) continue; // free text bears on nothing
        const Json& scale =
            isShared ? catalogue["scales"].at(item["scale"].get<std::string>()) : item["scale"];
        scaleValues_[item["id"]] = scale.value("values", Json::array());
    }
}

std::vector<Hypothesis> Reference::hypotheses(const Json& patient) const {
    std::vector<Hypothesis> all;
    const Json& severity = observation_["severity"];
    double total = 0;
    for (const Json& site : sites_["sites"])
        total += sum(site["sides"]);
    for (const Json& site : sites_["sites"]) {
        const Json& hidden = named(sites_["hidden"], site["hidden"]);
        const Json* asymmetry =
            site.contains("asymmetry") ? &named(sites_["asymmetry"], site["asymmetry"]) : nullptr;
        double ageFactor = 1;
        if (site.contains("age") && patient.contains("age"))
            ageFactor = patient["age"] >= site["age"]["from"] ? site["age"]["above"] : site["age"]["below"];
        double variantTotal = 0;
        for (const Json& variant : site["variants"])
            variantTotal += variant["weight"].get<double>();
        const double irritable = hidden["i"];
        for (const auto& [side, weight] : site["sides"].items())
            for (const Json& variant : site["variants"])
                for (const Scales& scales : scalesOf(side, asymmetry))
                    for (std::size_t m = 0; m < severity["m"].size(); ++m)
                        for (std::size_t s = 0; s < severity["s"].size(); ++s)
                            for (const bool i : {false, true}) {
                                Hypothesis h;
                                h.site = site["site"];
                                h.group = site["group"];
                                h.side = side;
                                h.left = scales.left;
                                h.right = scales.right;
                                h.lesions = variant["lesions"].get<std::map<std::string, double>>();
                                h.umn = variant.value("umn", 0.0);
                                h.length = variant.value("length", 0.0);
                                h.areflexia = variant.value("areflexia", 0.0);
                                h.m = severity["m"][m];
                                h.s = severity["s"][s];
                                h.irritable = i;
                                h.prior = weight.get<double>() / total * ageFactor *
                                          variant["weight"].get<double>() / variantTotal *
                                          scales.probability * hidden["m"][m].get<double>() *
                                          hidden["s_given_m"][m][s].get<double>() *
                                          (i ? irritable : 1 - irritable);
                                if (h.prior > 0) all.push_back(h);
                            }
    }
    return all;
}

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
    const double reach = observation_["length"]["reach"], ramp = observation_["length"]["ramp"];
    return x * clamp01((t.distance - (1 - reach * x)) / ramp) * h.length * h.scale(side);
}

double Reference::umnRegion(const Hypothesis& h, const std::string& region, const std::string& side) const {
    const Json& umn = observation_["umn"];
    return h.umn * h.scale(side) * h.s * umn["sensory_weight"].get<double>() *
           umn["trunk_regions"].value(region, 1.0);
}

double Reference::movementLoss(const Hypothesis& h, const std::string& movement,
                               const std::string& side) const {
    const Target& t = targets_.at("movement." + movement);
    const double umn = h.umn * h.scale(side) * h.m * (t.pyramidal + (1 - t.pyramidal) * h.m * h.m);
    return 1 - (1 - fibre(h, t, side, h.m)) * (1 - lengthLoss(h, t, side, h.m)) * (1 - umn);
}

double Reference::regionLoss(const Hypothesis& h, const std::string& region, const std::string& side) const {
    const Target& t = targets_.at("region." + region);
    return 1 - (1 - fibre(h, t, side, h.s)) * (1 - lengthLoss(h, t, side, h.s)) *
                   (1 - umnRegion(h, region, side));
}

double Reference::reflexLoss(const Hypothesis& h, const std::string& reflex, const std::string& side) const {
    const Target& t = targets_.at("reflex." + reflex);
    const Json& severity = observation_["reflex"]["severity"];
    const double a = severity["motor"], b = severity["sensory"];
    const double r = 1 - (1 - a * h.m) * (1 - b * h.s) * (1 - h.areflexia);
    return 1 - (1 - fibre(h, t, side, r)) * (1 - lengthLoss(h, t, side, r));
}

std::map<std::pair<std::string, std::string>, double> Reference::posterior(const Json& exam) const {
    const auto parts = factors(exam);
    const auto all = hypotheses(exam.value("patient", Json::object()));
    std::vector<double> logs;
    for (const Hypothesis& h : all) {
        double sum = std::log(h.prior);
        for (const Factor& factor : parts)
            sum += std::log(factor(h));
        logs.push_back(sum);
    }
    const double highest = *std::max_element(logs.begin(), logs.end());
    std::map<std::pair<std::string, std::string>, double> out;
    double total = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const double p = std::exp(logs[i] - highest);
        out[{all[i].site, all[i].side}] += p;
        total += p;
    }
    for (auto& entry : out)
        entry.second /= total;
    return out;
}

} // namespace bruteforce
