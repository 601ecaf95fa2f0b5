#include "figures/skinlayer.h"

#include <algorithm>
#include <cctype>
#include <set>
#include <stdexcept>

namespace rhizograph::app {
namespace {

/// Whether two abnormal values of the scale look alike, so that looks cannot tell them apart.
bool sharesLooks(const Scale& scale) {
    std::set<Look> seen;
    return std::ranges::any_of(scale.values, [&](const ScaleValue& value) {
        return value.token != scale.normal && !seen.insert(value.look).second;
    });
}

/// The marks of the drawing, for the abnormal values of a scale in its order.
constexpr std::array drawingMarks{SkinMark::waves, SkinMark::strokes, SkinMark::pluses, SkinMark::solid};

} // namespace

std::string lowered(const std::string& label) {
    std::string text = label;
    const bool capitals = text.size() > 1 && std::isupper(static_cast<unsigned char>(text[1])) != 0;
    if (!text.empty() && !capitals)
        text[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(text[0])));
    return text;
}

const Item* SkinLayer::item(const std::string& region) const {
    const auto found = items_.find(region);
    return found == items_.end() ? nullptr : found->second;
}

const Scale& SkinLayer::scale() const {
    return items_.begin()->second->scale;
}

std::optional<FindingKey> SkinLayer::key(const RegionKey& region) const {
    const Item* found = item(region.region);
    if (found == nullptr) return std::nullopt;
    return FindingKey{found->id, found->sided ? region.side : Side::none};
}

std::optional<RegionKey> SkinLayer::region(const FindingKey& key) const {
    const auto found =
        std::ranges::find_if(items_, [&](const auto& entry) { return entry.second->id == key.item; });
    if (found == items_.end()) return std::nullopt;
    return RegionKey{found->first, key.side};
}

SkinMark SkinLayer::mark(const Value& value) const {
    if (value.kind() != Value::Kind::token) return SkinMark::none;
    if (!drawn_) return markOf(lookOf(scale(), value));
    std::size_t place = 0;
    for (const auto& entry : scale().values) {
        if (entry.token == scale().normal) continue;
        if (entry.token == value.word()) return drawingMarks.at(std::min(place, drawingMarks.size() - 1));
        ++place;
    }
    return SkinMark::none;
}

SkinMark SkinLayer::mark(const RegionKey& region, const Exam& exam) const {
    const auto where = key(region);
    const Finding* finding = where ? exam.find(*where) : nullptr;
    return finding == nullptr ? SkinMark::none : mark(finding->value);
}

std::optional<Value> SkinLayer::next(const std::optional<Value>& value) const {
    const auto& values = scale().values;
    const auto at =
        value && value->kind() == Value::Kind::token ? scale().index(value->word()) : std::nullopt;
    const std::size_t following = at ? *at + 1 : 0;
    if (following >= values.size()) return std::nullopt;
    return Value::token(values[following].token);
}

std::string SkinLayer::regionName(const RegionKey& region) const {
    const Item* found = item(region.region);
    const std::string label = found == nullptr ? region.region : found->shortLabel;
    return (region.side == Side::left ? "Left " : "Right ") + lowered(label);
}

std::string SkinLayer::word(const std::optional<Value>& value) const {
    if (!value) return drawn_ ? "not marked" : "not examined";
    if (!value->testable()) return "not testable, " + value->word();
    return lowered(display(scale(), *value));
}

std::string SkinLayer::spoken(const RegionKey& region, const std::optional<Value>& value) const {
    return regionName(region) + ", " + lowered(label_) + ", " + word(value);
}

std::vector<SkinLayer> skinLayers(const Catalogue& catalogue) {
    std::vector<SkinLayer> layers;
    for (const auto& item : catalogue.items()) {
        if (item.region.empty() || !item.scale.listed()) continue;
        auto layer = std::ranges::find(layers, item.group, &SkinLayer::group_);
        if (layer == layers.end()) {
            layers.emplace_back();
            layer = std::prev(layers.end());
            layer->group_ = item.group;
            const Group* group = catalogue.group(item.step, item.group);
            layer->label_ = group == nullptr ? item.group.text() : group->label;
            layer->drawn_ = sharesLooks(item.scale);
        }
        layer->items_.emplace(item.region, &item);
    }
    return layers;
}

} // namespace rhizograph::app
