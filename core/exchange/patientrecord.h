#pragma once

#include "exchange/papers.h"
#include "record/store.h"

#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

/// One visit as it leaves one record and comes into another.
struct VisitRecord {
    Exam exam;          ///< with the date of the visit
    std::string author; ///< who opened it
    VisitPapers papers;
    bool textsLeftOut = false; ///< words people wrote were left out, for they may name somebody
    bool operator==(const VisitRecord&) const = default;
};

/// A patient with all visits, oldest first, and what happened between them. Without a name where identities
/// were left out.
struct PatientRecord {
    Identity identity;
    std::vector<PatientEvent> events; ///< their ids and patients are left empty
    std::vector<VisitRecord> visits;
    bool operator==(const PatientRecord&) const = default;
};

/// Everything of one patient that an export holds, as the record stands now. Noting the export in the audit
/// is the caller's part.
Result<PatientRecord> readPatientRecord(Store& store, const PatientId& patient);

/// The same without identities and without any words people wrote; only age, sex, dates and answers are left.
/// Words in answers and remarks are replaced by a mark, so that they do not seem never given.
[[nodiscard]] PatientRecord withoutIdentity(PatientRecord record);

/// Writes a record into this clinic, whole or not at all: for a new patient, or to the visits of `into`,
/// whose age and sex must agree. Findings, dates and plan are as they were; who signed, acknowledged and
/// added what elsewhere stands in a note on each visit, for nobody here has signed it: the visits are to
/// review.
Result<Patient> addPatientRecord(Store& store, const PatientRecord& record, const Knowledge& knowledge,
                                 const std::optional<PatientId>& into = {});

} // namespace rhizograph
