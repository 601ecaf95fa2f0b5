#include "compare/comparepage.h"
#include "compare/figurepair.h"
#include "figures/skinlayer.h"
#include "visits.h"

#include <gtest/gtest.h>
#include <QApplication>

namespace rhizograph::app {
namespace {

std::shared_ptr<const FigureArt> art() {
    static const auto loaded = std::make_shared<const FigureArt>(
        taken(FigureArt::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "figures")));
    return loaded;
}

FindingChange touch(const char* region, const char* value, Side side = Side::left) {
    return found(std::string{"touch."} + region, side, Value::token(value));
}

TEST(ChangedSkin, IsOutlinedOnBothFiguresAndNothingElse) {
    const Course course(
        {{"2026-11-12",
          {touch("outer_shin", "normal"), touch("inner_shin", "absent"), touch("great_toe", "reduced"),
           touch("knee_front", "normal")}},
         {"2026-11-24",
          {touch("outer_shin", "reduced"), touch("inner_shin", "normal"), touch("great_toe", "reduced")}}});
    ComparePage page(*course.session, *course.store, art());
    page.resize(1104, 680);
    page.show();
    QApplication::processEvents();
    const auto& pictures = page.figures()->pictures();
    ASSERT_EQ(pictures.size(), 2U);
    const std::map<RegionKey, Change> expected{{{"outer_shin", Side::left}, Change::created},
                                               {{"inner_shin", Side::left}, Change::resolved}};
    for (const FigurePair::Picture& picture : pictures) {
        EXPECT_EQ(picture.view, FigureView::front);
        EXPECT_EQ(picture.changes, expected) << "the knee was not examined again, so nothing is said of it";
    }
}

TEST(ChangedSkin, ShowsTheViewThatChangedMost) {
    const std::string sole = [] {
        for (const RegionArt& region : art()->view(FigureView::sole).regions)
            for (const SkinLayer& layer : skinLayers(knowledge().catalogue()))
                if (layer.group().text() == "light_touch" && layer.item(region.key.region) != nullptr)
                    return region.key.region;
        throw std::runtime_error("no region of the sole");
    }();
    const Course course(
        {{"2026-11-12", {touch(sole.c_str(), "normal")}}, {"2026-11-24", {touch(sole.c_str(), "absent")}}});
    ComparePage page(*course.session, *course.store, art());
    page.show();
    EXPECT_EQ(page.figures()->pictures().front().view, FigureView::sole);
}

} // namespace
} // namespace rhizograph::app
