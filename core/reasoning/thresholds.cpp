#include "reasoning/thresholds.h"

#include "base/json.h"

namespace rhizograph {
namespace {

template <class T> T chosen(const JsonNode& node, const std::map<std::string, T>& words, T otherwise) {
    const auto found = words.find(node.string());
    if (found != words.end()) return found->second;
    node.fail("unknown word \"" + node.string() + "\"");
    return otherwise;
}

std::optional<double> number(const JsonNode& node, const std::string& key) {
    const auto found = node.find(key);
    if (!found) return std::nullopt;
    const double value = found->number();
    if (value < 0) found->fail("is below 0");
    return value;
}

} // namespace

/// Reads thresholds.json against the catalogue and collects everything that is wrong with it.
class ThresholdReader {
public:
    ThresholdReader(const JsonNode& root, const Catalogue& catalogue) : root_(root), catalogue_(catalogue) {}

    Thresholds read() {
        if (root_.at("format").string() != "rhizograph.thresholds")
            root_.fail("format is not rhizograph.thresholds");
        if (root_.at("version").integer() != 1) root_.fail("version is not 1");
        for (const JsonNode& node : root_.at("rules").items())
            readRule(node);
        assign();
        readNumbArea(root_.at("numb_area"));
        return std::move(out_);
    }

private:
    void readRule(const JsonNode& node) {
        node.onlyKeys({"id", "kind", "weight", "words", "source", "items", "scales", "default", "grades",
                       "change", "change_same_examiner", "percent", "error", "better", "grave_at_most",
                       "absent", "same_text", "sides"});
        const std::size_t index = out_.rules_.size();
        ChangeRule rule;
        rule.id = node.at("id").string();
        rule.kind = chosen<ChangeRule::Kind>(node.at("kind"),
                                             {{"whole_grades", ChangeRule::Kind::wholeGrades},
                                              {"reflex", ChangeRule::Kind::reflex},
                                              {"category", ChangeRule::Kind::category},
                                              {"number", ChangeRule::Kind::number},
                                              {"text", ChangeRule::Kind::text}},
                                             ChangeRule::Kind::category);
        rule.weight = node.at("weight").number();
        rule.words = node.at("words").string();
        rule.source = node.at("source").string();
        if (const auto better = node.find("better"))
            rule.better = chosen<ChangeRule::Better>(*better,
                                                     {{"neither", ChangeRule::Better::neither},
                                                      {"higher", ChangeRule::Better::higher},
                                                      {"lower", ChangeRule::Better::lower}},
                                                     ChangeRule::Better::neither);
        readAmounts(node, rule);
        readReach(node, index);
        out_.rules_.push_back(std::move(rule));
    }

    void readAmounts(const JsonNode& node, ChangeRule& rule) const {
        rule.change = number(node, "change");
        rule.changeSameExaminer = number(node, "change_same_examiner");
        rule.percent = number(node, "percent");
        rule.error = number(node, "error");
        if (const auto grades = node.find("grades"))
            for (const auto& [token, grade] : grades->members())
                rule.grades.emplace(token, grade.integer());
        if (const auto grave = node.find("grave_at_most")) rule.graveAtMost = grave->integer();
        if (const auto absent = node.find("absent")) rule.absent = absent->string();
        if (const auto same = node.find("same_text")) {
            rule.sameText = ItemId{same->string()};
            if (catalogue_.find(rule.sameText) == nullptr) same->fail("no such item in the catalogue");
        }
        if (const auto sides = node.find("sides")) {
            sides->onlyKeys({"least", "beyond", "words", "source"});
            rule.sides = ChangeRule::Sides{sides->at("least").number(),
                                           sides->has("beyond") && sides->at("beyond").boolean(),
                                           sides->at("words").string(),
                                           sides->has("source") ? sides->at("source").string() : rule.source};
        }
    }

    void readReach(const JsonNode& node, std::size_t index) {
        if (const auto items = node.find("items"))
            for (const JsonNode& item : items->items()) {
                if (catalogue_.find(item.string()) == nullptr) item.fail("no such item in the catalogue");
                if (!byItem_.emplace(ItemId{item.string()}, index).second) item.fail("has two rules");
            }
        if (const auto scales = node.find("scales"))
            for (const JsonNode& scale : scales->items())
                if (!byScale_.emplace(scale.string(), index).second) scale.fail("has two rules");
        if (const auto kind = node.find("default"))
            if (!byDefault_.emplace(kind->string(), index).second) kind->fail("has two rules");
    }

    void assign() {
        for (const char* kind : {"listed", "number", "text"})
            if (!byDefault_.contains(kind))
                root_.at("rules").fail(std::string{"no rule is the default for "} + kind);
        if (!root_.problems().empty()) return;
        for (const Item& item : catalogue_.items()) {
            const std::size_t index = indexFor(item);
            const ChangeRule& rule = out_.rules_[index];
            const bool numeric = rule.kind == ChangeRule::Kind::number;
            const bool words = rule.kind == ChangeRule::Kind::text;
            const bool fits = item.scale.numeric()  ? numeric
                              : item.scale.listed() ? !numeric && !words
                                                    : words;
            if (!fits) root_.at("rules").fail("\"" + rule.id + "\" cannot judge \"" + item.id.text() + "\"");
            for (const ScaleValue& value : item.scale.values)
                if (rule.kind == ChangeRule::Kind::wholeGrades && !rule.grades.contains(value.token))
                    root_.at("rules").fail("\"" + rule.id + "\" has no grade for \"" + value.token + "\"");
            out_.ofItem_.emplace(item.id, index);
        }
    }

    [[nodiscard]] std::size_t indexFor(const Item& item) const {
        if (const auto found = byItem_.find(item.id); found != byItem_.end()) return found->second;
        if (const auto found = byScale_.find(item.scale.name); found != byScale_.end()) return found->second;
        return byDefault_.at(item.scale.numeric() ? "number" : item.scale.listed() ? "listed" : "text");
    }

    void readNumbArea(const JsonNode& node) {
        node.onlyKeys({"scale", "counts", "change_percent", "overlap_below_percent", "words", "source"});
        out_.numbArea_ = {node.at("scale").string(),          node.at("counts").strings(),
                          node.at("change_percent").number(), node.at("overlap_below_percent").number(),
                          node.at("words").string(),          node.at("source").string()};
    }

    const JsonNode& root_;
    const Catalogue& catalogue_;
    Thresholds out_;
    std::map<ItemId, std::size_t> byItem_;
    std::map<std::string, std::size_t> byScale_;
    std::map<std::string, std::size_t> byDefault_;
};

Result<Thresholds> Thresholds::parse(std::string_view text, const std::string& name,
                                     const Catalogue& catalogue) {
    const auto json = parseJson(text, name);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, name, problems};
    Thresholds thresholds = ThresholdReader{root, catalogue}.read();
    if (!problems.empty()) return problems;
    return thresholds;
}

Result<Thresholds> Thresholds::load(const std::filesystem::path& file, const Catalogue& catalogue) {
    const auto text = readTextFile(file);
    if (!text) return text.problems();
    return parse(*text, file.string(), catalogue);
}

Result<RegionAreas> loadRegionAreas(const std::filesystem::path& file) {
    const auto json = readJsonFile(file);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, file.string(), problems};
    if (root.at("format").string() != "rhizograph.areas") root.fail("format is not rhizograph.areas");
    RegionAreas out;
    for (const auto& [view, regions] : root.at("areas").members())
        for (const auto& [region, area] : regions.members())
            out[region] = area.number() * root.at("roundness").at(view).number();
    if (!problems.empty()) return problems;
    return out;
}

} // namespace rhizograph
