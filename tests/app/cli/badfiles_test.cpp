#include "support/process.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <functional>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

/// A kind of file that must be refused: what it holds (or how it is made) and a part of the message.
struct BadFile {
    const char* name;
    std::function<std::string()> text;
    const char* message;
    int problems = 1;
};

std::string exam(const std::string& findings, const std::string& more = "") {
    return R"({"format": "rhizograph.exam", "version": 1, )" + more + R"("findings": [)" + findings + "]}";
}

std::function<std::string()> is(const std::string& text) {
    return [text] { return text; };
}

std::string repeated(const std::string& part, int times) {
    std::string out;
    for (int i = 0; i < times; ++i)
        out += part;
    return out;
}

const std::string goodFinding = R"({"item": "pain.back", "value": 4})";

const std::vector<BadFile>& badFiles() {
    static const std::vector<BadFile> all = {
        {"Empty", is(""), "is empty"},
        {"OnlyBlanks", is(" \n\t\n"), "is empty"},
        {"TruncatedInAList", is(R"({"format": "rhizograph.exam", "version": 1, "findings": [)"),
         "not valid JSON"},
        {"TruncatedInAString", is(R"({"format": "rhizograph.ex)"), "not valid JSON"},
        {"TrailingText", is(exam("") + " and more"), "not valid JSON"},
        {"TwoDocuments", is(exam("") + exam("")), "not valid JSON"},
        {"TrailingComma", is(exam(goodFinding + ",")), "not valid JSON"},
        {"Comment", is("// an exam\n" + exam("")), "not valid JSON"},
        {"SingleQuotes", is("{'format': 'rhizograph.exam'}"), "not valid JSON"},
        {"Xml", is("<exam/>"), "not valid JSON"},
        {"Null", is("null"), "should be an object"},
        {"List", is("[]"), "should be an object"},
        {"Number", is("42"), "should be an object"},
        {"FormatMissing", is(R"({"version": 1, "findings": []})"), "\"format\" is missing"},
        {"FormatForeign", is(R"({"format": "other.exam", "version": 1, "findings": []})"), "/format"},
        {"VersionNewer", is(R"({"format": "rhizograph.exam", "version": 2, "findings": []})"), "/version"},
        {"VersionAsText", is(R"({"format": "rhizograph.exam", "version": "1", "findings": []})"), "/version"},
        {"FindingsMissing", is(R"({"format": "rhizograph.exam", "version": 1})"), "\"findings\" is missing"},
        {"FindingsNull", is(R"({"format": "rhizograph.exam", "version": 1, "findings": null})"), "/findings"},
        {"FindingsAnObject", is(R"({"format": "rhizograph.exam", "version": 1, "findings": {}})"),
         "/findings"},
        {"FindingsOfWrongTypes", is(exam("1, null, \"x\", []")), "/findings/3: should be an object", 4},
        {"UnknownItem", is(exam(R"({"item": "strength.elbow_flexion", "side": "left", "value": "5"})")),
         "/findings/0/item"},
        {"UnknownItems", is(exam(R"({"item": "a", "value": 1}, {"item": "b", "value": 1})")),
         "/findings/1/item", 2},
        {"SameItemTwice", is(exam(goodFinding + "," + goodFinding)), "/findings/1"},
        {"SameKeyTwice", is(exam(R"({"item": "pain.back", "item": "pain.back", "value": 4})")),
         "stands twice"},
        {"SideMissing", is(exam(R"({"item": "reflex.knee", "value": "2"})")), "\"side\" is missing"},
        {"SideSuperfluous", is(exam(R"({"item": "pain.back", "side": "left", "value": 4})")),
         "/findings/0/side"},
        {"SideUnknown", is(exam(R"({"item": "reflex.knee", "side": "links", "value": "2"})")),
         "/findings/0/side"},
        {"GradeOffScale", is(exam(R"({"item": "strength.hip_flexion", "side": "left", "value": "3+"})")),
         "/findings/0/value"},
        {"GradeAsNumber", is(exam(R"({"item": "reflex.knee", "side": "left", "value": 2})")),
         "/findings/0/value"},
        {"NumberAsText", is(exam(R"({"item": "pain.back", "value": "four"})")), "/findings/0/value"},
        {"NumberOutOfRange", is(exam(R"({"item": "pain.back", "value": 11})")), "outside 0 to 10"},
        {"NotANumber", is(exam(R"({"item": "pain.back", "value": NaN})")), "not valid JSON"},
        {"Infinite", is(exam(R"({"item": "pain.back", "value": 1e999})")), "line 1"},
        {"HugeWholeNumber", is(exam(R"({"item": "pain.back", "value": 99999999999999999999999999})")),
         "outside"},
        {"NullValue", is(exam(R"({"item": "pain.back", "value": null})")), "/findings/0/value"},
        {"NullEverywhere",
         is(exam(R"({"item": null, "side": null, "value": null})", R"("patient": null, "visit": null, )")),
         "/patient", 3},
        {"NotTestableWithoutReason", is(exam(R"({"item": "pain.back", "value": "not_testable"})")),
         "\"because\" is missing"},
        {"AgeOfAncients", is(exam("", R"("patient": {"age": 969}, )")), "/patient/age"},
        {"SexAsNumber", is(exam("", R"("patient": {"sex": 1}, )")), "/patient/sex"},
        {"DayThatIsNone", is(exam("", R"("visit": {"date": "2026-02-30"}, )")), "/visit/date"},
        {"InvalidUtf8",
         is(exam(R"({"item": "history.complaint", "value": ")"
                 "\xC3\x28"
                 R"("})")),
         "UTF-8"},
        {"LoneSurrogate", is(exam(R"({"item": "history.complaint", "value": "\ud800"})")), "not valid JSON"},
        {"ByteOrderMark", is("\xEF\xBB\xBF" + exam("")), "byte order mark"},
        {"Utf16", is(std::string("\xFF\xFE{\0}\0", 6)), "not valid JSON"},
        {"Binary",
         is(std::string("\0\1\2\3\x7F"
                        "ELF",
                        8)),
         "not valid JSON"},
        {"NestedDeeply", [] { return repeated("[", 200000); }, "nested too deeply"},
        {"NestedInAFinding",
         [] {
             return exam(R"({"item": "pain.back", "value": )" + repeated("[", 100) + repeated("]", 100) +
                         "}");
         },
         "nested too deeply"},
        {"FiftyMegabytes", [] { return exam("", "\"x\": \"" + std::string(50U << 20U, 'x') + "\", "); },
         "more than the limit"},
        {"LongUnknownName",
         [] { return exam(R"({"item": ")" + std::string(1U << 20U, 'a') + R"(", "value": 1})"); }, "…"},
        {"ControlCharactersInAName", is(exam(R"({"item": "\u001b[2J\u0007", "value": 1})")), "\\x1B[2J\\x07"},
    };
    return all;
}

class RefusedByTheProgram : public ::testing::TestWithParam<std::string> {
protected:
    void SetUp() override {
        folder_ = fs::temp_directory_path() /
                  ("rhizo-bad-" + std::to_string(getpid()) + "-" + std::to_string(counter_++));
        fs::create_directories(folder_);
    }
    void TearDown() override { fs::remove_all(folder_); }

    [[nodiscard]] std::string path(const std::string& name) const { return (folder_ / name).string(); }

    std::string written(const std::string& text) const {
        std::ofstream(path("exam.json"), std::ios::binary) << text;
        return path("exam.json");
    }

    [[nodiscard]] testing::ProcessResult run(const std::string& file, uid_t user = 0) const {
        return testing::runProcess({RHIZO_PROGRAM, GetParam(), file}, {{}, user, {}});
    }

    static void expectRefused(const testing::ProcessResult& result, const std::string& message, int problems,
                              const std::string& what) {
        EXPECT_EQ(result.signal, 0) << what;
        EXPECT_EQ(result.code, 2) << what << ": " << result.err.substr(0, 500);
        EXPECT_EQ(result.out, "") << what;
        EXPECT_THAT(result.err, HasSubstr(message)) << what;
        EXPECT_EQ(std::count(result.err.begin(), result.err.end(), '\n'), problems)
            << what << ": " << result.err;
        EXPECT_LT(result.err.size(), 10000U) << what;
    }

private:
    fs::path folder_;
    inline static int counter_ = 0;
};

TEST_P(RefusedByTheProgram, EveryKindOfBadFileGivesItsMessageAndNothingElse) {
    for (const BadFile& bad : badFiles())
        expectRefused(run(written(bad.text())), bad.message, bad.problems, bad.name);
    std::printf("%s: %zu kinds of bad file tried, each refused unless a failure is shown\n",
                GetParam().c_str(), badFiles().size());
}

TEST_P(RefusedByTheProgram, WhatIsNoRegularFileIsRefused) {
    expectRefused(run(path("missing.json")), "no such file", 1, "missing");
    expectRefused(run(path("")), "is a directory", 1, "directory");
    expectRefused(run("/dev/zero"), "not a regular file", 1, "device");
    ASSERT_EQ(mkfifo(path("pipe").c_str(), 0600), 0);
    expectRefused(run(path("pipe")), "not a regular file", 1, "pipe");
    fs::create_symlink(path("loop"), path("loop"));
    expectRefused(run(path("loop")), "cannot be reached", 1, "link to itself");
    expectRefused(run(path(std::string(5000, 'n'))), "…: no such file, or it cannot be reached", 1,
                  "name too long");
}

TEST_P(RefusedByTheProgram, AFileWithoutPermissionIsRefused) {
    const std::string file = written(exam(""));
    fs::permissions(file, fs::perms::none);
    constexpr uid_t nobody = 65534;
    const auto result = run(file, geteuid() == 0 ? nobody : 0);
    if (result.code == 127) GTEST_SKIP() << "another user cannot start the program here";
    expectRefused(result, "cannot be read", 1, "no permission");
}

INSTANTIATE_TEST_SUITE_P(Rhizo, RefusedByTheProgram, ::testing::Values("check", "assess"),
                         [](const auto& given) { return given.param; });

} // namespace
} // namespace rhizograph
