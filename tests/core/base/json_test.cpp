#include "base/json.h"

#include <gtest/gtest.h>

namespace rhizograph {
namespace {

Problems problemsOf(const std::string& text, const JsonLimits& limits = {}) {
    const auto result = parseJson(text, "t.json", limits);
    return result ? Problems{} : result.problems();
}

TEST(ParseJson, NamesEveryDuplicateKeyWithItsPath) {
    const Problems problems = problemsOf(R"({"a": 1, "list": [{"k": 1}, {"k": 1, "k": 2}], "a": 2})");
    ASSERT_EQ(problems.size(), 2U);
    EXPECT_EQ(problems[0].place, "/list/1/k");
    EXPECT_EQ(problems[1].place, "/a");
}

TEST(ParseJson, TheSameKeyInTwoObjectsIsNoDuplicate) {
    EXPECT_TRUE(problemsOf(R"([{"k": 1}, {"k": {"k": 2}}])").empty());
}

TEST(ParseJson, RefusesAByteOrderMark) {
    const Problems problems = problemsOf("\xEF\xBB\xBF{}");
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_NE(problems[0].reason.find("byte order mark"), std::string::npos);
}

TEST(ParseJson, TellsLineAndColumnOfASyntaxError) {
    const Problems problems = problemsOf("{\"a\": 1,\n  oops}");
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].place.rfind("line 2, column ", 0), 0U) << problems[0].place;
}

TEST(ParseJson, RefusesNestingBeyondTheLimitNamingThePlace) {
    EXPECT_TRUE(problemsOf("[[[1]]]", {1000, 3}).empty());
    const Problems problems = problemsOf("[[[[1]]]]", {1000, 3});
    ASSERT_EQ(problems.size(), 1U);
    EXPECT_EQ(problems[0].place, "/0/0/0");
}

TEST(ParseJson, RefusesWhatIsNoFiniteNumberAndWhatIsNoUtf8) {
    for (const char* bad :
         {"NaN", "Infinity", "1e999", "-1e999", "[1,]", "\"\xC3\x28\"", "\"\xED\xA0\x80\"", "{} {}", " ", ""})
        EXPECT_EQ(problemsOf(bad).size(), 1U) << bad;
}

} // namespace
} // namespace rhizograph
