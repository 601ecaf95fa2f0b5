#include "compare/figurepair.h"

#include "parts/textsize.h"

#include <QPainter>

namespace rhizograph::app {

QString viewWords(FigureView view) {
    switch (view) {
    case FigureView::back:
        return FigurePair::tr("from behind");
    case FigureView::sole:
        return FigurePair::tr("soles");
    case FigureView::saddle:
        return FigurePair::tr("saddle");
    case FigureView::front:
        break;
    }
    return FigurePair::tr("from the front");
}

FigurePair::FigurePair(std::shared_ptr<const FigureArt> art, QWidget* parent)
    : QWidget(parent), art_(std::move(art)) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
}

QSize FigurePair::minimumSizeHint() const {
    return {grown(this, 240), grown(this, 260)};
}

void FigurePair::setPictures(std::vector<Picture> pictures) {
    pictures_ = std::move(pictures);
    QStringList names;
    for (const Picture& picture : pictures_)
        names << picture.title;
    setAccessibleName(tr("Skin figures: %1").arg(names.join(QStringLiteral(", "))));
    update();
}

void FigurePair::paintEvent(QPaintEvent*) {
    if (art_ == nullptr || pictures_.empty()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const qreal wide = static_cast<qreal>(width()) / static_cast<qreal>(pictures_.size());
    for (std::size_t i = 0; i < pictures_.size(); ++i) {
        paintPicture(painter, pictures_[i], QRectF(static_cast<qreal>(i) * wide, 0, wide, height()));
        if (i == 0) continue;
        painter.setPen(QPen(Theme::of(this).line, 1));
        painter.drawLine(QPointF(static_cast<qreal>(i) * wide, 8),
                         QPointF(static_cast<qreal>(i) * wide, height() - 8));
    }
}

void FigurePair::paintChanges(QPainter& painter, const Picture& picture, const QTransform& place) const {
    const Theme& theme = Theme::of(this);
    painter.setBrush(Qt::NoBrush);
    for (const RegionArt& region : art_->view(picture.view).regions) {
        const auto found = picture.changes.find(region.key);
        if (found == picture.changes.end()) continue;
        const bool better = found->second == Change::better || found->second == Change::resolved;
        const QPainterPath path = place.map(region.path);
        // A light line beneath keeps the outline apart from a hatch of its own color.
        painter.setPen(QPen(theme.raised, 5.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPath(path);
        QPen pen(better                               ? theme.spruce
                 : found->second == Change::different ? theme.ochreInk
                                                      : theme.brick,
                 3, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
        if (better) pen.setDashPattern({2.2, 1.6});
        painter.setPen(pen);
        painter.drawPath(path);
    }
}

void FigurePair::paintPicture(QPainter& painter, const Picture& picture, const QRectF& cell) const {
    const Theme& theme = Theme::of(this);
    const int words = grown(this, 28);
    painter.setFont(sized(this, 15, QFont::DemiBold));
    painter.setPen(theme.ink);
    painter.drawText(QRectF(cell.left(), cell.top(), cell.width(), words), Qt::AlignCenter, picture.title);
    const ViewArt& art = art_->view(picture.view);
    QRectF source;
    for (const RegionArt& region : art.regions)
        source |= region.path.boundingRect();
    const QRectF target = cell.adjusted(10, words, -10, -2 * words);
    const QTransform place = fitting(source.adjusted(-4, -4, 4, 4), target);
    painter.save();
    painter.setClipRect(place.mapRect(source.adjusted(-4, -4, 4, 4)), Qt::IntersectClip);
    paintFigure(painter, art, place, picture.marks, theme, {1, target.height() >= 300, {}});
    paintChanges(painter, picture, place);
    painter.restore();
    const bool behind = picture.view == FigureView::back;
    const QRectF body = place.mapRect(source);
    const qreal y = body.bottom() + 2;
    painter.setFont(sized(this, 15));
    painter.setPen(theme.quiet);
    const qreal middle = body.center().x();
    painter.drawText(QRectF(cell.left(), y, middle - cell.left(), words), Qt::AlignCenter,
                     behind ? tr("Left") : tr("Right"));
    painter.drawText(QRectF(middle, y, cell.right() - middle, words), Qt::AlignCenter,
                     behind ? tr("Right") : tr("Left"));
    painter.drawText(QRectF(cell.left(), y + words * 0.8, cell.width(), words), Qt::AlignCenter,
                     viewWords(picture.view));
}

} // namespace rhizograph::app
