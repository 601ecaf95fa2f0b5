#pragma once

#include "record/sqlite.h"

#include <functional>
#include <string>
#include <vector>

namespace rhizograph::schema {

/// Marks a SQLite file as a clinic of this program (pragma application_id).
constexpr int applicationId = 0x525a4731;

/// One step from one released schema to the next.
struct Migration {
    int to = 0; ///< the schema after it
    std::string statements;
};

/// Every step from an empty file to the present schema, in order.
[[nodiscard]] const std::vector<Migration>& migrations();

/// The schema this program writes.
[[nodiscard]] int currentVersion();

/// Throws RecordError (foreign) unless the file is a clinic of this or an older schema; its schema otherwise.
[[nodiscard]] int versionOf(sqlite::Database& database, int newest = currentVersion());

/// Brings the database from its schema to the last of `steps`, each in a transaction of its own: after a
/// failure it is at the last step that was completed.
void migrate(sqlite::Database& database, const std::vector<Migration>& steps = migrations());

} // namespace rhizograph::schema
