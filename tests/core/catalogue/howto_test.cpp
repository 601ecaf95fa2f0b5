#include "catalogue/howto.h"

#include <gtest/gtest.h>

namespace rhizograph {
namespace {

Catalogue shipped() {
    auto catalogue = loadCatalogue(RHIZOGRAPH_RESOURCES "/knowledge/catalogue.json");
    EXPECT_TRUE(catalogue.ok());
    return *catalogue;
}

TEST(HowTo, EveryGradedTestSaysHowItIsDoneAndWhatCounts) {
    const Catalogue catalogue = shipped();
    const auto howTos = HowTos::load(RHIZOGRAPH_RESOURCES "/knowledge/howto.json", catalogue);
    ASSERT_TRUE(howTos.ok()) << howTos.problems().front().text();
    for (const Item& item : catalogue.items()) {
        if (item.scale.kind != Scale::Kind::grade) continue;
        const HowTo* found = howTos->find(item.id);
        ASSERT_NE(found, nullptr) << item.id.text();
        EXPECT_FALSE(found->source.empty());
    }
    EXPECT_EQ(howTos->find(ItemId{"no.such.item"}), nullptr);
}

TEST(HowTo, RefusesUnknownItemsDoublesAndEmptyWordsNamingThePlace) {
    const auto bad = HowTos::parse(R"({"format": "rhizograph.howto", "version": 1, "entries": [
        {"item": "reflex.knee", "how": "Tap.", "counts": "A kick.", "source": "common practice"},
        {"item": "reflex.knee", "how": "Tap.", "counts": "A kick.", "source": "common practice"},
        {"item": "reflex.elbow", "how": "Tap.", "counts": "A kick.", "source": "common practice"},
        {"item": "reflex.ankle", "how": "", "counts": "A kick.", "source": "common practice"}]})",
                                   "test.json", shipped());
    ASSERT_FALSE(bad.ok());
    std::vector<std::string> places;
    for (const Problem& problem : bad.problems())
        places.push_back(problem.place);
    EXPECT_EQ(places, (std::vector<std::string>{"/entries/1/item", "/entries/2/item", "/entries/3/how"}));
}

} // namespace
} // namespace rhizograph
