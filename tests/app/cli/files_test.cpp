#include "support/process.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <iterator>
#include <nlohmann/json.hpp>

namespace rhizograph::cli {
namespace {

namespace fs = std::filesystem;
using rhizograph::testing::ProcessResult;
using rhizograph::testing::runProcess;
using ::testing::HasSubstr;
using ::testing::StartsWith;

ProcessResult rhizo(std::vector<std::string> words) {
    words.insert(words.begin(), RHIZO_PROGRAM);
    return runProcess(words, {});
}

const std::string anExam = RHIZOGRAPH_TEST_DATA "/cases/textbook/root-L5.json";

class RhizoFiles : public ::testing::Test {
protected:
    RhizoFiles() {
        std::string pattern = (fs::temp_directory_path() / "summary.XXXXXX").string();
        folder_ = ::mkdtemp(pattern.data());
    }
    ~RhizoFiles() override { fs::remove_all(folder_); }
    fs::path folder_;
};

TEST_F(RhizoFiles, ASummaryStandsOnStandardOutputUnlessAFileIsNamed) {
    const ProcessResult shown = rhizo({"summary", anExam});
    ASSERT_EQ(shown.code, 0) << shown.err;
    EXPECT_THAT(shown.out, StartsWith("45 years, female, visit of 2026-01-05\n"));
    EXPECT_THAT(shown.out, HasSubstr("Reflexes 2+ and symmetric at knees and ankles."));
    EXPECT_THAT(shown.out, HasSubstr("not a diagnosis"));
    const fs::path file = folder_ / "summary.txt";
    const ProcessResult written = rhizo({"summary", anExam, "--format", "text", "--output", file.string()});
    EXPECT_EQ(written.code, 0) << written.err;
    EXPECT_EQ(written.out, "");
    std::ifstream stream{file};
    EXPECT_EQ((std::string{std::istreambuf_iterator<char>{stream}, {}}), shown.out);
    EXPECT_EQ(fs::status(file).permissions(), fs::perms::owner_read | fs::perms::owner_write);
}

TEST_F(RhizoFiles, AnUnknownSummaryFormatIsRefusedAndNothingIsWritten) {
    const fs::path file = folder_ / "summary.xyz";
    const ProcessResult result = rhizo({"summary", anExam, "--format", "xyz", "--output", file.string()});
    EXPECT_EQ(result.code, 2);
    EXPECT_THAT(result.err, HasSubstr("xyz"));
    EXPECT_FALSE(fs::exists(file));
}

TEST_F(RhizoFiles, APlaceThatCannotBeWrittenIsToldAndLeavesNothingBehind) {
    const ProcessResult folder = rhizo({"summary", anExam, "--output", folder_.string()});
    EXPECT_EQ(folder.code, 1);
    EXPECT_THAT(folder.err, HasSubstr("is a folder"));
    const ProcessResult nowhere = rhizo({"summary", anExam, "--output", (folder_ / "no" / "such").string()});
    EXPECT_EQ(nowhere.code, 1);
    EXPECT_THAT(nowhere.err, HasSubstr("cannot be written"));
    EXPECT_TRUE(fs::is_empty(folder_));
}

TEST_F(RhizoFiles, ADemoClinicIsMadeOnceAndPrintsWhoMaySignIn) {
    const fs::path file = folder_ / "demo.clinic";
    const ProcessResult made = rhizo({"demo", "--database", file.string()});
    ASSERT_EQ(made.code, 0) << made.err;
    EXPECT_THAT(made.out, HasSubstr("invented patients"));
    EXPECT_THAT(made.out, HasSubstr("Passphrase of everyone: "));
    for (const char* role : {"(nurse)", "(clinician)", "(reviewer)", "(administrator)"})
        EXPECT_THAT(made.out, HasSubstr(role));
    const auto size = fs::file_size(file);
    const ProcessResult again = rhizo({"demo", "--database", file.string()});
    EXPECT_EQ(again.code, 2);
    EXPECT_THAT(again.err, HasSubstr("exists already"));
    EXPECT_EQ(fs::file_size(file), size);
    EXPECT_EQ(rhizo({"demo"}).code, 2);
}

TEST_F(RhizoFiles, ComparingTakesOneTwoOrMoreVisitsInThreeFormats) {
    const std::string other = RHIZOGRAPH_TEST_DATA "/cases/textbook/none.json";
    for (const auto& visits : {std::vector<std::string>{anExam}, {anExam, other}, {anExam, other, anExam}})
        for (const char* format : {"text", "json", "csv"}) {
            std::vector<std::string> words{"compare", "--format", format};
            words.insert(words.end(), visits.begin(), visits.end());
            const ProcessResult result = rhizo(words);
            ASSERT_EQ(result.code, 0) << result.err;
            EXPECT_THAT(result.out,
                        HasSubstr(format == std::string{"text"} ? "great-toe extension"
                                                                : "strength.great_toe_extension"));
            if (format == std::string{"json"}) {
                EXPECT_EQ(nlohmann::json::parse(result.out).at("format"), "rhizograph.comparison");
            }
        }
    EXPECT_THAT(rhizo({"compare", anExam, other}).out,
                HasSubstr("great-toe extension on the left 3/5 → 5/5"));
}

TEST_F(RhizoFiles, ComparingRefusesVisitsThatAreNotOldestFirst) {
    const fs::path later = folder_ / "later.json";
    std::ofstream{later}
        << R"({"format": "rhizograph.exam", "version": 1, "visit": {"date": "2026-06-01"}, "findings": []})";
    const ProcessResult result = rhizo({"compare", later.string(), anExam});
    EXPECT_EQ(result.code, 2);
    EXPECT_THAT(result.err, HasSubstr("oldest first"));
    EXPECT_EQ(rhizo({"compare", anExam, "--format", "xml"}).code, 2);
}

} // namespace
} // namespace rhizograph::cli
