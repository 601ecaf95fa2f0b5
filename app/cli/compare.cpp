#include "cli/commands.h"
#include "cli/load.h"
#include "cli/output.h"
#include "exchange/comparison.h"
#include "exchange/examfile.h"

#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

enum class Format { text, json, csv };

Result<Format> formatOf(const Arguments& arguments) {
    const std::string word = arguments.option("--format").value_or("text");
    if (word == "text") return Format::text;
    if (word == "json") return Format::json;
    if (word == "csv") return Format::csv;
    return Problem{"", "--format", "\"" + word + "\" is none of text, json, csv"};
}

/// The visits in the order given; a dated one must not lie before the dated one named before it.
Result<std::vector<Exam>> readVisits(const std::vector<std::string>& files, const Catalogue& catalogue) {
    std::vector<Exam> out;
    Problems problems;
    std::string last;
    for (const std::string& file : files) {
        auto exam = readExamFile(file, catalogue);
        if (!exam) {
            problems.insert(problems.end(), exam.problems().begin(), exam.problems().end());
            continue;
        }
        if (!exam->date.empty() && exam->date < last)
            problems.push_back(
                {file, "/visit/date", "lies before " + last + ": name the visits oldest first"});
        if (!exam->date.empty()) last = exam->date;
        out.push_back(std::move(exam).value());
    }
    if (!problems.empty()) return problems;
    return out;
}

std::string said(const std::vector<Exam>& visits, const Knowledge& knowledge, Format format) {
    const Wording words{knowledge, Units::metric};
    if (visits.size() == 1) {
        const auto sides = compareSides(visits[0], knowledge);
        return format == Format::text   ? sidesText(words, sides)
               : format == Format::json ? sidesToJson(sides).dump(1) + "\n"
                                        : sidesCsv(sides);
    }
    if (visits.size() == 2) {
        const auto comparison = compareVisits(visits[0], visits[1], knowledge);
        return format == Format::text   ? comparisonText(words, comparison)
               : format == Format::json ? comparisonToJson(comparison).dump(1) + "\n"
                                        : comparisonCsv(comparison);
    }
    const auto trend = trendOf(visits, knowledge);
    return format == Format::text   ? trendText(words, trend)
           : format == Format::json ? trendToJson(trend).dump(1) + "\n"
                                    : trendCsv(trend);
}

} // namespace

Reply runCompare(const Arguments& arguments) {
    const auto format = formatOf(arguments);
    if (!format) return refused(format.problems());
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto visits = readVisits(arguments.files, knowledge->catalogue());
    if (!visits) return refused(visits.problems());
    return deliver(arguments, said(*visits, *knowledge, *format));
}

} // namespace rhizograph::cli
