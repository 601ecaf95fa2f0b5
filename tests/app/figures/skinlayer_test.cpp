#include "art.h"
#include "figures/stroke.h"

#include <gtest/gtest.h>

namespace rhizograph::app {
namespace {

Catalogue catalogue() {
    auto loaded = loadCatalogue(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "knowledge" / "catalogue.json");
    if (!loaded) throw std::runtime_error(loaded.problems().front().text());
    return std::move(*loaded);
}

const SkinLayer& layerOf(const std::vector<SkinLayer>& layers, const char* group) {
    return *std::ranges::find(layers, GroupId{group}, &SkinLayer::group);
}

TEST(SkinLayer, TheCatalogueHasTwoExaminedLayersAndOneDrawing) {
    const Catalogue items = catalogue();
    const auto layers = skinLayers(items);
    ASSERT_EQ(layers.size(), 3U);
    EXPECT_FALSE(layerOf(layers, "light_touch").drawn());
    EXPECT_FALSE(layerOf(layers, "pinprick").drawn());
    EXPECT_TRUE(layerOf(layers, "pain_drawing").drawn());
}

TEST(SkinLayer, EveryDrawnRegionHasAnItemOnEveryLayerAndEveryItemARegion) {
    const Catalogue items = catalogue();
    const auto art = figures();
    for (const auto& layer : skinLayers(items)) {
        for (const auto& key : art->regions())
            EXPECT_NE(layer.item(key.region), nullptr) << key.region;
        for (const auto& [region, item] : layer.items()) {
            ASSERT_TRUE(art->viewOf(region)) << region;
            EXPECT_EQ(name(*art->viewOf(region)), item->view) << region;
        }
    }
}

TEST(SkinLayer, ATapCyclesNormalReducedAbsentHeightenedUnexamined) {
    const Catalogue items = catalogue();
    const auto layers = skinLayers(items);
    const SkinLayer& touch = layerOf(layers, "light_touch");
    std::optional<Value> value;
    std::vector<std::string> seen;
    for (int i = 0; i < 5; ++i) {
        value = touch.next(value);
        seen.push_back(value ? value->word() : "unexamined");
    }
    EXPECT_EQ(seen, (std::vector<std::string>{"normal", "reduced", "absent", "heightened", "unexamined"}));
}

TEST(SkinLayer, EveryStateWearsAMarkOfItsOwn) {
    const Catalogue items = catalogue();
    for (const auto& layer : skinLayers(items)) {
        std::set<SkinMark> marks;
        for (const auto& value : layer.scale().values)
            marks.insert(layer.mark(Value::token(value.token)));
        EXPECT_EQ(marks.size(), layer.scale().values.size()) << layer.label();
        EXPECT_EQ(layer.mark(Value::notTestable("pain")), SkinMark::none);
    }
}

TEST(SkinLayer, ARegionIsSpokenWithSideLayerAndState) {
    const Catalogue items = catalogue();
    const auto layers = skinLayers(items);
    const SkinLayer& touch = layerOf(layers, "light_touch");
    const RegionKey toe{"great_toe", Side::left};
    EXPECT_EQ(touch.spoken(toe, Value::token("reduced")), "Left great toe, light touch, reduced");
    EXPECT_EQ(touch.spoken(toe, std::nullopt), "Left great toe, light touch, not examined");
    EXPECT_EQ(touch.spoken(toe, Value::notTestable("pain")),
              "Left great toe, light touch, not testable, pain");
}

TEST(SkinLayer, ABulkFillKeepsWhatIsRecordedAndNeverTouchesTheSaddle) {
    const Catalogue items = catalogue();
    const auto layers = skinLayers(items);
    const SkinLayer& touch = layerOf(layers, "light_touch");
    const auto art = figures();
    Exam exam;
    const FindingKey toe = *touch.key({"great_toe", Side::left});
    exam.set(toe, {Value::token("absent"), false, ""});
    const auto changes = fillNormal(touch, *art, exam);
    std::size_t outside = 0;
    for (const auto& key : art->regions())
        outside += art->viewOf(key.region) != FigureView::saddle ? 1 : 0;
    EXPECT_EQ(changes.size(), outside - 1);
    for (const auto& change : changes) {
        EXPECT_NE(change.key, toe);
        ASSERT_TRUE(change.finding);
        EXPECT_TRUE(change.finding->bulk);
        EXPECT_NE(items.find(change.key.item)->view, "saddle") << change.key.item.text();
    }
}

} // namespace
} // namespace rhizograph::app
