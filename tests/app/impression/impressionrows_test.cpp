#include "impression/impressionrows.h"

#include "parts/findingwords.h"
#include "visit.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace rhizograph::app {
namespace {

using Kind = ImpressionRow::Kind;

std::vector<ImpressionRow> rowsOf(const std::string& file, const ImpressionView& view = {}) {
    const VisitSession session(knowledge(), startWith(casesExam(file)), nullptr);
    return impressionRows(session, view);
}

std::ptrdiff_t firstOf(const std::vector<ImpressionRow>& rows, Kind kind) {
    const auto found = std::ranges::find(rows, kind, &ImpressionRow::kind);
    return found == rows.end() ? -1 : found - rows.begin();
}

TEST(ImpressionRows, StandInTheOrderOfTheDesign) {
    const auto rows = rowsOf("textbook/cauda-equina.json");
    const auto redSign = firstOf(rows, Kind::redSign);
    const auto site = firstOf(rows, Kind::firstSite);
    const auto reason = firstOf(rows, Kind::reason);
    const auto test = firstOf(rows, Kind::nextTest);
    ASSERT_GE(redSign, 0);
    EXPECT_LT(redSign, site);
    EXPECT_LT(site, reason);
    EXPECT_LT(reason, test);
}

TEST(ImpressionRows, NameNoSiteWhileNothingIsKnown) {
    const VisitSession session(knowledge(), startWith({}), nullptr);
    ASSERT_TRUE(session.assessment().nothingKnown);
    const auto rows = impressionRows(session, {});
    EXPECT_EQ(firstOf(rows, Kind::firstSite), -1);
    EXPECT_EQ(firstOf(rows, Kind::nextSite), -1);
    EXPECT_EQ(firstOf(rows, Kind::reason), -1);
    for (const ImpressionRow& row : rows) {
        for (const SiteResult& site : session.assessment().localization) {
            EXPECT_FALSE(row.kind == Kind::words &&
                         row.text.contains(QString::fromStdString(knowledge().siteLabel(site.site))))
                << row.text.toStdString();
        }
    }
}

TEST(ImpressionRows, NeverCallAnUnexaminedScreenLow) {
    const VisitSession session(knowledge(), startWith({}), nullptr);
    for (const ImpressionRow& row : impressionRows(session, {}))
        EXPECT_FALSE(row.text.contains("low:"));
}

TEST(ImpressionRows, EveryReasonLeadsToAFindingOfTheExam) {
    const Exam exam = casesExam("textbook/root-L5.json");
    const auto rows = rowsOf("textbook/root-L5.json");
    int reasons = 0;
    for (const ImpressionRow& row : rows) {
        if (row.kind != Kind::reason) continue;
        ++reasons;
        ASSERT_TRUE(row.finding);
        EXPECT_NE(exam.find(*row.finding), nullptr) << row.text.toStdString();
    }
    EXPECT_GT(reasons, 0);
}

TEST(ImpressionRows, EveryNextTestIsNotYetExamined) {
    const Exam exam = casesExam("textbook/root-L5.json");
    for (const ImpressionRow& row : rowsOf("textbook/root-L5.json")) {
        if (row.kind == Kind::nextTest) {
            EXPECT_EQ(exam.find(*row.finding), nullptr) << row.bold.toStdString();
        }
    }
}

TEST(ImpressionRows, MoreReasonsComeForwardWhenAsked) {
    const auto count = [](const std::vector<ImpressionRow>& rows) {
        return std::ranges::count(rows, Kind::reason, &ImpressionRow::kind);
    };
    ImpressionView all;
    all.allReasons = true;
    EXPECT_GT(count(rowsOf("textbook/root-L5.json", all)), count(rowsOf("textbook/root-L5.json")));
}

TEST(ImpressionRows, AChosenSiteShowsItsOwnReasons) {
    const VisitSession session(knowledge(), startWith(oneWeakMovement()), nullptr);
    ASSERT_GE(session.assessment().localization.size(), 2U);
    const SiteResult& second = session.assessment().localization.at(1);
    ImpressionView view;
    view.chosen = SitePlace{second.site, second.side};
    const auto rows = impressionRows(session, view);
    const auto head = std::ranges::find(rows, Kind::reasonHead, &ImpressionRow::kind);
    ASSERT_NE(head, rows.end());
    EXPECT_EQ(std::prev(head)->site, view.chosen);
}

TEST(ImpressionRows, AnAcknowledgedRedSignStaysWithTheNameOfWhoSawIt) {
    VisitSession session(knowledge(), startWith(casesExam("textbook/cauda-equina.json")), nullptr);
    const RedSign sign = session.assessment().redSigns.front();
    session.acknowledge(QString::fromStdString(sign.id), urgencyWord(sign.urgency));
    const auto rows = impressionRows(session, {});
    ASSERT_GE(firstOf(rows, Kind::redSign), 0);
    EXPECT_TRUE(rows.front().right.contains("Clinician Two"));
    EXPECT_TRUE(rows.front().spoken.contains("Clinician Two"));
}

TEST(ImpressionRows, EveryRowCanBeReadAloud) {
    for (const char* file : {"textbook/root-L5.json", "textbook/cauda-equina.json", "textbook/none.json"}) {
        for (const ImpressionRow& row : rowsOf(file)) {
            EXPECT_TRUE(row.kind == Kind::line || !row.spoken.isEmpty()) << file;
        }
    }
}

TEST(FindingWords, NameTheSideOnlyWhereItIsAnother) {
    const Catalogue& catalogue = knowledge().catalogue();
    Exam exam;
    const FindingKey ankle{ItemId{"reflex.ankle"}, Side::left};
    exam.set(ankle, Finding{Value::token("1"), false, {}});
    EXPECT_EQ(findingWords(catalogue, exam, ankle).toStdString(), "Ankle reflex, left 1");
    EXPECT_EQ(findingWords(catalogue, exam, ankle, Side::left).toStdString(), "Ankle reflex 1");
}

TEST(FindingWords, NeverSayThatSomethingIsCertain) {
    EXPECT_EQ(percentWords(1.0).toStdString(), "over 99 %");
    EXPECT_EQ(percentWords(0.0001).toStdString(), "under 1 %");
    EXPECT_EQ(percentWords(0.864).toStdString(), "86 %");
}

} // namespace
} // namespace rhizograph::app
