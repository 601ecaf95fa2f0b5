#include "figures/stroke.h"

#include "figures/skinwords.h"
#include "language/language.h"

namespace rhizograph::app {

void SkinStroke::begin(const SkinLayer& layer, std::optional<Value> brush) {
    layer_ = &layer;
    brush_ = std::move(brush);
    painted_.clear();
}

void SkinStroke::paint(const RegionKey& region) {
    if (layer_ != nullptr && layer_->key(region)) painted_.insert_or_assign(region, brush_);
}

void SkinStroke::cancel() {
    layer_ = nullptr;
    painted_.clear();
}

void SkinStroke::record(VisitSession& session) {
    if (layer_ == nullptr || painted_.empty()) return cancel();
    const SkinLayer& layer = *layer_;
    std::vector<FindingChange> changes;
    for (const auto& [region, value] : painted_) {
        const FindingKey key = *layer.key(region);
        const Finding* before = session.exam().find(key);
        std::optional<Finding> finding;
        if (value) finding = Finding{*value, false, before == nullptr ? std::string() : before->note};
        changes.push_back({key, std::move(finding)});
    }
    const QString where = painted_.size() == 1 ? regionWords(layer, painted_.begin()->first)
                                               : QObject::tr("%1 regions").arg(painted_.size());
    cancel(); // before the visit answers with findingsChanged, so that what is recorded shows
    session.change(medical(layer.label()) + QStringLiteral(": ") + where, std::move(changes));
}

std::optional<Value> recorded(const SkinLayer& layer, const RegionKey& region, const Exam& exam) {
    const auto key = layer.key(region);
    const Finding* finding = key ? exam.find(*key) : nullptr;
    return finding == nullptr ? std::nullopt : std::optional(finding->value);
}

std::vector<FindingChange> fillNormal(const SkinLayer& layer, const FigureArt& art, const Exam& exam) {
    std::vector<FindingChange> changes;
    const auto& normal = layer.scale().normal;
    for (const RegionKey& region : art.regions()) {
        const auto key = layer.key(region);
        if (!normal || !key || art.viewOf(region.region) == FigureView::saddle || exam.find(*key) != nullptr)
            continue;
        changes.push_back({*key, Finding{Value::token(*normal), true, {}}});
    }
    return changes;
}

} // namespace rhizograph::app
