// Worked examples for each threshold, exactly at it and just inside. Figures are those of the sources named
// beside them.

#include "compare/compare.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>

namespace rhizograph {
namespace {

const Knowledge& knowledge() {
    static const auto loaded = Knowledge::load(std::filesystem::path{RHIZOGRAPH_RESOURCES} / "knowledge");
    return *loaded;
}

/// Builds an exam and refuses what the catalogue does not know.
class Sheet {
public:
    Sheet& with(const std::string& item, Side side, Value value) {
        const FindingKey key{ItemId{item}, side};
        if (const auto wrong = check(knowledge().catalogue(), key, value))
            throw std::invalid_argument(item + ": " + *wrong);
        exam.set(key, {std::move(value), false, {}});
        return *this;
    }
    Sheet& number(const std::string& item, double value, Side side = Side::none) {
        return with(item, side, Value::number(value));
    }
    Sheet& word(const std::string& item, const std::string& value, Side side = Side::none) {
        return with(item, side, Value::token(value));
    }
    Exam exam;
};

ItemChange changeOf(const Exam& before, const Exam& now, const std::string& item, Side side = Side::none,
                    Examiner examiner = Examiner::unknown) {
    for (const ItemChange& change : compareVisits(before, now, knowledge(), examiner).items)
        if (change.key == FindingKey{ItemId{item}, side}) return change;
    throw std::runtime_error(item + " was not compared");
}

Change numbers(const std::string& item, double before, double now, Side side = Side::none,
               Examiner examiner = Examiner::unknown) {
    return changeOf(Sheet{}.number(item, before, side).exam, Sheet{}.number(item, now, side).exam, item, side,
                    examiner)
        .change;
}

Change words(const std::string& item, const std::string& before, const std::string& now,
             Side side = Side::none) {
    return changeOf(Sheet{}.word(item, before, side).exam, Sheet{}.word(item, now, side).exam, item, side)
        .change;
}

// Ostelo RWJG et al. Spine 2008;33:90-94: 2 points, or 30 % of the first value. Measurement error 1.77:
// doi 10.1055/a-1304-3677.
TEST(CompareThreshold, PainChangesByTwoPoints) {
    EXPECT_EQ(numbers("pain.back", 7, 5), Change::better);
    EXPECT_EQ(numbers("pain.back", 7, 6), Change::same);
    EXPECT_EQ(numbers("pain.back", 5, 7), Change::worse);
    EXPECT_EQ(numbers("pain.back", 3, 2), Change::same)
        << "33 % of the first value, but within the measurement error";
    EXPECT_EQ(numbers("pain.leg", 2, 0, Side::left), Change::resolved);
    EXPECT_EQ(numbers("pain.leg", 0, 2, Side::left), Change::created);
    EXPECT_EQ(numbers("pain.leg", 0, 1, Side::left), Change::same);
}

// The same paper: 5 points, or 30 %.
TEST(CompareThreshold, RolandMorrisChangesByFivePointsOrThirtyPercent) {
    EXPECT_EQ(numbers("score.roland_morris", 20, 15), Change::better);
    EXPECT_EQ(numbers("score.roland_morris", 20, 16), Change::same);
    EXPECT_EQ(numbers("score.roland_morris", 10, 7), Change::better) << "3 of 10 is exactly 30 %";
    EXPECT_EQ(numbers("score.roland_morris", 11, 8), Change::same) << "27 %";
    EXPECT_EQ(numbers("score.roland_morris", 0, 5), Change::worse);
    EXPECT_EQ(numbers("score.roland_morris", 0, 4), Change::same) << "no percentage of nothing";
}

// The same paper: 10 points, or 30 %.
TEST(CompareThreshold, OswestryChangesByTenPointsOrThirtyPercent) {
    EXPECT_EQ(numbers("score.oswestry", 50, 40), Change::better);
    EXPECT_EQ(numbers("score.oswestry", 50, 41), Change::same);
    EXPECT_EQ(numbers("score.oswestry", 20, 14), Change::better) << "6 of 20 is exactly 30 %";
    EXPECT_EQ(numbers("score.oswestry", 20, 15), Change::same);
    EXPECT_EQ(numbers("score.oswestry", 40, 50), Change::worse);
}

// Amtmann D et al. J Pain Res 2016;9:251-255: 3.5 to 5.5 points; the upper end, for one person.
TEST(CompareThreshold, PainInterferenceChangesByFiveAndAHalfPoints) {
    EXPECT_EQ(numbers("score.promis_pain_interference", 66, 60.5), Change::better);
    EXPECT_EQ(numbers("score.promis_pain_interference", 66, 60.6), Change::same);
}

// Ekedahl H et al. Arch Phys Med Rehabil 2012;93:2210-2215: 5.7 degrees by one examiner, so 6; 12 otherwise.
TEST(CompareThreshold, LegRaiseAngleChangesByTwelveDegreesOrSixByOneExaminer) {
    for (const char* item : {"tension.slr_supine_angle", "tension.slr_seated_angle"}) {
        EXPECT_EQ(numbers(item, 40, 52, Side::right), Change::better);
        EXPECT_EQ(numbers(item, 40, 51, Side::right), Change::same);
        EXPECT_EQ(numbers(item, 40, 46, Side::right, Examiner::same), Change::better);
        EXPECT_EQ(numbers(item, 40, 45, Side::right, Examiner::same), Change::same);
        EXPECT_EQ(numbers(item, 52, 40, Side::right), Change::worse);
    }
}

// Lumbo-pelvic inertial sensors, BMC Musculoskelet Disord 2016 (PMC5034504): 10 to 15 degrees.
TEST(CompareThreshold, BackRangeChangesByFifteenDegreesOrTenByOneExaminer) {
    EXPECT_EQ(numbers("motion.flexion", 40, 55), Change::better);
    EXPECT_EQ(numbers("motion.flexion", 40, 54), Change::same);
    EXPECT_EQ(numbers("motion.flexion", 40, 50, Side::none, Examiner::same), Change::better);
    EXPECT_EQ(numbers("motion.side_bend", 30, 15, Side::left), Change::worse);
}

// Ekedahl H et al. 2012, as above: 4.5 cm.
TEST(CompareThreshold, FingertipToFloorChangesByFourAndAHalfCentimeters) {
    EXPECT_EQ(numbers("motion.fingertip_floor", 20, 15.5), Change::better);
    EXPECT_EQ(numbers("motion.fingertip_floor", 20, 15.6), Change::same);
    EXPECT_EQ(numbers("motion.fingertip_floor", 10, 15), Change::worse);
}

// BMC Musculoskelet Disord 2022;23 (s12891-022-05611-3): 4 degrees.
TEST(CompareThreshold, TrunkInclinationChangesByFourDegrees) {
    EXPECT_EQ(numbers("motion.trunk_angle", 9, 5), Change::better);
    EXPECT_EQ(numbers("motion.trunk_angle", 9, 6), Change::same);
}

// Common practice, no source: 1 cm; a girth has no better way.
TEST(CompareThreshold, GirthChangesByOneCentimeterAndIsNotJudged) {
    EXPECT_EQ(numbers("girth.calf", 36.0, 37.0, Side::left), Change::different);
    EXPECT_EQ(numbers("girth.calf", 36.0, 36.9, Side::left), Change::same);
}

// Stratford P et al. Physiother Can 1995;47:258-263: 3 points for one activity.
TEST(CompareThreshold, AnActivityChangesByThreePointsWhenItIsTheSameActivity) {
    const auto rated = [](const std::string& activity, double score) {
        return Sheet{}
            .with("activity.name_1", Side::none, Value::text(activity))
            .number("activity.score_1", score)
            .exam;
    };
    EXPECT_EQ(changeOf(rated("gardening", 3), rated("gardening", 6), "activity.score_1").change,
              Change::better);
    EXPECT_EQ(changeOf(rated("gardening", 3), rated("gardening", 5), "activity.score_1").change,
              Change::same);
    const ItemChange other = changeOf(rated("gardening", 3), rated("running", 9), "activity.score_1");
    EXPECT_EQ(other.change, Change::notComparable);
    EXPECT_EQ(other.because, "another activity was rated");
    EXPECT_EQ(numbers("activity.score_1", 3, 9), Change::notComparable) << "what was rated is not named";
}

// O'Neill S et al. Chiropr Man Therap 2017;25:28: whole grades agree better than halves.
TEST(CompareThreshold, StrengthChangesByAWholeGrade) {
    const std::string toe = "strength.great_toe_extension";
    EXPECT_EQ(words(toe, "4", "3", Side::left), Change::worse);
    EXPECT_EQ(words(toe, "4-", "4+", Side::left), Change::same);
    EXPECT_EQ(words(toe, "4", "5", Side::left), Change::resolved);
    EXPECT_EQ(words(toe, "4+", "5", Side::left), Change::resolved);
    EXPECT_EQ(words(toe, "5", "4+", Side::left), Change::created);
    EXPECT_EQ(words(toe, "2", "3", Side::left), Change::better);
}

TEST(CompareThreshold, AFallToGradeThreeOrBelowGoesBeforeAllOthers) {
    const Exam before = Sheet{}
                            .word("strength.great_toe_extension", "4", Side::left)
                            .word("strength.knee_extension", "5", Side::left)
                            .word("history.bladder", "normal")
                            .exam;
    const Exam now = Sheet{}
                         .word("strength.great_toe_extension", "3", Side::left)
                         .word("strength.knee_extension", "4", Side::left)
                         .word("history.bladder", "altered")
                         .exam;
    const auto items = compareVisits(before, now, knowledge()).items;
    EXPECT_EQ(items[0].key.item.text(), "strength.great_toe_extension");
    EXPECT_EQ(items[1].key.item.text(), "history.bladder");
    EXPECT_EQ(items[2].key.item.text(), "strength.knee_extension");
}

// Kappa of reflexes 0.42 to 0.53: Vroomen PCAJ et al. Spine 2000;25:91-97. So only loss, return, a new side
// difference.
TEST(CompareThreshold, AReflexChangesWhenItIsLostReturnsOrComesToDifferFromTheOtherSide) {
    const std::string ankle = "reflex.ankle";
    EXPECT_EQ(words(ankle, "1", "0", Side::right), Change::worse);
    EXPECT_EQ(words(ankle, "2", "0", Side::right), Change::created);
    EXPECT_EQ(words(ankle, "0", "1", Side::right), Change::better);
    EXPECT_EQ(words(ankle, "0", "2", Side::right), Change::resolved);
    EXPECT_EQ(words(ankle, "2", "1", Side::right), Change::same) << "one step, the other side unknown";
    EXPECT_EQ(words(ankle, "2", "4", Side::right), Change::created)
        << "two steps: common practice, no source";
    const Exam even = Sheet{}.word(ankle, "2", Side::right).word(ankle, "2", Side::left).exam;
    const Exam lower = Sheet{}.word(ankle, "1", Side::right).word(ankle, "1", Side::left).exam;
    const Exam uneven = Sheet{}.word(ankle, "1", Side::right).word(ankle, "2", Side::left).exam;
    EXPECT_EQ(changeOf(even, lower, ankle, Side::right).change, Change::same) << "one step on both sides";
    EXPECT_EQ(changeOf(even, uneven, ankle, Side::right).change, Change::created);
    EXPECT_EQ(changeOf(even, uneven, ankle, Side::left).change, Change::same);
}

TEST(CompareThreshold, FeelingChangesByCategory) {
    const std::string shin = "touch.outer_shin";
    EXPECT_EQ(words(shin, "normal", "reduced", Side::left), Change::created);
    EXPECT_EQ(words(shin, "reduced", "absent", Side::left), Change::worse);
    EXPECT_EQ(words(shin, "absent", "reduced", Side::left), Change::better);
    EXPECT_EQ(words(shin, "reduced", "normal", Side::left), Change::resolved);
    EXPECT_EQ(words(shin, "reduced", "heightened", Side::left), Change::different);
}

TEST(Compare, NumbersWithoutAKnownThresholdAreShownAndNotJudged) {
    EXPECT_EQ(numbers("history.walking_distance_m", 100, 900), Change::different);
    EXPECT_EQ(numbers("history.walking_distance_m", 100, 100), Change::same);
}

TEST(Compare, WhatWasNotExaminedAtOneVisitIsNeverUnchanged) {
    const Exam with = Sheet{}.word("reflex.knee", "2", Side::left).exam;
    const ItemChange gone = changeOf(with, Exam{}, "reflex.knee", Side::left);
    EXPECT_EQ(gone.change, Change::notComparable);
    EXPECT_EQ(gone.because, "not examined at this visit");
    EXPECT_FALSE(gone.now.has_value());
    EXPECT_EQ(changeOf(Exam{}, with, "reflex.knee", Side::left).because, "not examined at the earlier visit");
    const Exam pain = Sheet{}.with("reflex.knee", Side::left, Value::notTestable("pain")).exam;
    EXPECT_EQ(changeOf(pain, pain, "reflex.knee", Side::left).change, Change::notComparable)
        << "twice not testable is not unchanged";
    EXPECT_EQ(changeOf(with, pain, "reflex.knee", Side::left).because,
              "could not be tested at this visit (pain)");
}

SideDifference sidesOf(const Exam& exam, const std::string& item) {
    for (const SideDifference& difference : compareSides(exam, knowledge()))
        if (difference.item.text() == item) return difference;
    throw std::runtime_error(item + " was not compared");
}

// Boyd BS, Villa PS. BMC Musculoskelet Disord 2012;13:245: mean and two standard deviations make 12 degrees.
TEST(CompareSides, LegRaiseAnglesDifferByMoreThanTwelveDegrees) {
    const auto pair = [](double right, double left) {
        return Sheet{}
            .number("tension.slr_supine_angle", right, Side::right)
            .number("tension.slr_supine_angle", left, Side::left)
            .exam;
    };
    EXPECT_FALSE(sidesOf(pair(60, 48), "tension.slr_supine_angle").beyondError);
    EXPECT_TRUE(sidesOf(pair(60, 47), "tension.slr_supine_angle").beyondError);
    EXPECT_EQ(sidesOf(pair(60, 47), "tension.slr_supine_angle").lesser, Side::left);
}

// Common practice, no source: 2 cm.
TEST(CompareSides, GirthsDifferByTwoCentimeters) {
    const auto pair = [](double right, double left) {
        return Sheet{}.number("girth.calf", right, Side::right).number("girth.calf", left, Side::left).exam;
    };
    EXPECT_TRUE(sidesOf(pair(38.0, 36.0), "girth.calf").beyondError);
    EXPECT_FALSE(sidesOf(pair(38.0, 36.1), "girth.calf").beyondError);
    EXPECT_EQ(sidesOf(pair(38.0, 36.0), "girth.calf").lesser, Side::left);
}

// Knutson GA. Chiropr Osteopat 2005;13:11: of no likely moment below 20 mm.
TEST(CompareSides, LegLengthsDifferByTwoCentimeters) {
    const auto pair = [](double right, double left) {
        return Sheet{}.number("length.leg", right, Side::right).number("length.leg", left, Side::left).exam;
    };
    EXPECT_TRUE(sidesOf(pair(88.0, 86.0), "length.leg").beyondError);
    EXPECT_FALSE(sidesOf(pair(88.0, 86.1), "length.leg").beyondError);
}

TEST(CompareSides, StrengthByWholeGradesReflexesByOneStepFeelingByCategory) {
    const Exam exam = Sheet{}
                          .word("strength.knee_extension", "4", Side::right)
                          .word("strength.knee_extension", "5", Side::left)
                          .word("strength.hip_flexion", "4-", Side::right)
                          .word("strength.hip_flexion", "4+", Side::left)
                          .word("reflex.ankle", "1", Side::right)
                          .word("reflex.ankle", "2", Side::left)
                          .word("reflex.knee", "3", Side::right)
                          .word("reflex.knee", "2", Side::left)
                          .word("touch.great_toe", "normal", Side::right)
                          .word("touch.great_toe", "reduced", Side::left)
                          .exam;
    EXPECT_TRUE(sidesOf(exam, "strength.knee_extension").beyondError);
    EXPECT_EQ(sidesOf(exam, "strength.knee_extension").lesser, Side::right);
    EXPECT_FALSE(sidesOf(exam, "strength.hip_flexion").beyondError);
    EXPECT_EQ(sidesOf(exam, "reflex.ankle").lesser, Side::right);
    EXPECT_EQ(sidesOf(exam, "reflex.knee").lesser, Side::right)
        << "the brisk side is the one away from normal";
    EXPECT_EQ(sidesOf(exam, "touch.great_toe").lesser, Side::left);
}

TEST(CompareSides, ASideThatWasNotExaminedIsNotEqual) {
    const SideDifference one = sidesOf(Sheet{}.word("reflex.ankle", "2", Side::left).exam, "reflex.ankle");
    EXPECT_FALSE(one.comparable);
    EXPECT_FALSE(one.beyondError);
    EXPECT_EQ(one.because, "not examined on the right");
}

/// Light touch of the given regions on the left; all others of the list normal.
Exam skin(const std::vector<std::string>& numb, const std::vector<std::string>& normal = {}) {
    Sheet sheet;
    for (const std::string& region : normal)
        sheet.word("touch." + region, "normal", Side::left);
    for (const std::string& region : numb)
        sheet.word("touch." + region, "reduced", Side::left);
    return sheet.exam;
}

NumbAreaChange leftArea(const Exam& before, const Exam& now) {
    const auto all = compareNumbAreas(before, now, knowledge());
    EXPECT_EQ(all.size(), 1U);
    return all.front();
}

// areas.json of the figures: great toe 19.9, outer shin 171.1 cm2 as projected, times 1.57 for the round of
// the leg.
TEST(NumbArea, AddsTheSkinOfTheNumbRegions) {
    const auto areas = numbAreas(skin({"great_toe", "outer_shin"}, {"inner_shin"}), knowledge());
    ASSERT_EQ(areas.size(), 1U);
    EXPECT_NEAR(areas[0].left, (19.9 + 171.1) * 1.57, 1e-9);
    EXPECT_EQ(areas[0].examinedLeft, 3);
    EXPECT_EQ(areas[0].examinedRight, 0);
}

// Leoni D et al. 2013: an immediate repeat overlaps 62 % and varies by 38 %, so 40 % and less than 60 % in
// common.
TEST(NumbArea, ChangesOnlyByFortyPercentWithLessThanSixtyPercentInCommon) {
    const Exam shin = skin({"outer_shin"}, {"great_toe", "inner_shin"});
    EXPECT_EQ(leftArea(shin, skin({"outer_shin", "great_toe"}, {"inner_shin"})).change, Change::same)
        << "12 % more skin";
    EXPECT_EQ(leftArea(shin, skin({"outer_shin", "inner_shin"}, {"great_toe"})).change, Change::same)
        << "62 % more skin, but 62 % in common";
    EXPECT_EQ(leftArea(shin, skin({"outer_shin", "inner_shin", "great_toe"})).change, Change::worse)
        << "74 % more skin, 57 % in common";
    EXPECT_EQ(leftArea(skin({"outer_shin", "inner_shin", "great_toe"}), shin).change, Change::better)
        << "43 % less skin, 57 % in common";
    EXPECT_EQ(leftArea(skin({"outer_shin", "inner_shin"}, {"great_toe"}), shin).change, Change::same)
        << "38 % less skin";
    EXPECT_EQ(leftArea(shin, skin({}, {"outer_shin", "great_toe", "inner_shin"})).change, Change::resolved);
    EXPECT_EQ(leftArea(skin({}, {"outer_shin"}), skin({"outer_shin"})).change, Change::created);
}

TEST(NumbArea, CountsOnlyWhatWasExaminedAtBothVisits) {
    const NumbAreaChange partly = leftArea(skin({"outer_shin", "great_toe"}), skin({"outer_shin"}));
    EXPECT_EQ(partly.regions, 1);
    EXPECT_EQ(partly.change, Change::same) << "the toe was not examined again, so nothing is known of it";
    const NumbAreaChange none = leftArea(skin({"outer_shin"}), skin({"great_toe"}));
    EXPECT_EQ(none.change, Change::notComparable);
    EXPECT_EQ(none.because, "no region was examined at both visits");
}

TEST(Trend, FollowsEachQuestionOverAllVisitsAndSkipsThoseThatDidNotAskIt) {
    std::vector<Exam> visits(3);
    visits[0] = Sheet{}.number("pain.back", 8).word("strength.great_toe_extension", "3", Side::left).exam;
    visits[1] = Sheet{}.word("strength.great_toe_extension", "4", Side::left).exam;
    visits[2] = Sheet{}.number("pain.back", 5).word("strength.great_toe_extension", "5", Side::left).exam;
    visits[0].date = "2026-01-05";
    visits[2].date = "2026-03-02";
    const Trend trend = trendOf(visits, knowledge());
    EXPECT_EQ(trend.dates, (std::vector<std::string>{"2026-01-05", "", "2026-03-02"}));
    const auto find = [&](const std::string& item) {
        return *std::find_if(trend.series.begin(), trend.series.end(),
                             [&](const TrendSeries& series) { return series.key.item.text() == item; });
    };
    const TrendSeries pain = find("pain.back");
    EXPECT_EQ(pain.position, (std::vector<std::optional<double>>{8, std::nullopt, 5}));
    EXPECT_EQ(pain.sincePrevious,
              (std::vector<Change>{Change::notComparable, Change::notComparable, Change::better}));
    const TrendSeries toe = find("strength.great_toe_extension");
    EXPECT_EQ(toe.sincePrevious,
              (std::vector<Change>{Change::notComparable, Change::better, Change::resolved}));
    EXPECT_EQ(toe.sinceFirst, (std::vector<Change>{Change::notComparable, Change::better, Change::resolved}));
    ASSERT_FALSE(trend.sites.empty());
    EXPECT_EQ(trend.sites.front().probability.size(), 3U);
}

} // namespace
} // namespace rhizograph
