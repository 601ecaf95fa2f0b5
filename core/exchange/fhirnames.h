#pragma once

namespace rhizograph::fhir {

/// Our own code systems. URNs need no web host; a code is never reused.
constexpr const char* findingSystem = "urn:rhizograph:cs:finding";
constexpr const char* siteSystem = "urn:rhizograph:cs:site";
constexpr const char* valueSystem = "urn:rhizograph:cs:value";
constexpr const char* reasonSystem = "urn:rhizograph:cs:not-testable";
constexpr const char* sectionSystem = "urn:rhizograph:cs:section";
constexpr const char* deviceSystem = "urn:rhizograph:program";
constexpr const char* programName = "Rhizograph";
constexpr const char* numberSystem = "urn:rhizograph:record-number";
constexpr const char* eventSystem = "urn:rhizograph:cs:event";
constexpr const char* notesUrl = "urn:rhizograph:patient-notes";
constexpr const char* participantSystem = "http://terminology.hl7.org/CodeSystem/provenance-participant-type";
constexpr const char* answeredFor = "verifier"; ///< of a red sign, among the participants
constexpr const char* securitySystem = "http://terminology.hl7.org/CodeSystem/v3-ObservationValue";
constexpr const char* textsLeftOut = "REDACTED";
constexpr const char* knowledgeAtSigning = "Knowledge version at signing";
constexpr const char* noteCode = "visit.note";
constexpr const char* addendumCode = "visit.addendum";
constexpr const char* redSignPrefix = "red.";
constexpr const char* ageCode = "subject.age";
constexpr const char* emptyText = "text.empty";
constexpr const char* bulkMethod = "confirmed normal in bulk";

constexpr const char* loinc = "http://loinc.org";
constexpr const char* ucum = "http://unitsofmeasure.org";
constexpr const char* absentSystem = "http://terminology.hl7.org/CodeSystem/data-absent-reason";

} // namespace rhizograph::fhir
