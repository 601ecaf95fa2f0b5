#pragma once

#include "catalogue/catalogue.h"
#include "exam/value.h"

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <stdexcept>
#include <string>

namespace rhizograph::testing {

/// How far one finding may move the odds between two sites, by the noise that docs/engine.md mixes into its
/// factor: P lies between eps · noise and (1 - eps) + eps · noise, noise being 1 / number of values unless
/// the kind has a row of its own. Read from the knowledge files, not from the loaded model.
class NoiseBound {
public:
    explicit NoiseBound(const std::filesystem::path& directory)
        : observation_(read(directory / "observation.json")), sites_(read(directory / "sites.json")) {}

    [[nodiscard]] double odds(const Item& item, const Value& value) const {
        const std::string id = item.id.text();
        const auto& strength = observation_.at("strength");
        if (starts(id, strength.at("item_prefix"))) {
            const auto& noise = strength.at("noise");
            return value.testable() ? ratio(epsilon("strength"), noise.at(value.word())) : 1;
        }
        const auto [eps, values] = kind(id, item.scale.values.size());
        return ratio(eps, 1.0 / static_cast<double>(values));
    }

private:
    using Json = nlohmann::json;
    struct Kind {
        double epsilon;
        std::size_t values;
    };

    static Json read(const std::filesystem::path& file) {
        std::ifstream in(file);
        return Json::parse(in);
    }
    static bool starts(const std::string& text, const std::string& prefix) {
        return text.rfind(prefix, 0) == 0;
    }
    static double ratio(double eps, double noise) { return (1 - eps + eps * noise) / (eps * noise); }

    [[nodiscard]] double epsilon(const std::string& of) const {
        return observation_.at("epsilon").at(of).at("value");
    }

    /// Tables and hidden symptoms name their items; the rest go by the list or the prefix of their kind.
    [[nodiscard]] Kind kind(const std::string& id, std::size_t values) const {
        for (const Json& table : sites_.at("tables"))
            if (table.at("item") == id)
                return {table.value("epsilon", epsilon("table")), table.at("values").size()};
        for (const Json& shared : sites_.at("shared"))
            if (shared.at("readings").contains(id))
                return {epsilon("shared"), shared.at("readings").at(id).at("no").size()};
        if (sites_.at("rash").at("items").contains(id)) return {epsilon("rash"), values};
        for (const auto& [list, eps] :
             {std::pair{"ability", "ability"}, {"yes_by_loss", "ability"}, {"deep", "deep"}})
            for (const Json& entry : observation_.at(list))
                if (entry.at("item") == id) return {epsilon(eps), values};
        for (const Json& entry : observation_.at("count"))
            if (entry.at("item") == id) return {epsilon("count"), entry.at("bins").size() + 1};
        for (const Json& entry : observation_.at("girth"))
            if (entry.at("item") == id) return {epsilon("wasting"), 3};
        if (observation_.at("wasting").at("item") == id) return {epsilon("wasting"), values};
        if (observation_.at("gait_pattern").at("item") == id) return {epsilon("ability"), values};
        if (starts(id, observation_.at("reflex").at("item_prefix"))) return {epsilon("reflex"), values};
        if (starts(id, observation_.at("drawn").at("item_prefix"))) return {epsilon("drawn"), values};
        for (const std::string prefix : observation_.at("region").at("item_prefixes"))
            if (starts(id, prefix + ".")) return {epsilon("region"), values};
        throw std::invalid_argument("no kind of finding for " + id);
    }

    Json observation_, sites_;
};

} // namespace rhizograph::testing
