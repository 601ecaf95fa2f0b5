#pragma once

#include "base/strong.h"

#include <string>
#include <vector>

namespace rhizograph {

class Knowledge;

/// Skin regions of which the site takes a good part when it is complete, by name; for drawing its territory.
[[nodiscard]] std::vector<std::string> territory(const Knowledge& knowledge, const SiteId& site);

} // namespace rhizograph
