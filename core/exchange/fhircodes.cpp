#include "base/json.h"
#include "exchange/fhir.h"

#include <array>
#include <fmt/format.h>
#include <random>

namespace rhizograph {
namespace {

ForeignCode codeOf(const JsonNode& node) {
    node.onlyKeys({"code", "display", "status"});
    ForeignCode out{node.at("code").string(), {}};
    if (const auto display = node.find("display")) out.display = display->string();
    return out;
}

std::map<std::string, ForeignCode> codesOf(const JsonNode& node) {
    std::map<std::string, ForeignCode> out;
    for (const auto& [key, code] : node.members())
        out.emplace(key, codeOf(code));
    return out;
}

std::map<std::string, std::string> wordsOf(const JsonNode& node) {
    std::map<std::string, std::string> out;
    for (const auto& [key, word] : node.members())
        out.emplace(key, word.string());
    return out;
}

ForeignMeasure measureOf(const JsonNode& node) {
    node.onlyKeys({"item", "days", "remark"});
    ForeignMeasure out{node.at("item").string(), node.at("days").integer(), {}};
    if (const auto remark = node.find("remark")) out.remark = remark->string();
    return out;
}

void readForeign(const JsonNode& root, FhirCodes& out) {
    for (const auto& [code, measure] : root.at("foreign_measures").members())
        out.measures.emplace(code, measureOf(measure));
    for (const auto& [unit, others] : root.at("foreign_units").members())
        for (const JsonNode& other : others.items())
            out.units[unit].push_back(
                {other.at("from").string(), other.at("factor").number(), other.at("offset").number()});
    for (const JsonNode& each : root.at("foreign_conditions").items())
        out.conditions.push_back(
            {each.at("prefixes").strings(), each.at("item").string(), each.at("value").string()});
}

void checkForeign(const Catalogue& catalogue, const JsonNode& root, const FhirCodes& codes) {
    for (const auto& [code, measure] : codes.measures) {
        const Item* item = catalogue.find(measure.item);
        if (item == nullptr || item->sided || !item->scale.numeric())
            root.at("foreign_measures").fail("\"" + measure.item + "\" is no measure without sides");
    }
    for (const ForeignCondition& each : codes.conditions)
        if (const auto wrong = check(catalogue, {ItemId{each.item}, Side::none}, Value::token(each.value)))
            root.at("foreign_conditions").fail(each.item + ": " + *wrong);
}

void checkAgainst(const Catalogue& catalogue, const JsonNode& root, const FhirCodes& codes) {
    const auto known = [&](const std::string& item) {
        if (catalogue.find(item) == nullptr) root.fail("no such item \"" + item + "\" in the catalogue");
    };
    for (const auto& [item, code] : codes.items)
        known(item);
    for (const std::string& item : codes.vitalSigns)
        known(item);
    for (const std::string& reason : catalogue.notTestableReasons())
        if (!codes.absentReasons.contains(reason))
            root.at("absent_reasons").fail("\"" + reason + "\" is missing");
}

} // namespace

Result<FhirCodes> FhirCodes::parse(std::string_view text, const std::string& name,
                                   const Catalogue& catalogue) {
    const auto json = parseJson(text, name);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, name, problems};
    if (root.at("format").string() != "rhizograph.fhir") root.fail("format is not rhizograph.fhir");
    FhirCodes out;
    out.sections = codesOf(root.at("sections"));
    out.groups = codesOf(root.at("groups"));
    out.items = codesOf(root.at("items"));
    for (const std::string& item : root.at("vital_signs").strings())
        out.vitalSigns.insert(item);
    out.surveyStep = root.at("survey_step").string();
    out.document = codeOf(root.at("document"));
    out.age = codeOf(root.at("age"));
    out.ucum = wordsOf(root.at("ucum"));
    out.absentReasons = wordsOf(root.at("absent_reasons"));
    readForeign(root, out);
    checkAgainst(catalogue, root, out);
    checkForeign(catalogue, root, out);
    if (!problems.empty()) return problems;
    return out;
}

Result<FhirCodes> FhirCodes::load(const std::filesystem::path& file, const Catalogue& catalogue) {
    const auto text = readTextFile(file);
    if (!text) return text.problems();
    return parse(*text, file.string(), catalogue);
}

std::string randomUuid() {
    std::random_device random;
    std::array<unsigned, 4> words{};
    for (unsigned& word : words)
        word = random();
    words[1] = (words[1] & 0xFFFF0FFFU) | 0x4000U;     // version 4
    words[2] = (words[2] & 0x3FFFFFFFU) | 0x80000000U; // the variant of RFC 4122
    return fmt::format("{:08x}-{:04x}-{:04x}-{:04x}-{:04x}{:08x}", words[0], words[1] >> 16U,
                       words[1] & 0xFFFFU, words[2] >> 16U, words[2] & 0xFFFFU, words[3]);
}

} // namespace rhizograph
