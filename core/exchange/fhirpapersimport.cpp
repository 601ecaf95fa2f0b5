#include "base/date.h"
#include "exchange/fhirnames.h"
#include "exchange/fhirreading.h"

#include <map>

namespace rhizograph::fhir {
namespace {

std::string textAt(const JsonNode& node, const std::string& key) {
    const auto found = node.find(key);
    return found ? found->string() : std::string{};
}

/// The name of a person or patient as written: one, as text.
std::string nameOf(const JsonNode& node) {
    const auto names = node.find("name");
    if (!names) return {};
    const auto list = names->items();
    if (list.size() == 1) return list.front().at("text").string();
    names->fail("should hold one name");
    return {};
}

class PapersReader {
public:
    explicit PapersReader(const JsonNode& root) : root_(root), entries_(root.at("entry").items()) {}

    VisitRecord read() {
        for (const JsonNode& entry : entries_) {
            const std::string type = resourceType(entry);
            if (type == "Practitioner")
                people_[entry.at("fullUrl").string()] = nameOf(entry.at("resource"));
            else if (type == "Flag")
                flags_.emplace(entry.at("fullUrl").string(), entry.at("resource"));
        }
        readSecurity();
        for (const JsonNode& entry : entries_) {
            const std::string type = resourceType(entry);
            const JsonNode resource = entry.at("resource");
            if (type == "Composition")
                readSignature(resource);
            else if (type == "Encounter")
                readAuthor(resource);
            else if (type == "CarePlan")
                readPlan(resource);
            else if (type == "ClinicalImpression")
                readTexts(resource);
            else if (type == "Provenance")
                readAnswer(resource);
            else if (type == "Device")
                readDevice(resource);
        }
        if (record_.papers.signature) record_.papers.signature->knowledgeVersion = signedWith_;
        return std::move(record_);
    }

private:
    void readSecurity() {
        const auto meta = root_.find("meta");
        if (!meta) return;
        for (const JsonNode& each : meta->at("security").items())
            if (each.at("code").string() == textsLeftOut) record_.textsLeftOut = true;
    }

    std::string person(const JsonNode& reference) {
        const auto found = people_.find(reference.at("reference").string());
        if (found != people_.end()) return found->second;
        reference.fail("names nobody in the document");
        return {};
    }

    void readSignature(const JsonNode& node) {
        const auto attesters = node.find("attester");
        if (!attesters) return;
        for (const JsonNode& each : attesters->items()) {
            if (record_.papers.signature) each.fail("a visit is signed once");
            record_.papers.signature = Signature{person(each.at("party")), each.at("time").string(), {}};
        }
    }

    void readAuthor(const JsonNode& node) {
        const auto participants = node.find("participant");
        if (!participants) return;
        for (const JsonNode& each : participants->items())
            record_.author = person(each.at("individual"));
    }

    void readPlan(const JsonNode& node) {
        if (!record_.papers.plan.empty()) return node.fail("a visit has one plan");
        record_.papers.plan = node.at("description").string();
    }

    void readTexts(const JsonNode& node) {
        const auto code = ownCode(node.at("code"), findingSystem);
        std::vector<AuthoredText>* into = code == noteCode       ? &record_.papers.notes
                                          : code == addendumCode ? &record_.papers.addenda
                                                                 : nullptr;
        if (into == nullptr) return node.at("code").fail("is neither a note nor an addendum");
        for (const JsonNode& each : node.at("note").items())
            into->push_back({each.at("text").string(), textAt(each, "authorString"), textAt(each, "time")});
    }

    void readAnswer(const JsonNode& node) {
        for (const JsonNode& agent : node.at("agent").items()) {
            if (ownCode(agent.at("type"), participantSystem) != std::string{answeredFor}) continue;
            for (const JsonNode& target : node.at("target").items()) {
                const auto flag = flags_.find(target.at("reference").string());
                if (flag == flags_.end()) {
                    target.fail("is no red sign of the document");
                    continue;
                }
                const std::string code = ownCode(flag->second.at("code"), findingSystem).value_or("");
                const std::size_t begin = std::string_view{redSignPrefix}.size();
                const std::size_t dot = code.rfind('.');
                if (!code.starts_with(redSignPrefix) || dot <= begin) {
                    flag->second.fail("\"" + code + "\" names no red sign");
                    continue;
                }
                record_.papers.acknowledgements.push_back({code.substr(begin, dot - begin),
                                                           code.substr(dot + 1), person(agent.at("who")),
                                                           node.at("recorded").string()});
            }
        }
    }

    void readDevice(const JsonNode& node) {
        const auto properties = node.find("property");
        if (!properties) return;
        for (const JsonNode& each : properties->items())
            if (textAt(each.at("type"), "text") == knowledgeAtSigning)
                for (const JsonNode& value : each.at("valueCode").items())
                    signedWith_ = value.at("text").string();
    }

    const JsonNode& root_;
    std::vector<JsonNode> entries_;
    std::map<std::string, std::string> people_;
    std::map<std::string, JsonNode> flags_;
    std::string signedWith_;
    VisitRecord record_;
};

} // namespace

VisitRecord readPapers(const JsonNode& root) {
    return PapersReader{root}.read();
}

Identity readIdentity(const JsonNode& patient) {
    Identity out;
    out.name = nameOf(patient);
    out.sex = textAt(patient, "gender");
    out.birthDate = textAt(patient, "birthDate");
    if (!out.birthDate.empty() && !dateFrom(out.birthDate))
        patient.at("birthDate").fail("\"" + out.birthDate + "\" is no calendar date (YYYY-MM-DD)");
    for (const JsonNode& each : patient.at("identifier").items())
        if (each.at("system").string() == numberSystem) out.recordNumber = each.at("value").string();
    if (const auto contacts = patient.find("telecom"))
        for (const JsonNode& each : contacts->items())
            out.contact = each.at("value").string();
    if (const auto extensions = patient.find("extension"))
        for (const JsonNode& each : extensions->items())
            if (each.at("url").string() == notesUrl) out.notes = each.at("valueString").string();
    return out;
}

} // namespace rhizograph::fhir
