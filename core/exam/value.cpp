#include "exam/value.h"

#include "exam/side.h"

#include <fmt/format.h>

namespace rhizograph {

std::string_view name(Side side) {
    switch (side) {
    case Side::left:
        return "left";
    case Side::right:
        return "right";
    case Side::both:
        return "both";
    case Side::none:
        break;
    }
    return "none";
}

std::optional<Side> sideNamed(std::string_view word) {
    for (const Side side : {Side::none, Side::left, Side::right, Side::both})
        if (name(side) == word) return side;
    return std::nullopt;
}

Side mirrored(Side side) {
    if (side == Side::left) return Side::right;
    if (side == Side::right) return Side::left;
    return side;
}

Look lookOf(const Scale& scale, const Value& value) {
    if (value.kind() == Value::Kind::token) {
        const auto index = scale.index(value.word());
        return index ? scale.values[*index].look : Look::plain;
    }
    if (value.isNumber() && scale.normalNumber)
        return value.number() == *scale.normalNumber ? Look::normal : Look::reduced;
    return Look::plain;
}

std::string display(const Scale& scale, const Value& value) {
    switch (value.kind()) {
    case Value::Kind::number:
        return fmt::format("{:.{}f}", value.number(), scale.decimals());
    case Value::Kind::token:
        if (const auto index = scale.index(value.word())) return scale.values[*index].label;
        return value.word();
    case Value::Kind::text:
        return value.word();
    case Value::Kind::notTestable:
        break;
    }
    return "not testable";
}

} // namespace rhizograph
