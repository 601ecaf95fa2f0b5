#include "exchange/assessmentjson.h"

#include "exchange/examfile.h"
#include "reasoning/knowledge.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rhizograph {
namespace {

using nlohmann::ordered_json;
using ::testing::ElementsAre;

std::vector<std::string> keysOf(const ordered_json& object) {
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items())
        keys.push_back(key);
    return keys;
}

const FindingKey ankle{ItemId{"reflex.ankle"}, Side::left};

TEST(AssessmentJson, HoldsTheKeysOfTheFileContractInAFixedOrder) {
    EXPECT_THAT(keysOf(assessmentToJson({})),
                ElementsAre("format", "version", "localization", "nothing_known", "fit", "levels", "screens",
                            "red_signs", "not_asked", "consistency", "behavioral_groups", "next_tests",
                            "workup", "codes", "knowledge_version"));
}

TEST(AssessmentJson, WritesAnswersWithTheWordsOfTheContract) {
    Assessment a;
    a.localization = {{SiteId{"root.S1"}, Side::left, 0.75, Support::moderate, {{ankle, 6.5}}, {{ankle, -1}}},
                      {SiteId{"none"}, Side::none, 0.2, Support::none, {}, {}}};
    a.fit = {FitVerdict::partly, -2.0, {{{ankle}, 2.5}}};
    a.levels = {{"L5-S1", "paracentral", 0.95}};
    a.screens = {{"hip", "Hip", Side::right, 0.1, ScreenVerdict::notExamined, {}}};
    a.redSigns = {{"cauda_equina", Urgency::emergency, "now", "s", "a", {ankle}, "src"}};
    a.nextTests = {{ankle, 0.31, {SiteId{"root.S1"}, SiteId{"none"}}, true}};
    const ordered_json out = assessmentToJson(a);
    EXPECT_EQ(out["localization"][0],
              ordered_json::parse(R"({"site": "root.S1", "side": "left", "probability": 0.75,
        "support": "moderate", "for": [{"item": "reflex.ankle", "side": "left", "decibans": 6.5}],
        "against": [{"item": "reflex.ankle", "side": "left", "decibans": -1.0}]})"));
    EXPECT_THAT(keysOf(out["localization"][1]),
                ElementsAre("site", "probability", "support", "for", "against"));
    EXPECT_EQ(out["fit"]["verdict"], "partly");
    EXPECT_EQ(out["levels"][0]["zone"], "paracentral");
    EXPECT_EQ(out["screens"][0]["verdict"], "not_examined");
    EXPECT_EQ(out["screens"][0]["side"], "right");
    EXPECT_EQ(out["red_signs"][0]["urgency"], "emergency");
    EXPECT_EQ(out["red_signs"][0]["because"][0]["item"], "reflex.ankle");
    EXPECT_EQ(out["next_tests"][0]["gain_bits"], 0.31);
    EXPECT_EQ(out["next_tests"][0]["separates"], ordered_json::parse(R"(["root.S1", "none"])"));
}

TEST(AssessmentJson, TheSameExamGivesTheSameTextTwice) {
    const auto knowledge = Knowledge::load(RHIZOGRAPH_RESOURCES "/knowledge");
    ASSERT_TRUE(knowledge.ok());
    const auto exam =
        readExamFile(RHIZOGRAPH_TEST_DATA "/cases/006-anterior-thigh-pain-weak-knee-extension.json",
                     knowledge->catalogue());
    ASSERT_TRUE(exam.ok());
    const std::string once = assessmentToJson(assess(*exam, *knowledge)).dump();
    EXPECT_EQ(once, assessmentToJson(assess(*exam, *knowledge)).dump());
}

} // namespace
} // namespace rhizograph
