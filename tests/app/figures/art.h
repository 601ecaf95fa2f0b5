#pragma once

#include "figures/figureart.h"

#include <memory>
#include <stdexcept>

namespace rhizograph::app {

/// The figures of the source tree; throws with the first problem when they do not load.
inline std::shared_ptr<const FigureArt> figures() {
    auto art = FigureArt::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "figures");
    if (!art) throw std::runtime_error(art.problems().front().text());
    return std::make_shared<const FigureArt>(std::move(*art));
}

} // namespace rhizograph::app
