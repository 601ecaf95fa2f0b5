#include "cli/commands.h"
#include "cli/output.h"
#include "cli/recordaccess.h"
#include "exchange/patientfile.h"

namespace rhizograph::cli {

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
