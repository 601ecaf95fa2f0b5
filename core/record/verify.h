#pragma once

#include "record/sqlstore.h"

namespace rhizograph {

/// Recomputes every hash of the record and compares what is shown with what was written.
[[nodiscard]] Verification verifyRecord(sql::Connection& database, const Keys& keys);

} // namespace rhizograph
