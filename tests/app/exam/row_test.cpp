#include "examvisit.h"

#include "exam/flyout.h"
#include "exam/keypad.h"
#include "exam/noteeditor.h"
#include "exam/rowmenu.h"
#include "parts/button.h"

#include <gtest/gtest.h>
#include <QAccessible>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QTest>

namespace rhizograph::app {
namespace {

const Value five = Value::token("5");
const Value four = Value::token("4");

class RowTest : public testing::Test {
protected:
    explicit RowTest(bool readOnly = false) : session(knowledge(), start(readOnly), nullptr) {}

    static VisitSession::Start start(bool readOnly) {
        VisitSession::Start start;
        start.readOnly = readOnly;
        Exam previous;
        previous.set({ItemId{"strength.hip_flexion"}, Side::left}, {Value::token("4+"), false, {}});
        start.previous = previous;
        return start;
    }
    FindingRow& make(const std::string& item, ExamOptions options = {}, int width = 816) {
        row = std::make_unique<FindingRow>(session, *session.catalogue().find(item), options);
        QObject::connect(&session, &VisitSession::findingsChanged, row.get(), [this] { row->refresh(); });
        QObject::connect(row.get(), &FindingRow::popupOpened, [this](QWidget* widget) { popup = widget; });
        row->resize(width, row->heightForWidth(width));
        row->show();
        return *row;
    }
    void pressValue(Side side, const Value& value) {
        const int cell = row->cellOf(side, value);
        ASSERT_GE(cell, 0);
        press(*row, row->cell(cell).rect.center());
    }
    const Finding* found(Side side) { return session.exam().find(FindingKey{row->item().id, side}); }
    void key(Qt::Key code) { QTest::keyClick(row.get(), code); }

    VisitSession session;
    std::unique_ptr<FindingRow> row;
    QPointer<QWidget> popup;
};

class ReadOnlyRowTest : public RowTest {
protected:
    ReadOnlyRowTest() : RowTest(true) {}
};

TEST_F(RowTest, ASecondPressOnTheSameValueClearsIt) {
    make("strength.knee_extension");
    pressValue(Side::left, four);
    ASSERT_NE(found(Side::left), nullptr);
    EXPECT_EQ(found(Side::left)->value, four);
    pressValue(Side::left, four);
    EXPECT_EQ(found(Side::left), nullptr);
}

TEST_F(RowTest, APressOnAValueFilledInBulkConfirmsItByHand) {
    make("strength.knee_extension");
    session.restNormal("fill", {&row->item()});
    EXPECT_TRUE(found(Side::right)->bulk);
    pressValue(Side::right, five);
    ASSERT_NE(found(Side::right), nullptr);
    EXPECT_FALSE(found(Side::right)->bulk);
    EXPECT_TRUE(found(Side::left)->bulk);
}

TEST_F(RowTest, AFingerThatWandersOrScrollsRecordsNothing) {
    make("strength.knee_extension");
    const QPointF at = row->cell(row->cellOf(Side::left, five)).rect.center();
    sendMouse(*row, QEvent::MouseButtonPress, at, Qt::LeftButton);
    sendMouse(*row, QEvent::MouseMove, at + QPointF(0, 30), Qt::LeftButton);
    sendMouse(*row, QEvent::MouseMove, at, Qt::LeftButton);
    sendMouse(*row, QEvent::MouseButtonRelease, at, Qt::NoButton);
    EXPECT_EQ(found(Side::left), nullptr);
    sendMouse(*row, QEvent::MouseButtonPress, at, Qt::LeftButton);
    row->move(row->pos() - QPoint(0, 20)); // the page moved under the resting finger
    sendMouse(*row, QEvent::MouseButtonRelease, at, Qt::NoButton);
    EXPECT_EQ(found(Side::left), nullptr);
}

TEST_F(RowTest, ALongPressOffersReasonsWhyItIsNotTestableAndAPressGivesTheGradesBack) {
    make("strength.knee_extension");
    const QPointF at = row->cell(row->cellOf(Side::left, five)).rect.center();
    sendMouse(*row, QEvent::MouseButtonPress, at, Qt::LeftButton);
    QTest::qWait(700);
    sendMouse(*row, QEvent::MouseButtonRelease, at, Qt::NoButton);
    EXPECT_EQ(found(Side::left), nullptr);
    ASSERT_NE(qobject_cast<RowMenu*>(popup), nullptr);
    QMenu* reasons = popup->findChild<QMenu*>();
    ASSERT_NE(reasons, nullptr);
    ASSERT_EQ(reasons->actions().size(), static_cast<int>(session.catalogue().notTestableReasons().size()));
    reasons->actions().front()->trigger();
    popup->close();
    ASSERT_NE(found(Side::left), nullptr);
    EXPECT_EQ(found(Side::left)->value, Value::notTestable(session.catalogue().notTestableReasons().front()));
    EXPECT_EQ(row->cellOf(Side::left, five), -1);
    pressValue(Side::left, found(Side::left)->value);
    EXPECT_EQ(found(Side::left), nullptr);
    EXPECT_GE(row->cellOf(Side::left, five), 0);
}

TEST_F(RowTest, KeysGradeMoveClearAndAskForTheRest) {
    make("strength.knee_extension");
    row->goTo(Side::right);
    key(Qt::Key_4);
    ASSERT_NE(found(Side::right), nullptr);
    EXPECT_EQ(found(Side::right)->value, four);
    EXPECT_EQ(found(Side::left), nullptr);
    key(Qt::Key_Delete);
    EXPECT_EQ(found(Side::right), nullptr);
    for (int i = 0;
         i < 20 && row->rowLayout().cells[static_cast<std::size_t>(row->focusedCell())].side != Side::left;
         ++i)
        key(Qt::Key_Right);
    key(Qt::Key_Space);
    ASSERT_NE(found(Side::left), nullptr);
    EXPECT_EQ(found(Side::left)->value, five);
    int rest = 0;
    int down = 0;
    QObject::connect(row.get(), &FindingRow::restNormalAsked, [&] { ++rest; });
    QObject::connect(row.get(), &FindingRow::leaving, [&](int direction) { down += direction; });
    key(Qt::Key_N);
    key(Qt::Key_Down);
    EXPECT_EQ(rest, 1);
    EXPECT_EQ(down, 1);
}

TEST_F(ReadOnlyRowTest, ASignedVisitTakesNoPressAndNoKey) {
    make("strength.knee_extension");
    pressValue(Side::left, five);
    row->goTo(Side::left);
    key(Qt::Key_4);
    key(Qt::Key_Space);
    EXPECT_TRUE(session.exam().findings().empty());
}

TEST_F(RowTest, GradesBetweenWholeOnesShowOnlyWhenAskedForOrRecorded) {
    make("strength.knee_extension");
    EXPECT_EQ(row->cellOf(Side::left, Value::token("4+")), -1);
    make("strength.hip_flexion"); // the last visit recorded one
    EXPECT_GE(row->cellOf(Side::left, Value::token("4+")), 0);
    make("strength.knee_extension", {.splitGrades = true});
    EXPECT_GE(row->cellOf(Side::left, Value::token("4-")), 0);
}

TEST_F(RowTest, TheLowestGradesOpenFromOneButtonThatThenShowsTheGrade) {
    make("strength.knee_extension", {.splitGrades = true});
    EXPECT_EQ(row->rowLayout().folded, (std::vector<std::string>{"0", "1", "2"}));
    int fold = -1;
    for (int i = 0; i < row->cellCount(); ++i) {
        const RowCell& cell = row->rowLayout().cells[static_cast<std::size_t>(i)];
        if (cell.kind == RowCell::Kind::fold && cell.side == Side::left) fold = i;
    }
    ASSERT_GE(fold, 0);
    press(*row, row->cell(fold).rect.center());
    ASSERT_NE(qobject_cast<Flyout*>(popup), nullptr);
    const auto buttons = popup->findChildren<PlainButton*>();
    ASSERT_EQ(buttons.size(), 3);
    press(*buttons[1], QPointF(20, 20));
    ASSERT_NE(found(Side::left), nullptr);
    EXPECT_EQ(found(Side::left)->value, Value::token("1"));
}

TEST_F(RowTest, AMeasureOutOfRangeIsRefusedWithASentence) {
    make("hip.internal_rotation");
    press(*row, row->cell(0).rect.center());
    auto* keypad = qobject_cast<Keypad*>(popup);
    ASSERT_NE(keypad, nullptr);
    keypad->type("400");
    EXPECT_FALSE(keypad->problem().isEmpty());
    EXPECT_TRUE(keypad->problem().contains("150"));
    keypad->record();
    EXPECT_EQ(found(Side::right), nullptr);
    for (int i = 0; i < 3; ++i)
        QTest::keyClick(keypad, Qt::Key_Backspace);
    keypad->type("35");
    EXPECT_TRUE(keypad->problem().isEmpty());
    keypad->record();
    ASSERT_NE(found(Side::right), nullptr);
    EXPECT_EQ(found(Side::right)->value, Value::number(35));
}

TEST_F(RowTest, InchesAreTypedAndCentimetersStored) {
    make("girth.calf", {.length = LengthUnit::inches});
    press(*row, row->cell(0).rect.center());
    auto* keypad = qobject_cast<Keypad*>(popup);
    ASSERT_NE(keypad, nullptr);
    keypad->type("15");
    keypad->record();
    ASSERT_NE(found(Side::right), nullptr);
    // 15 inches of 2.54 cm (international yard and pound agreement, 1959): 38.1 cm.
    EXPECT_NEAR(found(Side::right)->value.number(), 38.1, 1e-9);
    EXPECT_EQ(shownNumber(row->item().scale, 38.1, LengthUnit::inches), "15.0 in");
}

TEST_F(RowTest, ANoteStaysWithItsFindingAndEscapeDropsIt) {
    make("strength.knee_extension");
    pressValue(Side::left, four);
    auto* editor = NoteEditor::open(session, row->item(), Side::left, row.get());
    editor->edit()->setPlainText("gives way from pain");
    editor->close();
    EXPECT_EQ(found(Side::left)->note, "gives way from pain");
    editor = NoteEditor::open(session, row->item(), Side::left, row.get());
    editor->edit()->setPlainText("something else");
    QTest::keyClick(editor, Qt::Key_Escape);
    EXPECT_EQ(found(Side::left)->note, "gives way from pain");
    pressValue(Side::left, five);
    EXPECT_EQ(found(Side::left)->note, "gives way from pain");
}

TEST_F(RowTest, EveryCellTellsAssistiveProgramsItemSideValueAndState) {
    make("reflex.ankle");
    pressValue(Side::left, Value::token("1"));
    QAccessibleInterface* interface = QAccessible::queryAccessibleInterface(row.get());
    ASSERT_NE(interface, nullptr);
    ASSERT_EQ(interface->childCount(), row->cellCount());
    QStringList checked;
    for (int i = 0; i < interface->childCount(); ++i)
        if (interface->child(i)->state().checked) checked << interface->child(i)->text(QAccessible::Name);
    EXPECT_EQ(checked, QStringList{"Ankle reflex, left, 1, reduced"});
    interface->child(row->cellOf(Side::right, Value::token("2")))
        ->actionInterface()
        ->doAction(QAccessibleActionInterface::pressAction());
    ASSERT_NE(found(Side::right), nullptr);
    EXPECT_EQ(found(Side::right)->value, Value::token("2"));
}

TEST_F(RowTest, EveryStateLooksDifferentFromNotExamined) {
    make("reflex.ankle");
    const auto picture = [&] {
        return row->grab(row->cell(row->cellOf(Side::left, Value::token("1"))).rect).toImage();
    };
    const auto cellPicture = [&](const Value& value) {
        return row->grab(row->cell(row->cellOf(Side::left, value)).rect).toImage();
    };
    const QImage bare = picture();
    for (const char* token : {"0", "1", "2", "3", "4"}) {
        const Value value = Value::token(token);
        const QImage before = cellPicture(value);
        pressValue(Side::left, value);
        row->clearFocus();
        EXPECT_NE(cellPicture(value), before) << token;
    }
    session.change("clear", {{{row->item().id, Side::left}, std::nullopt}});
    row->clearFocus();
    EXPECT_EQ(picture(), bare);
    session.restNormal("fill", {&row->item()});
    const QImage bulk = cellPicture(Value::token("2"));
    pressValue(Side::left, Value::token("2"));
    EXPECT_NE(cellPicture(Value::token("2")), bulk);
}

} // namespace
} // namespace rhizograph::app
