#include "record/clock.h"

#include <fmt/format.h>

namespace rhizograph {

Clock systemClock() {
    return [] { return std::chrono::system_clock::now(); };
}

std::string utcDate(TimePoint time) {
    const std::chrono::year_month_day day{std::chrono::floor<std::chrono::days>(time)};
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                       static_cast<unsigned>(day.day()));
}

std::string utcText(TimePoint time) {
    const auto midnight = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::hh_mm_ss clock{std::chrono::floor<std::chrono::seconds>(time - midnight)};
    return fmt::format("{}T{:02}:{:02}:{:02}Z", utcDate(time), clock.hours().count(), clock.minutes().count(),
                       clock.seconds().count());
}

std::int64_t unixSeconds(TimePoint time) {
    return std::chrono::duration_cast<std::chrono::seconds>(time.time_since_epoch()).count();
}

} // namespace rhizograph
