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
constexpr const char* ageCode = "subject.age";
constexpr const char* emptyText = "text.empty";
constexpr const char* bulkMethod = "confirmed normal in bulk";

constexpr const char* loinc = "http://loinc.org";
constexpr const char* ucum = "http://unitsofmeasure.org";
constexpr const char* absentSystem = "http://terminology.hl7.org/CodeSystem/data-absent-reason";

} // namespace rhizograph::fhir
