#include "reasoning/model.h"

namespace rhizograph {

double Curve::operator()(double x) const {
    if (points_.empty()) return 0;
    if (x <= points_.front().first) return points_.front().second;
    for (std::size_t i = 1; i < points_.size(); ++i) {
        if (x > points_[i].first) continue;
        const auto& [x0, y0] = points_[i - 1];
        const auto& [x1, y1] = points_[i];
        return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
    }
    return points_.back().second;
}

int Model::ageBand(std::optional<int> age) const {
    if (!age) return ageBandUnknown;
    return *age < ageLimits[0] ? 0 : *age < ageLimits[1] ? 1 : 2;
}

} // namespace rhizograph
