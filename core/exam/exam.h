#pragma once

#include "base/problem.h"
#include "base/strong.h"
#include "catalogue/catalogue.h"
#include "exam/side.h"
#include "exam/value.h"

#include <map>
#include <optional>
#include <string>

namespace rhizograph {

/// Which question a finding answers: an item, and for sided items the side (left or right, else none).
struct FindingKey {
    ItemId item;
    Side side = Side::none;
    auto operator<=>(const FindingKey&) const = default;
};

/// One recorded answer.
struct Finding {
    Value value;
    bool bulk = false; ///< filled by "rest normal" or "all no", not tapped by itself
    std::string note;  ///< free remark on this finding
    bool operator==(const Finding&) const = default;
};

/// Who was examined, as far as the engine needs to know. Unknown age or sex stays unknown.
struct Subject {
    std::optional<int> age; ///< years, 0 to 130
    std::string sex;        ///< "female", "male", "other" or empty
    bool operator==(const Subject&) const = default;
};

/// The sheet of findings of one visit, a value type. What is not in it was not examined.
class Exam {
public:
    using Findings = std::map<FindingKey, Finding>;

    Subject subject;
    std::string date; ///< ISO 8601 calendar date of the visit, or empty

    [[nodiscard]] const Findings& findings() const { return findings_; }
    [[nodiscard]] const Finding* find(const FindingKey& key) const;
    [[nodiscard]] const Finding* find(std::string_view item, Side side = Side::none) const;
    /// Sets or replaces a finding; the caller has checked it (see check).
    void set(const FindingKey& key, Finding finding) { findings_.insert_or_assign(key, std::move(finding)); }
    void clear(const FindingKey& key) { findings_.erase(key); }
    /// Left and right exchanged, also in values that name a side ("right_high").
    [[nodiscard]] Exam mirrored() const;
    bool operator==(const Exam&) const = default;

private:
    Findings findings_;
};

/// Why this value cannot stand for this item and side in this catalogue; nothing when it can.
[[nodiscard]] std::optional<std::string> check(const Catalogue& catalogue, const FindingKey& key,
                                               const Value& value);

} // namespace rhizograph
