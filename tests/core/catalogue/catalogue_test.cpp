#include "catalogue/catalogue.h"

#include <gtest/gtest.h>

namespace rhizograph {
namespace {

TEST(Catalogue, ShippedFileLoadsWithoutAProblem) {
    const auto catalogue = loadCatalogue(RHIZOGRAPH_RESOURCES "/knowledge/catalogue.json");
    ASSERT_TRUE(catalogue.ok()) << catalogue.problems().front().text();
    EXPECT_GE(catalogue->items().size(), 283U);
}

TEST(Catalogue, EveryCardHasAtLeastOneItem) {
    const auto catalogue = loadCatalogue(RHIZOGRAPH_RESOURCES "/knowledge/catalogue.json");
    ASSERT_TRUE(catalogue.ok());
    for (const Group& group : catalogue->groups())
        EXPECT_FALSE(catalogue->itemsOf(group.step, group.id).empty())
            << group.step.text() << "/" << group.id.text();
}

TEST(Catalogue, RefusesAnItemOnAnUnknownScaleNamingThePlace) {
    const auto bad = parseCatalogue(R"({"format":"rhizograph.catalogue","version":1,
        "steps":[{"id":"s","label":"S"}],"groups":[{"id":"g","step":"s","label":"G","page":"P"}],
        "scales":{},"not_testable":{"value":"not_testable","because":["pain"]},
        "items":[{"id":"a","step":"s","group":"g","label":"A","sided":false,"scale":"nowhere","tier":"core"}]})",
                                    "test.json");
    ASSERT_FALSE(bad.ok());
    EXPECT_EQ(bad.problems().front().place, "/items/0/scale");
}

std::string withScale(const std::string& values, const std::string& looks) {
    return R"({"format":"rhizograph.catalogue","version":1,
        "steps":[{"id":"s","label":"S"}],"groups":[{"id":"g","step":"s","label":"G","page":"P"}],
        "scales":{},"not_testable":{"value":"not_testable","because":["pain"]},
        "items":[{"id":"a","step":"s","group":"g","label":"A","sided":false,"tier":"core",
        "scale":{"kind":"choice","normal":"no","values":)" +
           values + R"(,"looks":)" + looks + "}}]}";
}

TEST(Catalogue, ValuesWithoutJudgementAreCountedApartAndStandLast) {
    const auto good = parseCatalogue(withScale(R"(["no","yes","old"])", R"({"old":"plain"})"), "test.json");
    ASSERT_TRUE(good.ok()) << good.problems().front().text();
    EXPECT_EQ(good->items().front().scale.judged(), 2U);
    const auto bad = parseCatalogue(withScale(R"(["no","old","yes"])", R"({"old":"plain"})"), "test.json");
    ASSERT_FALSE(bad.ok());
    EXPECT_EQ(bad.problems().front().reason, "values without judgement stand last");
}

} // namespace
} // namespace rhizograph
