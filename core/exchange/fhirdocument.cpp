#include "exchange/fhir.h"
#include "exchange/fhirnames.h"
#include "exchange/fhirobservation.h"
#include "exchange/narrative.h"
#include "reasoning/names.h"
#include "reasoning/phrases.h"

#include <cmath>
#include <fmt/format.h>

namespace rhizograph {
namespace {

using nlohmann::ordered_json;
using namespace fhir;

/// Text as XHTML content; characters that XML forbids are dropped, for the coded value keeps them.
std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '&')
            out += "&amp;";
        else if (c == '<')
            out += "&lt;";
        else if (c == '>')
            out += "&gt;";
        else if (static_cast<unsigned char>(c) >= 0x20 || c == '\n' || c == '\t')
            out += c;
    }
    return out;
}

class DocumentWriter {
public:
    DocumentWriter(const FhirVisit& visit, const Knowledge& knowledge, const FhirCodes& codes)
        : visit_(visit), knowledge_(knowledge), codes_(codes) {}

    ordered_json write() {
        const std::string composition = newUrl();
        subject_ = add(patient());
        device_ = add(device());
        encounter_ = add(encounter());
        if (visit_.exam.subject.age) add(age());
        addObservations();
        addComputed();
        add(provenance(composition));
        ordered_json out{{"resourceType", "Bundle"}};
        out["identifier"] = {{"system", "urn:ietf:rfc:3986"}, {"value", "urn:uuid:" + visit_.documentId}};
        out["type"] = "document";
        out["timestamp"] = visit_.writtenAt;
        out["entry"] =
            ordered_json::array({ordered_json{{"fullUrl", composition}, {"resource", this->composition()}}});
        for (ordered_json& entry : entries_)
            out["entry"].push_back(std::move(entry));
        return out;
    }

private:
    /// The document's own UUID with its last digits counted on: unique in the document and new with it.
    std::string newUrl() {
        return fmt::format("urn:uuid:{}{:012x}", visit_.documentId.substr(0, 24), ++count_);
    }

    std::string add(ordered_json resource) {
        std::string url = newUrl();
        entries_.push_back({{"fullUrl", url}, {"resource", std::move(resource)}});
        return url;
    }

    [[nodiscard]] ordered_json about() const {
        return {{"subject", reference(subject_)}, {"encounter", reference(encounter_)}};
    }

    [[nodiscard]] ordered_json patient() const {
        ordered_json out{{"resourceType", "Patient"}};
        out["identifier"] = ordered_json::array({ordered_json{
            {"system", "urn:ietf:rfc:3986"}, {"value", fmt::format("urn:uuid:{}", randomUuid())}}});
        if (!visit_.exam.subject.sex.empty()) out["gender"] = visit_.exam.subject.sex;
        return out;
    }

    [[nodiscard]] ordered_json device() const {
        ordered_json property{{"type", ordered_json{{"text", "Knowledge version"}}}};
        property["valueCode"] =
            ordered_json::array({ordered_json{{"text", visit_.assessment.knowledgeVersion}}});
        ordered_json out{{"resourceType", "Device"}};
        out["identifier"] =
            ordered_json::array({ordered_json{{"system", deviceSystem}, {"value", programName}}});
        out["status"] = "active";
        out["deviceName"] =
            ordered_json::array({ordered_json{{"name", programName}, {"type", "model-name"}}});
        out["version"] = ordered_json::array({ordered_json{{"value", visit_.programVersion}}});
        out["property"] = ordered_json::array({property});
        return out;
    }

    [[nodiscard]] ordered_json encounter() const {
        ordered_json out{{"resourceType", "Encounter"},
                         {"status", visit_.signedOff ? "finished" : "in-progress"}};
        out["class"] = coding("http://terminology.hl7.org/CodeSystem/v3-ActCode", "AMB");
        out["subject"] = reference(subject_);
        if (!visit_.exam.date.empty()) out["period"] = {{"start", visit_.exam.date}};
        return out;
    }

    [[nodiscard]] ordered_json age() const {
        ordered_json out{{"resourceType", "Observation"}, {"status", "final"}};
        out["code"]["coding"] = ordered_json::array({coding(loinc, codes_.age.code, codes_.age.display),
                                                     coding(findingSystem, ageCode, "Age at the visit")});
        out.update(about());
        out["valueQuantity"] = {
            {"value", *visit_.exam.subject.age}, {"unit", "years"}, {"system", ucum}, {"code", "a"}};
        return out;
    }

    void addObservations() {
        const auto& phrases = knowledge_.phrases();
        for (const Item& item : knowledge_.catalogue().items())
            for (const Side side : {Side::none, Side::right, Side::left}) {
                const Finding* finding = visit_.exam.find({item.id, side});
                if (finding == nullptr) continue;
                const std::string url =
                    add(observation(item, side, *finding, visit_.exam.date, about(), codes_));
                const PhraseFamily& family = phrases.families()[phrases.item(item.id).family];
                bySection_[phrases.sections()[family.section].id].push_back(reference(url));
                byKey_.emplace(FindingKey{item.id, side}, url);
            }
    }

    void addComputed() {
        if (!visit_.assessment.nothingKnown && !visit_.assessment.localization.empty())
            bySection_["impression"].push_back(reference(add(riskAssessment())));
        for (const RedSign& sign : visit_.assessment.redSigns)
            bySection_["red_signs"].push_back(reference(add(flag(sign))));
    }

    [[nodiscard]] ordered_json riskAssessment() const {
        ordered_json out{{"resourceType", "RiskAssessment"}, {"status", "final"}};
        out["code"] = oneCoding(findingSystem, "model.posterior", "Probability of each site");
        out.update(about());
        out["occurrenceDateTime"] = visit_.writtenAt;
        out["performer"] = reference(device_);
        std::set<std::string> basis;
        for (const SiteResult& site : visit_.assessment.localization)
            for (const auto* reasons : {&site.speaksFor, &site.speaksAgainst})
                for (const Reason& reason : *reasons)
                    if (const auto url = byKey_.find(reason.finding); url != byKey_.end())
                        basis.insert(url->second);
        for (const std::string& url : basis)
            out["basis"].push_back(reference(url));
        out["prediction"] = predictions();
        out["note"] = ordered_json::array(
            {ordered_json{{"text", "Percent, 0 to 100. Computed decision support, not a diagnosis."}}});
        return out;
    }

    /// Every site of 1 % or more in tenths of a percent, and the rest, so that the sum is 100.
    [[nodiscard]] ordered_json predictions() const {
        const Wording words{knowledge_, Units::metric};
        ordered_json out = ordered_json::array();
        int rest = 1000;
        for (const SiteResult& site : visit_.assessment.localization) {
            const int tenths = static_cast<int>(std::lround(1000 * site.probability));
            if (tenths < 10) continue;
            rest -= tenths;
            const std::string side = site.side == Side::none ? "" : fmt::format(".{}", name(site.side));
            ordered_json outcome = oneCoding(siteSystem, "site." + site.site.text() + side);
            outcome["text"] = upperFirst(words.site(site.site, site.side));
            out.push_back({{"outcome", outcome}, {"probabilityDecimal", tenths / 10.0}});
        }
        if (rest > 0)
            out.push_back(
                {{"outcome", ordered_json{{"text", "Other"}}}, {"probabilityDecimal", rest / 10.0}});
        return out;
    }

    [[nodiscard]] ordered_json flag(const RedSign& sign) const {
        ordered_json out{{"resourceType", "Flag"}, {"status", "active"}};
        out["category"] = ordered_json::array(
            {oneCoding("http://terminology.hl7.org/CodeSystem/flag-category", "clinical", "Clinical")});
        out["code"] = oneCoding(findingSystem, fmt::format("red.{}.{}", sign.id, name(sign.urgency)));
        out["code"]["text"] = sign.sentence + " " + sign.action;
        out.update(about());
        out["period"] = {{"start", visit_.exam.date.empty() ? visit_.writtenAt : visit_.exam.date}};
        out["author"] = reference(device_);
        return out;
    }

    [[nodiscard]] ordered_json provenance(const std::string& composition) const {
        ordered_json agent{
            {"type",
             oneCoding("http://terminology.hl7.org/CodeSystem/provenance-participant-type", "assembler")},
            {"who", reference(device_)}};
        ordered_json out{{"resourceType", "Provenance"}};
        out["target"] = ordered_json::array({reference(composition)});
        out["recorded"] = visit_.writtenAt;
        out["agent"] = ordered_json::array({agent});
        return out;
    }

    [[nodiscard]] ordered_json composition() {
        ordered_json out{{"resourceType", "Composition"},
                         {"status", visit_.signedOff ? "final" : "preliminary"}};
        out["type"]["coding"] =
            ordered_json::array({coding(loinc, codes_.document.code, codes_.document.display)});
        out.update(about());
        out["date"] = visit_.writtenAt;
        out["author"] =
            ordered_json::array({ordered_json{{"display", "Examiner, not named in this export"}}});
        out["title"] = "Examination of back and leg";
        out["section"] = ordered_json::array();
        const Narrative narrative = narrate(visit_.exam, visit_.assessment, knowledge_);
        for (const NarrativeSection& section : narrative.sections)
            out["section"].push_back(
                this->section(section, section.id == "impression" ? narrative.cautions : ""));
        return out;
    }

    [[nodiscard]] ordered_json section(const NarrativeSection& section, const std::string& cautions) {
        ordered_json codes = ordered_json::array();
        if (const auto foreign = codes_.sections.find(section.id); foreign != codes_.sections.end())
            codes.push_back(coding(loinc, foreign->second.code, foreign->second.display));
        codes.push_back(coding(sectionSystem, section.id, section.title));
        std::string div = "<div xmlns=\"http://www.w3.org/1999/xhtml\">";
        if (!section.positives.empty()) div += "<p><b>" + escaped(section.positives) + "</b></p>";
        for (const std::string* part : {&section.rest, &section.notExamined, &cautions})
            if (!part->empty()) div += "<p>" + escaped(*part) + "</p>";
        ordered_json out{{"title", section.title}, {"code", ordered_json{{"coding", codes}}}};
        out["text"] = {{"status", "generated"}, {"div", div + "</div>"}};
        if (const auto entries = bySection_.find(section.id); entries != bySection_.end())
            out["entry"] = entries->second;
        return out;
    }

    const FhirVisit& visit_;
    const Knowledge& knowledge_;
    const FhirCodes& codes_;
    std::vector<ordered_json> entries_;
    std::map<std::string, ordered_json> bySection_;
    std::map<FindingKey, std::string> byKey_;
    std::string subject_;
    std::string device_;
    std::string encounter_;
    unsigned count_ = 0;
};

} // namespace

ordered_json fhirDocument(const FhirVisit& visit, const Knowledge& knowledge, const FhirCodes& codes) {
    return DocumentWriter{visit, knowledge, codes}.write();
}

} // namespace rhizograph
