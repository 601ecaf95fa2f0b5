#include "page/pagedocument.h"

#include "page/pageflow.h"
#include "page/pagetheme.h"

#include <algorithm>
#include <QPagedPaintDevice>
#include <QPainter>

namespace rhizograph::app {
namespace {

constexpr qreal pixel = 15; // units of one screen pixel, for pens and hatches

class ElementPainter {
public:
    ElementPainter(QPainter& painter, const PageContent& content, const FigureArt* art)
        : painter_(painter), content_(content), art_(art) {}

    void operator()(const PageLine& line) const { line.layout->lineAt(line.line).draw(&painter_, line.at); }

    void operator()(const PageRule& rule) const {
        painter_.setPen(QPen(rule.color, rule.width, Qt::SolidLine, Qt::FlatCap));
        painter_.drawLine(rule.line);
    }

    void operator()(const PagePicture& picture) const {
        if (art_ == nullptr) return;
        const auto& marks = content_.figures.at(picture.figures).marks;
        const auto mark = [&](const RegionKey& region) {
            const auto found = marks.find(region);
            return found == marks.end() ? SkinMark::none : found->second;
        };
        const FigureDetail detail{pixel * 0.75, false, picture.target};
        painter_.save();
        painter_.setClipRect(picture.target, Qt::IntersectClip);
        paintFigure(painter_, art_->view(picture.view), fitting(picture.source, picture.target), mark,
                    pageTheme(), detail);
        painter_.restore();
    }

    void operator()(const PageSwatch& swatch) const {
        QPainterPath path;
        path.addRect(swatch.box);
        paintMark(painter_, path, swatch.mark, pageTheme(), pixel * 0.75);
        painter_.setBrush(Qt::NoBrush);
        painter_.setPen(QPen(pageTheme().region, pixel * 0.75));
        painter_.drawRect(swatch.box);
    }

    void operator()(const PageChart& chart) const {
        painter_.setPen(QPen(pageTheme().line, pixel * 0.5));
        painter_.drawLine(chart.box.bottomLeft(), chart.box.bottomRight());
        painter_.drawLine(chart.box.topLeft(), chart.box.topRight());
        for (const PageTrendLine& line : content_.trends.at(chart.trend).lines)
            drawCourse(chart.box, line);
    }

private:
    void drawCourse(const QRectF& box, const PageTrendLine& line) const {
        const qreal mark = millimeters(0.9);
        const QRectF inside = box.adjusted(mark, mark, -mark, -mark);
        const auto count = static_cast<qreal>(std::max<std::size_t>(line.places.size() - 1, 1));
        std::optional<QPointF> before;
        for (std::size_t visit = 0; visit < line.places.size(); ++visit) {
            const auto& place = line.places[visit];
            if (!place) {
                before.reset();
                continue;
            }
            const QPointF at(inside.left() + inside.width() * static_cast<qreal>(visit) / count,
                             inside.bottom() - inside.height() * *place);
            painter_.setPen(
                QPen(pageTheme().ink, pixel, line.left ? Qt::DashLine : Qt::SolidLine, Qt::FlatCap));
            if (before) painter_.drawLine(*before, at);
            before = at;
            painter_.setPen(QPen(pageTheme().ink, pixel));
            painter_.setBrush(line.left ? pageTheme().raised : pageTheme().ink);
            const QRectF spot(at.x() - mark, at.y() - mark, 2 * mark, 2 * mark);
            line.left ? painter_.drawRect(spot) : painter_.drawEllipse(spot);
        }
    }

    QPainter& painter_;
    const PageContent& content_;
    const FigureArt* art_;
};

} // namespace

PageDocument::PageDocument(PageContent content, std::shared_ptr<const FigureArt> art,
                           QPageSize::PageSizeId size)
    : content_(std::move(content)), art_(std::move(art)), paper_(size) {
    PageFlow flow(content_, art_.get(), this->size());
    pages_ = flow.pages();
    blocks_ = flow.blocks();
}

QSizeF PageDocument::size() const {
    return QPageSize(paper_).size(QPageSize::Point) * unitsPerPoint;
}

void PageDocument::paint(QPainter& painter, int page) const {
    painter.setRenderHint(QPainter::Antialiasing);
    const ElementPainter paintElement(painter, content_, art_.get());
    for (const PageElement& element : elements(page))
        std::visit(paintElement, element);
}

bool PageDocument::paintOn(QPagedPaintDevice& device) const {
    QPainter painter;
    if (!painter.begin(&device)) return false;
    const qreal scale = static_cast<qreal>(device.logicalDpiX()) / pageResolution;
    for (int page = 0; page < pageCount(); ++page) {
        if (page > 0 && !device.newPage()) return false;
        painter.save();
        painter.scale(scale, scale);
        paint(painter, page);
        painter.restore();
    }
    return painter.end();
}

} // namespace rhizograph::app
