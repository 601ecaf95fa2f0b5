#pragma once

#include <cmath>
#include <vector>

namespace rhizograph {

[[nodiscard]] inline double normalBelow(double x) { return 0.5 * std::erfc(-x / std::sqrt(2.0)); }

[[nodiscard]] inline double logistic(double x) { return 1 / (1 + std::exp(-x)); }

/// Mass of a normal distribution between the midpoints of neighbouring grades (rising), the ends open.
[[nodiscard]] inline double gradeMass(const std::vector<double>& grades, std::size_t index, double mean, double sd) {
    const double above =
        index + 1 < grades.size() ? normalBelow(((grades[index] + grades[index + 1]) / 2 - mean) / sd) : 1;
    const double below = index > 0 ? normalBelow(((grades[index - 1] + grades[index]) / 2 - mean) / sd) : 0;
    return above - below;
}

} // namespace rhizograph
