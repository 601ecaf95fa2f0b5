#pragma once

#include "anatomy/anatomy.h"
#include "base/problem.h"
#include "catalogue/catalogue.h"
#include "exam/side.h"
#include "reasoning/assessment.h"

#include <array>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rhizograph {

using Row = std::vector<double>; ///< a probability distribution over the values of an item

/// Straight lines between points (x rising), flat outside.
class Curve {
public:
    Curve() = default;
    explicit Curve(std::vector<std::pair<double, double>> points) : points_(std::move(points)) {}
    [[nodiscard]] double operator()(double x) const;
    [[nodiscard]] bool empty() const { return points_.empty(); }

private:
    std::vector<std::pair<double, double>> points_;
};

/// Hidden severities of a kind of site: motor, sensory given motor, and irritability.
struct HiddenPrior {
    std::vector<double> motor;
    std::vector<std::vector<double>> sensoryGivenMotor;
    double irritable = 0;
};

/// One way a site can be damaged: which nodes, and the losses that are not fibre loss.
struct Variant {
    double weight = 1;
    std::vector<std::pair<NodeIndex, double>> lesions; ///< node and its factor in [0, 1]
    double umn = 0;                                    ///< upper motor neuron factor
    double length = 0;                                 ///< length-dependent factor
    double areflexia =
        0; ///< added to the reflex severity; with umn: the share of reflexes lost in the early, flaccid phase
    double umnSkin =
        1; ///< share of the umn sensory loss that touch and pin show; deep sensation shows all of it
    double umnReflex = 1;    ///< share of the umn gain of reflexes that shows
    double umnOtherSide = 0; ///< sensory factor on the side that the umn lesion leaves strong (half cord)
};

struct AgeFactor {
    int from = 0;
    double below = 1;
    double above = 1;
};

/// A named place of damage with its prior weight on each side.
struct SiteModel {
    SiteId id;
    std::string label;
    std::string group;
    SiteId reportAs; ///< the site under which it is reported; itself for most
    std::vector<std::pair<Side, double>> sides;
    HiddenPrior hidden;
    double equal = 1; ///< two-sided: probability that both sides are alike
    double minor = 1; ///< else the factor of the lesser side
    std::vector<Variant> variants;
    std::optional<AgeFactor> age;
    std::string source;
};

/// P(value | site) of one item; see engine-formulas, "table".
struct TableModel {
    ItemId item;
    std::vector<double> bins; ///< borders of a number scale; empty for choices
    std::size_t values = 0;
    bool opposite = false; ///< the row holds when the other side is affected
    Row fallback;
    std::map<std::string, Row> rows, irritable, irritableOpposite;
    std::optional<Row> bothRow;
    double epsilon = 0;
    std::string source;
};

/// One reading of a hidden yes/no.
struct SharedReading {
    ItemId item;
    std::vector<double> bins;
    Row no, yes;
};

struct SharedModel {
    std::string id;
    bool sided = false;
    Row fallback;
    std::map<std::string, Row> rows, irritable;
    std::vector<SharedReading> readings;
};

struct RashItem {
    ItemId item;
    Row clear, rash;
};

struct RashModel {
    std::size_t regions = 0;
    double baseEach = 0, elsewhere = 0, rightRegion = 0, noRegion = 0, falseRegion = 0;
    std::map<std::string, Row> rows;
    std::vector<RashItem> items;
    ItemId regionItem;
};

struct StrengthModel {
    std::string prefix;
    std::vector<double> grades; ///< in the order of the scale
    Curve curve;
    double sdAt5 = 0, sdBelow = 0, sdFullAtGrade = 0;
    std::vector<std::pair<ItemId, std::string>>
        unreliableWhen;      ///< findings that make a side's grades count less
    Row noise;               ///< what a wrong grade looks like: near misses far more often than gross ones
    double guardedShare = 0; ///< chance that pain or effort lowers all grades of a limb alike
    double guardedDrop = 0;  ///< by how many grades it lowers them
    double guardedSd = 0;
};

using MovementWeights = std::vector<std::pair<std::size_t, double>>; ///< target index and weight

struct AbilityModel {
    ItemId item;
    MovementWeights movements;
    double mid = 0, unable = 0, slope = 1;
    Row base;
};

struct YesByLossModel {
    ItemId item;
    MovementWeights movements;
    double mid = 0, slope = 1, low = 0, high = 1;
    std::map<std::string, double> lowBySite; ///< sites where it is seen without a loss (a painful joint)
};

struct CountModel {
    ItemId item;
    std::size_t movement = 0;
    std::vector<double> bins;
    std::vector<std::pair<double, Row>> rows; ///< by loss, rising
};

struct WastingModel {
    ItemId item;
    std::vector<std::vector<std::size_t>> movements; ///< by value; empty for "none"
    Row base;
    double gain = 0;
    double noneDrop = 0;
};

struct GirthModel {
    ItemId item;
    std::vector<std::size_t> movements;
    double limit = 0, low = 0, high = 0;
};

struct RegionModel {
    std::vector<std::string> prefixes; ///< of the items that read a region, e.g. touch and pin
    Curve affected;
    double completeFrom = 0, completeTo = 1, completeAtFrom = 0, completeAtTo = 0;
    double sensitisedShare = 0;
    std::vector<std::array<Row, 4>> readings; ///< by prefix: rows for intact, partial, complete, sensitised
};

using AgeRows = std::array<Row, 3>; ///< young, middle, old

struct ReflexModel {
    std::string prefix;
    std::map<std::string, AgeRows> baseline;
    double dropGain = 0, deadZone = 0, sdQuiet = 0, sdLost = 0, umnGain = 0;
    std::map<std::string, double> umnTargets;
    double motorSeverity = 1, sensorySeverity = 0;
    double liveliness = 0; ///< how far one person's reflexes rise and fall together, 0 to 1
    std::array<double, 3> levels{0.2, 0.6, 0.2}; ///< shares of quiet, usual and lively people
};

struct DeepModel {
    ItemId item;
    std::size_t target = 0;
    double rootWeight = 0, umnWeight = 0, lengthWeight = 0;
    AgeRows base;
    Row high;
};

struct DrawnModel {
    std::string prefix;
    Curve blur;
    double markMax = 0, visible = 0, baseDefault = 0;
    std::map<std::string, double> base, irritableGain;
    std::map<std::string, std::map<std::string, double>> siteGain; ///< by site and region, on its side
    std::vector<NodeIndex> irritableRoots;
    Row splitLost, splitQuiet; ///< over the marks, "none" left out
};

struct GaitFeature {
    enum class Kind { loss, umn, length, irritable, group, site };
    Kind kind = Kind::loss;
    std::size_t movement = 0;
    std::string name;
    double from = 0, to = 1;
    Row gain;
};

struct GaitModel {
    ItemId item;
    Row base;
    std::vector<GaitFeature> features;
    double floor = 0;
};

struct LevelModel {
    SiteId site;
    std::vector<Level> fits;
};

/// Everything of observation.json and sites.json in typed form; targets and nodes resolved against the
/// anatomy.
struct Model {
    Anatomy anatomy;
    std::vector<double> motorLevels, sensoryLevels;
    std::map<std::string, double> epsilon;
    std::array<int, 2> ageLimits{50, 65};
    int ageBandUnknown = 1;

    StrengthModel strength;
    std::vector<AbilityModel> abilities;
    std::vector<YesByLossModel> yesByLoss;
    std::vector<CountModel> counts;
    std::optional<WastingModel> wasting;
    std::vector<GirthModel> girths;
    RegionModel region;
    ReflexModel reflex;
    std::vector<DeepModel> deep;
    DrawnModel drawn;
    double lengthReach = 0, lengthRamp = 1;
    double umnSensoryWeight = 0;
    std::map<std::string, double> umnTrunk;
    GaitModel gait;

    std::vector<SiteModel> sites;
    std::vector<TableModel> tables;
    std::vector<SharedModel> shared;
    std::optional<RashModel> rash;
    std::vector<LevelModel> levels;

    double fitsAbove = 0, partlyAbove = 0;
    double supportStrong = 0.8, supportModerate = 0.5, supportWeak = 0.25;
    std::map<std::string, double> stepCost, groupCost, itemCost;
    double priorExponent =
        1; ///< exponent on the site priors: below 1 for a referral mix richer in rare sites

    /// 0 young, 1 middle, 2 old.
    [[nodiscard]] int ageBand(std::optional<int> age) const;
};

/// Reads and validates anatomy.json, observation.json and sites.json of a directory against the catalogue.
Result<Model> loadModel(const std::filesystem::path& directory, const Catalogue& catalogue);

} // namespace rhizograph
