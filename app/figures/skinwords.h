#pragma once

#include "figures/skinlayer.h"

#include <QString>

namespace rhizograph::app {

/// A region with its side as it stands in lists and is read aloud: "Left great toe".
[[nodiscard]] QString regionWords(const SkinLayer& layer, const RegionKey& region);
/// The same with its layer and what is recorded there.
[[nodiscard]] QString spokenRegion(const SkinLayer& layer, const RegionKey& region,
                                   const std::optional<Value>& value);

} // namespace rhizograph::app
