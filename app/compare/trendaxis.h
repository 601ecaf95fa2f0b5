#pragma once

#include <optional>
#include <QDate>
#include <vector>

namespace rhizograph::app {

/// Time from left to right, true to days. Visits that would lie over one another (of one day, or days apart
/// in a course of years) are moved aside just far enough to be told apart, in their order.
class TrendAxis {
public:
    TrendAxis() = default;
    TrendAxis(std::vector<QDate> visits, qreal left, qreal right);

    [[nodiscard]] qreal visit(std::size_t index) const { return at_.at(index); }
    /// Least distance between two visits beside each other; the whole width where there is one.
    [[nodiscard]] qreal narrowest() const;
    /// Where a day stands between the visits; nothing outside them or where visits have no dates.
    [[nodiscard]] std::optional<qreal> day(const QDate& date) const;
    [[nodiscard]] bool dated() const { return dated_; }
    [[nodiscard]] bool before(const QDate& date) const { return dated_ && date < dates_.front(); }
    /// The course runs over a turn of the year, so that a day needs its year.
    [[nodiscard]] bool severalYears() const;

private:
    std::vector<QDate> dates_;
    std::vector<qreal> at_;
    qreal width_ = 0;
    bool dated_ = false;
};

} // namespace rhizograph::app
