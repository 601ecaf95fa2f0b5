#pragma once

#include "base/problem.h"

#include <filesystem>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rhizograph {

/// Limits of what is read from outside. Larger inputs are refused with a reason, never read in part.
struct JsonLimits {
    std::size_t bytes = 16U << 20U;
    int depth = 64;
};

/// Reads a whole regular file. Refuses directories, unreadable files and files over the limit.
Result<std::string> readTextFile(const std::filesystem::path& path, const JsonLimits& limits = {});

/// Parses strict JSON: UTF-8 without a byte order mark, no duplicate keys, no too deep nesting, no trailing
/// text. The place is given as line and column where the text is no JSON, else as a path. NaN and infinities
/// are not JSON and are refused; numbers beyond the range of a double too.
Result<nlohmann::json> parseJson(std::string_view text, const std::string& file,
                                 const JsonLimits& limits = {});

/// readTextFile, then parseJson.
Result<nlohmann::json> readJsonFile(const std::filesystem::path& path, const JsonLimits& limits = {});

/// A cursor over parsed JSON that collects every problem with its place instead of stopping at the first.
/// Asking for a missing or mistyped member records a problem and yields an empty value, so readers stay
/// linear.
class JsonNode {
public:
    JsonNode(const nlohmann::json& value, std::string file, Problems& problems, std::string place = "");

    [[nodiscard]] JsonNode at(const std::string& key) const;                  ///< required member
    [[nodiscard]] std::optional<JsonNode> find(const std::string& key) const; ///< optional member
    [[nodiscard]] bool has(const std::string& key) const;
    [[nodiscard]] std::vector<JsonNode> items() const; ///< elements of an array
    [[nodiscard]] std::vector<std::pair<std::string, JsonNode>> members() const;

    [[nodiscard]] std::string string() const;
    [[nodiscard]] double number() const;
    [[nodiscard]] int integer() const;
    [[nodiscard]] bool boolean() const;
    [[nodiscard]] std::vector<std::string> strings() const;
    [[nodiscard]] std::vector<double> numbers() const;

    [[nodiscard]] bool isString() const { return value_->is_string(); }
    [[nodiscard]] bool isNumber() const { return value_->is_number(); }
    [[nodiscard]] bool isNull() const { return value_->is_null(); }
    [[nodiscard]] bool isArray() const { return value_->is_array(); }
    [[nodiscard]] bool isObject() const { return value_->is_object(); }

    /// Records a problem at this place.
    void fail(const std::string& reason) const;
    /// Records a problem for each member whose key is not in `known`.
    void onlyKeys(const std::vector<std::string>& known) const;

    [[nodiscard]] const nlohmann::json& raw() const { return *value_; }
    [[nodiscard]] const std::string& place() const { return place_; }
    [[nodiscard]] const std::string& file() const { return file_; }
    [[nodiscard]] Problems& problems() const { return *problems_; }

private:
    const nlohmann::json* value_;
    std::string file_;
    Problems* problems_;
    std::string place_;
};

} // namespace rhizograph
