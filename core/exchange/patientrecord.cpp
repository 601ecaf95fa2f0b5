#include "exchange/patientrecord.h"

#include "record/patientindex.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph {
namespace {

constexpr const char* kLeftOut = "[left out]";

class RecordReader {
public:
    explicit RecordReader(Store& store) : store_(store) {}

    Result<PatientRecord> read(const PatientId& id) {
        PatientRecord out;
        Patient patient;
        std::vector<Visit> visits;
        if (!take(store_.patient(id), patient) || !take(store_.eventsOf(patient.id), out.events) ||
            !take(store_.visitsOf(patient.id), visits))
            return problems_;
        out.identity = patient.identity;
        for (PatientEvent& event : out.events) {
            event.id = {};
            event.patient = {};
        }
        for (const Visit& visit : visits) {
            VisitRecord& record = out.visits.emplace_back();
            record.author = visit.author;
            if (!read(visit.id, record)) return problems_;
        }
        return out;
    }

private:
    bool read(const VisitId& id, VisitRecord& out) {
        return take(store_.exam(id), out.exam) && take(store_.plan(id), out.papers.plan) &&
               take(store_.notes(id), out.papers.notes) &&
               take(store_.acknowledgements(id), out.papers.acknowledgements) &&
               take(store_.signature(id), out.papers.signature) &&
               take(store_.addenda(id), out.papers.addenda);
    }

    template <class T> bool take(Result<T> result, T& into) {
        if (result)
            into = std::move(result).value();
        else
            problems_ = result.problems();
        return result.ok();
    }

    Store& store_;
    Problems problems_;
};

/// What a visit's papers said in the record it comes from, for the note that comes in their place.
std::string originOf(const VisitRecord& visit) {
    const auto said = [](const AuthoredText& text) {
        return fmt::format("{} ({}, {})", text.text, text.by.empty() ? "not named" : text.by, text.at);
    };
    std::string out = "Imported from another record.";
    if (!visit.author.empty()) out += "\nOpened there by " + visit.author + ".";
    if (const auto& signature = visit.papers.signature)
        out += fmt::format("\nSigned there by {}, {}.", signature->by.empty() ? "not named" : signature->by,
                           signature->at);
    else
        out += "\nNot signed there.";
    for (const RedSignAcknowledgement& each : visit.papers.acknowledgements)
        out += fmt::format("\nRed sign {} ({}) acknowledged there by {}, {}.", each.sign, each.urgency,
                           each.by.empty() ? "not named" : each.by, each.at);
    for (const AuthoredText& each : visit.papers.notes)
        out += "\nNote there: " + said(each);
    for (const AuthoredText& each : visit.papers.addenda)
        out += "\nAddendum there: " + said(each);
    if (visit.textsLeftOut) out += "\nWords that people wrote were left out.";
    return out;
}

class RecordWriter {
public:
    RecordWriter(Store& store, const PatientRecord& record, const Knowledge& knowledge)
        : store_(store), record_(record), knowledge_(knowledge) {}

    Outcome write(const std::optional<PatientId>& into) {
        if (!(into ? takeExisting(*into) : takeNew())) return problems_;
        for (const PatientEvent& each : record_.events) {
            PatientEvent event = each;
            event.patient = patient_.id;
            PatientEvent written;
            if (!take(store_.writeEvent(event), written)) return problems_;
        }
        const Exam* previous = nullptr;
        for (const VisitRecord& visit : record_.visits) {
            if (!write(visit, previous)) return problems_;
            previous = &visit.exam;
        }
        return keep(store_.log(AuditAction::imported, patient_.id.text(),
                               fmt::format("{} visits of another record", record_.visits.size())))
                   ? Outcome{}
                   : Outcome{problems_};
    }

    [[nodiscard]] const Patient& patient() const { return patient_; }

private:
    bool takeExisting(const PatientId& id) {
        std::vector<Visit> visits;
        if (!take(store_.patient(id), patient_) || !take(store_.visitsOf(patient_.id), visits)) return false;
        const Identity& here = patient_.identity;
        const Identity& there = record_.identity;
        if (!there.name.empty() && folded(there.name) != folded(here.name))
            return fail("the patient of this clinic has another name than the one in the import");
        if (!there.birthDate.empty() && there.birthDate != here.birthDate)
            return fail(fmt::format("the patient was born on {}, but in the import on {}",
                                    here.birthDate.empty() ? "a day not given" : here.birthDate,
                                    there.birthDate));
        if (!there.sex.empty() && there.sex != here.sex)
            return fail(fmt::format("the patient's sex is {}, but in the import {}",
                                    here.sex.empty() ? "not given" : here.sex, there.sex));
        for (const VisitRecord& visit : record_.visits)
            if (std::any_of(visits.begin(), visits.end(),
                            [&](const Visit& each) { return each.date == visit.exam.date; }))
                return fail("the patient has a visit on " + visit.exam.date + " already");
        return true;
    }

    bool takeNew() {
        const Identity& identity = record_.identity;
        if (identity.name.empty())
            return fail("names nobody: say which patient of this clinic the visits belong to");
        std::vector<Patient> same;
        if (!identity.recordNumber.empty() && !take(store_.searchPatients(identity.recordNumber, 1000), same))
            return false;
        for (const Patient& each : same)
            if (each.identity.recordNumber == identity.recordNumber)
                return fail("the clinic has a patient with the record number \"" + identity.recordNumber +
                            "\": say so if the visits belong to that one");
        return take(store_.addPatient(identity), patient_);
    }

    bool write(const VisitRecord& visit, const Exam* previous) {
        Visit added;
        if (!take(store_.addVisit(patient_.id, visit.exam.date), added)) return false;
        Exam exam;
        if (!take(store_.exam(added.id), exam)) return false;
        if (visit.exam.subject != exam.subject)
            return fail("age or sex at the visit of " + visit.exam.date + " do not go with this patient");
        std::vector<FindingChange> changes;
        for (const auto& [key, finding] : visit.exam.findings())
            changes.push_back({key, finding});
        if (!keep(store_.record(added.id, changes)) || !keep(store_.addNote(added.id, originOf(visit))))
            return false;
        if (!visit.papers.plan.empty() && !keep(store_.setPlan(added.id, visit.papers.plan))) return false;
        const auto signs = assess(visit.exam, knowledge_, previous).redSigns;
        const auto open = std::count_if(signs.begin(), signs.end(),
                                        [](const RedSign& sign) { return sign.urgency != Urgency::note; });
        return keep(store_.setOpenRedSigns(added.id, static_cast<int>(open))) &&
               keep(store_.setState(added.id, VisitState::toReview));
    }

    template <class T> bool take(Result<T> result, T& into) {
        if (result)
            into = std::move(result).value();
        else
            problems_ = result.problems();
        return result.ok();
    }
    bool keep(const Outcome& outcome) {
        if (!outcome) problems_ = outcome.problems();
        return outcome.ok();
    }
    bool fail(const std::string& reason) {
        problems_ = {Problem{"", "", reason}};
        return false;
    }

    Store& store_;
    const PatientRecord& record_;
    const Knowledge& knowledge_;
    Patient patient_;
    Problems problems_;
};

} // namespace

Result<PatientRecord> readPatientRecord(Store& store, const PatientId& patient) {
    return RecordReader{store}.read(patient);
}

PatientRecord withoutIdentity(PatientRecord record) {
    PatientRecord out;
    out.identity.sex = record.identity.sex;
    for (const PatientEvent& event : record.events)
        out.events.push_back({{}, {}, event.date, event.kind, {}, event.awaited, {}, event.at});
    for (VisitRecord& visit : record.visits) {
        VisitRecord& bare = out.visits.emplace_back();
        bare.textsLeftOut = true;
        bare.exam.subject = visit.exam.subject;
        bare.exam.date = visit.exam.date;
        for (auto [key, finding] : visit.exam.findings()) {
            const Value& value = finding.value;
            if (value.kind() == Value::Kind::text && !value.word().empty())
                finding.value = Value::text(kLeftOut);
            if (!finding.note.empty()) finding.note = kLeftOut;
            bare.exam.set(key, std::move(finding));
        }
        for (const RedSignAcknowledgement& each : visit.papers.acknowledgements)
            bare.papers.acknowledgements.push_back({each.sign, each.urgency, {}, each.at});
        if (const auto& signature = visit.papers.signature)
            bare.papers.signature = Signature{{}, signature->at, signature->knowledgeVersion};
    }
    return out;
}

Result<Patient> addPatientRecord(Store& store, const PatientRecord& record, const Knowledge& knowledge,
                                 const std::optional<PatientId>& into) {
    RecordWriter writer{store, record, knowledge};
    const Outcome written = store.together([&] { return writer.write(into); });
    if (!written) return written.problems();
    return writer.patient();
}

} // namespace rhizograph
