#include "exchange/comparison.h"
#include "exchange/csv.h"

#include <fmt/format.h>

namespace rhizograph {
namespace {

using nlohmann::ordered_json;

ordered_json valueJson(const std::optional<Value>& value) {
    if (!value) return nullptr;
    if (value->isNumber()) return value->number();
    if (!value->testable()) return ordered_json{{"not_testable", value->word()}};
    return value->word();
}

std::string valueCsv(const std::optional<Value>& value) {
    if (!value) return {};
    if (value->isNumber()) return fmt::format("{}", value->number());
    return csvText(value->testable() ? value->word() : "not_testable");
}

std::string numberCsv(const std::optional<double>& number) {
    return number ? fmt::format("{}", *number) : std::string{};
}

ordered_json keyed(const FindingKey& key) {
    ordered_json out{{"item", key.item.text()}};
    if (key.side != Side::none) out["side"] = name(key.side);
    return out;
}

std::string sideCsv(Side side) {
    return side == Side::none ? std::string{} : std::string{name(side)};
}

ordered_json document(const char* kind) {
    return {{"format", "rhizograph.comparison"}, {"version", 1}, {"kind", kind}};
}

ordered_json orNull(const std::optional<double>& number) {
    return number ? ordered_json(*number) : ordered_json(nullptr);
}

ordered_json changes(const std::vector<Change>& list) {
    ordered_json out = ordered_json::array();
    for (const Change change : list)
        out.push_back(name(change));
    return out;
}

} // namespace

ordered_json sidesToJson(const std::vector<SideDifference>& sides) {
    ordered_json out = document("sides");
    out["items"] = ordered_json::array();
    for (const SideDifference& each : sides) {
        ordered_json row{{"item", each.item.text()},
                         {"right", valueJson(each.right)},
                         {"left", valueJson(each.left)},
                         {"comparable", each.comparable},
                         {"beyond_error", each.beyondError},
                         {"threshold", each.threshold},
                         {"source", each.source}};
        if (each.lesser != Side::none) row["lesser"] = name(each.lesser);
        if (!each.because.empty()) row["because"] = each.because;
        out["items"].push_back(std::move(row));
    }
    return out;
}

ordered_json comparisonToJson(const VisitComparison& comparison) {
    ordered_json out = document("visits");
    out["earlier"] = comparison.earlier;
    out["later"] = comparison.later;
    out["items"] = ordered_json::array();
    for (const ItemChange& each : comparison.items) {
        ordered_json row = keyed(each.key);
        row["before"] = valueJson(each.before);
        row["now"] = valueJson(each.now);
        row["change"] = name(each.change);
        row["threshold"] = each.threshold;
        row["source"] = each.source;
        if (!each.because.empty()) row["because"] = each.because;
        out["items"].push_back(std::move(row));
    }
    out["numb_areas"] = ordered_json::array();
    for (const NumbAreaChange& each : comparison.numbAreas) {
        ordered_json row{{"group", each.group.text()},  {"side", name(each.side)},
                         {"before_cm2", each.before},   {"now_cm2", each.now},
                         {"regions", each.regions},     {"change", name(each.change)},
                         {"threshold", each.threshold}, {"source", each.source}};
        if (!each.because.empty()) row["because"] = each.because;
        out["numb_areas"].push_back(std::move(row));
    }
    return out;
}

ordered_json trendToJson(const Trend& trend) {
    ordered_json out = document("trend");
    out["dates"] = trend.dates;
    out["series"] = ordered_json::array();
    for (const TrendSeries& each : trend.series) {
        ordered_json row = keyed(each.key);
        row["values"] = ordered_json::array();
        for (const auto& value : each.values)
            row["values"].push_back(valueJson(value));
        row["since_first"] = changes(each.sinceFirst);
        row["since_previous"] = changes(each.sincePrevious);
        row["threshold"] = each.threshold;
        row["source"] = each.source;
        out["series"].push_back(std::move(row));
    }
    out["numb_areas"] = ordered_json::array();
    for (const TrendArea& each : trend.areas) {
        ordered_json row{
            {"group", each.group.text()}, {"side", name(each.side)}, {"cm2", ordered_json::array()}};
        for (const auto& area : each.cm2)
            row["cm2"].push_back(orNull(area));
        row["since_previous"] = changes(each.sincePrevious);
        out["numb_areas"].push_back(std::move(row));
    }
    out["sites"] = ordered_json::array();
    for (const TrendSite& each : trend.sites) {
        ordered_json row{{"site", each.site.text()}, {"probability", ordered_json::array()}};
        for (const auto& share : each.probability)
            row["probability"].push_back(orNull(share));
        if (each.side != Side::none) row["side"] = name(each.side);
        out["sites"].push_back(std::move(row));
    }
    out["not_in_catalogue"] = ordered_json::array();
    for (const FindingKey& key : trend.unknown)
        out["not_in_catalogue"].push_back(keyed(key));
    return out;
}

std::string sidesCsv(const std::vector<SideDifference>& sides) {
    std::string out = csvRow(
        {"item", "right", "left", "comparable", "beyond_error", "lesser", "threshold", "source", "because"});
    for (const SideDifference& each : sides)
        out += csvRow({each.item.text(), valueCsv(each.right), valueCsv(each.left),
                       each.comparable ? "yes" : "no", each.beyondError ? "yes" : "no", sideCsv(each.lesser),
                       csvField(each.threshold), csvField(each.source), csvField(each.because)});
    return out;
}

std::string comparisonCsv(const VisitComparison& comparison) {
    std::string out =
        csvRow({"kind", "id", "side", "before", "now", "change", "threshold", "source", "because"});
    for (const ItemChange& each : comparison.items)
        out += csvRow({"item", each.key.item.text(), sideCsv(each.key.side), valueCsv(each.before),
                       valueCsv(each.now), std::string{name(each.change)}, csvField(each.threshold),
                       csvField(each.source), csvField(each.because)});
    for (const NumbAreaChange& each : comparison.numbAreas) {
        const bool known = each.because.empty();
        out +=
            csvRow({"numb_area_cm2", each.group.text(), sideCsv(each.side),
                    numberCsv(known ? std::optional{each.before} : std::nullopt),
                    numberCsv(known ? std::optional{each.now} : std::nullopt), std::string{name(each.change)},
                    csvField(each.threshold), csvField(each.source), csvField(each.because)});
    }
    return out;
}

std::string trendCsv(const Trend& trend, const std::vector<PatientEvent>& events) {
    std::string out =
        csvRow({"kind", "id", "side", "visit", "date", "value", "since_first", "since_previous"});
    for (const TrendSeries& each : trend.series)
        for (std::size_t i = 0; i < each.values.size(); ++i)
            out += csvRow({"item", each.key.item.text(), sideCsv(each.key.side), std::to_string(i + 1),
                           trend.dates[i], valueCsv(each.values[i]), std::string{name(each.sinceFirst[i])},
                           std::string{name(each.sincePrevious[i])}});
    for (const TrendArea& each : trend.areas)
        for (std::size_t i = 0; i < each.cm2.size(); ++i)
            out += csvRow({"numb_area_cm2",
                           each.group.text(),
                           sideCsv(each.side),
                           std::to_string(i + 1),
                           trend.dates[i],
                           numberCsv(each.cm2[i]),
                           {},
                           std::string{name(each.sincePrevious[i])}});
    for (const TrendSite& each : trend.sites)
        for (std::size_t i = 0; i < each.probability.size(); ++i)
            out += csvRow({"site_probability",
                           each.site.text(),
                           sideCsv(each.side),
                           std::to_string(i + 1),
                           trend.dates[i],
                           numberCsv(each.probability[i]),
                           {},
                           {}});
    for (const PatientEvent& each : events)
        out += csvRow({"event", csvText(each.kind), {}, {}, each.date, csvText(each.text), {}, {}});
    return out;
}

} // namespace rhizograph
