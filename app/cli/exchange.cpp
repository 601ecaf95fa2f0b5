#include "base/json.h"
#include "cli/commands.h"
#include "cli/load.h"
#include "cli/output.h"
#include "cli/resources.h"
#include "exchange/examfile.h"
#include "exchange/fhir.h"
#include "record/clock.h"

namespace rhizograph::cli {
namespace {

Result<FhirCodes> loadCodes(const Catalogue& catalogue) {
    const auto resources = findResources();
    if (!resources) return resources.problems();
    return FhirCodes::load(*resources / "knowledge" / "fhir.json", catalogue);
}

Result<bool> withTexts(const Arguments& arguments) {
    const std::string word = arguments.option("--texts").value_or("no");
    if (word == "yes" || word == "no") return word == "yes";
    return Problem{"", "--texts", "\"" + word + "\" is neither yes nor no"};
}

} // namespace

Reply runExport(const Arguments& arguments) {
    const std::string format = arguments.option("--format").value_or("fhir");
    if (format != "fhir" && format != "csv")
        return refused({Problem{"", "--format", "\"" + format + "\" is neither fhir nor csv"}});
    const auto texts = withTexts(arguments);
    if (!texts) return refused(texts.problems());
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto exam = readExamFile(arguments.files[0], knowledge->catalogue());
    if (!exam) return refused(exam.problems());
    if (format == "csv") return deliver(arguments, examCsv(*exam, knowledge->catalogue(), *texts));
    const auto codes = loadCodes(knowledge->catalogue());
    if (!codes) return failed(codes.problems());
    const Assessment assessment = assess(*exam, *knowledge);
    const FhirVisit visit{*exam, assessment, randomUuid(), utcText(systemClock()()), RHIZOGRAPH_VERSION,
                          false};
    return deliver(arguments, fhirDocument(visit, *knowledge, *codes).dump(1) + "\n");
}

Reply runImport(const Arguments& arguments) {
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto text = readTextFile(arguments.files[0]);
    if (!text) return refused(text.problems());
    const auto exam = examFromFhir(*text, arguments.files[0], knowledge->catalogue());
    if (!exam) return refused(exam.problems());
    return deliver(arguments, examText(*exam, knowledge->catalogue()));
}

} // namespace rhizograph::cli
