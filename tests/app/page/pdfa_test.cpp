#include "sample.h"

#include <gtest/gtest.h>
#include <QFile>
#include <QPainter>
#include <QPdfWriter>

// ISO 19005-1 (PDF/A-1b), as the validator of the PDFBox library reads it.

namespace rhizograph::app {
namespace {

std::string verdict(const std::string& file) {
    std::string jars;
    for (const char* jar :
         {"preflight", "pdfbox2", "fontbox2", "xmpbox", "commons-logging", "jaxb-api", "javax.activation"})
        jars += std::string(jars.empty() ? "" : ":") + "/usr/share/java/" + jar + ".jar";
    const auto result = rhizograph::testing::runProcess(
        {"/usr/bin/java", "-cp", jars, "org.apache.pdfbox.preflight.Validator_A1b", file});
    return result.out + result.err;
}

bool valid(const std::string& said) {
    return said.find("is a valid PDF/A-1b file") != std::string::npos;
}

TEST(PdfA, TheValidatorRefusesAFileWithTransparency) {
    const QTemporaryDir folder;
    const QString path = folder.filePath("page.pdf");
    {
        QPdfWriter writer(path);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        QPainter painter(&writer);
        painter.setOpacity(0.5);
        painter.fillRect(100, 100, 500, 500, Qt::black);
    }
    const std::string said = verdict(path.toStdString());
    EXPECT_FALSE(valid(said)) << said;
    EXPECT_NE(said.find("not a valid"), std::string::npos) << said;
}

TEST(PdfA, EveryKindOfPageConforms) {
    for (const char* file : {"textbook/root-L5.json", "textbook/cauda-equina.json", "textbook/none.json",
                             "004-bilateral-toe-weakness-overflow-incontinence.json"}) {
        PageContent content = contentOf(file);
        content.identity.name = QStringLiteral("Zoë Çelik-Ångström");
        const PdfFile page(PageDocument(content, figures()));
        const std::string said = verdict(page.path());
        EXPECT_TRUE(valid(said)) << file << ": " << said;
    }
}

TEST(PdfA, ALongSignedLetterConformsToo) {
    PageContent content = contentOf("textbook/root-S1.json");
    for (int i = 0; i < 60; ++i)
        content.plan += QStringLiteral("Stay active and come back when it gets worse, at any hour. ");
    content.signature = PageSignature{"Clinician Two", "24 November 2026, 10:49"};
    Exam before = casesExam("textbook/none.json");
    before.date = "2025-12-01";
    addTrends(content, {before, casesExam("textbook/root-S1.json")}, knowledge());
    ASSERT_FALSE(content.trends.empty());
    const PdfFile page(PageDocument(content, figures(), QPageSize::Letter));
    const std::string said = verdict(page.path());
    EXPECT_TRUE(valid(said)) << said;
}

} // namespace
} // namespace rhizograph::app
