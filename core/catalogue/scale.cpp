#include "catalogue/scale.h"

#include <algorithm>
#include <cmath>

namespace rhizograph {

std::optional<std::size_t> Scale::index(const std::string& token) const {
    for (std::size_t i = 0; i < values.size(); ++i)
        if (values[i].token == token) return i;
    return std::nullopt;
}

std::size_t Scale::judged() const {
    if (!normal) return values.size();
    const auto plain = [](const ScaleValue& value) { return value.look == Look::plain; };
    return static_cast<std::size_t>(std::find_if(values.begin(), values.end(), plain) - values.begin());
}

int Scale::decimals() const {
    int digits = 0;
    for (double step10 = step; digits < 3 && step10 > 0 && std::abs(step10 - std::round(step10)) > 1e-9;
         step10 *= 10)
        ++digits;
    return digits;
}

} // namespace rhizograph
