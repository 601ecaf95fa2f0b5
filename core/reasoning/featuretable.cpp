#include "reasoning/featuretable.h"

#include <algorithm>
#include <bit>
#include <limits>
#include <stdexcept>

namespace rhizograph {
namespace {

constexpr FeatureTable::Number kEmpty = std::numeric_limits<FeatureTable::Number>::max();
constexpr std::size_t kFirstBuckets = 64;

/// Hash of the bits of a row; +0 and -0 do not both occur.
std::size_t hashOf(std::span<const double> row) {
    std::uint64_t hash = 1469598103934665603ULL;
    for (const double value : row) {
        // Round numbers end in zeros: the upper bits are folded onto those that choose the bucket.
        hash = (hash ^ std::bit_cast<std::uint64_t>(value)) * 0x9E3779B97F4A7C15ULL;
        hash ^= hash >> 32U;
    }
    return hash;
}

} // namespace

/// The bucket that holds the row, or the empty one where it would stand.
std::size_t FeatureTable::bucketOf(std::span<const double> wanted) const {
    const std::size_t mask = buckets_.size() - 1;
    std::size_t bucket = hashOf(wanted) & mask;
    while (buckets_[bucket] != kEmpty) {
        const std::span<const double> there = row(buckets_[bucket]);
        if (std::equal(there.begin(), there.end(), wanted.begin())) break;
        bucket = (bucket + 1) & mask;
    }
    return bucket;
}

FeatureTable::Number FeatureTable::number(std::span<const double> wanted) {
    if (2 * (size_ + 1) > buckets_.size()) grow();
    const std::size_t bucket = bucketOf(wanted);
    if (buckets_[bucket] != kEmpty) return buckets_[bucket];
    if (size_ >= kEmpty) throw std::length_error("more kinds of hypotheses than can be numbered");
    numbers_.insert(numbers_.end(), wanted.begin(), wanted.end());
    return buckets_[bucket] = static_cast<Number>(size_++);
}

void FeatureTable::grow() {
    buckets_.assign(std::max(kFirstBuckets, 2 * buckets_.size()), kEmpty);
    for (std::size_t number = 0; number < size_; ++number)
        buckets_[bucketOf(row(number))] = static_cast<Number>(number);
}

} // namespace rhizograph
