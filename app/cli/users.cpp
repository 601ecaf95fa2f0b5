#include "cli/commands.h"
#include "cli/passphrase.h"
#include "cli/recordaccess.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

Reply listUsers(Store& store) {
    const auto users = store.users();
    if (!users) return because(users.problems(), store.lastFailure());
    std::string out;
    for (const User& user : *users)
        out += fmt::format("{}\t{}\t{}\n", printable(user.name), name(user.role),
                           user.active ? "active" : "not active");
    return done(out);
}

Reply addUser(Store& store, const Arguments& arguments, const std::string& userName) {
    const auto word = needed(arguments, "--role");
    if (!word) return refused(word.problems());
    const auto role = roleNamed(*word);
    if (!role)
        return refused({Problem{"", "--role",
                                "\"" + *word + "\" is none of nurse, clinician, reviewer, administrator"}});
    const auto passphrase =
        readPassphrase(arguments, "--new-passphrase", "First passphrase of " + printable(userName) + ": ");
    if (!passphrase) return refused(passphrase.problems());
    const auto added = store.addUser(userName, *role, *passphrase);
    return added ? listUsers(store) : because(added.problems(), store.lastFailure());
}

Reply changeUser(Store& store, const std::string& userName, const std::function<void(User&)>& change) {
    const auto users = store.users();
    if (!users) return because(users.problems(), store.lastFailure());
    const auto found =
        std::find_if(users->begin(), users->end(), [&](const User& one) { return one.name == userName; });
    if (found == users->end())
        return refused({Problem{"", "", "the clinic knows no user named \"" + userName + "\""}});
    User user = *found;
    change(user);
    const Outcome changed = store.updateUser(user);
    return changed ? listUsers(store) : because(changed.problems(), store.lastFailure());
}

} // namespace

Reply runUsers(const Arguments& arguments) {
    const auto add = arguments.option("--add");
    const auto close = arguments.option("--close");
    const auto reopen = arguments.option("--reopen");
    const int orders = (add ? 1 : 0) + (close ? 1 : 0) + (reopen ? 1 : 0);
    if (orders > 1) return refused({Problem{"", "", "one of --add, --close and --reopen at a time"}});
    const auto store = orders == 0 ? openRecord(arguments) : signInTo(arguments);
    if (!store) return refused(store.problems());
    if (add) return addUser(**store, arguments, *add);
    if (close) return changeUser(**store, *close, [](User& user) { user.active = false; });
    if (reopen) return changeUser(**store, *reopen, [](User& user) { user.active = true; });
    return listUsers(**store);
}

} // namespace rhizograph::cli
