#include "base/problem.h"

namespace rhizograph {

std::string Problem::text() const {
    std::string out;
    for (const std::string* part : {&file, &place, &reason}) {
        if (part->empty()) continue;
        if (!out.empty()) out += ": ";
        out += *part;
    }
    return out;
}

} // namespace rhizograph
