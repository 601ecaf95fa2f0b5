#include "base/parallel.h"
#include "compare/visitjudge.h"
#include "reasoning/localizer.h"

#include <algorithm>
#include <map>
#include <set>
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
        for (const Item& item : knowledge_.catalogue().items())
            for (const Side side : {Side::none, Side::right, Side::left})
                if (auto series = seriesOf(item, {item.id, side})) out.series.push_back(std::move(*series));
        std::stable_sort(
            out.series.begin(), out.series.end(),
            [](const TrendSeries& a, const TrendSeries& b) { return a.importance > b.importance; });
        out.areas = areas();
        out.sites = sites();
        out.unknown = unknown();
        return out;
    }

private:
    [[nodiscard]] std::optional<TrendSeries> seriesOf(const Item& item, const FindingKey& key) const {
        TrendSeries out;
        out.key = key;
        const ChangeRule& rule = knowledge_.thresholds().rule(item.id);
        out.threshold = rule.words;
        out.source = rule.source;
        std::vector<std::size_t> tested;
        for (std::size_t visit = 0; visit < visits_.size(); ++visit) {
            const Finding* finding = visits_[visit].find(key);
            const bool known = finding != nullptr && finding->value.testable() &&
                               !check(knowledge_.catalogue(), key, finding->value);
            out.values.push_back(finding == nullptr ? std::nullopt : std::optional{finding->value});
            out.position.push_back(known ? place(item, finding->value) : std::nullopt);
            const bool comparable = known && !tested.empty();
            out.sinceFirst.push_back(comparable ? change(visit, tested.front(), out) : Change::notComparable);
            out.sincePrevious.push_back(!comparable          ? Change::notComparable
                                        : tested.size() == 1 ? out.sinceFirst.back()
                                                             : change(visit, tested.back(), out));
            if (known) tested.push_back(visit);
        }
        return tested.size() < 2 ? std::nullopt : std::optional{std::move(out)};
    }

    Change change(std::size_t later, std::size_t earlier, TrendSeries& series) const {
        const VisitJudge judge{visits_[earlier], visits_[later], knowledge_, Examiner::unknown};
        const ItemChange found = judge.judge(series.key);
        series.importance = std::max(series.importance, found.importance);
        return found.change;
    }

    static std::optional<double> place(const Item& item, const Value& value) {
        if (value.isNumber()) return value.number();
        const auto index = item.scale.index(value.word());
        return index ? std::optional<double>{static_cast<double>(*index)} : std::nullopt;
    }

    /// By earlier and later visit; sides and ways of testing mostly share theirs.
    using PairChanges = std::map<std::pair<std::size_t, std::size_t>, std::vector<NumbAreaChange>>;

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
        PairChanges known;
        for (auto& [key, row] : rows) {
            auto changes = areaChanges(key.first, key.second, row, known);
            out.push_back({key.first, key.second, std::move(row), std::move(changes)});
        }
        return out;
    }

    /// Against the last visit before at which a region of that side was examined.
    [[nodiscard]] std::vector<Change> areaChanges(const GroupId& group, Side side,
                                                  const std::vector<std::optional<double>>& cm2,
                                                  PairChanges& known) const {
        std::vector<Change> out(visits_.size(), Change::notComparable);
        std::optional<std::size_t> before;
        for (std::size_t visit = 0; visit < cm2.size(); ++visit) {
            if (!cm2[visit]) continue;
            if (before) {
                const auto [pair, fresh] = known.try_emplace({*before, visit});
                if (fresh) pair->second = compareNumbAreas(visits_[*before], visits_[visit], knowledge_);
                for (const NumbAreaChange& each : pair->second)
                    if (each.group == group && each.side == side) out[visit] = each.change;
            }
            before = visit;
        }
        return out;
    }

    /// Whether anything was found that the localization reads.
    [[nodiscard]] bool speaks(const Exam& exam) const {
        const auto& findings = exam.findings();
        return std::any_of(findings.begin(), findings.end(), [&](const auto& each) {
            return each.second.value.testable() &&
                   knowledge_.localizer().engine().place(each.first) != nullptr;
        });
    }

    [[nodiscard]] std::vector<TrendSite> sites() const {
        using Sites = std::vector<Localizer::SiteProbability>;
        std::vector<Sites> all(visits_.size());
        inTwoThreads(visits_.size(), [&](std::size_t visit) {
            if (speaks(visits_[visit])) all[visit] = knowledge_.localizer().posterior(visits_[visit]);
        });
        std::vector<TrendSite> out;
        for (const Sites& sites : all) {
            if (sites.empty()) continue;
            const auto first = std::max_element(sites.begin(), sites.end(), [](const auto& a, const auto& b) {
                return a.probability < b.probability;
            });
            const bool listed = std::any_of(out.begin(), out.end(), [&](const TrendSite& site) {
                return site.site == first->site && site.side == first->side;
            });
            if (!listed) out.push_back({first->site, first->side, {}});
        }
        for (TrendSite& site : out)
            for (const Sites& sites : all)
                site.probability.push_back(probability(sites, site));
        return out;
    }

    static std::optional<double> probability(const std::vector<Localizer::SiteProbability>& sites,
                                             const TrendSite& site) {
        for (const auto& each : sites)
            if (each.site == site.site && each.side == site.side) return each.probability;
        return std::nullopt;
    }

    [[nodiscard]] std::vector<FindingKey> unknown() const {
        std::set<FindingKey> out;
        for (const Exam& visit : visits_)
            for (const auto& [key, finding] : visit.findings())
                if (knowledge_.catalogue().find(key.item) == nullptr) out.insert(key);
        return {out.begin(), out.end()};
    }

    const std::vector<Exam>& visits_;
    const Knowledge& knowledge_;
};

} // namespace

Trend trendOf(const std::vector<Exam>& visits, const Knowledge& knowledge) {
    return TrendBuilder{visits, knowledge}.build();
}

} // namespace rhizograph
