#pragma once

#include "page/pagecontent.h"

#include <memory>
#include <QPageSize>
#include <variant>

class QPagedPaintDevice;
class QPainter;
class QTextLayout;

namespace rhizograph::app {

/// One line of words at its place.
struct PageLine {
    std::shared_ptr<QTextLayout> layout;
    int line = 0;
    QPointF at; ///< upper left corner
};

struct PageRule {
    QLineF line;
    qreal width = 0;
    QColor color;
};

/// A figure, or a cut from one.
struct PagePicture {
    FigureView view = FigureView::front;
    QRectF source; ///< millimeters of the figure
    QRectF target;
    std::size_t figures = 0; ///< which row of the content's figures
};

struct PageSwatch {
    QRectF box;
    SkinMark mark = SkinMark::none;
};

/// A small chart of the course over all visits.
struct PageChart {
    QRectF box;
    std::size_t trend = 0; ///< which of the content's
};

/// Where one section, or the part of it that one page holds, stands.
struct PageBlock {
    QString section; ///< its id
    int page = 0;
    QRectF box;
};

using PageElement = std::variant<PageLine, PageRule, PagePicture, PageSwatch, PageChart>;

/// An examination laid out on pages of one size. Positions are in twentieths of a point from the paper's
/// corner.
class PageDocument {
public:
    PageDocument(PageContent content, std::shared_ptr<const FigureArt> art,
                 QPageSize::PageSizeId size = QPageSize::A4);

    [[nodiscard]] int pageCount() const { return static_cast<int>(pages_.size()); }
    [[nodiscard]] QSizeF size() const;
    [[nodiscard]] QPageSize::PageSizeId paper() const { return paper_; }
    [[nodiscard]] const PageContent& content() const { return content_; }
    [[nodiscard]] const std::vector<PageElement>& elements(int page) const {
        return pages_.at(static_cast<std::size_t>(page));
    }

    [[nodiscard]] const std::vector<PageBlock>& blocks() const { return blocks_; }

    /// Paints one page; the painter's unit is a twentieth of a point. Nothing is translucent.
    void paint(QPainter& painter, int page) const;
    /// Paints all pages on a printer or file, scaled to its resolution; false when the device refuses a page.
    [[nodiscard]] bool paintOn(QPagedPaintDevice& device) const;

private:
    PageContent content_;
    std::shared_ptr<const FigureArt> art_;
    QPageSize::PageSizeId paper_;
    std::vector<std::vector<PageElement>> pages_;
    std::vector<PageBlock> blocks_;
};

/// Writes the document as PDF/A-1b with embedded fonts: complete, or not at all.
[[nodiscard]] Outcome writePdf(const PageDocument& document, const QString& path);

} // namespace rhizograph::app
