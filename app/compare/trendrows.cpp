#include "compare/trendrows.h"

#include "language/language.h"
#include "parts/findingwords.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>

namespace rhizograph::app {
namespace {

QString word(const std::string& text) {
    return QString::fromStdString(text);
}

bool counts(Change change) {
    return change == Change::worse || change == Change::better || change == Change::created ||
           change == Change::resolved;
}

/// Whether a number is a score that a person gives or that is added up, and no measure of the body.
bool inPoints(const std::string& unit) {
    return unit.starts_with("0-") || unit == "%" || unit == "T";
}

/// Limits of an axis that holds these figures with some room, and two ticks at round places.
void spread(TrendRow& row, double least, double most, bool fromZero) {
    if (fromZero) least = 0;
    if (most - least < 1) most = least + 1;
    const double step = std::pow(10.0, std::floor(std::log10(most - least)));
    const double unit = (most - least) / step >= 5 ? step * 2 : (most - least) / step >= 2 ? step : step / 2;
    row.low = std::floor(least / unit) * unit;
    row.high = std::ceil(most / unit) * unit;
    for (const double at : {row.low, (row.low + row.high) / 2, row.high})
        row.ticks.emplace_back(at, QString::number(at, 'g', 4));
}

class Rows {
public:
    Rows(const Trend& trend, const Knowledge& knowledge) : trend_(trend), knowledge_(knowledge) {}

    std::vector<TrendRow> build() {
        for (const TrendSeries& series : trend_.series)
            add(series);
        std::stable_sort(rows_.begin(), rows_.end(),
                         [](const TrendRow& a, const TrendRow& b) { return a.changed && !b.changed; });
        areas();
        sites();
        return std::move(rows_);
    }

private:
    static QString tr(const char* words) {
        return QCoreApplication::translate("rhizograph::app::Rows", words);
    }

    void add(const TrendSeries& series) {
        const Item* item = knowledge_.catalogue().find(series.key.item);
        if (item == nullptr || !item->region.empty()) return; // regions are counted as area
        if (!item->scale.numeric() && item->scale.kind != Scale::Kind::grade) return;
        const auto tested = std::count_if(series.position.begin(), series.position.end(),
                                          [](const auto& place) { return place.has_value(); });
        if (tested == 0) return;
        TrendRow& row = rowOf(*item);
        TrendLine line;
        line.name = series.key.side == Side::none   ? QString()
                    : series.key.side == Side::left ? tr("L")
                                                    : tr("R");
        line.dashed = series.key.side == Side::right;
        line.place = series.position;
        line.change = series.sincePrevious;
        for (const auto& value : series.values)
            line.value.push_back(value ? valueWords(*item, *value) : tr("not examined"));
        row.changed = row.changed || std::any_of(line.change.begin(), line.change.end(), counts);
        row.lines.push_back(std::move(line));
        if (item->scale.numeric()) fitNumbers(row, *item);
    }

    TrendRow& rowOf(const Item& item) {
        const QString id = word(item.id.text());
        for (TrendRow& row : rows_)
            if (row.id == id) return row;
        TrendRow row;
        row.id = id;
        row.title = medical(item.label);
        row.unit = item.sided ? tr("right, left") : QString();
        row.score = item.scale.numeric() && inPoints(item.scale.unit);
        if (!item.scale.numeric()) {
            row.low = -0.3;
            row.high = static_cast<double>(item.scale.values.size()) - 0.7;
            for (std::size_t i = 0; i < item.scale.values.size(); ++i)
                row.ticks.emplace_back(static_cast<double>(i), medical(item.scale.values[i].label));
        }
        rows_.push_back(std::move(row));
        return rows_.back();
    }

    static void fitNumbers(TrendRow& row, const Item& item) {
        double least = item.scale.maximum;
        double most = item.scale.minimum;
        for (const TrendLine& line : row.lines) {
            for (const auto& place : line.place) {
                if (!place) continue;
                least = std::min(least, *place);
                most = std::max(most, *place);
            }
        }
        row.ticks.clear();
        // A short scale shows whole, so that a slope means the same on every chart.
        const bool whole = item.scale.maximum - item.scale.minimum <= 30;
        if (whole)
            spread(row, item.scale.minimum, item.scale.maximum, item.scale.minimum >= 0);
        else
            spread(row, least, most, false);
    }

    void areas() {
        const std::size_t first = rows_.size();
        for (const TrendArea& area : trend_.areas) {
            double most = 0;
            for (const auto& place : area.cm2)
                most = std::max(most, place.value_or(0));
            if (most <= 0) continue;
            TrendRow row;
            row.id = areaCurve(area.group, area.side);
            row.title = withSide(tr("Less feeling"), area.side);
            QString group = word(area.group.text());
            for (const Group& each : knowledge_.catalogue().groups())
                if (each.id == area.group) group = inSentence(medical(each.label));
            row.unit = tr("%1, about cm²").arg(group);
            TrendLine line;
            line.dashed = area.side == Side::right;
            line.place = area.cm2;
            line.change = area.sincePrevious;
            row.changed = std::any_of(line.change.begin(), line.change.end(), counts);
            for (const auto& place : area.cm2)
                line.value.push_back(place ? QString::number(std::round(*place)) : tr("not examined"));
            row.lines.push_back(std::move(line));
            spread(row, 0, most, true);
            rows_.push_back(std::move(row));
        }
        markGreatest(first);
    }

    /// Of the rows from `first` on, the one that stands highest at the last visit always shows.
    void markGreatest(std::size_t first) {
        const auto now = [](const TrendRow& row) { return row.lines.front().place.back().value_or(0); };
        const auto most =
            std::max_element(rows_.begin() + static_cast<std::ptrdiff_t>(first), rows_.end(),
                             [&](const TrendRow& a, const TrendRow& b) { return now(a) < now(b); });
        if (most != rows_.end()) most->usual = true;
    }

    void sites() {
        const std::size_t first = rows_.size();
        for (const TrendSite& site : trend_.sites) {
            TrendRow row;
            row.id = QStringLiteral("site ") + word(site.site.text()) + sideWords(site.side);
            row.title = withSide(medical(knowledge_.siteLabel(site.site)), site.side);
            row.unit = tr("impression, %");
            row.low = 0;
            row.high = 100;
            row.ticks = {{0, QStringLiteral("0")}, {50, QStringLiteral("50")}, {100, QStringLiteral("100")}};
            TrendLine line;
            for (const auto& share : site.probability) {
                line.place.push_back(share ? std::optional{100 * *share} : std::nullopt);
                line.value.push_back(share ? percentWords(*share) : tr("nothing found yet"));
            }
            row.lines.push_back(std::move(line));
            rows_.push_back(std::move(row));
        }
        markGreatest(first);
    }

    const Trend& trend_;
    const Knowledge& knowledge_;
    std::vector<TrendRow> rows_;
};

} // namespace

QString areaCurve(const GroupId& group, Side side) {
    return QStringLiteral("area ") + word(group.text()) + sideWords(side);
}

QString curveOf(const Catalogue& catalogue, const FindingKey& key) {
    const Item* item = catalogue.find(key.item);
    return item == nullptr || item->region.empty() ? word(key.item.text()) : areaCurve(item->group, key.side);
}

std::vector<TrendRow> trendRows(const Trend& trend, const Knowledge& knowledge) {
    return Rows{trend, knowledge}.build();
}

} // namespace rhizograph::app
