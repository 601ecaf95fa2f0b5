#include "exchange/examfile.h"

#include "base/date.h"
#include "base/json.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <fmt/format.h>
#include <map>

namespace rhizograph {
namespace {

using nlohmann::json;
using nlohmann::ordered_json;

constexpr const char* formatName = "rhizograph.exam";
constexpr int formatVersion = 1;
constexpr const char* notTestable = "not_testable";
constexpr int oldestAge = 130;

/// Text of a member; nothing (and a problem) when it is there but no text.
std::optional<std::string> textOf(const JsonNode& node) {
    if (node.isString()) return node.string();
    node.fail("should be text");
    return std::nullopt;
}

void readPatient(const JsonNode& node, Subject& subject) {
    if (!node.isObject()) return node.fail("should be an object");
    node.onlyKeys({"age", "sex"});
    if (const auto age = node.find("age")) {
        const double years = age->isNumber() ? age->number() : -1;
        if (years < 0 || years > oldestAge || years != static_cast<int>(years))
            age->fail(fmt::format("should be whole years, 0 to {}", oldestAge));
        else
            subject.age = static_cast<int>(years);
    }
    if (const auto sex = node.find("sex")) {
        const auto word = textOf(*sex);
        if (word == "female" || word == "male" || word == "other")
            subject.sex = *word;
        else if (word)
            sex->fail("\"" + *word + "\" is none of female, male, other");
    }
}

void readVisit(const JsonNode& node, Exam& exam) {
    if (!node.isObject()) return node.fail("should be an object");
    node.onlyKeys({"date"});
    const auto date = node.find("date");
    if (!date) return;
    const auto text = textOf(*date);
    if (text && !dateFrom(*text))
        date->fail("\"" + *text + "\" is no calendar date (YYYY-MM-DD)");
    else if (text)
        exam.date = *text;
}

/// The side a finding of this item stands on; nothing (and a problem) when it is missing, superfluous or no
/// side.
std::optional<Side> readSide(const JsonNode& node, const Item& item) {
    const auto side = node.find("side");
    if (!item.sided) {
        if (side) side->fail("superfluous: \"" + item.id.text() + "\" has no sides");
        return side ? std::nullopt : std::optional{Side::none};
    }
    if (!side) {
        node.fail("\"side\" is missing: \"" + item.id.text() + "\" is examined left and right");
        return std::nullopt;
    }
    const auto word = textOf(*side);
    if (!word) return std::nullopt;
    const auto named = sideNamed(*word);
    if (named == Side::left || named == Side::right) return named;
    side->fail("\"" + *word + "\" is neither left nor right");
    return std::nullopt;
}

std::string expected(const Scale& scale) {
    if (scale.numeric())
        return fmt::format("should be a number, {} to {} {}", scale.minimum, scale.maximum, scale.unit);
    if (scale.kind == Scale::Kind::text) return "should be text";
    std::string tokens;
    for (const ScaleValue& value : scale.values)
        tokens += (tokens.empty() ? "\"" : ", \"") + value.token + "\"";
    return "should be one of " + tokens;
}

std::optional<Value> readNotTestable(const JsonNode& node, const Catalogue& catalogue) {
    const auto because = node.find("because");
    if (!because) {
        node.fail("\"because\" is missing: not testable needs its reason");
        return std::nullopt;
    }
    const auto reason = textOf(*because);
    if (!reason) return std::nullopt;
    const auto& reasons = catalogue.notTestableReasons();
    if (std::find(reasons.begin(), reasons.end(), *reason) != reasons.end())
        return Value::notTestable(*reason);
    because->fail(fmt::format("\"{}\" is none of {}", *reason, fmt::join(reasons, ", ")));
    return std::nullopt;
}

std::optional<Value> readValue(const JsonNode& node, const Item& item, const Catalogue& catalogue) {
    if (!node.has("value")) {
        node.fail("\"value\" is missing");
        return std::nullopt;
    }
    const JsonNode value = node.at("value");
    const Scale& scale = item.scale;
    // Free text may happen to read "not_testable"; there the reason decides.
    const bool saysNotTestable = value.isString() && value.string() == notTestable;
    if (saysNotTestable && (scale.kind != Scale::Kind::text || node.has("because")))
        return readNotTestable(node, catalogue);
    if (const auto because = node.find("because")) because->fail("belongs to not_testable only");
    if (scale.numeric() ? !value.isNumber() : !value.isString()) {
        value.fail(expected(scale));
        return std::nullopt;
    }
    Value read = scale.numeric()                   ? Value::number(value.number())
                 : scale.kind == Scale::Kind::text ? Value::text(value.string())
                                                   : Value::token(value.string());
    const FindingKey anySide{item.id, item.sided ? Side::left : Side::none};
    if (const auto wrong = check(catalogue, anySide, read)) {
        value.fail(*wrong);
        return std::nullopt;
    }
    return read;
}

/// Reads findings one after the other, remembering where each stood to name the first of a pair.
class FindingsReader {
public:
    FindingsReader(Exam& exam, const Catalogue& catalogue) : exam_(exam), catalogue_(catalogue) {}

    void read(const JsonNode& node) {
        if (!node.isObject()) return node.fail("should be an object");
        node.onlyKeys({"item", "side", "value", "because", "bulk", "note"});
        const Item* item = readItem(node);
        if (item == nullptr) return;
        const auto side = readSide(node, *item);
        const auto value = readValue(node, *item, catalogue_);
        const bool bulk = node.has("bulk") && node.at("bulk").boolean();
        std::string note = node.has("note") ? node.at("note").string() : std::string{};
        if (!side) return;
        const FindingKey key{item->id, *side};
        const auto [first, isNew] = seen_.emplace(key, node.place());
        if (!isNew)
            return node.fail("\"" + item->id.text() + "\" on this side stands already in " + first->second);
        if (value) exam_.set(key, Finding{*value, bulk, std::move(note)});
    }

private:
    const Item* readItem(const JsonNode& node) const {
        if (!node.has("item")) {
            node.fail("\"item\" is missing");
            return nullptr;
        }
        const auto id = textOf(node.at("item"));
        if (!id) return nullptr;
        const Item* item = catalogue_.find(*id);
        if (item == nullptr) node.at("item").fail("\"" + *id + "\" is not in the catalogue");
        return item;
    }

    Exam& exam_;
    const Catalogue& catalogue_;
    std::map<FindingKey, std::string> seen_;
};

void readHead(const JsonNode& root) {
    const auto format = root.find("format");
    if (!format)
        root.fail(fmt::format("\"format\" is missing, should be \"{}\"", formatName));
    else if (!format->isString() || format->string() != formatName)
        format->fail(fmt::format("should be \"{}\"", formatName));
    const auto version = root.find("version");
    if (!version)
        root.fail(fmt::format("\"version\" is missing, should be {}", formatVersion));
    else if (!version->raw().is_number_integer() || version->raw() != formatVersion)
        version->fail(fmt::format("should be {}; this program reads no other version", formatVersion));
}

/// Whole numbers without a point, as people write them.
ordered_json numberJson(double number) {
    if (number == std::floor(number) && std::abs(number) < 1e9) return static_cast<std::int64_t>(number);
    return number;
}

ordered_json findingJson(const FindingKey& key, const Finding& finding) {
    ordered_json out;
    out["item"] = key.item.text();
    if (key.side != Side::none) out["side"] = name(key.side);
    if (finding.value.isNumber())
        out["value"] = numberJson(finding.value.number());
    else
        out["value"] = finding.value.testable() ? finding.value.word() : notTestable;
    if (!finding.value.testable()) out["because"] = finding.value.word();
    if (finding.bulk) out["bulk"] = true;
    if (!finding.note.empty()) out["note"] = finding.note;
    return out;
}

ordered_json patientJson(const Subject& subject) {
    ordered_json out = ordered_json::object();
    if (subject.age) out["age"] = *subject.age;
    if (!subject.sex.empty()) out["sex"] = subject.sex;
    return out;
}

} // namespace

Result<Exam> examFromJson(const json& document, const std::string& name, const Catalogue& catalogue) {
    Problems problems;
    const JsonNode root{document, name, problems};
    if (!root.isObject()) return Problem{name, "/", "should be an object with \"format\" and \"findings\""};
    readHead(root);
    Exam exam;
    if (const auto patient = root.find("patient")) readPatient(*patient, exam.subject);
    if (const auto visit = root.find("visit")) readVisit(*visit, exam);
    FindingsReader reader{exam, catalogue};
    for (const JsonNode& finding : root.at("findings").items())
        reader.read(finding);
    if (!problems.empty()) return problems;
    return exam;
}

Result<Exam> parseExam(std::string_view text, const std::string& name, const Catalogue& catalogue) {
    const auto document = parseJson(text, name);
    if (!document) return document.problems();
    return examFromJson(*document, name, catalogue);
}

Result<Exam> readExamFile(const std::filesystem::path& path, const Catalogue& catalogue) {
    const auto document = readJsonFile(path);
    if (!document) return document.problems();
    return examFromJson(*document, path.string(), catalogue);
}

ordered_json examToJson(const Exam& exam, const Catalogue& catalogue) {
    std::vector<const Exam::Findings::value_type*> rows;
    for (const auto& row : exam.findings())
        rows.push_back(&row);
    std::stable_sort(rows.begin(), rows.end(), [&](const auto* a, const auto* b) {
        return catalogue.order(a->first.item) < catalogue.order(b->first.item);
    });
    ordered_json out;
    out["format"] = formatName;
    out["version"] = formatVersion;
    out["patient"] = patientJson(exam.subject);
    out["visit"] = exam.date.empty() ? ordered_json::object() : ordered_json{{"date", exam.date}};
    out["findings"] = ordered_json::array();
    for (const auto* row : rows)
        out["findings"].push_back(findingJson(row->first, row->second));
    return out;
}

std::string examText(const Exam& exam, const Catalogue& catalogue) {
    const ordered_json document = examToJson(exam, catalogue);
    std::string lines;
    for (const ordered_json& finding : document["findings"])
        lines += (lines.empty() ? "\n  " : ",\n  ") + finding.dump();
    std::string out = "{";
    for (const auto& [key, member] : document.items()) {
        if (key == "findings") continue;
        out += fmt::format("\"{}\": {}, ", key, member.dump());
    }
    return out + "\n \"findings\": [" + lines + "]}\n";
}

} // namespace rhizograph
