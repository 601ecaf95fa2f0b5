#include "exchange/comparison.h"

#include <array>
#include <fmt/format.h>

namespace rhizograph {
namespace {

constexpr std::array kOrder = {Change::worse,     Change::created, Change::better,       Change::resolved,
                               Change::different, Change::same,    Change::notComparable};

std::string valueWords(const Wording& words, const Item& item, const std::optional<Value>& value) {
    return value ? words.value(item, *value) : words.word("not_examined");
}

/// "bladder function normal" after "bladder": the name is not said twice.
std::string afterSubject(const std::string& subject, std::string value) {
    if (value.size() <= subject.size() || lowerFirst(value).compare(0, subject.size(), subject) != 0)
        return value;
    const std::size_t next = value.find_first_not_of(": ", subject.size());
    const bool wordEnds = next != subject.size();
    return wordEnds && next != std::string::npos ? value.substr(next) : value;
}

std::string listOf(const Wording& words, const VisitComparison& comparison, Change change) {
    std::string out;
    for (const ItemChange& each : comparison.items)
        if (each.change == change) out += (out.empty() ? "" : "; ") + changeWords(words, each);
    return out;
}

/// What was abnormal at the earlier visit and cannot be compared.
std::string lostFromSight(const Wording& words, const VisitComparison& comparison) {
    std::string out;
    for (const ItemChange& each : comparison.items) {
        const Item* item = words.catalogue().find(each.key.item);
        if (each.change != Change::notComparable || !each.before || item == nullptr) continue;
        const Look look = lookOf(item->scale, *each.before);
        if (look == Look::normal || look == Look::plain) continue;
        out += (out.empty() ? "" : "; ") + changeWords(words, each);
    }
    return out;
}

std::string fill(const Wording& words, const std::string& key, std::map<std::string, std::string> text) {
    PhraseFields fields;
    fields.text = std::move(text);
    return fillPhrase(words.word(key), fields);
}

std::string since(const Wording& words, const std::string& date) {
    return date.empty() ? words.word("comparison_undated")
                        : fill(words, "comparison_since", {{"date", date}});
}

std::string headed(const Wording& words, Change change, const std::string& list) {
    return list.empty() ? list : words.word("change." + std::string{name(change)}) + ": " + list;
}

/// A value of a question that the catalogue does not know any more, as it was stored.
std::string rawWords(const Wording& words, const std::optional<Value>& value) {
    if (!value) return words.word("not_examined");
    return value->isNumber() ? fmt::format("{}", value->number()) : value->word();
}

std::string groupWords(const Wording& words, const GroupId& id) {
    for (const Group& group : words.catalogue().groups())
        if (group.id == id) return lowerFirst(group.label);
    return id.text();
}

/// "about 300 cm²", or that nothing was examined.
std::string areaWords(const Wording& words, const std::optional<double>& cm2) {
    return cm2 ? fmt::format("about {:.0f} cm²", *cm2) : words.word("not_examined");
}

/// The words of one line after another, joined by arrows; what a change came to stands behind it.
std::string course(const Wording& words, const std::vector<std::string>& values,
                   const std::vector<Change>& changes) {
    std::string out;
    for (std::size_t i = 0; i < values.size(); ++i) {
        out += (i == 0 ? "" : " → ") + values[i];
        const Change change = i < changes.size() ? changes[i] : Change::notComparable;
        if (change != Change::notComparable && change != Change::same)
            out += " (" + lowerFirst(words.word("change." + std::string{name(change)})) + ")";
    }
    return out;
}

std::string seriesText(const Wording& words, const TrendSeries& series) {
    const Item* item = words.catalogue().find(series.key.item);
    if (item == nullptr) return {};
    std::vector<std::string> values;
    for (const auto& value : series.values)
        values.push_back(valueWords(words, *item, value));
    return fmt::format("{}: {}\n", words.subject(series.key), course(words, values, series.sincePrevious));
}

std::string areaText(const Wording& words, const TrendArea& area) {
    std::vector<std::string> values;
    for (const auto& cm2 : area.cm2)
        values.push_back(areaWords(words, cm2));
    return fmt::format("Numb skin, {}, {}: {}\n", groupWords(words, area.group), words.side(area.side),
                       course(words, values, area.sincePrevious));
}

std::string siteText(const Wording& words, const TrendSite& site) {
    std::vector<std::string> values;
    for (const auto& share : site.probability)
        values.push_back(share ? fmt::format("{:.0f} %", 100 * *share) : words.word("not_examined"));
    return fmt::format("Probability of {}: {}\n", words.site(site.site, site.side),
                       course(words, values, {}));
}

} // namespace

std::string changeWords(const Wording& words, const ItemChange& change) {
    const Item* item = words.catalogue().find(change.key.item);
    if (item == nullptr)
        return fill(words, "changed_value",
                    {{"finding", words.onSide(change.key.item.text(), change.key.side)},
                     {"before", rawWords(words, change.before)},
                     {"now", rawWords(words, change.now)}});
    const std::string subject = words.subject(change.key);
    return fill(words, "changed_value",
                {{"finding", subject},
                 {"before", afterSubject(subject, valueWords(words, *item, change.before))},
                 {"now", afterSubject(subject, valueWords(words, *item, change.now))}});
}

NarrativeSection comparisonSection(const Wording& words, const VisitComparison& comparison) {
    NarrativeSection out{"comparison", since(words, comparison.earlier), {}, {}, {}};
    for (const Change change : {Change::worse, Change::created})
        addSentence(out.positives, headed(words, change, listOf(words, comparison, change)));
    for (const Change change : {Change::better, Change::resolved, Change::different})
        addSentence(out.rest, headed(words, change, listOf(words, comparison, change)));
    bool compared = false;
    for (const ItemChange& each : comparison.items)
        compared = compared || each.change != Change::notComparable;
    if (compared && out.positives.empty() && out.rest.empty()) out.rest = words.word("change.none");
    addSentence(out.notExamined, headed(words, Change::notComparable, lostFromSight(words, comparison)));
    return out;
}

std::string sidesText(const Wording& words, const std::vector<SideDifference>& sides) {
    std::string out;
    for (const SideDifference& each : sides) {
        const Item* item = words.catalogue().find(each.item);
        if (item == nullptr) continue;
        const std::string verdict = !each.comparable ? each.because
                                    : each.beyondError
                                        ? fmt::format("differs by {} [{}]", each.threshold, each.source)
                                        : std::string{"no difference beyond the threshold"};
        out +=
            fmt::format("{}: right {}, left {} ({})\n", words.subject({each.item, Side::none}),
                        valueWords(words, *item, each.right), valueWords(words, *item, each.left), verdict);
    }
    return out;
}

std::string comparisonText(const Wording& words, const VisitComparison& comparison) {
    std::string out = since(words, comparison.earlier) + "\n";
    for (const Change change : kOrder) {
        std::string lines;
        for (const ItemChange& each : comparison.items)
            if (each.change == change)
                lines +=
                    fmt::format("  {}\n      {}\n", changeWords(words, each),
                                each.because.empty() ? fmt::format("{} [{}]", each.threshold, each.source)
                                                     : each.because);
        if (!lines.empty()) out += "\n" + words.word("change." + std::string{name(change)}) + "\n" + lines;
    }
    for (const NumbAreaChange& area : comparison.numbAreas)
        out += area.because.empty()
                   ? fmt::format("\nNumb skin, {}, {}: about {:.0f} cm² → about {:.0f} cm² over {} regions: "
                                 "{} ({}) [{}]\n",
                                 groupWords(words, area.group), words.side(area.side), area.before, area.now,
                                 area.regions, words.word("change." + std::string{name(area.change)}),
                                 area.threshold, area.source)
                   : fmt::format("\nNumb skin, {}, {}: {}\n", groupWords(words, area.group),
                                 words.side(area.side), area.because);
    return out;
}

std::string trendText(const Wording& words, const Trend& trend) {
    std::string out;
    for (std::size_t i = 0; i < trend.dates.size(); ++i)
        out += fmt::format("{}{}", i == 0 ? "" : " → ", trend.dates[i].empty() ? "undated" : trend.dates[i]);
    out += '\n';
    for (const TrendSeries& series : trend.series)
        out += seriesText(words, series);
    for (const TrendArea& area : trend.areas)
        out += areaText(words, area);
    for (const TrendSite& site : trend.sites)
        out += siteText(words, site);
    for (const FindingKey& key : trend.unknown)
        out += fmt::format("{}: recorded, but not in today's catalogue\n",
                           words.onSide(key.item.text(), key.side));
    return out;
}

} // namespace rhizograph
