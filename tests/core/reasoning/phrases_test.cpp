#include "base/json.h"
#include "exam_maker.h"
#include "reasoning/phrases.h"

#include <functional>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace rhizograph {
namespace {

using rhizograph::testing::catalogue;
using ::testing::HasSubstr;

std::string phraseText() {
    return *readTextFile(rhizograph::testing::knowledgeDirectory() / "phrases.json");
}

/// The reason for which a phrase file is refused after `change`.
std::string refusal(const std::function<void(nlohmann::ordered_json&)>& change) {
    auto json = nlohmann::ordered_json::parse(phraseText());
    change(json);
    const auto book = PhraseBook::parse(json.dump(), "phrases.json", catalogue());
    if (book) return {};
    std::string out;
    for (const Problem& problem : book.problems())
        out += problem.text() + "\n";
    return out;
}

TEST(Phrases, EveryItemOfTheCatalogueHasAFamilyAndAName) {
    const auto book = PhraseBook::parse(phraseText(), "phrases.json", catalogue());
    ASSERT_TRUE(book.ok()) << book.problems().front().text();
    for (const Item& item : catalogue().items()) {
        EXPECT_LT(book->item(item.id).family, book->families().size());
        EXPECT_FALSE(book->item(item.id).name.empty()) << item.id.text();
    }
}

TEST(Phrases, AFileThatWouldSpeakWronglyIsRefusedWithItsPlace) {
    EXPECT_THAT(refusal([](auto& j) {
                    j["items"]["no.such_item"] = {{"name", "x"}};
                }),
                HasSubstr("no such item"));
    EXPECT_THAT(refusal([](auto& j) { j["items"]["tone.leg"]["values"]["stiff"] = "x"; }),
                HasSubstr("not on the scale"));
    EXPECT_THAT(refusal([](auto& j) { j["items"]["gait.pattern"]["values"].erase("stooped"); }),
                HasSubstr("needs words for its value \"stooped\""));
    EXPECT_THAT(refusal([](auto& j) { j["forms"]["power"]["pair"] = "{name} {value}"; }),
                HasSubstr("unknown place {name}"));
    EXPECT_THAT(refusal([](auto& j) { j["forms"]["power"]["pair"] = "{names"; }),
                HasSubstr("a { without its }"));
    EXPECT_THAT(refusal([](auto& j) { j["families"][0]["form"] = "song"; }),
                HasSubstr("no such entry \"song\""));
    EXPECT_THAT(refusal([](auto& j) { j["words"].erase("cautions"); }), HasSubstr("cautions"));
    EXPECT_THAT(refusal([](auto& j) { j["families"].erase(j["families"].begin() + 9); }),
                HasSubstr("no family for item"));
    EXPECT_THAT(refusal([](auto& j) { j["version"] = 2; }), HasSubstr("version is not 1"));
}

TEST(FillPhrase, PutsValuesInTheirPlacesAndCountsNames) {
    PhraseFields fields;
    fields.text = {{"names", "knee and ankle"}, {"side", "left"}};
    fields.count = 2;
    EXPECT_EQ(fillPhrase("{side} {names} {reflex|reflexes}{value}", fields), "left knee and ankle reflexes");
    fields.count = 1;
    EXPECT_EQ(fillPhrase("{reflex|reflexes}", fields), "reflex");
}

TEST(LowerFirst, LeavesAbbreviationsAlone) {
    EXPECT_EQ(lowerFirst("Femoral nerve"), "femoral nerve");
    EXPECT_EQ(lowerFirst("L5 root"), "L5 root");
    EXPECT_EQ(lowerFirst(""), "");
}

} // namespace
} // namespace rhizograph
