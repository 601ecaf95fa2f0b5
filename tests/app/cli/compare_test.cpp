#include "support/process.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <unistd.h>

namespace rhizograph::cli {
namespace {

using nlohmann::json;
using rhizograph::testing::ProcessResult;
using rhizograph::testing::runProcess;
using ::testing::HasSubstr;
using ::testing::Not;

/// Visits of one invented patient as files.
class VisitFiles : public ::testing::Test {
private:
    static std::filesystem::path madeFolder() {
        auto folder = std::filesystem::temp_directory_path() / ("visits" + std::to_string(::getpid()));
        std::filesystem::create_directory(folder);
        return folder;
    }
    std::filesystem::path folder_ = madeFolder(); // first: the visits below are written into it

protected:
    ~VisitFiles() override { std::filesystem::remove_all(folder_); }

    std::string visit(const std::string& name, const std::string& date, const json& findings) const {
        const json file{{"format", "rhizograph.exam"},
                        {"version", 1},
                        {"patient", {{"age", 54}, {"sex", "female"}}},
                        {"visit", {{"date", date}}},
                        {"findings", findings}};
        return text(name, file.dump());
    }
    std::string text(const std::string& name, const std::string& content) const {
        const auto path = folder_ / name;
        std::ofstream{path} << content;
        return path.string();
    }
    static json sided(const char* item, const char* side, const json& value) {
        return {{"item", item}, {"side", side}, {"value", value}};
    }
    static json one(const char* item, const json& value) { return {{"item", item}, {"value", value}}; }
    static ProcessResult rhizo(std::vector<std::string> words) {
        words.insert(words.begin(), RHIZO_PROGRAM);
        return runProcess(words);
    }

    std::string january = visit("a.json", "2026-01-05",
                                {sided("strength.great_toe_extension", "left", "4"), one("pain.back", 7),
                                 sided("touch.outer_shin", "left", "normal"),
                                 one("history.bladder", "normal"), sided("reflex.knee", "left", "2")});
    std::string march =
        visit("b.json", "2026-03-02",
              {sided("strength.great_toe_extension", "left", "3"), one("pain.back", 4),
               sided("touch.outer_shin", "left", "absent"), one("history.bladder", "altered")});
};

TEST_F(VisitFiles, TwoAreComparedWithEveryChangeItsThresholdAndItsSource) {
    const json out = json::parse(rhizo({"compare", january, march, "--format", "json"}).out);
    EXPECT_EQ(out.at("kind"), "visits");
    EXPECT_EQ(out.at("earlier"), "2026-01-05");
    std::map<std::string, std::string> changes;
    for (const json& item : out.at("items")) {
        changes[item.at("item")] = item.at("change");
        EXPECT_FALSE(item.at("source").get<std::string>().empty());
    }
    EXPECT_EQ(changes.at("strength.great_toe_extension"), "worse");
    EXPECT_EQ(changes.at("pain.back"), "better");
    EXPECT_EQ(changes.at("history.bladder"), "new");
    EXPECT_EQ(changes.at("reflex.knee"), "not_comparable");
    EXPECT_EQ(out.at("items").at(0).at("item"), "strength.great_toe_extension") << "a grave fall first";
    EXPECT_EQ(out.at("numb_areas").at(0).at("change"), "new");
}

TEST_F(VisitFiles, ComparedAsATableHaveAColumnForEachFieldAndTheNumbAreaToo) {
    const std::string table = rhizo({"compare", january, march, "--format", "csv"}).out;
    EXPECT_THAT(table, HasSubstr("kind,id,side,before,now,change,threshold,source,because\r\n"));
    EXPECT_THAT(table, HasSubstr("item,pain.back,,7,4,better,"));
    EXPECT_THAT(table, HasSubstr("numb_area_cm2,light_touch,left,0,"));
    EXPECT_THAT(table, HasSubstr("not examined at this visit"));
}

TEST_F(VisitFiles, ThreeMakeACourseWithAreasAndTheLeadingSite) {
    const std::string may =
        visit("c.json", "2026-05-04", json::array({sided("strength.great_toe_extension", "left", "4")}));
    const json out = json::parse(rhizo({"compare", january, march, may, "--format", "json"}).out);
    EXPECT_EQ(out.at("kind"), "trend");
    EXPECT_EQ(out.at("dates"), (json{"2026-01-05", "2026-03-02", "2026-05-04"}));
    EXPECT_EQ(out.at("numb_areas").at(0).at("cm2").size(), 3U);
    EXPECT_TRUE(out.at("numb_areas").at(0).at("cm2").at(2).is_null()) << "not examined is not zero";
    ASSERT_FALSE(out.at("sites").empty());
    EXPECT_EQ(out.at("sites").at(0).at("probability").size(), 3U);
    const std::string words = rhizo({"compare", january, march, may}).out;
    EXPECT_THAT(words, HasSubstr("4/5 → 3/5 (worse) → 4/5 (better)"));
    EXPECT_THAT(words, HasSubstr("Numb skin, light touch, left"));
    EXPECT_THAT(words, HasSubstr("Probability of"));
}

TEST_F(VisitFiles, OneIsComparedSideAgainstSide) {
    const std::string both = visit("d.json", "2026-01-05",
                                   {sided("strength.great_toe_extension", "left", "3"),
                                    sided("strength.great_toe_extension", "right", "5")});
    const json out = json::parse(rhizo({"compare", both, "--format", "json"}).out);
    EXPECT_EQ(out.at("kind"), "sides");
    EXPECT_EQ(out.at("items").at(0).at("lesser"), "left");
}

TEST_F(VisitFiles, ThatCannotBeComparedAreRefusedWithFilePlaceAndReason) {
    const std::string odd = text("odd.json", R"({"format": "rhizograph.exam", "version": 1, "findings": [
        {"item": "strength.long_gone", "side": "left", "value": "4"}]})");
    const ProcessResult unknown = rhizo({"compare", january, odd});
    EXPECT_EQ(unknown.code, 2);
    EXPECT_THAT(unknown.err, HasSubstr("odd.json"));
    EXPECT_THAT(unknown.err, HasSubstr("/findings/0"));
    EXPECT_TRUE(unknown.out.empty()) << "no half of a comparison";
    const ProcessResult order = rhizo({"compare", march, january});
    EXPECT_EQ(order.code, 2);
    EXPECT_THAT(order.err, HasSubstr("oldest first"));
    for (const std::vector<std::string>& words : {std::vector<std::string>{"compare"},
                                                  {"compare", january, "--format", "xml"},
                                                  {"compare", january, "/no/such/visit.json"},
                                                  {"compare", january, "--formats", "json"}}) {
        const ProcessResult refused = rhizo(words);
        EXPECT_EQ(refused.code, 2);
        EXPECT_FALSE(refused.err.empty());
        EXPECT_TRUE(refused.out.empty());
    }
}

std::map<std::string, std::string> redSigns(const ProcessResult& result) {
    std::map<std::string, std::string> out;
    const json assessment = json::parse(result.out);
    for (const json& sign : assessment.at("red_signs"))
        out[sign.at("id")] = sign.at("urgency");
    return out;
}

TEST_F(VisitFiles, AProgressiveDeficitIsARedSignOnlyBesideTheEarlierVisit) {
    const auto with = redSigns(rhizo({"assess", march, "--previous", january}));
    EXPECT_EQ(with.at("progressive_motor_deficit"), "urgent");
    const auto without = redSigns(rhizo({"assess", march}));
    EXPECT_FALSE(without.contains("progressive_motor_deficit"));
    const auto unchanged = redSigns(rhizo({"assess", march, "--previous", march}));
    EXPECT_FALSE(unchanged.contains("progressive_motor_deficit"));
}

TEST_F(VisitFiles, NewSaddleLossIsAnEmergencyAndFeelingAsBeforeIsNone) {
    const std::string normal =
        visit("e.json", "2026-01-05", json::array({sided("touch.perianal", "left", "normal")}));
    const std::string numb =
        visit("f.json", "2026-03-02", json::array({sided("touch.perianal", "left", "reduced")}));
    EXPECT_EQ(redSigns(rhizo({"assess", numb, "--previous", normal})).at("cauda_equina"), "emergency");
    EXPECT_FALSE(redSigns(rhizo({"assess", normal, "--previous", normal})).contains("cauda_equina"));
}

TEST_F(VisitFiles, ANewBladderFindingIsARedSignAndStandsInTheSummary) {
    EXPECT_TRUE(redSigns(rhizo({"assess", march, "--previous", january})).contains("cauda_equina"));
    const ProcessResult summary = rhizo({"summary", march, "--previous", january});
    ASSERT_EQ(summary.code, 0) << summary.err;
    EXPECT_THAT(summary.out, HasSubstr("Compared with the visit of 2026-01-05"));
    EXPECT_THAT(summary.out, HasSubstr("great-toe extension on the left 4/5 → 3/5"));
    EXPECT_THAT(rhizo({"summary", march}).out, Not(HasSubstr("Compared with")));
}

} // namespace
} // namespace rhizograph::cli
