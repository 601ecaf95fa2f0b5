#pragma once

#include "base/problem.h"
#include "record/store.h"

#include <nlohmann/json.hpp>

namespace rhizograph {

/// Everything the record holds of one person, for whoever may ask for it (format "rhizograph.patient",
/// version 1): identity, events between visits, every visit with every value ever recorded, by whom and when,
/// plan, notes, acknowledgements, signature and addenda. The export is noted in the audit first; when that
/// fails there is none.
Result<nlohmann::ordered_json> exportPatient(Store& store, const PatientId& patient);

} // namespace rhizograph
