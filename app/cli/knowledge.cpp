#include "cli/commands.h"
#include "cli/load.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph::cli {

Reply runKnowledge(const Arguments&) {
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto& items = knowledge->catalogue().items();
    const auto core =
        std::count_if(items.begin(), items.end(), [](const Item& item) { return item.tier == Tier::core; });
    const Assessment empty = assess(Exam{}, *knowledge);
    return done(fmt::format(
        "version {}\nsteps {}\nitems {}\ncore items {}\nsites at 0.01 or more before any finding {}\n",
        knowledge->version(), knowledge->catalogue().steps().size(), items.size(), core,
        empty.localization.size()));
}

} // namespace rhizograph::cli
