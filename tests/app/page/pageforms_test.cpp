// The short and the full form, and the small charts of the course.

#include "sample.h"

#include <gtest/gtest.h>

namespace rhizograph::app {
namespace {

PageContent shortOf(const Exam& exam) {
    PageContent content = contentOf("textbook/none.json");
    const Narrative whole = narrate(exam, assess(exam, knowledge()), knowledge());
    content.sections = pageSections(inShort(whole, knowledge()));
    content.figures.clear();
    return content;
}

TEST(PageForms, TheShortFormOfAUsualVisitIsOnePageOnBothPapers) {
    for (const char* name :
         {"textbook/root-L5.json", "textbook/none.json", "002-absent-ankle-jerk-weak-calf.json",
          "156-three-weeks-leg-pain-and-foot-drop-foraminal-disc.json"})
        for (const auto paper : {QPageSize::A4, QPageSize::Letter})
            EXPECT_EQ(PageDocument(shortOf(casesExam(name)), nullptr, paper).pageCount(), 1) << name;
}

TEST(PageForms, TheShortFormIsNeverLongerThanTheFullOne) {
    for (const char* name :
         {"textbook/conus.json", "textbook/cauda-equina.json", "textbook/polyradiculoneuropathy.json",
          "018-lifting-injury-weak-toe-and-ankle-dorsiflexion.json"}) {
        const int brief = PageDocument(shortOf(casesExam(name)), nullptr).pageCount();
        EXPECT_LT(brief, PageDocument(contentOf(name), figures()).pageCount()) << name;
        EXPECT_LE(brief, 2) << name;
    }
}

Exam visitOf(const std::string& date, const std::string& power, double pain) {
    Exam exam;
    exam.date = date;
    exam.set({ItemId{"strength.great_toe_extension"}, Side::left}, {Value::token(power), false, {}});
    exam.set({ItemId{"strength.great_toe_extension"}, Side::right}, {Value::token("5"), false, {}});
    exam.set({ItemId{"pain.back"}, Side::none}, {Value::number(pain), false, {}});
    return exam;
}

TEST(PageTrends, ShowsWhatChangedMostWithFirstAndLastValue) {
    PageContent content = contentOf("textbook/root-L5.json");
    Exam unexamined;
    unexamined.date = "2026-01-20";
    addTrends(content, {visitOf("2026-01-05", "4", 8), unexamined, visitOf("2026-02-02", "2", 2)},
              knowledge());
    ASSERT_EQ(content.trends.size(), 2U);
    for (const PageTrend& trend : content.trends)
        for (const PageTrendLine& line : trend.lines) {
            ASSERT_EQ(line.places.size(), 3U);
            EXPECT_FALSE(line.places[1]) << "what was not examined is a gap";
            EXPECT_TRUE(line.places[0] && line.places[2]);
        }
    const auto toe = std::find_if(content.trends.begin(), content.trends.end(),
                                  [](const PageTrend& each) { return each.lines.size() == 2; });
    ASSERT_NE(toe, content.trends.end());
    EXPECT_EQ(toe->words, QStringLiteral("right 5/5 → 5/5; left 4/5 → 2/5"));
    EXPECT_GT(*toe->lines[1].places[0], *toe->lines[1].places[2]) << "weaker stands lower";
    const QString words = PdfFile(PageDocument(content, figures())).words();
    EXPECT_TRUE(words.contains("Course from 5 January 2026 to 2 February 2026."));
    EXPECT_TRUE(words.contains("left 4/5 → 2/5"));
}

TEST(PageTrends, OneVisitHasNoCourse) {
    PageContent content;
    addTrends(content, {visitOf("2026-01-05", "4", 8)}, knowledge());
    EXPECT_TRUE(content.trends.empty());
}

} // namespace
} // namespace rhizograph::app
