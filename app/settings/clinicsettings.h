#pragma once

#include "record/store.h"
#include "shell/visitsession.h"

#include <string>
#include <vector>

namespace rhizograph::app {

/// What the clinic chose for everybody; kept in its record.
struct ClinicSettings {
    std::string letterhead;             ///< lines for the top of the page, the first one the clinic's name
    bool inches = false;                ///< lengths are shown in inches; stored in centimeters all the same
    bool splitGrades = false;           ///< strength also offers the grades between whole ones
    int idleMinutes = 10;               ///< until the screen locks itself; 1 to 120
    int backupsKept = 14;               ///< how many daily backups are kept; 0: none are made
    std::string phrases;                ///< offered under the plan, one a line; empty: the program's own
    std::vector<std::string> stepOrder; ///< ids of steps; those not named follow in the catalogue's order
    ItemPlaces places;                  ///< items moved between what shows and what waits behind More
    bool operator==(const ClinicSettings&) const = default;
};

/// Reads the settings; where none was made the default stands (letterhead: the clinic's name).
Result<ClinicSettings> loadClinicSettings(Store& store);
/// Writes what differs from `before`.
Outcome saveClinicSettings(Store& store, const ClinicSettings& before, const ClinicSettings& after);

} // namespace rhizograph::app
