#include "compare/eventscard.h"
#include "compare/trendpage.h"
#include "parts/button.h"
#include "visits.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <QApplication>
#include <QFile>
#include <QImage>
#include <QLineEdit>
#include <QSvgRenderer>

namespace rhizograph::app {
namespace {

const char* const toe = "strength.great_toe_extension";

class EventsOnTheCourse : public ::testing::Test {
protected:
    EventsOnTheCourse()
        : course({{"2026-10-02", {found(toe, Side::left, Value::token("4"))}},
                  {"2026-11-24", {found(toe, Side::left, Value::token("2"))}}}) {
        page = std::make_unique<TrendPage>(*course.session, *course.store);
        page->resize(1104, 680);
        page->show();
        QApplication::processEvents();
    }
    [[nodiscard]] PatientId patient() const { return course.session->start().patient.id; }
    void enter(const QString& kind, const QString& day, const QString& words) {
        EventsCard& card = page->eventsCard();
        for (const EventKind& each : knowledge().eventKinds())
            if (each.label == kind.toStdString()) card.chooseKind(each.id);
        ASSERT_EQ(card.kindButton().text(), kind);
        card.day().setText(day);
        card.words().setText(words);
        card.save();
        QApplication::processEvents();
    }
    [[nodiscard]] std::vector<PatientEvent> written() const {
        return taken(course.store->eventsOf(patient()));
    }
    [[nodiscard]] int cellOf(const QString& words) const {
        for (int i = 0; i < page->chart().cellCount(); ++i)
            if (page->chart().cell(i).name.contains(words)) return i;
        return -1;
    }

    Course course;
    QTemporaryDir folder;
    std::unique_ptr<TrendPage> page;
};

TEST_F(EventsOnTheCourse, AreWrittenInTheListAndStandOnTheAxisAtTheirDay) {
    page->showEvents(true);
    enter("Injection", "23.10.2026", "L5, left");
    ASSERT_EQ(written().size(), 1U);
    EXPECT_EQ(written().front().date, "2026-10-23");
    EXPECT_EQ(written().front().kind, "injection");
    EXPECT_FALSE(written().front().awaited);
    const int cell = cellOf("Injection: L5, left");
    ASSERT_GE(cell, 0);
    const TrendChart& chart = page->chart();
    const double share = (chart.cell(cell).rect.center().x() - chart.xOf(0)) / (chart.xOf(1) - chart.xOf(0));
    EXPECT_NEAR(share, 21.0 / 53.0, 0.01) << "21 of 53 days, by the calendar";
}

TEST_F(EventsOnTheCourse, AFollowUpIsAwaited) {
    enter("Follow-up", "2026-12-01", {});
    ASSERT_EQ(written().size(), 1U);
    EXPECT_TRUE(written().front().awaited);
    EXPECT_TRUE(page->chart().events().front().awaited);
}

TEST_F(EventsOnTheCourse, ADayThatIsNoneIsRefusedInWordsAndNothingIsLost) {
    enter("Surgery", "31.2.2026", "microdiscectomy");
    EXPECT_TRUE(written().empty());
    EXPECT_TRUE(page->eventsCard().problem().contains("31.2.2026"));
    EXPECT_EQ(page->eventsCard().words().text(), "microdiscectomy");
}

TEST_F(EventsOnTheCourse, APressOnAMarkPutsTheEventIntoTheForm) {
    enter("Injection", "2026-10-23", "left");
    EXPECT_TRUE(page->eventsCard().isHidden());
    page->chart().pressCell(cellOf("Injection"));
    EXPECT_FALSE(page->eventsCard().isHidden());
    EXPECT_EQ(page->eventsCard().words().text(), "left");
    enter("Injection", "2026-10-24", "right");
    ASSERT_EQ(written().size(), 1U) << "corrected, not added";
    EXPECT_EQ(written().front().text, "right");
    EXPECT_EQ(written().front().date, "2026-10-24");
}

TEST_F(EventsOnTheCourse, StandBesideTheAxisWhenTheyLieOutsideTheVisits) {
    enter("Surgery", "2015-05-04", {});
    const int cell = cellOf("Surgery");
    ASSERT_GE(cell, 0);
    EXPECT_LT(page->chart().cell(cell).rect.center().x(), page->chart().xOf(0));
}

TEST_F(EventsOnTheCourse, TheChartIsWrittenAsPictureAndDrawingForItsOwnerAlone) {
    enter("Injection", "2026-10-23", "left");
    const QString png = folder.filePath("course.png");
    const QString svg = folder.filePath("course.svg");
    held(page->exportTo(png, TrendPage::Export::png));
    held(page->exportTo(svg, TrendPage::Export::svg));
    const QImage image(png);
    EXPECT_EQ(image.width(), 2 * page->chart().width());
    EXPECT_GT(image.height(), 2 * page->chart().height());
    QSvgRenderer drawing(svg);
    ASSERT_TRUE(drawing.isValid());
    EXPECT_EQ(drawing.viewBox().width(), page->chart().width());
    QFile text(svg);
    ASSERT_TRUE(text.open(QIODevice::ReadOnly));
    EXPECT_TRUE(text.readAll().contains("Injection")) << "words, not only lines";
    for (const QString& path : {png, svg})
        EXPECT_EQ(QFile::permissions(path) & (QFile::ReadGroup | QFile::ReadOther), QFile::Permissions{});
}

TEST_F(EventsOnTheCourse, TheFiguresAreWrittenAsATableWithTheEvents) {
    enter("Injection", "2026-10-23", "left");
    const QString path = folder.filePath("course.csv");
    held(page->exportTo(path, TrendPage::Export::csv));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(file.readAll());
    EXPECT_TRUE(text.startsWith("kind,id,side,visit,date,value,since_first,since_previous\r\n"));
    EXPECT_TRUE(text.contains("item,strength.great_toe_extension,left,2,2026-11-24,2,worse,worse\r\n"));
    EXPECT_TRUE(text.contains("event,injection,,,2026-10-23,left,,\r\n"));
}

TEST_F(EventsOnTheCourse, AnExportIsNotedAndOneThatCannotBeWrittenIsToldWhy) {
    const QString nowhere = folder.filePath("no/such/folder/course.csv");
    const Outcome outcome = page->exportTo(nowhere, TrendPage::Export::csv);
    ASSERT_FALSE(outcome);
    EXPECT_NE(outcome.problems().front().text().find("cannot be written"), std::string::npos);
    course.store->signOut();
    for (const User& user : taken(course.store->users()))
        if (user.role == Role::administrator) held(course.store->signIn(user.id, "long enough"));
    const auto entries = taken(course.store->audit(20));
    EXPECT_TRUE(std::ranges::any_of(entries, [&](const AuditEntry& each) {
        return each.action == AuditAction::exported && each.subject == patient().text() &&
               each.detail == "course as CSV";
    }));
}

} // namespace
} // namespace rhizograph::app
