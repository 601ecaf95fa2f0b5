#include "exchange/fhirnames.h"
#include "exchange/fhirobservation.h"
#include "exchange/fhirpapers.h"
#include "exchange/fhirreading.h"

#include "base/date.h"

#include <fmt/format.h>

namespace rhizograph {
namespace {

using namespace fhir;
using nlohmann::ordered_json;

/// Something that happened, or is awaited, as a Procedure of the patient.
ordered_json procedure(const PatientEvent& event, const std::string& patient) {
    ordered_json out{{"resourceType", "Procedure"}};
    out["status"] = event.awaited ? "preparation" : "completed";
    out["code"] = oneCoding(eventSystem, event.kind);
    out["subject"] = reference(patient);
    out["performedDateTime"] = event.date;
    // Who wrote it and when stand with its words; without words they are all that stands there.
    ordered_json note = ordered_json::object();
    if (!event.by.empty()) note["authorString"] = event.by;
    note["time"] = event.at;
    note["text"] = event.text.empty() ? emptyText : event.text;
    out["note"] = ordered_json::array({note});
    return out;
}

std::string urlOf(const std::string& uuid) {
    return "urn:uuid:" + uuid;
}

class CollectionReader {
public:
    CollectionReader(const JsonNode& root, const Catalogue& catalogue) : root_(root), catalogue_(catalogue) {}

    PatientRecord read() {
        int patients = 0;
        bool ours = false;
        std::string last;
        for (const JsonNode& entry : root_.at("entry").items()) {
            const std::string type = resourceType(entry);
            const JsonNode resource = entry.at("resource");
            if (type == "Patient") {
                ++patients;
                record_.identity = readIdentity(resource);
            } else if (type == "Device") {
                ours = ours || isThisProgram(resource);
            } else if (type == "Procedure") {
                readEvent(resource);
            } else if (isBundle(resource, "document")) {
                readVisit(resource, last);
            } else {
                resource.fail("\"" + type + "\" is none of the resources that this program writes");
            }
        }
        if (patients != 1) root_.fail(fmt::format("holds {} patients, not one", patients));
        if (!ours) root_.fail("was not written by this program, so its codes are not known");
        return std::move(record_);
    }

private:
    void readVisit(const JsonNode& document, std::string& last) {
        record_.visits.push_back(readDocument(document, catalogue_));
        for (const JsonNode& entry : document.at("entry").items())
            if (resourceType(entry) == "Patient") checkPerson(entry.at("resource"));
        const std::string& date = record_.visits.back().exam.date;
        if (date < last) document.fail("the visit of " + date + " stands after the one of " + last);
        last = date;
    }

    /// A visit of somebody else must not slip in.
    void checkPerson(const JsonNode& patient) const {
        if (readIdentity(patient) != record_.identity)
            patient.fail("is another person than the patient of the collection");
    }

    void readEvent(const JsonNode& node) {
        PatientEvent event;
        event.awaited = node.at("status").string() == "preparation";
        event.kind = ownCode(node.at("code"), eventSystem).value_or("");
        event.date = node.at("performedDateTime").string();
        if (!dateFrom(event.date)) node.at("performedDateTime").fail("is no calendar date (YYYY-MM-DD)");
        for (const JsonNode& note : node.at("note").items()) {
            if (const auto by = note.find("authorString")) event.by = by->string();
            event.at = note.at("time").string();
            const std::string text = note.at("text").string();
            event.text = text == emptyText ? std::string{} : text;
        }
        record_.events.push_back(std::move(event));
    }

    const JsonNode& root_;
    const Catalogue& catalogue_;
    PatientRecord record_;
};

} // namespace

ordered_json fhirCollection(const PatientRecord& patient, const std::string& writtenAt,
                            const std::string& programVersion, const Knowledge& knowledge,
                            const FhirCodes& codes) {
    ordered_json out{{"resourceType", "Bundle"}};
    out["identifier"] = {{"system", "urn:ietf:rfc:3986"}, {"value", urlOf(randomUuid())}};
    out["type"] = "collection";
    out["timestamp"] = writtenAt;
    out["entry"] = ordered_json::array();
    const auto add = [&](ordered_json resource, const std::string& uuid) {
        out["entry"].push_back({{"fullUrl", urlOf(uuid)}, {"resource", std::move(resource)}});
        return urlOf(uuid);
    };
    const std::string subject = add(patientResource(patient.identity, patient.identity.sex), randomUuid());
    add(deviceResource(programVersion, knowledge.version()), randomUuid());
    for (const PatientEvent& event : patient.events)
        add(procedure(event, subject), randomUuid());
    const Exam* previous = nullptr;
    for (const VisitRecord& visit : patient.visits) {
        const Assessment assessment = assess(visit.exam, knowledge, previous);
        const std::string id = randomUuid();
        add(fhirDocument(
                {visit.exam, assessment, id, writtenAt, programVersion, &visit, &patient.identity, previous},
                knowledge, codes),
            id);
        previous = &visit.exam;
    }
    return out;
}

Result<PatientRecord> patientFromFhir(std::string_view text, const std::string& name,
                                      const Catalogue& catalogue) {
    const auto json = parseJson(text, name);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, name, problems};
    PatientRecord out;
    if (isBundle(root, "collection")) {
        out = CollectionReader{root, catalogue}.read();
    } else {
        out.visits.push_back(readDocument(root, catalogue));
        for (const JsonNode& entry : root.at("entry").items())
            if (resourceType(entry) == "Patient") out.identity = readIdentity(entry.at("resource"));
    }
    if (!problems.empty()) return problems;
    return out;
}

} // namespace rhizograph
