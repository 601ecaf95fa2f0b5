// Factors read from tables by site: history, provocation, hidden symptoms, the rash, the pain drawing.
#include "checks/bruteforce/reference.h"

#include <algorithm>

namespace bruteforce {
namespace {

/// Row of the site, else of the site it is reported as, else of its group; nothing when there is none.
const Json* rowFor(const Json& rows, const Hypothesis& h) {
    for (const std::string* key : {&h.site, &h.reportAs, &h.group}) {
        const auto found = rows.find(*key);
        if (found != rows.end()) return &*found;
    }
    return nullptr;
}

const Json* rowFor(const Json& model, const char* rows, const Hypothesis& h) {
    return model.contains(rows) ? rowFor(model[rows], h) : nullptr;
}

/// The irritable rows first when the hypothesis is irritable, then the plain ones.
const Json* rowOf(const Json& model, const Hypothesis& h) {
    if (h.irritable)
        if (const Json* row = rowFor(model, "irritable", h)) return row;
    return rowFor(model, "rows", h);
}

} // namespace

const Json& Reference::tableRow(const Json& table, const Hypothesis& h, const std::string& side) const {
    if (side.empty()) {
        if (const Json* row = rowOf(table, h)) return *row;
        if (h.side == "both" && table.contains("both_rows")) return table["both_rows"];
        return table["default"];
    }
    const bool opposite = table.value("relation", "same") == "opposite";
    if (h.affects(opposite ? otherSide(side) : side)) {
        if (const Json* row = rowOf(table, h)) return *row;
        return table["default"];
    }
    if (!opposite && h.irritable)
        if (const Json* row = rowFor(table, "irritable_opposite", h)) return *row;
    return table["default"];
}

void Reference::tables(const Findings& findings, std::vector<Factor>& out) const {
    for (const Json& table : sites_["tables"])
        for (const auto& [key, value] : findings) {
            if (key.first != table["item"]) continue;
            // A value the table does not list ("long-standing") says nothing about the present state.
            const Json& listed = table["values"];
            if (!table.contains("bins") && std::find(listed.begin(), listed.end(), value) == listed.end())
                continue;
            const std::size_t index =
                table.contains("bins") ? bin(table["bins"], value) : place(table["values"], value);
            const double eps = table.value("epsilon", epsilon("table"));
            const std::size_t n = table["values"].size();
            out.push_back([=, this, &table, side = key.second](const Hypothesis& h) {
                return mixed(tableRow(table, h, side)[index].get<double>(), eps, n);
            });
        }
}

void Reference::shared(const Findings& findings, std::vector<Factor>& out) const {
    for (const Json& model : sites_["shared"])
        for (const std::string& side : model["sided"] == true ? bothSides : std::vector<std::string>{""}) {
            std::vector<std::pair<const Json*, std::size_t>> readings;
            std::size_t joint = 1;
            for (const auto& [key, value] : findings) {
                if (!model["readings"].contains(key.first) || (!side.empty() && key.second != side)) continue;
                const Json& reading = model["readings"][key.first];
                readings.emplace_back(&reading, reading.contains("bins")
                                                    ? bin(reading["bins"], value)
                                                    : place(scaleValues_.at(key.first), value));
                joint *= reading["no"].size();
            }
            if (readings.empty()) continue;
            out.push_back([=, this, &model](const Hypothesis& h) {
                const Json* row = side.empty() || h.affects(side) ? rowOf(model, h) : nullptr;
                const Json& hidden = row ? *row : model["default"];
                double total = 0;
                for (const std::size_t z : {0u, 1u}) {
                    double p = hidden[z];
                    for (const auto& [reading, index] : readings)
                        p *= (*reading)[z == 0 ? "no" : "yes"][index].get<double>();
                    total += p;
                }
                return mixed(total, epsilon("shared"), joint);
            });
        }
}

void Reference::rash(const Findings& findings, std::vector<Factor>& out) const {
    const Json& model = sites_["rash"];
    struct Reading {
        const Json* item;
        std::string side;
        std::size_t index, values;
    };
    std::vector<Reading> readings;
    std::size_t joint = 1;
    for (const auto& [key, value] : findings) {
        if (!model["items"].contains(key.first)) continue;
        const Json& values = scaleValues_.at(key.first);
        readings.push_back({&model["items"][key.first], key.second, place(values, value), values.size()});
        joint *= values.size();
    }
    if (readings.empty()) return;
    out.push_back([=, this, &model](const Hypothesis& h) {
        const std::size_t regions = model["regions"].size();
        // One hidden place: (side, region), with side empty for no rash at all and "?" for elsewhere.
        struct Place {
            std::string side;
            std::size_t region;
            double probability;
        };
        std::vector<Place> places{{"?", 0, model["elsewhere"]}};
        for (const std::string& side : bothSides)
            for (std::size_t r = 0; r < regions; ++r) {
                double p = model["base_each"];
                if (h.side != "none" && h.affects(side) && model["rows"].contains(h.site))
                    p += model["rows"][h.site][r].get<double>() / (h.side == "both" ? 2 : 1);
                places.push_back({side, r, p});
            }
        double somewhere = 0;
        for (const Place& at : places)
            somewhere += at.probability;
        places.push_back({"", 0, 1 - somewhere});
        const double right = model["right_region"], none = model["no_region"], wrong = model["false_region"];
        const double n = static_cast<double>(regions);
        double total = 0;
        for (const Place& at : places) {
            double p = at.probability;
            for (const Reading& reading : readings) {
                if (!reading.item->empty())
                    p *= (*reading.item)[at.side.empty() ? "clear" : "rash"][reading.index].get<double>();
                else if (at.side == reading.side)
                    p *= reading.index == 0               ? none
                         : reading.index == at.region + 1 ? right
                                                          : (1 - right - none) / (n - 1);
                else
                    p *= reading.index == 0 ? 1 - n * wrong : wrong;
            }
            total += p;
        }
        return mixed(total, epsilon("rash"), joint);
    });
}

/// P(none, ache, sharp, pins, numb) of a drawn region.
Row Reference::mark(const Hypothesis& h, const std::string& region, const std::string& side) const {
    const Json& model = observation_["drawn"];
    const Target& t = targets_.at("region." + region);
    const double f =
        1 - (1 - fibre(h, t, side, 1)) * (1 - lengthLoss(h, t, side, 1)) * (1 - felt(h, t, side));
    const double base = model["base"].value(region, model["base"]["default"].get<double>());
    double p = base + (model["mark_max"].get<double>() - base) * between(model["blur"].get<Line>(), f) *
                          model["visible_fraction"].get<double>();
    bool irritableRoot = false;
    if (h.irritable)
        for (const Json& root : model["irritable_roots"])
            irritableRoot |= h.lesions.count(root) > 0 && h.lesions.at(root) * h.scale(side) > 0;
    if (irritableRoot) p = std::max(p, model["irritable_gain"].value(region, 0.0));
    const auto own = model["site_gain"].find(h.site);
    if (own != model["site_gain"].end() && h.affects(side)) p = std::max(p, own->value(region, 0.0));
    const double lost = h.s > 0 ? f : 0;
    Row row{1 - p};
    for (const char* kind : {"ache", "sharp", "pins", "numb"})
        row.push_back(p * (lost * model["split_lost"][kind].get<double>() +
                           (1 - lost) * model["split_quiet"][kind].get<double>()));
    return row;
}

void Reference::drawings(const Findings& findings, std::vector<Factor>& out) const {
    std::set<std::string> elsewhere; // drawn regions that read a hidden symptom instead
    for (const Json& model : sites_["shared"])
        for (const auto& reading : model["readings"].items())
            elsewhere.insert(reading.key());
    for (const auto& [key, value] : findings) {
        if (key.first.rfind("drawn.", 0) != 0 || elsewhere.count(key.first) > 0) continue;
        const std::size_t index = place(scaleValues_.at(key.first), value);
        out.push_back([=, this, region = key.first.substr(6), side = key.second](const Hypothesis& h) {
            return mixed(mark(h, region, side)[index], epsilon("drawn"), 5);
        });
    }
}

} // namespace bruteforce
