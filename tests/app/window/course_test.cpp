// From visit to visit in the whole program: what got worse raises its red sign, reaches the list of the whole
// clinic, and an earlier visit opened from the course cannot be changed.
#include "hands.h"
#include "support/inventedvisits.h"

#include "compare/trendpage.h"
#include "exchange/narrative.h"
#include "patients/visitlist.h"
#include "summary/summarypage.h"
#include "window/redsignbar.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace rhizograph::app::testing {
namespace {

const FindingKey toe{ItemId{"strength.great_toe_extension"}, Side::left};
const FindingKey bladder{ItemId{"history.bladder"}, Side::none};
const FindingKey perianal{ItemId{"touch.perianal"}, Side::left};

/// One patient seen before, whose strength, bladder and saddle were normal then.
class CourseTest : public ::testing::Test {
protected:
    CourseTest() {
        clinic.create();
        auto store = clinic.opened();
        const Patient patient =
            need(store->addPatient({"Linnet Harrowgate", "00731", "1970-02-11", "female", {}, {}}));
        before = need(store->addVisit(patient.id, day(-20))).id;
        need(store->record(before, {word(toe.item.text(), Side::left, "5"),
                                    word("history.bladder", Side::none, "normal"),
                                    word("touch.perianal", Side::left, "normal")}));
        now = need(store->addVisit(patient.id, day(0))).id;
        store.reset();
        window = clinic.window();
        window->openDatabase();
        window->show();
        signIn(*window);
        window->openVisitById(now);
    }
    [[nodiscard]] VisitSession& session() { return window->visitPage()->session(); }
    [[nodiscard]] std::optional<Urgency> sign(const std::string& id) {
        for (const RedSign& each : session().assessment().redSigns)
            if (each.id == id) return each.urgency;
        return std::nullopt;
    }
    /// What the list of the clinic says once the visit is on disk and closed.
    Practice practice() {
        window->showPatients();
        return need(clinic.opened()->practice(day(0)));
    }

    AppClinic clinic;
    VisitId before;
    VisitId now;
    std::unique_ptr<MainWindow> window;
};

TEST_F(CourseTest, AProgressiveDeficitRaisesItsRedSignAtTheTap) {
    EXPECT_FALSE(window->visitPage()->redSignBar().needed());
    session().tap(toe, Value::token("3"));
    EXPECT_EQ(sign("progressive_motor_deficit"), Urgency::urgent);
    EXPECT_TRUE(window->visitPage()->redSignBar().needed());
    session().tap(toe, Value::token("5"));
    EXPECT_FALSE(sign("progressive_motor_deficit")) << "as strong as then";
}

TEST_F(CourseTest, NewBladderAndSaddleFindingsRaiseTheirRedSign) {
    session().tap(bladder, Value::token("retention"));
    EXPECT_TRUE(sign("cauda_equina").has_value());
    session().tap(bladder, Value::token("retention"));
    EXPECT_FALSE(sign("cauda_equina").has_value());
    session().tap(perianal, Value::token("reduced"));
    EXPECT_TRUE(sign("cauda_equina").has_value());
    EXPECT_TRUE(window->visitPage()->redSignBar().needed());
}

TEST_F(CourseTest, WhatGotWorseAndItsRedSignReachTheListOfTheClinic) {
    session().tap(toe, Value::token("3"));
    session().tap(perianal, Value::token("reduced"));
    const Practice found = practice();
    ASSERT_EQ(found.patients.size(), 1U);
    EXPECT_EQ(found.patients.front().visit, now);
    EXPECT_EQ(found.patients.front().worse, 2);
    EXPECT_GE(found.patients.front().redSigns, 2);
    EXPECT_EQ(found.patients.front().unsignedVisits, 2);
    pressButton(window->patientsPage(), "Needs a look");
    const auto& rows = window->patientsPage().list().rows();
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows.front().name, "Linnet Harrowgate");
    EXPECT_TRUE(rows.front().state.contains("red sign"));
    EXPECT_TRUE(rows.front().detail.contains("2 worse"));
    window->patientsPage().list().pressCell(0);
    EXPECT_EQ(session().start().visit.id, now);
}

TEST_F(CourseTest, AWorseningTakenBackIsTakenOffTheListToo) {
    session().tap(toe, Value::token("3"));
    session().tap(toe, Value::token("5"));
    EXPECT_EQ(practice().withWorse, 0);
}

TEST_F(CourseTest, ThePageSaysWhatChangedAndWhatTheRedSignIs) {
    session().tap(toe, Value::token("3"));
    VisitPage& page = *window->visitPage();
    page.showPage(page.pageCount() - 1);
    auto& summary = dynamic_cast<SummaryPage&>(page.page(page.pageIndex()));
    const Narrative words = narrate(session().exam(), session().assessment(), session().knowledge(),
                                    session().previous(), Units::metric);
    std::string text = asText(words);
    std::replace(text.begin(), text.end(), '\n', ' ');
    EXPECT_NE(text.find("5/5 → 3/5"), std::string::npos) << text;
    // Lines are broken anywhere, so the beginning of the sentence must do.
    const auto raised =
        std::find_if(session().assessment().redSigns.begin(), session().assessment().redSigns.end(),
                     [](const RedSign& each) { return each.id == "progressive_motor_deficit"; });
    ASSERT_NE(raised, session().assessment().redSigns.end());
    EXPECT_NE(text.find(raised->sentence.substr(0, 20)), std::string::npos) << text;
    EXPECT_TRUE(summary.isVisible());
}

TEST_F(CourseTest, AnEarlierVisitOpenedFromTheCourseIsOnlyReadAndAWayLeadsBack) {
    session().tap(toe, Value::token("3"));
    VisitPage& page = *window->visitPage();
    TrendPage* trend = nullptr;
    for (int i = 0; i < page.pageCount() && trend == nullptr; ++i)
        trend = qobject_cast<TrendPage*>(&page.page(i));
    ASSERT_NE(trend, nullptr);
    emit trend->visitChosen(before);
    ASSERT_TRUE(waitUntil([&] { return session().start().visit.id == before; }));
    EXPECT_TRUE(session().readOnly()) << "though it is not signed";
    pressButton(*window->visitPage(), "Back to the course");
    ASSERT_TRUE(waitUntil([&] { return session().start().visit.id == now; }));
    EXPECT_FALSE(session().readOnly());
    EXPECT_EQ(session().exam().find(toe)->value, Value::token("3"));
}

} // namespace
} // namespace rhizograph::app::testing
