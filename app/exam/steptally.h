#pragma once

#include "shell/visitsession.h"

#include <string>

namespace rhizograph::app {

/// How far a step is: items, not findings. A sided item is recorded when both sides are.
struct StepTally {
    int shown = 0;    ///< items of the everyday examination and those that came forward
    int recorded = 0; ///< of these
    int abnormal = 0; ///< findings of the step that read as abnormal
};

/// For the ring of the step. A test the engine merely suggests shows on the page but does not count until it
/// is recorded, else no ring would ever close. A drawing counts as one item, recorded as soon as anything is
/// marked.
[[nodiscard]] StepTally stepTally(const VisitSession& session, const std::string& stepId);

/// Whether the item was recorded on every side it has.
[[nodiscard]] bool recordedWhole(const Exam& exam, const Item& item);
[[nodiscard]] bool recordedAtAll(const Exam& exam, const Item& item);

/// Whether an item shows without being asked for: everyday items, warning questions still open, what was
/// recorded now or at the last visit.
[[nodiscard]] bool countsAsShown(const VisitSession& session, const Item& item);
/// The same and the tests the engine suggests now.
[[nodiscard]] bool comesForward(const VisitSession& session, const Item& item);

/// Whether the items of this group are what a patient draws on the figures.
[[nodiscard]] bool isDrawing(const Catalogue& catalogue, const Group& group);
/// Whether this group is shown as skin figures rather than as rows: regions, and too many for rows.
[[nodiscard]] bool isSkin(const Catalogue& catalogue, const Group& group);

} // namespace rhizograph::app
