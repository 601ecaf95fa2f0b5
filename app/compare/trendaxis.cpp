#include "compare/trendaxis.h"

#include <algorithm>

namespace rhizograph::app {
namespace {

constexpr qreal apart = 14; ///< px between two dots that can still be told apart

} // namespace

TrendAxis::TrendAxis(std::vector<QDate> visits, qreal left, qreal right)
    : dates_(std::move(visits)), width_(right - left),
      dated_(!dates_.empty() &&
             std::all_of(dates_.begin(), dates_.end(), [](const QDate& date) { return date.isValid(); })) {
    const std::size_t count = dates_.size();
    if (count == 0) return;
    if (count == 1) {
        at_ = {left + width_ / 2};
        return;
    }
    const auto days = dated_ ? static_cast<qreal>(dates_.front().daysTo(dates_.back())) : 0;
    for (std::size_t i = 0; i < count; ++i) {
        const qreal share = days > 0 ? static_cast<qreal>(dates_.front().daysTo(dates_[i])) / days
                                     : static_cast<qreal>(i) / static_cast<qreal>(count - 1);
        at_.push_back(left + width_ * share);
    }
    const qreal gap = std::min(apart, width_ / 2 / static_cast<qreal>(count - 1));
    for (std::size_t i = 1; i < count; ++i)
        at_[i] = std::max(at_[i], at_[i - 1] + gap);
    at_.back() = std::min(at_.back(), right);
    for (std::size_t i = count - 1; i > 0; --i)
        at_[i - 1] = std::min(at_[i - 1], at_[i] - gap);
}

qreal TrendAxis::narrowest() const {
    qreal least = width_;
    for (std::size_t i = 1; i < at_.size(); ++i)
        least = std::min(least, at_[i] - at_[i - 1]);
    return least;
}

std::optional<qreal> TrendAxis::day(const QDate& date) const {
    if (!dated_ || !date.isValid() || date < dates_.front() || date > dates_.back()) return std::nullopt;
    for (std::size_t i = 1; i < dates_.size(); ++i) {
        if (date > dates_[i]) continue;
        const auto days = static_cast<qreal>(dates_[i - 1].daysTo(dates_[i]));
        const qreal share = days > 0 ? static_cast<qreal>(dates_[i - 1].daysTo(date)) / days : 1;
        return at_[i - 1] + share * (at_[i] - at_[i - 1]);
    }
    return at_.front();
}

bool TrendAxis::severalYears() const {
    return dated_ && dates_.front().year() != dates_.back().year();
}

} // namespace rhizograph::app
