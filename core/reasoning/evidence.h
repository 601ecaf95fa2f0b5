#pragma once

#include "base/json.h"
#include "base/problem.h"

#include <filesystem>
#include <map>
#include <string>
#include <string_view>

namespace rhizograph {

/// Where one figure or rule comes from.
struct EvidenceRow {
    std::string finding;  ///< what was looked at
    std::string citation; ///< authors, journal, year; empty for common practice
    std::string status;   ///< "read", "from memory" or "common practice"
    /// The citation as printed: with "from memory" where it was not seen, "common practice" where there is
    /// none.
    [[nodiscard]] std::string text() const;
    bool operator==(const EvidenceRow&) const = default;
};

/// The sources behind the rules, by the short ids the rule files use ("CES-01").
class Evidence {
public:
    static Result<Evidence> load(const std::filesystem::path& file);

    [[nodiscard]] const EvidenceRow* find(const std::string& id) const;
    [[nodiscard]] const std::map<std::string, EvidenceRow>& rows() const { return rows_; }
    /// A source line of a rule file for people: each id replaced by its citation, each citation named once.
    /// Ids that are not known are reported at the node.
    [[nodiscard]] std::string cited(const JsonNode& source) const;

private:
    std::map<std::string, EvidenceRow> rows_;
};

} // namespace rhizograph
