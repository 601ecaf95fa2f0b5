// Factors whose probability follows from a loss: strength, walking, skin, reflexes, deep sensation, bulk.
#include "checks/bruteforce/reference.h"

#include <algorithm>
#include <cmath>

namespace bruteforce {

double Reference::epsilon(const std::string& kind) const {
    return observation_["epsilon"][kind]["value"];
}

std::string Reference::ageBand(const Json& patient) const {
    const Json& limits = observation_["reflex"]["age_limits"];
    if (!patient.contains("age")) return observation_["reflex"]["age_unknown"];
    if (patient["age"] < limits[0]) return "young";
    return patient["age"] < limits[1] ? "middle" : "old";
}

double Reference::worstWeighted(const Hypothesis& h, const Json& movements, const std::string& side) const {
    double worst = 0;
    for (const auto& [movement, weight] : movements.items())
        for (const std::string& on : side.empty() ? bothSides : std::vector{side})
            worst = std::max(worst, weight.get<double>() * movementLoss(h, movement, on));
    return worst;
}

void Reference::strength(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = observation_["strength"];
    const auto is = [&](const char* item, const std::string& side) {
        const auto found = findings.find({item, side});
        return found != findings.end() && found->second == "yes";
    };
    for (const auto& [key, value] : findings) {
        const auto& [item, side] = key;
        if (item.rfind("strength.", 0) != 0 || item == "strength.give_way") continue;
        const std::string movement = item.substr(9);
        Row grades;
        for (const Json& token : scaleValues_.at(item))
            grades.push_back(model["grades"][token.get<std::string>()]);
        const std::size_t index = place(scaleValues_.at(item), value);
        const bool doubtful = is("strength.give_way", side) || is("behavior.hip_extension_returns", side);
        const double eps = epsilon(doubtful ? "strength_give_way" : "strength");
        out.push_back([=, this, &model, s = side](const Hypothesis& h) {
            const double reserve = targets_.at("movement." + movement).reserve;
            const double e = std::max(0.0, (movementLoss(h, movement, s) - reserve) / (1 - reserve));
            const double g = between(model["curve"], e);
            const double full = model["sd_full_at_grade"], at5 = model["sd_at_5"], below = model["sd_below"];
            const double sd = at5 + (below - at5) * clamp01((5 - g) / (5 - full));
            return mixed(nearest(grades, index, g, sd), eps, grades.size());
        });
    }
}

void Reference::abilities(const Findings& findings, std::vector<Factor>& out) const {
    for (const Json& model : observation_["ability"])
        for (const auto& [key, value] : findings) {
            if (key.first != model["item"]) continue;
            const std::size_t index = place(scaleValues_.at(key.first), value);
            out.push_back([=, this, &model, side = key.second](const Hypothesis& h) {
                const double loss = worstWeighted(h, model["movements"], side);
                const double slope = model["slope"];
                const double a = sigmoid((loss - model["mid"].get<double>()) / slope);
                const double u = sigmoid((loss - model["unable"].get<double>()) / slope);
                const Row impaired{0, 1 - u, u};
                return mixed((1 - a) * model["base"][index].get<double>() + a * impaired[index],
                             epsilon("ability"), 3);
            });
        }
}

void Reference::yesByLoss(const Findings& findings, std::vector<Factor>& out) const {
    for (const Json& model : observation_["yes_by_loss"])
        for (const auto& [key, value] : findings) {
            if (key.first != model["item"]) continue;
            out.push_back([this, &model, side = key.second, yes = value == "yes"](const Hypothesis& h) {
                const double loss = worstWeighted(h, model["movements"], side);
                const double mid = model["mid"], slope = model["slope"], low = model["low"],
                             high = model["high"];
                const double c0 = sigmoid(-mid / slope);
                const double c = (sigmoid((loss - mid) / slope) - c0) / (1 - c0);
                const double p = low + (high - low) * c;
                return mixed(yes ? p : 1 - p, epsilon("ability"), 2);
            });
        }
}

void Reference::regions(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = observation_["region"];
    std::set<std::pair<std::string, std::string>> places;
    for (const auto& finding : findings)
        for (const std::string& kind : {std::string{"touch."}, std::string{"pin."}})
            if (finding.first.first.rfind(kind, 0) == 0)
                places.insert({finding.first.first.substr(kind.size()), finding.first.second});
    for (const auto& [region, side] : places) {
        std::vector<std::pair<std::string, std::size_t>> readings;
        std::size_t joint = 1;
        for (const std::string& kind : {std::string{"touch"}, std::string{"pin"}}) {
            const auto found = findings.find({kind + "." + region, side});
            if (found == findings.end()) continue;
            const Json& values = scaleValues_.at(found->first.first);
            readings.emplace_back(kind, place(values, found->second));
            joint *= values.size();
        }
        out.push_back([=, this, &model, r = region, on = side](const Hypothesis& h) {
            const double loss = regionLoss(h, r, on);
            const Json& cs = model["complete_share"];
            const double from = cs["from"], to = cs["to"], atFrom = cs["at_from"], atTo = cs["at_to"];
            const double completeShare = atFrom + (atTo - atFrom) * clamp01((loss - from) / (to - from));
            const double q = between(model["affected"], loss);
            const double sensitised = q * model["sensitised_share"].get<double>();
            const double complete = (q - sensitised) * completeShare;
            const std::map<std::string, double> state{{"intact", 1 - q},
                                                      {"partial", q - sensitised - complete},
                                                      {"complete", complete},
                                                      {"sensitised", sensitised}};
            double total = 0;
            for (const auto& [name, probability] : state) {
                double p = probability;
                for (const auto& [kind, index] : readings)
                    p *= model["readings"][kind][name][index].get<double>();
                total += p;
            }
            return mixed(total, epsilon("region"), joint);
        });
    }
}

void Reference::reflexes(const Findings& findings, const Json& patient, std::vector<Factor>& out) const {
    const Json& model = observation_["reflex"];
    for (const auto& [reflex, bands] : model["baseline"].items()) {
        std::vector<std::pair<std::string, std::size_t>> readings;
        std::size_t joint = 1;
        for (const std::string& side : bothSides) {
            const auto found = findings.find({"reflex." + reflex, side});
            if (found == findings.end()) continue;
            readings.emplace_back(side, place(scaleValues_.at(found->first.first), found->second));
            joint *= 5;
        }
        if (readings.empty()) continue;
        const Row baseline = bands[ageBand(patient)];
        out.push_back([=, this, &model, name = reflex](const Hypothesis& h) {
            const double dead = model["dead_zone"], quiet = model["sd_quiet"], lost = model["sd_lost"];
            double total = 0;
            for (std::size_t b = 0; b < baseline.size(); ++b) {
                double p = baseline[b];
                for (const auto& [side, index] : readings) {
                    const double loss = reflexLoss(h, name, side);
                    const double drop =
                        model["drop_gain"].get<double>() * std::max(0.0, (loss - dead) / (1 - dead));
                    const double gain = model["umn_gain"].get<double>() *
                                        model["umn_targets"].value(name, 0.0) * h.umn * h.scale(side) *
                                        (0.5 + 0.5 * h.m);
                    const double base = static_cast<double>(b);
                    const double e = std::clamp(base - drop + gain, 0.0, 4.0);
                    const double sd = quiet + (lost - quiet) * std::min(1.0, std::abs(base - e));
                    p *= nearest({0, 1, 2, 3, 4}, index, e, sd);
                }
                total += p;
            }
            return mixed(total, epsilon("reflex"), joint);
        });
    }
}

void Reference::deep(const Findings& findings, const Json& patient, std::vector<Factor>& out) const {
    for (const Json& model : observation_["deep"])
        for (const auto& [key, value] : findings) {
            if (key.first != model["item"]) continue;
            const std::size_t index = place(scaleValues_.at(key.first), value);
            const Row base = model["base"][ageBand(patient)];
            out.push_back([=, this, &model, side = key.second](const Hypothesis& h) {
                const std::string target = model["target"];
                const Target& t = targets_.at(target);
                const double root = model["root_weight"], umn = model["umn_weight"],
                             length = model["length_weight"];
                const double w = 1 - (1 - root * fibre(h, t, side, h.s)) *
                                         (1 - umn * h.umn * h.scale(side) * h.s) *
                                         (1 - length * lengthLoss(h, t, side, h.s));
                return mixed((1 - w) * base[index] + w * model["high"][index].get<double>(), epsilon("deep"),
                             base.size());
            });
        }
}

void Reference::counts(const Findings& findings, std::vector<Factor>& out) const {
    for (const Json& model : observation_["count"])
        for (const auto& [key, value] : findings) {
            if (key.first != model["item"]) continue;
            const std::size_t index = bin(model["bins"], value);
            out.push_back([=, this, &model, side = key.second](const Hypothesis& h) {
                const double loss = movementLoss(h, model["movement"], side);
                Json line = Json::array();
                for (const Json& row : model["rows"])
                    line.push_back({row[0], row[1][index]});
                return mixed(between(line, loss), epsilon("count"), model["bins"].size() + 1);
            });
        }
}

void Reference::wasting(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = observation_["wasting"];
    for (const auto& [key, value] : findings) {
        if (key.first != model["item"]) continue;
        const Json& values = scaleValues_.at(key.first);
        const std::size_t index = place(values, value);
        out.push_back([=, this, &model, &values, side = key.second](const Hypothesis& h) {
            Row weights;
            double worst = 0;
            for (std::size_t v = 0; v < values.size(); ++v) {
                double loss = 0;
                for (const Json& movement :
                     model["movements"].value(values[v].get<std::string>(), Json::array()))
                    loss = std::max(loss, movementLoss(h, movement, side));
                worst = std::max(worst, loss);
                weights.push_back(model["base"][v].get<double>() + model["gain"].get<double>() * loss);
            }
            weights[0] = model["base"][0].get<double>() * (1 - 0.7 * worst);
            double total = 0;
            for (const double weight : weights)
                total += weight;
            return mixed(weights[index] / total, epsilon("wasting"), weights.size());
        });
    }
}

void Reference::girth(const Findings& findings, std::vector<Factor>& out) const {
    for (const Json& model : observation_["girth"]) {
        const auto onLeft = findings.find({model["item"], "left"}),
                   onRight = findings.find({model["item"], "right"});
        if (onLeft == findings.end() || onRight == findings.end()) continue;
        const double difference = onLeft->second.get<double>() - onRight->second.get<double>();
        const double limit = model["limit_cm"];
        const int smaller = difference < -limit ? 0 : difference > limit ? 2 : 1;
        out.push_back([=, this, &model](const Hypothesis& h) {
            double loss[2] = {0, 0};
            for (int k = 0; k < 2; ++k)
                for (const Json& movement : model["movements"])
                    loss[k] =
                        std::max(loss[k], movementLoss(h, movement, bothSides[static_cast<std::size_t>(k)]));
            const double low = model["low"], high = model["high"];
            const double left = low + (high - low) * loss[0], right = low + (high - low) * loss[1];
            const double leftAlone = left * (1 - right), rightAlone = right * (1 - left);
            const Row row{leftAlone, 1 - leftAlone - rightAlone, rightAlone};
            return mixed(row[static_cast<std::size_t>(smaller)], epsilon("wasting"), 3);
        });
    }
}

void Reference::gait(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = observation_["gait_pattern"];
    const auto found = findings.find({model["item"], ""});
    if (found == findings.end()) return;
    const std::size_t index = place(model["values"], found->second);
    out.push_back([=, this, &model](const Hypothesis& h) {
        Row weights = model["base"];
        for (const Json& feature : model["features"]) {
            const std::string name = feature["feature"];
            const double worse = std::max(h.left, h.right);
            double x = 0;
            if (name.rfind("loss:", 0) == 0)
                x = std::max(movementLoss(h, name.substr(5), "left"),
                             movementLoss(h, name.substr(5), "right"));
            else if (name == "umn")
                x = h.umn * worse * (0.5 + 0.5 * h.m);
            else if (name == "length")
                x = h.length * worse * (0.5 + 0.5 * h.m);
            else if (name == "irritable")
                x = h.irritable ? 1 : 0;
            else if (name.rfind("group:", 0) == 0)
                x = name.substr(6) == h.group ? 1 : 0;
            else if (name.rfind("site:", 0) == 0)
                x = name.substr(5) == h.site ? 1 : 0;
            const double from = feature["from"], to = feature["to"];
            for (std::size_t v = 0; v < weights.size(); ++v)
                weights[v] += feature["gain"][v].get<double>() * clamp01((x - from) / (to - from));
        }
        double total = 0;
        for (double& weight : weights) {
            weight = std::max(weight, model["floor"].get<double>());
            total += weight;
        }
        return mixed(weights[index] / total, epsilon("ability"), weights.size());
    });
}

} // namespace bruteforce
