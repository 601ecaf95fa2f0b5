#include "reasoning/engine.h"

#include "base/parallel.h"

#include <algorithm>
#include <iterator>
#include <limits>

namespace rhizograph {

Space::Space(const Grid& grid, Depends depends) : blocks_(grid.blocks().size()) {
    if (depends.motor) {
        perBlock_ *= grid.motorLevels();
        motorUse_ = 1;
    }
    if (depends.sensory) {
        sensory_ = grid.sensoryLevels();
        sensoryUse_ = 1;
        perBlock_ *= sensory_;
    }
    if (depends.irritable) {
        irritable_ = 2;
        irritableUse_ = 1;
        perBlock_ *= 2;
    }
}

namespace {

Factors allFactors(const Model& model, const Grid& grid, const Catalogue& catalogue) {
    Factors all = makeLossFactors(model, grid, catalogue);
    for (auto make : {makeStrengthFactors, makeReflexFactors, makeSenseFactors, makeSiteFactors}) {
        Factors more = make(model, grid, catalogue);
        std::move(more.begin(), more.end(), std::back_inserter(all));
    }
    return all;
}

} // namespace

Engine::Engine(Model model, const Catalogue& catalogue)
    : model_(std::move(model)), grid_(model_), factors_(allFactors(model_, grid_, catalogue)) {
    for (std::size_t number = 0; number < kSpaces; ++number)
        spaces_[number] = Space{grid_, {(number & 1U) != 0, (number & 2U) != 0, (number & 4U) != 0}};
    for (const auto& factor : factors_) {
        const Depends& depends = factor->depends();
        spaceOf_.push_back((depends.motor ? 1U : 0U) | (depends.sensory ? 2U : 0U) |
                           (depends.irritable ? 4U : 0U));
    }
    group();
    makeClasses();
    for (std::size_t g = 0; g < factors_.size(); ++g)
        for (std::size_t slot = 0; slot < factors_[g]->slots().size(); ++slot)
            for (const FindingKey& key : factors_[g]->slots()[slot].keys)
                places_.emplace(key, Place{g, slot});
}

void Engine::makeClasses() {
    classes_.resize(factors_.size());
    const std::vector<std::size_t> twin = twins();
    for (const bool first : {true, false}) // what is taken from a twin must be there
        inTwoThreads(factors_.size(), [&](std::size_t g) {
            if ((twin[g] == g) != first) return;
            if (first)
                boilDown(g);
            else
                mirror(g, twin[g]);
            findCells(g);
        });
}

std::vector<std::size_t> Engine::twins() const {
    std::vector<std::size_t> twin;
    std::map<FindingKey, std::size_t> seen;
    for (std::size_t g = 0; g < factors_.size(); ++g) {
        const FindingKey& key = factors_[g]->slots().front().keys.front();
        const auto other = seen.find({key.item, mirrored(key.side)});
        const bool found = key.side != Side::none && factors_[g]->mirrors() && other != seen.end();
        twin.push_back(found ? other->second : g);
        seen.emplace(key, g);
    }
    return twin;
}

void Engine::group() {
    constexpr GroupNumber kNone = std::numeric_limits<GroupNumber>::max();
    groupsOfSide_.assign(grid_.siteSides().size(), {kNone, kNone, kNone});
    for (const Block& block : grid_.blocks()) {
        GroupNumber& number = groupsOfSide_[block.siteSide][static_cast<std::size_t>(block.asymmetry)];
        if (number == kNone) number = static_cast<GroupNumber>(groups_++);
        groupOf_.push_back(number);
    }
    for (auto& groups : groupsOfSide_)
        std::replace(groups.begin(), groups.end(), kNone, static_cast<GroupNumber>(groups_));
}

void Engine::boilDown(std::size_t g) {
    Factor& factor = *factors_[g];
    const Depends& depends = factor.depends();
    Classes& classes = classes_[g];
    classes.of.reserve(spaces_[spaceOf_[g]].size());
    const std::size_t perBlock = spaces_[spaceOf_[g]].perBlock();
    std::vector<double> features;
    std::vector<double> before; // of the state before: neighbors are often alike
    const auto number = [&](const Hypothesis& h) {
        features.clear();
        factor.features(h, features);
        if (classes.of.empty()) classes.features = FeatureTable{features.size()};
        const bool same = !classes.of.empty() && features == before;
        const FeatureTable::Number found = same ? classes.of.back() : classes.features.number(features);
        std::swap(features, before);
        return found;
    };
    for (std::size_t b = 0; b < grid_.blocks().size(); ++b) {
        if (factor.alike(b)) {
            classes.of.insert(classes.of.end(), perBlock, number({b, 0, 0, 0}));
            continue;
        }
        for (std::size_t m = 0; m < (depends.motor ? grid_.motorLevels() : 1); ++m)
            for (std::size_t s = 0; s < (depends.sensory ? grid_.sensoryLevels() : 1); ++s)
                for (std::size_t i = 0; i < (depends.irritable ? 2 : 1); ++i)
                    classes.of.push_back(number({b, m, s, i}));
    }
    classes.features.close();
    factor.finish();
    workAhead(g);
}

void Engine::workAhead(std::size_t g) {
    const Factor& factor = *factors_[g];
    if (factor.slots().size() > 1 || factor.depends().setting) return;
    const std::array<int, 1> unread{kUnread};
    classes_[g].ahead = factor.slotProbabilities(classes_[g].features, unread, 0, Setting{});
}

void Engine::mirror(std::size_t g, std::size_t twin) {
    Classes& classes = classes_[g];
    classes.features = classes_[twin].features;
    classes.ahead = classes_[twin].ahead;
    const std::size_t perBlock = spaces_[spaceOf_[g]].perBlock();
    classes.of.reserve(classes_[twin].of.size());
    for (std::size_t b = 0; b < grid_.blocks().size(); ++b) {
        const auto image =
            classes_[twin].of.begin() + static_cast<std::ptrdiff_t>(grid_.mirrored(b) * perBlock);
        classes.of.insert(classes.of.end(), image, image + static_cast<std::ptrdiff_t>(perBlock));
    }
}

void Engine::findCells(std::size_t g) {
    constexpr std::uint16_t kNone = std::numeric_limits<std::uint16_t>::max();
    Classes& classes = classes_[g];
    const std::size_t perBlock = spaces_[spaceOf_[g]].perBlock();
    std::vector<std::uint16_t> known(groups_ * classes.features.size(), kNone);
    classes.cellOf.reserve(classes.of.size());
    for (std::size_t state = 0; state < classes.of.size(); ++state) {
        const GroupNumber group = groupOf_[state / perBlock];
        std::uint16_t& cell = known[group * classes.features.size() + classes.of[state]];
        if (cell == kNone) {
            cell = static_cast<std::uint16_t>(classes.cells.size());
            classes.cells.push_back({group, classes.of[state]});
        }
        classes.cellOf.push_back(cell);
    }
}

std::vector<double> Engine::bySiteSide(const std::vector<double>& groupSums) const {
    std::vector<double> out;
    out.reserve(groupsOfSide_.size());
    for (const auto& [even, left, right] : groupsOfSide_)
        out.push_back(groupSums[even] + (groupSums[left] + groupSums[right]));
    return out;
}

const Engine::Place* Engine::place(const FindingKey& key) const {
    const auto found = places_.find(key);
    return found == places_.end() ? nullptr : &found->second;
}

Setting Engine::setting(const Exam& exam) const {
    Setting setting;
    setting.ageBand = model_.ageBand(exam.subject.age);
    for (const auto& [item, token] : model_.strength.unreliableWhen)
        for (const Side side : {Side::left, Side::right})
            if (const Finding* finding = exam.find({item, side});
                finding != nullptr && finding->value == Value::token(token))
                setting.unreliable[sideIndex(side)] = true;
    return setting;
}

bool Engine::changesSetting(const FindingKey& key) const {
    return std::any_of(model_.strength.unreliableWhen.begin(), model_.strength.unreliableWhen.end(),
                       [&](const auto& when) { return when.first == key.item; });
}

} // namespace rhizograph
