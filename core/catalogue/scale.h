#pragma once

#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

/// How a value reads at a glance, for color, hatch and word. `plain` values carry no judgement (a speed of
/// onset); `normal` is the scale's normal value; the rest are kinds of abnormal.
enum class Look { plain, normal, reduced, marked, heightened };

/// One value of a choice or grade scale.
struct ScaleValue {
    std::string token; ///< what files and the record hold, e.g. "4-" or "hours_days"
    std::string label; ///< what people read (English source text)
    Look look = Look::plain;
};

/// What an item can hold.
struct Scale {
    enum class Kind { choice, grade, number, text };

    Kind kind = Kind::choice;
    std::string name;                  ///< "mrc", "reflex", … or empty for a scale given inline
    std::vector<ScaleValue> values;    ///< choice and grade, in the catalogue's order
    std::optional<std::string> normal; ///< normal token; none where no value is normal
    std::string unit;                  ///< number: UCUM code or a plain word
    double minimum = 0;
    double maximum = 0;
    double step = 0;
    std::optional<double> normalNumber;
    std::string note;

    [[nodiscard]] bool numeric() const { return kind == Kind::number; }
    [[nodiscard]] bool listed() const { return kind == Kind::choice || kind == Kind::grade; }
    /// Position of a token in `values`; none when the scale does not have it.
    [[nodiscard]] std::optional<std::size_t> index(const std::string& token) const;
    /// How many of `values`, counted from the first, speak about the present state. On a scale that has a
    /// normal value the rest carry no judgement (Look::plain): "long-standing, unchanged" is neither normal
    /// nor a new loss.
    [[nodiscard]] std::size_t judged() const;
    /// Digits after the point that the step calls for (0.1 -> 1).
    [[nodiscard]] int decimals() const;
};

} // namespace rhizograph
