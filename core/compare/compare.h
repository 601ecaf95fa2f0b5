#pragma once

#include "reasoning/knowledge.h"

#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

/// What became of one question between two visits. `created` reads "new": the finding was normal before and
/// is not now. `different` is a change that is neither good nor bad (a text, a speed of onset).
enum class Change { better, same, worse, created, resolved, different, notComparable };

/// "better", "same", "worse", "new", "resolved", "different", "not_comparable": the words of the contracts.
[[nodiscard]] std::string_view name(Change change);

/// One question at two visits.
struct ItemChange {
    FindingKey key;
    std::optional<Value> before; ///< empty: not examined then
    std::optional<Value> now;    ///< empty: not examined now
    Change change = Change::notComparable;
    std::string threshold; ///< the rule used, in words: "changed by 2 points or by 30 % of the first value"
    std::string source;    ///< where the rule comes from, with its status
    std::string because;   ///< why it is not comparable: "not examined at the earlier visit"; else empty
    double importance = 0; ///< sorts the list, greatest first; no other meaning
};

/// Skin with less or no feeling, from the regions found reduced or absent to the same way of testing.
/// An estimate on an average adult, "about", never this patient's skin.
struct NumbArea {
    GroupId group;         ///< the card of the items counted (light touch, pinprick)
    double right = 0;      ///< cm2
    double left = 0;       ///< cm2
    int examinedRight = 0; ///< regions examined; 0: nothing can be said of this side
    int examinedLeft = 0;
};

/// The painted area of one side at two visits, counted over the regions examined at both.
struct NumbAreaChange {
    GroupId group;
    Side side = Side::none;
    double before = 0; ///< cm2
    double now = 0;    ///< cm2
    int regions = 0;   ///< examined at both visits; 0: not comparable
    Change change = Change::notComparable;
    std::string threshold;
    std::string source;
    std::string because;
};

/// Everything that was examined at either visit, the most important first; also what today's catalogue does
/// not know any more.
struct VisitComparison {
    std::string earlier; ///< date of the earlier visit, or empty
    std::string later;
    std::vector<ItemChange> items;
    std::vector<NumbAreaChange> numbAreas;
};

/// Who measured at the two visits. Some thresholds are smaller for one and the same person.
enum class Examiner { unknown, same };

/// Compares a visit with any earlier one. What was not examined, or could not be tested, at one of the two is
/// not comparable, never unchanged.
[[nodiscard]] VisitComparison compareVisits(const Exam& earlier, const Exam& later,
                                            const Knowledge& knowledge,
                                            Examiner examiner = Examiner::unknown);

/// How many questions are worse or new.
[[nodiscard]] int worseCount(const VisitComparison& comparison);

/// One sided question within a visit. A side that was not examined or could not be tested is empty or says
/// so.
struct SideDifference {
    ItemId item;
    std::optional<Value> right;
    std::optional<Value> left;
    bool comparable = false;  ///< both sides tested
    bool beyondError = false; ///< the sides differ by more than measurement error
    Side lesser = Side::none; ///< the worse side, or the smaller value where neither is worse
    std::string threshold;
    std::string source;
    std::string because; ///< why not comparable
    double importance = 0;
};

/// Right against left for every sided question recorded on at least one side; differences first.
[[nodiscard]] std::vector<SideDifference> compareSides(const Exam& exam, const Knowledge& knowledge);

/// Numb area per way of testing; none where the areas of the regions are not installed.
[[nodiscard]] std::vector<NumbArea> numbAreas(const Exam& exam, const Knowledge& knowledge);

/// The numb areas of two visits, counted over the regions examined at both.
[[nodiscard]] std::vector<NumbAreaChange> compareNumbAreas(const Exam& earlier, const Exam& later,
                                                           const Knowledge& knowledge);

/// One question over all visits, oldest first; an entry per visit.
struct TrendSeries {
    FindingKey key;
    std::vector<std::optional<Value>> values;    ///< empty: not examined at that visit
    std::vector<std::optional<double>> position; ///< for drawing: the number, or the place on its scale
    std::vector<Change> sinceFirst;              ///< against the first visit at which it was tested
    std::vector<Change> sincePrevious;           ///< against the last visit before at which it was tested
    std::string threshold;
    std::string source;
    double importance = 0;
};

/// Numb area over all visits; one entry per visit, empty where that side was not examined.
struct TrendArea {
    GroupId group;
    Side side = Side::none;
    std::vector<std::optional<double>> cm2;
    std::vector<Change> sincePrevious; ///< over the regions examined at both visits
};

/// Probability of a site over all visits.
struct TrendSite {
    SiteId site;
    Side side = Side::none;
    std::vector<std::optional<double>> probability; ///< empty: nothing was found that speaks of a site
};

struct Trend {
    std::vector<std::string> dates;
    std::vector<TrendSeries> series; ///< most important first
    std::vector<TrendArea> areas;
    std::vector<TrendSite> sites;    ///< those that led at any visit
    std::vector<FindingKey> unknown; ///< recorded at some visit, but not in today's catalogue
};

/// The course over two or more visits, oldest first.
[[nodiscard]] Trend trendOf(const std::vector<Exam>& visits, const Knowledge& knowledge);

} // namespace rhizograph
