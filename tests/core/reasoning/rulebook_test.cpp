#include "exam_maker.h"
#include "reasoning/localizer.h"
#include "reasoning/rulebook.h"

#include <fstream>
#include <gmock/gmock.h>
#include <map>

namespace rhizograph {
namespace {

using testing::catalogue;
using testing::ExamMaker;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

const RuleBook& rules() {
    static const Result<RuleBook> loaded = RuleBook::load(testing::knowledgeDirectory(), catalogue());
    return *loaded;
}

std::string problemText(const Problems& problems) {
    std::string out;
    for (const Problem& problem : problems)
        out += problem.text() + "\n";
    return out;
}

TEST(RuleBook, LoadsTheRulesAsShipped) {
    const auto loaded = RuleBook::load(testing::knowledgeDirectory(), catalogue());
    ASSERT_TRUE(loaded.ok()) << problemText(loaded.problems());
    EXPECT_GE(loaded->redSignIds().size(), 12U);
    EXPECT_GE(loaded->screenIds().size(), 5U);
}

TEST(RuleBook, AnEmptyExamRaisesNothingAndScreensNothing) {
    const Exam empty;
    EXPECT_THAT(rules().redSigns(empty, nullptr), IsEmpty());
    EXPECT_THAT(rules().consistency(empty), IsEmpty());
    EXPECT_EQ(rules().behavioralGroups(empty), 0);
    for (const ScreenResult& screen : rules().screens(empty))
        EXPECT_EQ(screen.verdict, ScreenVerdict::notExamined) << screen.id;
}

TEST(RuleBook, AgeAndRiskAloneLeaveAScreenNotExamined) {
    const Exam exam = ExamMaker(78, "male").none("history.smoker", "yes").none("history.diabetes", "no");
    for (const ScreenResult& screen : rules().screens(exam))
        EXPECT_EQ(screen.verdict, ScreenVerdict::notExamined) << screen.id;
}

TEST(RuleBook, EveryRedSignSaysWhenWhatAndWhereItComesFrom) {
    const Exam exam = ExamMaker(60, "male").none("history.bladder", "retention");
    const auto signs = rules().redSigns(exam, nullptr);
    ASSERT_FALSE(signs.empty());
    EXPECT_EQ(signs.front().id, "cauda_equina");
    EXPECT_EQ(signs.front().urgency, Urgency::emergency);
    EXPECT_EQ(signs.front().due, "now");
    EXPECT_THAT(signs.front().action, HasSubstr("follow the local pathway"));
    EXPECT_THAT(signs.front().source,
                HasSubstr("GIRFT National Suspected Cauda Equina Syndrome Pathway (2023)"));
    EXPECT_THAT(signs.front().because,
                ::testing::ElementsAre(FindingKey{ItemId{"history.bladder"}, Side::none}));
}

TEST(RuleBook, TheGravestSignComesFirst) {
    const Exam exam =
        ExamMaker(60, "male").none("history.cancer", "yes").none("history.bladder", "retention");
    const auto signs = rules().redSigns(exam, nullptr);
    for (std::size_t i = 1; i < signs.size(); ++i)
        EXPECT_GE(signs[i - 1].urgency, signs[i].urgency);
}

TEST(RuleBook, WarningQuestionsNotYetAnsweredAreNamed) {
    const auto open = rules().notAsked(Exam{});
    EXPECT_THAT(open, ::testing::Contains(FindingKey{ItemId{"history.bladder"}, Side::none}));
    const auto fewer = rules().notAsked(ExamMaker().none("history.bladder", "normal"));
    EXPECT_EQ(fewer.size() + 1, open.size());
}

TEST(RuleBook, AMuscleNotTestedLastTimeIsComparedWithTheLastTimeItWas) {
    const std::vector<Exam> earlier = {
        ExamMaker().left("strength.ankle_dorsiflexion", "5").left("reflex.ankle", "2"),
        ExamMaker().left("reflex.ankle", "0")};
    const Exam last = carriedForward(earlier);
    EXPECT_EQ(last.find("strength.ankle_dorsiflexion", Side::left)->value, Value::token("5"));
    EXPECT_EQ(last.find("reflex.ankle", Side::left)->value, Value::token("0"));
}

using Files = std::map<std::string, std::string>;

/// A copy of the shipped rules in which some files are replaced.
class Altered {
public:
    explicit Altered(const Files& files) {
        directory_ =
            std::filesystem::path{::testing::TempDir()} /
            ("rules_" + std::string{::testing::UnitTest::GetInstance()->current_test_info()->name()});
        std::filesystem::remove_all(directory_);
        std::filesystem::copy(testing::knowledgeDirectory(), directory_);
        for (const auto& [name, text] : files)
            std::ofstream(directory_ / name) << text;
    }
    ~Altered() { std::filesystem::remove_all(directory_); }
    Altered(const Altered&) = delete;
    Altered& operator=(const Altered&) = delete;
    [[nodiscard]] const std::filesystem::path& directory() const { return directory_; }
    [[nodiscard]] Result<RuleBook> load() const { return RuleBook::load(directory_, catalogue()); }
    [[nodiscard]] std::string problems() const {
        const auto loaded = load();
        return loaded ? "" : problemText(loaded.problems());
    }

private:
    std::filesystem::path directory_;
};

TEST(RuleBook, RefusesARedSignThatGivesAnOrderOrHasNoSource) {
    const Altered broken(Files{
        {"redsigns.json", R"({"format": "rhizograph.redsigns", "version": 1, "ask_always": ["history.bladdr"],
        "red_signs": [{"id": "a", "levels": [{"urgency": "note", "due": "soon", "when": {"item": "history.fever", "is": "hot"},
        "sentence": "s", "action": "Call now.", "source": "XYZ-99"}]}]})"}});
    const std::string text = broken.problems();
    EXPECT_THAT(text, HasSubstr("redsigns.json: /ask_always/0: no item \"history.bladdr\""));
    EXPECT_THAT(text, HasSubstr("/red_signs/0/levels/0/due: should be now"));
    EXPECT_THAT(text, HasSubstr("/red_signs/0/levels/0/when/is: \"hot\" is not on the scale"));
    EXPECT_THAT(text, HasSubstr("/red_signs/0/levels/0/action: should read"));
    EXPECT_THAT(text, HasSubstr("/red_signs/0/levels/0/source: no evidence row \"XYZ-99\""));
}

/// The findings alone tell left from right, so a mirrored exam must find a mirrored site.
TEST(Localizer, RefusesASiteThatOccursOnOneSideOnly) {
    const Altered broken(Files{{"sites.json", R"({"format": "rhizograph.sites", "version": 1, "sites": [
        {"site": "a", "label": "A", "group": "a", "sides": {"left": 0.1}, "hidden": "none", "variants": [], "source": "estimate"}]})"}});
    const auto loaded = Localizer::load(broken.directory(), catalogue());
    ASSERT_FALSE(loaded);
    EXPECT_THAT(problemText(loaded.problems()), HasSubstr("/sites/0/sides: left and right are both needed"));
}

TEST(RuleBook, RefusesAMissingFile) {
    const Altered broken(Files{{"screens.json", ""}});
    EXPECT_THAT(broken.problems(), HasSubstr("screens.json: is empty"));
}

TEST(RuleBook, RefusesAWorkUpThatOrders) {
    const Altered broken(Files{{"workup.json", R"({"format": "rhizograph.workup", "version": 1, "workup": [
        {"id": "mri", "text": "Order an MRI.", "when": {"age_at_least": 5}, "source": "common practice"}]})"}});
    EXPECT_THAT(broken.problems(), HasSubstr("/workup/0/text: should say what is \"usually considered\""));
}

/// Rules of one group look at the same thing, so they must not multiply.
TEST(Screens, OnlyTheStrongestRuleOfAGroupCountsAndATrueRuleBeatsAFalseOne) {
    const std::string head =
        R"({"format": "rhizograph.screens", "version": 1, "screens": [{"id": "hip", "label": "Hip",
        "prior": 0.1, "raised": 0.3, "high": 0.6, "lr_cap": 20, "source": "estimate", "rules": [)";
    const std::string fever =
        R"({"id": "a", "group": "g", "when": {"item": "history.fever", "is": "yes"}, "lr": 2, "else_lr": 0.1, "source": "estimate"})";
    const std::string cancer =
        R"({"id": "b", "group": "g", "when": {"item": "history.cancer", "is": "yes"}, "lr": 3, "source": "estimate"})";
    const std::string tail = "]}]}";
    const Altered files(
        Files{{"screens.json", head + fever + "," + cancer + tail},
              {"workup.json", R"({"format": "rhizograph.workup", "version": 1, "workup": []})"},
              {"codes.json", R"({"format": "rhizograph.codes", "version": 1, "system": "S", "codes": []})"}});
    const auto book = files.load();
    ASSERT_TRUE(book.ok()) << problemText(book.problems());
    const auto odds = [&](const Exam& exam) {
        const double p = book->screens(exam).front().probability;
        return p / (1 - p) * 9; // prior odds are 1 to 9
    };
    EXPECT_NEAR(odds(ExamMaker().none("history.fever", "yes").none("history.cancer", "yes")), 3, 1e-12);
    EXPECT_NEAR(odds(ExamMaker().none("history.fever", "no").none("history.cancer", "yes")), 3, 1e-12);
    EXPECT_NEAR(odds(ExamMaker().none("history.fever", "no").none("history.cancer", "no")), 0.1, 1e-12);
    EXPECT_NEAR(odds(ExamMaker().none("history.fever", "yes")), 2, 1e-12);
}

} // namespace
} // namespace rhizograph
