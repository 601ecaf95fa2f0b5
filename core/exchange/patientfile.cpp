#include "exchange/patientfile.h"

#include <string_view>

namespace rhizograph {
namespace {

using Json = nlohmann::ordered_json;

std::string_view stateWord(VisitState state) {
    switch (state) {
    case VisitState::intake:
        return "intake";
    case VisitState::inRoom:
        return "in the room";
    case VisitState::toReview:
        return "to review";
    case VisitState::signedOff:
        break;
    }
    return "signed";
}

void putValue(Json& json, const Finding& finding) {
    const Value& value = finding.value;
    if (value.isNumber())
        json["value"] = value.number();
    else if (value.testable())
        json["value"] = value.word();
    else {
        json["value"] = "not_testable";
        json["because"] = value.word();
    }
    if (finding.bulk) json["bulk"] = true;
    if (!finding.note.empty()) json["note"] = finding.note;
}

Json eventJson(const FindingEvent& event) {
    Json json{{"number", event.number}, {"item", event.key.item.text()}};
    if (event.key.side != Side::none) json["side"] = name(event.key.side);
    if (event.finding)
        putValue(json, *event.finding);
    else
        json["cleared"] = true;
    json["by"] = event.by;
    json["at"] = event.at;
    return json;
}

Json textsJson(const std::vector<AuthoredText>& texts) {
    Json json = Json::array();
    for (const AuthoredText& text : texts)
        json.push_back({{"text", text.text}, {"by", text.by}, {"at", text.at}});
    return json;
}

Json happenedJson(const PatientEvent& event) {
    Json json{{"date", event.date}, {"kind", event.kind}, {"text", event.text}};
    if (event.awaited) json["awaited"] = true;
    json["by"] = event.by;
    json["at"] = event.at;
    return json;
}

/// Collects what a visit is made of; stops being filled at the first thing that cannot be read.
class VisitExport {
public:
    VisitExport(Store& store, const Visit& visit) : store_(store), visit_(visit) {}

    Result<Json> json() {
        json_ = {{"id", visit_.id.text()},
                 {"number", visit_.number},
                 {"date", visit_.date},
                 {"started_at", visit_.startedAt},
                 {"changed_at", visit_.changedAt},
                 {"state", stateWord(visit_.state)}};
        if (visit_.ageAtVisit) json_["age"] = *visit_.ageAtVisit;
        json_["author"] = visit_.author;
        put("events", store_.eventsAfter(visit_.id, 0), [](const auto& events) {
            Json all = Json::array();
            for (const FindingEvent& event : events)
                all.push_back(eventJson(event));
            return all;
        });
        put("plan", store_.plan(visit_.id), [](const std::string& plan) { return Json(plan); });
        put("notes", store_.notes(visit_.id), textsJson);
        put("acknowledgements", store_.acknowledgements(visit_.id), [](const auto& signs) {
            Json all = Json::array();
            for (const RedSignAcknowledgement& sign : signs)
                all.push_back(
                    {{"sign", sign.sign}, {"urgency", sign.urgency}, {"by", sign.by}, {"at", sign.at}});
            return all;
        });
        put("signature", store_.signature(visit_.id), [](const std::optional<Signature>& signature) {
            if (!signature) return Json(nullptr);
            return Json{{"by", signature->by},
                        {"at", signature->at},
                        {"knowledge_version", signature->knowledgeVersion}};
        });
        put("addenda", store_.addenda(visit_.id), textsJson);
        if (!problems_.empty()) return problems_;
        return std::move(json_);
    }

private:
    template <class T, class Shape> void put(const char* key, const Result<T>& read, Shape shape) {
        if (read)
            json_[key] = shape(*read);
        else
            problems_.insert(problems_.end(), read.problems().begin(), read.problems().end());
    }

    Store& store_;
    const Visit& visit_;
    Json json_;
    Problems problems_;
};

} // namespace

Result<Json> exportPatient(Store& store, const PatientId& id) {
    const auto patient = store.patient(id);
    if (!patient) return patient.problems();
    if (const Outcome noted =
            store.log(AuditAction::exported, patient->id.text(), "everything on this patient");
        !noted)
        return noted.problems();
    const auto visits = store.visitsOf(patient->id);
    if (!visits) return visits.problems();
    const auto events = store.eventsOf(patient->id);
    if (!events) return events.problems();
    const Identity& identity = patient->identity;
    Json json{{"format", "rhizograph.patient"},
              {"version", 1},
              {"id", patient->id.text()},
              {"identity",
               {{"name", identity.name},
                {"record_number", identity.recordNumber},
                {"birth_date", identity.birthDate},
                {"sex", identity.sex},
                {"contact", identity.contact},
                {"notes", identity.notes}}},
              {"events", Json::array()},
              {"visits", Json::array()}};
    for (const PatientEvent& event : *events)
        json["events"].push_back(happenedJson(event));
    for (const Visit& visit : *visits) {
        auto one = VisitExport{store, visit}.json();
        if (!one) return one.problems();
        json["visits"].push_back(std::move(*one));
    }
    return json;
}

} // namespace rhizograph
