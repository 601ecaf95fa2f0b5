// Factors whose probability follows from the loss of movements: strength, walking, bulk.
#include "checks/bruteforce/reference.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bruteforce {
namespace {

/// The largest weighted loss of a side; of the worse side when none is named.
double worst(const Hypothesis& h, const Weighted& movements, const std::string& side) {
    double loss = 0;
    for (const auto& [target, weight] : movements)
        for (const std::string& on : side.empty() ? bothSides : std::vector{side})
            loss = std::max(loss, weight * h.loss(*target, on));
    return loss;
}

struct Grade {
    const Target* target;
    std::size_t index;
    double noise;
};

} // namespace

double Reference::epsilon(const std::string& kind) const {
    return observation_["epsilon"][kind]["value"];
}

const Target& Reference::movement(const std::string& name) const {
    return targets_.at("movement." + name);
}

Weighted Reference::weighted(const Json& movements) const {
    Weighted out;
    for (const auto& [name, weight] : movements.items())
        out.emplace_back(&movement(name), weight.get<double>());
    return out;
}

bool Reference::unreliable(const Findings& findings, const std::string& side) const {
    for (const Json& sign : observation_["strength"]["unreliable_when"]) {
        const auto found = findings.find({sign["item"], side});
        if (found != findings.end() && found->second == sign["is"]) return true;
    }
    return false;
}

void Reference::strength(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = observation_["strength"];
    Line curve = model["curve"];
    const double full = model["sd_full_at_grade"], at5 = model["sd_at_5"], below = model["sd_below"];
    const double q = model["guarded"]["share"], drop = model["guarded"]["drop"],
                 wide = model["guarded"]["sd"];
    for (const std::string& side : bothSides) {
        std::vector<Grade> read;
        Row grades;
        for (const auto& [key, value] : findings) {
            if (key.second != side || key.first.rfind("strength.", 0) != 0) continue;
            const auto target = targets_.find("movement." + key.first.substr(9));
            if (target == targets_.end()) continue; // says how far the grades can be trusted
            const Json& tokens = scaleValues_.at(key.first);
            grades.clear();
            for (const Json& token : tokens)
                grades.push_back(model["grades"][token.get<std::string>()]);
            read.push_back({&target->second, place(tokens, value), model["noise"][value.get<std::string>()]});
        }
        if (read.empty()) continue;
        const double eps = epsilon(unreliable(findings, side) ? "strength_give_way" : "strength");
        out.push_back([=](const Hypothesis& h) {
            double free = 1, guarded = 1;
            for (const Grade& grade : read) {
                const double reserve = grade.target->reserve;
                const double e = std::max(0.0, (h.loss(*grade.target, side) - reserve) / (1 - reserve));
                const double g = between(curve, e);
                const double sd = at5 + (below - at5) * clamp01((5 - g) / (5 - full));
                const auto p = [&](double center, double spread) {
                    return (1 - eps) * nearest(grades, grade.index, center, spread) + eps * grade.noise;
                };
                free *= p(g, sd);
                guarded *= p(std::max(0.0, g - drop), std::max(sd, wide));
            }
            return (1 - q) * free + q * guarded;
        });
    }
}

void Reference::abilities(const Findings& findings, std::vector<Factor>& out) const {
    const double eps = epsilon("ability");
    for (const Json& model : observation_["ability"])
        for (const auto& [key, value] : findings) {
            if (key.first != model["item"]) continue;
            const std::size_t index = place(scaleValues_.at(key.first), value);
            const double slope = model["slope"], mid = model["mid"], unable = model["unable"];
            const double base = model["base"][index];
            out.push_back(
                [=, movements = weighted(model["movements"]), side = key.second](const Hypothesis& h) {
                    const double loss = worst(h, movements, side);
                    const double a = sigmoid((loss - mid) / slope), u = sigmoid((loss - unable) / slope);
                    const std::array<double, 3> impaired{0, 1 - u, u};
                    return mixed((1 - a) * base + a * impaired[index], eps, impaired.size());
                });
        }
}

void Reference::yesByLoss(const Findings& findings, std::vector<Factor>& out) const {
    const double eps = epsilon("ability");
    for (const Json& model : observation_["yes_by_loss"])
        for (const auto& [key, value] : findings) {
            if (key.first != model["item"]) continue;
            const double mid = model["mid"], slope = model["slope"], low = model["low"], high = model["high"];
            const double c0 = sigmoid(-mid / slope);
            const auto lowBySite = model.value("low_by_site", std::map<std::string, double>{});
            out.push_back([=, movements = weighted(model["movements"]), side = key.second,
                           yes = value == "yes"](const Hypothesis& h) {
                const double c = (sigmoid((worst(h, movements, side) - mid) / slope) - c0) / (1 - c0);
                const auto own = lowBySite.find(h.site);
                const double from = own != lowBySite.end() && h.affects(side) ? own->second : low;
                const double p = from + (high - from) * c;
                return mixed(yes ? p : 1 - p, eps, 2);
            });
        }
}

void Reference::counts(const Findings& findings, std::vector<Factor>& out) const {
    const double eps = epsilon("count");
    for (const Json& model : observation_["count"])
        for (const auto& [key, value] : findings) {
            if (key.first != model["item"]) continue;
            const std::size_t index = bin(model["bins"], value);
            Line line;
            for (const Json& row : model["rows"])
                line.emplace_back(row[0], row[1][index]);
            out.push_back([=, target = &movement(model["movement"]), n = model["bins"].size() + 1,
                           side = key.second](const Hypothesis& h) {
                return mixed(between(line, h.loss(*target, side)), eps, n);
            });
        }
}

void Reference::wasting(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = observation_["wasting"];
    const double eps = epsilon("wasting"), gain = model["gain"], noneDrop = model["none_drop"];
    const Row base = model["base"];
    for (const auto& [key, value] : findings) {
        if (key.first != model["item"]) continue;
        const Json& values = scaleValues_.at(key.first);
        std::vector<Weighted> movements;
        for (const Json& place : values) {
            movements.emplace_back();
            for (const Json& name : model["movements"].value(place.get<std::string>(), Json::array()))
                movements.back().emplace_back(&movement(name), 1.0);
        }
        out.push_back([=, index = place(values, value), side = key.second](const Hypothesis& h) {
            Row weights{0};
            double largest = 0;
            for (std::size_t v = 1; v < movements.size(); ++v) {
                const double loss = worst(h, movements[v], side);
                largest = std::max(largest, loss);
                weights.push_back(base[v] + gain * loss);
            }
            weights[0] = base[0] * (1 - noneDrop * largest);
            double total = 0;
            for (const double weight : weights)
                total += weight;
            return mixed(weights[index] / total, eps, weights.size());
        });
    }
}

void Reference::girth(const Findings& findings, std::vector<Factor>& out) const {
    const double eps = epsilon("wasting");
    for (const Json& model : observation_["girth"]) {
        const auto onLeft = findings.find({model["item"], "left"}),
                   onRight = findings.find({model["item"], "right"});
        if (onLeft == findings.end() || onRight == findings.end()) continue;
        const double difference = onLeft->second.get<double>() - onRight->second.get<double>();
        const double limit = model["limit_cm"], low = model["low"], high = model["high"];
        const std::size_t smaller = difference < -limit ? 0 : difference > limit ? 2 : 1;
        Weighted movements;
        for (const Json& name : model["movements"])
            movements.emplace_back(&movement(name), 1.0);
        out.push_back([=](const Hypothesis& h) {
            const double left = low + (high - low) * worst(h, movements, "left");
            const double right = low + (high - low) * worst(h, movements, "right");
            const double leftAlone = left * (1 - right), rightAlone = right * (1 - left);
            const Row row{leftAlone, 1 - leftAlone - rightAlone, rightAlone};
            return mixed(row[smaller], eps, row.size());
        });
    }
}

namespace {

/// One feature of the walking pattern: how far it is there, from 0 to 1, and what it adds to each pattern.
struct Feature {
    std::string kind, name;
    const Target* target = nullptr;
    double from, to;
    Row gain;

    [[nodiscard]] double x(const Hypothesis& h) const {
        const double larger = std::max(h.left, h.right) * (0.5 + 0.5 * h.m);
        if (kind == "loss") return std::max(h.loss(*target, "left"), h.loss(*target, "right"));
        if (kind == "umn") return h.umn * larger;
        if (kind == "length") return h.length * larger;
        if (kind == "irritable") return h.irritable ? 1 : 0;
        if (kind == "group") return h.group == name ? 1 : 0;
        return h.site == name ? 1 : 0;
    }
};

} // namespace

void Reference::gait(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = observation_["gait_pattern"];
    const auto found = findings.find({model["item"], ""});
    if (found == findings.end()) return;
    std::vector<Feature> features;
    for (const Json& entry : model["features"]) {
        const std::string text = entry["feature"];
        const std::size_t colon = text.find(':');
        Feature feature{text.substr(0, colon),
                        colon == std::string::npos ? "" : text.substr(colon + 1),
                        nullptr,
                        entry["from"],
                        entry["to"],
                        entry["gain"]};
        if (feature.kind == "loss") feature.target = &movement(feature.name);
        features.push_back(feature);
    }
    const Row base = model["base"];
    const double floor = model["floor"], eps = epsilon("ability");
    out.push_back([=, index = place(model["values"], found->second)](const Hypothesis& h) {
        Row weights = base;
        for (const Feature& feature : features) {
            const double part = clamp01((feature.x(h) - feature.from) / (feature.to - feature.from));
            for (std::size_t v = 0; v < weights.size(); ++v)
                weights[v] += feature.gain[v] * part;
        }
        double total = 0;
        for (double& weight : weights) {
            weight = std::max(weight, floor);
            total += weight;
        }
        return mixed(weights[index] / total, eps, weights.size());
    });
}

} // namespace bruteforce
