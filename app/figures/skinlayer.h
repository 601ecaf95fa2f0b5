#pragma once

#include "exam/exam.h"
#include "figures/figurepainter.h"

#include <map>
#include <string>
#include <vector>

namespace rhizograph::app {

/// One layer of the skin figures: the items of one catalogue group that each belong to a region. Which items
/// and values there are is the catalogue's business; a region without an item is not pressable on this layer.
class SkinLayer {
public:
    [[nodiscard]] const GroupId& group() const { return group_; }
    [[nodiscard]] const std::string& label() const { return label_; }
    /// Null when this layer has no item for the region.
    [[nodiscard]] const Item* item(const std::string& region) const;
    [[nodiscard]] const std::map<std::string, const Item*>& items() const { return items_; }
    [[nodiscard]] const Scale& scale() const;

    /// True where the values are kinds of a complaint that share looks and so need marks of their own
    /// (what a patient draws); false where each abnormal value has a look of its own.
    [[nodiscard]] bool drawn() const { return drawn_; }

    [[nodiscard]] std::optional<FindingKey> key(const RegionKey& region) const;
    /// The region of a finding of this layer.
    [[nodiscard]] std::optional<RegionKey> region(const FindingKey& key) const;
    [[nodiscard]] SkinMark mark(const RegionKey& region, const Exam& exam) const;
    [[nodiscard]] SkinMark mark(const Value& value) const;
    /// What a tap makes of a value: the scale's values in order, then unexamined, then the first again.
    [[nodiscard]] std::optional<Value> next(const std::optional<Value>& value) const;
    /// "Left great toe"; lower-case item label after the side.
    [[nodiscard]] std::string regionName(const RegionKey& region) const;
    /// "Left great toe, light touch, reduced"; "not examined" where nothing stands.
    [[nodiscard]] std::string spoken(const RegionKey& region, const std::optional<Value>& value) const;
    /// "normal", "reduced", … "not examined", or "not testable, pain".
    [[nodiscard]] std::string word(const std::optional<Value>& value) const;

private:
    friend std::vector<SkinLayer> skinLayers(const Catalogue& catalogue);

    GroupId group_;
    std::string label_;
    std::map<std::string, const Item*> items_;
    bool drawn_ = false;
};

/// Every layer the catalogue knows, in its order. The layers point into the catalogue, which must outlive
/// them.
[[nodiscard]] std::vector<SkinLayer> skinLayers(const Catalogue& catalogue);

/// The first letter made small, for a label inside a sentence.
[[nodiscard]] std::string lowered(const std::string& label);

} // namespace rhizograph::app
