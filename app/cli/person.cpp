#include "cli/commands.h"
#include "cli/output.h"
#include "cli/recordaccess.h"
#include "exchange/patientfile.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

/// The one patient with this record number. A number that two have is no answer: handing out the wrong
/// person's record cannot be taken back.
Result<PatientId> patientNumbered(Store& store, const std::string& number) {
    auto found = store.searchPatients(number, 10'000);
    if (!found) return found.problems();
    std::erase_if(*found, [&](const Patient& patient) { return patient.identity.recordNumber != number; });
    if (found->size() == 1) return found->front().id;
    return Problem{"", "--patient",
                   found->empty()
                       ? "the clinic knows no patient with the record number \"" + number + "\""
                       : fmt::format("{} patients have the record number \"{}\"; join or correct them first",
                                     found->size(), number)};
}

} // namespace

Reply runPerson(const Arguments& arguments) {
    const auto number = needed(arguments, "--patient");
    if (!number) return refused(number.problems());
    const auto store = signInTo(arguments);
    if (!store) return refused(store.problems());
    const auto id = patientNumbered(**store, *number);
    if (!id) return refused(id.problems());
    const auto json = exportPatient(**store, *id);
    if (!json) return because(json.problems(), (*store)->lastFailure());
    // What somebody typed long ago may not be UTF-8; better a mark in its place than no export.
    return deliver(arguments,
                   json->dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n");
}

} // namespace rhizograph::cli
