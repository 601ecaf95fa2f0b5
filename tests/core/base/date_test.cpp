#include "base/date.h"

#include <gtest/gtest.h>

namespace rhizograph {
namespace {

TEST(Date, OnlyDaysOfTheCalendarAreDates) {
    for (const char* good : {"2026-02-28", "2024-02-29", "2000-02-29", "1999-12-31"})
        EXPECT_TRUE(dateFrom(good)) << good;
    for (const char* bad :
         {"2026-02-29", "1900-02-29", "2026-00-10", "2026-13-01", "2026-04-31", "2026-4-1", "26-04-01",
          "2026/04/01", "2026-04-01T00:00", "+026-04-01", "2026-04-0x", "", "today"})
        EXPECT_FALSE(dateFrom(bad)) << bad;
}

TEST(Date, TextOfADateReadsBackAsTheSameDate) {
    EXPECT_EQ(dateText(*dateFrom("0987-01-02")), "0987-01-02");
    EXPECT_EQ(dateText(*dateFrom("2026-11-05")), "2026-11-05");
}

TEST(Date, DaysAreCountedAcrossMonthsAndLeapDays) {
    EXPECT_EQ(daysBetween("2024-02-28", "2024-03-01"), 2);
    EXPECT_EQ(daysBetween("2026-02-28", "2026-03-01"), 1);
    EXPECT_EQ(daysBetween("2026-03-01", "2026-02-28"), -1);
    EXPECT_EQ(daysBetween("2026-03-01", "soon"), std::nullopt);
}

TEST(Date, AgeCountsCompletedYears) {
    EXPECT_EQ(ageOn("1974-11-25", "2026-11-24"), 51);
    EXPECT_EQ(ageOn("1974-11-25", "2026-11-25"), 52);
    EXPECT_EQ(ageOn("2004-02-29", "2026-02-28"), 21);
    EXPECT_EQ(ageOn("2004-02-29", "2026-03-01"), 22);
    EXPECT_EQ(ageOn("2026-03-02", "2026-03-01"), std::nullopt);
}

} // namespace
} // namespace rhizograph
