#include "support/process.h"
#include "tsfile.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <set>

namespace rhizograph::app::testing {
namespace {

using rhizograph::testing::runProcess;

QString tsFile(const QString& part, const QString& code) {
    return QStringLiteral(SOURCE_FOLDER "/translations/%1_%2.ts").arg(part, code);
}

/// The sources whose texts stand on a screen; the page is written in one language for everybody who reads the
/// chart.
std::vector<std::string> screenSources() {
    std::vector<std::string> out;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(SOURCE_FOLDER "/app")) {
        const std::string path = entry.path().string();
        const bool source = entry.path().extension() == ".cpp" || entry.path().extension() == ".h";
        const bool apart =
            path.find("/app/page/") != std::string::npos || path.find("/app/cli/") != std::string::npos;
        if (source && !apart) out.push_back(path);
    }
    return out;
}

/// The placeholders of a text, each as often as it stands there.
std::multiset<QString> placeholders(const QString& text) {
    static const QRegularExpression form(QStringLiteral("%\\d|</?b>"));
    std::multiset<QString> out;
    for (auto match = form.globalMatch(text); match.hasNext();)
        out.insert(match.next().captured());
    return out;
}

class Translation : public ::testing::TestWithParam<const char*> {};

TEST_P(Translation, LeavesNoTextOfTheScreensUntranslated) {
    const QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("screens.ts"));
    ASSERT_TRUE(QFile::copy(tsFile("screens", GetParam()), copy));
    std::vector<std::string> command{LUPDATE, "-silent", "-no-obsolete",      "-locations",
                                     "none",  "-I",      SOURCE_FOLDER "/app"};
    for (const std::string& source : screenSources())
        command.push_back(source);
    command.insert(command.end(), {"-ts", copy.toStdString()});
    const auto run = runProcess(command);
    ASSERT_EQ(run.code, 0) << run.err;
    const auto messages = messagesOf(copy);
    EXPECT_GT(messages.size(), 400u);
    for (const Message& message : messages)
        EXPECT_TRUE(message.finished && !message.translation.isEmpty())
            << message.context.toStdString() << ": " << message.source.toStdString();
}

TEST_P(Translation, KeepsEveryPlaceholder) {
    for (const char* part : {"screens", "medicine"})
        for (const Message& message : messagesOf(tsFile(part, GetParam())))
            EXPECT_EQ(placeholders(message.source), placeholders(message.translation))
                << message.source.toStdString() << " / " << message.translation.toStdString();
}

TEST_P(Translation, KeepsBlanksAtBothEndsAndTheEllipsis) {
    for (const Message& message : messagesOf(tsFile("screens", GetParam()))) {
        EXPECT_EQ(message.source.startsWith(' '), message.translation.startsWith(' '))
            << message.source.toStdString();
        EXPECT_EQ(message.source.endsWith(' '), message.translation.endsWith(' '))
            << message.source.toStdString();
        EXPECT_EQ(message.source.endsWith(u'…'), message.translation.endsWith(u'…'))
            << message.source.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Of, Translation, ::testing::Values("de", "es"),
                         [](const auto& each) { return std::string(each.param); });

} // namespace
} // namespace rhizograph::app::testing
