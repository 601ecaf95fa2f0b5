#include "cli/load.h"

#include "cli/resources.h"
#include "exchange/examfile.h"

namespace rhizograph::cli {

Result<Knowledge> loadKnowledge() {
    const auto resources = findResources();
    if (!resources) return resources.problems();
    return Knowledge::load(*resources / "knowledge");
}

Result<ExamPair> readVisit(const Arguments& arguments, const Catalogue& catalogue) {
    Problems problems;
    const auto read = [&](const std::string& file) -> std::optional<Exam> {
        auto exam = readExamFile(file, catalogue);
        if (exam) return std::move(exam).value();
        problems.insert(problems.end(), exam.problems().begin(), exam.problems().end());
        return std::nullopt;
    };
    auto exam = read(arguments.files[0]);
    const auto file = arguments.option("--previous");
    auto previous = file ? read(*file) : std::nullopt;
    if (exam && previous && !exam->date.empty() && previous->date > exam->date)
        problems.push_back({*file, "/visit/date", "lies after the date of " + arguments.files[0]});
    if (!problems.empty()) return problems;
    return ExamPair{std::move(*exam), std::move(previous)};
}

Result<bool> briefForm(const Arguments& arguments) {
    const std::string form = arguments.option("--form").value_or("full");
    if (form == "full" || form == "short") return form == "short";
    return Problem{"", "--form", "\"" + form + "\" is neither full nor short"};
}

} // namespace rhizograph::cli
