#pragma once

#include <cmath>
#include <vector>

namespace rhizograph {

[[nodiscard]] inline double normalBelow(double x) {
    return 0.5 * std::erfc(-x / std::sqrt(2.0));
}

[[nodiscard]] inline double logistic(double x) {
    return 1 / (1 + std::exp(-x));
}

/// Masses of a normal distribution between the midpoints of neighbouring grades (rising), the ends open.
[[nodiscard]] inline std::vector<double> gradeMasses(const std::vector<double>& grades, double mean,
                                                     double sd) {
    std::vector<double> out;
    double below = 0;
    for (std::size_t i = 0; i + 1 < grades.size(); ++i) {
        const double border = normalBelow(((grades[i] + grades[i + 1]) / 2 - mean) / sd);
        out.push_back(border - below);
        below = border;
    }
    out.push_back(1 - below);
    return out;
}

} // namespace rhizograph
