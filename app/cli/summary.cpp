#include "cli/commands.h"
#include "cli/load.h"
#include "cli/output.h"
#include "cli/pageprogram.h"
#include "exchange/narrative.h"

#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

std::string heading(const Exam& exam) {
    std::string out;
    const auto add = [&](const std::string& part) {
        if (!part.empty()) out += (out.empty() ? "" : ", ") + part;
    };
    if (exam.subject.age) add(fmt::format("{} years", *exam.subject.age));
    add(exam.subject.sex);
    if (!exam.date.empty()) add("visit of " + exam.date);
    return out.empty() ? out : upperFirst(out) + "\n\n";
}

} // namespace

Reply runSummary(const Arguments& arguments) {
    const std::string format = arguments.option("--format").value_or("text");
    if (format == "pdf") return writePage(arguments);
    if (format != "text")
        return refused({Problem{"", "--format", "\"" + format + "\" is neither text nor pdf"}});
    if (arguments.option("--paper")) return refused({Problem{"", "--paper", "only a pdf has pages"}});
    const auto brief = briefForm(arguments);
    if (!brief) return refused(brief.problems());
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto visit = readVisit(arguments, knowledge->catalogue());
    if (!visit) return refused(visit.problems());
    const Assessment assessment = assess(visit->exam, *knowledge, visit->before());
    const Narrative whole = narrate(visit->exam, assessment, *knowledge, visit->before());
    return deliver(arguments, heading(visit->exam) + asText(*brief ? inShort(whole, *knowledge) : whole));
}

} // namespace rhizograph::cli
