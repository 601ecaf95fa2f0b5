#pragma once

#include "record/model.h"

#include <QString>

namespace rhizograph::app {

/// "24 Nov 2026" from an ISO 8601 date; the text itself when it is none.
[[nodiscard]] QString dayText(const std::string& isoDate);
/// "10:42" local time from a UTC time stamp; empty when it is none.
[[nodiscard]] QString timeText(const std::string& utc);
/// Today where this machine stands, ISO 8601.
[[nodiscard]] std::string today();
/// "52 y, man" on that day; only what is known, empty when nothing is.
[[nodiscard]] QString ageAndSex(const Identity& identity, const std::string& onDay);
/// "Not begun", "Intake, 14 recorded", "In the room", "To review", "Signed".
[[nodiscard]] QString stateText(const Visit& visit);
/// When and by whom: "since 10:15", "begun by …"; for the second line of a list.
[[nodiscard]] QString stateDetail(const Visit& visit);
/// "1 red sign", "2 red signs".
[[nodiscard]] QString redSignCount(int count);
/// "1 visit", "3 visits".
[[nodiscard]] QString visitCount(int count);
/// Problems as sentences for people, one a line.
[[nodiscard]] QString reasonText(const Problems& problems);

} // namespace rhizograph::app
