#include "settings/clinicsettings.h"

#include <charconv>
#include <iterator>
#include <sstream>

namespace rhizograph::app {
namespace {

constexpr const char* letterheadKey = "letterhead";
constexpr const char* lengthKey = "length_unit";
constexpr const char* gradesKey = "split_grades";
constexpr const char* idleKey = "idle_minutes";
constexpr const char* backupsKey = "backups_kept";
constexpr const char* phrasesKey = "phrases";
constexpr const char* orderKey = "step_order";
constexpr const char* waitingKey = "items_behind_more";
constexpr const char* atOnceKey = "items_at_once";

std::string word(bool yes) {
    return yes ? "yes" : "no";
}

/// Changes `target` when the text is a number within the range.
void readNumber(const std::string& text, int least, int most, int& target) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error == std::errc{} && end == text.data() + text.size() && number >= least && number <= most)
        target = number;
}

/// Ids in one line; a blank never stands in an id.
std::vector<std::string> ids(const std::string& line) {
    std::istringstream words(line);
    return {std::istream_iterator<std::string>(words), {}};
}

std::set<ItemId> itemIds(const std::string& line) {
    std::set<ItemId> out;
    for (const std::string& id : ids(line))
        out.insert(ItemId{id});
    return out;
}

std::string line(const std::vector<std::string>& words) {
    std::string out;
    for (const std::string& each : words)
        out += (out.empty() ? "" : " ") + each;
    return out;
}

std::string line(const std::set<ItemId>& items) {
    std::vector<std::string> words;
    for (const ItemId& item : items)
        words.push_back(item.text());
    return line(words);
}

} // namespace

Result<ClinicSettings> loadClinicSettings(Store& store) {
    ClinicSettings out;
    auto name = store.clinicName();
    if (!name) return name.problems();
    out.letterhead = *name;
    Problems problems;
    const auto read = [&](const char* key) -> std::optional<std::string> {
        auto value = store.setting(key);
        if (value) return *value;
        problems = value.problems();
        return std::nullopt;
    };
    if (const auto text = read(letterheadKey)) out.letterhead = *text;
    if (const auto text = read(lengthKey)) out.inches = *text == "in";
    if (const auto text = read(gradesKey)) out.splitGrades = *text == word(true);
    if (const auto text = read(idleKey)) readNumber(*text, 1, 120, out.idleMinutes);
    if (const auto text = read(backupsKey)) readNumber(*text, 0, 3650, out.backupsKept);
    if (const auto text = read(phrasesKey)) out.phrases = *text;
    if (const auto text = read(orderKey)) out.stepOrder = ids(*text);
    if (const auto text = read(waitingKey)) out.places.behindMore = itemIds(*text);
    if (const auto text = read(atOnceKey)) out.places.atOnce = itemIds(*text);
    if (!problems.empty()) return problems;
    return out;
}

Outcome saveClinicSettings(Store& store, const ClinicSettings& before, const ClinicSettings& after) {
    Outcome outcome;
    const auto write = [&](bool changed, const char* key, const std::string& value) {
        if (changed && outcome) outcome = store.setSetting(key, value);
    };
    write(after.letterhead != before.letterhead, letterheadKey, after.letterhead);
    write(after.inches != before.inches, lengthKey, after.inches ? "in" : "cm");
    write(after.splitGrades != before.splitGrades, gradesKey, word(after.splitGrades));
    write(after.idleMinutes != before.idleMinutes, idleKey, std::to_string(after.idleMinutes));
    write(after.backupsKept != before.backupsKept, backupsKey, std::to_string(after.backupsKept));
    write(after.phrases != before.phrases, phrasesKey, after.phrases);
    write(after.stepOrder != before.stepOrder, orderKey, line(after.stepOrder));
    write(after.places.behindMore != before.places.behindMore, waitingKey, line(after.places.behindMore));
    write(after.places.atOnce != before.places.atOnce, atOnceKey, line(after.places.atOnce));
    return outcome;
}

} // namespace rhizograph::app
