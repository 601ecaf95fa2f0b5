#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace rhizograph {

/// The patient's own side. Findings use none, left and right; sites may also lie on both.
enum class Side { none, left, right, both };

/// "none", "left", "right", "both": the words of the file contracts.
[[nodiscard]] std::string_view name(Side side);
[[nodiscard]] std::optional<Side> sideNamed(std::string_view word);
/// Left and right exchanged; none and both stay.
[[nodiscard]] Side mirrored(Side side);

} // namespace rhizograph
