#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace rhizograph {

/// A calendar date written as ISO 8601 "YYYY-MM-DD" with four, two and two digits; nothing when the text has
/// another shape or names a day that does not exist (2026-02-29).
[[nodiscard]] std::optional<std::chrono::year_month_day> dateFrom(std::string_view text);

/// "YYYY-MM-DD".
[[nodiscard]] std::string dateText(std::chrono::year_month_day date);

/// Whole days from `earlier` to `later`; negative when they stand the other way round. Nothing when either
/// text is no date.
[[nodiscard]] std::optional<int> daysBetween(std::string_view earlier, std::string_view later);

/// Completed years of life on `day` of someone born on `birth`; nothing when either is no date or `day` lies
/// before `birth`. Someone born on 29 February completes a year on 1 March of other years.
[[nodiscard]] std::optional<int> ageOn(std::string_view birth, std::string_view day);

} // namespace rhizograph
