#pragma once

#include "exam/examoptions.h"
#include "figures/figureart.h"
#include "record/store.h"
#include "window/workpage.h"

#include <memory>

namespace rhizograph::app {

struct Territory;

/// The skin a site supplies on its side, by the name people read; no regions where it supplies none.
[[nodiscard]] Territory territoryOf(const VisitSession& session, const SiteId& site, Side side);
/// The same for every site of the impression that has skin of its own, most probable first.
[[nodiscard]] std::vector<Territory> territories(const VisitSession& session);

/// The pages of an open visit: one for each of the steps in this order, then comparison, trend and summary.
/// `sign` is called when the visit is to be signed. Session and store outlive the pages.
[[nodiscard]] std::vector<WorkPage> workPages(VisitSession& session, Store& store,
                                              const std::shared_ptr<const FigureArt>& art,
                                              const ExamOptions& options, const std::vector<StepId>& steps,
                                              const std::function<void()>& sign);

} // namespace rhizograph::app
