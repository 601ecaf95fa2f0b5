#include "examvisit.h"

#include "exam/groupcard.h"
#include "shell/dress.h"

#include <gtest/gtest.h>
#include <QAbstractButton>
#include <QFontMetricsF>
#include <QLabel>

namespace rhizograph::app {
namespace {

/// Every step with everything open, in a theme and a text size.
class AccessTest : public testing::TestWithParam<std::tuple<ThemeName, double, int>> {
protected:
    AccessTest() { dressApplication(std::get<0>(GetParam()), scale()); }
    ~AccessTest() override { dressApplication(ThemeName::light, 1.0); }
    static double scale() { return std::get<1>(GetParam()); }
};

bool fits(const QFont& base, int pixels, QFont::Weight weight, const QString& text, const QSizeF& room) {
    QFont font = base;
    font.setPixelSize(pixels);
    font.setWeight(weight);
    const QFontMetricsF metrics(font);
    const QRectF box = metrics.boundingRect(QRectF(0, 0, room.width(), 10000), Qt::TextWordWrap, text);
    for (const QString& word : text.split(' '))
        if (metrics.horizontalAdvance(word) > room.width() + 0.5) return false;
    return box.height() <= room.height() + 0.5;
}

TEST_P(AccessTest, NothingPressableIsSmallerThanAFingerAndNoTextIsClipped) {
    VisitSession session(knowledge(), {}, nullptr);
    int cells = 0;
    for (const Step& step : session.catalogue().steps()) {
        StepPage page(session, figures(), step.id.text());
        page.resize(std::get<2>(GetParam()), 900);
        page.show();
        for (GroupCard* card : page.cards())
            card->setMoreShown(true);
        for (int i = 0; i < page.pageNames().size(); ++i) {
            page.showPage(i);
            QApplication::processEvents();
            for (FindingRow* row : page.findChildren<FindingRow*>()) {
                if (!row->isVisible()) continue;
                const auto& layout = row->rowLayout();
                EXPECT_EQ(row->height(), layout.height) << row->objectName().toStdString();
                EXPECT_TRUE(fits(row->font(), qRound(16 * scale()), QFont::Normal, layout.cells.back().text,
                                 layout.label.size()))
                    << row->objectName().toStdString() << " " << layout.label.width();
                const bool words = row->item().scale.kind == Scale::Kind::choice;
                for (int c = 0; c + 1 < row->cellCount(); ++c) {
                    const RowCell& cell = layout.cells[static_cast<std::size_t>(c)];
                    const QString where = row->objectName() + ": " + cell.text;
                    ++cells;
                    EXPECT_GE(cell.rect.width(), 43.9) << where.toStdString();
                    EXPECT_GE(cell.rect.height(), 43.9) << where.toStdString();
                    EXPECT_TRUE(QRectF(row->rect()).contains(cell.rect)) << where.toStdString();
                    const int pixels = words || cell.kind == RowCell::Kind::fold ? 15 : 17;
                    EXPECT_TRUE(fits(row->font(), qRound(pixels * scale()), QFont::Bold, cell.text,
                                     cell.rect.size() - QSizeF(8, 2)))
                        << where.toStdString() << " " << cell.rect.width();
                    for (int d = c + 1; d + 1 < row->cellCount(); ++d)
                        EXPECT_FALSE(cell.rect.adjusted(-3.9, -3.9, 3.9, 3.9)
                                         .intersects(layout.cells[static_cast<std::size_t>(d)].rect.adjusted(
                                             -3.9, -3.9, 3.9, 3.9)))
                            << where.toStdString();
                }
            }
            for (QAbstractButton* button : page.findChildren<QAbstractButton*>()) {
                if (!button->isVisible()) continue;
                EXPECT_GE(button->height(), 44) << button->text().toStdString();
                EXPECT_GE(button->width(), std::min(button->sizeHint().width(), page.width()))
                    << button->text().toStdString();
                EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty());
            }
        }
    }
    std::printf("[ access ] %d cells at %.0f %%, %d px wide\n", cells, 100 * scale(),
                std::get<2>(GetParam()));
    EXPECT_GT(cells, 500);
}

INSTANTIATE_TEST_SUITE_P(ThemesAndTextSizes, AccessTest,
                         testing::Combine(testing::Values(ThemeName::light, ThemeName::dark,
                                                          ThemeName::highContrast),
                                          testing::Values(1.0, 1.5, 2.0), testing::Values(800, 848, 1176)));

} // namespace
} // namespace rhizograph::app
