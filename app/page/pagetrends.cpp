#include "page/pagecontent.h"

#include "compare/compare.h"
#include "exchange/wording.h"

#include <algorithm>
#include <set>

// The small charts of the course over all visits.

namespace rhizograph::app {
namespace {

/// The ends of the chart: the scale where it is a list, else what was found.
std::pair<double, double> spanOf(const Item& item, const std::vector<const TrendSeries*>& sides) {
    if (item.scale.listed()) return {0, static_cast<double>(item.scale.values.size() - 1)};
    double low = item.scale.maximum;
    double high = item.scale.minimum;
    for (const TrendSeries* side : sides)
        for (const auto& place : side->position)
            if (place) {
                low = std::min(low, *place);
                high = std::max(high, *place);
            }
    return {low, high};
}

std::size_t pointsOf(const TrendSeries& series) {
    return static_cast<std::size_t>(std::count_if(series.position.begin(), series.position.end(),
                                                  [](const auto& place) { return place.has_value(); }));
}

bool changes(const TrendSeries& series) {
    return std::any_of(series.sinceFirst.begin(), series.sinceFirst.end(), [](Change change) {
        return change != Change::same && change != Change::notComparable;
    });
}

/// "left 4/5 → 2/5" from the first and the last value that could be tested.
std::string coursesWords(const Wording& words, const Item& item, const TrendSeries& series) {
    const Value* first = nullptr;
    const Value* last = nullptr;
    for (const auto& value : series.values) {
        if (!value || !value->testable()) continue;
        if (first == nullptr) first = &*value;
        last = &*value;
    }
    if (first == nullptr) return {};
    const std::string side = words.side(series.key.side);
    return side + (side.empty() ? "" : " ") + words.value(item, *first) + " → " + words.value(item, *last);
}

PageTrend trendOf(const Item& item, const std::vector<const TrendSeries*>& sides, const Wording& words) {
    const auto [low, high] = spanOf(item, sides);
    PageTrend out;
    out.title = QString::fromStdString(upperFirst(words.subject({item.id, Side::none})));
    for (const TrendSeries* side : sides) {
        PageTrendLine line;
        line.name = QString::fromStdString(words.side(side->key.side));
        line.left = side->key.side == Side::left;
        for (const auto& place : side->position)
            line.places.push_back(!place       ? std::nullopt
                                  : high > low ? std::optional{(*place - low) / (high - low)}
                                               : std::optional{0.5});
        out.lines.push_back(std::move(line));
        const std::string said = coursesWords(words, item, *side);
        if (said.empty()) continue;
        out.words += (out.words.isEmpty() ? QString() : QStringLiteral("; ")) + QString::fromStdString(said);
    }
    return out;
}

} // namespace

void addTrends(PageContent& content, const std::vector<Exam>& visits, const Knowledge& knowledge,
               std::size_t most) {
    if (visits.size() < 2) return;
    const Wording words{knowledge, Units::metric};
    const Trend trend = rhizograph::trendOf(visits, knowledge);
    for (const std::string& date : trend.dates)
        content.trendDates.push_back(longDate(date));
    std::set<ItemId> shown;
    for (const TrendSeries& series : trend.series) {
        if (content.trends.size() == most) break;
        if (!changes(series) || pointsOf(series) < 2 || shown.contains(series.key.item)) continue;
        const Item* item = knowledge.catalogue().find(series.key.item);
        if (item == nullptr) continue;
        std::vector<const TrendSeries*> sides;
        for (const TrendSeries& other : trend.series)
            if (other.key.item == item->id && pointsOf(other) > 0) sides.push_back(&other);
        std::sort(sides.begin(), sides.end(), [](const TrendSeries* a, const TrendSeries* b) {
            return (a->key.side == Side::right) > (b->key.side == Side::right);
        });
        shown.insert(item->id);
        content.trends.push_back(trendOf(*item, sides, words));
    }
}

} // namespace rhizograph::app
