#include "art.h"

#include <gtest/gtest.h>
#include <QRandomGenerator>

namespace rhizograph::app {
namespace {

const std::string twoRegions = R"(<svg viewBox="0 0 100 50">
<path id="right.heel" d="M0 0C10 0 20 0 30 0C30 10 30 20 30 30C20 30 10 30 0 30Z"/>
<path id="left.heel" d="M70 0C80 0 90 0 100 0C100 10 100 20 100 30C90 30 80 30 70 30Z"/>
<path id="silhouette.right" d="M0 0C10 0 20 0 30 0C30 10 30 20 30 30Z"/>
<path id="silhouette.left" d="M70 0C80 0 90 0 100 0C100 10 100 20 100 30Z"/>
</svg>)";

std::string replaced(std::string text, const std::string& from, const std::string& to) {
    return text.replace(text.find(from), from.size(), to);
}

std::string problemOf(const std::string& svg) {
    const auto art = parseFigure(svg, FigureView::front, "front.svg");
    return art ? std::string() : art.problems().front().text();
}

TEST(FigureArt, LoadsEveryDrawingWithBothSides) {
    const auto art = figures();
    int regions = 0;
    for (const FigureView view : allFigureViews) {
        regions += static_cast<int>(art->view(view).regions.size());
    }
    EXPECT_EQ(regions, static_cast<int>(art->regions().size()));
    EXPECT_GT(regions, 0);
    for (const auto& key : art->regions()) {
        EXPECT_GT(art->area(key.region), 0) << key.region;
    }
}

TEST(FigureArt, ReadsAFigureOfTwoRegions) {
    const auto art = parseFigure(twoRegions, FigureView::front, "front.svg");
    ASSERT_TRUE(art.ok());
    EXPECT_EQ(art->regions.size(), 2U);
    EXPECT_EQ(art->box, QRectF(0, 0, 100, 50));
    EXPECT_EQ(art->hit({15, 15}, 0)->key, (RegionKey{"heel", Side::right}));
    EXPECT_EQ(art->hit({85, 15}, 0)->key, (RegionKey{"heel", Side::left}));
    EXPECT_EQ(art->hit({50, 15}, 0), nullptr);
}

TEST(FigureArt, APressBesideARegionCountsForTheNearestWithinReachOnly) {
    const auto art = parseFigure(twoRegions, FigureView::front, "front.svg");
    ASSERT_TRUE(art.ok());
    EXPECT_EQ(art->hit({35, 15}, 6)->key, (RegionKey{"heel", Side::right}));
    EXPECT_EQ(art->hit({66, 15}, 6)->key, (RegionKey{"heel", Side::left}));
    EXPECT_EQ(art->hit({37, 15}, 6), nullptr);
}

TEST(FigureArt, RefusesARegionWithoutATwinOnTheOtherSide) {
    EXPECT_NE(problemOf(replaced(twoRegions, "left.heel", "left.toe")).find("no twin on the other side"),
              std::string::npos);
}

TEST(FigureArt, RefusesRelativeCommandsWithFileAndPlace) {
    const std::string problem = problemOf(replaced(twoRegions, "M0 0C10", "M0 0l10"));
    EXPECT_NE(problem.find("front.svg: line 2"), std::string::npos) << problem;
    EXPECT_NE(problem.find("only M, C and Z"), std::string::npos) << problem;
}

TEST(FigureArt, RefusesAnIdThatStandsTwice) {
    EXPECT_NE(problemOf(replaced(twoRegions, "left.heel", "right.heel")).find("stands twice"),
              std::string::npos);
}

TEST(FigureArt, RefusesBrokenXmlAndUnknownIds) {
    EXPECT_NE(problemOf(twoRegions.substr(0, 80)), "");
    EXPECT_NE(problemOf(replaced(twoRegions, "left.heel", "middle.heel")).find("middle.heel"),
              std::string::npos);
    EXPECT_NE(problemOf(replaced(twoRegions, "0 0 100 50", "0 0 100")).find("viewBox"), std::string::npos);
}

TEST(FigureArt, RefusesAMissingFolderWithAProblemForEachFile) {
    const auto art = FigureArt::load("/no/such/folder");
    ASSERT_FALSE(art.ok());
    EXPECT_EQ(art.problems().size(), 6U);
}

TEST(FigureArt, PathDataNeedsWholePoints) {
    EXPECT_FALSE(parsePathData(u"M1", "f", "p").ok());
    EXPECT_FALSE(parsePathData(u"M1 1C1 2 3 4 5", "f", "p").ok());
    EXPECT_FALSE(parsePathData(u"C1 2 3 4 5 6", "f", "p").ok());
    EXPECT_FALSE(parsePathData(u"", "f", "p").ok());
    EXPECT_FALSE(parsePathData(u"M1 1Cnan 2 3 4 5 6", "f", "p").ok());
    ASSERT_TRUE(parsePathData(u"M1 1C1 2 3 4 5 6 7 8 9 10-11-12Z", "f", "p").ok());
}

/// Every point of the body belongs to exactly one region or to the parts that cannot be pressed.
TEST(FigureArt, RegionsCoverTheBodyWithoutGapsOrOverlaps) {
    const auto art = figures();
    QRandomGenerator random(20261125);
    int tries = 0;
    int failures = 0;
    for (const FigureView view : allFigureViews) {
        const ViewArt& figure = art->view(view);
        const auto box = figure.box;
        for (int i = 0; i < 4000; ++i) {
            const QPointF point(box.left() + random.generateDouble() * box.width(),
                                box.top() + random.generateDouble() * box.height());
            const bool body = figure.silhouette.at(Side::left).contains(point) ||
                              figure.silhouette.at(Side::right).contains(point);
            int owners = 0;
            double border = 1e9;
            for (const auto& region : figure.regions) {
                owners += region.path.contains(point) ? 1 : 0;
                border = std::min(border, distanceToBorder(region.border, point));
            }
            const bool context = std::ranges::any_of(
                figure.context, [&](const QPainterPath& path) { return path.contains(point); });
            if (border < 0.6) continue; // a hair beside a border both neighbors may claim the point
            ++tries;
            const bool right = body ? owners + (context ? 1 : 0) == 1 : owners == 0;
            if (!right && ++failures < 6) {
                ADD_FAILURE() << name(view) << " " << point.x() << "," << point.y() << ": " << owners
                              << " owners";
            }
        }
    }
    std::printf("[ figures ] %d points, %d with a gap or a double hit\n", tries, failures);
    EXPECT_GT(tries, 8000);
    EXPECT_EQ(failures, 0);
}

} // namespace
} // namespace rhizograph::app
