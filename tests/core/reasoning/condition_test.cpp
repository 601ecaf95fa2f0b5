#include "exam_maker.h"
#include "reasoning/condition.h"

#include <gmock/gmock.h>

namespace rhizograph {
namespace {

using testing::catalogue;
using ::testing::ElementsAre;
using testing::ExamMaker;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

Vocabulary words() {
    Vocabulary vocabulary;
    vocabulary.catalogue = &catalogue();
    vocabulary.sites = {"root.L5", "root.S1", "none"};
    vocabulary.redSigns = {"fracture", "cauda_equina"};
    vocabulary.screens = {"hip", "stenosis"};
    return vocabulary;
}

Condition compiled(const std::string& text, const Vocabulary& vocabulary = words()) {
    const auto json = parseJson(text, "rule");
    EXPECT_TRUE(json.ok()) << text;
    Problems problems;
    Condition condition = Condition::parse(JsonNode{*json, "rule", problems}, vocabulary);
    EXPECT_THAT(problems, IsEmpty()) << problems.front().text();
    return condition;
}

Problems refused(const std::string& text, const Vocabulary& vocabulary = words()) {
    const auto json = parseJson(text, "rule");
    Problems problems;
    (void)Condition::parse(JsonNode{*json, "rule", problems}, vocabulary);
    return problems;
}

Truth truth(const std::string& text, const Exam& exam, const Exam* previous = nullptr) {
    return compiled(text).evaluate({&exam, previous, nullptr, Side::none}).truth;
}

const FindingKey fever{ItemId{"history.fever"}, Side::none};

TEST(Condition, AnAnsweredQuestionIsTrueOrFalseAndAnUnansweredOneUnknown) {
    const std::string rule = R"({"item": "history.fever", "is": "yes"})";
    EXPECT_EQ(truth(rule, ExamMaker().none("history.fever", "yes")), Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().none("history.fever", "no")), Truth::no);
    EXPECT_EQ(truth(rule, Exam{}), Truth::unknown);
}

TEST(Condition, NotTestableIsUnknownAndNeverNormal) {
    ExamMaker exam;
    exam.set("strength.hip_flexion", Side::left, Value::notTestable("pain"));
    EXPECT_EQ(truth(R"({"item": "strength.hip_flexion", "side": "left", "at_most": "3"})", exam),
              Truth::unknown);
    EXPECT_EQ(truth(R"({"not": {"item": "strength.hip_flexion", "side": "left", "at_most": "3"}})", exam),
              Truth::unknown);
}

TEST(Condition, CombinationsFollowKleene) {
    const Exam exam = ExamMaker().none("history.fever", "yes").none("history.cancer", "no");
    const std::string yes = R"({"item": "history.fever", "is": "yes"})";
    const std::string no = R"({"item": "history.cancer", "is": "yes"})";
    const std::string open = R"({"item": "history.diabetes", "is": "yes"})";
    const auto all = [&](const std::string& a, const std::string& b) {
        return truth(R"({"all": [)" + a + "," + b + "]}", exam);
    };
    const auto any = [&](const std::string& a, const std::string& b) {
        return truth(R"({"any": [)" + a + "," + b + "]}", exam);
    };
    EXPECT_EQ(all(yes, open), Truth::unknown);
    EXPECT_EQ(all(no, open), Truth::no);
    EXPECT_EQ(all(yes, yes), Truth::yes);
    EXPECT_EQ(any(yes, open), Truth::yes);
    EXPECT_EQ(any(no, open), Truth::unknown);
    EXPECT_EQ(any(no, no), Truth::no);
    EXPECT_EQ(truth(R"({"not": )" + open + "}", exam), Truth::unknown);
    EXPECT_EQ(truth(R"({"not": )" + no + "}", exam), Truth::yes);
}

TEST(Condition, ACountIsDecidedAsSoonAsTheRestCannotChangeIt) {
    const std::string rule = R"({"count_at_least": 2, "of": [{"item": "history.fever", "is": "yes"},
        {"item": "history.cancer", "is": "yes"}, {"item": "history.diabetes", "is": "yes"}]})";
    EXPECT_EQ(truth(rule, ExamMaker().none("history.fever", "yes").none("history.cancer", "yes")),
              Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().none("history.fever", "yes").none("history.cancer", "no")),
              Truth::unknown);
    EXPECT_EQ(truth(rule, ExamMaker().none("history.fever", "no").none("history.cancer", "no")), Truth::no);
}

TEST(Condition, GradesAreComparedInTheOrderOfTheirScale) {
    const std::string atMost4 = R"({"item": "strength.hip_flexion", "side": "left", "at_most": "4"})";
    for (const char* grade : {"0", "1", "2", "3", "4-", "4"})
        EXPECT_EQ(truth(atMost4, ExamMaker().left("strength.hip_flexion", grade)), Truth::yes) << grade;
    for (const char* grade : {"4+", "5"})
        EXPECT_EQ(truth(atMost4, ExamMaker().left("strength.hip_flexion", grade)), Truth::no) << grade;
    const std::string only3to4 =
        R"({"item": "strength.hip_flexion", "side": "left", "at_least": "3", "at_most": "4"})";
    EXPECT_EQ(truth(only3to4, ExamMaker().left("strength.hip_flexion", "4-")), Truth::yes);
    EXPECT_EQ(truth(only3to4, ExamMaker().left("strength.hip_flexion", "2")), Truth::no);
}

TEST(Condition, ASidedItemWithoutASideMeansEitherSide) {
    const std::string rule = R"({"item": "reflex.plantar", "is": "up"})";
    EXPECT_EQ(truth(rule, ExamMaker().right("reflex.plantar", "up")), Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().left("reflex.plantar", "up").right("reflex.plantar", "down")),
              Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().left("reflex.plantar", "down")), Truth::unknown);
    EXPECT_EQ(truth(rule, ExamMaker().both("reflex.plantar", "down")), Truth::no);
    EXPECT_EQ(truth(R"({"item": "reflex.plantar", "is": "up", "side": "both"})",
                    ExamMaker().left("reflex.plantar", "up")),
              Truth::unknown);
}

TEST(Condition, AWildcardMeansAnyOfItsItemsButTheExcepted) {
    const std::string rule =
        R"({"item": "strength.*", "except": ["strength.give_way"], "at_most": "3", "side": "left"})";
    EXPECT_EQ(truth(rule, ExamMaker().left("strength.toe_flexion", "2")), Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().right("strength.toe_flexion", "2")), Truth::unknown);
    EXPECT_THAT(refused(R"({"item": "strength.*", "at_most": "3"})"), ::testing::SizeIs(1))
        << "give way has no order";
}

TEST(Condition, SidesInsideARuleAreRelative) {
    const std::string rule = R"({"either_side": {"all": [{"item": "reflex.ankle", "side": "same", "is": "0"},
        {"item": "reflex.ankle", "side": "other", "is": "2"}]}})";
    EXPECT_EQ(truth(rule, ExamMaker().left("reflex.ankle", "0").right("reflex.ankle", "2")), Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().left("reflex.ankle", "2").right("reflex.ankle", "0")), Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().both("reflex.ankle", "0")), Truth::no);
    const std::string both =
        R"({"both_sides": {"item": "strength.*", "except": ["strength.give_way"], "side": "same", "at_most": "4"}})";
    EXPECT_EQ(truth(both, ExamMaker().left("strength.hip_flexion", "4").right("strength.toe_flexion", "3")),
              Truth::yes);
    EXPECT_EQ(truth(both, ExamMaker().left("strength.hip_flexion", "4")), Truth::unknown);
}

TEST(Condition, OneNumberCanBeSubtractedFromAnother) {
    const std::string rule =
        R"({"either_side": {"item": "girth.calf", "side": "same", "minus": {"item": "girth.calf", "side": "other"}, "at_least": 3}})";
    EXPECT_EQ(truth(rule, ExamMaker().left("girth.calf", 38.1).right("girth.calf", 35.1)), Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().left("girth.calf", 37.0).right("girth.calf", 35.1)), Truth::no);
    EXPECT_EQ(truth(rule, ExamMaker().left("girth.calf", 40.0)), Truth::unknown);
}

TEST(Condition, AFallIsCountedInWholeGrades) {
    const std::string rule = R"({"item": "strength.hip_flexion", "side": "left", "fell_by": 1})";
    const auto fall = [&](const char* then, const char* now) {
        const Exam before = ExamMaker().left("strength.hip_flexion", then);
        return truth(rule, ExamMaker().left("strength.hip_flexion", now), &before);
    };
    EXPECT_EQ(fall("5", "4"), Truth::yes);
    EXPECT_EQ(fall("4-", "3"), Truth::yes);
    EXPECT_EQ(fall("4+", "4-"), Truth::no)
        << "half grades do not count: O'Neill S et al., Chiropr Man Therap 2017";
    EXPECT_EQ(fall("3", "5"), Truth::no);
    EXPECT_EQ(truth(rule, ExamMaker().left("strength.hip_flexion", "1")), Truth::unknown)
        << "no earlier visit";
}

TEST(Condition, TheEarlierVisitCanBeAskedWhatItFound) {
    const std::string lost =
        R"({"item": "touch.perianal", "side": "left", "is": ["reduced", "absent"], "was": "normal"})";
    const Exam before = ExamMaker().left("touch.perianal", "normal");
    EXPECT_EQ(truth(lost, ExamMaker().left("touch.perianal", "reduced"), &before), Truth::yes);
    EXPECT_EQ(truth(lost, ExamMaker().left("touch.perianal", "normal"), &before), Truth::no);
    const Exam already = ExamMaker().left("touch.perianal", "absent");
    EXPECT_EQ(truth(lost, ExamMaker().left("touch.perianal", "reduced"), &already), Truth::no);
    EXPECT_EQ(truth(lost, ExamMaker().left("touch.perianal", "reduced")), Truth::unknown)
        << "no earlier visit";
    const std::string fallTo3 =
        R"({"item": "strength.hip_flexion", "side": "left", "at_most": "3", "fell_by": 1})";
    const Exam full = ExamMaker().left("strength.hip_flexion", "5");
    EXPECT_EQ(truth(fallTo3, ExamMaker().left("strength.hip_flexion", "3"), &full), Truth::yes);
    EXPECT_EQ(truth(fallTo3, ExamMaker().left("strength.hip_flexion", "4"), &full), Truth::no);
}

TEST(Condition, UnlessIsTrueUntilItsConditionIsKnownToHold) {
    const std::string rule = R"({"unless": {"item": "history.fever", "is": "yes"}})";
    EXPECT_EQ(truth(rule, Exam{}), Truth::yes) << "what was not asked lowers nothing";
    EXPECT_EQ(truth(rule, ExamMaker().none("history.fever", "no")), Truth::yes);
    EXPECT_EQ(truth(rule, ExamMaker().none("history.fever", "yes")), Truth::no);
}

TEST(Condition, ATermStandsForTheConditionItNames) {
    auto terms = std::make_shared<Terms>();
    terms->emplace("hot", Term{compiled(R"({"item": "history.fever", "is": "yes"})"), false});
    Vocabulary vocabulary = words();
    vocabulary.terms = terms;
    vocabulary.sidedRule = true;
    terms->emplace(
        "weak",
        Term{compiled(R"({"item": "strength.hip_flexion", "side": "same", "at_most": "4"})", vocabulary),
             true});
    vocabulary.sidedRule = false;
    const Exam exam = ExamMaker().none("history.fever", "yes").right("strength.hip_flexion", "3");
    EXPECT_EQ(
        compiled(R"({"term": "hot"})", vocabulary).evaluate({&exam, nullptr, nullptr, Side::none}).truth,
        Truth::yes);
    EXPECT_EQ(compiled(R"({"either_side": {"term": "weak"}})", vocabulary)
                  .evaluate({&exam, nullptr, nullptr, Side::none})
                  .truth,
              Truth::yes);
    EXPECT_THAT(refused(R"({"term": "weak"})", vocabulary).front().reason, HasSubstr("a term of one side"));
    EXPECT_THAT(refused(R"({"term": "cold"})", vocabulary).front().reason, HasSubstr("no term \"cold\""));
    EXPECT_THAT(refused(R"({"term": "hot"})").front().reason, HasSubstr("no term"));
}

TEST(Condition, AgeAndSexAreUnknownUntilGiven) {
    EXPECT_EQ(truth(R"({"age_at_least": 70})", ExamMaker(70, "")), Truth::yes);
    EXPECT_EQ(truth(R"({"age_at_most": 69})", ExamMaker(70, "")), Truth::no);
    EXPECT_EQ(truth(R"({"age_at_least": 70})", Exam{}), Truth::unknown);
    EXPECT_EQ(truth(R"({"sex": "female"})", ExamMaker(70, "")), Truth::unknown);
    EXPECT_EQ(truth(R"({"sex": "female"})", ExamMaker(70, "male")), Truth::no);
}

TEST(Condition, RecordedTellsWhetherAnAnswerIsThere) {
    const std::string missing = R"({"item": "pulse.posterior_tibial", "side": "left", "recorded": false})";
    EXPECT_EQ(truth(missing, Exam{}), Truth::yes);
    EXPECT_EQ(truth(missing, ExamMaker().left("pulse.posterior_tibial", "absent")), Truth::no);
    EXPECT_THAT(refused(R"({"item": "pulse.posterior_tibial", "recorded": false})"), ::testing::SizeIs(1));
}

TEST(Condition, NamesTheFindingsThatMadeItTrue) {
    const auto answer =
        compiled(R"({"any": [{"item": "history.fever", "is": "yes"}, {"item": "history.cancer", "is": "yes"},
        {"not": {"item": "history.diabetes", "is": "no"}}]})")
            .evaluate({&ExamMaker()
                            .none("history.fever", "yes")
                            .none("history.cancer", "no")
                            .none("history.diabetes", "yes")
                            .exam()});
    EXPECT_THAT(answer.because, ElementsAre(FindingKey{ItemId{"history.diabetes"}, Side::none}, fever));
}

TEST(Condition, LooksAtTheAssessmentWhereAllowed) {
    Vocabulary allowed = words();
    allowed.assessment = true;
    Assessment assessment;
    assessment.localization = {{SiteId{"root.L5"}, Side::left, 0.6, Support::moderate, {}, {}},
                               {SiteId{"root.S1"}, Side::left, 0.2, Support::none, {}, {}}};
    assessment.redSigns = {{"fracture", Urgency::urgent, "days", "", "", {}, ""}};
    assessment.screens = {{"hip", "Hip", Side::left, 0.5, ScreenVerdict::raised, {}},
                          {"hip", "Hip", Side::right, 0.1, ScreenVerdict::low, {}}};
    const Exam exam;
    const auto at = [&](const std::string& rule) {
        return compiled(rule, allowed).evaluate({&exam, nullptr, &assessment, Side::none}).truth;
    };
    EXPECT_EQ(at(R"({"site_in": ["root.L5", "root.S1"], "probability_at_least": 0.75})"), Truth::yes);
    EXPECT_EQ(at(R"({"site_in": ["root.L5"], "probability_at_least": 0.5, "side": "right"})"), Truth::no);
    EXPECT_EQ(at(R"({"red_sign": "fracture", "urgency_at_least": "urgent"})"), Truth::yes);
    EXPECT_EQ(at(R"({"red_sign": "fracture", "urgency_at_least": "emergency"})"), Truth::no);
    EXPECT_EQ(at(R"({"red_sign": "*"})"), Truth::yes);
    EXPECT_EQ(at(R"({"screen": "hip", "verdict": ["raised", "high"]})"), Truth::yes);
    EXPECT_EQ(at(R"({"screen": "hip", "verdict": ["raised", "high"], "side": "right"})"), Truth::no);
    EXPECT_EQ(at(R"({"screen": "stenosis", "verdict": "low"})"), Truth::unknown) << "not examined is not low";
    EXPECT_THAT(refused(R"({"red_sign": "fracture"})"), ::testing::SizeIs(1)) << "not before the assessment";
}

struct Refusal {
    const char* rule;
    const char* place;
    const char* reason;
};

TEST(Condition, RefusesWhatHasNoMeaningWithPlaceAndReason) {
    const Refusal refusals[] = {
        {R"({"item": "history.fevre", "is": "yes"})", "/item", "no item \"history.fevre\""},
        {R"({"item": "history.fever", "is": "maybe"})", "/is", "not on the scale"},
        {R"({"item": "history.fever", "is": "yes", "sides": "left"})", "/sides", "unknown key"},
        {R"({"item": "history.fever", "is": "yes", "side": "left"})", "/side", "has no sides"},
        {R"({"item": "history.fever"})", "/", "exactly one of"},
        {R"({"item": "history.fever", "at_most": "yes"})", "/at_most", "has no order"},
        {R"({"item": "vitals.temperature", "at_least": 55})", "/at_least", "outside the scale"},
        {R"({"item": "vitals.temperature", "is": "yes"})", "/is", "has no listed values"},
        {R"({"item": "reflex.knee", "side": "same", "is": "0"})", "/side", "does not run side by side"},
        {R"({"item": "reflex.knee", "side": "up", "is": "0"})", "/side", "is not a side"},
        {R"({"item": "history.fever", "recorded": true, "was": "no"})", "/", "or a change"},
        {R"({"item": "history.fever", "is": "yes", "was": "hot"})", "/was", "not on the scale"},
        {R"({"any": []})", "/any", "at least one"},
        {R"({"any": [{"whim": 1}]})", "/any/0", "no known kind"},
        {R"({"count_at_least": 3, "of": [{"age_at_least": 4}]})", "/count_at_least", "should be 1 to 1"},
        {R"({"sex": "f"})", "/sex", "should be female"},
        {R"(["history.fever"])", "/", "should be an object"},
    };
    for (const Refusal& refusal : refusals) {
        const Problems problems = refused(refusal.rule);
        ASSERT_FALSE(problems.empty()) << refusal.rule;
        EXPECT_EQ(problems.front().file, "rule");
        EXPECT_EQ(problems.front().place, refusal.place) << refusal.rule;
        EXPECT_THAT(problems.front().reason, HasSubstr(refusal.reason)) << refusal.rule;
    }
}

} // namespace
} // namespace rhizograph
