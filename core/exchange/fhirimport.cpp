#include "base/date.h"
#include "base/json.h"
#include "exchange/fhir.h"
#include "exchange/fhirnames.h"
#include "exchange/fhirobservation.h"
#include "exchange/fhirreading.h"

#include <cmath>
#include <fmt/format.h>
#include <set>

namespace rhizograph {
namespace {

using namespace fhir;

constexpr int kOldest = 130;
/// Computed anew, or read with the papers.
const std::set<std::string> kElsewhere{
    "Composition", "RiskAssessment", "Flag", "Provenance", "Practitioner", "CarePlan", "ClinicalImpression"};

/// Reads a document back; every problem at once.
class DocumentReader {
public:
    DocumentReader(const JsonNode& root, const Catalogue& catalogue) : root_(root), catalogue_(catalogue) {}

    VisitRecord read() {
        if (!isBundle(root_, "document")) {
            root_.fail("is no FHIR document");
            return {};
        }
        const auto entries = root_.at("entry").items();
        if (entries.empty() || typeOf(entries.front()) != "Composition")
            root_.at("entry").fail("a document begins with its Composition");
        for (const JsonNode& entry : entries)
            readEntry(entry.at("resource"), typeOf(entry));
        checkComplete(entries);
        if (patients_ != 1) root_.fail(fmt::format("holds {} patients, not one", patients_));
        if (!ours_) root_.fail("was not written by this program, so its codes are not known");
        VisitRecord out = readPapers(root_);
        out.exam = std::move(exam_);
        return out;
    }

private:
    static std::string typeOf(const JsonNode& entry) { return resourceType(entry); }

    /// What a section lists must be there: a finding that was cut out would else be lost without a word.
    void checkComplete(const std::vector<JsonNode>& entries) const {
        std::set<std::string> present;
        for (const JsonNode& entry : entries)
            if (!present.insert(entry.at("fullUrl").string()).second)
                entry.at("fullUrl").fail("stands there twice");
        for (const JsonNode& entry : entries) {
            if (typeOf(entry) != "Composition") continue;
            for (const JsonNode& section : entry.at("resource").at("section").items())
                if (const auto listed = section.find("entry"))
                    for (const JsonNode& each : listed->items())
                        if (!present.contains(each.at("reference").string()))
                            each.fail("lists a resource that is missing from the document");
        }
    }

    void readEntry(const JsonNode& resource, const std::string& type) {
        if (type == "Patient")
            readPatient(resource);
        else if (type == "Device")
            readDevice(resource);
        else if (type == "Encounter")
            readEncounter(resource);
        else if (type == "Observation")
            readObservation(resource);
        else if (!kElsewhere.contains(type))
            resource.fail("\"" + type + "\" is none of the resources that this program writes");
    }

    void readPatient(const JsonNode& node) {
        ++patients_;
        const auto gender = node.find("gender");
        if (!gender) return;
        const std::string word = gender->string();
        if (word == "female" || word == "male" || word == "other")
            exam_.subject.sex = word;
        else
            gender->fail("\"" + word + "\" is none of female, male, other");
    }

    void readDevice(const JsonNode& node) { ours_ = ours_ || isThisProgram(node); }

    void readEncounter(const JsonNode& node) {
        const auto period = node.find("period");
        if (!period) return;
        const JsonNode start = period->at("start");
        if (dateFrom(start.string()))
            exam_.date = start.string();
        else
            start.fail("\"" + start.string() + "\" is no calendar date (YYYY-MM-DD)");
    }

    void readObservation(const JsonNode& node) {
        node.onlyKeys({"resourceType", "status", "category", "code", "subject", "encounter",
                       "effectiveDateTime", "valueInteger", "valueQuantity", "valueCodeableConcept",
                       "valueString", "dataAbsentReason", "interpretation", "note", "bodySite", "method"});
        if (node.at("status").string() != "final")
            node.at("status").fail("only final observations can be read");
        const auto code = ownCode(node.at("code"), findingSystem);
        if (!code) return node.at("code").fail("has no code of this program");
        if (*code == ageCode) return readAge(node);
        const Item* item = catalogue_.find(*code);
        if (item == nullptr) return node.at("code").fail("the catalogue has no item \"" + *code + "\"");
        const auto side = sideOf(node, *item);
        const auto value = valueOf(node, *item);
        if (!side || !value) return;
        const FindingKey key{item->id, *side};
        if (const auto wrong = check(catalogue_, key, *value)) return node.fail(*wrong);
        if (exam_.find(key) != nullptr) return node.fail("the same item and side stands there twice");
        checkInterpretation(node, *item, *value);
        exam_.set(key, {*value, bulkOf(node), noteOf(node)});
    }

    void readAge(const JsonNode& node) {
        const JsonNode value = node.at("valueQuantity").at("value");
        const double years = value.number();
        if (years < 0 || years > kOldest || years != std::floor(years))
            return value.fail("should be whole years, 0 to 130");
        if (exam_.subject.age) return node.fail("the age stands there twice");
        exam_.subject.age = static_cast<int>(years);
    }

    static std::optional<Side> sideOf(const JsonNode& node, const Item& item) {
        const auto site = node.find("bodySite");
        if (!site) return Side::none;
        const auto code = ownCode(*site, siteSystem);
        for (const Side side : {Side::left, Side::right})
            if (code && *code == siteCode(item, side)) return side;
        site->fail("is no site of \"" + item.id.text() + "\"");
        return std::nullopt;
    }

    std::optional<Value> valueOf(const JsonNode& node, const Item& item) const {
        std::vector<std::string> present;
        for (const char* key :
             {"valueInteger", "valueQuantity", "valueCodeableConcept", "valueString", "dataAbsentReason"})
            if (node.has(key)) present.emplace_back(key);
        if (present.size() != 1) {
            node.fail("needs one value or one reason why there is none, has " +
                      std::to_string(present.size()));
            return std::nullopt;
        }
        const JsonNode value = node.at(present.front());
        if (present.front() == "valueInteger") return Value::number(value.number());
        if (present.front() == "valueQuantity") return quantity(value, item);
        if (present.front() == "valueString") return Value::text(value.string());
        if (present.front() == "dataAbsentReason") return absent(value);
        return token(value, item);
    }

    static std::optional<Value> quantity(const JsonNode& value, const Item& item) {
        const std::string unit = value.at("unit").string();
        if (unit == item.scale.unit) return Value::number(value.at("value").number());
        value.at("unit").fail("\"" + unit + "\" is not the unit of \"" + item.id.text() + "\", which is \"" +
                              item.scale.unit + "\"");
        return std::nullopt;
    }

    static std::optional<Value> absent(const JsonNode& value) {
        if (auto reason = ownCode(value, reasonSystem)) return Value::notTestable(*reason);
        value.fail("has no reason of this program");
        return std::nullopt;
    }

    static std::optional<Value> token(const JsonNode& value, const Item& item) {
        const auto code = ownCode(value, valueSystem);
        if (code == std::string{emptyText}) return Value::text("");
        for (const ScaleValue& each : item.scale.values)
            if (code == valueCode(item, each.token)) return Value::token(each.token);
        value.fail(fmt::format("\"{}\" is no value of \"{}\"", code.value_or(""), item.id.text()));
        return std::nullopt;
    }

    /// A document whose reading of a value differs from the catalogue's was changed on its way, or means
    /// another scale.
    static void checkInterpretation(const JsonNode& node, const Item& item, const Value& value) {
        const auto interpretation = node.find("interpretation");
        const Look look = value.testable() ? lookOf(item.scale, value) : Look::plain;
        std::string read;
        if (interpretation)
            for (const JsonNode& each : interpretation->items())
                for (const JsonNode& code : each.at("coding").items())
                    read += code.at("code").string();
        const std::string expected = look == Look::plain ? "" : look == Look::normal ? "N" : "A";
        if (read != expected) node.fail("its interpretation \"" + read + "\" does not go with its value");
    }

    static bool bulkOf(const JsonNode& node) {
        const auto method = node.find("method");
        if (!method) return false;
        if (method->at("text").string() != bulkMethod) method->fail("is no method of this program");
        return true;
    }

    static std::string noteOf(const JsonNode& node) {
        const auto notes = node.find("note");
        if (!notes) return {};
        const auto list = notes->items();
        if (list.size() == 1) return list.front().at("text").string();
        notes->fail(fmt::format("holds {} notes, not one", list.size()));
        return {};
    }

    const JsonNode& root_;
    const Catalogue& catalogue_;
    Exam exam_;
    int patients_ = 0;
    bool ours_ = false;
};

} // namespace

namespace fhir {

bool isBundle(const JsonNode& node, const std::string& type) {
    if (!node.isObject()) return false;
    const auto resource = node.find("resourceType");
    const auto kind = node.find("type");
    return resource && resource->isString() && resource->string() == "Bundle" && kind && kind->isString() &&
           kind->string() == type;
}

std::string resourceType(const JsonNode& entry) {
    const auto resource = entry.find("resource");
    if (!resource || !resource->isObject()) return {};
    const auto type = resource->find("resourceType");
    return type && type->isString() ? type->string() : std::string{};
}

std::optional<std::string> ownCode(const JsonNode& concepts, const std::string& system) {
    std::optional<std::string> out;
    for (const JsonNode& each : concepts.at("coding").items()) {
        if (each.at("system").string() != system) continue;
        if (out) each.fail("two codes of " + system);
        out = each.at("code").string();
    }
    return out;
}

bool isThisProgram(const JsonNode& device) {
    for (const JsonNode& identifier : device.at("identifier").items())
        if (identifier.at("system").string() == deviceSystem) return true;
    return false;
}

VisitRecord readDocument(const JsonNode& root, const Catalogue& catalogue) {
    return DocumentReader{root, catalogue}.read();
}

} // namespace fhir

Result<Exam> examFromFhir(std::string_view text, const std::string& name, const Catalogue& catalogue) {
    const auto json = parseJson(text, name);
    if (!json) return json.problems();
    Problems problems;
    VisitRecord visit = readDocument(JsonNode{*json, name, problems}, catalogue);
    if (!problems.empty()) return problems;
    return std::move(visit.exam);
}

} // namespace rhizograph
