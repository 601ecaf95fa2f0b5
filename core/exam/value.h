#pragma once

#include "catalogue/scale.h"

#include <string>

namespace rhizograph {

/// What was found: a token of the item's scale, a number, free text, or "not testable" with a reason.
/// Absence of a finding means not examined; there is no value for it.
class Value {
public:
    enum class Kind { token, number, text, notTestable };

    static Value token(std::string token) { return {Kind::token, std::move(token), 0}; }
    static Value number(double number) { return {Kind::number, {}, number}; }
    static Value text(std::string text) { return {Kind::text, std::move(text), 0}; }
    static Value notTestable(std::string because) { return {Kind::notTestable, std::move(because), 0}; }

    [[nodiscard]] Kind kind() const { return kind_; }
    [[nodiscard]] bool testable() const { return kind_ != Kind::notTestable; }
    [[nodiscard]] bool isNumber() const { return kind_ == Kind::number; }
    /// Token or text; for not testable the reason.
    [[nodiscard]] const std::string& word() const { return word_; }
    [[nodiscard]] double number() const { return number_; }
    bool operator==(const Value&) const = default;

private:
    Value(Kind kind, std::string word, double number)
        : kind_(kind), word_(std::move(word)), number_(number) {}

    Kind kind_;
    std::string word_;
    double number_;
};

/// How a value reads on its scale. A number is judged only where the scale names a normal one; text and
/// not testable are plain.
[[nodiscard]] Look lookOf(const Scale& scale, const Value& value);

/// A value for people: the label of a token, a number with the scale's decimals, or the text itself.
[[nodiscard]] std::string display(const Scale& scale, const Value& value);

} // namespace rhizograph
