#pragma once

#include "cli/arguments.h"
#include "cli/reply.h"
#include "record/store.h"

#include <memory>
#include <string>

namespace rhizograph::cli {

/// The value of an option that must be there.
Result<std::string> needed(const Arguments& arguments, const std::string& option);

/// The clinic of --database, opened but signed in by nobody.
Result<std::unique_ptr<Store>> openRecord(const Arguments& arguments);

/// The clinic of --database with --user signed in.
Result<std::unique_ptr<Store>> signInTo(const Arguments& arguments);

/// The one patient with this record number. A number that two have is no answer: handing out the wrong
/// person's record cannot be taken back.
Result<PatientId> patientNumbered(Store& store, const std::string& number);

/// Why the store's last call failed: the machine's fault (disk full, device) or the input's.
[[nodiscard]] Reply because(const Problems& problems, Failure failure);

/// One line for each place where a record is damaged.
[[nodiscard]] std::string damageText(const Verification& verification);

} // namespace rhizograph::cli
