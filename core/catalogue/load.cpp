#include "base/json.h"
#include "catalogue/catalogue.h"

#include <algorithm>
#include <map>
#include <set>

namespace rhizograph {
namespace {

using Scales = std::map<std::string, Scale>;

std::optional<Look> lookNamed(const std::string& word) {
    static const std::map<std::string, Look> names = {{"plain", Look::plain},
                                                      {"normal", Look::normal},
                                                      {"reduced", Look::reduced},
                                                      {"marked", Look::marked},
                                                      {"heightened", Look::heightened}};
    const auto found = names.find(word);
    return found == names.end() ? std::nullopt : std::optional{found->second};
}

Scale::Kind kindNamed(const JsonNode& node) {
    const std::string word = node.string();
    if (word == "choice") return Scale::Kind::choice;
    if (word == "grade") return Scale::Kind::grade;
    if (word == "number") return Scale::Kind::number;
    if (word == "text") return Scale::Kind::text;
    node.fail("unknown kind of scale \"" + word + "\"");
    return Scale::Kind::text;
}

void readNumberScale(const JsonNode& node, Scale& scale) {
    scale.unit = node.at("unit").string();
    scale.minimum = node.at("min").number();
    scale.maximum = node.at("max").number();
    scale.step = node.at("step").number();
    if (scale.maximum <= scale.minimum) node.fail("max is not above min");
    if (scale.step <= 0) node.fail("step is not above 0");
    if (const auto normal = node.find("normal"); normal && !normal->isNull())
        scale.normalNumber = normal->number();
}

void readListedScale(const JsonNode& node, Scale& scale) {
    std::map<std::string, std::string> labels;
    if (const auto names = node.find("labels"))
        for (const auto& [token, label] : names->members())
            labels[token] = label.string();
    std::map<std::string, JsonNode> looks;
    if (const auto given = node.find("looks"))
        for (const auto& [token, look] : given->members())
            looks.emplace(token, look);
    if (const auto normal = node.find("normal"); normal && !normal->isNull()) scale.normal = normal->string();
    for (const JsonNode& value : node.at("values").items()) {
        ScaleValue entry{value.string(), value.string(), scale.normal ? Look::reduced : Look::plain};
        if (scale.index(entry.token)) value.fail("value named twice");
        if (const auto label = labels.find(entry.token); label != labels.end()) entry.label = label->second;
        if (scale.normal == entry.token) entry.look = Look::normal;
        if (const auto look = looks.find(entry.token); look != looks.end()) {
            if (const auto named = lookNamed(look->second.string()))
                entry.look = *named;
            else
                look->second.fail("unknown look");
        }
        scale.values.push_back(std::move(entry));
    }
    if (scale.values.size() < 2) node.fail("needs at least two values");
    for (std::size_t i = scale.judged(); i < scale.values.size(); ++i)
        if (scale.values[i].look != Look::plain) node.fail("values without judgement stand last");
    if (scale.normal && !scale.index(*scale.normal)) node.fail("normal is not one of the values");
}

Scale readScale(const JsonNode& node, const std::string& name) {
    node.onlyKeys({"kind", "values", "labels", "looks", "normal", "unit", "min", "max", "step", "note"});
    Scale scale;
    scale.name = name;
    scale.kind = kindNamed(node.at("kind"));
    if (const auto note = node.find("note")) scale.note = note->string();
    if (scale.numeric())
        readNumberScale(node, scale);
    else if (scale.listed())
        readListedScale(node, scale);
    return scale;
}

Scale itemScale(const JsonNode& node, const Scales& scales) {
    if (!node.isString()) return readScale(node, "");
    if (node.string() == "text") {
        Scale text;
        text.kind = Scale::Kind::text;
        text.name = "text";
        return text;
    }
    const auto found = scales.find(node.string());
    if (found == scales.end()) {
        node.fail("no scale named \"" + node.string() + "\"");
        return {};
    }
    return found->second;
}

Item readItem(const JsonNode& node, const Scales& scales) {
    node.onlyKeys({"id", "step", "group", "label", "short", "sided", "scale", "tier", "note", "region",
                   "view", "normal", "source", "help"});
    Item item;
    item.id = ItemId{node.at("id").string()};
    item.step = StepId{node.at("step").string()};
    item.group = GroupId{node.at("group").string()};
    item.label = node.at("label").string();
    item.shortLabel = node.has("short") ? node.at("short").string() : item.label;
    item.sided = node.at("sided").boolean();
    item.scale = itemScale(node.at("scale"), scales);
    const std::string tier = node.at("tier").string();
    if (tier != "core" && tier != "extended") node.at("tier").fail("should be core or extended");
    item.tier = tier == "core" ? Tier::core : Tier::extended;
    if (const auto note = node.find("note")) item.note = note->string();
    if (const auto region = node.find("region")) item.region = region->string();
    if (const auto view = node.find("view")) item.view = view->string();
    // "normal": null takes the judgement off a shared scale, as for a technique that is neither good nor bad.
    if (const auto normal = node.find("normal"); normal && normal->isNull()) {
        item.scale.normal.reset();
        for (ScaleValue& value : item.scale.values)
            value.look = Look::plain;
    }
    return item;
}

std::vector<Step> readSteps(const JsonNode& root) {
    std::vector<Step> steps;
    for (const JsonNode& node : root.at("steps").items())
        steps.push_back({StepId{node.at("id").string()}, node.at("label").string()});
    return steps;
}

std::vector<Group> readGroups(const JsonNode& root) {
    std::vector<Group> groups;
    std::set<std::pair<std::string, std::string>> seen;
    for (const JsonNode& node : root.at("groups").items()) {
        Group group{GroupId{node.at("id").string()}, StepId{node.at("step").string()},
                    node.at("label").string(), node.at("page").string()};
        if (!seen.emplace(group.step.text(), group.id.text()).second)
            node.fail("group named twice in its step");
        groups.push_back(std::move(group));
    }
    return groups;
}

void checkPlace(const JsonNode& node, const Item& item, const std::vector<Step>& steps,
                const std::vector<Group>& groups) {
    if (std::none_of(steps.begin(), steps.end(), [&](const Step& step) { return step.id == item.step; }))
        node.at("step").fail("no such step");
    else if (std::none_of(groups.begin(), groups.end(), [&](const Group& group) {
                 return group.id == item.group && group.step == item.step;
             }))
        node.at("group").fail("no such group in its step");
}

Result<Catalogue> readCatalogue(const nlohmann::json& json, const std::string& name) {
    Problems problems;
    const JsonNode root{json, name, problems};
    if (root.at("format").string() != "rhizograph.catalogue") root.fail("format is not rhizograph.catalogue");
    if (root.at("version").integer() != 1) root.fail("version is not 1");
    Scales scales;
    for (const auto& [scaleName, node] : root.at("scales").members())
        scales.emplace(scaleName, readScale(node, scaleName));
    std::vector<Step> steps = readSteps(root);
    std::vector<Group> groups = readGroups(root);
    std::vector<Item> items;
    std::set<ItemId> seen;
    for (const JsonNode& node : root.at("items").items()) {
        Item item = readItem(node, scales);
        if (!seen.insert(item.id).second) node.fail("item \"" + item.id.text() + "\" named twice");
        checkPlace(node, item, steps, groups);
        items.push_back(std::move(item));
    }
    std::vector<std::string> reasons = root.at("not_testable").at("because").strings();
    if (items.empty()) root.fail("holds no items");
    if (!problems.empty()) return problems;
    return Catalogue{std::move(steps), std::move(groups), std::move(items), std::move(reasons)};
}

} // namespace

Result<Catalogue> loadCatalogue(const std::filesystem::path& file) {
    auto json = readJsonFile(file);
    if (!json) return json.problems();
    return readCatalogue(*json, file.string());
}

Result<Catalogue> parseCatalogue(std::string_view text, const std::string& name) {
    auto json = parseJson(text, name);
    if (!json) return json.problems();
    return readCatalogue(*json, name);
}

} // namespace rhizograph
