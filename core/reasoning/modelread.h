#pragma once

#include "base/json.h"
#include "reasoning/model.h"

namespace rhizograph {

/// What the readers of the model files share: the catalogue and anatomy to resolve names against.
struct ModelContext {
    const Catalogue& catalogue;
    const Anatomy& anatomy;
};

/// A list of [x, y] points with x rising.
Curve readCurve(const JsonNode& node);
/// A distribution: numbers in [0, 1] that add to 1, `size` of them when not 0.
Row readRow(const JsonNode& node, std::size_t size);
/// An item the catalogue has.
ItemId readItemId(const JsonNode& node, const ModelContext& context);
/// How many values the item can take for the model: those of its scale, or one more than there are bins.
std::size_t valueCount(const JsonNode& node, const ItemId& item, const std::vector<double>& bins,
                       const ModelContext& context);
NodeIndex readNodeIndex(const JsonNode& place, const std::string& name, const ModelContext& context);
std::size_t readTarget(const JsonNode& place, TargetKind kind, const std::string& name,
                       const ModelContext& context);

void readObservation(const JsonNode& root, const ModelContext& context, Model& model);
void readSites(const JsonNode& root, const ModelContext& context, Model& model);

} // namespace rhizograph
