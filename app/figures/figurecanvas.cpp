#include "figures/figurecanvas.h"

#include "parts/textsize.h"

#include <algorithm>
#include <cmath>
#include <QPainter>
#include <QPaintEvent>

namespace rhizograph::app {
namespace {

constexpr qreal reachPixels = 12; ///< how far beside a region a press still counts for it
constexpr qreal largest = 8;

QString sideWord(Side side) {
    return side == Side::left ? FigureCanvas::tr("Left") : FigureCanvas::tr("Right");
}

} // namespace

FigureCanvas::FigureCanvas(std::shared_ptr<const FigureArt> art, Layouter layouter, QWidget* parent)
    : QWidget(parent), art_(std::move(art)), layouter_(std::move(layouter)),
      marks_([](const RegionKey&) { return SkinMark::none; }) {
    installCellAccess();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    grabGesture(Qt::PinchGesture);
    setAttribute(Qt::WA_OpaquePaintEvent);
    longPress_.setSingleShot(true);
    longPress_.setInterval(600);
    connect(&longPress_, &QTimer::timeout, this, &FigureCanvas::longPress);
}

const Theme& FigureCanvas::theme() const {
    return Theme::of(this);
}

void FigureCanvas::setMarks(MarkOf marks) {
    marks_ = std::move(marks);
    refreshAll();
}

void FigureCanvas::setPressable(std::function<bool(const RegionKey&)> pressable) {
    pressable_ = std::move(pressable);
    place();
}

void FigureCanvas::setReadOnly(bool readOnly) {
    readOnly_ = readOnly;
    if (readOnly) unsetCursor();
}

void FigureCanvas::setNote(FigureView view, const QString& note) {
    if (notes_[view] == note) return;
    notes_[view] = note;
    refreshAll();
}

void FigureCanvas::setTerritory(std::vector<RegionKey> territory) {
    territory_ = std::move(territory);
    territoryUnion_.clear();
    for (const FigureView view : allFigureViews) {
        QPainterPath whole = unionOf(art_->view(view), territory_);
        if (!whole.isEmpty()) territoryUnion_.emplace(view, std::move(whole));
    }
    update();
}

void FigureCanvas::setKeyPointsShown(bool shown) {
    keyPointsShown_ = shown;
    update();
}

QRectF FigureCanvas::placed(const QRectF& target) const {
    return {target.topLeft() * zoom_ + offset_, target.size() * zoom_};
}

QTransform FigureCanvas::transformOf(const FigurePanel& panel) const {
    return fitting(panel.source, placed(panel.target));
}

void FigureCanvas::place() {
    if (size().isEmpty()) return;
    const std::optional<RegionKey> focused = focusedRegion();
    layout_ = layouter_(size(), textScale(this));
    pictures_.clear();
    cells_.clear();
    for (std::size_t i = 0; i < layout_.panels.size(); ++i) {
        const FigurePanel& panel = layout_.panels[i];
        const QTransform toCanvas = transformOf(panel);
        for (const auto& region : art_->view(panel.view).regions) {
            if (!panel.source.intersects(region.path.boundingRect()) ||
                std::ranges::find(panel.sides, region.key.side) == panel.sides.end()) {
                continue;
            }
            pictures_.push_back({i, &region, toCanvas.map(region.path)});
            if (pressable(region.key) && std::ranges::find(cells_, region.key) == cells_.end()) {
                cells_.push_back(region.key);
            }
        }
    }
    const auto again = focused ? std::ranges::find(cells_, *focused) : cells_.end();
    focus_ = again == cells_.end() ? -1 : static_cast<int>(again - cells_.begin());
    refreshAll();
}

void FigureCanvas::refreshAll() {
    cache_ = {};
    update();
}

QRect FigureCanvas::extent(const RegionKey& region) const {
    QRectF box;
    for (const auto& picture : pictures_) {
        if (picture.art->key == region) box |= picture.path.boundingRect();
    }
    return box.adjusted(-4, -4, 4, 4).toAlignedRect();
}

void FigureCanvas::refresh(const std::vector<RegionKey>& regions) {
    QRegion dirty;
    for (const auto& key : regions) {
        for (const auto& picture : pictures_) {
            if (picture.art->key == key) {
                dirty += picture.path.boundingRect().adjusted(-3, -3, 3, 3).toAlignedRect();
            }
        }
        const auto cell = std::ranges::find(cells_, key);
        if (cell != cells_.end()) announceCell(this, static_cast<int>(cell - cells_.begin()));
    }
    if (!cache_.isNull() && cachedTheme_ == theme().name) {
        render(dirty);
    } else {
        cache_ = {};
    }
    update(dirty);
}

void FigureCanvas::render(const QRegion& dirty) {
    QPainter painter(&cache_);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const QRect& rect : dirty) {
        painter.save();
        painter.setClipRect(rect);
        painter.fillRect(rect, theme().raised);
        for (const auto& panel : layout_.panels)
            paintPanel(painter, panel, rect);
        painter.setPen({theme().line, 1.0});
        for (const auto& line : layout_.dividers) {
            if (zoom_ <= 1) painter.drawLine(line);
        }
        painter.restore();
    }
}

void FigureCanvas::paintPanel(QPainter& painter, const FigurePanel& panel, const QRectF& dirty) {
    const QTransform toCanvas = transformOf(panel);
    const QRectF area = toCanvas.mapRect(panel.source);
    paintWords(painter, panel);
    if (!area.adjusted(-3, -3, 3, 3).intersects(dirty)) return;
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    const FigureDetail detail{
        1, area.height() >= 300 || panel.view == FigureView::sole || panel.view == FigureView::saddle, dirty};
    paintFigure(painter, art_->view(panel.view), toCanvas, marks_, theme(), detail);
    painter.restore();
}

void FigureCanvas::paintWords(QPainter& painter, const FigurePanel& panel) {
    const QTransform toCanvas = transformOf(panel);
    const QRectF area = toCanvas.mapRect(panel.source);
    const qreal line = grown(this, 20);
    painter.setFont(sized(this, 15, QFont::DemiBold));
    if (!panel.title.isEmpty()) {
        const QRectF target = placed(panel.target);
        painter.setPen(theme().quiet);
        painter.drawText(QRectF(target.left(), target.top() - grown(this, 26), target.width(), line),
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, panel.title);
    }
    painter.setPen(theme().ink);
    const auto& silhouettes = art_->view(panel.view).silhouette;
    // The two names never touch, however narrow the figure is.
    const qreal apart = painter.fontMetrics().horizontalAdvance(sideWord(Side::right)) / 2.0 + 8;
    for (const Side side : panel.sides) {
        const QRectF half = toCanvas.mapRect(silhouettes.at(side).boundingRect().intersected(panel.source));
        qreal x = half.center().x();
        if (panel.sides.size() > 1) {
            const qreal middle = area.center().x();
            x = x < middle ? std::min(x, middle - apart) : std::max(x, middle + apart);
        }
        painter.drawText(QRectF(x - 60, area.bottom() + 3, 120, line), Qt::AlignCenter | Qt::TextDontClip,
                         sideWord(side));
    }
    const auto note = notes_.find(panel.view);
    const QString below = note == notes_.end() || note->second.isEmpty() ? panel.note : note->second;
    if (!below.isEmpty() && !panel.detail) {
        painter.setFont(sized(this, 15));
        painter.setPen(theme().quiet);
        painter.drawText(QRectF(area.center().x() - 120, area.bottom() + 3 + line, 240, line),
                         Qt::AlignCenter | Qt::TextDontClip, below);
    }
}

void FigureCanvas::paintEvent(QPaintEvent* event) {
    const qreal ratio = devicePixelRatioF();
    if (cache_.isNull() || cachedTheme_ != theme().name ||
        cache_.deviceIndependentSize().toSize() != size()) {
        cache_ = QPixmap(size() * ratio);
        cache_.setDevicePixelRatio(ratio);
        cachedTheme_ = theme().name;
        render(rect());
    }
    QPainter painter(this);
    const QRect dirty = event->rect();
    painter.drawPixmap(
        QRectF(dirty), cache_,
        QRectF(dirty.x() * ratio, dirty.y() * ratio, dirty.width() * ratio, dirty.height() * ratio));
    painter.setRenderHint(QPainter::Antialiasing);
    paintOverlays(painter, dirty);
}

void FigureCanvas::paintOverlays(QPainter& painter, const QRect& dirty) {
    painter.setClipRect(dirty);
    if (!territoryUnion_.empty()) paintTerritory(painter);
    if (keyPointsShown_) paintKeyPoints(painter);
    const auto focused = hasFocus() ? focusedRegion() : std::nullopt;
    painter.setBrush(Qt::NoBrush);
    painter.setPen({theme().ink, 2.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    for (const auto& picture : pictures_) {
        const bool marked = picture.art->key == focused || picture.art->key == hover_;
        if (!marked || !picture.path.controlPointRect().adjusted(-3, -3, 3, 3).intersects(dirty)) continue;
        const FigurePanel& panel = layout_.panels[picture.panel];
        painter.save();
        painter.setClipRect(transformOf(panel).mapRect(panel.source).adjusted(-1, -1, 1, 1),
                            Qt::IntersectClip);
        painter.drawPath(picture.path);
        painter.restore();
    }
}

void FigureCanvas::paintTerritory(QPainter& painter) {
    QPen pen(theme().ink, 2, Qt::CustomDashLine, Qt::FlatCap, Qt::RoundJoin);
    pen.setDashPattern({3.5, 2.5});
    for (const auto& panel : layout_.panels) {
        const auto found = territoryUnion_.find(panel.view);
        if (found == territoryUnion_.end()) continue;
        const QTransform toCanvas = transformOf(panel);
        painter.save();
        painter.setClipRect(toCanvas.mapRect(panel.source).adjusted(-1, -1, 1, 1), Qt::IntersectClip);
        const QPainterPath placedPath = toCanvas.map(found->second);
        painter.setPen({theme().raised, 4}); // a plain seam keeps the dashes readable over a hatch
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(placedPath);
        painter.setPen(pen);
        painter.drawPath(placedPath);
        painter.restore();
    }
}

void FigureCanvas::paintKeyPoints(QPainter& painter) {
    painter.setFont(sized(this, 15, QFont::DemiBold));
    for (const auto& point : art_->keyPoints()) {
        for (const auto& panel : layout_.panels) {
            if (panel.view != point.view) continue;
            for (const Side side : panel.sides) {
                const QPointF where = side == Side::right ? point.right : point.left;
                if (!panel.source.contains(where)) continue;
                const QPointF at = transformOf(panel).map(where);
                painter.setBrush(theme().raised);
                painter.setPen({theme().ink, 1.75});
                painter.drawEllipse(at, 5, 5);
            }
        }
    }
}

std::optional<RegionKey> FigureCanvas::regionAt(const QPointF& position) const {
    const RegionArt* nearest = nullptr;
    qreal best = reachPixels;
    for (const auto& panel : layout_.panels) {
        const QTransform toCanvas = transformOf(panel);
        const QRectF area = toCanvas.mapRect(panel.source);
        if (!area.adjusted(-reachPixels, -reachPixels, reachPixels, reachPixels).contains(position)) continue;
        const qreal scale = toCanvas.m11();
        const QPointF point = toCanvas.inverted().map(position);
        for (const auto& region : art_->view(panel.view).regions) {
            if (!pressable(region.key) ||
                std::ranges::find(panel.sides, region.key.side) == panel.sides.end()) {
                continue;
            }
            if (area.contains(position) && region.path.contains(point)) return region.key;
            const qreal reach = best / scale;
            if (!region.path.boundingRect().adjusted(-reach, -reach, reach, reach).contains(point)) continue;
            if (const qreal away = distanceToBorder(region.border, point) * scale; away < best) {
                best = away;
                nearest = &region;
            }
        }
    }
    return nearest == nullptr ? std::nullopt : std::optional(nearest->key);
}

const FigureCanvas::Picture* FigureCanvas::mainPicture(const RegionKey& region) const {
    const Picture* main = nullptr;
    qreal scale = 0;
    for (const auto& picture : pictures_) {
        const FigurePanel& panel = layout_.panels[picture.panel];
        if (picture.art->key != region || !panel.source.contains(picture.art->label)) continue;
        if (const qreal here = transformOf(panel).m11(); here > scale) {
            scale = here;
            main = &picture;
        }
    }
    return main;
}

const FigurePanel* FigureCanvas::detailOf(const RegionKey& region) const {
    for (const auto& picture : pictures_) {
        const FigurePanel& panel = layout_.panels[picture.panel];
        if (panel.detail && picture.art->key == region) return &panel;
    }
    return nullptr;
}

std::optional<QPointF> FigureCanvas::placeOf(const RegionKey& region) const {
    const Picture* main = mainPicture(region);
    if (main == nullptr) return std::nullopt;
    return transformOf(layout_.panels[main->panel]).map(main->art->label);
}

void FigureCanvas::setZoom(qreal zoom, const QPointF& about) {
    const qreal next = std::clamp(zoom, 1.0, largest);
    offset_ = about - (about - offset_) * next / zoom_;
    zoom_ = next;
    pan({});
}

void FigureCanvas::pan(const QPointF& by) {
    offset_ += by;
    offset_.setX(std::clamp(offset_.x(), width() * (1 - zoom_), 0.0));
    offset_.setY(std::clamp(offset_.y(), height() * (1 - zoom_), 0.0));
    place();
    emit zoomChanged(zoom_);
}

void FigureCanvas::zoomTo(const FigurePanel& panel) {
    const QRectF area = fitting(panel.source, panel.target).mapRect(panel.source);
    const qreal words = grown(this, 30);
    zoom_ =
        std::clamp(std::min((height() - 2 * words) / area.height(), width() / area.width()), 1.0, largest);
    offset_ = QPointF(width() / 2.0, height() / 2.0) - area.center() * zoom_;
    pan({});
}

void FigureCanvas::resetZoom() {
    zoom_ = 1;
    offset_ = {};
    pan({});
}

} // namespace rhizograph::app
