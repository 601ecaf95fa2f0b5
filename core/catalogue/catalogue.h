#pragma once

#include "base/problem.h"
#include "base/strong.h"
#include "catalogue/scale.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace rhizograph {

/// Core items show at once; extended ones wait behind "More" until they are asked for or suggested.
enum class Tier { core, extended };

struct Step {
    StepId id;
    std::string label;
};

/// A card on a step's screen. The same group id may stand in two steps (strength seated and lying).
struct Group {
    GroupId id;
    StepId step;
    std::string label;
    std::string page; ///< the tab of the step on which the card stands
};

/// One thing that can be asked, looked at, measured or tested.
struct Item {
    ItemId id;
    StepId step;
    GroupId group;
    std::string label;      ///< full name, e.g. "Ankle reflex"
    std::string shortLabel; ///< name inside its card, e.g. "Ankle"; the full label where none is given
    bool sided = false;
    Scale scale;
    Tier tier = Tier::core;
    std::string note;
    std::string region; ///< skin region on the figures, empty for other items
    std::string view;   ///< figure that shows the region: front, back, sole, saddle
};

/// Everything the examination can hold, as loaded from catalogue.json; immutable after loading.
class Catalogue {
public:
    Catalogue() = default;
    Catalogue(std::vector<Step> steps, std::vector<Group> groups, std::vector<Item> items,
              std::vector<std::string> reasons);

    [[nodiscard]] const std::vector<Step>& steps() const { return steps_; }
    [[nodiscard]] const std::vector<Group>& groups() const { return groups_; }
    [[nodiscard]] const std::vector<Item>& items() const { return items_; }
    /// Null when there is no such item.
    [[nodiscard]] const Item* find(const ItemId& id) const;
    [[nodiscard]] const Item* find(std::string_view id) const { return find(ItemId{std::string{id}}); }
    [[nodiscard]] std::vector<const Item*> itemsOf(const StepId& step, const GroupId& group) const;
    [[nodiscard]] std::vector<const Group*> groupsOf(const StepId& step) const;
    [[nodiscard]] const Group* group(const StepId& step, const GroupId& id) const;
    /// Why something could not be tested ("pain", "cast_or_brace", …).
    [[nodiscard]] const std::vector<std::string>& notTestableReasons() const { return reasons_; }
    /// Position in the order of the examination; sorts findings for people. items().size() when unknown.
    [[nodiscard]] std::size_t order(const ItemId& id) const;

private:
    std::vector<Step> steps_;
    std::vector<Group> groups_;
    std::vector<Item> items_;
    std::vector<std::string> reasons_;
    std::unordered_map<ItemId, std::size_t> index_;
};

/// Loads and validates catalogue.json; every problem at once, with its place.
Result<Catalogue> loadCatalogue(const std::filesystem::path& file);
/// The same from text; `name` stands for the file in problems.
Result<Catalogue> parseCatalogue(std::string_view text, const std::string& name);

} // namespace rhizograph
