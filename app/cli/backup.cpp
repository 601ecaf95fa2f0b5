#include "cli/commands.h"
#include "cli/passphrase.h"
#include "cli/recordaccess.h"

#include <charconv>
#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

std::string describe(const Backup& made) {
    std::string out = fmt::format("{}: {} bytes, encrypted, read back and verified: {} visits, {} events\n",
                                  printable(made.file.string()), made.bytes, made.verification.visits,
                                  made.verification.events);
    if (!made.noted) out += "The backup is whole, but the clinic's audit could not be written.\n";
    return out;
}

/// The backup is good, what it holds is not: said loudly, but not as a failure of backing up.
std::string warningOf(const Verification& verification) {
    if (verification.sound()) return {};
    return fmt::format("rhizo: warning: the record itself is damaged in {} places; keep older backups\n{}",
                       verification.damage.size(), damageText(verification));
}

Reply backUpOnce(Store& store, const std::string& file) {
    const auto made = store.backUp(file);
    if (!made) return because(made.problems(), store.lastFailure());
    Reply reply = done(describe(*made));
    reply.err = warningOf(made->verification);
    return reply;
}

Reply backUpDaily(Store& store, const std::string& folder, const std::string& keepText) {
    int keep = 0;
    const auto [end, error] = std::from_chars(keepText.data(), keepText.data() + keepText.size(), keep);
    if (error != std::errc{} || end != keepText.data() + keepText.size() || keep < 1)
        return refused({Problem{"", "--keep", "\"" + keepText + "\" is no number of days from 1"}});
    const auto round = store.backUpDaily(folder, keep);
    if (!round) return because(round.problems(), store.lastFailure());
    Reply reply = done(round->made ? describe(*round->made) : "Today's backup is there already.\n");
    for (const auto& file : round->removed)
        reply.out += fmt::format("{}: removed, older than the newest {}\n", printable(file.string()), keep);
    if (round->made) reply.err = warningOf(round->made->verification);
    return reply;
}

} // namespace

Reply runBackup(const Arguments& arguments) {
    const auto store = signInTo(arguments);
    if (!store) return refused(store.problems());
    const auto keep = arguments.option("--keep");
    return keep ? backUpDaily(**store, arguments.files[0], *keep) : backUpOnce(**store, arguments.files[0]);
}

Reply runRestore(const Arguments& arguments) {
    const auto database = needed(arguments, "--database");
    const auto user = needed(arguments, "--user");
    if (!database || !user) return refused(database ? user.problems() : database.problems());
    const std::string accept = arguments.option("--damage").value_or("refuse");
    if (accept != "refuse" && accept != "accept")
        return refused({Problem{"", "--damage", "\"" + accept + "\" is neither refuse nor accept"}});
    const auto info = inspectBackup(arguments.files[0]);
    if (!info) return refused(info.problems());
    const auto passphrase =
        readPassphrase(arguments, "--passphrase",
                       fmt::format("Passphrase of {} on {}: ", printable(*user), info->madeAt.substr(0, 10)));
    if (!passphrase) return refused(passphrase.problems());
    const auto restored = restoreBackup(
        {arguments.files[0], *database, *user, *passphrase, accept == "accept"}, ClinicOptions{});
    if (!restored) return refused(restored.problems());
    Reply reply = done(fmt::format("{}: {}, as of {}: {} visits, {} events, verified\n", printable(*database),
                                   printable(info->clinicName), info->madeAt, restored->verification.visits,
                                   restored->verification.events));
    if (restored->keptAside)
        reply.out +=
            fmt::format("What stood there is kept as {}\n", printable(restored->keptAside->string()));
    reply.err = warningOf(restored->verification);
    return reply;
}

Reply runVerify(const Arguments& arguments) {
    const auto store = signInTo(arguments);
    if (!store) return refused(store.problems());
    const auto found = (*store)->verify();
    if (!found) return because(found.problems(), (*store)->lastFailure());
    const std::string counts = fmt::format("{} visits, {} events, {} audit entries", found->visits,
                                           found->events, found->auditEntries);
    if (found->sound()) return done("Sound: " + counts + "\n");
    Reply reply = refused({Problem{arguments.option("--database").value_or(""), "",
                                   fmt::format("damaged in {} places ({})", found->damage.size(), counts)}});
    reply.err += damageText(*found);
    return reply;
}

} // namespace rhizograph::cli
