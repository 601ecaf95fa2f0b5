#include "impression/impressionpanel.h"

#include "impression/impressionlist.h"
#include "shell/dress.h"
#include "visit.h"

#include <algorithm>
#include <ctime>
#include <gtest/gtest.h>
#include <QAbstractButton>
#include <QAccessible>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QSignalSpy>

namespace rhizograph::app {
namespace {

using Kind = ImpressionRow::Kind;

class ImpressionPanelTest : public testing::Test {
protected:
    ImpressionPanelTest()
        : session(knowledge(), startWith(casesExam("textbook/root-L5.json")), nullptr), panel(session) {
        panel.resize(328, 688);
        panel.show();
        QApplication::processEvents();
    }
    int row(Kind kind) {
        const auto& rows = panel.list().rows();
        return static_cast<int>(std::ranges::find(rows, kind, &ImpressionRow::kind) - rows.begin());
    }
    void pressRow(int row) { press(panel.list(), panel.list().rectOf(row).center()); }

    VisitSession session;
    ImpressionPanel panel;
};

TEST_F(ImpressionPanelTest, APressOnAReasonGoesToItsItem) {
    std::vector<FindingKey> heard;
    QObject::connect(&panel, &ImpressionPanel::goToItem,
                     [&](const FindingKey& key) { heard.push_back(key); });
    const int reason = row(Kind::reason);
    pressRow(reason);
    ASSERT_EQ(heard.size(), 1U);
    EXPECT_EQ(heard.front(), session.assessment().localization.front().speaksFor.front().finding);
}

TEST_F(ImpressionPanelTest, APressOnANextTestGoesToItsItem) {
    std::vector<FindingKey> heard;
    QObject::connect(&panel, &ImpressionPanel::goToItem,
                     [&](const FindingKey& key) { heard.push_back(key); });
    pressRow(row(Kind::nextTest));
    ASSERT_EQ(heard.size(), 1U);
    EXPECT_EQ(heard.front(), session.assessment().nextTests.front().test);
}

TEST_F(ImpressionPanelTest, APressOnASiteTellsWhichOne) {
    std::vector<SitePlace> heard;
    QObject::connect(&panel, &ImpressionPanel::siteChosen,
                     [&](const SiteId& site, Side side) { heard.emplace_back(site, side); });
    pressRow(row(Kind::firstSite));
    const SiteResult& first = session.assessment().localization.front();
    ASSERT_EQ(heard.size(), 1U);
    EXPECT_EQ(heard.front(), SitePlace(first.site, first.side));
}

TEST_F(ImpressionPanelTest, TheKeyboardReachesEveryRowThatCanBePressed) {
    const auto& list = panel.list();
    int pressable = 0;
    for (int i = 0; i < list.cellCount(); ++i)
        if (list.cell(i).role == QAccessible::PushButton) ++pressable;
    panel.list().setFocus();
    std::vector<int> reached;
    for (int i = 0; i <= pressable; ++i) {
        QKeyEvent down(QEvent::KeyPress, Qt::Key_Down, Qt::NoModifier);
        QApplication::sendEvent(&panel.list(), &down);
        if (reached.empty() || reached.back() != list.focusedCell()) reached.push_back(list.focusedCell());
    }
    EXPECT_GE(static_cast<int>(reached.size()), pressable - 1);
}

TEST_F(ImpressionPanelTest, TheCautionIsAlwaysInSight) {
    for (const int height : {300, 688, 1200}) {
        panel.resize(328, height);
        QApplication::processEvents();
        const auto labels = panel.findChildren<QLabel*>();
        const auto caution = std::ranges::find_if(
            labels, [](const QLabel* label) { return label->text().contains("not a diagnosis"); });
        ASSERT_NE(caution, labels.end());
        const QRect place((*caution)->mapTo(&panel, QPoint()), (*caution)->size());
        EXPECT_TRUE(panel.rect().contains(place)) << height;
        EXPECT_TRUE((*caution)->isVisible());
    }
}

TEST_F(ImpressionPanelTest, EveryRowHasANameAndARole) {
    QAccessibleInterface* access = QAccessible::queryAccessibleInterface(&panel.list());
    ASSERT_NE(access, nullptr);
    ASSERT_GT(access->childCount(), 5);
    for (int i = 0; i < access->childCount(); ++i) {
        EXPECT_FALSE(access->child(i)->text(QAccessible::Name).isEmpty()) << i;
    }
}

TEST_F(ImpressionPanelTest, FoldsToAStripAndSaysSo) {
    const QSignalSpy spy(&panel, &ImpressionPanel::foldedChanged);
    panel.setFolded(true);
    EXPECT_EQ(spy.count(), 1);
    EXPECT_EQ(panel.maximumWidth(), 56);
    QAbstractButton* strip = nullptr;
    for (auto* button : panel.findChildren<QAbstractButton*>())
        if (button->isVisible() && button->accessibleName().contains("Impression:")) strip = button;
    ASSERT_NE(strip, nullptr);
    EXPECT_TRUE(strip->accessibleName().contains(
        QString::fromStdString(knowledge().siteLabel(session.assessment().localization.front().site))));
    strip->click();
    EXPECT_FALSE(panel.folded());
}

TEST_F(ImpressionPanelTest, StandsAsABarInPortrait) {
    panel.setPortrait(true);
    panel.setFolded(true);
    EXPECT_EQ(panel.sizeHint().height(), 64);
}

TEST_F(ImpressionPanelTest, ANewFindingShowsAtOnce) {
    const auto before = panel.list().rows();
    const FindingKey strongest = session.assessment().localization.front().speaksFor.front().finding;
    session.change("clear", {{strongest, std::nullopt}});
    const auto& after = panel.list().rows();
    const auto names = [&](const ImpressionRow& row) {
        return row.kind == Kind::reason && row.finding == strongest;
    };
    EXPECT_TRUE(std::ranges::any_of(before, names));
    EXPECT_FALSE(std::ranges::any_of(after, names));
}

TEST_F(ImpressionPanelTest, RepaintsWithinAFrame) {
    std::vector<double> times;
    QImage image(panel.size(), QImage::Format_ARGB32_Premultiplied);
    for (int i = 0; i < 60; ++i) {
        // Time of the processor, so that what else the machine does is not counted.
        const std::clock_t from = std::clock();
        panel.list().setRows(impressionRows(session, {}));
        QApplication::processEvents();
        QPainter painter(&image);
        panel.render(&painter);
        times.push_back(1000.0 * static_cast<double>(std::clock() - from) / CLOCKS_PER_SEC);
    }
    std::ranges::sort(times);
    std::printf("[ panel ] rows, layout and paint: median %.2f ms, worst %.2f ms of %zu\n",
                times[times.size() / 2], times.back(), times.size());
    EXPECT_LT(times[times.size() / 2], 16.0);
}

} // namespace
} // namespace rhizograph::app
