#include "compare/judge.h"
#include "reasoning/localizer.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace rhizograph {
namespace {

class TrendBuilder {
public:
    TrendBuilder(const std::vector<Exam>& visits, const Knowledge& knowledge)
        : visits_(visits), knowledge_(knowledge) {}

    Trend build() {
        Trend out;
        for (const Exam& visit : visits_)
            out.dates.push_back(visit.date);
        compareAll();
        for (const Item& item : knowledge_.catalogue().items())
            for (const Side side : {Side::none, Side::right, Side::left})
                if (auto series = seriesOf(item, side)) out.series.push_back(std::move(*series));
        std::stable_sort(
            out.series.begin(), out.series.end(),
            [](const TrendSeries& a, const TrendSeries& b) { return a.importance > b.importance; });
        out.areas = areas();
        out.sites = sites();
        return out;
    }

private:
    /// Every pair of visits, judged once: changes_[later][earlier][key].
    void compareAll() {
        for (std::size_t later = 0; later < visits_.size(); ++later) {
            changes_.emplace_back();
            for (std::size_t earlier = 0; earlier < later; ++earlier) {
                std::map<FindingKey, ItemChange> byKey;
                for (ItemChange& change : compareVisits(visits_[earlier], visits_[later], knowledge_).items)
                    byKey.emplace(change.key, std::move(change));
                changes_.back().push_back(std::move(byKey));
            }
        }
    }

    [[nodiscard]] std::optional<TrendSeries> seriesOf(const Item& item, Side side) const {
        TrendSeries out;
        out.key = {item.id, side};
        const ChangeRule& rule = knowledge_.thresholds().rule(item.id);
        out.threshold = rule.words;
        out.source = rule.source;
        std::vector<std::size_t> tested;
        for (std::size_t visit = 0; visit < visits_.size(); ++visit) {
            const Finding* finding = visits_[visit].find(out.key);
            const bool known = finding != nullptr && finding->value.testable();
            out.values.push_back(finding == nullptr ? std::nullopt : std::optional{finding->value});
            out.position.push_back(known ? place(item, finding->value) : std::nullopt);
            out.sinceFirst.push_back(known && !tested.empty() ? change(visit, tested.front(), out)
                                                              : Change::notComparable);
            out.sincePrevious.push_back(known && !tested.empty() ? change(visit, tested.back(), out)
                                                                 : Change::notComparable);
            if (known) tested.push_back(visit);
        }
        return tested.size() < 2 ? std::nullopt : std::optional{std::move(out)};
    }

    Change change(std::size_t later, std::size_t earlier, TrendSeries& series) const {
        const ItemChange& found = changes_[later][earlier].at(series.key);
        series.importance = std::max(series.importance, found.importance);
        return found.change;
    }

    static std::optional<double> place(const Item& item, const Value& value) {
        if (value.isNumber()) return value.number();
        const auto index = item.scale.index(value.word());
        return index ? std::optional<double>{static_cast<double>(*index)} : std::nullopt;
    }

    [[nodiscard]] std::vector<TrendArea> areas() const {
        std::map<std::pair<GroupId, Side>, std::vector<std::optional<double>>> rows;
        for (std::size_t visit = 0; visit < visits_.size(); ++visit)
            for (const NumbArea& area : numbAreas(visits_[visit], knowledge_))
                for (const auto& [side, cm2, examined] :
                     {std::tuple{Side::right, area.right, area.examinedRight},
                      std::tuple{Side::left, area.left, area.examinedLeft}}) {
                    if (examined == 0) continue;
                    auto& row = rows[{area.group, side}];
                    row.resize(visits_.size());
                    row[visit] = cm2;
                }
        std::vector<TrendArea> out;
        for (auto& [key, row] : rows)
            out.push_back({key.first, key.second, std::move(row)});
        return out;
    }

    [[nodiscard]] std::vector<TrendSite> sites() const {
        std::vector<Assessment> assessments(visits_.size());
        std::vector<TrendSite> out;
        for (std::size_t visit = 0; visit < visits_.size(); ++visit) {
            knowledge_.localizer().localize(visits_[visit], assessments[visit]);
            if (assessments[visit].nothingKnown || assessments[visit].localization.empty()) continue;
            const SiteResult& first = assessments[visit].localization.front();
            const bool listed = std::any_of(out.begin(), out.end(), [&](const TrendSite& site) {
                return site.site == first.site && site.side == first.side;
            });
            if (!listed) out.push_back({first.site, first.side, {}});
        }
        for (TrendSite& site : out)
            for (const Assessment& assessment : assessments)
                site.probability.push_back(probability(assessment, site));
        return out;
    }

    static double probability(const Assessment& assessment, const TrendSite& site) {
        if (assessment.nothingKnown) return 0;
        for (const SiteResult& result : assessment.localization)
            if (result.site == site.site && result.side == site.side) return result.probability;
        return 0;
    }

    const std::vector<Exam>& visits_;
    const Knowledge& knowledge_;
    std::vector<std::vector<std::map<FindingKey, ItemChange>>> changes_;
};

} // namespace

Trend trendOf(const std::vector<Exam>& visits, const Knowledge& knowledge) {
    return TrendBuilder{visits, knowledge}.build();
}

} // namespace rhizograph
