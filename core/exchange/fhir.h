#pragma once

#include "base/problem.h"
#include "exam/exam.h"
#include "exchange/patientrecord.h"
#include "reasoning/knowledge.h"

#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>
#include <set>
#include <string>
#include <string_view>

namespace rhizograph {

/// A code of another vocabulary that goes beside ours.
struct ForeignCode {
    std::string code;
    std::string display; ///< the vocabulary's own name; may be empty
};

/// What a measure of another system may fill in.
struct ForeignMeasure {
    std::string item;
    int days = 0;       ///< how old it may be
    std::string remark; ///< stands on the finding, to be confirmed
};

/// A measure in another unit, times `factor` plus `offset`, is in the catalogue's.
struct ForeignUnit {
    std::string from; ///< UCUM
    double factor = 1;
    double offset = 0;
};

/// A condition whose ICD-10 code begins so gives this answer.
struct ForeignCondition {
    std::vector<std::string> prefixes;
    std::string item;
    std::string value;
};

/// What FHIR documents need beside the catalogue, as loaded from fhir.json; immutable after loading.
struct FhirCodes {
    std::map<std::string, ForeignCode> sections; ///< by section of the narrative
    std::map<std::string, ForeignCode> groups;   ///< by card
    std::map<std::string, ForeignCode> items;
    std::set<std::string> vitalSigns; ///< items
    std::string surveyStep;           ///< what is asked, not examined
    ForeignCode document;
    ForeignCode age;
    std::map<std::string, std::string> ucum;               ///< unit of the catalogue -> UCUM code
    std::map<std::string, std::string> absentReasons;      ///< our reason -> HL7 data-absent-reason
    std::map<std::string, ForeignMeasure> measures;        ///< by LOINC code
    std::map<std::string, std::vector<ForeignUnit>> units; ///< by unit of the catalogue
    std::vector<ForeignCondition> conditions;

    static Result<FhirCodes> load(const std::filesystem::path& file, const Catalogue& catalogue);
    static Result<FhirCodes> parse(std::string_view text, const std::string& name,
                                   const Catalogue& catalogue);
};

/// One visit as it goes out. An exam by itself knows age and sex only: nobody is named.
struct FhirVisit {
    const Exam& exam;
    const Assessment& assessment;
    std::string documentId;              ///< a UUID, new for each document
    std::string writtenAt;               ///< UTC, ISO 8601 to the second
    std::string programVersion;          ///< of the program that writes
    const VisitRecord* record = nullptr; ///< of the same exam: what stands beside the findings
    const Identity* identity = nullptr;  ///< null or without a name: nobody is named
    const Exam* previous = nullptr;      ///< the visit before: the text compares with it
};

/// The visit as a FHIR R4 (4.0.1) Bundle of type "document": Composition with the narrative of every section,
/// Observations (one an item and side), RiskAssessment and Flags by the Device that computed them, what
/// people wrote and answered for (CarePlan, ClinicalImpression, Provenance), and who they were. What was not
/// examined is absent and named in the text; what was not testable has a reason and no value.
[[nodiscard]] nlohmann::ordered_json fhirDocument(const FhirVisit& visit, const Knowledge& knowledge,
                                                  const FhirCodes& codes);

/// All visits of a patient as a Bundle of type "collection": the Patient, what happened to them (Procedure)
/// and one document for each visit, each computed anew with the visit before it.
[[nodiscard]] nlohmann::ordered_json fhirCollection(const PatientRecord& patient,
                                                    const std::string& writtenAt,
                                                    const std::string& programVersion,
                                                    const Knowledge& knowledge, const FhirCodes& codes);

/// A fresh random UUID (version 4).
[[nodiscard]] std::string randomUuid();

/// The exam of a document that fhirDocument wrote, equal to the one that went in. Anything else in its
/// Observations, an item, value or side the catalogue does not know, a document of another program: all
/// problems are listed with their places, and nothing is taken in part.
Result<Exam> examFromFhir(std::string_view text, const std::string& name, const Catalogue& catalogue);

/// What fhirCollection or fhirDocument wrote, equal to what went in; the same refusals.
Result<PatientRecord> patientFromFhir(std::string_view text, const std::string& name,
                                      const Catalogue& catalogue);

/// The findings as a tidy table (RFC 4180), one row a finding. Free text and remarks may name a person: they
/// are left out unless `texts`; the row then says so.
[[nodiscard]] std::string examCsv(const Exam& exam, const Catalogue& catalogue, bool texts);

/// What a table of many patients holds.
struct CsvWanted {
    bool names = false; ///< record numbers and dates of visits; else a random mark a patient, and days since
                        ///< the first visit
    bool texts = false; ///< free text and remarks
};

/// The findings of patients over their visits, one row a finding. Ages above 89 are one group.
[[nodiscard]] std::string recordsCsv(const std::vector<PatientRecord>& records, const Catalogue& catalogue,
                                     const CsvWanted& wanted);

} // namespace rhizograph
