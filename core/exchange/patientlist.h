#pragma once

#include "exchange/csv.h"
#include "record/store.h"

#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

/// What a column of a list of patients can be.
enum class ListField { name, givenName, familyName, recordNumber, birthDate, sex, contact, notes };
constexpr std::size_t listFields = 8;

/// "name", "given_name", "family_name", "record_number", "birth_date", "sex", "contact", "notes".
[[nodiscard]] std::string_view name(ListField field);
[[nodiscard]] std::optional<ListField> listFieldNamed(std::string_view word);

/// How days are written in the list. 03/04/2026 can be read two ways, so it is never guessed.
enum class DateOrder { yearMonthDay, dayMonthYear, monthDayYear };

/// What each column holds; nothing for columns that are left out.
struct ListMapping {
    std::vector<std::optional<ListField>> columns;
    DateOrder dates = DateOrder::yearMonthDay;
};

/// The mapping as the head suggests it.
[[nodiscard]] ListMapping guessedMapping(const CsvTable& table);

/// What an import would do, before it is done.
struct ListPreview {
    struct Entry {
        int line = 0;
        Identity identity;
    };
    std::vector<Entry> ready;
    Problems problems; ///< one for each thing wrong, with its line; such rows are not among the ready
    int bad = 0;       ///< rows with a problem
};

/// Reads the rows by the mapping. A row without a name, with a day or sex that cannot be read, with a record
/// number that stands twice in the list or belongs to a patient already (`known`) is bad. A mapping that
/// names no one, or one field twice, is a problem of its own.
[[nodiscard]] ListPreview previewList(const CsvTable& table, const std::string& file,
                                      const ListMapping& mapping, const std::vector<Patient>& known);

/// Adds the patients that are ready, all or none, and notes the import in the audit.
Outcome importList(Store& store, const ListPreview& preview);

} // namespace rhizograph
