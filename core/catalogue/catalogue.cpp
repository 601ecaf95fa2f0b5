#include "catalogue/catalogue.h"

namespace rhizograph {

Catalogue::Catalogue(std::vector<Step> steps, std::vector<Group> groups, std::vector<Item> items,
                     std::vector<std::string> reasons)
    : steps_(std::move(steps)), groups_(std::move(groups)), items_(std::move(items)),
      reasons_(std::move(reasons)) {
    for (std::size_t i = 0; i < items_.size(); ++i)
        index_.emplace(items_[i].id, i);
}

const Item* Catalogue::find(const ItemId& id) const {
    const auto found = index_.find(id);
    return found == index_.end() ? nullptr : &items_[found->second];
}

std::size_t Catalogue::order(const ItemId& id) const {
    const auto found = index_.find(id);
    return found == index_.end() ? items_.size() : found->second;
}

std::vector<const Item*> Catalogue::itemsOf(const StepId& step, const GroupId& group) const {
    std::vector<const Item*> out;
    for (const Item& item : items_)
        if (item.step == step && item.group == group) out.push_back(&item);
    return out;
}

std::vector<const Group*> Catalogue::groupsOf(const StepId& step) const {
    std::vector<const Group*> out;
    for (const Group& group : groups_)
        if (group.step == step) out.push_back(&group);
    return out;
}

const Group* Catalogue::group(const StepId& step, const GroupId& id) const {
    for (const Group& group : groups_)
        if (group.step == step && group.id == id) return &group;
    return nullptr;
}

} // namespace rhizograph
