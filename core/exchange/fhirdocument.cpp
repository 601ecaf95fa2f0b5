#include "exchange/fhir.h"
#include "exchange/fhirnames.h"
#include "exchange/fhirobservation.h"
#include "exchange/fhirpapers.h"
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
        subject_ = add(patientResource(visit_.identity != nullptr ? *visit_.identity : Identity{},
                                       visit_.exam.subject.sex));
        device_ = add(deviceResource());
        encounter_ = add(encounter());
        if (visit_.exam.subject.age) add(age());
        addObservations();
        addComputed();
        if (visit_.record != nullptr) {
            papers_.write(visit_.record->papers, composition);
            for (const auto& [section, url] : papers_.entries())
                bySection_[section].push_back(reference(url));
        }
        add(provenance(composition));
        ordered_json out{{"resourceType", "Bundle"}};
        if (visit_.record != nullptr && visit_.record->textsLeftOut)
            out["meta"]["security"] = ordered_json::array({coding(securitySystem, textsLeftOut)});
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

    [[nodiscard]] ordered_json deviceResource() const {
        const bool isSigned = visit_.record != nullptr && visit_.record->papers.signature;
        return fhir::deviceResource(visit_.programVersion, visit_.assessment.knowledgeVersion,
                                    isSigned ? visit_.record->papers.signature->knowledgeVersion : "");
    }

    [[nodiscard]] bool signedOff() const {
        return visit_.record != nullptr && visit_.record->papers.signature.has_value();
    }

    [[nodiscard]] ordered_json encounter() {
        ordered_json out{{"resourceType", "Encounter"}, {"status", signedOff() ? "finished" : "in-progress"}};
        out["class"] = coding("http://terminology.hl7.org/CodeSystem/v3-ActCode", "AMB");
        out["subject"] = reference(subject_);
        if (!visit_.exam.date.empty()) out["period"] = {{"start", visit_.exam.date}};
        if (visit_.record != nullptr && !visit_.record->author.empty())
            out["participant"] = ordered_json::array(
                {ordered_json{{"individual", reference(papers_.practitioner(visit_.record->author))}}});
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
        for (const RedSign& sign : visit_.assessment.redSigns) {
            const std::string code = redSignPrefix + sign.id + "." + std::string{name(sign.urgency)};
            const std::string url = add(flag(sign, code));
            bySection_["red_signs"].push_back(reference(url));
            papers_.flagged(code, url);
        }
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

    [[nodiscard]] ordered_json flag(const RedSign& sign, const std::string& code) const {
        ordered_json out{{"resourceType", "Flag"}, {"status", "active"}};
        out["category"] = ordered_json::array(
            {oneCoding("http://terminology.hl7.org/CodeSystem/flag-category", "clinical", "Clinical")});
        out["code"] = oneCoding(findingSystem, code);
        out["code"]["text"] = sign.sentence + " " + sign.action;
        out.update(about());
        out["period"] = {{"start", visit_.exam.date.empty() ? visit_.writtenAt : visit_.exam.date}};
        out["author"] = reference(device_);
        return out;
    }

    [[nodiscard]] ordered_json provenance(const std::string& composition) const {
        ordered_json agent{{"type", oneCoding(participantSystem, "assembler")}, {"who", reference(device_)}};
        ordered_json out{{"resourceType", "Provenance"}};
        out["target"] = ordered_json::array({reference(composition)});
        out["recorded"] = visit_.writtenAt;
        out["agent"] = ordered_json::array({agent});
        return out;
    }

    [[nodiscard]] ordered_json composition() {
        const VisitPapers papers = visit_.record != nullptr ? visit_.record->papers : VisitPapers{};
        ordered_json out{{"resourceType", "Composition"},
                         {"status", !papers.addenda.empty() ? "amended"
                                    : papers.signature      ? "final"
                                                            : "preliminary"}};
        out["type"]["coding"] =
            ordered_json::array({coding(loinc, codes_.document.code, codes_.document.display)});
        out.update(about());
        out["date"] = visit_.writtenAt;
        const std::string author = visit_.record != nullptr ? visit_.record->author : "";
        out["author"] = ordered_json::array(
            {author.empty() ? ordered_json{{"display", "Examiner, not named in this export"}}
                            : reference(papers_.practitioner(author))});
        out["title"] = "Examination of back and leg";
        if (papers.signature) out["attester"] = ordered_json::array({papers_.attester(*papers.signature)});
        out["section"] = ordered_json::array();
        Narrative narrative = narrate(visit_.exam, visit_.assessment, knowledge_, visit_.previous);
        if (visit_.record != nullptr) {
            addPapers(narrative, papers, visit_.assessment, knowledge_, utcMoment);
            if (visit_.record->textsLeftOut)
                narrative.sections.back().notExamined =
                    "Words that people wrote were left out of this export.";
        }
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
        if (auto entries = bySection_.extract(section.id)) out["entry"] = std::move(entries.mapped());
        return out;
    }

    const FhirVisit& visit_;
    const Knowledge& knowledge_;
    const FhirCodes& codes_;
    PapersResources papers_{[this](ordered_json resource) { return add(std::move(resource)); },
                            [this] { return about(); }};
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
