#include "exchange/fhirobservation.h"

#include "exchange/fhirnames.h"
#include "reasoning/phrases.h"

#include <cmath>

namespace rhizograph::fhir {
namespace {

using nlohmann::ordered_json;

constexpr double kWholeLimit = 2147483647; ///< FHIR integers have 32 bits

ordered_json category(const Item& item, const FhirCodes& codes) {
    const bool vital = codes.vitalSigns.contains(item.id.text());
    const char* code = vital ? "vital-signs" : item.step.text() == codes.surveyStep ? "survey" : "exam";
    return oneCoding("http://terminology.hl7.org/CodeSystem/observation-category", code);
}

ordered_json codeOf(const Item& item, const FhirCodes& codes) {
    ordered_json list = ordered_json::array();
    const auto own = codes.items.find(item.id.text());
    const auto group = codes.groups.find(item.group.text());
    if (own != codes.items.end())
        list.push_back(coding(loinc, own->second.code, own->second.display));
    else if (group != codes.groups.end())
        list.push_back(coding(loinc, group->second.code, group->second.display));
    list.push_back(coding(findingSystem, item.id.text(), item.label));
    return {{"coding", list}, {"text", item.label}};
}

void putNumber(ordered_json& out, const Item& item, double number, const FhirCodes& codes) {
    const auto unit = codes.ucum.find(item.scale.unit);
    const bool score = unit != codes.ucum.end() && unit->second == "{score}";
    if (score && number == std::floor(number) && std::abs(number) < kWholeLimit) {
        out["valueInteger"] = static_cast<int>(number);
        return;
    }
    ordered_json quantity{{"value", number}, {"unit", item.scale.unit}};
    if (unit != codes.ucum.end()) {
        quantity["system"] = ucum;
        quantity["code"] = unit->second;
    }
    out["valueQuantity"] = std::move(quantity);
}

void putValue(ordered_json& out, const Item& item, const Value& value, const FhirCodes& codes) {
    if (!value.testable()) {
        out["dataAbsentReason"] = {
            {"coding", ordered_json::array({coding(absentSystem, codes.absentReasons.at(value.word())),
                                            coding(reasonSystem, value.word())})}};
    } else if (value.isNumber())
        putNumber(out, item, value.number(), codes);
    else if (item.scale.listed())
        out["valueCodeableConcept"] =
            oneCoding(valueSystem, valueCode(item, value.word()), display(item.scale, value));
    else if (value.word().empty())
        out["valueCodeableConcept"] = oneCoding(valueSystem, emptyText);
    else
        out["valueString"] = value.word();
    const Look look = lookOf(item.scale, value);
    if (value.testable() && look != Look::plain)
        out["interpretation"] = ordered_json::array(
            {oneCoding("http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation",
                       look == Look::normal ? "N" : "A")});
}

} // namespace

ordered_json coding(const std::string& system, const std::string& code, const std::string& display) {
    ordered_json out{{"system", system}, {"code", code}};
    if (!display.empty()) out["display"] = display;
    return out;
}

ordered_json oneCoding(const std::string& system, const std::string& code, const std::string& display) {
    return {{"coding", ordered_json::array({coding(system, code, display)})}};
}

ordered_json reference(const std::string& url) {
    return {{"reference", url}};
}

std::string valueCode(const Item& item, const std::string& token) {
    return (item.scale.name.empty() ? item.id.text() : item.scale.name) + "." + token;
}

std::string siteCode(const Item& item, Side side) {
    return (item.region.empty() ? item.id.text() : item.region) + "." + std::string{name(side)};
}

ordered_json observation(const Item& item, Side side, const Finding& finding, const std::string& date,
                         const ordered_json& about, const FhirCodes& codes) {
    ordered_json out{{"resourceType", "Observation"}, {"status", "final"}};
    out["category"] = ordered_json::array({category(item, codes)});
    out["code"] = codeOf(item, codes);
    out.update(about);
    if (!date.empty()) out["effectiveDateTime"] = date;
    putValue(out, item, finding.value, codes);
    if (!finding.note.empty()) out["note"] = ordered_json::array({ordered_json{{"text", finding.note}}});
    if (side != Side::none) {
        out["bodySite"] = oneCoding(siteSystem, siteCode(item, side));
        out["bodySite"]["text"] = upperFirst(std::string{name(side)});
    }
    if (finding.bulk) out["method"] = {{"text", bulkMethod}};
    return out;
}

} // namespace rhizograph::fhir
