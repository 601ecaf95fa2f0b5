#include "reasoning/factor.h"

#include <algorithm>

namespace rhizograph {
namespace {

using Rows = std::map<std::string, Row>;

const Row* rowFor(const Rows& rows, const SiteModel& site) {
    for (const std::string* name : {&site.id.text(), &site.reportAs.text(), &site.group})
        if (const auto found = rows.find(*name); found != rows.end()) return &found->second;
    return nullptr;
}

bool affects(Side site, Side side) {
    return site == side || site == Side::both;
}

/// The rows of each site, chosen once.
class RowChooser {
public:
    RowChooser(const std::vector<SiteModel>& sites, const Row& fallback, const Rows& rows,
               const Rows& irritable) {
        for (const SiteModel& site : sites) {
            const Row* calm = rowFor(rows, site);
            const Row* excited = rowFor(irritable, site);
            calm_.push_back(calm == nullptr ? &fallback : calm);
            irritable_.push_back(excited == nullptr ? calm_.back() : excited);
        }
    }

    [[nodiscard]] const Row& ofSite(std::size_t site, bool irritable) const {
        return irritable ? *irritable_[site] : *calm_[site];
    }

private:
    std::vector<const Row*> calm_, irritable_;
};

/// The index of a row in a list that grows by rows not seen before: a feature that stands for the row.
class RowBook {
public:
    double index(const Row& row) {
        const auto found = std::find(rows_.begin(), rows_.end(), &row);
        if (found != rows_.end()) return static_cast<double>(found - rows_.begin());
        rows_.push_back(&row);
        return static_cast<double>(rows_.size() - 1);
    }
    [[nodiscard]] const Row& row(double index) const { return *rows_[static_cast<std::size_t>(index)]; }

private:
    std::vector<const Row*> rows_;
};

class TableFactor : public Factor {
public:
    TableFactor(const Model& model, const Grid& grid, const TableModel& table, const Item& item, Side side)
        : Factor({{{{table.item, side}}, table.values}}, {.irritable = true}), grid_(grid), table_(table),
          scale_(item.scale), side_(side),
          chooser_(model.sites, table.fallback, table.rows, table.irritable) {
        for (const SiteModel& site : model.sites) {
            opposite_.push_back(rowFor(table.irritableOpposite, site));
            named_.push_back(rowFor(table.rows, site) != nullptr);
        }
    }

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), scale_, table_.bins);
    }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        out.push_back(book_.index(rowOf(grid_.blocks()[h.block], h.irritable == 1)));
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        if (values[0] == kUnread) return 1;
        return mixed(book_.row(features[0])[static_cast<std::size_t>(values[0])], table_.epsilon,
                     static_cast<double>(table_.values));
    }

private:
    [[nodiscard]] const Row& rowOf(const Block& block, bool irritable) const {
        if (side_ == Side::none) {
            if (table_.bothRow && block.side == Side::both && !named_[block.site]) return *table_.bothRow;
            return chooser_.ofSite(block.site, irritable);
        }
        if (block.side == Side::none) return chooser_.ofSite(block.site, irritable);
        const Side looked = table_.opposite ? mirrored(side_) : side_;
        if (affects(block.side, looked)) return chooser_.ofSite(block.site, irritable);
        if (irritable && opposite_[block.site] != nullptr) return *opposite_[block.site];
        return table_.fallback;
    }

    const Grid& grid_;
    const TableModel& table_;
    Scale scale_;
    Side side_;
    RowChooser chooser_;
    std::vector<const Row*> opposite_; ///< by site; null for none of its own
    std::vector<bool> named_;          ///< by site: whether it has a row of its own
    RowBook book_;
};

/// One hidden yes/no symptom, of the person or of a side, read by several items.
class SharedFactor : public Factor {
public:
    SharedFactor(const Model& model, const Grid& grid, const SharedModel& shared, const Catalogue& catalogue,
                 Side side)
        : Factor(slotsOf(shared, catalogue, side), {.irritable = true}), grid_(grid), side_(side),
          chooser_(model.sites, shared.fallback, shared.rows, shared.irritable), fallback_(shared.fallback),
          epsilon_(model.epsilon.at("shared")) {
        for (const SharedReading& reading : shared.readings) {
            const Item* item = catalogue.find(reading.item);
            const std::size_t sides = item->sided && side == Side::none ? 2 : 1;
            for (std::size_t i = 0; i < sides; ++i) {
                readings_.push_back(&reading);
                scales_.push_back(item->scale);
            }
        }
    }

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), scales_[slot], readings_[slot]->bins);
    }

    void features(const Hypothesis& h, std::vector<double>& out) override {
        const Block& block = grid_.blocks()[h.block];
        const bool own = side_ == Side::none || block.side == Side::none || affects(block.side, side_);
        out.push_back(own ? chooser_.ofSite(block.site, h.irritable == 1)[1] : fallback_[1]);
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        double no = 1 - features[0];
        double yes = features[0];
        double joint = 1;
        for (std::size_t slot = 0; slot < values.size(); ++slot) {
            if (values[slot] == kUnread) continue;
            const auto value = static_cast<std::size_t>(values[slot]);
            no *= readings_[slot]->no[value];
            yes *= readings_[slot]->yes[value];
            joint *= static_cast<double>(slots()[slot].values);
        }
        return mixed(no + yes, epsilon_, joint);
    }

private:
    static std::vector<Slot> slotsOf(const SharedModel& shared, const Catalogue& catalogue, Side side) {
        std::vector<Slot> slots;
        for (const SharedReading& reading : shared.readings) {
            const Item* item = catalogue.find(reading.item);
            const std::size_t values = reading.no.size();
            if (item->sided && side == Side::none)
                for (const Side each : kSides)
                    slots.push_back({{{item->id, each}}, values});
            else
                slots.push_back({{{item->id, item->sided ? side : Side::none}}, values});
        }
        return slots;
    }

    const Grid& grid_;
    Side side_;
    RowChooser chooser_;
    const Row& fallback_;
    double epsilon_;
    std::vector<const SharedReading*> readings_;
    std::vector<Scale> scales_;
};

/// Where a blistering rash lies: nowhere, elsewhere, or in one region of one leg.
class RashFactor : public Factor {
public:
    RashFactor(const Model& model, const Grid& grid, const Catalogue& catalogue)
        : Factor(slotsOf(*model.rash, catalogue), {}), model_(model), grid_(grid), rash_(*model.rash),
          epsilon_(model.epsilon.at("rash")) {
        for (const RashItem& item : rash_.items)
            scales_.push_back(catalogue.find(item.item)->scale);
        if (const Item* item = catalogue.find(rash_.regionItem))
            scales_.insert(scales_.end(), 2, item->scale);
    }

    [[nodiscard]] int read(std::size_t slot, const Exam& exam) const override {
        return readSlot(exam, slots()[slot].keys.front(), scales_[slot], {});
    }

    /// P of each place: none, elsewhere, left regions, right regions.
    void features(const Hypothesis& h, std::vector<double>& out) override {
        const Block& block = grid_.blocks()[h.block];
        const std::size_t none = out.size();
        out.insert(out.end(), {0, rash_.elsewhere});
        double rest = 1 - rash_.elsewhere;
        const Row* row = rowFor(rash_.rows, model_.sites[block.site]);
        for (const Side side : kSides)
            for (std::size_t region = 0; region < rash_.regions; ++region) {
                double p = rash_.baseEach;
                if (row != nullptr && affects(block.side, side))
                    p += (*row)[region] / (block.side == Side::both ? 2 : 1);
                out.push_back(p);
                rest -= p;
            }
        out[none] = rest;
    }

    [[nodiscard]] double probability(std::span<const double> features, std::span<const int> values,
                                     const Setting&) const override {
        double sum = 0;
        double joint = 1;
        for (std::size_t place = 0; place < features.size(); ++place) {
            double p = features[place];
            for (std::size_t slot = 0; slot < values.size(); ++slot)
                if (values[slot] != kUnread)
                    p *= reading(place, slot, static_cast<std::size_t>(values[slot]));
            sum += p;
        }
        for (std::size_t slot = 0; slot < values.size(); ++slot)
            if (values[slot] != kUnread) joint *= static_cast<double>(slots()[slot].values);
        return mixed(sum, epsilon_, joint);
    }

private:
    static std::vector<Slot> slotsOf(const RashModel& rash, const Catalogue& catalogue) {
        std::vector<Slot> slots;
        for (const RashItem& item : rash.items)
            slots.push_back({{{item.item, Side::none}}, item.clear.size()});
        if (catalogue.find(rash.regionItem) != nullptr)
            for (const Side side : kSides)
                slots.push_back({{{rash.regionItem, side}}, rash.regions + 1});
        return slots;
    }

    [[nodiscard]] double reading(std::size_t place, std::size_t slot, std::size_t value) const {
        if (slot < rash_.items.size()) {
            const RashItem& item = rash_.items[slot];
            return place == 0 ? item.clear[value] : item.rash[value];
        }
        const std::size_t side = slot - rash_.items.size();
        const std::size_t first = 2 + side * rash_.regions;
        if (place < first || place >= first + rash_.regions) {
            return value == 0 ? 1 - rash_.falseRegion * static_cast<double>(rash_.regions)
                              : rash_.falseRegion;
        }
        if (value == 0) return rash_.noRegion;
        if (value - 1 == place - first) return rash_.rightRegion;
        return (1 - rash_.rightRegion - rash_.noRegion) / static_cast<double>(rash_.regions - 1);
    }

    const Model& model_;
    const Grid& grid_;
    const RashModel& rash_;
    double epsilon_;
    std::vector<Scale> scales_;
};

} // namespace

Factors makeSiteFactors(const Model& model, const Grid& grid, const Catalogue& catalogue) {
    Factors factors;
    for (const TableModel& table : model.tables) {
        const Item* item = catalogue.find(table.item);
        if (item == nullptr) continue;
        if (!item->sided)
            factors.push_back(std::make_unique<TableFactor>(model, grid, table, *item, Side::none));
        else
            for (const Side side : kSides)
                factors.push_back(std::make_unique<TableFactor>(model, grid, table, *item, side));
    }
    for (const SharedModel& shared : model.shared) {
        if (!shared.sided)
            factors.push_back(std::make_unique<SharedFactor>(model, grid, shared, catalogue, Side::none));
        else
            for (const Side side : kSides)
                factors.push_back(std::make_unique<SharedFactor>(model, grid, shared, catalogue, side));
    }
    if (model.rash) factors.push_back(std::make_unique<RashFactor>(model, grid, catalogue));
    return factors;
}

} // namespace rhizograph
