#include "base/json.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <fstream>
#include <system_error>
#include <unordered_set>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;

std::string lineColumn(std::string_view text, std::size_t byte) {
    std::size_t line = 1;
    std::size_t column = 1;
    for (std::size_t i = 0; i + 1 < byte && i < text.size(); ++i) {
        if (text[i] == '\n') {
            ++line;
            column = 1;
        } else {
            ++column;
        }
    }
    return fmt::format("line {}, column {}", line, column);
}

/// Builds the document while watching what the library would let pass: duplicate keys and deep nesting.
class StrictBuilder : public nlohmann::json_sax<json> {
public:
    StrictBuilder(json& root, int depthLimit) : dom_(root, false), depthLimit_(depthLimit) {}

    bool null() override { return element() && dom_.null(); }
    bool boolean(bool value) override { return element() && dom_.boolean(value); }
    bool number_integer(number_integer_t value) override { return element() && dom_.number_integer(value); }
    bool number_unsigned(number_unsigned_t value) override {
        return element() && dom_.number_unsigned(value);
    }
    bool number_float(number_float_t value, const string_t& text) override {
        element();
        if (!std::isfinite(value)) return stop("number out of range: " + text.substr(0, 40));
        return dom_.number_float(value, text);
    }
    bool string(string_t& value) override { return element() && dom_.string(value); }
    bool binary(binary_t& value) override { return element() && dom_.binary(value); }
    bool start_object(std::size_t size) override {
        return element() && deeper(false) && dom_.start_object(size);
    }
    bool key(string_t& name) override {
        Level& level = levels_.back();
        level.key = name;
        if (!level.add(name))
            duplicates_.emplace_back(place(), "the key \"" + name.substr(0, 80) + "\" stands twice");
        return dom_.key(name);
    }
    bool end_object() override {
        levels_.pop_back();
        return dom_.end_object();
    }
    bool start_array(std::size_t size) override {
        return element() && deeper(true) && dom_.start_array(size);
    }
    bool end_array() override {
        levels_.pop_back();
        return dom_.end_array();
    }
    bool parse_error(std::size_t position, const std::string&,
                     const nlohmann::detail::exception& error) override {
        position_ = position;
        reason_ = readable(error.what());
        return false;
    }

    [[nodiscard]] const std::string& reason() const { return reason_; }
    [[nodiscard]] std::size_t position() const { return position_; }
    /// Where the builder stands, as "/findings/3/value".
    [[nodiscard]] std::string place() const {
        std::string out;
        for (const Level& level : levels_)
            out += level.isArray ? fmt::format("/{}", level.count - 1) : "/" + level.key;
        return out;
    }
    /// Place and reason of every key that stands twice in its object.
    [[nodiscard]] const std::vector<std::pair<std::string, std::string>>& duplicates() const {
        return duplicates_;
    }

private:
    /// An object or list that is still open.
    struct Level {
        bool isArray = false;
        std::size_t count = 0;                ///< elements of a list begun so far
        std::string key;                      ///< the member of an object being read
        std::vector<std::string> few;         ///< members of an object seen so far, looked through one by one
        std::unordered_set<std::string> many; ///< once they are more than a few

        /// False when it was there.
        bool add(const std::string& name) {
            constexpr std::size_t aFew = 12;
            if (!many.empty()) return many.insert(name).second;
            if (std::find(few.begin(), few.end(), name) != few.end()) return false;
            few.push_back(name);
            if (few.size() > aFew) many.insert(few.begin(), few.end());
            return true;
        }
    };

    bool element() {
        if (!levels_.empty()) ++levels_.back().count;
        return true;
    }
    bool deeper(bool isArray) {
        if (static_cast<int>(levels_.size()) >= depthLimit_) return stop("nested too deeply");
        levels_.emplace_back().isArray = isArray;
        return true;
    }
    bool stop(std::string reason) {
        reason_ = std::move(reason);
        return false;
    }
    /// The library's message without its own numbering and position, which we word ourselves.
    static std::string readable(std::string message) {
        if (const auto end = message.find("; last read"); end != std::string::npos) message.resize(end);
        if (const auto colon = message.rfind(": ", message.find("syntax error") - 1);
            message.find("syntax error") != std::string::npos && colon != std::string::npos)
            message = message.substr(colon + 2);
        else if (const auto bracket = message.find("] "); bracket != std::string::npos)
            message = message.substr(bracket + 2);
        return "not valid JSON: " + message;
    }

    nlohmann::detail::json_sax_dom_parser<json> dom_;
    int depthLimit_;
    std::size_t position_ = 0;
    std::string reason_;
    std::vector<Level> levels_;
    std::vector<std::pair<std::string, std::string>> duplicates_;
};

} // namespace

Result<std::string> readTextFile(const fs::path& path, const JsonLimits& limits) {
    std::error_code error;
    const auto status = fs::status(path, error);
    if (error || !fs::exists(status))
        return Problem{path.string(), "", "no such file, or it cannot be reached"};
    if (fs::is_directory(status)) return Problem{path.string(), "", "is a directory, not a file"};
    if (!fs::is_regular_file(status)) return Problem{path.string(), "", "is not a regular file"};
    const auto size = fs::file_size(path, error);
    if (error) return Problem{path.string(), "", "its size cannot be read: " + error.message()};
    if (size > limits.bytes)
        return Problem{path.string(), "",
                       fmt::format("is {} bytes, more than the limit of {}", size, limits.bytes)};
    std::ifstream in(path, std::ios::binary);
    if (!in) return Problem{path.string(), "", "cannot be read (permission or device)"};
    std::string text(static_cast<std::size_t>(size), '\0');
    in.read(text.data(), static_cast<std::streamsize>(text.size()));
    if (in.bad() || static_cast<std::size_t>(in.gcount()) != text.size())
        return Problem{path.string(), "", "could not be read to its end"};
    return text;
}

Result<json> parseJson(std::string_view text, const std::string& file, const JsonLimits& limits) {
    if (text.size() > limits.bytes)
        return Problem{file, "",
                       fmt::format("is {} bytes, more than the limit of {}", text.size(), limits.bytes)};
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos) return Problem{file, "", "is empty"};
    if (text.substr(0, 3) == "\xEF\xBB\xBF")
        return Problem{file, "line 1, column 1",
                       "begins with a byte order mark; save it as UTF-8 without one"};
    json root;
    StrictBuilder builder(root, limits.depth);
    if (!json::sax_parse(text, &builder)) {
        const std::string place =
            builder.position() > 0 ? lineColumn(text, builder.position()) : builder.place();
        return Problem{file, place, builder.reason()};
    }
    if (!builder.duplicates().empty()) {
        Problems problems;
        for (const auto& [place, reason] : builder.duplicates())
            problems.push_back({file, place, reason});
        return problems;
    }
    return root;
}

Result<json> readJsonFile(const fs::path& path, const JsonLimits& limits) {
    auto text = readTextFile(path, limits);
    if (!text) return text.problems();
    return parseJson(*text, path.string(), limits);
}

namespace {
const json& emptyValue() {
    static const json empty;
    return empty;
}
} // namespace

JsonNode::JsonNode(const json& value, std::string file, Problems& problems, std::string place)
    : value_(&value), file_(std::move(file)), problems_(&problems), place_(std::move(place)) {}

void JsonNode::fail(const std::string& reason) const {
    problems_->push_back({file_, place_.empty() ? "/" : place_, reason});
}

JsonNode JsonNode::at(const std::string& key) const {
    if (auto member = find(key)) return *member;
    if (value_->is_object())
        fail("\"" + key + "\" is missing");
    else
        fail("should be an object with \"" + key + "\"");
    return {emptyValue(), file_, *problems_, place_ + "/" + key};
}

std::optional<JsonNode> JsonNode::find(const std::string& key) const {
    if (!value_->is_object()) return std::nullopt;
    const auto found = value_->find(key);
    if (found == value_->end()) return std::nullopt;
    return JsonNode{*found, file_, *problems_, place_ + "/" + key};
}

bool JsonNode::has(const std::string& key) const {
    return value_->is_object() && value_->contains(key);
}

std::vector<JsonNode> JsonNode::items() const {
    std::vector<JsonNode> out;
    if (!value_->is_array()) {
        if (value_ != &emptyValue()) fail("should be a list");
        return out;
    }
    out.reserve(value_->size());
    for (std::size_t i = 0; i < value_->size(); ++i)
        out.emplace_back((*value_)[i], file_, *problems_, fmt::format("{}/{}", place_, i));
    return out;
}

std::vector<std::pair<std::string, JsonNode>> JsonNode::members() const {
    std::vector<std::pair<std::string, JsonNode>> out;
    if (!value_->is_object()) {
        if (value_ != &emptyValue()) fail("should be an object");
        return out;
    }
    for (const auto& [key, member] : value_->items())
        out.emplace_back(key, JsonNode{member, file_, *problems_, place_ + "/" + key});
    return out;
}

std::string JsonNode::string() const {
    if (value_->is_string()) return value_->get<std::string>();
    if (value_ != &emptyValue()) fail("should be text");
    return {};
}

double JsonNode::number() const {
    if (value_->is_number()) return value_->get<double>();
    if (value_ != &emptyValue()) fail("should be a number");
    return 0;
}

int JsonNode::integer() const {
    const double value = number();
    if (std::floor(value) != value || std::abs(value) > 1e9) {
        fail("should be a whole number");
        return 0;
    }
    return static_cast<int>(value);
}

bool JsonNode::boolean() const {
    if (value_->is_boolean()) return value_->get<bool>();
    if (value_ != &emptyValue()) fail("should be true or false");
    return false;
}

std::vector<std::string> JsonNode::strings() const {
    std::vector<std::string> out;
    for (const JsonNode& item : items())
        out.push_back(item.string());
    return out;
}

std::vector<double> JsonNode::numbers() const {
    std::vector<double> out;
    for (const JsonNode& item : items())
        out.push_back(item.number());
    return out;
}

void JsonNode::onlyKeys(const std::vector<std::string>& known) const {
    if (!value_->is_object()) return;
    for (const auto& [key, member] : value_->items()) {
        if (std::find(known.begin(), known.end(), key) == known.end())
            JsonNode{member, file_, *problems_, place_ + "/" + key}.fail("unknown key");
    }
}

} // namespace rhizograph
