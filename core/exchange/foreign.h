#pragma once

#include "exchange/fhir.h"

#include <string>
#include <vector>

namespace rhizograph {

/// What another system's resources give for an intake, every answer with a remark of where it is from.
struct ForeignIntake {
    Identity identity; ///< without a name where the Patient has none
    Exam exam;
    std::vector<std::string> notTaken; ///< what was left, and why, for people
};

/// Whether a text says that this program wrote it. Then it is to be read strictly, as an export of ours.
[[nodiscard]] bool writtenHere(std::string_view text);

/// Reads a Patient, Conditions and Observations of another system (a Bundle of any type, or one resource) for
/// an intake on `day` (ISO 8601). What is not known, not final, too old, out of range or in another unit is
/// listed, never guessed; no answer is made of what is not there. Text that is no FHIR, or of two patients,
/// is a problem.
Result<ForeignIntake> intakeFromFhir(std::string_view text, const std::string& name,
                                     const Catalogue& catalogue, const FhirCodes& codes,
                                     const std::string& day);

/// Writes an intake into this clinic as a visit to be confirmed, for a new patient or for `into`; whole or
/// not at all.
Result<Patient> addIntake(Store& store, const Identity& identity, const Exam& exam,
                          const std::optional<PatientId>& into = {});

} // namespace rhizograph
