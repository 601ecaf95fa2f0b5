#pragma once

#include "record/store.h"

#include <string>

namespace rhizograph::app {

/// What the clinic chose for everybody; kept in its record.
struct ClinicSettings {
    std::string letterhead;   ///< lines for the top of the page, the first one the clinic's name
    bool inches = false;      ///< lengths are shown in inches; stored in centimeters all the same
    bool splitGrades = false; ///< strength also offers the grades between whole ones
    int idleMinutes = 10;     ///< until the screen locks itself; 1 to 120
    int backupsKept = 14;     ///< how many daily backups are kept; 0: none are made
    bool operator==(const ClinicSettings&) const = default;
};

/// Reads the settings; where none was made the default stands (letterhead: the clinic's name).
Result<ClinicSettings> loadClinicSettings(Store& store);
/// Writes what differs from `before`.
Outcome saveClinicSettings(Store& store, const ClinicSettings& before, const ClinicSettings& after);

} // namespace rhizograph::app
