#include "reasoning/evidence.h"

#include <algorithm>
#include <cctype>
#include <vector>

namespace rhizograph {
namespace {

bool isDigit(char c) {
    return std::isdigit(static_cast<unsigned char>(c)) != 0;
}
bool isCapital(char c) {
    return std::isupper(static_cast<unsigned char>(c)) != 0;
}

/// Length of the id that starts here: three capitals, a hyphen and two digits ("CES-01"), or N and three
/// digits.
std::size_t idLength(std::string_view text) {
    const auto digits = [&](std::size_t from, std::size_t count) {
        if (text.size() < from + count) return false;
        return std::all_of(text.begin() + static_cast<std::ptrdiff_t>(from),
                           text.begin() + static_cast<std::ptrdiff_t>(from + count), isDigit);
    };
    if (text.size() >= 4 && text[0] == 'N' && digits(1, 3)) return 4;
    std::size_t capitals = 0;
    while (capitals < text.size() && isCapital(text[capitals]))
        ++capitals;
    if (capitals >= 2 && capitals <= 3 && capitals < text.size() && text[capitals] == '-' &&
        digits(capitals + 1, 2))
        return capitals + 3;
    return 0;
}

std::vector<std::string> splitAtSemicolons(const std::string& text) {
    std::vector<std::string> out;
    std::size_t start = 0;
    while (start <= text.size()) {
        const std::size_t end = std::min(text.find(';', start), text.size());
        std::string part = text.substr(start, end - start);
        const auto from = part.find_first_not_of(' ');
        if (from != std::string::npos)
            out.push_back(part.substr(from, part.find_last_not_of(' ') - from + 1));
        start = end + 1;
    }
    return out;
}

bool startsWord(std::string_view text, std::size_t at) {
    return at == 0 || std::isalnum(static_cast<unsigned char>(text[at - 1])) == 0;
}

} // namespace

std::string EvidenceRow::text() const {
    if (citation.empty()) return "common practice";
    return status == "from memory" ? citation + " (from memory)" : citation;
}

Result<Evidence> Evidence::load(const std::filesystem::path& file) {
    auto json = readJsonFile(file);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, file.string(), problems};
    if (root.at("format").string() != "rhizograph.evidence") root.fail("format is not rhizograph.evidence");
    if (root.at("version").integer() != 1) root.fail("version is not 1");
    Evidence evidence;
    for (const auto& [id, node] : root.at("rows").members()) {
        node.onlyKeys({"finding", "citation", "status"});
        EvidenceRow row{node.at("finding").string(), "", node.at("status").string()};
        if (const auto citation = node.find("citation")) row.citation = citation->string();
        if (row.status != "read" && row.status != "from memory" && row.status != "common practice")
            node.at("status").fail("should be read, from memory or common practice");
        if (row.citation.empty() && row.status != "common practice") node.fail("has no citation");
        if (idLength(id) != id.size()) node.fail("\"" + id + "\" is not formed like an id");
        evidence.rows_.emplace(id, std::move(row));
    }
    if (!problems.empty()) return problems;
    return evidence;
}

const EvidenceRow* Evidence::find(const std::string& id) const {
    const auto found = rows_.find(id);
    return found == rows_.end() ? nullptr : &found->second;
}

std::string Evidence::cited(const JsonNode& source) const {
    std::vector<std::string> parts;
    const auto addOnce = [&](const std::string& part) {
        if (std::find(parts.begin(), parts.end(), part) == parts.end()) parts.push_back(part);
    };
    for (const std::string& part : splitAtSemicolons(source.string())) {
        std::string words;
        std::vector<std::string> citations;
        for (std::size_t i = 0; i < part.size();) {
            const std::size_t length = startsWord(part, i) ? idLength(std::string_view{part}.substr(i)) : 0;
            if (length == 0) {
                words += part[i++];
                continue;
            }
            const std::string id = part.substr(i, length);
            if (const EvidenceRow* row = find(id))
                citations.push_back(row->text());
            else
                source.fail("no evidence row \"" + id + "\"");
            i += length;
            while (i < part.size() && (part[i] == ',' || part[i] == ' '))
                ++i;
        }
        while (!words.empty() && (words.back() == ' ' || words.back() == ',' || words.back() == ':'))
            words.pop_back();
        for (const std::string& citation : citations)
            addOnce(citation);
        if (!words.empty()) addOnce(words);
    }
    std::string out;
    for (const std::string& part : parts)
        out += (out.empty() ? "" : "; ") + part;
    return out;
}

} // namespace rhizograph
