#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace rhizograph {

/// The patient's own side. Findings use none, left and right; sites may also lie on both.
enum class Side { none, left, right, both };

/// The two sides of the body.
inline constexpr std::array<Side, 2> kSides{Side::left, Side::right};

/// "none", "left", "right", "both": the words of the file contracts.
[[nodiscard]] std::string_view name(Side side);
[[nodiscard]] std::optional<Side> sideNamed(std::string_view word);
/// Left and right exchanged; none and both stay.
[[nodiscard]] Side mirrored(Side side);

} // namespace rhizograph
