#include "base/json.h"
#include "cli/commands.h"
#include "cli/load.h"
#include "cli/output.h"
#include "cli/recordaccess.h"
#include "cli/resources.h"
#include "exchange/examfile.h"
#include "exchange/fhir.h"
#include "exchange/foreign.h"
#include "record/clock.h"

#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

/// What leaves a record for which option: nobody is named unless asked for.
struct Wanted {
    bool csv = false;
    bool names = false;
    bool texts = false;
};

Result<bool> yesNo(const Arguments& arguments, const std::string& option) {
    const std::string word = arguments.option(option).value_or("no");
    if (word == "yes" || word == "no") return word == "yes";
    return Problem{"", option, "\"" + word + "\" is neither yes nor no"};
}

Result<Wanted> wantedOf(const Arguments& arguments) {
    const std::string format = arguments.option("--format").value_or("fhir");
    if (format != "fhir" && format != "csv")
        return Problem{"", "--format", "\"" + format + "\" is neither fhir nor csv"};
    const auto names = yesNo(arguments, "--names");
    if (!names) return names.problems();
    const auto texts = yesNo(arguments, "--texts");
    if (!texts) return texts.problems();
    return Wanted{format == "csv", *names, *texts};
}

Result<FhirCodes> loadCodes(const Catalogue& catalogue) {
    const auto resources = findResources();
    if (!resources) return resources.problems();
    return FhirCodes::load(*resources / "knowledge" / "fhir.json", catalogue);
}

std::string now() {
    return utcText(systemClock()());
}

Reply exportFile(const Arguments& arguments, const Wanted& wanted, const Knowledge& knowledge,
                 const FhirCodes& codes) {
    for (const char* option : {"--user", "--patient", "--names"})
        if (arguments.option(option))
            return refused({Problem{"", option, "an exam file names nobody: only with --database"}});
    const auto exam = readExamFile(arguments.files[0], knowledge.catalogue());
    if (!exam) return refused(exam.problems());
    if (wanted.csv) return deliver(arguments, examCsv(*exam, knowledge.catalogue(), wanted.texts));
    const Assessment assessment = assess(*exam, knowledge);
    const FhirVisit visit{*exam, assessment, randomUuid(), now(), RHIZOGRAPH_VERSION};
    return deliver(arguments, fhirDocument(visit, knowledge, codes).dump(1) + "\n");
}

/// Findings that this catalogue does not know stay in the record and are told, never dropped without a word.
std::string unknownFindings(const std::vector<PatientRecord>& records, const Catalogue& catalogue) {
    std::string out;
    for (const PatientRecord& record : records)
        for (const VisitRecord& visit : record.visits)
            for (const auto& [key, finding] : visit.exam.findings())
                if (catalogue.find(key.item) == nullptr)
                    out += fmt::format(
                        "not exported: \"{}\" at the visit of {}: the catalogue does not know it\n",
                        printable(key.item.text()), visit.exam.date);
    return out;
}

/// The patients meant: one, or for a table all who have a visit.
Result<std::vector<PatientId>> chosen(Store& store, const Arguments& arguments, bool csv) {
    std::vector<PatientId> out;
    if (const auto number = arguments.option("--patient")) {
        const auto id = patientNumbered(store, *number);
        if (!id) return id.problems();
        return std::vector{*id};
    }
    if (!csv) return Problem{"", "--patient", "a FHIR export is of one patient: give the record number"};
    const auto all = store.searchPatients("", 1'000'000);
    if (!all) return all.problems();
    for (const Patient& patient : *all)
        out.push_back(patient.id);
    return out;
}

Reply exportRecord(const Arguments& arguments, const Wanted& wanted, const Knowledge& knowledge,
                   const FhirCodes& codes) {
    const auto store = signInTo(arguments);
    if (!store) return refused(store.problems());
    const auto ids = chosen(**store, arguments, wanted.csv);
    if (!ids) return refused(ids.problems());
    // Noted first: what cannot be noted does not go out.
    const std::string what = fmt::format("{} of {} patients, {}", wanted.csv ? "table" : "FHIR", ids->size(),
                                         wanted.names ? "with names" : "without names");
    const Outcome noted =
        (*store)->log(AuditAction::exported, ids->size() == 1 ? ids->front().text() : "", what);
    if (!noted) return because(noted.problems(), (*store)->lastFailure());
    std::vector<PatientRecord> records;
    for (const PatientId& id : *ids) {
        auto record = readPatientRecord(**store, id);
        if (!record) return because(record.problems(), (*store)->lastFailure());
        records.push_back(std::move(record).value());
    }
    const std::string unknown = unknownFindings(records, knowledge.catalogue());
    if (wanted.csv) {
        Reply reply =
            deliver(arguments, recordsCsv(records, knowledge.catalogue(), {wanted.names, wanted.texts}));
        reply.err += unknown;
        return reply;
    }
    const auto bundle = fhirCollection(wanted.names ? records.front() : withoutIdentity(records.front()),
                                       now(), RHIZOGRAPH_VERSION, knowledge, codes);
    // What somebody typed long ago may not be UTF-8; better a mark in its place than no export.
    Reply reply = deliver(
        arguments, bundle.dump(1, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n");
    reply.err += unknown;
    return reply;
}

std::string listOf(const std::vector<std::string>& notTaken) {
    std::string out;
    for (const std::string& each : notTaken)
        out += "not taken: " + printable(each) + "\n";
    return out;
}

/// Without a clinic the answer is an exam file, and what it cannot hold is told.
Reply importToFile(const Arguments& arguments, const std::string& text, const Knowledge& knowledge,
                   const FhirCodes& codes) {
    const std::string& file = arguments.files[0];
    if (arguments.option("--patient") || arguments.option("--user"))
        return refused({Problem{"", "--database", "which clinic?"}});
    std::vector<std::string> notTaken;
    Exam exam;
    if (writtenHere(text)) {
        auto record = patientFromFhir(text, file, knowledge.catalogue());
        if (!record) return refused(record.problems());
        if (record->visits.size() != 1)
            return refused({Problem{file, "",
                                    fmt::format("holds {} visits: an exam file holds one; import into "
                                                "a clinic with --database",
                                                record->visits.size())}});
        exam = std::move(record->visits.front().exam);
        if (record->visits.front().papers != VisitPapers{})
            notTaken.emplace_back("plan, notes, acknowledgements, signature and addenda: an exam file has no "
                                  "place for them");
    } else {
        auto intake = intakeFromFhir(text, file, knowledge.catalogue(), codes, utcDate(systemClock()()));
        if (!intake) return refused(intake.problems());
        exam = std::move(intake->exam);
        notTaken = std::move(intake->notTaken);
    }
    Reply reply = deliver(arguments, examText(exam, knowledge.catalogue()));
    reply.err += listOf(notTaken);
    return reply;
}

Reply importToRecord(const Arguments& arguments, const std::string& text, const Knowledge& knowledge,
                     const FhirCodes& codes) {
    const std::string& file = arguments.files[0];
    if (arguments.option("--output"))
        return refused({Problem{"", "--output", "an import into a clinic writes no file"}});
    std::vector<std::string> notTaken;
    Result<PatientRecord> record = PatientRecord{};
    const bool ours = writtenHere(text);
    if (ours) {
        record = patientFromFhir(text, file, knowledge.catalogue());
    } else {
        auto intake = intakeFromFhir(text, file, knowledge.catalogue(), codes, utcDate(systemClock()()));
        if (!intake) return refused(intake.problems());
        notTaken = intake->notTaken;
        record->identity = intake->identity;
        record->visits.push_back({intake->exam, {}, {}, false});
    }
    if (!record) return refused(record.problems());
    const auto store = signInTo(arguments);
    if (!store) return refused(store.problems());
    std::optional<PatientId> into;
    if (const auto number = arguments.option("--patient")) {
        const auto id = patientNumbered(**store, *number);
        if (!id) return refused(id.problems());
        into = *id;
    }
    const auto patient = ours ? addPatientRecord(**store, *record, knowledge, into)
                              : addIntake(**store, record->identity, record->visits.front().exam, into);
    if (!patient) return because(patient.problems(), (*store)->lastFailure());
    Reply reply = done(ours ? fmt::format("{}: {} visits, to review and sign here\n",
                                          printable(patient->identity.name), record->visits.size())
                            : fmt::format("{}: an intake with {} answers to confirm\n",
                                          printable(patient->identity.name),
                                          record->visits.front().exam.findings().size()));
    reply.err = listOf(notTaken);
    return reply;
}

} // namespace

Reply runExport(const Arguments& arguments) {
    const auto wanted = wantedOf(arguments);
    if (!wanted) return refused(wanted.problems());
    const bool fromRecord = arguments.option("--database").has_value();
    if (fromRecord != arguments.files.empty())
        return refused({Problem{"", "", "export takes an exam file, or --database with a clinic"}});
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto codes = loadCodes(knowledge->catalogue());
    if (!codes) return failed(codes.problems());
    return fromRecord ? exportRecord(arguments, *wanted, *knowledge, *codes)
                      : exportFile(arguments, *wanted, *knowledge, *codes);
}

Reply runImport(const Arguments& arguments) {
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto codes = loadCodes(knowledge->catalogue());
    if (!codes) return failed(codes.problems());
    const auto text = readTextFile(arguments.files[0]);
    if (!text) return refused(text.problems());
    return arguments.option("--database") ? importToRecord(arguments, *text, *knowledge, *codes)
                                          : importToFile(arguments, *text, *knowledge, *codes);
}

} // namespace rhizograph::cli
