#include "exchange/patientlist.h"

#include "base/date.h"
#include "record/patientindex.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <fmt/format.h>
#include <map>
#include <set>

namespace rhizograph {
namespace {

constexpr std::array<std::string_view, listFields> kNames = {
    "name", "given_name", "family_name", "record_number", "birth_date", "sex", "contact", "notes"};

/// What people write above such columns, folded, without blanks and signs.
const std::map<std::string, ListField>& usualHeads() {
    static const std::map<std::string, ListField> heads = {
        {"name", ListField::name},
        {"patient", ListField::name},
        {"patientname", ListField::name},
        {"fullname", ListField::name},
        {"givenname", ListField::givenName},
        {"firstname", ListField::givenName},
        {"forename", ListField::givenName},
        {"familyname", ListField::familyName},
        {"lastname", ListField::familyName},
        {"surname", ListField::familyName},
        {"recordnumber", ListField::recordNumber},
        {"recordno", ListField::recordNumber},
        {"record", ListField::recordNumber},
        {"number", ListField::recordNumber},
        {"patientid", ListField::recordNumber},
        {"patientnumber", ListField::recordNumber},
        {"id", ListField::recordNumber},
        {"birthdate", ListField::birthDate},
        {"dateofbirth", ListField::birthDate},
        {"born", ListField::birthDate},
        {"dob", ListField::birthDate},
        {"sex", ListField::sex},
        {"gender", ListField::sex},
        {"contact", ListField::contact},
        {"phone", ListField::contact},
        {"telephone", ListField::contact},
        {"address", ListField::contact},
        {"notes", ListField::notes},
        {"note", ListField::notes},
        {"remarks", ListField::notes},
    };
    return heads;
}

std::string bare(const std::string& text) {
    std::string out;
    for (const char c : folded(text))
        if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) out += c;
    return out;
}

/// ISO for a day written in this order with - / or . between; nothing when it is none.
std::optional<std::string> isoDay(const std::string& text, DateOrder order) {
    std::array<int, 3> parts{};
    std::array<std::size_t, 3> digits{};
    const char* at = text.data();
    const char* const end = text.data() + text.size();
    for (std::size_t i = 0; i < 3; ++i) {
        const auto [next, error] = std::from_chars(at, end, parts[i]);
        if (error != std::errc{} || *at == '-' || *at == '+') return std::nullopt;
        digits[i] = static_cast<std::size_t>(next - at);
        at = next;
        if (i == 2) break;
        if (at == end || std::string_view{"-/."}.find(*at) == std::string_view::npos) return std::nullopt;
        ++at;
    }
    const std::size_t year = order == DateOrder::yearMonthDay ? 0 : 2;
    if (at != end || digits[year] != 4) return std::nullopt;
    const std::size_t month = order == DateOrder::monthDayYear ? 0 : 1;
    const std::size_t day = 3 - year - month;
    const std::string iso = fmt::format("{:04}-{:02}-{:02}", parts[year], parts[month], parts[day]);
    return dateFrom(iso) ? std::optional{iso} : std::nullopt;
}

std::optional<std::string> sexOf(const std::string& text) {
    const std::string word = bare(text);
    if (word.empty()) return "";
    for (const auto& [given, sex] : {std::pair{"f", "female"},
                                     {"female", "female"},
                                     {"woman", "female"},
                                     {"m", "male"},
                                     {"male", "male"},
                                     {"man", "male"},
                                     {"o", "other"},
                                     {"other", "other"}})
        if (word == given) return sex;
    return std::nullopt;
}

class ListReader {
public:
    ListReader(const CsvTable& table, const std::string& file, const ListMapping& mapping,
               const std::vector<Patient>& known)
        : table_(table), file_(file), mapping_(mapping) {
        for (const Patient& patient : known)
            if (!patient.identity.recordNumber.empty()) known_.insert(patient.identity.recordNumber);
    }

    ListPreview read() {
        if (!checkMapping()) return std::move(out_);
        for (const CsvTable::Row& row : table_.rows) {
            const std::size_t before = out_.problems.size();
            Identity identity = identityOf(row);
            if (out_.problems.size() == before)
                out_.ready.push_back({row.line, std::move(identity)});
            else
                ++out_.bad;
        }
        return std::move(out_);
    }

private:
    bool checkMapping() {
        std::set<ListField> used;
        for (const auto& field : mapping_.columns)
            if (field && !used.insert(*field).second)
                fail(1, fmt::format("two columns are taken as \"{}\"", name(*field)));
        if (!used.contains(ListField::name) && !used.contains(ListField::familyName) &&
            !used.contains(ListField::givenName))
            fail(1, "no column is taken as the name");
        return out_.problems.empty();
    }

    void fail(int line, const std::string& reason) {
        out_.problems.push_back({file_, fmt::format("line {}", line), reason});
    }

    [[nodiscard]] std::string text(const CsvTable::Row& row, ListField field) const {
        for (std::size_t i = 0; i < mapping_.columns.size() && i < row.fields.size(); ++i)
            if (mapping_.columns[i] == field) return row.fields[i];
        return {};
    }

    Identity identityOf(const CsvTable::Row& row) {
        Identity out;
        out.name = text(row, ListField::name);
        for (const ListField part : {ListField::givenName, ListField::familyName})
            if (const std::string word = text(row, part); !word.empty())
                out.name += (out.name.empty() ? "" : " ") + word;
        out.recordNumber = text(row, ListField::recordNumber);
        out.contact = text(row, ListField::contact);
        out.notes = text(row, ListField::notes);
        if (out.name.empty()) fail(row.line, "has no name");
        const std::string born = text(row, ListField::birthDate);
        if (const auto day = isoDay(born, mapping_.dates))
            out.birthDate = *day;
        else if (!born.empty())
            fail(row.line, "\"" + born + "\" is no date of birth as the list is said to write them");
        const std::string sex = text(row, ListField::sex);
        if (const auto word = sexOf(sex))
            out.sex = *word;
        else
            fail(row.line, "\"" + sex + "\" is none of female, male, other");
        checkNumber(row.line, out.recordNumber);
        return out;
    }

    void checkNumber(int line, const std::string& number) {
        if (number.empty()) return;
        if (known_.contains(number))
            fail(line, "a patient of the clinic has the record number \"" + number + "\"");
        const auto [first, fresh] = lines_.emplace(number, line);
        if (!fresh)
            fail(line, fmt::format("the record number \"{}\" stands in line {} too", number, first->second));
    }

    const CsvTable& table_;
    const std::string& file_;
    const ListMapping& mapping_;
    std::set<std::string> known_;
    std::map<std::string, int> lines_;
    ListPreview out_;
};

} // namespace

std::string_view name(ListField field) {
    return kNames.at(static_cast<std::size_t>(field));
}

std::optional<ListField> listFieldNamed(std::string_view word) {
    for (std::size_t i = 0; i < kNames.size(); ++i)
        if (kNames[i] == word) return static_cast<ListField>(i);
    return std::nullopt;
}

ListMapping guessedMapping(const CsvTable& table) {
    ListMapping out;
    std::set<ListField> used;
    for (const std::string& head : table.head) {
        const auto found = usualHeads().find(bare(head));
        const bool take = found != usualHeads().end() && used.insert(found->second).second;
        out.columns.push_back(take ? std::optional{found->second} : std::nullopt);
    }
    return out;
}

ListPreview previewList(const CsvTable& table, const std::string& file, const ListMapping& mapping,
                        const std::vector<Patient>& known) {
    return ListReader{table, file, mapping, known}.read();
}

Outcome importList(Store& store, const ListPreview& preview) {
    return store.together([&]() -> Outcome {
        for (const ListPreview::Entry& entry : preview.ready)
            if (const auto added = store.addPatient(entry.identity); !added) {
                Problems problems = added.problems();
                for (Problem& problem : problems)
                    problem.place = fmt::format("line {}", entry.line);
                return problems;
            }
        return store.log(AuditAction::imported, "",
                         fmt::format("{} patients of a list", preview.ready.size()));
    });
}

} // namespace rhizograph
