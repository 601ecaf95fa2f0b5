#include "cli/commands.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

std::string helpText() {
    std::string out = "rhizo: recorder and localization aid for the examination of back and leg pain\n"
                      "Decision support for a licensed clinician, not a diagnosis; local pathways apply.\n\n";
    for (const Command& command : commands())
        out += fmt::format("  rhizo {}\n      {}\n",
                           command.name + (command.usage.empty() ? "" : " " + command.usage), command.about);
    return out +
           "  rhizo --help\n  rhizo --version\n\n"
           "Exit code 0: done; 1: the machine failed (disk, installation); 2: the input was refused.\n"
           "Passphrases come from --passphrase-file FILE, --passphrase-fd N or the terminal, never from the "
           "command line\n(the first one of a new user: --new-passphrase-file, --new-passphrase-fd).\n"
           "RHIZOGRAPH_RESOURCES names the folder that holds knowledge/ where it is not "
           "../share/rhizograph.\n";
}

Reply usageError(const std::string& reason) {
    Reply reply = refused({Problem{"", "", reason}});
    reply.err += "rhizo: see rhizo --help\n";
    return reply;
}

} // namespace

const std::vector<Command>& commands() {
    static const std::vector<Command> all = {
        {"assess",
         "FILE [--previous FILE]",
         "Print the assessment of an exam file as JSON",
         {1, {"--previous"}},
         runAssess},
        {"explain",
         "FILE [--previous FILE]",
         "Say the same in words, with every reason and its weight",
         {1, {"--previous"}},
         runExplain},
        {"summary",
         "FILE [--previous FILE] [--form full|short] [--format text|pdf] [--output PATH] [--paper a4|letter]",
         "Write the examination and impression for the chart; the short form is for one page",
         {1, {"--previous", "--form", "--format", "--output", "--paper"}},
         runSummary},
        {"compare",
         "A [B C …] [--format text|json|csv] [--output PATH]",
         "Compare right with left (one file), a visit with an earlier one (two), or the course (more), "
         "oldest first",
         {1, {"--format", "--output"}, 999},
         runCompare},
        {"export",
         "FILE | --database FILE --user NAME [--patient NUMBER] [--names yes|no] [--format fhir|csv] "
         "[--texts "
         "yes|no] [--output PATH]",
         "Write an exam file, or a patient with all visits, as FHIR R4; or findings (of all patients where "
         "none "
         "is named) as a table. Nobody is named unless --names yes; a table has free text with --texts yes",
         {0,
          {"--database", "--user", "--passphrase-file", "--passphrase-fd", "--patient", "--names", "--format",
           "--texts", "--output"},
          1},
         runExport},
        {"import",
         "FILE [--output PATH | --database FILE --user NAME [--patient NUMBER]]",
         "Read FHIR, whole or not at all: an export of ours back into visits, or another system's patient, "
         "conditions and measures into an intake to confirm, listing what was not taken",
         {1, {"--output", "--database", "--user", "--passphrase-file", "--passphrase-fd", "--patient"}},
         runImport},
        {"patients",
         "LIST --database FILE --user NAME [--columns FIELD=COLUMN,…] [--dates ymd|dmy|mdy] [--write "
         "no|all|ready]",
         "Show what a table of patients (CSV) would bring in, row by row what is wrong with it; --write all "
         "adds "
         "them where nothing is wrong, --write ready those that are right",
         {1,
          {"--database", "--user", "--passphrase-file", "--passphrase-fd", "--columns", "--dates",
           "--write"}},
         runPatients},
        {"demo",
         "--database FILE",
         "Make a new clinic of invented patients to look around in",
         {0, {"--database"}},
         runDemo},
        {"backup",
         "--database FILE --user NAME [--keep DAYS] BACKUP",
         "Write an encrypted backup and read it back; with --keep, today's into the folder BACKUP",
         {1, {"--database", "--user", "--passphrase-file", "--passphrase-fd", "--keep"}},
         runBackup},
        {"restore",
         "BACKUP --database FILE --user NAME [--damage accept]",
         "Check a backup and put it in the place of the clinic, which is kept aside",
         {1, {"--database", "--user", "--passphrase-file", "--passphrase-fd", "--damage"}},
         runRestore},
        {"verify",
         "--database FILE --user NAME",
         "Recompute every chained hash of a clinic; name each visit that was changed",
         {0, {"--database", "--user", "--passphrase-file", "--passphrase-fd"}},
         runVerify},
        {"person",
         "--database FILE --user NAME --patient NUMBER [--output PATH]",
         "Hand out everything the record holds of one person as JSON; the audit notes it",
         {0, {"--database", "--user", "--passphrase-file", "--passphrase-fd", "--patient", "--output"}},
         runPerson},
        {"users",
         "--database FILE [--user NAME (--add NAME --role ROLE | --close NAME | --reopen NAME)]",
         "List who may sign in to a clinic, or change it as an administrator",
         {0,
          {"--database", "--user", "--passphrase-file", "--passphrase-fd", "--add", "--role",
           "--new-passphrase-file", "--new-passphrase-fd", "--close", "--reopen"}},
         runUsers},
        {"check",
         "FILE",
         "Say whether an exam file is valid; every problem with its place",
         {1, {}},
         runCheck},
        {"catalogue",
         "",
         "List every item: id, sides, values, name, separated by tabs",
         {0, {}},
         runCatalogue},
        {"knowledge",
         "[--format text|markdown]",
         "Check the knowledge files; print their version, and every entry with its source",
         {0, {"--format"}},
         runKnowledge},
    };
    return all;
}

Reply run(const std::vector<std::string>& words) {
    if (words.empty()) return usageError("no command given");
    const std::string& name = words.front();
    const std::vector<std::string> rest(words.begin() + 1, words.end());
    if (name == "--help" || name == "-h" || name == "help") return done(helpText());
    if (name == "--version") return done("rhizo " RHIZOGRAPH_VERSION "\n");
    const auto& all = commands();
    const auto command = std::find_if(all.begin(), all.end(),
                                      [&](const Command& candidate) { return candidate.name == name; });
    if (command == all.end()) return usageError("no command \"" + name + "\"");
    if (std::find(rest.begin(), rest.end(), "--help") != rest.end()) return done(helpText());
    const auto arguments = parseArguments(rest, command->syntax);
    if (arguments) return command->run(*arguments);
    std::string reasons;
    for (const Problem& problem : arguments.problems())
        reasons += (reasons.empty() ? "" : "; ") + problem.reason;
    return usageError(name + ": " + reasons);
}

} // namespace rhizograph::cli
