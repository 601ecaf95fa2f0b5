#include "exchange/csv.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <optional>
#include <set>

namespace rhizograph {
namespace {

constexpr std::size_t kMostRows = 50'000;
constexpr std::size_t kMostColumns = 100;

/// How many bytes the UTF-8 character at the front takes; 0 when it is none (overlong, surrogate, cut).
std::size_t characterLength(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    if (first < 0x80) return 1;
    const std::size_t length = first >= 0xF5   ? 0
                               : first >= 0xF0 ? 4
                               : first >= 0xE0 ? 3
                               : first >= 0xC2 ? 2
                                               : 0;
    if (length == 0 || text.size() < length) return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((byte(i) & 0xC0U) != 0x80U) return 0;
    const bool overlong = (first == 0xE0 && byte(1) < 0xA0) || (first == 0xF0 && byte(1) < 0x90);
    const bool beyond = (first == 0xED && byte(1) > 0x9F) || (first == 0xF4 && byte(1) > 0x8F);
    return overlong || beyond ? 0 : length;
}

class Reader {
public:
    Reader(std::string_view text, const std::string& file) : text_(text), file_(file) {}

    Result<CsvTable> read() {
        if (text_.starts_with("\xEF\xBB\xBF")) text_.remove_prefix(3);
        if (const auto wrong = encodingProblem()) return *wrong;
        if (text_.find_first_not_of(" \t\r\n") == std::string_view::npos) return problem(1, "is empty");
        separator_ = mostUsed();
        CsvTable out;
        while (at_ < text_.size() && problems_.empty()) {
            CsvTable::Row row{line_, {}};
            readRow(row.fields);
            if (std::all_of(row.fields.begin(), row.fields.end(),
                            [](const std::string& field) { return field.empty(); }))
                continue;
            if (out.head.empty())
                takeHead(out, std::move(row));
            else
                takeRow(out, std::move(row));
        }
        if (!problems_.empty()) return problems_;
        return out;
    }

private:
    [[nodiscard]] Problem problem(int line, const std::string& reason) const {
        return {file_, fmt::format("line {}", line), reason};
    }

    [[nodiscard]] std::optional<Problem> encodingProblem() const {
        int line = 1;
        for (std::size_t i = 0; i < text_.size();) {
            const std::size_t length = characterLength(text_.substr(i));
            if (length == 0) return problem(line, "is not UTF-8: save the table as UTF-8");
            const char c = text_[i];
            if (c == '\n') ++line;
            const bool control =
                (static_cast<unsigned char>(c) < 0x20 && c != '\t' && c != '\r' && c != '\n') || c == 0x7F;
            if (control) return problem(line, "holds a control character: this is no table of text");
            i += length;
        }
        return std::nullopt;
    }

    /// The separator that the head has most of, outside of quotes.
    [[nodiscard]] char mostUsed() const {
        std::map<char, int> counts;
        bool quoted = false;
        for (const char c : text_) {
            if (c == '"') quoted = !quoted;
            if (quoted) continue;
            if (c == '\n' || c == '\r') {
                if (!counts.empty()) break;
                continue;
            }
            ++counts[c];
        }
        char best = ',';
        for (const char c : {';', '\t'})
            if (counts[c] > counts[best]) best = c;
        return best;
    }

    void readRow(std::vector<std::string>& fields) {
        const int begun = line_;
        fields.push_back(readField(begun));
        while (at_ < text_.size() && problems_.empty() && text_[at_] == separator_) {
            ++at_;
            fields.push_back(readField(begun));
            if (fields.size() > kMostColumns)
                problems_.push_back(problem(begun, fmt::format("has more than {} columns", kMostColumns)));
        }
        if (at_ < text_.size() && text_[at_] == '\r') ++at_;
        if (at_ < text_.size() && text_[at_] == '\n') ++at_;
        ++line_;
    }

    std::string readField(int begun) {
        if (at_ < text_.size() && text_[at_] == '"') return readQuoted(begun);
        const std::size_t end =
            std::min(text_.find_first_of(std::string{separator_, '\r', '\n', '"'}, at_), text_.size());
        std::string_view field = text_.substr(at_, end - at_);
        at_ = end;
        if (at_ < text_.size() && text_[at_] == '"')
            problems_.push_back(problem(begun, "has a quote within a field that is not quoted"));
        return trimmed(field);
    }

    std::string readQuoted(int begun) {
        std::string out;
        for (++at_; at_ < text_.size(); ++at_) {
            if (text_[at_] == '\n') ++line_;
            if (text_[at_] != '"') {
                out += text_[at_];
            } else if (at_ + 1 < text_.size() && text_[at_ + 1] == '"') {
                out += '"';
                ++at_;
            } else {
                ++at_;
                if (at_ < text_.size() && text_[at_] != separator_ && text_[at_] != '\r' &&
                    text_[at_] != '\n')
                    problems_.push_back(problem(begun, "has text after a closing quote"));
                return trimmed(out);
            }
        }
        problems_.push_back(problem(begun, "begins a quoted field that does not end"));
        return out;
    }

    static std::string trimmed(std::string_view text) {
        const std::size_t begin = text.find_first_not_of(" \t\r\n");
        if (begin == std::string_view::npos) return {};
        return std::string{text.substr(begin, text.find_last_not_of(" \t\r\n") - begin + 1)};
    }

    void takeHead(CsvTable& out, CsvTable::Row row) {
        std::set<std::string> seen;
        for (std::size_t i = 0; i < row.fields.size(); ++i) {
            const std::string& name = row.fields[i];
            if (name.empty())
                problems_.push_back(problem(row.line, fmt::format("column {} has no name", i + 1)));
            else if (!seen.insert(name).second)
                problems_.push_back(problem(row.line, "two columns are named \"" + name + "\""));
        }
        out.head = std::move(row.fields);
    }

    void takeRow(CsvTable& out, CsvTable::Row row) {
        if (row.fields.size() != out.head.size())
            problems_.push_back(problem(row.line, fmt::format("has {} columns, the head has {}",
                                                              row.fields.size(), out.head.size())));
        else if (out.rows.size() == kMostRows)
            problems_.push_back(problem(row.line, fmt::format("has more than {} rows", kMostRows)));
        else
            out.rows.push_back(std::move(row));
    }

    std::string_view text_;
    const std::string& file_;
    char separator_ = ',';
    std::size_t at_ = 0;
    int line_ = 1;
    Problems problems_;
};

} // namespace

Result<CsvTable> parseCsv(std::string_view text, const std::string& file) {
    return Reader{text, file}.read();
}

} // namespace rhizograph
