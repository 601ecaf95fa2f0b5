#pragma once

#include "reasoning/assessment.h"

#include <optional>
#include <string_view>

namespace rhizograph {

/// "note", "urgent", "emergency": the words of the file contracts.
[[nodiscard]] std::string_view name(Urgency urgency);
[[nodiscard]] std::optional<Urgency> urgencyNamed(std::string_view word);

/// "not_examined", "low", "raised", "high".
[[nodiscard]] std::string_view name(ScreenVerdict verdict);
[[nodiscard]] std::optional<ScreenVerdict> screenVerdictNamed(std::string_view word);

} // namespace rhizograph
