#pragma once

#include "base/problem.h"
#include "exam/exam.h"
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

/// What FHIR documents need beside the catalogue, as loaded from fhir.json; immutable after loading.
struct FhirCodes {
    std::map<std::string, ForeignCode> sections; ///< by section of the narrative
    std::map<std::string, ForeignCode> groups;   ///< by card
    std::map<std::string, ForeignCode> items;
    std::set<std::string> vitalSigns; ///< items
    std::string surveyStep;           ///< what is asked, not examined
    ForeignCode document;
    ForeignCode age;
    std::map<std::string, std::string> ucum;          ///< unit of the catalogue -> UCUM code
    std::map<std::string, std::string> absentReasons; ///< our reason -> HL7 data-absent-reason

    static Result<FhirCodes> load(const std::filesystem::path& file, const Catalogue& catalogue);
    static Result<FhirCodes> parse(std::string_view text, const std::string& name,
                                   const Catalogue& catalogue);
};

/// One visit as it goes out. Nobody is named: the exam knows age and sex only.
struct FhirVisit {
    const Exam& exam;
    const Assessment& assessment;
    std::string documentId;     ///< a UUID, new for each document
    std::string writtenAt;      ///< UTC, ISO 8601 to the second
    std::string programVersion; ///< of the program that writes
    bool signedOff = false;
};

/// The visit as a FHIR R4 (4.0.1) Bundle of type "document": Composition with the narrative of every section,
/// Observations (one an item and side), RiskAssessment and Flags by the Device that computed them,
/// Provenance. What was not examined is absent and named in the text; what was not testable has a reason and
/// no value.
[[nodiscard]] nlohmann::ordered_json fhirDocument(const FhirVisit& visit, const Knowledge& knowledge,
                                                  const FhirCodes& codes);

/// A fresh random UUID (version 4).
[[nodiscard]] std::string randomUuid();

/// The exam of a document that fhirDocument wrote, equal to the one that went in. Anything else in its
/// Observations, an item, value or side the catalogue does not know, a document of another program: all
/// problems are listed with their places, and nothing is taken in part.
Result<Exam> examFromFhir(std::string_view text, const std::string& name, const Catalogue& catalogue);

/// The findings as a tidy table (RFC 4180), one row a finding. Free text and remarks may name a person: they
/// are left out unless `texts`; the row then says so.
[[nodiscard]] std::string examCsv(const Exam& exam, const Catalogue& catalogue, bool texts);

} // namespace rhizograph
