#pragma once

#include "figures/skinlayer.h"
#include "shell/visitsession.h"

#include <map>

namespace rhizograph::app {

/// A brush over one layer: values painted so far but not yet recorded. Lifting the finger records them all as
/// one undo step; until then they only show.
class SkinStroke {
public:
    void begin(const SkinLayer& layer, std::optional<Value> brush);
    void paint(const RegionKey& region);
    void cancel();
    [[nodiscard]] bool active() const { return layer_ != nullptr; }
    /// Hands what was painted to the visit; the stroke is over.
    void record(VisitSession& session);
    [[nodiscard]] const std::map<RegionKey, std::optional<Value>>& painted() const { return painted_; }

private:
    const SkinLayer* layer_ = nullptr;
    std::optional<Value> brush_;
    std::map<RegionKey, std::optional<Value>> painted_;
};

/// The value recorded for a region on a layer.
[[nodiscard]] std::optional<Value> recorded(const SkinLayer& layer, const RegionKey& region,
                                            const Exam& exam);

/// What a bulk fill of the layer records: the normal value for every region that shows and is unexamined,
/// never for a region of the saddle, which is marked one by one or not at all.
[[nodiscard]] std::vector<FindingChange> fillNormal(const SkinLayer& layer, const FigureArt& art,
                                                    const Exam& exam);

} // namespace rhizograph::app
