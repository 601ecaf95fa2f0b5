#pragma once

#include "catalogue/howto.h"
#include "figures/figureart.h"
#include "reasoning/knowledge.h"
#include "record/store.h"
#include "shell/visitsession.h"
#include "window/queuedrecord.h"

#include <filesystem>
#include <future>
#include <memory>

namespace rhizograph::app {

/// What the program reads once: the medicine and the drawings.
struct Materials {
    Knowledge knowledge;
    std::shared_ptr<const FigureArt> art;
    std::shared_ptr<const HowTos> howTos;

    static Result<Materials> load(const std::filesystem::path& resources);
};

/// What the program reads once its first window is on the screen: whoever asks first reads, the others wait.
using PromisedMaterials = std::shared_future<Result<Materials>>;
[[nodiscard]] PromisedMaterials loadMaterials(const std::filesystem::path& resources);
/// A promise that is kept already.
[[nodiscard]] PromisedMaterials promised(Result<Materials> materials);

/// The folder with knowledge/ and figures/: $RHIZOGRAPH_RESOURCES, or beside the installed program.
[[nodiscard]] std::filesystem::path resourceFolder();

/// A visit as it is open in the program: its session and the thread that stores it (none where it is read
/// only).
struct OpenVisit {
    std::unique_ptr<QueuedRecord> record;
    std::unique_ptr<VisitSession> session; ///< uses record, so it goes first
};

/// Opens a visit for the signed-in user. It is read only when it is signed, the user's role records nothing,
/// or it is only to be read. What it is compared with is the latest earlier value of each finding.
Result<OpenVisit> openVisit(Store& store, const Knowledge& knowledge, const VisitId& id,
                            bool onlyRead = false);

} // namespace rhizograph::app
