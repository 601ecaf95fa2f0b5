#include "exam/angledial.h"

#include "exam/keypad.h"
#include "examvisit.h"

#include <gtest/gtest.h>

namespace rhizograph::app {
namespace {

TEST(AngleDial, ReadsTheAngleWhereItsHandPoints) {
    AngleDial dial(0, 120);
    dial.resize(dial.sizeHint());
    for (double angle = 0; angle <= 120; angle += 5)
        EXPECT_EQ(dial.angleAt(dial.placeOf(angle)), angle);
}

TEST(AngleDial, RestsAtTheNearerEndBelowItsBaseLine) {
    AngleDial dial(0, 120);
    dial.resize(dial.sizeHint());
    EXPECT_EQ(dial.angleAt(QPointF(2, dial.height() - 1)), 0);
    EXPECT_EQ(dial.angleAt(QPointF(dial.width() - 2, dial.height() - 1)), 120);
}

TEST(AngleDial, SetsTheNumberOfTheKeypadAndFollowsItsKeys) {
    VisitSession session(knowledge(), {}, nullptr);
    const Item& item = *session.catalogue().find("tension.slr_supine_angle");
    QWidget ground;
    Keypad keypad(session, item, Side::left, LengthUnit::centimeters, &ground);
    keypad.setAttribute(Qt::WA_DeleteOnClose, false);
    keypad.openAt({});
    ASSERT_NE(keypad.dial(), nullptr);
    EXPECT_FALSE(keypad.dial()->angle().has_value());
    press(*keypad.dial(), keypad.dial()->placeOf(40));
    EXPECT_EQ(keypad.typed(), "40");
    EXPECT_TRUE(session.exam().findings().empty()); // nothing is recorded before Record
    keypad.type("55");
    EXPECT_EQ(keypad.typed(), "55");
    EXPECT_EQ(keypad.dial()->angle(), 55);
    keypad.record();
    ASSERT_NE(session.exam().find(item.id.text(), Side::left), nullptr);
    EXPECT_EQ(session.exam().find(item.id.text(), Side::left)->value, Value::number(55));
    EXPECT_EQ(session.exam().find(item.id.text(), Side::right), nullptr);
}

TEST(AngleDial, StandsOnlyOverAngles) {
    VisitSession session(knowledge(), {}, nullptr);
    QWidget ground;
    const Item& girth = *session.catalogue().find("girth.calf");
    Keypad keypad(session, girth, Side::left, LengthUnit::centimeters, &ground);
    EXPECT_EQ(keypad.dial(), nullptr);
}

} // namespace
} // namespace rhizograph::app
