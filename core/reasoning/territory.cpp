#include "reasoning/territory.h"

#include "reasoning/knowledge.h"
#include "reasoning/localizer.h"

namespace rhizograph {

std::vector<std::string> territory(const Knowledge& knowledge, const SiteId& site) {
    return knowledge.localizer().territory(site);
}

} // namespace rhizograph
