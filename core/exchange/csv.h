#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

namespace rhizograph {

/// A field as RFC 4180 wants it: quoted where it holds a comma, a quote or a line break.
[[nodiscard]] std::string csvField(std::string_view text);
/// A field that a person may open in a spreadsheet: text that begins like a formula is made harmless by a
/// leading apostrophe.
[[nodiscard]] std::string csvText(std::string_view text);
/// A row of fields already encoded, ended with CR LF.
[[nodiscard]] std::string csvRow(std::initializer_list<std::string> fields);

} // namespace rhizograph
