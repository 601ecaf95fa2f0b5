#include "record/roles.h"

namespace rhizograph {

bool allows(Role role, Permission permission) {
    if (role == Role::administrator) return true;
    const bool clinician = role == Role::clinician;
    const bool nurse = role == Role::nurse;
    switch (permission) {
    case Permission::read:
    case Permission::exportData:
        return true;
    case Permission::editPatients:
    case Permission::openVisits:
    case Permission::recordFindings:
        return clinician || nurse;
    case Permission::acknowledgeSigns:
    case Permission::writePlan:
    case Permission::sign:
    case Permission::mergePatients:
        return clinician;
    case Permission::reviewPractice:
        return clinician || role == Role::reviewer;
    case Permission::readAudit:
        return role == Role::reviewer;
    case Permission::backUp:
        return clinician || nurse;
    case Permission::manageUsers:
    case Permission::changeSettings:
    case Permission::erasePatients:
    case Permission::restore:
        return false;
    }
    return false;
}

std::string_view name(Role role) {
    switch (role) {
    case Role::nurse:
        return "nurse";
    case Role::clinician:
        return "clinician";
    case Role::reviewer:
        return "reviewer";
    case Role::administrator:
        break;
    }
    return "administrator";
}

std::optional<Role> roleNamed(std::string_view word) {
    for (const Role role : {Role::nurse, Role::clinician, Role::reviewer, Role::administrator})
        if (name(role) == word) return role;
    return std::nullopt;
}

} // namespace rhizograph
