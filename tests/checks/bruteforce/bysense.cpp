// Factors whose probability follows from the loss of skin and reflexes.
#include "checks/bruteforce/reference.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace bruteforce {

std::string Reference::ageBand(const Json& patient) const {
    const Json& limits = observation_["reflex"]["age_limits"];
    if (!patient.contains("age")) return observation_["reflex"]["age_unknown"];
    if (patient["age"] < limits[0]) return "young";
    return patient["age"] < limits[1] ? "middle" : "old";
}

void Reference::regions(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = observation_["region"];
    const double eps = epsilon("region"), share = model["sensitised_share"];
    const Json& cs = model["complete_share"];
    const double from = cs["from"], to = cs["to"], atFrom = cs["at_from"], atTo = cs["at_to"];
    const Line affected = model["affected"];
    std::set<std::pair<std::string, std::string>> places;
    for (const auto& finding : findings)
        for (const std::string& kind : {std::string{"touch."}, std::string{"pin."}})
            if (finding.first.first.rfind(kind, 0) == 0)
                places.insert({finding.first.first.substr(kind.size()), finding.first.second});
    for (const auto& [region, side] : places) {
        std::array<double, 4> given{1, 1, 1, 1}; // P(readings | intact, partial, complete, sensitised)
        std::size_t joint = 1;
        for (const std::string& kind : {std::string{"touch"}, std::string{"pin"}}) {
            const auto found = findings.find({kind + "." + region, side});
            if (found == findings.end()) continue;
            const Json& values = scaleValues_.at(found->first.first);
            joint *= values.size();
            std::size_t z = 0;
            for (const char* state : {"intact", "partial", "complete", "sensitised"})
                given[z++] *= model["readings"][kind][state][place(values, found->second)].get<double>();
        }
        out.push_back([=, target = &targets_.at("region." + region), on = side](const Hypothesis& h) {
            const double loss = h.loss(*target, on);
            const double completeShare = atFrom + (atTo - atFrom) * clamp01((loss - from) / (to - from));
            const double q = between(affected, loss), sensitised = q * share;
            const double complete = (q - sensitised) * completeShare;
            const double partial = q - sensitised - complete;
            return mixed((1 - q) * given[0] + partial * given[1] + complete * given[2] +
                             sensitised * given[3],
                         eps, joint);
        });
    }
}

/// P(usual briskness | level of liveliness): the levels cut the row of the age from its lowest part up.
std::vector<Row> Reference::baselines(const Row& base) const {
    const Json& liveliness = observation_["reflex"]["liveliness"];
    const double common = liveliness["common"];
    std::vector<Row> out;
    double lowest = 0;
    for (const double share : liveliness["levels"].get<Row>()) {
        const double highest = lowest + share;
        Row row;
        double before = 0;
        for (const double p : base) {
            const double inside = std::max(0.0, std::min(before + p, highest) - std::max(before, lowest));
            row.push_back((1 - common) * p + common * inside / share);
            before += p;
        }
        out.push_back(row);
        lowest = highest;
    }
    return out;
}

namespace {

struct Reading {
    const Target* target;
    std::string side;
    std::size_t index;
};

/// What one reflex showed, on one side or both, and how brisk it is in people of each liveliness.
struct Jerk {
    std::vector<Reading> readings;
    std::vector<Row> baselines;
};

} // namespace

void Reference::reflexes(const Findings& findings, const Json& patient, std::vector<Factor>& out) const {
    const Json& model = observation_["reflex"];
    std::vector<Jerk> jerks;
    for (const auto& [reflex, bands] : model["baseline"].items()) {
        Jerk jerk;
        for (const std::string& side : bothSides) {
            const auto found = findings.find({"reflex." + reflex, side});
            if (found == findings.end()) continue;
            jerk.readings.push_back({&targets_.at("reflex." + reflex), side,
                                     place(scaleValues_.at(found->first.first), found->second)});
        }
        jerk.baselines = baselines(bands[ageBand(patient)]);
        if (!jerk.readings.empty()) jerks.push_back(jerk);
    }
    if (jerks.empty()) return;
    const double dead = model["dead_zone"], quiet = model["sd_quiet"], lost = model["sd_lost"];
    const double dropGain = model["drop_gain"], umnGain = model["umn_gain"], eps = epsilon("reflex");
    const Row shares = model["liveliness"]["levels"];
    out.push_back([=](const Hypothesis& h) {
        Row levels = shares;
        for (const Jerk& jerk : jerks) {
            std::array<double, 5> given{1, 1, 1, 1, 1}; // P(readings of this reflex | b)
            for (const Reading& reading : jerk.readings) {
                const double loss = h.loss(*reading.target, reading.side);
                const double drop = dropGain * std::max(0.0, (loss - dead) / (1 - dead));
                const double gain = umnGain * reading.target->reflexWeight * h.umn * h.scale(reading.side) *
                                    (0.5 + 0.5 * h.m) * (1 - h.areflexia) * h.umnReflex;
                for (std::size_t b = 0; b < given.size(); ++b) {
                    const double base = static_cast<double>(b);
                    const double e = std::clamp(base - drop + gain, 0.0, 4.0);
                    const double sd = quiet + (lost - quiet) * std::min(1.0, std::abs(base - e));
                    given[b] *= mixed(nearest({0, 1, 2, 3, 4}, reading.index, e, sd), eps, 5);
                }
            }
            for (std::size_t level = 0; level < levels.size(); ++level) {
                double p = 0;
                for (std::size_t b = 0; b < given.size(); ++b)
                    p += jerk.baselines[level][b] * given[b];
                levels[level] *= p;
            }
        }
        double total = 0;
        for (const double p : levels)
            total += p;
        return total;
    });
}

void Reference::deep(const Findings& findings, const Json& patient, std::vector<Factor>& out) const {
    const double eps = epsilon("deep");
    for (const Json& model : observation_["deep"])
        for (const auto& [key, value] : findings) {
            if (key.first != model["item"]) continue;
            const std::size_t index = place(scaleValues_.at(key.first), value);
            const Row base = model["base"][ageBand(patient)], high = model["high"];
            const double root = model["root_weight"], umn = model["umn_weight"], far = model["length_weight"];
            out.push_back([=, this, target = &targets_.at(model["target"].get<std::string>()),
                           side = key.second](const Hypothesis& h) {
                const double w = 1 - (1 - root * fibre(h, *target, side, h.s)) *
                                         (1 - umn * deepLoss(h, side)) *
                                         (1 - far * lengthLoss(h, *target, side, h.s));
                return mixed((1 - w) * base[index] + w * high[index], eps, base.size());
            });
        }
}

} // namespace bruteforce
