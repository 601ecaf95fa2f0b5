#include "exchange/fhirpapers.h"

#include "exchange/fhirnames.h"
#include "exchange/fhirobservation.h"

#include <fmt/format.h>

namespace rhizograph::fhir {
namespace {

using nlohmann::ordered_json;

/// Text as an Annotation with its author, if named, and time.
ordered_json annotation(const AuthoredText& text) {
    ordered_json out = ordered_json::object();
    if (!text.by.empty()) out["authorString"] = text.by;
    if (!text.at.empty()) out["time"] = text.at;
    out["text"] = text.text;
    return out;
}

ordered_json property(const char* what, const std::string& value) {
    return {{"type", ordered_json{{"text", what}}},
            {"valueCode", ordered_json::array({ordered_json{{"text", value}}})}};
}

} // namespace

ordered_json patientResource(const Identity& identity, const std::string& sex) {
    ordered_json out{{"resourceType", "Patient"}};
    if (!identity.notes.empty())
        out["extension"] =
            ordered_json::array({ordered_json{{"url", notesUrl}, {"valueString", identity.notes}}});
    ordered_json number{{"system", "urn:ietf:rfc:3986"}, {"value", "urn:uuid:" + randomUuid()}};
    if (!identity.recordNumber.empty()) number = {{"system", numberSystem}, {"value", identity.recordNumber}};
    out["identifier"] = ordered_json::array({number});
    if (!identity.name.empty()) out["name"] = ordered_json::array({ordered_json{{"text", identity.name}}});
    if (!identity.contact.empty())
        out["telecom"] =
            ordered_json::array({ordered_json{{"system", "other"}, {"value", identity.contact}}});
    if (!sex.empty()) out["gender"] = sex;
    if (!identity.birthDate.empty()) out["birthDate"] = identity.birthDate;
    return out;
}

ordered_json deviceResource(const std::string& programVersion, const std::string& knowledgeVersion,
                            const std::string& signedWith) {
    ordered_json out{{"resourceType", "Device"}};
    out["identifier"] = ordered_json::array({ordered_json{{"system", deviceSystem}, {"value", programName}}});
    out["status"] = "active";
    out["deviceName"] = ordered_json::array({ordered_json{{"name", programName}, {"type", "model-name"}}});
    out["version"] = ordered_json::array({ordered_json{{"value", programVersion}}});
    out["property"] = ordered_json::array({property("Knowledge version", knowledgeVersion)});
    if (!signedWith.empty()) out["property"].push_back(property(knowledgeAtSigning, signedWith));
    return out;
}

std::string PapersResources::practitioner(const std::string& name) {
    auto& url = people_[name];
    if (!url.empty()) return url;
    ordered_json out{{"resourceType", "Practitioner"}};
    out["identifier"] = ordered_json::array(
        {ordered_json{{"system", "urn:ietf:rfc:3986"}, {"value", "urn:uuid:" + randomUuid()}}});
    if (!name.empty()) out["name"] = ordered_json::array({ordered_json{{"text", name}}});
    url = add_(std::move(out));
    return url;
}

ordered_json PapersResources::attester(const Signature& signature) {
    return {{"mode", "legal"}, {"time", signature.at}, {"party", reference(practitioner(signature.by))}};
}

void PapersResources::write(const VisitPapers& papers, const std::string& composition) {
    if (!papers.plan.empty()) {
        ordered_json out{{"resourceType", "CarePlan"}, {"status", "active"}, {"intent", "plan"}};
        out["description"] = papers.plan;
        out.update(about_());
        entries_.emplace_back("plan", add_(std::move(out)));
    }
    for (const RedSignAcknowledgement& given : papers.acknowledgements)
        writeAnswer(given);
    writeTexts(papers.notes, noteCode, "signature");
    writeTexts(papers.addenda, addendumCode, "addendum");
    if (papers.signature) {
        ordered_json agent{{"type", oneCoding(participantSystem, "legal")},
                           {"who", reference(practitioner(papers.signature->by))}};
        ordered_json out{{"resourceType", "Provenance"}};
        out["target"] = ordered_json::array({reference(composition)});
        out["recorded"] = papers.signature->at;
        out["agent"] = ordered_json::array({agent});
        add_(std::move(out));
    }
}

void PapersResources::writeTexts(const std::vector<AuthoredText>& texts, const char* code,
                                 const char* section) {
    if (texts.empty()) return;
    ordered_json out{{"resourceType", "ClinicalImpression"}, {"status", "completed"}};
    out["code"] = oneCoding(findingSystem, code);
    out.update(about_());
    out["note"] = ordered_json::array();
    for (const AuthoredText& text : texts)
        out["note"].push_back(annotation(text));
    entries_.emplace_back(section, add_(std::move(out)));
}

void PapersResources::writeAnswer(const RedSignAcknowledgement& given) {
    const std::string code = redSignPrefix + given.sign + "." + given.urgency;
    auto& flag = flags_[code];
    if (flag.empty()) {
        // It stood when it was answered for and does not stand any more.
        ordered_json out{{"resourceType", "Flag"}, {"status", "inactive"}};
        out["code"] = oneCoding(findingSystem, code);
        out.update(about_());
        flag = add_(std::move(out));
        entries_.emplace_back("red_signs", flag);
    }
    ordered_json agent{{"type", oneCoding(participantSystem, answeredFor)},
                       {"who", reference(practitioner(given.by))}};
    ordered_json out{{"resourceType", "Provenance"}};
    out["target"] = ordered_json::array({reference(flag)});
    out["recorded"] = given.at;
    out["agent"] = ordered_json::array({agent});
    add_(std::move(out));
}

} // namespace rhizograph::fhir
