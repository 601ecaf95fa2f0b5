// One page of an examination against the least a program can do: QPdfWriter with the same figures and as many
// lines of words, by turns in one run. The page may take three times as long at most.

#include "page/pagefont.h"
#include "page/pagetheme.h"
#include "sample.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <QApplication>
#include <QPainter>
#include <QPdfWriter>

namespace {

using namespace rhizograph;
using namespace rhizograph::app;

constexpr int kRounds = 15;
constexpr double kMost = 3.0;

double milliseconds(const std::function<void()>& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double median(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + kRounds / 2, values.end());
    return values[kRounds / 2];
}

/// The figures and lines of the page, painted straight away.
void bare(const PageDocument& page, const FigureArt& art, const QString& path) {
    QPdfWriter writer(path);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
    writer.setResolution(pageResolution);
    writer.setPageSize(QPageSize(QPageSize::A4));
    QPainter painter(&writer);
    painter.setFont(pageFont(10));
    for (const PageElement& element : page.elements(0)) {
        if (const auto* line = std::get_if<PageLine>(&element)) {
            const QTextLine text = line->layout->lineAt(line->line);
            painter.drawText(line->at + QPointF(0, text.ascent()),
                             line->layout->text().mid(text.textStart(), text.textLength()));
        } else if (const auto* picture = std::get_if<PagePicture>(&element)) {
            const auto& marks = page.content().figures.at(picture->figures).marks;
            const auto mark = [&](const RegionKey& region) {
                const auto found = marks.find(region);
                return found == marks.end() ? SkinMark::none : found->second;
            };
            painter.save();
            painter.setClipRect(picture->target);
            paintFigure(painter, art.view(picture->view), fitting(picture->source, picture->target), mark,
                        pageTheme(), {10, false, picture->target});
            painter.restore();
        }
    }
}

} // namespace

int main(int argc, char* argv[]) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const QTemporaryDir folder;
    const auto art = figures();
    PageContent content = contentOf("004-bilateral-toe-weakness-overflow-incontinence.json");
    content.sections.resize(std::min<std::size_t>(content.sections.size(), 9));
    content.figures.resize(std::min<std::size_t>(content.figures.size(), 1));
    const PageDocument measured(content, art);
    std::vector<double> ours;
    std::vector<double> theirs;
    for (int round = -2; round < kRounds; ++round) { // the first two load fonts
        const double page = milliseconds([&] {
            const Outcome written = writePdf(PageDocument(content, art), folder.filePath("page.pdf"));
            if (!written) std::abort();
        });
        const double least = milliseconds([&] { bare(measured, *art, folder.filePath("bare.pdf")); });
        if (round < 0) continue;
        ours.push_back(page);
        theirs.push_back(least);
    }
    const double ratio = median(ours) / median(theirs);
    std::printf("%d page, %zu elements: %.1f ms; bare writer %.1f ms; %.2f times (at most %.1f)\n",
                measured.pageCount(), measured.elements(0).size(), median(ours), median(theirs), ratio,
                kMost);
    return measured.pageCount() == 1 && ratio <= kMost ? 0 : 1;
}
