#include "examvisit.h"

#include "exam/groupcard.h"

#include <gtest/gtest.h>
#include <random>

namespace rhizograph::app {
namespace {

/// Presses every cell of every paired row and looks on which half of the row it was drawn.
class SidesTest : public testing::TestWithParam<Qt::LayoutDirection> {
protected:
    SidesTest() { QApplication::setLayoutDirection(GetParam()); }
    ~SidesTest() override { QApplication::setLayoutDirection(Qt::LeftToRight); }
};

void clearFinding(VisitSession& session, const FindingKey& key) {
    session.change({}, {{key, std::nullopt}});
}

TEST_P(SidesTest, ACellDrawnOnTheLeftHalfRecordsThePatientsRightForEveryItem) {
    VisitSession session(knowledge(), {}, nullptr);
    int tried = 0, failed = 0, items = 0;
    for (const Step& step : session.catalogue().steps()) {
        StepPage page(session, figures(), step.id.text());
        page.resize(848, 744);
        page.show();
        for (GroupCard* card : page.cards())
            card->setMoreShown(true);
        QApplication::processEvents();
        for (const Item& item : session.catalogue().items()) {
            FindingRow* row = item.sided && item.step == step.id ? page.row(item.id) : nullptr;
            if (row == nullptr) continue;
            page.goTo({item.id, Side::right});
            QApplication::processEvents();
            EXPECT_TRUE(row->isVisible()) << item.id.text();
            ++items;
            for (int i = 0; i < row->cellCount(); ++i) {
                const RowCell cell = row->rowLayout().cells[static_cast<std::size_t>(i)];
                if (cell.kind != RowCell::Kind::value) continue;
                ++tried;
                const bool leftHalf = cell.rect.center().x() < row->width() / 2.0;
                const FindingKey mine{item.id, leftHalf ? Side::right : Side::left};
                Exam expected = session.exam();
                expected.set(mine, {*cell.value, false, {}});
                press(*row, cell.rect.center());
                failed += session.exam() == expected ? 0 : 1;
                EXPECT_TRUE(session.exam() == expected) << item.id.text() << ", " << cell.text.toStdString();
            }
            for (const FindingKey& key : keysOf(item))
                clearFinding(session, key);
        }
    }
    std::printf("[ sides ] %d sided items, %d cells pressed, %d recorded the wrong side\n", items, tried,
                failed);
    EXPECT_GT(items, 40);
}

INSTANTIATE_TEST_SUITE_P(ReadingDirections, SidesTest, testing::Values(Qt::LeftToRight, Qt::RightToLeft),
                         [](const auto& direction) {
                             return direction.param == Qt::LeftToRight ? "LeftToRight" : "RightToLeft";
                         });

} // namespace
} // namespace rhizograph::app
