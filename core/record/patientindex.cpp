#include "record/patientindex.h"

#include <algorithm>
#include <array>
#include <optional>
#include <set>
#include <tuple>

namespace rhizograph {
namespace {

/// The plain letters of U+00C0 to U+017F, in code point order; '*' stays as it is (× ÷), two-letter ones are
/// below.
constexpr std::string_view plainLetters =
    "aaaaaaaceeeeiiiidnooooo*ouuuuyts"                                  // 00C0-00DF
    "aaaaaaaceeeeiiiidnooooo*ouuuuyty"                                  // 00E0-00FF
    "aaaaaaccccccccddddeeeeeeeeeegggggggghhhhiiiiiiiiiiiijjkkklllllll"  // 0100-013F
    "lllnnnnnnnnnoooooooorrrrrrssssssssttttttuuuuuuuuuuuuwwyyyzzzzzzs"; // 0140-017F
static_assert(plainLetters.size() == 192);

std::optional<std::string_view> twoLetters(char32_t c) {
    switch (c) {
    case 0xc6:
    case 0xe6:
        return "ae";
    case 0xde:
    case 0xfe:
        return "th";
    case 0xdf:
        return "ss";
    case 0x132:
    case 0x133:
        return "ij";
    case 0x152:
    case 0x153:
        return "oe";
    default:
        return std::nullopt;
    }
}

/// The plain letter of the accented ones beyond U+017F that names are written with (Vietnamese mostly).
std::optional<char> laterLetter(char32_t c) {
    if (c == 0x1a0 || c == 0x1a1 || (c >= 0x1ecc && c <= 0x1ee3)) return 'o';
    if (c == 0x1af || c == 0x1b0 || (c >= 0x1ee4 && c <= 0x1ef1)) return 'u';
    if (c >= 0x1ea0 && c <= 0x1eb7) return 'a';
    if (c >= 0x1eb8 && c <= 0x1ec7) return 'e';
    if (c >= 0x1ec8 && c <= 0x1ecb) return 'i';
    if (c >= 0x1ef2 && c <= 0x1ef9) return 'y';
    return std::nullopt;
}

/// The next code point; a malformed byte counts as itself, so that folding never fails.
char32_t next(std::string_view text, std::size_t& at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(at++);
    const int more = lead >= 0xf0 ? 3 : lead >= 0xe0 ? 2 : lead >= 0xc0 ? 1 : 0;
    char32_t c = more == 3 ? lead & 0x07U : more == 2 ? lead & 0x0fU : more == 1 ? lead & 0x1fU : lead;
    for (int i = 0; i < more && at < text.size() && (byte(at) & 0xc0U) == 0x80U; ++i)
        c = (c << 6U) | (byte(at++) & 0x3fU);
    return c;
}

void append(std::string& out, char32_t c) {
    if (c < 0x80) {
        out += static_cast<char>(c);
    } else if (c < 0x800) {
        out += static_cast<char>(0xc0U | (c >> 6U));
        out += static_cast<char>(0x80U | (c & 0x3fU));
    } else if (c < 0x10000) {
        out += static_cast<char>(0xe0U | (c >> 12U));
        out += static_cast<char>(0x80U | ((c >> 6U) & 0x3fU));
        out += static_cast<char>(0x80U | (c & 0x3fU));
    } else {
        out += static_cast<char>(0xf0U | (c >> 18U));
        out += static_cast<char>(0x80U | ((c >> 12U) & 0x3fU));
        out += static_cast<char>(0x80U | ((c >> 6U) & 0x3fU));
        out += static_cast<char>(0x80U | (c & 0x3fU));
    }
}

/// Greek and Cyrillic capitals to small letters.
char32_t small(char32_t c) {
    if ((c >= 0x391 && c <= 0x3a9) || (c >= 0x410 && c <= 0x42f)) return c + 0x20;
    if (c >= 0x400 && c <= 0x40f) return c + 0x50;
    return c;
}

std::vector<std::string> wordsOf(std::string_view text) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : text) {
        if (c != ' ' && c != '\t' && c != ',') {
            word += c;
        } else if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    }
    if (!word.empty()) words.push_back(std::move(word));
    return words;
}

bool beginsAWord(std::string_view text, std::string_view word) {
    for (auto at = text.find(word); at != std::string_view::npos; at = text.find(word, at + 1))
        if (at == 0 || text[at - 1] == ' ' || text[at - 1] == '-') return true;
    return false;
}

} // namespace

std::string folded(std::string_view text) {
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const char32_t c = next(text, at);
        if (c >= 0x300 && c <= 0x36f) continue; // combining accents
        if (const auto two = twoLetters(c))
            out += *two;
        else if (c >= U'A' && c <= U'Z')
            out += static_cast<char>(c + 0x20);
        else if (c >= 0xc0 && c <= 0x17f && plainLetters[c - 0xc0] != '*')
            out += plainLetters[c - 0xc0];
        else if (const auto later = laterLetter(c))
            out += *later;
        else
            append(out, small(c));
    }
    return out;
}

void PatientIndex::put(const Patient& entry, const PatientId& person) {
    entries_.insert_or_assign(entry.id, Entry{entry.identity, folded(entry.identity.name),
                                              folded(entry.identity.recordNumber), person});
    changed_.push_back(entry.id);
}

void PatientIndex::clear() {
    entries_.clear();
    changed_.clear();
    rows_.clear();
    text_.clear();
}

bool PatientIndex::byName(const Row& left, const Row& right) {
    return std::tie(left.name, *left.id) < std::tie(right.name, *right.id);
}

PatientIndex::Row PatientIndex::rowOf(const std::pair<const PatientId, Entry>& entry) {
    return {entry.second.name, entry.second.number, &entry.first, &entry.second.person};
}

void PatientIndex::arrange() const {
    constexpr std::size_t few = 64;
    if (changed_.empty()) return;
    if (changed_.size() > few) return arrangeAll();
    const std::set<PatientId> changed(changed_.begin(), changed_.end());
    std::erase_if(rows_, [&](const Row& row) { return changed.contains(*row.id); });
    for (const PatientId& id : changed) {
        const Row row = rowOf(*entries_.find(id));
        rows_.insert(std::upper_bound(rows_.begin(), rows_.end(), row, byName), row);
    }
    changed_.clear();
}

void PatientIndex::arrangeAll() const {
    rows_.clear();
    rows_.reserve(entries_.size());
    std::size_t size = 0;
    for (const auto& entry : entries_) {
        rows_.push_back(rowOf(entry));
        size += entry.second.name.size() + entry.second.number.size();
    }
    std::sort(rows_.begin(), rows_.end(), byName);
    text_.clear();
    text_.reserve(size); // the rows point into it
    const auto kept = [this](std::string_view text) {
        const std::size_t at = text_.size();
        text_ += text;
        return std::string_view{text_}.substr(at);
    };
    for (Row& row : rows_) {
        row.name = kept(row.name);
        row.number = kept(row.number);
    }
    changed_.clear();
}

const Identity* PatientIndex::find(const PatientId& id) const {
    const auto found = entries_.find(id);
    return found == entries_.end() ? nullptr : &found->second.identity;
}

/// 0 is best; -1 is not found.
int PatientIndex::rank(const Row& entry, const std::vector<std::string>& words) {
    int worst = 0;
    for (const std::string& word : words) {
        if (entry.number == word) continue;
        if (beginsAWord(entry.name, word) || entry.number.starts_with(word))
            worst = std::max(worst, 1);
        else if (entry.name.find(word) != std::string::npos || entry.number.find(word) != std::string::npos)
            worst = 2;
        else
            return -1;
    }
    return worst;
}

std::vector<PatientId> PatientIndex::search(std::string_view text, std::size_t limit) const {
    arrange();
    const std::vector<std::string> words = wordsOf(folded(text));
    std::array<std::vector<const PatientId*>, 3> found; // by rank, each in the order of names
    for (const Row& row : rows_)
        if (const int r = rank(row, words); r >= 0)
            found.at(static_cast<std::size_t>(r)).push_back(row.person);
    std::vector<PatientId> out;
    std::set<PatientId> seen;
    for (const auto& equals : found)
        for (const PatientId* person : equals) {
            if (out.size() == limit) return out;
            if (seen.insert(*person).second) out.push_back(*person);
        }
    return out;
}

} // namespace rhizograph
