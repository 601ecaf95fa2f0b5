#pragma once

#include "cli/arguments.h"
#include "cli/reply.h"

#include <string>
#include <vector>

namespace rhizograph::cli {

/// One subcommand: how it is called, what it does, and the function that does it.
struct Command {
    std::string name;
    std::string usage; ///< its arguments as shown in the help
    std::string about; ///< one line
    Syntax syntax;
    Reply (*run)(const Arguments&);
};

/// All subcommands, in the order of the help.
[[nodiscard]] const std::vector<Command>& commands();

/// Runs the words after the program's name.
[[nodiscard]] Reply run(const std::vector<std::string>& words);

// Each reads its files, and yields what the program prints.
Reply runAssess(const Arguments& arguments);
Reply runExplain(const Arguments& arguments);
Reply runKnowledge(const Arguments& arguments);
Reply runBackup(const Arguments& arguments);
Reply runRestore(const Arguments& arguments);
Reply runVerify(const Arguments& arguments);
Reply runPatients(const Arguments& arguments);
Reply runPerson(const Arguments& arguments);
Reply runUsers(const Arguments& arguments);
Reply runCheck(const Arguments& arguments);
Reply runSummary(const Arguments& arguments);
Reply runCompare(const Arguments& arguments);
Reply runExport(const Arguments& arguments);
Reply runImport(const Arguments& arguments);
Reply runDemo(const Arguments& arguments);
Reply runCatalogue(const Arguments& arguments);

} // namespace rhizograph::cli
