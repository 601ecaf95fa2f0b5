#include "cli/arguments.h"
#include "cli/commands.h"
#include "cli/reply.h"
#include "support/process.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace rhizograph::cli {
namespace {

using rhizograph::testing::ProcessResult;
using rhizograph::testing::runProcess;
using ::testing::HasSubstr;

ProcessResult rhizo(std::vector<std::string> words, const rhizograph::testing::ProcessOptions& options = {}) {
    words.insert(words.begin(), RHIZO_PROGRAM);
    return runProcess(words, options);
}

const std::string anExam = RHIZOGRAPH_TEST_DATA "/cases/001-posterior-calf-lateral-foot-sensory-only.json";

TEST(Arguments, OptionsStandAnywhereAndTakeTheirValueEitherWay) {
    const Syntax syntax{1, {"--previous", "--format"}};
    const auto read = parseArguments({"--previous", "a", "b", "--format=c"}, syntax);
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read->files, std::vector<std::string>{"b"});
    EXPECT_EQ(read->option("--previous"), "a");
    EXPECT_EQ(read->option("--format"), "c");
    EXPECT_EQ(read->option("--output"), std::nullopt);
}

TEST(Arguments, AllAfterTwoDashesIsPlain) {
    const auto read = parseArguments({"--", "--previous"}, {1, {"--previous"}});
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(read->files, std::vector<std::string>{"--previous"});
}

TEST(Arguments, UnknownRepeatedAndEmptyOptionsAreAllTold) {
    const auto read = parseArguments({"--odd", "--p", "1", "--p=2", "--q="}, {0, {"--p", "--q"}});
    ASSERT_FALSE(read.ok());
    ASSERT_EQ(read.problems().size(), 3U);
    EXPECT_THAT(read.problems()[0].reason, HasSubstr("unknown option --odd"));
    EXPECT_THAT(read.problems()[1].reason, HasSubstr("given twice"));
    EXPECT_THAT(read.problems()[2].reason, HasSubstr("needs a value"));
}

TEST(Printable, KeepsLettersOfAllTonguesAndEscapesWhatATerminalWouldObey) {
    EXPECT_EQ(printable("Grüße 4−"), "Grüße 4−");
    EXPECT_EQ(printable("a\x1B[2J\nb"), "a\\x1B[2J\\x0Ab");
    EXPECT_EQ(printable("\xC2\x9B\xFF\xE2\x82"), "\\xC2\\x9B\\xFF\\xE2\\x82");
    EXPECT_EQ(printable(std::string(500, 'x'), 10), "xxxxxxxxxx …");
}

TEST(Rhizo, HelpNamesEveryCommandAndDefersToTheClinician) {
    const ProcessResult help = rhizo({"--help"});
    EXPECT_EQ(help.code, 0);
    for (const Command& command : commands())
        EXPECT_THAT(help.out, HasSubstr("rhizo " + command.name));
    EXPECT_THAT(help.out, HasSubstr("not a diagnosis"));
}

TEST(Rhizo, ACommandLineItCannotReadIsRefusedWithOneReason) {
    for (const std::vector<std::string>& words : {std::vector<std::string>{},
                                                  {"asess"},
                                                  {"check"},
                                                  {"check", "a", "b"},
                                                  {"check", "--odd", anExam},
                                                  {"catalogue", "x"}}) {
        const ProcessResult result = rhizo(words);
        EXPECT_EQ(result.code, 2);
        EXPECT_EQ(result.out, "");
        EXPECT_THAT(result.err, HasSubstr("see rhizo --help"));
    }
}

TEST(Rhizo, AMissingInstallationIsAFailureOfTheMachine) {
    const ProcessResult result = rhizo({"check", anExam}, {{"RHIZOGRAPH_RESOURCES=/nowhere"}, 0, {}});
    EXPECT_EQ(result.code, 1);
    EXPECT_EQ(result.out, "");
    EXPECT_THAT(result.err, HasSubstr("/nowhere"));
}

TEST(Rhizo, AFullDiskUnderItsOutputIsAFailureOfTheMachine) {
    const ProcessResult result = rhizo({"catalogue"}, {{}, 0, "/dev/full"});
    EXPECT_EQ(result.code, 1);
    EXPECT_THAT(result.err, HasSubstr("standard output"));
}

TEST(Rhizo, AValidExamIsSaidToBeValid) {
    const ProcessResult result = rhizo({"check", anExam});
    EXPECT_EQ(result.code, 0);
    EXPECT_EQ(result.err, "");
    EXPECT_THAT(result.out, HasSubstr("valid, 47 findings"));
}

TEST(Rhizo, AssessPrintsTheContractAsJsonAndNothingElse) {
    const ProcessResult result = rhizo({"assess", anExam});
    EXPECT_EQ(result.code, 0) << result.err;
    EXPECT_EQ(result.err, "");
    const auto json = nlohmann::json::parse(result.out);
    EXPECT_EQ(json["format"], "rhizograph.assessment");
    EXPECT_EQ(json["localization"][0]["site"], "root.S1");
    EXPECT_EQ(json["localization"][0]["side"], "right");
}

TEST(Rhizo, TheProblemsOfBothVisitsAreListedTogether) {
    const ProcessResult result = rhizo({"assess", "/nowhere/a.json", "--previous", "/nowhere/b.json"});
    EXPECT_EQ(result.code, 2);
    EXPECT_THAT(result.err, HasSubstr("a.json"));
    EXPECT_THAT(result.err, HasSubstr("b.json"));
}

TEST(Rhizo, ExplainSaysTheSiteItsReasonsAndTheCaution) {
    const ProcessResult result = rhizo({"explain", anExam});
    EXPECT_EQ(result.code, 0) << result.err;
    EXPECT_THAT(result.out, HasSubstr("S1 root, right"));
    EXPECT_THAT(result.out, HasSubstr("decibans"));
    EXPECT_THAT(result.out, HasSubstr("not a diagnosis"));
}

} // namespace
} // namespace rhizograph::cli
