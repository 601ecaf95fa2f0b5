#include "base/date.h"

#include <algorithm>
#include <charconv>
#include <fmt/format.h>

namespace rhizograph {
namespace {

namespace chrono = std::chrono;

std::optional<int> digits(std::string_view text) {
    const bool plain = std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    int number = 0;
    if (!plain || std::from_chars(text.data(), text.data() + text.size(), number).ec != std::errc{})
        return std::nullopt;
    return number;
}

} // namespace

std::optional<chrono::year_month_day> dateFrom(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day) return std::nullopt;
    const chrono::year_month_day date{chrono::year{*year}, chrono::month{static_cast<unsigned>(*month)},
                                      chrono::day{static_cast<unsigned>(*day)}};
    return date.ok() ? std::optional{date} : std::nullopt;
}

std::string dateText(chrono::year_month_day date) {
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

std::optional<int> daysBetween(std::string_view earlier, std::string_view later) {
    const auto from = dateFrom(earlier);
    const auto to = dateFrom(later);
    if (!from || !to) return std::nullopt;
    return static_cast<int>((chrono::sys_days{*to} - chrono::sys_days{*from}).count());
}

std::optional<int> ageOn(std::string_view birth, std::string_view day) {
    const auto born = dateFrom(birth);
    const auto now = dateFrom(day);
    if (!born || !now || *now < *born) return std::nullopt;
    const int years = static_cast<int>(now->year()) - static_cast<int>(born->year());
    const bool reached =
        now->month() > born->month() || (now->month() == born->month() && now->day() >= born->day());
    return reached ? years : years - 1;
}

} // namespace rhizograph
