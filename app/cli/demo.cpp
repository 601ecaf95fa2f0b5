#include "cli/commands.h"
#include "cli/load.h"
#include "cli/resources.h"
#include "exchange/democlinic.h"

#include <filesystem>
#include <fmt/format.h>

namespace rhizograph::cli {

Reply runDemo(const Arguments& arguments) {
    const auto file = arguments.option("--database");
    if (!file) return refused({Problem{"", "--database", "names no file for the demo clinic"}});
    std::error_code error;
    if (std::filesystem::exists(std::filesystem::symlink_status(*file, error)))
        return refused({Problem{*file, "", "exists already; a demo clinic takes a new file"}});
    const auto resources = findResources();
    if (!resources) return failed(resources.problems());
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto made =
        createDemoClinic(*file, *resources / "demo" / "clinic.json", *knowledge, systemClock()());
    if (!made) return failed(made.problems());
    std::string out =
        fmt::format("{}: {} invented patients with {} visits. Nothing in it is real; keep no real patient "
                    "in it.\nPassphrase of everyone: {}\n",
                    printable(*file), made->patients, made->visits, made->passphrase);
    for (const DemoUser& user : made->users)
        out += fmt::format("  {} ({})\n", user.name, name(user.role));
    return done(out);
}

} // namespace rhizograph::cli
