#include "reasoning/eventkinds.h"

#include <algorithm>
#include <fstream>
#include <gmock/gmock.h>
#include <unistd.h>

namespace rhizograph {
namespace {

using ::testing::HasSubstr;

/// What is wrong with a file of this content; empty where nothing is.
std::string wrongWith(const std::string& content) {
    const auto file = std::filesystem::temp_directory_path() / ("kinds" + std::to_string(::getpid()));
    std::ofstream{file} << content;
    const auto read = loadEventKinds(file);
    std::filesystem::remove(file);
    std::string out;
    if (!read)
        for (const Problem& problem : read.problems())
            out += problem.text() + "\n";
    return out;
}

TEST(EventKinds, AreShippedWithAFollowUpThatIsAwaited) {
    const auto kinds =
        loadEventKinds(std::filesystem::path{RHIZOGRAPH_RESOURCES} / "knowledge" / "events.json");
    ASSERT_TRUE(kinds.ok());
    EXPECT_EQ(std::count_if(kinds->begin(), kinds->end(), [](const EventKind& kind) { return kind.awaited; }),
              1);
    for (const EventKind& kind : *kinds) {
        EXPECT_FALSE(kind.label.empty());
        EXPECT_FALSE(kind.source.empty());
    }
}

TEST(EventKinds, ThatAreDoubledNamelessOrStrangeAreRefusedWithTheirPlace) {
    const std::string head = R"({"format": "rhizograph.events", "version": 1, "kinds": [)";
    const std::string one = R"({"id": "a", "label": "A", "source": "estimate"})";
    EXPECT_EQ(wrongWith(head + one + "]}"), "");
    EXPECT_THAT(wrongWith(head + one + "," + one + "]}"), HasSubstr("/kinds/1/id"));
    EXPECT_THAT(wrongWith(head + R"({"id": "a", "label": "", "source": "estimate"}]})"),
                HasSubstr("/kinds/0"));
    EXPECT_THAT(wrongWith(head + R"({"id": "a", "label": "A", "source": "estimate", "color": "red"}]})"),
                HasSubstr("color"));
    EXPECT_THAT(wrongWith(head + "]}"), HasSubstr("/kinds"));
    EXPECT_NE(wrongWith("{"), "");
}

} // namespace
} // namespace rhizograph
