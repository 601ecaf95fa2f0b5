#pragma once

#include "record/model.h"

#include <string>
#include <variant>
#include <vector>

namespace rhizograph {

struct PlanChange {
    std::string text;
};
struct NoteAdded {
    std::string text;
};
struct SignAcknowledged {
    std::string sign;
    std::string urgency;
};
struct OpenRedSigns {
    int count = 0;
};
struct WorseFindings {
    int count = 0;
};

/// One thing to be written to a visit: what the app hands to the writer, and what is kept when it cannot be
/// saved.
struct UnsavedChange {
    VisitId visit;
    std::variant<std::vector<FindingChange>, PlanChange, NoteAdded, SignAcknowledged, OpenRedSigns,
                 WorseFindings>
        what;
};

/// Bytes for the sealed file of unsaved changes.
[[nodiscard]] std::string packUnsaved(const std::vector<UnsavedChange>& changes);
/// Throws RecordError (damaged) on anything packUnsaved did not write.
[[nodiscard]] std::vector<UnsavedChange> unpackUnsaved(std::string_view bytes);

} // namespace rhizograph
