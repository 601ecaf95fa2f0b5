#include "casesreport/vote.h"

#include "base/json.h"

#include <algorithm>
#include <stdexcept>

namespace rhizograph::casesreport {
namespace {

constexpr double unexplained = 0.5;     ///< taken for an abnormal sign that the site does not explain
constexpr double expectedMissing = 0.2; ///< share of the weight taken for an expected sign that is normal

/// touch, pin and drawing of a region are one textbook entry.
std::string entryOf(const ItemId& item) {
    const std::string& text = item.text();
    for (const char* prefix : {"touch.", "pin.", "drawn."})
        if (text.rfind(prefix, 0) == 0) return "skin." + text.substr(text.find('.') + 1);
    return text;
}

/// Signs that a textbook wants explained; history and pain are not held against a site.
bool isSign(const std::string& entry) {
    return entry.rfind("strength.", 0) == 0 || entry.rfind("skin.", 0) == 0 || entry.rfind("reflex.", 0) == 0;
}

bool abnormal(const Scale& scale, const Value& value) {
    const Look look = lookOf(scale, value);
    if (look != Look::plain && look != Look::normal) return true;
    return value.kind() == Value::Kind::token && scale.normal && value.word() != *scale.normal &&
           look != Look::plain;
}

} // namespace

TextbookVote::TextbookVote(const std::filesystem::path& file, const Catalogue& catalogue)
    : catalogue_(&catalogue) {
    const auto document = readJsonFile(file);
    if (!document) throw std::runtime_error(document.problems().front().text());
    Problems problems;
    for (const JsonNode& node : JsonNode{*document, file.string(), problems}.at("sites").items()) {
        Expected expected;
        expected.site = SiteId{node.at("site").string()};
        const std::string sides = node.at("sides").string();
        expected.both = sides == "both";
        expected.none = sides == "none";
        expected.start = node.at("start").number();
        for (const auto& [item, weight] : node.at("expect").members())
            expected.weights[item] = weight.number();
        sites_.push_back(std::move(expected));
    }
    if (!problems.empty()) throw std::runtime_error(problems.front().text());
}

double TextbookVote::points(const Expected& expected, Side side, const Exam& exam) const {
    double sum = expected.start;
    for (const auto& [key, finding] : exam.findings()) {
        const Item* item = catalogue_->find(key.item);
        if (item == nullptr || !finding.value.testable()) continue;
        const std::string entry = entryOf(key.item);
        const bool positive = abnormal(item->scale, finding.value);
        const auto weight = expected.weights.find(entry);
        const bool here = key.side == Side::none || expected.both || key.side == side;
        if (here && weight != expected.weights.end())
            sum += positive ? weight->second : -expectedMissing * weight->second;
        else if (positive && isSign(entry))
            sum -= unexplained;
    }
    return sum;
}

std::vector<Ranked> TextbookVote::rank(const Exam& exam) const {
    std::vector<Ranked> out;
    for (const Expected& expected : sites_) {
        if (expected.none)
            out.push_back({expected.site, Side::none, points(expected, Side::none, exam)});
        else if (expected.both)
            out.push_back({expected.site, Side::both, points(expected, Side::both, exam)});
        else
            for (const Side side : {Side::left, Side::right})
                out.push_back({expected.site, side, points(expected, side, exam)});
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const Ranked& a, const Ranked& b) { return a.probability > b.probability; });
    return out;
}

std::size_t TextbookVote::rankOfTruth(const Case& given) const {
    const std::vector<Ranked> ranking = rank(given.exam);
    for (std::size_t i = 0; i < ranking.size(); ++i)
        if (accepted(given, ranking[i])) return i + 1;
    return 0;
}

} // namespace rhizograph::casesreport
