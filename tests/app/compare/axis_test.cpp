#include "compare/trendaxis.h"

#include <gtest/gtest.h>

namespace rhizograph::app {
namespace {

constexpr qreal left = 100;
constexpr qreal right = 900;

QDate plus(int days) {
    return QDate(2026, 1, 5).addDays(days);
}

TEST(TimeAxis, IsTrueToTheDays) {
    const TrendAxis axis({plus(0), plus(30), plus(100)}, left, right);
    EXPECT_DOUBLE_EQ(axis.visit(0), 100);
    EXPECT_DOUBLE_EQ(axis.visit(1), 340);
    EXPECT_DOUBLE_EQ(axis.visit(2), 900);
    EXPECT_DOUBLE_EQ(*axis.day(plus(50)), 500);
    EXPECT_FALSE(axis.day(plus(-1)).has_value());
    EXPECT_FALSE(axis.day(plus(101)).has_value());
    EXPECT_TRUE(axis.before(plus(-1)));
}

TEST(TimeAxis, KeepsVisitsOfOneDayApartAndInOrder) {
    const std::vector<std::vector<int>> courses{
        {0, 0, 100}, {0, 100, 100}, {0, 50, 50, 50, 100}, {0, 0, 0}, {0, 0}};
    for (const std::vector<int>& days : courses) {
        std::vector<QDate> dates;
        for (const int day : days)
            dates.push_back(plus(day));
        const TrendAxis axis(dates, left, right);
        for (std::size_t i = 1; i < dates.size(); ++i)
            EXPECT_GE(axis.visit(i) - axis.visit(i - 1), 14 - 1e-9) << days.size() << " visits, " << i;
        EXPECT_GE(axis.visit(0), left);
        EXPECT_LE(axis.visit(dates.size() - 1), right);
    }
}

TEST(TimeAxis, HoldsSixtyVisitsHoweverTheyLie) {
    for (const int bunch : {60, 30, 2}) {
        std::vector<QDate> dates;
        for (int i = 0; i < 60; ++i)
            dates.push_back(plus(i / bunch * 400 + i % bunch));
        const TrendAxis axis(dates, left, right);
        for (std::size_t i = 1; i < 60; ++i)
            EXPECT_GE(axis.visit(i) - axis.visit(i - 1), 6.7) << i;
        EXPECT_GE(axis.visit(0), left - 1e-9);
        EXPECT_LE(axis.visit(59), right + 1e-9);
    }
}

TEST(TimeAxis, StandsAtEqualDistancesWithoutDates) {
    const TrendAxis axis({plus(0), QDate(), plus(100)}, left, right);
    EXPECT_DOUBLE_EQ(axis.visit(1), 500);
    EXPECT_FALSE(axis.dated());
    EXPECT_FALSE(axis.day(plus(50)).has_value());
}

TEST(TimeAxis, OfOneVisitStandsInTheMiddle) {
    EXPECT_DOUBLE_EQ(TrendAxis({plus(0)}, left, right).visit(0), 500);
}

TEST(TimeAxis, NeedsYearsOnlyOverATurnOfTheYear) {
    EXPECT_FALSE(TrendAxis({plus(0), plus(300)}, left, right).severalYears());
    EXPECT_TRUE(TrendAxis({plus(0), plus(365)}, left, right).severalYears());
}

} // namespace
} // namespace rhizograph::app
