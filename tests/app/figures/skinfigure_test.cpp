#include "figures/skinfigure.h"

#include "art.h"
#include "visit.h"

#include <gtest/gtest.h>
#include <QAccessible>
#include <QElapsedTimer>
#include <QImage>
#include <QKeyEvent>

namespace rhizograph::app {
namespace {

const RegionKey leftToe{"great_toe", Side::left};

class SkinFigureTest : public testing::Test {
protected:
    explicit SkinFigureTest(bool readOnly = false)
        : session(knowledge(), start(readOnly), nullptr), skin(session, figures()) {
        skin.resize(848, 744);
        skin.show();
        QApplication::processEvents();
    }
    static VisitSession::Start start(bool readOnly) {
        VisitSession::Start start;
        start.readOnly = readOnly;
        return start;
    }
    std::string state(const RegionKey& region) {
        const auto value = recorded(skin.layer(), region, session.exam());
        return value ? value->word() : "unexamined";
    }
    QPointF place(const RegionKey& region) { return skin.canvas().placeOf(region).value(); }
    void type(int key, const QString& text) {
        QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier, text);
        QApplication::sendEvent(&skin.canvas(), &event);
    }

    VisitSession session;
    SkinFigure skin;
};

class ReadOnlySkinFigureTest : public SkinFigureTest {
protected:
    ReadOnlySkinFigureTest() : SkinFigureTest(true) {}
};

TEST_F(SkinFigureTest, EveryRegionCanBePressedWhereItIsLabelled) {
    int tries = 0;
    for (const auto& region : figures()->regions()) {
        press(skin.canvas(), place(region));
        EXPECT_EQ(state(region), "normal") << region.region;
        ++tries;
    }
    EXPECT_EQ(session.exam().findings().size(), static_cast<std::size_t>(tries));
    std::printf("[ figures ] %d regions pressed\n", tries);
}

TEST_F(SkinFigureTest, PressesCycleThroughTheStatesAndBackToUnexamined) {
    std::vector<std::string> seen;
    for (int i = 0; i < 5; ++i) {
        press(skin.canvas(), place(leftToe));
        seen.push_back(state(leftToe));
    }
    EXPECT_EQ(seen, (std::vector<std::string>{"normal", "reduced", "absent", "heightened", "unexamined"}));
    EXPECT_EQ(session.undoStack().count(), 5);
}

TEST_F(SkinFigureTest, ADragPaintsEveryRegionItCrossesInOneUndoStep) {
    const RegionKey web{"first_web", Side::left};
    const RegionKey toes{"middle_toes", Side::left};
    press(skin.canvas(),
          place(leftToe)); // the toe is normal now: the stroke that begins on it paints "reduced"
    drag(skin.canvas(), {place(leftToe), place(web), place(toes)});
    for (const auto& region : {leftToe, web, toes})
        EXPECT_EQ(state(region), "reduced") << region.region;
    EXPECT_EQ(session.undoStack().count(), 2);
    session.undoStack().undo();
    EXPECT_EQ(state(leftToe), "normal");
    EXPECT_EQ(state(web), "unexamined");
    EXPECT_EQ(state(toes), "unexamined");
}

TEST_F(SkinFigureTest, AStrokeShowsBeforeItIsRecorded) {
    const QPointF at = place({"heel_plantar", Side::right});
    sendMouse(skin.canvas(), QEvent::MouseButtonPress, at, Qt::LeftButton);
    EXPECT_TRUE(session.exam().findings().empty());
    const QColor shown = skin.canvas().grab().toImage().pixelColor(at.toPoint());
    EXPECT_EQ(shown, Theme::of(&skin).spruceTint);
    sendMouse(skin.canvas(), QEvent::MouseButtonRelease, at, Qt::NoButton);
    EXPECT_EQ(session.exam().findings().size(), 1U);
}

TEST_F(SkinFigureTest, ThePatientsRightLegIsDrawnOnTheLeftAndFromBehindOnTheRight) {
    EXPECT_LT(place({"knee_front", Side::right}).x(), place({"knee_front", Side::left}).x());
    EXPECT_LT(place({"great_toe", Side::right}).x(), place({"great_toe", Side::left}).x());
    EXPECT_LT(place({"heel_plantar", Side::right}).x(), place({"heel_plantar", Side::left}).x());
    EXPECT_GT(place({"popliteal", Side::right}).x(), place({"popliteal", Side::left}).x());
}

TEST_F(SkinFigureTest, MirrorNormalIsOneStepMarkedAsBulkAndLeavesTheSaddle) {
    press(skin.canvas(), place(leftToe));
    press(skin.canvas(), place(leftToe));
    skin.fillRest();
    EXPECT_EQ(state(leftToe), "reduced");
    EXPECT_EQ(state({"knee_front", Side::right}), "normal");
    EXPECT_EQ(state({"perianal", Side::right}), "unexamined");
    EXPECT_EQ(state({"perineum", Side::left}), "unexamined");
    EXPECT_EQ(session.undoStack().count(), 3);
    session.undoStack().undo();
    EXPECT_EQ(state({"knee_front", Side::right}), "unexamined");
}

TEST_F(SkinFigureTest, LayersKeepTheirFindingsApart) {
    press(skin.canvas(), place(leftToe));
    skin.setLayer(1);
    EXPECT_EQ(state(leftToe), "unexamined");
    press(skin.canvas(), place(leftToe));
    press(skin.canvas(), place(leftToe));
    EXPECT_EQ(state(leftToe), "reduced");
    skin.setLayer(0);
    EXPECT_EQ(state(leftToe), "normal");
}

TEST_F(SkinFigureTest, KeysGradeFocusedRegionAndArrowsMove) {
    skin.canvas().focusRegion(leftToe);
    type(Qt::Key_3, "3");
    EXPECT_EQ(state(leftToe), "absent");
    type(Qt::Key_Delete, "");
    EXPECT_EQ(state(leftToe), "unexamined");
    skin.canvas().focusRegion({"knee_front", Side::right});
    for (int i = 0; i < 3 && skin.canvas().focusedRegion()->side == Side::right; ++i) {
        const double from = place(*skin.canvas().focusedRegion()).x();
        type(Qt::Key_Right, "");
        EXPECT_GT(place(*skin.canvas().focusedRegion()).x(), from);
    }
    EXPECT_EQ(skin.canvas().focusedRegion()->side, Side::left);
    const double before = place(*skin.canvas().focusedRegion()).y();
    type(Qt::Key_Down, "");
    EXPECT_GT(place(*skin.canvas().focusedRegion()).y(), before);
}

TEST_F(SkinFigureTest, GoingToAnItemShowsItsLayerAndFocusesItsRegion) {
    const FindingKey pin{ItemId{"pin.great_toe"}, Side::left};
    ASSERT_TRUE(skin.shows(pin));
    skin.goTo(pin);
    EXPECT_EQ(skin.layer().group(), GroupId{"pinprick"});
    EXPECT_EQ(skin.canvas().focusedRegion(), leftToe);
    EXPECT_FALSE(skin.shows({ItemId{"drawn.great_toe"}, Side::left}));
}

TEST_F(SkinFigureTest, EveryRegionIsAnAccessibleChildWithItsFullName) {
    press(skin.canvas(), place(leftToe));
    press(skin.canvas(), place(leftToe));
    QAccessibleInterface* canvas = QAccessible::queryAccessibleInterface(&skin.canvas());
    ASSERT_NE(canvas, nullptr);
    EXPECT_EQ(canvas->childCount(), static_cast<int>(figures()->regions().size()));
    QAccessibleInterface* toe = nullptr;
    for (int i = 0; i < canvas->childCount(); ++i) {
        QAccessibleInterface* child = canvas->child(i);
        EXPECT_FALSE(child->text(QAccessible::Name).isEmpty());
        if (child->text(QAccessible::Name) == "Left great toe, light touch, reduced") toe = child;
    }
    ASSERT_NE(toe, nullptr);
    toe->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_EQ(state(leftToe), "absent");
    EXPECT_EQ(toe->text(QAccessible::Name), "Left great toe, light touch, absent");
}

TEST_F(SkinFigureTest, TheZoomedFigureStillHitsItsRegions) {
    skin.canvas().setZoom(3, place(leftToe));
    for (int i = 0; i < 2; ++i)
        press(skin.canvas(), place(leftToe));
    EXPECT_EQ(state(leftToe), "reduced");
    skin.canvas().resetZoom();
    EXPECT_EQ(skin.canvas().zoom(), 1);
}

TEST_F(SkinFigureTest, AnAbnormalStateNeverLooksLikeNotExamined) {
    const RegionKey heel{"heel_plantar", Side::right};
    const auto picture = [&] {
        const QRect around(place(heel).toPoint() - QPoint(8, 8), QSize(17, 17));
        return skin.canvas().grab(around).toImage();
    };
    skin.canvas().focusRegion(leftToe);
    std::vector<QImage> seen{picture()};
    for (const int key : {Qt::Key_1, Qt::Key_2, Qt::Key_3, Qt::Key_4}) {
        skin.canvas().focusRegion(heel);
        type(key, QString(QChar(key)));
        skin.canvas().focusRegion(leftToe);
        for (const auto& before : seen)
            EXPECT_NE(before, picture());
        seen.push_back(picture());
    }
}

TEST_F(ReadOnlySkinFigureTest, PressesDoNothing) {
    press(skin.canvas(), place(leftToe));
    skin.fillRest();
    EXPECT_TRUE(session.exam().findings().empty());
}

TEST_F(SkinFigureTest, RepaintingOneRegionTakesLessThanAFrame) {
    skin.fillRest();
    skin.canvas().grab();
    std::vector<qint64> times;
    QElapsedTimer clock;
    for (int i = 0; i < 60; ++i) {
        clock.start();
        skin.canvas().refresh({leftToe});
        times.push_back(clock.nsecsElapsed());
    }
    std::ranges::sort(times);
    const double milliseconds = static_cast<double>(times[58]) / 1e6;
    std::printf("[ figures ] repaint of one region: %.2f ms at the 98th of 100\n", milliseconds);
    EXPECT_LT(milliseconds, 16);
}

} // namespace
} // namespace rhizograph::app
