#pragma once

#include "base/problem.h"

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace rhizograph {

/// A field as RFC 4180 wants it: quoted where it holds a comma, a quote or a line break.
[[nodiscard]] std::string csvField(std::string_view text);
/// A field that a person may open in a spreadsheet: text that begins like a formula is made harmless by a
/// leading apostrophe.
[[nodiscard]] std::string csvText(std::string_view text);
/// A row of fields already encoded, ended with CR LF.
[[nodiscard]] std::string csvRow(std::initializer_list<std::string> fields);

/// A table from outside: a head and rows of the same width.
struct CsvTable {
    struct Row {
        int line = 0; ///< where it begins in the file, from 1
        std::vector<std::string> fields;
    };
    std::vector<std::string> head;
    std::vector<Row> rows; ///< rows without any text are left out
};

/// Reads a table (RFC 4180) of UTF-8 with commas, semicolons or tabs, whichever the head has most; a byte
/// order mark is passed over. Refused with its line: another encoding, control characters, a quote that does
/// not end or stands within a field, a row of another width, a head with an empty or double name, more than
/// 50,000 rows or 100 columns.
Result<CsvTable> parseCsv(std::string_view text, const std::string& file);

} // namespace rhizograph
