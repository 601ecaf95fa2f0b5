#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace rhizograph {

/// Rows of as many numbers each, every row once, numbered in the order they came.
class FeatureTable {
public:
    /// Rows are numbered with so few bits because long lists of the numbers are kept.
    using Number = std::uint16_t;

    explicit FeatureTable(std::size_t width = 0) : width_(width) {}

    [[nodiscard]] std::size_t size() const { return size_; }
    [[nodiscard]] std::span<const double> row(std::size_t number) const {
        return {numbers_.data() + number * width_, width_};
    }
    /// Number of this row, which is added if it is new. Throws std::length_error when no number is left.
    Number number(std::span<const double> row);
    /// Forgets how to find rows; the rows stay.
    void close() { buckets_ = {}; }

private:
    void grow();
    [[nodiscard]] std::size_t bucketOf(std::span<const double> row) const;

    std::size_t width_ = 0;
    std::size_t size_ = 0;
    std::vector<double> numbers_;
    std::vector<Number> buckets_; ///< number of a row by hash, open addressing; a power of two of them
};

} // namespace rhizograph
