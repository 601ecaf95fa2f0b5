#include "art.h"

#include <gtest/gtest.h>
#include <QRandomGenerator>

namespace rhizograph::app {
namespace {

double centerX(const ViewArt& figure, Side side) {
    return figure.silhouette.at(side).boundingRect().center().x();
}

TEST(FigureSides, ThePatientsRightIsOnTheLeftOfTheScreenUnlessSeenFromBehind) {
    const auto art = figures();
    for (const FigureView view : {FigureView::front, FigureView::sole, FigureView::saddle}) {
        EXPECT_LT(centerX(art->view(view), Side::right), centerX(art->view(view), Side::left)) << name(view);
    }
    EXPECT_GT(centerX(art->view(FigureView::back), Side::right),
              centerX(art->view(FigureView::back), Side::left));
}

TEST(FigureSides, EveryRegionLiesInsideItsOwnHalf) {
    const auto art = figures();
    for (const FigureView view : allFigureViews) {
        const ViewArt& figure = art->view(view);
        for (const auto& region : figure.regions) {
            EXPECT_TRUE(figure.silhouette.at(region.key.side).contains(region.label)) << region.key.region;
            EXPECT_FALSE(figure.silhouette.at(mirrored(region.key.side)).contains(region.label))
                << region.key.region;
        }
    }
}

TEST(FigureSides, EveryLabelPointHitsItsOwnRegionAndItsMirrorTheTwin) {
    const auto art = figures();
    int tries = 0;
    for (const FigureView view : allFigureViews) {
        const ViewArt& figure = art->view(view);
        for (const auto& region : figure.regions) {
            const auto* here = figure.hit(region.label, 0);
            ASSERT_NE(here, nullptr) << region.key.region;
            EXPECT_EQ(here->key, region.key);
            const QPointF across(2 * figure.box.center().x() - region.label.x(), region.label.y());
            const auto* there = figure.hit(across, 0);
            ASSERT_NE(there, nullptr) << region.key.region;
            EXPECT_EQ(there->key, (RegionKey{region.key.region, mirrored(region.key.side)}));
            ++tries;
        }
    }
    std::printf("[ sides ] %d label points, 0 failures\n", tries);
    EXPECT_GT(tries, 60);
}

TEST(FigureSides, AnyPointAndItsMirrorHitTheSameRegionOfOppositeSides) {
    const auto art = figures();
    QRandomGenerator random(7);
    int tries = 0;
    int failures = 0;
    for (const FigureView view : allFigureViews) {
        const ViewArt& figure = art->view(view);
        for (int i = 0; i < 5000; ++i) {
            const QPointF point(random.generateDouble() * figure.box.width(),
                                random.generateDouble() * figure.box.height());
            const auto* here = figure.hit(point, 0);
            if (here == nullptr || distanceToBorder(here->border, point) < 0.3) continue;
            const auto* there = figure.hit({figure.box.width() - point.x(), point.y()}, 0);
            ++tries;
            const bool same = there != nullptr && there->key.region == here->key.region &&
                              there->key.side == mirrored(here->key.side);
            failures += same ? 0 : 1;
        }
    }
    std::printf("[ sides ] %d points, %d on the wrong side or region\n", tries, failures);
    EXPECT_GT(tries, 4000);
    EXPECT_EQ(failures, 0);
}

/// The points to touch come from the international standard for the examination after spinal cord injury
/// (revision of 2019, read second hand); that they fall in the region the file names for them is our
/// drawing's business.
TEST(FigureSides, EveryKeyPointHitsItsRegionOnItsOwnSide) {
    const auto art = figures();
    EXPECT_GE(art->keyPoints().size(), 10U);
    for (const auto& point : art->keyPoints()) {
        const ViewArt& figure = art->view(point.view);
        for (const Side side : {Side::left, Side::right}) {
            const auto* hit = figure.hit(side == Side::right ? point.right : point.left, 0);
            ASSERT_NE(hit, nullptr) << point.id;
            EXPECT_EQ(hit->key, (RegionKey{point.region, side})) << point.id;
        }
    }
}

} // namespace
} // namespace rhizograph::app
