#pragma once

#include "casesreport/score.h"

namespace rhizograph::casesreport {

/// How fast the true site comes to lead when a case's findings are revealed one by one, beginning with what
/// the intake and the walk give.
struct Revealed {
    std::vector<std::size_t>
        suggested; ///< by case: findings revealed, the engine's suggestion first each time
    std::vector<std::size_t> catalogue; ///< the same in the order of the catalogue
    std::size_t never = 0;              ///< cases whose true site does not lead with everything revealed
};

[[nodiscard]] Revealed reveal(const std::vector<Case>& cases, const Knowledge& knowledge);
/// A table: share of cases that lead after so many findings, in both orders, and the means.
[[nodiscard]] std::string curve(const Revealed& revealed);

} // namespace rhizograph::casesreport
