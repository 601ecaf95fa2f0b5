#include "reasoning/names.h"

namespace rhizograph {

std::string_view name(Urgency urgency) {
    switch (urgency) {
    case Urgency::emergency:
        return "emergency";
    case Urgency::urgent:
        return "urgent";
    case Urgency::note:
        break;
    }
    return "note";
}

std::optional<Urgency> urgencyNamed(std::string_view word) {
    for (const Urgency urgency : {Urgency::note, Urgency::urgent, Urgency::emergency})
        if (name(urgency) == word) return urgency;
    return std::nullopt;
}

std::string_view name(ScreenVerdict verdict) {
    switch (verdict) {
    case ScreenVerdict::low:
        return "low";
    case ScreenVerdict::raised:
        return "raised";
    case ScreenVerdict::high:
        return "high";
    case ScreenVerdict::notExamined:
        break;
    }
    return "not_examined";
}

std::optional<ScreenVerdict> screenVerdictNamed(std::string_view word) {
    for (const ScreenVerdict verdict :
         {ScreenVerdict::notExamined, ScreenVerdict::low, ScreenVerdict::raised, ScreenVerdict::high})
        if (name(verdict) == word) return verdict;
    return std::nullopt;
}

} // namespace rhizograph
