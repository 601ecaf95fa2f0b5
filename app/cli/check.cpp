#include "catalogue/catalogue.h"
#include "cli/commands.h"
#include "cli/resources.h"
#include "exchange/examfile.h"

#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

Result<Catalogue> shippedCatalogue() {
    const auto resources = findResources();
    if (!resources) return resources.problems();
    return loadCatalogue(*resources / "knowledge" / "catalogue.json");
}

std::string values(const Scale& scale) {
    if (scale.numeric()) return fmt::format("{}..{} {}", scale.minimum, scale.maximum, scale.unit);
    if (!scale.listed()) return "text";
    std::string out;
    for (const ScaleValue& value : scale.values)
        out += (out.empty() ? "" : "|") + value.token;
    return out;
}

} // namespace

Reply runCheck(const Arguments& arguments) {
    const auto catalogue = shippedCatalogue();
    if (!catalogue) return failed(catalogue.problems());
    const auto exam = readExamFile(arguments.files[0], *catalogue);
    if (!exam) return refused(exam.problems());
    return done(
        fmt::format("{}: valid, {} findings\n", printable(arguments.files[0]), exam->findings().size()));
}

Reply runCatalogue(const Arguments&) {
    const auto catalogue = shippedCatalogue();
    if (!catalogue) return failed(catalogue.problems());
    std::string out;
    for (const Item& item : catalogue->items())
        out += fmt::format("{}\t{}\t{}\t{}\n", item.id.text(), item.sided ? "left|right" : "",
                           values(item.scale), item.label);
    return done(out);
}

} // namespace rhizograph::cli
