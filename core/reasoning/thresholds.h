#pragma once

#include "base/problem.h"
#include "catalogue/catalogue.h"

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rhizograph {

/// When two values of one question differ by more than measurement error, and which way is better.
struct ChangeRule {
    enum class Kind { wholeGrades, reflex, category, number, text };
    enum class Better { neither, higher, lower };

    /// Right against left within one visit.
    struct Sides {
        double least = 0;    ///< difference that counts, in units of the item or in grades
        bool beyond = false; ///< the difference must be greater, not equal
        std::string words;
        std::string source;
    };

    std::string id;
    Kind kind = Kind::category;
    double weight = 0; ///< sorts what changed; no other meaning
    std::string words; ///< the threshold for people: "one whole grade or more"
    std::string source;
    Better better = Better::neither;
    std::optional<double> change;             ///< least difference; none: no threshold known
    std::optional<double> changeSameExaminer; ///< the same by one examiner
    std::optional<double> percent;            ///< of the first value, 0 to 100
    std::optional<double> error;              ///< a change by percent must be beyond it
    std::map<std::string, int> grades;        ///< whole grade of each token
    std::optional<int> graveAtMost;           ///< a fall to this grade or below goes before others
    std::string absent;                       ///< token of a lost reflex
    ItemId sameText;            ///< comparable only where this item reads the same at both visits
    std::optional<Sides> sides; ///< none: any difference of category counts
};

/// What counts as numb skin and when its area has changed.
struct NumbAreaRule {
    std::string scale;               ///< name of the scale of the items counted
    std::vector<std::string> counts; ///< tokens of skin that feels less
    double changePercent = 0;        ///< of the earlier area
    double overlapBelowPercent = 0;  ///< shared share of both areas together
    std::string words;
    std::string source;
};

/// Rules of comparison, as loaded from thresholds.json; immutable after loading.
class Thresholds {
public:
    static Result<Thresholds> load(const std::filesystem::path& file, const Catalogue& catalogue);
    static Result<Thresholds> parse(std::string_view text, const std::string& name,
                                    const Catalogue& catalogue);

    /// Every item has one. Precondition: the item is in the catalogue loaded with.
    [[nodiscard]] const ChangeRule& rule(const ItemId& item) const { return rules_[ofItem_.at(item)]; }
    [[nodiscard]] const NumbAreaRule& numbArea() const { return numbArea_; }

private:
    friend class ThresholdReader;
    std::vector<ChangeRule> rules_;
    std::map<ItemId, std::size_t> ofItem_;
    NumbAreaRule numbArea_;
};

/// Skin area of each region on one side of an average adult, in cm2: estimates for "about", never a patient's
/// own.
using RegionAreas = std::map<std::string, double>;

/// Reads areas.json of the figures.
Result<RegionAreas> loadRegionAreas(const std::filesystem::path& file);

} // namespace rhizograph
