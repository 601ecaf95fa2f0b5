#pragma once

#include <optional>
#include <string_view>

namespace rhizograph {

/// What a person is in the clinic; decides what the record lets them do (see allows).
enum class Role { nurse, clinician, reviewer, administrator };

/// What the record distinguishes when it refuses.
enum class Permission {
    read,             ///< patients, visits, findings
    editPatients,     ///< add and correct identities
    openVisits,       ///< add a visit, move it on (not signing)
    recordFindings,   ///< tap, clear, note, events of a patient, mark red signs as counted
    acknowledgeSigns, ///< take responsibility for a red sign
    writePlan,
    sign,           ///< sign a visit and add addenda
    mergePatients,  ///< join duplicates and part them again
    exportData,     ///< export and print (always logged)
    reviewPractice, ///< the list of patients of the whole clinic who need somebody's eye
    readAudit,      ///< read the audit and verify the record
    backUp,
    manageUsers,
    changeSettings,
    erasePatients,
    restore,
};

/// The table of roles. A nurse never signs, a reviewer never changes, only an administrator manages users,
/// erases and restores. An administrator may do everything, because in a practice of one that is the
/// clinician.
[[nodiscard]] bool allows(Role role, Permission permission);

/// "nurse", "clinician", "reviewer", "administrator".
[[nodiscard]] std::string_view name(Role role);
[[nodiscard]] std::optional<Role> roleNamed(std::string_view word);

} // namespace rhizograph
