#include "exchange/examfile.h"

#include "support/randomexam.h"

#include <filesystem>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace rhizograph {
namespace {

using ::testing::HasSubstr;

const Catalogue& catalogue() {
    static const Catalogue loaded = loadCatalogue(RHIZOGRAPH_RESOURCES "/knowledge/catalogue.json").value();
    return loaded;
}

/// An exam file holding these findings (JSON of the list's inside).
std::string withFindings(const std::string& findings) {
    return R"({"format": "rhizograph.exam", "version": 1, "findings": [)" + findings + "]}";
}

Problems problemsOf(const std::string& text) {
    const auto exam = parseExam(text, "t.json", catalogue());
    return exam ? Problems{} : exam.problems();
}

struct BadFinding {
    const char* name;
    const char* finding;
    const char* place;
    const char* reason;
};

class RefusedFinding : public ::testing::TestWithParam<BadFinding> {};

TEST_P(RefusedFinding, IsToldWithItsPlaceAndReason) {
    const Problems problems = problemsOf(withFindings(GetParam().finding));
    ASSERT_EQ(problems.size(), 1U) << (problems.empty() ? "nothing refused" : problems.back().text());
    EXPECT_EQ(problems[0].place, GetParam().place);
    EXPECT_THAT(problems[0].reason, HasSubstr(GetParam().reason));
}

INSTANTIATE_TEST_SUITE_P(
    ExamFile, RefusedFinding,
    ::testing::Values(
        BadFinding{"UnknownItem", R"({"item": "strength.ear", "value": "5"})", "/findings/0/item",
                   "not in the catalogue"},
        BadFinding{"ItemMissing", R"({"value": "5"})", "/findings/0", "\"item\" is missing"},
        BadFinding{"ItemNoText", R"({"item": 7, "value": "5"})", "/findings/0/item", "should be text"},
        BadFinding{"SideMissing", R"({"item": "reflex.ankle", "value": "2"})", "/findings/0",
                   "\"side\" is missing"},
        BadFinding{"SideSuperfluous", R"({"item": "gait.squat", "side": "left", "value": "normal"})",
                   "/findings/0/side", "has no sides"},
        BadFinding{"SideBoth", R"({"item": "reflex.ankle", "side": "both", "value": "2"})",
                   "/findings/0/side", "neither left"},
        BadFinding{"SideNull", R"({"item": "reflex.ankle", "side": null, "value": "2"})", "/findings/0/side",
                   "should be text"},
        BadFinding{"ValueMissing", R"({"item": "reflex.ankle", "side": "left"})", "/findings/0",
                   "\"value\" is missing"},
        BadFinding{"ValueNull", R"({"item": "reflex.ankle", "side": "left", "value": null})",
                   "/findings/0/value", "one of"},
        BadFinding{"GradeAsNumber", R"({"item": "reflex.ankle", "side": "left", "value": 2})",
                   "/findings/0/value", "one of"},
        BadFinding{"GradeOffScale", R"({"item": "strength.hip_flexion", "side": "left", "value": "6"})",
                   "/findings/0/value", "not on its scale"},
        BadFinding{"ChoiceOffScale", R"({"item": "gait.pattern", "value": "moonwalk"})", "/findings/0/value",
                   "not on its scale"},
        BadFinding{"NumberAsText", R"({"item": "pain.back", "value": "4"})", "/findings/0/value",
                   "should be a number"},
        BadFinding{"NumberTooHigh", R"({"item": "pain.back", "value": 10.5})", "/findings/0/value",
                   "outside 0 to 10"},
        BadFinding{"NumberNegative", R"({"item": "pain.back", "value": -1})", "/findings/0/value", "outside"},
        BadFinding{"NumberHuge", R"({"item": "pain.back", "value": 1e300})", "/findings/0/value", "outside"},
        BadFinding{"NotTestableWithoutReason",
                   R"({"item": "reflex.ankle", "side": "left", "value": "not_testable"})", "/findings/0",
                   "\"because\" is missing"},
        BadFinding{"UnknownReason",
                   R"({"item": "reflex.ankle", "side": "left", "value": "not_testable", "because": "rain"})",
                   "/findings/0/because", "none of pain"},
        BadFinding{"ReasonForATestedValue",
                   R"({"item": "reflex.ankle", "side": "left", "value": "2", "because": "pain"})",
                   "/findings/0/because", "not_testable only"},
        BadFinding{"UnknownKey", R"({"item": "pain.back", "value": 4, "becuase": "pain"})",
                   "/findings/0/becuase", "unknown key"},
        BadFinding{"BulkNoFlag", R"({"item": "pain.back", "value": 4, "bulk": 1})", "/findings/0/bulk",
                   "true or false"},
        BadFinding{"NoteNoText", R"({"item": "pain.back", "value": 4, "note": []})", "/findings/0/note",
                   "should be text"},
        BadFinding{"TextItemGivenANumber", R"({"item": "history.complaint", "value": 4})",
                   "/findings/0/value", "should be text"},
        BadFinding{"NoObject", R"("pain.back")", "/findings/0", "should be an object"},
        BadFinding{"Twice", R"({"item": "reflex.ankle", "side": "left", "value": "2"},
                               {"item": "reflex.ankle", "side": "left", "value": "2"})",
                   "/findings/1", "stands already in /findings/0"},
        BadFinding{"KeyTwice", R"({"item": "pain.back", "value": 4, "value": 5})", "/findings/0/value",
                   "stands twice"}),
    [](const auto& given) { return std::string{given.param.name}; });

TEST(ExamFile, ListsEveryProblemAtOnce) {
    const Problems problems = problemsOf(R"({"format": "rhizograph.exam", "version": 2,
        "patient": {"age": 200, "sex": "f", "name": "x"}, "visit": {"date": "2026-02-29"},
        "findings": [{"item": "a", "value": 1}, {"item": "pain.back", "side": "left", "value": 99}]})");
    std::vector<std::string> places;
    for (const Problem& problem : problems)
        places.push_back(problem.place);
    EXPECT_THAT(places, ::testing::UnorderedElementsAre("/version", "/patient/age", "/patient/sex",
                                                        "/patient/name", "/visit/date", "/findings/0/item",
                                                        "/findings/1/side", "/findings/1/value"));
}

TEST(ExamFile, RefusesAnotherFormatAndAMissingListOfFindings) {
    EXPECT_EQ(problemsOf(R"({"format": "rhizograph.catalogue", "version": 1, "findings": []})")[0].place,
              "/format");
    EXPECT_EQ(problemsOf(R"({"version": 1, "findings": []})").size(), 1U);
    EXPECT_EQ(problemsOf(R"({"format": "rhizograph.exam", "version": 1})")[0].reason,
              "\"findings\" is missing");
    EXPECT_EQ(problemsOf(R"({"format": "rhizograph.exam", "version": 1, "findings": null})")[0].place,
              "/findings");
    EXPECT_EQ(problemsOf("[]")[0].place, "/");
}

TEST(ExamFile, RefusesAnAgeThatIsNoWholeNumberOfYears) {
    for (const char* age : {"-1", "131", "54.5", "1e300", "\"54\"", "null", "true"})
        EXPECT_EQ(
            problemsOf(R"({"format": "rhizograph.exam", "version": 1, "findings": [], "patient": {"age": )" +
                       std::string{age} + "}}")
                .at(0)
                .place,
            "/patient/age")
            << age;
}

TEST(ExamFile, LeavesOtherTopLevelKeysAlone) {
    const auto exam =
        parseExam(R"({"format": "rhizograph.exam", "version": 1, "truth": {"sites": ["x"]}, "id": 5,
        "patient": {"age": 54, "sex": "female"}, "visit": {"date": "2026-03-02"},
        "findings": [{"item": "strength.ankle_plantarflexion", "side": "right", "value": "not_testable", "because": "pain",
                      "note": "calf cramp"}, {"item": "reflex.knee", "side": "left", "value": "2", "bulk": true}]})",
                  "t.json", catalogue());
    ASSERT_TRUE(exam.ok()) << exam.problems()[0].text();
    EXPECT_EQ(exam->subject.age, 54);
    EXPECT_EQ(exam->subject.sex, "female");
    EXPECT_EQ(exam->date, "2026-03-02");
    const Finding* calf = exam->find("strength.ankle_plantarflexion", Side::right);
    ASSERT_NE(calf, nullptr);
    EXPECT_EQ(*calf, (Finding{Value::notTestable("pain"), false, "calf cramp"}));
    EXPECT_TRUE(exam->find("reflex.knee", Side::left)->bulk);
    EXPECT_EQ(exam->find("reflex.knee", Side::right), nullptr);
}

TEST(ExamFile, EveryPublishedCaseIsAValidExamFile) {
    int read = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(RHIZOGRAPH_TEST_DATA "/cases")) {
        if (entry.path().extension() != ".json") continue;
        const auto exam = readExamFile(entry.path(), catalogue());
        EXPECT_TRUE(exam.ok()) << exam.problems()[0].text();
        ++read;
    }
    EXPECT_GE(read, 100);
}

RC_GTEST_PROP(ExamFile, WhatIsWrittenReadsBackEqual, ()) {
    const Exam exam = *testing::anyExam(catalogue());
    const std::string text = examText(exam, catalogue());
    const auto back = parseExam(text, "written", catalogue());
    RC_ASSERT(back.ok());
    RC_ASSERT(*back == exam);
    RC_ASSERT(examText(*back, catalogue()) == text);
}

} // namespace
} // namespace rhizograph
