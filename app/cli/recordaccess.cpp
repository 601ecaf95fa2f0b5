#include "cli/recordaccess.h"

#include "cli/passphrase.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph::cli {

Result<std::string> needed(const Arguments& arguments, const std::string& option) {
    auto value = arguments.option(option);
    if (!value) return Problem{"", "", "option " + option + " is missing"};
    return std::move(*value);
}

Result<std::unique_ptr<Store>> openRecord(const Arguments& arguments) {
    const auto file = needed(arguments, "--database");
    if (!file) return file.problems();
    return openClinic(*file);
}

Result<std::unique_ptr<Store>> signInTo(const Arguments& arguments) {
    const auto name = needed(arguments, "--user");
    if (!name) return name.problems();
    auto store = openRecord(arguments);
    if (!store) return store;
    const auto users = (*store)->users();
    if (!users) return users.problems();
    const auto user =
        std::find_if(users->begin(), users->end(), [&](const User& one) { return one.name == *name; });
    if (user == users->end())
        return Problem{"", "--user",
                       "the clinic knows no user named \"" + *name + "\"; rhizo users lists them"};
    const auto passphrase =
        readPassphrase(arguments, "--passphrase", "Passphrase of " + printable(*name) + ": ");
    if (!passphrase) return passphrase.problems();
    if (const Outcome in = (*store)->signIn(user->id, *passphrase); !in) return in.problems();
    return store;
}

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

Reply because(const Problems& problems, Failure failure) {
    const bool machine =
        failure == Failure::full || failure == Failure::device || failure == Failure::readOnly;
    return machine ? failed(problems) : refused(problems);
}

std::string damageText(const Verification& verification) {
    std::string out;
    for (const Damage& damage : verification.damage)
        out += fmt::format("{}{}\n", damage.visit.empty() ? "" : "visit " + damage.visit.text() + ": ",
                           printable(damage.what));
    return out;
}

} // namespace rhizograph::cli
