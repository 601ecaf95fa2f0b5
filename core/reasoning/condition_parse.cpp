#include "reasoning/condition.h"
#include "reasoning/names.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph {

/// Compiles conditions; sees to it that every name, value and key has a meaning.
class ConditionParser {
public:
    ConditionParser(const JsonNode& node, const Vocabulary& words) : node_(node), words_(words) {}

    Condition parse() const {
        if (!node_.isObject()) return refuse("should be an object");
        if (node_.has("item")) return findings();
        if (node_.has("any")) return list("any", 1);
        if (node_.has("all")) return list("all", std::nullopt);
        if (node_.has("count_at_least")) return counted();
        if (node_.has("not")) return negation();
        if (node_.has("unless")) return unless();
        if (node_.has("term")) return term();
        if (node_.has("either_side")) return sides("either_side", false);
        if (node_.has("both_sides")) return sides("both_sides", true);
        if (node_.has("age_at_least") || node_.has("age_at_most")) return age();
        if (node_.has("sex")) return sex();
        if (node_.has("site_in")) return site();
        if (node_.has("red_sign")) return redSign();
        if (node_.has("screen")) return screen();
        return refuse("no known kind of condition");
    }

private:
    using Which = Condition::Which;

    static Condition make(Condition::Form form) {
        Condition condition;
        condition.form_ = std::move(form);
        return condition;
    }
    Condition refuse(const std::string& reason) const {
        node_.fail(reason);
        return {};
    }

    // --- combinations

    std::vector<Condition> parts(const JsonNode& node) const {
        std::vector<Condition> out;
        for (const JsonNode& part : node.items())
            out.push_back(ConditionParser(part, words_).parse());
        if (out.empty()) node.fail("needs at least one condition");
        return out;
    }
    Condition list(const std::string& key, std::optional<std::size_t> needed) const {
        node_.onlyKeys({key});
        Condition::Count count;
        count.parts = parts(node_.at(key));
        count.needed = needed ? *needed : count.parts.size();
        return make(std::move(count));
    }
    Condition counted() const {
        node_.onlyKeys({"count_at_least", "of"});
        Condition::Count count;
        const int needed = node_.at("count_at_least").integer();
        count.parts = parts(node_.at("of"));
        if (needed < 1 || static_cast<std::size_t>(needed) > count.parts.size())
            node_.at("count_at_least").fail(fmt::format("should be 1 to {}", count.parts.size()));
        count.needed = static_cast<std::size_t>(std::max(1, needed));
        return make(std::move(count));
    }
    Condition negation() const {
        node_.onlyKeys({"not"});
        return make(Condition::Not{{ConditionParser(node_.at("not"), words_).parse()}});
    }
    Condition unless() const {
        node_.onlyKeys({"unless"});
        return make(Condition::Unless{{ConditionParser(node_.at("unless"), words_).parse()}});
    }
    Condition term() const {
        node_.onlyKeys({"term"});
        const std::string name = node_.at("term").string();
        const auto found = words_.terms ? words_.terms->find(name) : Terms::const_iterator{};
        if (!words_.terms || found == words_.terms->end()) return refuse("no term \"" + name + "\"");
        if (found->second.perSide && !words_.sidedRule)
            return refuse("\"" + name + "\" is a term of one side");
        return found->second.condition;
    }
    Condition sides(const std::string& key, bool both) const {
        node_.onlyKeys({key});
        Vocabulary inner = words_;
        inner.sidedRule = true;
        return make(Condition::Sides{both, {ConditionParser(node_.at(key), inner).parse()}});
    }

    // --- findings

    std::vector<const Item*> named(const JsonNode& node) const {
        const std::string id = node.string();
        std::vector<const Item*> out;
        if (id.size() > 2 && id.ends_with(".*")) {
            const std::string stem = id.substr(0, id.size() - 1);
            for (const Item& item : words_.catalogue->items())
                if (item.id.text().starts_with(stem)) out.push_back(&item);
        } else if (const Item* item = words_.catalogue->find(id)) {
            out.push_back(item);
        }
        if (out.empty()) node.fail("no item \"" + id + "\" in the catalogue");
        return out;
    }
    std::vector<const Item*> items() const {
        const JsonNode node = node_.at("item");
        std::vector<const Item*> out;
        if (node.isArray()) {
            for (const JsonNode& one : node.items())
                for (const Item* item : named(one))
                    out.push_back(item);
        } else {
            out = named(node);
        }
        if (const auto except = node_.find("except"))
            for (const JsonNode& one : except->items())
                for (const Item* unwanted : named(one))
                    if (std::erase(out, unwanted) == 0)
                        one.fail("is not among the items, so it cannot be excepted");
        return out;
    }

    Condition findings() const {
        node_.onlyKeys(
            {"item", "side", "except", "is", "at_least", "at_most", "fell_by", "was", "recorded", "minus"});
        const int tests = int(node_.has("is")) + int(node_.has("at_least") || node_.has("at_most")) +
                          int(node_.has("recorded"));
        const bool change = node_.has("fell_by") || node_.has("was");
        if (tests > 1 || (tests == 0 && !change) || (node_.has("recorded") && change))
            return refuse(
                "needs exactly one of is, at_least or at_most, recorded, or a change: was, fell_by");
        Condition::Count any;
        for (const Item* item : items())
            any.parts.push_back(onItem(*item));
        if (any.parts.empty()) return refuse("names no item");
        return make(std::move(any));
    }

    Condition onItem(const Item& item) const {
        Condition::FindingTest test;
        test.place = Condition::Place{item.id};
        readTest(item, test);
        if (!item.sided) {
            if (node_.has("side")) node_.at("side").fail("\"" + item.id.text() + "\" has no sides");
            return make(std::move(test));
        }
        if (!node_.has("side")) {
            if (test.recorded) node_.fail("\"recorded\" needs a side for \"" + item.id.text() + "\"");
            return onBothSides(item, test, 1);
        }
        const JsonNode side = node_.at("side");
        if (side.string() == "both") return onBothSides(item, test, 2);
        test.place = readSide(side, item);
        return make(std::move(test));
    }
    static Condition onBothSides(const Item& item, const Condition::FindingTest& test, std::size_t needed) {
        Condition::Count count;
        count.needed = needed;
        for (const Side side : {Side::left, Side::right}) {
            Condition::FindingTest one = test;
            one.place = Condition::Place{item.id, Which::given, side};
            count.parts.push_back(make(std::move(one)));
        }
        return make(std::move(count));
    }
    Condition::Place readSide(const JsonNode& node, const Item& item) const {
        Which which = Which::given;
        Side side = Side::none;
        readSide(node, which, side);
        return Condition::Place{item.id, which, side};
    }
    /// left, right, or one relative to the side the rule runs for.
    void readSide(const JsonNode& node, Which& which, Side& side) const {
        const std::string word = node.string();
        if (word == "left" || word == "right") {
            side = *sideNamed(word);
        } else if (word == "same" || word == "other") {
            if (!words_.sidedRule)
                node.fail("\"" + word + "\" has no meaning here: the rule does not run side by side");
            which = word == "same" ? Which::same : Which::other;
        } else {
            node.fail("\"" + word + "\" is not a side");
        }
    }

    void readTest(const Item& item, Condition::FindingTest& test) const {
        if (const auto recorded = node_.find("recorded")) test.recorded = recorded->boolean();
        if (const auto fell = node_.find("fell_by")) readFall(*fell, item, test);
        if (const auto was = node_.find("was")) readTokens(*was, item, test.was);
        if (const auto is = node_.find("is")) readTokens(*is, item, test.accepted);
        if (const auto least = node_.find("at_least")) readBound(*least, item, test, true);
        if (const auto most = node_.find("at_most")) readBound(*most, item, test, false);
        if (const auto minus = node_.find("minus")) readMinus(*minus, item, test);
    }
    void readFall(const JsonNode& node, const Item& item, Condition::FindingTest& test) const {
        test.fellBy = node.integer();
        if (*test.fellBy < 1) node.fail("should be 1 or more");
        if (item.scale.kind != Scale::Kind::grade && !item.scale.numeric())
            node.fail("\"" + item.id.text() + "\" has no order to fall in");
    }
    void readTokens(const JsonNode& node, const Item& item, std::vector<std::string>& out) const {
        if (!item.scale.listed()) {
            node.fail("\"" + item.id.text() + "\" has no listed values");
            return;
        }
        const std::vector<JsonNode> tokens = node.isArray() ? node.items() : std::vector<JsonNode>{node};
        for (const JsonNode& token : tokens) {
            out.push_back(token.string());
            if (!item.scale.index(out.back()))
                token.fail("\"" + out.back() + "\" is not on the scale of \"" + item.id.text() + "\"");
        }
        if (tokens.empty()) node.fail("needs at least one value");
    }
    void readBound(const JsonNode& node, const Item& item, Condition::FindingTest& test, bool least) const {
        const Scale& scale = item.scale;
        if (scale.numeric()) {
            const double bound = node.number();
            // A difference of two values may lie beyond the scale of either.
            if (!node_.has("minus") && (bound < scale.minimum || bound > scale.maximum))
                node.fail(fmt::format("{} is outside the scale of \"{}\"", bound, item.id.text()));
            (least ? test.atLeast : test.atMost) = bound;
        } else if (scale.kind == Scale::Kind::grade) {
            const auto bound = scale.index(node.string());
            if (!bound) {
                node.fail(fmt::format("\"{}\" is not on the scale of \"{}\"", node.string(), item.id.text()));
                return;
            }
            keepWithin(scale, *bound, least, test);
        } else {
            node.fail("\"" + item.id.text() + "\" has no order");
        }
    }
    /// A bound on a grade becomes the list of tokens on the right side of it; a second bound narrows the
    /// first.
    static void keepWithin(const Scale& scale, std::size_t bound, bool least, Condition::FindingTest& test) {
        std::vector<std::string> kept;
        for (std::size_t i = 0; i < scale.values.size(); ++i) {
            const std::string& token = scale.values[i].token;
            const bool before =
                test.accepted.empty() || std::count(test.accepted.begin(), test.accepted.end(), token) > 0;
            if (before && (least ? i >= bound : i <= bound)) kept.push_back(token);
        }
        test.accepted = std::move(kept);
    }
    void readMinus(const JsonNode& node, const Item& item, Condition::FindingTest& test) const {
        node.onlyKeys({"item", "side"});
        const std::vector<const Item*> others = named(node.at("item"));
        if (others.size() != 1) return;
        const Item& other = *others.front();
        if (!item.scale.numeric() || !other.scale.numeric()) node.fail("only numbers can be subtracted");
        test.minus = other.sided ? readSide(node.at("side"), other) : Condition::Place{other.id};
    }

    // --- the person and the assessment

    Condition age() const {
        node_.onlyKeys({"age_at_least", "age_at_most"});
        Condition::AgeTest test;
        if (const auto least = node_.find("age_at_least")) test.least = least->integer();
        if (const auto most = node_.find("age_at_most")) test.most = most->integer();
        if (test.least > test.most) node_.fail("no age lies within these bounds");
        return make(test);
    }
    Condition sex() const {
        node_.onlyKeys({"sex"});
        const std::string word = node_.at("sex").string();
        if (word != "female" && word != "male" && word != "other")
            node_.at("sex").fail("should be female, male or other");
        return make(Condition::SexTest{word});
    }
    void assessmentOnly() const {
        if (!words_.assessment) node_.fail("looks at the assessment, which is not there yet for this rule");
    }
    /// A name of sites or screens: known, else reported.
    static std::string known(const JsonNode& node, const std::set<std::string>& names,
                             const std::string& kind) {
        if (!names.contains(node.string())) node.fail("no " + kind + " \"" + node.string() + "\"");
        return node.string();
    }
    void resultSide(Which& which, std::optional<Side>& side) const {
        const auto node = node_.find("side");
        if (!node) return;
        if (node->string() == "both") {
            side = Side::both;
            return;
        }
        Side given = Side::none;
        readSide(*node, which, given);
        if (which == Which::given) side = given;
    }
    Condition site() const {
        node_.onlyKeys({"site_in", "probability_at_least", "side"});
        assessmentOnly();
        Condition::SiteTest test;
        for (const JsonNode& site : node_.at("site_in").items())
            test.sites.insert(known(site, words_.sites, "site"));
        test.probability = node_.at("probability_at_least").number();
        if (test.probability <= 0 || test.probability > 1)
            node_.at("probability_at_least").fail("should be above 0 and at most 1");
        resultSide(test.which, test.side);
        return make(std::move(test));
    }
    Condition redSign() const {
        node_.onlyKeys({"red_sign", "urgency_at_least"});
        assessmentOnly();
        Condition::RedSignTest test;
        const JsonNode id = node_.at("red_sign");
        test.id = id.string() == "*" ? "*" : known(id, words_.redSigns, "red sign");
        if (const auto least = node_.find("urgency_at_least")) {
            if (const auto urgency = urgencyNamed(least->string()))
                test.least = *urgency;
            else
                least->fail("should be note, urgent or emergency");
        }
        return make(std::move(test));
    }
    Condition screen() const {
        node_.onlyKeys({"screen", "verdict", "side"});
        assessmentOnly();
        Condition::ScreenTest test;
        test.id = known(node_.at("screen"), words_.screens, "screen");
        const JsonNode verdict = node_.at("verdict");
        for (const JsonNode& word : verdict.isArray() ? verdict.items() : std::vector<JsonNode>{verdict}) {
            const auto named = screenVerdictNamed(word.string());
            if (named && *named != ScreenVerdict::notExamined)
                test.verdicts.insert(*named);
            else
                word.fail("should be low, raised or high");
        }
        resultSide(test.which, test.side);
        return make(std::move(test));
    }

    const JsonNode& node_;
    const Vocabulary& words_;
};

Condition Condition::parse(const JsonNode& node, const Vocabulary& vocabulary) {
    return ConditionParser(node, vocabulary).parse();
}

} // namespace rhizograph
