#pragma once

#include "page/pagedocument.h"
#include "page/pagefont.h"

namespace rhizograph::app {

/// Places the content on pages: heads in a column of 34 mm, hairlines between, heads never alone at the foot
/// of a page, figures and signature never torn apart.
class PageFlow {
public:
    PageFlow(const PageContent& content, const FigureArt* art, const QSizeF& paper);
    [[nodiscard]] std::vector<std::vector<PageElement>> pages();
    /// Precondition: pages() was called.
    [[nodiscard]] const std::vector<PageBlock>& blocks() const { return blocks_; }

private:
    void letterhead();
    void runningHead();
    void section(const PageSection& section);
    void paragraphs(const QString& title, const std::vector<PageRun>& runs, const QString& id = {});
    void block(const QString& id, qreal from, qreal to);
    void figures(std::size_t index);
    void picture(std::size_t index, FigureView view, const QRectF& source, const QRectF& target);
    qreal caption(const QString& text, const QRectF& under);
    void sideNames(const QRectF& target, FigureView view);
    void legend(const PageFigures& figures);
    void trends(); ///< in pageflowtrends.cpp
    void plan();
    void addenda();
    void signature();
    void feet();

    void newPage();
    void rule(qreal y, qreal width, const QColor& color);
    void lines(const PageText& text, int from, int count, const QPointF& at);
    void whole(const PageText& text, const QPointF& at) { lines(text, 0, text.lines(), at); }
    [[nodiscard]] qreal room() const { return bottom_ - y_; }

    const PageContent& content_;
    const FigureArt* art_;
    QSizeF paper_;
    qreal left_, right_, column_, bottom_ = 0;
    qreal y_ = 0;
    std::optional<PageText> note_; ///< draft note and cautions, the same on every page
    std::vector<std::vector<PageElement>> pages_;
    std::vector<PageBlock> blocks_;
};

} // namespace rhizograph::app
