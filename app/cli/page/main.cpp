#include "cli/load.h"
#include "cli/reply.h"
#include "cli/resources.h"
#include "page/pagedocument.h"

#include <cstdio>
#include <exception>
#include <fmt/format.h>
#include <QGuiApplication>
#include <QTemporaryDir>

// rhizo-page FILE [--previous FILE] --output PATH [--paper a4|letter] [--form full|short]:
// draws what rhizo summary writes.

namespace {

using namespace rhizograph;
using namespace rhizograph::cli;

/// An exam file names nobody: what is known of the person and the file stand on the page instead.
app::PageIdentity identityOf(const Exam& exam, const std::string& file) {
    app::PageIdentity identity;
    identity.name = QStringLiteral("Name not given");
    identity.about = app::aboutWords(exam.subject);
    identity.record = QStringLiteral("Exam file ") +
                      QString::fromStdString(printable(std::filesystem::path(file).filename().string()));
    identity.date = app::longDate(exam.date);
    return identity;
}

Result<QPageSize::PageSizeId> paperOf(const Arguments& arguments) {
    const std::string paper = arguments.option("--paper").value_or("a4");
    if (paper == "a4") return QPageSize::A4;
    if (paper == "letter") return QPageSize::Letter;
    return Problem{"", "--paper", "\"" + paper + "\" is neither a4 nor letter"};
}

Reply writePage(const Arguments& arguments) {
    const auto output = arguments.option("--output");
    if (!output) return refused({Problem{"", "--output", "a page needs a file to be written to"}});
    const auto paper = paperOf(arguments);
    if (!paper) return refused(paper.problems());
    const auto brief = briefForm(arguments);
    if (!brief) return refused(brief.problems());
    const auto knowledge = loadKnowledge();
    if (!knowledge) return failed(knowledge.problems());
    const auto visit = readVisit(arguments, knowledge->catalogue());
    if (!visit) return refused(visit.problems());
    const auto resources = findResources();
    if (!resources) return failed(resources.problems());
    auto art = app::FigureArt::load(*resources / "figures");
    if (!art) return failed(art.problems());

    const Assessment assessment = assess(visit->exam, *knowledge, visit->before());
    const Narrative whole = narrate(visit->exam, assessment, *knowledge, visit->before());
    const Narrative narrative = *brief ? inShort(whole, *knowledge) : whole;
    app::PageContent content;
    content.identity = identityOf(visit->exam, arguments.files[0]);
    content.sections = app::pageSections(narrative);
    if (!*brief) content.figures = app::pageFigures(knowledge->catalogue(), *art, visit->exam);
    if (visit->previous) app::addTrends(content, {*visit->previous, visit->exam}, *knowledge);
    content.cautions = QString::fromStdString(narrative.cautions);
    const app::PageDocument document(std::move(content),
                                     std::make_shared<const app::FigureArt>(std::move(*art)), *paper);
    const Outcome written = app::writePdf(document, QString::fromStdString(*output));
    return written ? done({}) : failed(written.problems());
}

} // namespace

int main(int argc, char* argv[]) {
    // Neither a display nor a desktop session is asked for: drawing needs fonts only.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir runtime;
    if (runtime.isValid()) qputenv("XDG_RUNTIME_DIR", runtime.path().toUtf8());
    try {
        const std::vector<std::string> words(argv + 1, argv + argc);
        int count = 1; // the words are ours, not the toolkit's
        const QGuiApplication application(count, argv);
        const auto arguments = parseArguments(words, {1, {"--previous", "--output", "--paper", "--form"}});
        const Reply reply = arguments ? writePage(*arguments) : refused(arguments.problems());
        std::fputs(reply.err.c_str(), stderr);
        return static_cast<int>(reply.code);
    } catch (const std::exception& error) {
        fmt::print(stderr, "rhizo: {}\n", printable(error.what()));
        return static_cast<int>(Exit::machine);
    }
}
