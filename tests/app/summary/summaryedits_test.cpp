#include "summary/summaryedits.h"

#include "summary/worddifference.h"

#include <gtest/gtest.h>
#include <QStringList>
#include <rapidcheck/gtest.h>

namespace rhizograph::app {
namespace {

using Kind = WordChange::Kind;

QString joined(const std::vector<WordChange>& changes, Kind without) {
    QStringList words;
    for (const WordChange& change : changes)
        if (change.kind != without) words << change.words;
    return words.join(u' ');
}

TEST(WordDifference, NamesWhatWasTakenAwayAndWhatWasPutIn) {
    const std::vector<WordChange> expected{
        {Kind::same, "Left ankle reflex"}, {Kind::removed, "absent."}, {Kind::added, "hard to elicit."}};
    EXPECT_EQ(wordDifference("Left ankle reflex absent.", "Left ankle reflex hard to elicit."), expected);
}

TEST(WordDifference, IsOneStretchWhereNothingChanged) {
    EXPECT_EQ(wordDifference("a b c", "a b  c"), (std::vector<WordChange>{{Kind::same, "a b c"}}));
    EXPECT_TRUE(wordDifference("", "").empty());
}

RC_GTEST_PROP(WordDifference, YieldsBothTextsAgain, ()) {
    const auto text = [] {
        QStringList words;
        for (const int word : *rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 5)))
            words << QStringLiteral("w%1").arg(word);
        return words.join(u' ');
    };
    const QString before = text();
    const QString after = text();
    const auto changes = wordDifference(before, after);
    RC_ASSERT(joined(changes, Kind::added) == before);
    RC_ASSERT(joined(changes, Kind::removed) == after);
}

AuthoredText noted(const QString& section, const SummaryEdit& edit) {
    return {noteOf(section, edit).toStdString(), edit.by.toStdString(), "2026-11-24T10:00:00Z"};
}

TEST(SummaryEdits, ComeBackFromTheNotesOfTheVisit) {
    const SummaryEdit edit{"New words,\nin two lines.", "Old words.", "Clinician Two"};
    const SummaryEdits edits = editsOf({{"A remark on the parking.", "Nurse", ""}, noted("gait", edit)});
    ASSERT_EQ(edits.size(), 1U);
    EXPECT_EQ(edits.at("gait"), edit);
}

TEST(SummaryEdits, TheLastOfASectionCountsAndTheProgramsWordsTakeItBack) {
    const SummaryEdit first{"One.", "Basis.", "A"};
    const SummaryEdit second{"Two.", "Basis.", "B"};
    EXPECT_EQ(editsOf({noted("gait", first), noted("gait", second)}).at("gait"), second);
    const SummaryEdit back{"Basis.", "Basis.", "B"};
    EXPECT_TRUE(editsOf({noted("gait", first), noted("gait", back)}).empty());
}

TEST(SummaryEdits, NeverTakeAwayWhatWasNotExamined) {
    std::vector<PageSection> sections{
        {"gait", "Gait", "Limps.", "Walks on heels.", "Not examined: toe walking."}};
    applyEdits(sections, {{"gait", {"All fine.", "Limps. Walks on heels.", "Clinician Two"}}});
    EXPECT_EQ(sections.front().text, "All fine.");
    EXPECT_TRUE(sections.front().bold.isEmpty());
    EXPECT_TRUE(sections.front().quiet.contains("Not examined: toe walking."));
    EXPECT_TRUE(sections.front().quiet.contains("Words changed by Clinician Two."));
}

TEST(SummaryEdits, KeepInBoldWhatStillStandsFirst) {
    std::vector<PageSection> sections{{"gait", "Gait", "Limps.", "Walks on heels.", {}}};
    applyEdits(sections, {{"gait", {"Limps. Walks on heels with help.", "Limps. Walks on heels.", "A"}}});
    EXPECT_EQ(sections.front().bold, "Limps.");
    EXPECT_EQ(sections.front().text, "Walks on heels with help.");
}

TEST(SummaryEdits, TellWhichWordsAreOlderThanTheFindings) {
    std::vector<PageSection> sections{{"gait", "Gait", "Limps badly.", {}, {}}};
    EXPECT_EQ(applyEdits(sections, {{"gait", {"Limps a bit.", "Limps.", "A"}}}), QStringList{"Gait"});
}

} // namespace
} // namespace rhizograph::app
