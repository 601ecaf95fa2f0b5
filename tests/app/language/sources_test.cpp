#include "support/process.h"
#include "tsfile.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTranslator>
#include <set>

namespace rhizograph::app::testing {
namespace {

using rhizograph::testing::runProcess;

QString tsFile(const QString& part, const QString& code) {
    return QStringLiteral(SOURCE_FOLDER "/resources/translations/%1_%2.ts").arg(part, code);
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

/// A text the code asks for, and the contexts in which it may be asked for at run time.
struct AskedText {
    std::string file;
    QString text;
    QStringList contexts;
};

/// What stands between the quotes of one or more literals side by side, as the compiler reads it.
QString literal(const QString& written) {
    static const QRegularExpression part(QStringLiteral(R"re("((?:[^"\\]|\\.)*)")re"));
    QString out;
    for (auto match = part.globalMatch(written); match.hasNext();)
        out += match.next().captured(1);
    return out.replace(QLatin1String("\\n"), QLatin1String("\n"))
        .replace(QLatin1String("\\\""), QLatin1String("\""));
}

/// Every tr() of a file. A function tr() of the file's own names its context itself; that of a class has the
/// class's name. Where a file holds both, either may answer.
std::vector<AskedText> askedIn(const std::string& path) {
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error("cannot read " + path);
    const QString code = QString::fromUtf8(file.readAll());
    static const QRegularExpression own(
        QStringLiteral(R"re(translate\("([^"]+)",\s*[a-z]+\))re")); // of a variable: a tr() of its own
    static const QRegularExpression named(
        QStringLiteral(R"re(\b([A-Z]\w*)(?:::\w+)*::~?\w+\(|class (\w+))re"));
    static const QRegularExpression asked(
        QStringLiteral(R"re((?:\b(\w+)::)?\btr\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+))re"));
    const QString ours = QStringLiteral("rhizograph::app::");
    QStringList contexts;
    for (auto match = own.globalMatch(code); match.hasNext();)
        contexts << match.next().captured(1);
    for (auto match = named.globalMatch(code); match.hasNext();) {
        const auto found = match.next();
        const QString name = found.captured(1).isEmpty() ? found.captured(2) : found.captured(1);
        contexts << ours + name;
    }
    contexts.removeDuplicates();
    std::vector<AskedText> out;
    for (auto match = asked.globalMatch(code); match.hasNext();) {
        const auto found = match.next();
        const QString of = found.captured(1);
        out.push_back({path, literal(found.captured(2)),
                       of.isEmpty() ? contexts : QStringList{of == u"QObject" ? of : ours + of}});
    }
    return out;
}

TEST_P(Translation, IsFoundAtRunTimeForEveryTextTheCodeAsksFor) {
    QTranslator words;
    ASSERT_TRUE(words.load(QStringLiteral(":/languages/screens_%1.qm").arg(QLatin1String(GetParam()))));
    int asked = 0;
    for (const std::string& source : screenSources())
        for (const AskedText& each : askedIn(source)) {
            ++asked;
            EXPECT_TRUE(std::ranges::any_of(
                each.contexts,
                [&](const QString& context) {
                    return !words.translate(context.toUtf8().constData(), each.text.toUtf8().constData())
                                .isEmpty();
                }))
                << each.file << ": " << each.text.toStdString() << " in "
                << each.contexts.join(", ").toStdString();
        }
    std::printf("[ language ] %s: %d texts asked for by the code\n", GetParam(), asked);
    EXPECT_GT(asked, 700);
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
