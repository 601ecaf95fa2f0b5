#include "reasoning/phrases.h"

#include "base/json.h"

#include <algorithm>
#include <array>

namespace rhizograph {
namespace {

/// Every key that narratives and comparisons ask for with word().
constexpr std::array kWords = {"side.left",
                               "side.right",
                               "side.both",
                               "and",
                               "note",
                               "not_testable",
                               "not_testable_item",
                               "on_side",
                               "red_signs",
                               "impression",
                               "urgency.note",
                               "urgency.urgent",
                               "urgency.emergency",
                               "red_sign",
                               "no_red_sign",
                               "acknowledged",
                               "acknowledged_unnamed",
                               "not_acknowledged",
                               "plan",
                               "no_plan",
                               "signature",
                               "signed",
                               "signed_unnamed",
                               "not_signed",
                               "addendum",
                               "written",
                               "words_changed",
                               "elsewhere",
                               "elsewhere_more",
                               "elsewhere_missing",
                               "not_asked",
                               "nothing_known",
                               "leading",
                               "other_site",
                               "support.weak",
                               "support.moderate",
                               "support.strong",
                               "support.none",
                               "speaks_for",
                               "speaks_against",
                               "level",
                               "level_or",
                               "level_rarer",
                               "percent",
                               "percent_over",
                               "fit.fits",
                               "fit.partly",
                               "fit.poor",
                               "surprising",
                               "screen",
                               "screen.raised",
                               "screen.high",
                               "consistency",
                               "workup",
                               "site_left",
                               "site_right",
                               "site_both",
                               "cautions",
                               "change.better",
                               "change.worse",
                               "change.new",
                               "change.resolved",
                               "change.different",
                               "change.same",
                               "change.not_comparable",
                               "change.none",
                               "changed_value",
                               "comparison_since",
                               "not_examined",
                               "comparison_undated"};

bool isPlace(std::string_view place) {
    static constexpr std::array places = {"names", "plurals", "value", "side", "right", "left", "whole"};
    return place.find('|') != std::string_view::npos ||
           std::find(places.begin(), places.end(), place) != places.end();
}

} // namespace

/// Reads phrases.json against the catalogue and collects everything that is wrong with it.
class PhraseReader {
public:
    PhraseReader(const JsonNode& root, const Catalogue& catalogue) : root_(root), catalogue_(catalogue) {}

    PhraseBook read() {
        if (root_.at("format").string() != "rhizograph.phrases")
            root_.fail("format is not rhizograph.phrases");
        if (root_.at("version").integer() != 1) root_.fail("version is not 1");
        readSections();
        readForms();
        readFamilies();
        readItems();
        readUnits();
        readWords();
        return std::move(book_);
    }

private:
    void readSections() {
        for (const JsonNode& node : root_.at("sections").items()) {
            node.onlyKeys({"id", "title", "not_done"});
            const std::string id = node.at("id").string();
            if (!sections_.emplace(id, book_.sections_.size()).second)
                node.fail("\"" + id + "\" is named twice");
            book_.sections_.push_back({id, node.at("title").string(), node.at("not_done").string()});
        }
    }

    std::string phrase(const JsonNode& node) const {
        const std::string text = node.string();
        for (std::size_t open = text.find('{'); open != std::string::npos; open = text.find('{', open + 1)) {
            const std::size_t close = text.find('}', open);
            if (close == std::string::npos)
                node.fail("a { without its }");
            else if (!isPlace(text.substr(open + 1, close - open - 1)))
                node.fail("unknown place {" + text.substr(open + 1, close - open - 1) + "}");
        }
        return text;
    }

    std::string optional(const JsonNode& node, const std::string& key) const {
        const auto found = node.find(key);
        return found ? phrase(*found) : std::string{};
    }

    PhraseSides sides(const JsonNode& form, const std::string& key) const {
        const auto node = form.find(key);
        if (!node) return {};
        node->onlyKeys({"plain", "side", "both"});
        return {optional(*node, "plain"), optional(*node, "side"), optional(*node, "both")};
    }

    static std::map<std::string, std::string> values(const JsonNode& node) {
        std::map<std::string, std::string> out;
        if (const auto list = node.find("values"))
            for (const auto& [token, words] : list->members())
                out.emplace(token, words.string());
        return out;
    }

    void readForms() {
        for (const auto& [id, node] : root_.at("forms").members()) {
            node.onlyKeys({"subject", "join", "abnormal", "normal", "neutral", "pair", "other",
                           "other_unknown", "values"});
            forms_.emplace(id, book_.forms_.size());
            book_.forms_.push_back({phrase(node.at("subject")), node.at("join").string(),
                                    sides(node, "abnormal"), sides(node, "normal"), sides(node, "neutral"),
                                    optional(node, "pair"), optional(node, "other"),
                                    optional(node, "other_unknown"), values(node)});
        }
    }

    static std::size_t named(const std::map<std::string, std::size_t>& all, const JsonNode& node) {
        const auto found = all.find(node.string());
        if (found != all.end()) return found->second;
        node.fail("no such entry \"" + node.string() + "\"");
        return 0;
    }

    std::optional<ItemId> item(const JsonNode& node, const std::string& id) const {
        if (catalogue_.find(id) != nullptr) return ItemId{id};
        node.fail("no such item \"" + id + "\" in the catalogue");
        return std::nullopt;
    }

    void readFamilies() {
        for (const JsonNode& node : root_.at("families").items()) {
            node.onlyKeys({"id", "section", "form", "whole", "missing", "groups", "sets"});
            const std::size_t index = book_.families_.size();
            PhraseFamily family{node.at("id").string(),
                                named(sections_, node.at("section")),
                                named(forms_, node.at("form")),
                                node.at("whole").string(),
                                true,
                                {}};
            if (const auto missing = node.find("missing")) family.listMissing = missing->string() != "whole";
            if (const auto groups = node.find("groups"))
                for (const std::string& group : groups->strings())
                    if (!groups_.emplace(group, index).second)
                        groups->fail("group \"" + group + "\" has two families");
            if (const auto list = node.find("sets")) readSets(*list, family);
            if (!familyIds_.emplace(family.id, index).second)
                node.fail("\"" + family.id + "\" is named twice");
            book_.families_.push_back(std::move(family));
        }
    }

    /// "sets": names of areas; each stands for the items of the family on those skin regions.
    void readSets(const JsonNode& node, PhraseFamily& family) const {
        const std::string prefix = node.at("items_begin").string();
        for (const auto& [name, regions] : root_.at("region_sets").members()) {
            PhraseSet set{name, {}};
            for (const std::string& region : regions.strings())
                if (const auto id = item(regions, prefix + region)) set.items.push_back(*id);
            family.sets.push_back(std::move(set));
        }
    }

    void readItems() {
        std::map<std::string, std::string> regions;
        for (const auto& [region, name] : root_.at("regions").members())
            regions.emplace(region, name.string());
        for (const Item& each : catalogue_.items()) {
            const auto group = groups_.find(each.group.text());
            const auto region = regions.find(each.region);
            book_.items_.emplace(
                each.id, PhraseItem{group == groups_.end() ? noFamily : group->second,
                                    region == regions.end() ? lowerFirst(each.shortLabel) : region->second,
                                    {},
                                    {}});
        }
        for (const auto& [id, node] : root_.at("items").members()) {
            node.onlyKeys({"name", "plural", "family", "values"});
            if (!item(node, id)) continue;
            PhraseItem& entry = book_.items_.at(ItemId{id});
            if (const auto name = node.find("name")) entry.name = name->string();
            if (const auto plural = node.find("plural")) entry.plural = plural->string();
            if (const auto family = node.find("family")) entry.family = named(familyIds_, *family);
            entry.values = values(node);
            checkTokens(*catalogue_.find(id), node, entry);
        }
        for (auto& [id, entry] : book_.items_)
            if (entry.plural.empty()) entry.plural = entry.name + "s";
        for (const auto& [id, entry] : book_.items_)
            if (entry.family == noFamily)
                root_.fail("no family for item \"" + id.text() + "\" nor for its group");
            else
                checkNamed(*catalogue_.find(id), entry);
    }

    /// A sentence must name what it speaks of: where the form does not, every value needs words of its own.
    void checkNamed(const Item& item, const PhraseItem& entry) const {
        const PhraseSides& sides = book_.forms_[book_.families_[entry.family].form].abnormal;
        const std::string& phrase = item.sided ? sides.side : sides.plain;
        const bool named = phrase.find("{names}") != std::string::npos || phrase.empty();
        for (const ScaleValue& value : item.scale.values)
            if (!named && !entry.values.contains(value.token))
                root_.at("items").fail("\"" + item.id.text() + "\" needs words for its value \"" +
                                       value.token + "\"");
    }

    static void checkTokens(const Item& item, const JsonNode& node, const PhraseItem& entry) {
        for (const auto& [token, words] : entry.values)
            if (item.scale.listed() && !item.scale.index(token))
                node.fail("\"" + token + "\" is not on the scale of the item");
    }

    void readUnits() {
        for (const auto& [unit, node] : root_.at("units").members()) {
            node.onlyKeys({"suffix", "customary"});
            PhraseUnit entry{node.at("suffix").string(), {}, 1, 0, 0};
            if (const auto other = node.find("customary")) {
                other->onlyKeys({"suffix", "factor", "offset", "decimals", "source"});
                entry.customarySuffix = other->at("suffix").string();
                entry.factor = other->at("factor").number();
                entry.offset = other->has("offset") ? other->at("offset").number() : 0;
                entry.decimals = other->at("decimals").integer();
            }
            book_.units_.emplace(unit, entry);
        }
    }

    void readWords() {
        const JsonNode node = root_.at("words");
        for (const auto& [key, text] : node.members())
            book_.words_.emplace(key, text.string());
        for (const char* key : kWords)
            (void)node.at(key);
        for (const std::string& reason : catalogue_.notTestableReasons())
            (void)node.at("reason." + reason);
    }

    static constexpr std::size_t noFamily = static_cast<std::size_t>(-1);

    const JsonNode& root_;
    const Catalogue& catalogue_;
    PhraseBook book_;
    std::map<std::string, std::size_t> sections_;
    std::map<std::string, std::size_t> forms_;
    std::map<std::string, std::size_t> familyIds_;
    std::map<std::string, std::size_t> groups_;
};

Result<PhraseBook> PhraseBook::parse(std::string_view text, const std::string& name,
                                     const Catalogue& catalogue) {
    const auto json = parseJson(text, name);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, name, problems};
    PhraseBook book = PhraseReader{root, catalogue}.read();
    if (!problems.empty()) return problems;
    return book;
}

Result<PhraseBook> PhraseBook::load(const std::filesystem::path& file, const Catalogue& catalogue) {
    const auto text = readTextFile(file);
    if (!text) return text.problems();
    return parse(*text, file.string(), catalogue);
}

const std::string* PhraseBook::findWord(const std::string& key) const {
    const auto found = words_.find(key);
    return found == words_.end() ? nullptr : &found->second;
}

const PhraseUnit* PhraseBook::unit(const std::string& unit) const {
    const auto found = units_.find(unit);
    return found == units_.end() ? nullptr : &found->second;
}

std::string lowerFirst(std::string text) {
    const auto letter = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U;
    };
    const bool abbreviation = letter(1) < 'a' || letter(1) > 'z';
    if (letter(0) >= 'A' && letter(0) <= 'Z' && !abbreviation)
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    return text;
}

std::string upperFirst(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string fillPhrase(std::string_view phrase, const PhraseFields& fields) {
    std::string out;
    while (true) {
        const std::size_t open = phrase.find('{');
        out += phrase.substr(0, open);
        if (open == std::string_view::npos) return out;
        const std::size_t close = phrase.find('}', open);
        if (close == std::string_view::npos) return out;
        const std::string place{phrase.substr(open + 1, close - open - 1)};
        if (const std::size_t bar = place.find('|'); bar != std::string::npos)
            out += fields.count == 1 ? place.substr(0, bar) : place.substr(bar + 1);
        else if (const auto text = fields.text.find(place); text != fields.text.end())
            out += text->second;
        phrase.remove_prefix(close + 1);
    }
}

} // namespace rhizograph
