#include "page/pagedocument.h"

#include "page/pagefont.h"
#include "sample.h"

#include <gtest/gtest.h>
#include <QTextLayout>

namespace rhizograph::app {
namespace {

QString textOf(const PageDocument& document, int page) {
    QString words;
    for (const PageElement& element : document.elements(page)) {
        if (const auto* line = std::get_if<PageLine>(&element)) {
            const QTextLine text = line->layout->lineAt(line->line);
            words += line->layout->text().mid(text.textStart(), text.textLength()) + QStringLiteral(" ");
        }
    }
    return words.simplified();
}

/// A section of numbered words, long enough for several pages.
PageContent longContent(int words) {
    PageContent content = contentOf("textbook/root-L5.json");
    PageSection section{"history", "History", "Bold first.", {}, {}};
    for (int i = 0; i < words; ++i)
        section.text += QStringLiteral("word%1 ").arg(i);
    content.sections.insert(content.sections.begin(), section);
    return content;
}

TEST(PageDocument, KeepsTheMarginsOnEveryPage) {
    for (const auto size : {QPageSize::A4, QPageSize::Letter}) {
        const PageDocument document(longContent(1500), figures(), size);
        const QRectF sheet(QPointF(), document.size());
        const QRectF inside =
            sheet.adjusted(millimeters(14) - 1, millimeters(10) - 1, 1 - millimeters(14), -100);
        ASSERT_GT(document.pageCount(), 2);
        for (int page = 0; page < document.pageCount(); ++page) {
            for (const PageElement& element : document.elements(page)) {
                if (const auto* line = std::get_if<PageLine>(&element)) {
                    const QTextLine text = line->layout->lineAt(line->line);
                    const QRectF words = text.naturalTextRect().translated(line->at);
                    EXPECT_TRUE(inside.contains(words)) << page << ": " << line->layout->text().toStdString();
                } else if (const auto* picture = std::get_if<PagePicture>(&element)) {
                    EXPECT_TRUE(inside.contains(picture->target)) << page;
                }
            }
        }
    }
}

TEST(PageDocument, LosesNoWordWhereALongSectionBreaks) {
    const PageDocument document(longContent(1500), figures());
    QString all;
    for (int page = 0; page < document.pageCount(); ++page)
        all += textOf(document, page) + QStringLiteral(" ");
    for (int i = 0; i < 1500; ++i)
        ASSERT_EQ(all.count(QStringLiteral("word%1 ").arg(i)), 1) << i;
}

TEST(PageDocument, EveryPageNamesThePatientAndItsNumber) {
    const PageDocument document(longContent(1500), figures());
    const int count = document.pageCount();
    for (int page = 0; page < count; ++page) {
        const QString text = textOf(document, page);
        EXPECT_TRUE(text.contains("Quillon Fernwhistle")) << page;
        EXPECT_TRUE(text.contains("Record 00417")) << page;
        EXPECT_TRUE(text.contains(QStringLiteral("page %1 of %2").arg(page + 1).arg(count))) << page;
        EXPECT_TRUE(text.contains("not a diagnosis")) << page;
    }
}

TEST(PageDocument, LinesNeverLieOverOneAnother) {
    const PageDocument document(longContent(900), figures());
    for (int page = 0; page < document.pageCount(); ++page) {
        std::vector<QRectF> boxes;
        for (const PageElement& element : document.elements(page)) {
            const auto* line = std::get_if<PageLine>(&element);
            if (line == nullptr) continue;
            QRectF box = line->layout->lineAt(line->line).naturalTextRect().translated(line->at);
            box.adjust(0, box.height() * 0.2, 0, -box.height() * 0.2);
            for (const QRectF& other : boxes)
                EXPECT_FALSE(box.width() > 0 && box.intersects(other))
                    << page << ": " << line->layout->text().left(40).toStdString();
            boxes.push_back(box);
        }
    }
}

TEST(PageDocument, SaysThatItIsADraftUntilItIsSigned) {
    PageContent content = contentOf("textbook/root-L5.json");
    EXPECT_TRUE(textOf(PageDocument(content, figures()), 0).contains("Draft, not signed."));
    content.signature = PageSignature{"Clinician Two", "24 November 2026, 10:49"};
    const PageDocument signedPage(content, figures());
    QString all;
    for (int page = 0; page < signedPage.pageCount(); ++page)
        all += textOf(signedPage, page);
    EXPECT_FALSE(all.contains("Draft"));
    EXPECT_TRUE(all.contains("Signed by Clinician Two, 24 November 2026, 10:49"));
}

TEST(PageDocument, AddendaStandBelowTheSignature) {
    PageContent content = contentOf("textbook/root-L5.json");
    content.signature = PageSignature{"Clinician Two", "24 November 2026, 10:49"};
    content.addenda.push_back({"Imaging was declined.", "Clinician Three", "25 November 2026, 08:00"});
    const PageDocument document(content, figures());
    const QString text = textOf(document, document.pageCount() - 1);
    EXPECT_LT(text.indexOf("Signed by"), text.indexOf("Imaging was declined."));
    EXPECT_TRUE(text.contains("Clinician Three, 25 November 2026"));
}

TEST(PageDocument, AnUnwrittenPlanIsSaidToBeUnwritten) {
    PageContent content = contentOf("textbook/none.json");
    content.plan.clear();
    const PageDocument document(content, figures());
    QString all;
    for (int page = 0; page < document.pageCount(); ++page)
        all += textOf(document, page);
    EXPECT_TRUE(all.contains("No plan written."));
}

TEST(PageContent, FiguresShowWhatWasRecordedAndNothingElse) {
    const Exam exam = casesExam("textbook/root-L5.json");
    for (const PageFigures& row : pageFigures(knowledge().catalogue(), *figures(), exam)) {
        EXPECT_FALSE(row.marks.empty());
        for (const auto& [mark, word] : row.legend)
            EXPECT_FALSE(mark == SkinMark::none && word.contains("normal")) << word.toStdString();
    }
    EXPECT_TRUE(pageFigures(knowledge().catalogue(), *figures(), Exam{}).empty());
}

TEST(PageContent, WhatIsNotKnownOfThePersonIsSaidToBeUnknown) {
    EXPECT_EQ(aboutWords({52, "male"}).toStdString(), "52 y, man");
    EXPECT_EQ(aboutWords({}).toStdString(), "age not given");
    EXPECT_EQ(longDate("2026-11-24").toStdString(), "24 November 2026");
    EXPECT_EQ(longDate("").toStdString(), "date not given");
}

} // namespace
} // namespace rhizograph::app
