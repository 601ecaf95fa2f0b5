#include "sample.h"

#include <gtest/gtest.h>
#include <QFile>

// The finished file as other programs read it (Poppler's pdftotext, pdffonts, pdfinfo).

namespace rhizograph::app {
namespace {

TEST(PageFile, HoldsThePositivesFirstAndInReadingOrder) {
    const PageContent content = contentOf("textbook/cauda-equina.json");
    const QString words = PdfFile(PageDocument(content, figures())).words();
    qsizetype from = 0;
    int found = 0;
    for (const PageSection& section : content.sections) {
        if (section.bold.isEmpty()) continue;
        // Words as far as no line break or page break can cut them.
        const QString first = section.bold.simplified().section(u' ', 0, 2);
        const auto at = words.indexOf(first, from);
        ASSERT_GE(at, 0) << section.title.toStdString() << ": " << first.toStdString();
        from = at;
        ++found;
    }
    EXPECT_GT(found, 3);
}

TEST(PageFile, IsFoundByASearchForWordsWithLettersThatLikeToJoin) {
    PageContent content = contentOf("textbook/root-L5.json");
    content.plan = "Reflexes, flexion, difficult stairs, office.";
    const QString words = PdfFile(PageDocument(content, figures())).words();
    EXPECT_TRUE(words.contains("Reflexes, flexion, difficult stairs, office."));
}

TEST(PageFile, EmbedsEveryFont) {
    const std::string table =
        PdfFile(PageDocument(contentOf("textbook/root-L5.json"), figures())).tool("pdffonts");
    QStringList lines = QString::fromStdString(table).split(u'\n', Qt::SkipEmptyParts);
    ASSERT_GE(lines.size(), 3); // two lines of heading
    for (const QString& line : lines.mid(2)) {
        const QStringList columns = line.simplified().split(u' ');
        // name, type (one or two words), encoding, emb, sub, uni, object, generation
        EXPECT_EQ(columns.at(columns.size() - 5), "yes") << line.toStdString();
    }
}

TEST(PageFile, IsAsLargeAsThePaperAskedFor) {
    // ISO 216: A4 is 210 mm by 297 mm, 595 by 842 points; a US letter is 8.5 by 11 inches, 612 by 792 points.
    const auto size = [](QPageSize::PageSizeId paper) {
        return PdfFile(PageDocument(contentOf("textbook/root-L5.json"), figures(), paper)).tool("pdfinfo");
    };
    EXPECT_NE(size(QPageSize::A4).find("595 x 842 pts"), std::string::npos);
    EXPECT_NE(size(QPageSize::Letter).find("612 x 792 pts"), std::string::npos);
}

TEST(PageFile, IsReadableByItsOwnerAlone) {
    const PdfFile file(PageDocument(contentOf("textbook/root-L5.json"), figures()));
    const auto others =
        QFileDevice::ReadGroup | QFileDevice::WriteGroup | QFileDevice::ReadOther | QFileDevice::WriteOther;
    EXPECT_FALSE(QFile::permissions(QString::fromStdString(file.path())) & others);
}

TEST(PageFile, SaysWhyItCannotBeWritten) {
    const Outcome written =
        writePdf(PageDocument(contentOf("textbook/root-L5.json"), figures()), "/nowhere/page.pdf");
    ASSERT_FALSE(written.ok());
    EXPECT_EQ(written.problems().front().file, "/nowhere/page.pdf");
    EXPECT_FALSE(written.problems().front().reason.empty());
}

TEST(RhizoSummary, WritesAPageWithoutDisplayOrSessionAndWithoutAWord) {
    const QTemporaryDir folder;
    const std::string target = folder.filePath("page.pdf").toStdString();
    const auto result = rhizograph::testing::runProcess(
        {"/usr/bin/env", "-u", "XDG_RUNTIME_DIR", "-u", "QT_QPA_PLATFORM", "-u", "DISPLAY", RHIZO_PROGRAM,
         "summary", RHIZOGRAPH_TEST_DATA "/cases/textbook/root-L5.json", "--format", "pdf", "--output",
         target});
    EXPECT_EQ(result.code, 0);
    EXPECT_EQ(result.err, "");
    EXPECT_EQ(result.out, "");
    QFile file(QString::fromStdString(target));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.read(5), "%PDF-");
}

TEST(RhizoSummary, RefusesWhatItCannotDrawWithTheReason) {
    const auto summary = [](std::vector<std::string> words) {
        words.insert(words.begin(), {RHIZO_PROGRAM, "summary"});
        return rhizograph::testing::runProcess(words);
    };
    const std::string exam = RHIZOGRAPH_TEST_DATA "/cases/textbook/root-L5.json";
    const auto noFile = summary({exam, "--format", "pdf"});
    EXPECT_EQ(noFile.code, 2);
    EXPECT_NE(noFile.err.find("--output"), std::string::npos);
    const auto noPaper = summary({exam, "--format", "pdf", "--output", "/tmp/x.pdf", "--paper", "papyrus"});
    EXPECT_EQ(noPaper.code, 2);
    EXPECT_NE(noPaper.err.find("papyrus"), std::string::npos);
    const auto noPlace = summary({exam, "--format", "pdf", "--output", "/nowhere/x.pdf"});
    EXPECT_EQ(noPlace.code, 1);
    EXPECT_NE(noPlace.err.find("/nowhere/x.pdf"), std::string::npos);
    const auto noExam = summary({"/nowhere.json", "--format", "pdf", "--output", "/tmp/x.pdf"});
    EXPECT_EQ(noExam.code, 2);
    EXPECT_NE(noExam.err.find("/nowhere.json"), std::string::npos);
}

} // namespace
} // namespace rhizograph::app
