#include "cli/commands.h"
#include "cli/load.h"
#include "exchange/assessmentjson.h"

namespace rhizograph::cli {

Reply runAssess(const Arguments& arguments) {
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto visit = readVisit(arguments, knowledge->catalogue());
    if (!visit) return refused(visit.problems());
    return done(assessmentToJson(assess(visit->exam, *knowledge, visit->before())).dump(1) + "\n");
}

} // namespace rhizograph::cli
