// Every published case and textbook picture through the red signs alone: what the report expects is raised,
// what it forbids as an emergency is not one (unless the same report expects that sign).
#include "checks/safety/levels.h"

#include <cstdio>
#include <gmock/gmock.h>

namespace rhizograph::safety {
namespace {

struct Counts {
    int cases = 0;
    int expected = 0;
    int emergencies = 0;
    int forbidden = 0;
    std::vector<std::string> missed;
    std::vector<std::string> falseAlarms;
};

bool names(const std::vector<std::string>& ids, const std::string& id) {
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

Counts countIn(const std::string& folder) {
    Counts out;
    for (const auto& each : testing::readCases(std::filesystem::path{RHIZOGRAPH_TEST_DATA} / folder)) {
        ++out.cases;
        for (const std::string& id : each.redSigns) {
            ++out.expected;
            if (level(id, each.exam) == "silent") out.missed.push_back(each.id + " " + id);
        }
        for (const std::string& id : each.mustNot) {
            if (names(each.redSigns, id)) continue;
            ++out.forbidden;
            if (level(id, each.exam) == "emergency") out.falseAlarms.push_back(each.id + " " + id);
        }
        out.emergencies += loudest(each.exam) == "emergency";
    }
    std::printf("%s: %d cases, red signs raised %d of %d, forbidden emergencies %d of %d, cases with any "
                "emergency %d\n",
                folder.c_str(), out.cases, out.expected - static_cast<int>(out.missed.size()), out.expected,
                static_cast<int>(out.falseAlarms.size()), out.forbidden, out.emergencies);
    return out;
}

TEST(CaseRedSigns, EveryExpectedSignIsRaisedAndNoForbiddenEmergency) {
    for (const char* folder : {"cases", "cases/textbook"}) {
        const Counts counts = countIn(folder);
        EXPECT_GT(counts.cases, 0) << folder;
        EXPECT_GT(counts.expected, 0) << folder;
        EXPECT_THAT(counts.missed, ::testing::IsEmpty()) << folder;
        EXPECT_THAT(counts.falseAlarms, ::testing::IsEmpty()) << folder;
    }
}

} // namespace
} // namespace rhizograph::safety
