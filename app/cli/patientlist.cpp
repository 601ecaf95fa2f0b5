#include "exchange/patientlist.h"

#include "base/json.h"
#include "cli/commands.h"
#include "cli/recordaccess.h"

#include <algorithm>
#include <charconv>
#include <fmt/format.h>

namespace rhizograph::cli {
namespace {

constexpr std::size_t kShown = 5;     ///< rows of the preview
constexpr std::size_t kProblems = 50; ///< problems told; the rest is counted

Result<DateOrder> datesOf(const Arguments& arguments) {
    const std::string word = arguments.option("--dates").value_or("ymd");
    if (word == "ymd") return DateOrder::yearMonthDay;
    if (word == "dmy") return DateOrder::dayMonthYear;
    if (word == "mdy") return DateOrder::monthDayYear;
    return Problem{"", "--dates", "\"" + word + "\" is none of ymd, dmy, mdy"};
}

/// "name=2,birth_date=4": fields and the numbers of their columns; others are left out.
Result<ListMapping> mappingOf(const Arguments& arguments, const CsvTable& table) {
    ListMapping out = guessedMapping(table);
    if (const auto columns = arguments.option("--columns")) {
        std::fill(out.columns.begin(), out.columns.end(), std::nullopt);
        for (std::size_t at = 0; at <= columns->size();) {
            const std::size_t end = std::min(columns->find(',', at), columns->size());
            const std::string part = columns->substr(at, end - at);
            at = end + 1;
            const std::size_t equals = part.find('=');
            const auto field = listFieldNamed(part.substr(0, equals));
            std::size_t column = 0;
            const std::string number = equals == std::string::npos ? "" : part.substr(equals + 1);
            const auto [last, error] = std::from_chars(number.data(), number.data() + number.size(), column);
            if (!field || error != std::errc{} || last != number.data() + number.size() || column == 0 ||
                column > out.columns.size() || out.columns[column - 1])
                return Problem{
                    "", "--columns",
                    fmt::format("\"{}\" is not FIELD=COLUMN with a field of the list and a free column "
                                "from 1 to {}",
                                part, out.columns.size())};
            out.columns[column - 1] = *field;
        }
    }
    const auto dates = datesOf(arguments);
    if (!dates) return dates.problems();
    out.dates = *dates;
    return out;
}

std::string previewText(const CsvTable& table, const ListMapping& mapping, const ListPreview& preview) {
    std::string out;
    for (std::size_t i = 0; i < table.head.size(); ++i)
        out += fmt::format("column {}, \"{}\": {}\n", i + 1, printable(table.head[i]),
                           mapping.columns[i] ? name(*mapping.columns[i]) : "left out");
    for (std::size_t i = 0; i < std::min(kShown, preview.ready.size()); ++i) {
        const auto& [line, identity] = preview.ready[i];
        const auto orNone = [](const std::string& text) { return text.empty() ? "-" : printable(text); };
        out += fmt::format("line {}: {} | {} | {} | {}\n", line, printable(identity.name),
                           orNone(identity.recordNumber), orNone(identity.birthDate), orNone(identity.sex));
    }
    return out + fmt::format("{} patients ready, {} rows with problems\n", preview.ready.size(), preview.bad);
}

Problems fewest(Problems problems) {
    if (problems.size() <= kProblems) return problems;
    const std::size_t more = problems.size() - kProblems;
    problems.resize(kProblems);
    problems.push_back({"", "", fmt::format("and {} more", more)});
    return problems;
}

} // namespace

Reply runPatients(const Arguments& arguments) {
    const std::string write = arguments.option("--write").value_or("no");
    if (write != "no" && write != "all" && write != "ready")
        return refused({Problem{"", "--write", "\"" + write + "\" is none of no, all, ready"}});
    const std::string& file = arguments.files[0];
    const auto text = readTextFile(file);
    if (!text) return refused(text.problems());
    const auto table = parseCsv(*text, file);
    if (!table) return refused(fewest(table.problems()));
    const auto mapping = mappingOf(arguments, *table);
    if (!mapping) return refused(mapping.problems());
    const auto store = signInTo(arguments);
    if (!store) return refused(store.problems());
    const auto known = (*store)->searchPatients("", 10'000'000);
    if (!known) return because(known.problems(), (*store)->lastFailure());
    const ListPreview preview = previewList(*table, file, *mapping, *known);
    const std::string shown = previewText(*table, *mapping, preview);
    if (!preview.problems.empty() && write != "ready") {
        Reply reply = refused(fewest(preview.problems));
        reply.err = shown + reply.err + "Nothing was imported.\n";
        return reply;
    }
    Reply reply = done(shown);
    if (!preview.problems.empty()) reply.err = refused(fewest(preview.problems)).err;
    if (write == "no") {
        reply.out += "Nothing was imported: --write all does.\n";
        return reply;
    }
    if (preview.ready.empty())
        return refused({Problem{file, "", "no row is ready, so nothing was imported"}});
    const Outcome imported = importList(**store, preview);
    if (!imported) return because(imported.problems(), (*store)->lastFailure());
    reply.out += fmt::format("{} patients imported.\n", preview.ready.size());
    return reply;
}

} // namespace rhizograph::cli
