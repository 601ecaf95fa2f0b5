#pragma once

#include "exam/exam.h"
#include "exam/examoptions.h"

#include <QString>

namespace rhizograph::app {

/// "right", "left"; empty for no side.
[[nodiscard]] QString sideWord(Side side);
/// "normal", "reduced", "marked", "heightened"; empty for plain.
[[nodiscard]] QString lookWord(Look look);
/// "cast_or_brace" as "cast or brace".
[[nodiscard]] QString reasonWord(const std::string& reason);
/// A value as written on its button or field.
[[nodiscard]] QString valueText(const Scale& scale, const Value& value, LengthUnit length);
/// A value as spoken: a grade with what it means ("1, reduced"), a word as it is.
[[nodiscard]] QString valueSpoken(const Scale& scale, const Value& value, LengthUnit length);
/// "Ankle reflex, left".
[[nodiscard]] QString findingName(const Item& item, Side side);

} // namespace rhizograph::app
