#pragma once

#include <string>
#include <variant>
#include <vector>

namespace rhizograph {

/// One thing wrong with an input: the file, the place in it (a path such as "/findings/3/value" or
/// "line 4, column 7") and the reason, worded for the person who has to repair it.
struct Problem {
    std::string file;
    std::string place;
    std::string reason;

    /// "file: place: reason", leaving out empty parts.
    [[nodiscard]] std::string text() const;
    bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

/// A value, or everything that was wrong with the input it was to be made from (never an empty list).
/// For what can fail by input; what should never happen throws.
template <class T> class [[nodiscard]] Result {
public:
    Result(T value) : content_(std::move(value)) {}
    Result(Problems problems) : content_(std::move(problems)) {}
    Result(Problem problem) : content_(Problems{std::move(problem)}) {}

    [[nodiscard]] bool ok() const { return content_.index() == 0; }
    explicit operator bool() const { return ok(); }

    /// Precondition: ok(). Throws std::bad_variant_access otherwise.
    [[nodiscard]] const T& value() const& { return std::get<0>(content_); }
    [[nodiscard]] T& value() & { return std::get<0>(content_); }
    [[nodiscard]] T&& value() && { return std::get<0>(std::move(content_)); }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

    /// Precondition: !ok().
    [[nodiscard]] const Problems& problems() const { return std::get<1>(content_); }

private:
    std::variant<T, Problems> content_;
};

/// Result of an action that yields nothing: empty problems mean success.
class [[nodiscard]] Outcome {
public:
    Outcome() = default;
    Outcome(Problem problem) : problems_{std::move(problem)} {}
    Outcome(Problems problems) : problems_(std::move(problems)) {}
    [[nodiscard]] bool ok() const { return problems_.empty(); }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const Problems& problems() const { return problems_; }

private:
    Problems problems_;
};

} // namespace rhizograph
