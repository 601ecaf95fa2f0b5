#include "base/json.h"
#include "reasoning/names.h"
#include "reasoning/rulebook.h"

#include <algorithm>

namespace rhizograph {

/// Reads the rule files one after the other and collects everything that is wrong with them.
class RuleBookLoader {
public:
    RuleBookLoader(const std::filesystem::path& directory, const Catalogue& catalogue)
        : directory_(directory) {
        words_.catalogue = &catalogue;
        for (const Item& item : catalogue.items())
            book_.order_.emplace(item.id, catalogue.order(item.id));
    }

    Result<RuleBook> load() {
        readEvidence();
        withFile("sites.json", "rhizograph.sites", [&](const JsonNode& root) { readSites(root); });
        withFile("redsigns.json", "rhizograph.redsigns", [&](const JsonNode& root) { readRedSigns(root); });
        withFile("screens.json", "rhizograph.screens", [&](const JsonNode& root) { readScreens(root); });
        withFile("consistency.json", "rhizograph.consistency",
                 [&](const JsonNode& root) { readConsistency(root); });
        words_.assessment = true;
        withFile("workup.json", "rhizograph.workup", [&](const JsonNode& root) { readWorkup(root); });
        withFile("codes.json", "rhizograph.codes", [&](const JsonNode& root) { readCodes(root); });
        if (!problems_.empty()) return problems_;
        return std::move(book_);
    }

private:
    template <class Read>
    void withFile(const std::string& name, const std::string& format, const Read& read) {
        const std::filesystem::path path = directory_ / name;
        auto json = readJsonFile(path);
        if (!json) {
            problems_.insert(problems_.end(), json.problems().begin(), json.problems().end());
            return;
        }
        const JsonNode root{*json, path.string(), problems_};
        if (root.at("format").string() != format) root.fail("format is not " + format);
        if (root.at("version").integer() != 1) root.fail("version is not 1");
        read(root);
    }

    void readEvidence() {
        auto evidence = Evidence::load(directory_ / "evidence.json");
        if (evidence)
            book_.evidence_ = std::move(*evidence);
        else
            problems_.insert(problems_.end(), evidence.problems().begin(), evidence.problems().end());
    }

    void readSites(const JsonNode& root) {
        for (const JsonNode& site : root.at("sites").items())
            words_.sites.insert(site.at("site").string());
    }

    std::string once(const JsonNode& node, std::set<std::string>& seen) const {
        const std::string id = node.string();
        if (!seen.insert(id).second) node.fail("\"" + id + "\" is named twice");
        return id;
    }

    Condition condition(const JsonNode& node, bool perSide = false) {
        Vocabulary words = words_;
        words.sidedRule = perSide;
        return Condition::parse(node, words);
    }

    /// Each term may name those above it.
    void readTerms(const JsonNode& node) {
        auto terms = std::make_shared<Terms>();
        for (const JsonNode& entry : node.items()) {
            entry.onlyKeys({"id", "per_side", "when"});
            words_.terms = terms;
            const bool perSide = entry.has("per_side") && entry.at("per_side").boolean();
            const std::string id = entry.at("id").string();
            const Condition when = condition(entry.at("when"), perSide);
            if (!terms->emplace(id, Term{when, perSide}).second) entry.fail("\"" + id + "\" is named twice");
        }
    }

    void readRedSigns(const JsonNode& root) {
        if (const auto terms = root.find("terms")) readTerms(*terms);
        for (const JsonNode& node : root.at("ask_always").items())
            readAskAlways(node);
        for (const JsonNode& node : root.at("red_signs").items()) {
            node.onlyKeys({"id", "levels"});
            RuleBook::RedSignRule rule{once(node.at("id"), words_.redSigns), {}};
            for (const JsonNode& level : node.at("levels").items())
                rule.levels.push_back(redSignLevel(level));
            if (rule.levels.empty()) node.at("levels").fail("needs at least one level");
            const auto& levels = rule.levels;
            if (!std::is_sorted(levels.begin(), levels.end(),
                                [](const auto& a, const auto& b) { return a.urgency > b.urgency; }))
                node.at("levels").fail("the gravest level comes first");
            book_.redSigns_.push_back(std::move(rule));
        }
    }
    void readAskAlways(const JsonNode& node) {
        const Item* item = words_.catalogue->find(node.string());
        if (item == nullptr)
            node.fail("no item \"" + node.string() + "\" in the catalogue");
        else if (item->sided)
            node.fail("only questions without a side can always be asked");
        else
            book_.askAlways_.push_back({item->id, Side::none});
    }
    RuleBook::RedSignLevel redSignLevel(const JsonNode& node) {
        node.onlyKeys({"urgency", "due", "when", "sentence", "action", "source"});
        RuleBook::RedSignLevel level;
        const JsonNode urgency = node.at("urgency");
        if (const auto named = urgencyNamed(urgency.string()))
            level.urgency = *named;
        else
            urgency.fail("should be note, urgent or emergency");
        level.due = node.at("due").string();
        if (level.due != "now" && level.due != "same_day" && level.due != "days" && level.due != "next_visit")
            node.at("due").fail("should be now, same_day, days or next_visit");
        level.when = condition(node.at("when"));
        level.sentence = node.at("sentence").string();
        level.action = node.at("action").string();
        if (!level.action.starts_with("Usually ") || !level.action.ends_with("; follow the local pathway."))
            node.at("action").fail("should read \"Usually …; follow the local pathway.\"");
        level.source = book_.evidence_.cited(node.at("source"));
        return level;
    }

    static double ratio(const JsonNode& node) {
        const double value = node.number();
        if (value <= 0) node.fail("a likelihood ratio is above 0");
        return value > 0 ? value : 1;
    }
    void readScreens(const JsonNode& root) {
        for (const JsonNode& node : root.at("screens").items()) {
            node.onlyKeys(
                {"id", "label", "per_side", "prior", "raised", "high", "lr_cap", "source", "rules"});
            RuleBook::Screen screen;
            screen.id = once(node.at("id"), words_.screens);
            screen.label = node.at("label").string();
            screen.perSide = node.has("per_side") && node.at("per_side").boolean();
            screen.prior = node.at("prior").number();
            screen.raised = node.at("raised").number();
            screen.high = node.at("high").number();
            screen.cap = node.at("lr_cap").number();
            if (screen.prior <= 0 || screen.prior >= 1) node.at("prior").fail("should lie between 0 and 1");
            if (screen.raised <= screen.prior || screen.high <= screen.raised || screen.high >= 1)
                node.fail("prior, raised and high should rise in this order and stay below 1");
            if (screen.cap < 1) node.at("lr_cap").fail("should be 1 or more");
            (void)book_.evidence_.cited(node.at("source"));
            for (const JsonNode& rule : node.at("rules").items())
                screen.rules.push_back(screenRule(rule, screen.perSide));
            book_.screens_.push_back(std::move(screen));
        }
    }
    RuleBook::ScreenRule screenRule(const JsonNode& node, bool perSide) {
        node.onlyKeys({"id", "group", "when", "lr", "else_lr", "background", "source"});
        RuleBook::ScreenRule rule;
        rule.group = node.at("group").string();
        rule.when = condition(node.at("when"), perSide);
        rule.ifTrue = ratio(node.at("lr"));
        if (const auto otherwise = node.find("else_lr")) rule.ifFalse = ratio(*otherwise);
        if (const auto background = node.find("background")) rule.background = background->boolean();
        (void)book_.evidence_.cited(node.at("source"));
        return rule;
    }

    void readConsistency(const JsonNode& root) {
        std::set<std::string> ids;
        for (const JsonNode& node : root.at("rules").items()) {
            node.onlyKeys({"id", "per_side", "when", "sentence", "source"});
            RuleBook::ConsistencyRule rule;
            rule.id = once(node.at("id"), ids);
            rule.perSide = node.has("per_side") && node.at("per_side").boolean();
            rule.when = condition(node.at("when"), rule.perSide);
            rule.sentence = node.at("sentence").string();
            rule.source = book_.evidence_.cited(node.at("source"));
            book_.consistency_.push_back(std::move(rule));
        }
        for (const JsonNode& node : root.at("behavioral_groups").items()) {
            node.onlyKeys({"id", "when", "source"});
            (void)once(node.at("id"), ids);
            (void)book_.evidence_.cited(node.at("source"));
            book_.behavior_.groups.push_back(condition(node.at("when")));
        }
        book_.behavior_.noteAt = root.at("behavioral_note_at").integer();
        if (book_.behavior_.noteAt < 1) root.at("behavioral_note_at").fail("should be 1 or more");
        book_.behavior_.sentence = root.at("behavioral_sentence").string();
        book_.behavior_.source = book_.evidence_.cited(root.at("behavioral_source"));
    }

    void readWorkup(const JsonNode& root) {
        std::set<std::string> ids;
        for (const JsonNode& node : root.at("workup").items()) {
            node.onlyKeys({"id", "when", "text", "source"});
            RuleBook::WorkupRule rule;
            rule.note = {once(node.at("id"), ids), node.at("text").string(),
                         book_.evidence_.cited(node.at("source"))};
            if (rule.note.text.find("sually considered") == std::string::npos)
                node.at("text").fail("should say what is \"usually considered\", never order it");
            rule.when = condition(node.at("when"));
            book_.workup_.push_back(std::move(rule));
        }
    }

    void readCodes(const JsonNode& root) {
        const std::string system = root.at("system").string();
        std::set<std::string> seen;
        for (const JsonNode& node : root.at("codes").items()) {
            node.onlyKeys({"code", "text", "when", "status"});
            const std::string status = node.at("status").string();
            if (status != "read" && status != "from memory")
                node.at("status").fail("should be read or from memory");
            RuleBook::CodeRule rule;
            rule.code = {system, once(node.at("code"), seen), node.at("text").string()};
            rule.when = condition(node.at("when"));
            book_.codes_.push_back(std::move(rule));
        }
    }

    std::filesystem::path directory_;
    Vocabulary words_;
    Problems problems_;
    RuleBook book_;
};

Result<RuleBook> RuleBook::load(const std::filesystem::path& directory, const Catalogue& catalogue) {
    return RuleBookLoader(directory, catalogue).load();
}

} // namespace rhizograph
