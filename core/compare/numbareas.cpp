#include "compare/compare.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <set>

namespace rhizograph {
namespace {

/// Regions of one way of testing on one side: those examined, and the numb ones among them.
struct Skin {
    std::set<std::string> examined;
    std::set<std::string> numb;
};

using SkinByGroup = std::map<GroupId, std::map<Side, Skin>>;

SkinByGroup skinOf(const Exam& exam, const Knowledge& knowledge) {
    SkinByGroup out;
    const NumbAreaRule& rule = knowledge.thresholds().numbArea();
    for (const auto& [key, finding] : exam.findings()) {
        const Item* item = knowledge.catalogue().find(key.item);
        const bool skin = item != nullptr && item->scale.name == rule.scale &&
                          knowledge.regionAreas().contains(item->region) && finding.value.testable() &&
                          !check(knowledge.catalogue(), key, finding.value);
        if (!skin) continue;
        Skin& side = out[item->group][key.side];
        side.examined.insert(item->region);
        if (std::find(rule.counts.begin(), rule.counts.end(), finding.value.word()) != rule.counts.end())
            side.numb.insert(item->region);
    }
    return out;
}

double areaOf(const std::set<std::string>& regions, const RegionAreas& areas) {
    double sum = 0;
    for (const std::string& region : regions)
        sum += areas.at(region);
    return sum;
}

std::set<std::string> shared(const std::set<std::string>& a, const std::set<std::string>& b) {
    std::set<std::string> out;
    std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::inserter(out, out.end()));
    return out;
}

Change judge(const NumbAreaRule& rule, double before, double now, double common) {
    if (before == 0 && now == 0) return Change::same;
    if (before == 0) return Change::created;
    if (now == 0) return Change::resolved;
    const double moved = 100 * std::abs(now - before) / before;
    const double overlap = 100 * common / (before + now - common);
    if (moved < rule.changePercent || overlap >= rule.overlapBelowPercent) return Change::same;
    return now > before ? Change::worse : Change::better;
}

NumbAreaChange compare(const Skin& before, const Skin& now, const Knowledge& knowledge) {
    const NumbAreaRule& rule = knowledge.thresholds().numbArea();
    const RegionAreas& areas = knowledge.regionAreas();
    const auto both = shared(before.examined, now.examined);
    NumbAreaChange out;
    out.regions = static_cast<int>(both.size());
    out.threshold = rule.words;
    out.source = rule.source;
    if (both.empty()) {
        out.because = "no region was examined at both visits";
        return out;
    }
    const auto was = shared(before.numb, both);
    const auto is = shared(now.numb, both);
    out.before = areaOf(was, areas);
    out.now = areaOf(is, areas);
    out.change = judge(rule, out.before, out.now, areaOf(shared(was, is), areas));
    return out;
}

} // namespace

std::vector<NumbArea> numbAreas(const Exam& exam, const Knowledge& knowledge) {
    std::vector<NumbArea> out;
    for (auto& [group, sides] : skinOf(exam, knowledge)) {
        const RegionAreas& areas = knowledge.regionAreas();
        out.push_back({group, areaOf(sides[Side::right].numb, areas), areaOf(sides[Side::left].numb, areas),
                       static_cast<int>(sides[Side::right].examined.size()),
                       static_cast<int>(sides[Side::left].examined.size())});
    }
    return out;
}

std::vector<NumbAreaChange> compareNumbAreas(const Exam& earlier, const Exam& later,
                                             const Knowledge& knowledge) {
    SkinByGroup before = skinOf(earlier, knowledge);
    SkinByGroup now = skinOf(later, knowledge);
    std::set<GroupId> groups;
    for (const SkinByGroup* each : {&before, &now})
        for (const auto& [group, sides] : *each)
            groups.insert(group);
    std::vector<NumbAreaChange> out;
    for (const GroupId& group : groups)
        for (const Side side : {Side::right, Side::left}) {
            const Skin& then = before[group][side];
            const Skin& today = now[group][side];
            if (then.examined.empty() && today.examined.empty()) continue;
            NumbAreaChange change = compare(then, today, knowledge);
            change.group = group;
            change.side = side;
            out.push_back(std::move(change));
        }
    return out;
}

} // namespace rhizograph
