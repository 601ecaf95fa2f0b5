#include "figures/figurepainter.h"

#include <cmath>

namespace rhizograph::app {
namespace {

QColor mixed(const QColor& ground, const QColor& ink, qreal share) {
    const auto blend = [share](int from, int to) { return qRound(from + (to - from) * share); };
    return {blend(ground.red(), ink.red()), blend(ground.green(), ink.green()),
            blend(ground.blue(), ink.blue())};
}

QPen rounded(const QColor& color, qreal width) {
    return {color, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin};
}

/// First multiple of `step` at or below `from`: hatches of neighbors and of repaints meet without a seam.
qreal gridStart(qreal from, qreal step) {
    return std::floor(from / step) * step;
}

void paintLines(QPainter& painter, const QRectF& box, const QColor& color, qreal width, qreal step) {
    painter.setPen({color, width, Qt::SolidLine, Qt::FlatCap});
    const qreal between = step * std::sqrt(2.0); // measured along x, for lines `step` apart at 45°
    for (qreal x = gridStart(box.left() + box.top(), between); x < box.right() + box.bottom(); x += between) {
        painter.drawLine(QPointF(x - box.top(), box.top()), QPointF(x - box.bottom(), box.bottom()));
    }
}

void paintDots(QPainter& painter, const QRectF& box, const QColor& color, qreal radius, qreal step) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    for (qreal y = gridStart(box.top(), step); y < box.bottom() + step; y += step) {
        for (qreal x = gridStart(box.left(), step); x < box.right() + step; x += step) {
            painter.drawEllipse(QPointF(x, y), radius, radius);
        }
    }
}

void paintWaves(QPainter& painter, const QRectF& box, const QColor& color, qreal unit) {
    const qreal wide = 10 * unit;
    const qreal high = 6 * unit;
    painter.setPen(rounded(color, 1.4 * unit));
    painter.setBrush(Qt::NoBrush);
    for (qreal y = gridStart(box.top(), high); y < box.bottom() + high; y += high) {
        QPainterPath wave;
        wave.moveTo(gridStart(box.left(), wide), y);
        for (qreal x = gridStart(box.left(), wide); x < box.right(); x += wide) {
            wave.quadTo(x + wide / 4, y - high / 2, x + wide / 2, y);
            wave.quadTo(x + wide * 3 / 4, y + high / 2, x + wide, y);
        }
        painter.drawPath(wave);
    }
}

void paintStrokes(QPainter& painter, const QRectF& box, const QColor& color, qreal unit) {
    constexpr qreal width = 1.8;
    constexpr qreal dash = 3.4; // in pen widths, as is the gap
    constexpr qreal gap = 1.7;
    QPen pen(color, width * unit, Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({dash, gap});
    painter.setPen(pen);
    const qreal between = 9 * unit;
    // Every line starts a whole number of dashes from the origin, so that dashes stay put when a part is
    // repainted.
    const qreal top = gridStart(box.top(), (dash + gap) * width * unit / std::sqrt(2.0));
    for (qreal x = gridStart(box.left() + box.top(), between); x < box.right() + box.bottom(); x += between) {
        painter.drawLine(QPointF(x - top, top), QPointF(x - box.bottom(), box.bottom()));
    }
}

void paintPluses(QPainter& painter, const QRectF& box, const QColor& color, qreal unit) {
    const qreal step = 8 * unit;
    const qreal arm = 2.3 * unit;
    painter.setPen({color, 1.4 * unit, Qt::SolidLine, Qt::FlatCap});
    for (qreal y = gridStart(box.top(), step); y < box.bottom() + step; y += step) {
        for (qreal x = gridStart(box.left(), step); x < box.right() + step; x += step) {
            painter.drawLine(QPointF(x - arm, y), QPointF(x + arm, y));
            painter.drawLine(QPointF(x, y - arm), QPointF(x, y + arm));
        }
    }
}

QColor groundOf(SkinMark mark, const Theme& theme) {
    switch (mark) {
    case SkinMark::normal:
        return theme.spruceTint;
    case SkinMark::reduced:
        return theme.ochreTint;
    case SkinMark::absent:
        return theme.brick;
    case SkinMark::heightened:
        return theme.plumTint;
    case SkinMark::solid:
        return theme.quiet;
    case SkinMark::none:
    case SkinMark::waves:
    case SkinMark::strokes:
    case SkinMark::pluses:
        break;
    }
    return theme.skin;
}

void paintHatch(QPainter& painter, const QRectF& box, SkinMark mark, const Theme& theme, qreal unit) {
    switch (mark) {
    case SkinMark::reduced:
        return paintLines(painter, box, theme.ochre, 2.2 * unit, 7 * unit);
    case SkinMark::heightened:
        return paintDots(painter, box, theme.plum, 1.6 * unit, 7 * unit);
    case SkinMark::waves:
        return paintWaves(painter, box, theme.ink, unit);
    case SkinMark::strokes:
        return paintStrokes(painter, box, theme.brick, unit);
    case SkinMark::pluses:
        return paintPluses(painter, box, theme.brick, unit);
    case SkinMark::none:
    case SkinMark::normal:
    case SkinMark::absent:
    case SkinMark::solid:
        return;
    }
}

bool touches(const QPainterPath& path, const QRectF& only) {
    return only.isNull() || path.controlPointRect().adjusted(-2, -2, 2, 2).intersects(only);
}

/// Draws every path of a list with the pen and brush set on the painter.
void paintAll(QPainter& painter, const std::vector<QPainterPath>& paths, const QTransform& toPainter,
              const QRectF& only) {
    for (const auto& path : paths) {
        const QPainterPath placed = toPainter.map(path);
        if (touches(placed, only)) painter.drawPath(placed);
    }
}

void paintRegions(QPainter& painter, const ViewArt& art, const QTransform& toPainter, const MarkOf& mark,
                  const Theme& theme, const FigureDetail& detail) {
    for (const auto& region : art.regions) {
        const QPainterPath placed = toPainter.map(region.path);
        if (!touches(placed, detail.only)) continue;
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.skin);
        painter.drawPath(placed);
        paintMark(painter, placed, mark(region.key), theme, detail.unit);
    }
}

void paintBorders(QPainter& painter, const ViewArt& art, const QTransform& toPainter,
                  const FigureDetail& detail) {
    for (const auto& region : art.regions) {
        const QPainterPath placed = toPainter.map(region.path);
        if (touches(placed, detail.only)) painter.drawPath(placed);
    }
}

} // namespace

SkinMark markOf(Look look) {
    switch (look) {
    case Look::plain:
        return SkinMark::none;
    case Look::normal:
        return SkinMark::normal;
    case Look::reduced:
        return SkinMark::reduced;
    case Look::marked:
        return SkinMark::absent;
    case Look::heightened:
        return SkinMark::heightened;
    }
    throw std::logic_error("no such look");
}

void paintMark(QPainter& painter, const QPainterPath& path, SkinMark mark, const Theme& theme, qreal unit) {
    if (mark == SkinMark::none) return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(groundOf(mark, theme));
    painter.drawPath(path);
    painter.save();
    painter.setClipPath(path, Qt::IntersectClip);
    paintHatch(painter, path.boundingRect(), mark, theme, unit);
    painter.restore();
}

void paintFigure(QPainter& painter, const ViewArt& art, const QTransform& toPainter, const MarkOf& mark,
                 const Theme& theme, const FigureDetail& detail) {
    painter.setBrush(mixed(theme.raised, theme.sunk, 0.6));
    painter.setPen(rounded(theme.line, 0.6 * detail.unit));
    paintAll(painter, art.context, toPainter, detail.only);

    paintRegions(painter, art, toPainter, mark, theme, detail);

    if (detail.fine) {
        QColor shade = theme.ink;
        shade.setAlphaF(0.05F);
        painter.setPen(Qt::NoPen);
        painter.setBrush(shade);
        paintAll(painter, art.shade, toPainter, detail.only);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(rounded(theme.region, detail.unit));
    paintBorders(painter, art, toPainter, detail);
    if (detail.fine) {
        painter.setPen(rounded(mixed(theme.skin, theme.quiet, 0.5), 0.9 * detail.unit));
        paintAll(painter, art.detail, toPainter, detail.only);
    }
    painter.setPen(rounded(theme.ink, 1.75 * detail.unit));
    paintAll(painter, art.outline, toPainter, detail.only);
}

QPainterPath unionOf(const ViewArt& art, const std::vector<RegionKey>& regions) {
    QPainterPath whole;
    // A hair's breadth of overlap, so that regions that share a border leave no sliver between them.
    QPainterPathStroker widener;
    widener.setWidth(0.8);
    widener.setJoinStyle(Qt::RoundJoin);
    for (const auto& key : regions) {
        if (const auto* region = art.find(key)) {
            whole = whole.united(region->path.united(widener.createStroke(region->path)));
        }
    }
    return whole.simplified();
}

QTransform fitting(const QRectF& source, const QRectF& target) {
    const qreal scale = std::min(target.width() / source.width(), target.height() / source.height());
    const QPointF corner = target.center() - QPointF(source.width(), source.height()) * scale / 2;
    return QTransform(scale, 0, 0, scale, corner.x() - source.left() * scale,
                      corner.y() - source.top() * scale);
}

} // namespace rhizograph::app
