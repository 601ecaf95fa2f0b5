#include "reasoning/modelread.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace rhizograph {
namespace {

class ObservationReader {
public:
    ObservationReader(const JsonNode& root, const ModelContext& context, Model& model)
        : root_(root), context_(context), model_(model) {}

    void read() {
        if (root_.at("format").string() != "rhizograph.observation")
            root_.fail("format is not rhizograph.observation");
        model_.motorLevels = root_.at("severity").at("m").numbers();
        model_.sensoryLevels = root_.at("severity").at("s").numbers();
        for (const auto& [name, node] : root_.at("epsilon").members())
            model_.epsilon[name] = node.at("value").number();
        readStrength(root_.at("strength"));
        readMovementTests();
        readMuscleBulk();
        readRegion(root_.at("region"));
        readReflex(root_.at("reflex"));
        for (const JsonNode& node : root_.at("deep").items())
            readDeep(node);
        readDrawn(root_.at("drawn"));
        readSpread();
        readGait(root_.at("gait_pattern"));
        readWords();
    }

private:
    std::size_t movement(const JsonNode& place, const std::string& name) const {
        return readTarget(place, TargetKind::movement, name, context_);
    }

    MovementWeights movementWeights(const JsonNode& node) const {
        MovementWeights out;
        for (const auto& [name, weight] : node.members())
            out.emplace_back(movement(weight, name), weight.number());
        return out;
    }

    void readStrength(const JsonNode& node) {
        StrengthModel& strength = model_.strength;
        strength.prefix = node.at("item_prefix").string();
        for (const Item& item : context_.catalogue.items()) {
            if (!item.id.text().starts_with(strength.prefix) || item.scale.kind != Scale::Kind::grade)
                continue;
            const JsonNode grades = node.at("grades");
            strength.grades.clear();
            for (const ScaleValue& value : item.scale.values)
                strength.grades.push_back(grades.at(value.token).number());
        }
        strength.curve = readCurve(node.at("curve"));
        strength.sdAt5 = node.at("sd_at_5").number();
        strength.sdBelow = node.at("sd_below").number();
        strength.sdFullAtGrade = node.at("sd_full_at_grade").number();
        const JsonNode noise = node.at("noise");
        for (const Item& item : context_.catalogue.items()) {
            if (!item.id.text().starts_with(strength.prefix) || item.scale.kind != Scale::Kind::grade)
                continue;
            for (const ScaleValue& value : item.scale.values)
                strength.noise.push_back(noise.at(value.token).number());
            break;
        }
        const JsonNode guarded = node.at("guarded");
        strength.guardedShare = guarded.at("share").number();
        strength.guardedDrop = guarded.at("drop").number();
        strength.guardedSd = guarded.at("sd").number();
        for (const JsonNode& when : node.at("unreliable_when").items())
            strength.unreliableWhen.emplace_back(readItemId(when.at("item"), context_),
                                                 when.at("is").string());
    }

    void readMovementTests() {
        for (const JsonNode& node : root_.at("ability").items()) {
            const ItemId item = readItemId(node.at("item"), context_);
            model_.abilities.push_back({item, movementWeights(node.at("movements")), node.at("mid").number(),
                                        node.at("unable").number(), node.at("slope").number(),
                                        readRow(node.at("base"), valueCount(node, item, {}, context_))});
        }
        for (const JsonNode& node : root_.at("yes_by_loss").items()) {
            YesByLossModel yes{readItemId(node.at("item"), context_),
                               movementWeights(node.at("movements")),
                               node.at("mid").number(),
                               node.at("slope").number(),
                               node.at("low").number(),
                               node.at("high").number(),
                               {}};
            if (const auto bySite = node.find("low_by_site"))
                for (const auto& [site, low] : bySite->members())
                    yes.lowBySite[site] = low.number();
            model_.yesByLoss.push_back(std::move(yes));
        }
        for (const JsonNode& node : root_.at("count").items()) {
            CountModel count;
            count.item = readItemId(node.at("item"), context_);
            count.movement = movement(node.at("movement"), node.at("movement").string());
            count.bins = node.at("bins").numbers();
            for (const JsonNode& entry : node.at("rows").items()) {
                const auto parts = entry.items();
                if (parts.size() == 2)
                    count.rows.emplace_back(parts[0].number(), readRow(parts[1], count.bins.size() + 1));
                else
                    entry.fail("should be [loss, row]");
            }
            model_.counts.push_back(std::move(count));
        }
    }

    void readMuscleBulk() {
        const JsonNode node = root_.at("wasting");
        WastingModel wasting;
        wasting.item = readItemId(node.at("item"), context_);
        wasting.base = readRow(node.at("base"), valueCount(node, wasting.item, {}, context_));
        wasting.gain = node.at("gain").number();
        wasting.noneDrop = node.at("none_drop").number();
        if (const Item* item = context_.catalogue.find(wasting.item)) {
            for (const ScaleValue& value : item->scale.values) {
                std::vector<std::size_t> movements;
                if (const auto list = node.at("movements").find(value.token))
                    for (const std::string& name : list->strings())
                        movements.push_back(movement(*list, name));
                wasting.movements.push_back(std::move(movements));
            }
        }
        model_.wasting = std::move(wasting);
        for (const JsonNode& entry : root_.at("girth").items()) {
            GirthModel girth{readItemId(entry.at("item"), context_),
                             {},
                             entry.at("limit_cm").number(),
                             entry.at("low").number(),
                             entry.at("high").number()};
            for (const std::string& name : entry.at("movements").strings())
                girth.movements.push_back(movement(entry, name));
            model_.girths.push_back(std::move(girth));
        }
    }

    void readRegion(const JsonNode& node) {
        RegionModel& region = model_.region;
        region.affected = readCurve(node.at("affected"));
        const JsonNode complete = node.at("complete_share");
        region.completeFrom = complete.at("from").number();
        region.completeTo = complete.at("to").number();
        region.completeAtFrom = complete.at("at_from").number();
        region.completeAtTo = complete.at("at_to").number();
        region.sensitisedShare = node.at("sensitised_share").number();
        region.prefixes = node.at("item_prefixes").strings();
        for (const std::string& prefix : region.prefixes) {
            const JsonNode rows = node.at("readings").at(prefix);
            region.readings.push_back({readRow(rows.at("intact"), 0), readRow(rows.at("partial"), 0),
                                       readRow(rows.at("complete"), 0), readRow(rows.at("sensitised"), 0)});
        }
    }

    AgeRows ageRows(const JsonNode& node) const {
        return {readRow(node.at("young"), 0), readRow(node.at("middle"), 0), readRow(node.at("old"), 0)};
    }

    void readReflex(const JsonNode& node) {
        ReflexModel& reflex = model_.reflex;
        reflex.prefix = node.at("item_prefix").string();
        for (const auto& [name, rows] : node.at("baseline").members()) {
            readTarget(rows, TargetKind::reflex, name, context_);
            reflex.baseline[name] = ageRows(rows);
        }
        const auto limits = node.at("age_limits").numbers();
        if (limits.size() == 2)
            model_.ageLimits = {static_cast<int>(limits[0]), static_cast<int>(limits[1])};
        else
            node.at("age_limits").fail("needs two ages");
        const std::string unknown = node.at("age_unknown").string();
        model_.ageBandUnknown = unknown == "young" ? 0 : unknown == "old" ? 2 : 1;
        reflex.dropGain = node.at("drop_gain").number();
        reflex.deadZone = node.at("dead_zone").number();
        reflex.sdQuiet = node.at("sd_quiet").number();
        reflex.sdLost = node.at("sd_lost").number();
        reflex.umnGain = node.at("umn_gain").number();
        for (const auto& [name, weight] : node.at("umn_targets").members())
            reflex.umnTargets[name] = weight.number();
        reflex.motorSeverity = node.at("severity").at("motor").number();
        reflex.sensorySeverity = node.at("severity").at("sensory").number();
        const JsonNode lively = node.at("liveliness");
        reflex.liveliness = lively.at("common").number();
        const auto levels = lively.at("levels").numbers();
        if (levels.size() == 3)
            reflex.levels = {levels[0], levels[1], levels[2]};
        else
            lively.at("levels").fail("needs three shares");
    }

    void readDeep(const JsonNode& node) {
        DeepModel deep;
        deep.item = readItemId(node.at("item"), context_);
        const std::string full = node.at("target").string();
        deep.target =
            readTarget(node.at("target"), TargetKind::region, full.substr(full.find('.') + 1), context_);
        deep.rootWeight = node.at("root_weight").number();
        deep.umnWeight = node.at("umn_weight").number();
        deep.lengthWeight = node.at("length_weight").number();
        deep.base = ageRows(node.at("base"));
        deep.high = readRow(node.at("high"), valueCount(node, deep.item, {}, context_));
        model_.deep.push_back(std::move(deep));
    }

    void readDrawn(const JsonNode& node) {
        DrawnModel& drawn = model_.drawn;
        drawn.prefix = node.at("item_prefix").string();
        drawn.blur = readCurve(node.at("blur"));
        drawn.markMax = node.at("mark_max").number();
        drawn.visible = node.at("visible_fraction").number();
        for (const auto& [name, value] : node.at("base").members())
            drawn.base[name] = value.number();
        drawn.baseDefault = node.at("base").at("default").number();
        for (const auto& [name, value] : node.at("irritable_gain").members())
            drawn.irritableGain[name] = value.number();
        for (const auto& [site, regions] : node.at("site_gain").members())
            for (const auto& [region, gain] : regions.members())
                drawn.siteGain[site][region] = gain.number();
        for (const std::string& root : node.at("irritable_roots").strings())
            drawn.irritableRoots.push_back(readNodeIndex(node, root, context_));
        drawn.splitLost = split(node.at("split_lost"));
        drawn.splitQuiet = split(node.at("split_quiet"));
    }

    /// The marks in the order of the drawing scale, "none" left out.
    Row split(const JsonNode& node) const {
        Row row;
        for (const Item& item : context_.catalogue.items()) {
            if (!item.id.text().starts_with(model_.drawn.prefix)) continue;
            for (const ScaleValue& value : item.scale.values)
                if (value.token != item.scale.normal) row.push_back(node.at(value.token).number());
            break;
        }
        return row;
    }

    void readSpread() {
        const JsonNode length = root_.at("length");
        model_.lengthReach = length.at("reach").number();
        model_.lengthRamp = length.at("ramp").number();
        const JsonNode umn = root_.at("umn");
        model_.umnSensoryWeight = umn.at("sensory_weight").number();
        for (const auto& [name, weight] : umn.at("trunk_regions").members())
            model_.umnTrunk[name] = weight.number();
    }

    void readGait(const JsonNode& node) {
        GaitModel& gait = model_.gait;
        gait.item = readItemId(node.at("item"), context_);
        const std::size_t values = valueCount(node, gait.item, {}, context_);
        gait.base = node.at("base").numbers();
        if (gait.base.size() != values) node.at("base").fail("needs one number a value");
        gait.floor = node.at("floor").number();
        for (const JsonNode& entry : node.at("features").items())
            gait.features.push_back(readFeature(entry, values));
    }

    GaitFeature readFeature(const JsonNode& node, std::size_t values) const {
        GaitFeature feature;
        const std::string full = node.at("feature").string();
        const auto colon = full.find(':');
        const std::string kind = full.substr(0, colon);
        feature.name = colon == std::string::npos ? "" : full.substr(colon + 1);
        if (kind == "loss")
            feature.movement = movement(node.at("feature"), feature.name);
        else if (kind == "umn")
            feature.kind = GaitFeature::Kind::umn;
        else if (kind == "length")
            feature.kind = GaitFeature::Kind::length;
        else if (kind == "irritable")
            feature.kind = GaitFeature::Kind::irritable;
        else if (kind == "group")
            feature.kind = GaitFeature::Kind::group;
        else if (kind == "site")
            feature.kind = GaitFeature::Kind::site;
        else
            node.at("feature").fail("unknown feature");
        feature.from = node.at("from").number();
        feature.to = node.at("to").number();
        feature.gain = node.at("gain").numbers();
        if (feature.gain.size() != values) node.at("gain").fail("needs one number a value");
        return feature;
    }

    void readWords() {
        model_.fitsAbove = root_.at("fit").at("fits_above").number();
        model_.partlyAbove = root_.at("fit").at("partly_above").number();
        const JsonNode support = root_.at("support");
        model_.supportStrong = support.at("strong").number();
        model_.supportModerate = support.at("moderate").number();
        model_.supportWeak = support.at("weak").number();
        model_.priorExponent = root_.at("prior_exponent").at("value").number();
        for (const auto& [name, node] : root_.at("cost").members()) {
            if (name == "source") continue;
            if (name == "items")
                for (const auto& [item, cost] : node.members())
                    model_.itemCost[item] = cost.number();
            else
                model_.stepCost[name] = node.number();
        }
    }

    JsonNode root_;
    ModelContext context_;
    Model& model_;
};

} // namespace

void readObservation(const JsonNode& root, const ModelContext& context, Model& model) {
    ObservationReader{root, context, model}.read();
}

} // namespace rhizograph
