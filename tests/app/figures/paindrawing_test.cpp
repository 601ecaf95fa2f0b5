#include "figures/paindrawing.h"

#include "art.h"
#include "visit.h"

#include <gtest/gtest.h>

namespace rhizograph::app {
namespace {

const RegionKey shin{"outer_shin", Side::left};
const RegionKey dorsum{"dorsum_central", Side::left};

class PainDrawingTest : public testing::Test {
protected:
    PainDrawingTest() : session(knowledge(), {}, nullptr), drawing(session, figures()) {
        drawing.resize(560, 530);
        drawing.show();
        QApplication::processEvents();
    }
    std::string state(const RegionKey& region) {
        const auto value = recorded(drawing.layer(), region, session.exam());
        return value ? value->word() : "unmarked";
    }
    QPointF place(const RegionKey& region) { return drawing.canvas().placeOf(region).value(); }

    VisitSession session;
    PainDrawing drawing;
};

TEST_F(PainDrawingTest, EveryRegionCanBeMarkedWhereItIsLabelled) {
    for (const auto& region : figures()->regions()) {
        press(drawing.canvas(), place(region));
        EXPECT_NE(state(region), "unmarked") << region.region;
    }
}

TEST_F(PainDrawingTest, AStrokePaintsTheChosenMarkInOneUndoStep) {
    drawing.setBrush(Value::token("sharp"));
    drag(drawing.canvas(), {place(shin), place(dorsum)});
    EXPECT_EQ(state(shin), "sharp");
    EXPECT_EQ(state(dorsum), "sharp");
    EXPECT_EQ(session.undoStack().count(), 1);
}

TEST_F(PainDrawingTest, RubbingOutLeavesTheRegionUnmarkedAndClaimsNothing) {
    drawing.setBrush(Value::token("numb"));
    press(drawing.canvas(), place(shin));
    drawing.setBrush(std::nullopt);
    press(drawing.canvas(), place(shin));
    EXPECT_EQ(state(shin), "unmarked");
    EXPECT_TRUE(session.exam().findings().empty());
}

TEST_F(PainDrawingTest, AnotherMarkReplacesAndTheSameMarkAgainClears) {
    drawing.setBrush(Value::token("ache"));
    press(drawing.canvas(), place(shin));
    drawing.setBrush(Value::token("pins"));
    press(drawing.canvas(), place(shin));
    EXPECT_EQ(state(shin), "pins");
    press(drawing.canvas(), place(shin));
    EXPECT_EQ(state(shin), "unmarked");
}

} // namespace
} // namespace rhizograph::app
