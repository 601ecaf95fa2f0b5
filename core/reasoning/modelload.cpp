#include "reasoning/modelread.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <set>

namespace rhizograph {

Curve readCurve(const JsonNode& node) {
    std::vector<std::pair<double, double>> points;
    for (const JsonNode& entry : node.items()) {
        const auto xy = entry.numbers();
        if (xy.size() != 2 || (!points.empty() && xy[0] <= points.back().first)) {
            entry.fail("should be [x, y] with x rising");
            continue;
        }
        points.emplace_back(xy[0], xy[1]);
    }
    if (points.empty()) node.fail("needs at least one point");
    return Curve{std::move(points)};
}

Row readRow(const JsonNode& node, std::size_t size) {
    Row row = node.numbers();
    double sum = 0;
    for (const double value : row) {
        if (!(value >= 0 && value <= 1)) node.fail("a probability lies outside 0 to 1");
        sum += value;
    }
    if (std::abs(sum - 1) > 1e-6) node.fail(fmt::format("probabilities add to {}, not to 1", sum));
    if (size != 0 && row.size() != size)
        node.fail(fmt::format("has {} values where {} are needed", row.size(), size));
    return row;
}

ItemId readItemId(const JsonNode& node, const ModelContext& context) {
    ItemId item{node.string()};
    if (context.catalogue.find(item) == nullptr)
        node.fail("no item \"" + item.text() + "\" in the catalogue");
    return item;
}

std::size_t valueCount(const JsonNode& node, const ItemId& id, const std::vector<double>& bins,
                       const ModelContext& context) {
    if (!bins.empty()) return bins.size() + 1;
    const Item* item = context.catalogue.find(id);
    if (item == nullptr) return 0;
    if (!item->scale.listed()) node.fail("a number item needs bins");
    return item->scale.judged();
}

NodeIndex readNodeIndex(const JsonNode& place, const std::string& name, const ModelContext& context) {
    const NodeIndex index = context.anatomy.node(name);
    if (index < context.anatomy.nodes().size()) return index;
    place.fail("no root or nerve \"" + name + "\" in the anatomy");
    return 0;
}

std::size_t readTarget(const JsonNode& place, TargetKind kind, const std::string& target,
                       const ModelContext& context) {
    const std::size_t index = context.anatomy.target(kind, target);
    if (index < context.anatomy.targets().size()) return index;
    place.fail("no " + std::string{name(kind)} + " \"" + target + "\" in the anatomy");
    return 0;
}

namespace {

class SitesReader {
public:
    SitesReader(const JsonNode& root, const ModelContext& context, Model& model)
        : root_(root), context_(context), model_(model) {}

    void read() {
        if (root_.at("format").string() != "rhizograph.sites") root_.fail("format is not rhizograph.sites");
        readHidden();
        for (const JsonNode& node : root_.at("asymmetry").items())
            asymmetry_[node.at("id").string()] = {node.at("equal").number(), node.at("minor").number()};
        for (const JsonNode& node : root_.at("sites").items())
            readSite(node);
        for (const JsonNode& node : root_.at("tables").items())
            readTable(node);
        for (const JsonNode& node : root_.at("shared").items())
            readShared(node);
        if (const auto rash = root_.find("rash")) readRash(*rash);
        for (const JsonNode& node : root_.at("levels").items())
            readLevels(node);
    }

private:
    void readHidden() {
        for (const JsonNode& node : root_.at("hidden").items()) {
            HiddenPrior prior{readRow(node.at("m"), model_.motorLevels.size()), {}, node.at("i").number()};
            for (const JsonNode& row : node.at("s_given_m").items())
                prior.sensoryGivenMotor.push_back(readRow(row, model_.sensoryLevels.size()));
            if (prior.sensoryGivenMotor.size() != model_.motorLevels.size())
                node.at("s_given_m").fail("needs one row a motor level");
            hidden_[node.at("id").string()] = std::move(prior);
        }
    }

    /// The findings alone tell left from right: what occurs on one side occurs on the other.
    static void requireBothSides(const JsonNode& node, const SiteModel& site) {
        for (const auto& [side, weight] : site.sides)
            if (std::none_of(site.sides.begin(), site.sides.end(),
                             [image = mirrored(side)](const auto& entry) { return entry.first == image; }))
                node.fail("left and right are both needed");
    }

    void readSite(const JsonNode& node) {
        SiteModel site;
        site.id = SiteId{node.at("site").string()};
        site.label = node.at("label").string();
        site.group = node.at("group").string();
        site.source = node.at("source").string();
        site.reportAs = node.has("report_as") ? SiteId{node.at("report_as").string()} : site.id;
        if (!names_.insert(site.id.text()).second) node.at("site").fail("site named twice");
        names_.insert(site.group);
        for (const auto& [word, weight] : node.at("sides").members()) {
            const auto side = sideNamed(word);
            if (!side) weight.fail("no such side");
            if (weight.number() <= 0) weight.fail("weight is not above 0");
            site.sides.emplace_back(side.value_or(Side::none), weight.number());
        }
        requireBothSides(node.at("sides"), site);
        const auto hidden = hidden_.find(node.at("hidden").string());
        if (hidden == hidden_.end())
            node.at("hidden").fail("no such distribution");
        else
            site.hidden = hidden->second;
        readAsymmetry(node, site);
        for (const JsonNode& variant : node.at("variants").items())
            site.variants.push_back(readVariant(variant));
        if (const auto age = node.find("age"))
            site.age =
                AgeFactor{age->at("from").integer(), age->at("below").number(), age->at("above").number()};
        model_.sites.push_back(std::move(site));
    }

    void readAsymmetry(const JsonNode& node, SiteModel& site) const {
        const auto name = node.find("asymmetry");
        if (!name) return;
        const auto found = asymmetry_.find(name->string());
        if (found == asymmetry_.end())
            name->fail("no such asymmetry");
        else
            std::tie(site.equal, site.minor) = found->second;
    }

    Variant readVariant(const JsonNode& node) const {
        Variant variant;
        variant.weight = node.at("weight").number();
        for (const auto& [name, factor] : node.at("lesions").members())
            variant.lesions.emplace_back(readNodeIndex(factor, name, context_), factor.number());
        if (const auto umn = node.find("umn")) variant.umn = umn->number();
        if (const auto length = node.find("length")) variant.length = length->number();
        if (const auto areflexia = node.find("areflexia")) variant.areflexia = areflexia->number();
        if (const auto skin = node.find("umn_skin")) variant.umnSkin = skin->number();
        if (const auto reflex = node.find("umn_reflex")) variant.umnReflex = reflex->number();
        if (const auto other = node.find("umn_other_side")) variant.umnOtherSide = other->number();
        return variant;
    }

    std::map<std::string, Row> readRows(const JsonNode& node, const std::string& key,
                                        std::size_t size) const {
        std::map<std::string, Row> rows;
        const auto given = node.find(key);
        if (!given) return rows;
        for (const auto& [name, row] : given->members()) {
            if (!names_.contains(name)) row.fail("no site or group \"" + name + "\"");
            rows[name] = readRow(row, size);
        }
        return rows;
    }

    void readTable(const JsonNode& node) {
        TableModel table;
        table.item = readItemId(node.at("item"), context_);
        if (const auto bins = node.find("bins")) table.bins = bins->numbers();
        table.values = valueCount(node, table.item, table.bins, context_);
        if (const auto relation = node.find("relation")) table.opposite = relation->string() == "opposite";
        table.fallback = readRow(node.at("default"), table.values);
        table.rows = readRows(node, "rows", table.values);
        table.irritable = readRows(node, "irritable", table.values);
        table.irritableOpposite = readRows(node, "irritable_opposite", table.values);
        if (const auto both = node.find("both_rows")) table.bothRow = readRow(*both, table.values);
        table.epsilon = node.has("epsilon") ? node.at("epsilon").number() : model_.epsilon["table"];
        table.source = node.at("source").string();
        model_.tables.push_back(std::move(table));
    }

    void readShared(const JsonNode& node) {
        SharedModel shared;
        shared.id = node.at("id").string();
        shared.sided = node.at("sided").boolean();
        shared.fallback = readRow(node.at("default"), 2);
        shared.rows = readRows(node, "rows", 2);
        shared.irritable = readRows(node, "irritable", 2);
        for (const auto& [name, reading] : node.at("readings").members()) {
            SharedReading entry;
            entry.item = ItemId{name};
            if (context_.catalogue.find(entry.item) == nullptr) reading.fail("no such item in the catalogue");
            if (const auto bins = reading.find("bins")) entry.bins = bins->numbers();
            const std::size_t values = valueCount(reading, entry.item, entry.bins, context_);
            entry.no = readRow(reading.at("no"), values);
            entry.yes = readRow(reading.at("yes"), values);
            shared.readings.push_back(std::move(entry));
        }
        model_.shared.push_back(std::move(shared));
    }

    void readRash(const JsonNode& node) {
        RashModel rash;
        rash.regions = node.at("regions").items().size();
        rash.baseEach = node.at("base_each").number();
        rash.elsewhere = node.at("elsewhere").number();
        rash.rightRegion = node.at("right_region").number();
        rash.noRegion = node.at("no_region").number();
        rash.falseRegion = node.at("false_region").number();
        for (const auto& [name, row] : node.at("rows").members()) {
            if (!names_.contains(name)) row.fail("no site or group \"" + name + "\"");
            rash.rows[name] = row.numbers();
            if (rash.rows[name].size() != rash.regions) row.fail("needs one number a region");
        }
        for (const auto& [name, reading] : node.at("items").members()) {
            const ItemId item{name};
            if (context_.catalogue.find(item) == nullptr) reading.fail("no such item in the catalogue");
            if (!reading.has("clear")) {
                rash.regionItem = item;
                continue;
            }
            const std::size_t values = valueCount(reading, item, {}, context_);
            rash.items.push_back(
                {item, readRow(reading.at("clear"), values), readRow(reading.at("rash"), values)});
        }
        model_.rash = std::move(rash);
    }

    void readLevels(const JsonNode& node) {
        LevelModel levels{SiteId{node.at("site").string()}, {}};
        if (!names_.contains(levels.site.text())) node.at("site").fail("no such site");
        for (const JsonNode& entry : node.at("fits").items()) {
            const auto parts = entry.items();
            if (parts.size() == 3)
                levels.fits.push_back({parts[0].string(), parts[1].string(), parts[2].number()});
            else
                entry.fail("should be [disc, zone, share]");
        }
        model_.levels.push_back(std::move(levels));
    }

    JsonNode root_;
    ModelContext context_;
    Model& model_;
    std::map<std::string, HiddenPrior> hidden_;
    std::map<std::string, std::pair<double, double>> asymmetry_;
    std::set<std::string> names_;
};

} // namespace

void readSites(const JsonNode& root, const ModelContext& context, Model& model) {
    SitesReader{root, context, model}.read();
}

Result<Model> loadModel(const std::filesystem::path& directory, const Catalogue& catalogue) {
    auto anatomy = loadAnatomy(directory / "anatomy.json");
    if (!anatomy) return anatomy.problems();
    auto observation = readJsonFile(directory / "observation.json");
    if (!observation) return observation.problems();
    auto sites = readJsonFile(directory / "sites.json");
    if (!sites) return sites.problems();
    Model model;
    model.anatomy = std::move(anatomy).value();
    const ModelContext context{catalogue, model.anatomy};
    Problems problems;
    readObservation({*observation, (directory / "observation.json").string(), problems}, context, model);
    if (problems.empty()) readSites({*sites, (directory / "sites.json").string(), problems}, context, model);
    if (!problems.empty()) return problems;
    return model;
}

} // namespace rhizograph
