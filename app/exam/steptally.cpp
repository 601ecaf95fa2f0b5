#include "exam/steptally.h"

#include "figures/skinlayer.h"

#include <algorithm>

namespace rhizograph::app {
namespace {

constexpr std::size_t mostRegionRows = 8; ///< more skin regions than this are easier to find on a figure

bool allRegions(const std::vector<const Item*>& items) {
    return !items.empty() &&
           std::ranges::all_of(items, [](const Item* item) { return !item->region.empty(); });
}

bool abnormal(const Look look) {
    return look != Look::plain && look != Look::normal;
}

} // namespace

bool recordedAtAll(const Exam& exam, const Item& item) {
    return std::ranges::any_of(keysOf(item),
                               [&](const FindingKey& key) { return exam.find(key) != nullptr; });
}

bool recordedWhole(const Exam& exam, const Item& item) {
    return std::ranges::all_of(keysOf(item),
                               [&](const FindingKey& key) { return exam.find(key) != nullptr; });
}

bool countsAsShown(const VisitSession& session, const Item& item) {
    if (session.everyday(item) || recordedAtAll(session.exam(), item)) return true;
    if (session.previous() != nullptr && recordedAtAll(*session.previous(), item)) return true;
    return std::ranges::any_of(session.assessment().notAsked,
                               [&](const FindingKey& key) { return key.item == item.id; });
}

bool comesForward(const VisitSession& session, const Item& item) {
    return session.shows(item) || countsAsShown(session, item);
}

bool isDrawing(const Catalogue& catalogue, const Group& group) {
    if (!allRegions(catalogue.itemsOf(group.step, group.id))) return false;
    return std::ranges::any_of(skinLayers(catalogue), [&](const SkinLayer& layer) {
        return layer.group() == group.id && layer.drawn();
    });
}

bool isSkin(const Catalogue& catalogue, const Group& group) {
    const auto items = catalogue.itemsOf(group.step, group.id);
    return items.size() > mostRegionRows && allRegions(items) && !isDrawing(catalogue, group);
}

StepTally stepTally(const VisitSession& session, const std::string& stepId) {
    StepTally tally;
    const Catalogue& catalogue = session.catalogue();
    for (const Group* group : catalogue.groupsOf(StepId{stepId})) {
        const auto items = catalogue.itemsOf(group->step, group->id);
        for (const Item* item : items)
            for (const FindingKey& key : keysOf(*item))
                if (const Finding* found = session.exam().find(key))
                    tally.abnormal += abnormal(lookOf(item->scale, found->value)) ? 1 : 0;
        if (isDrawing(catalogue, *group)) {
            ++tally.shown;
            const auto marked = [&](const Item* item) { return recordedAtAll(session.exam(), *item); };
            tally.recorded += std::ranges::any_of(items, marked) ? 1 : 0;
            continue;
        }
        for (const Item* item : items) {
            if (!countsAsShown(session, *item)) continue;
            ++tally.shown;
            tally.recorded += recordedWhole(session.exam(), *item) ? 1 : 0;
        }
    }
    return tally;
}

} // namespace rhizograph::app
