#pragma once

#include <chrono>
#include <cstdint>
#include <functional>
#include <string>

namespace rhizograph {

using TimePoint = std::chrono::system_clock::time_point;

/// Where the record takes the time from; tests put in their own.
using Clock = std::function<TimePoint()>;

[[nodiscard]] Clock systemClock();

/// UTC, ISO 8601 to the second: "2026-03-04T09:30:00Z".
[[nodiscard]] std::string utcText(TimePoint time);
/// UTC calendar date: "2026-03-04".
[[nodiscard]] std::string utcDate(TimePoint time);
[[nodiscard]] std::int64_t unixSeconds(TimePoint time);

} // namespace rhizograph
