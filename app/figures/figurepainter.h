#pragma once

#include "catalogue/scale.h"
#include "figures/figureart.h"
#include "shell/theme.h"

#include <functional>
#include <QPainter>
#include <QTransform>

namespace rhizograph::app {

/// What a patch of skin wears: a state of the examination or a mark of the patient's drawing.
enum class SkinMark { none, normal, reduced, absent, heightened, waves, strokes, pluses, solid };

/// The mark that stands for a look on an examined layer; none for a plain value.
[[nodiscard]] SkinMark markOf(Look look);

using MarkOf = std::function<SkinMark(const RegionKey&)>;

/// How finely a figure is drawn. Lengths of pens and hatches are in the painter's units times `unit`,
/// whatever the size of the figure, so that a hatch reads the same on a small figure.
struct FigureDetail {
    qreal unit = 1;   ///< painter units of one screen pixel
    bool fine = true; ///< shade, detail lines and context pens; left out on small figures
    QRectF only;      ///< paint no more than what touches this; everything when null
};

/// Fills the path with the mark: ground, then hatch. Nothing for none.
void paintMark(QPainter& painter, const QPainterPath& path, SkinMark mark, const Theme& theme,
               qreal unit = 1);

/// Paints one figure through `toPainter` (millimeters to the painter's units): context, regions with their
/// mark, shade, region borders, detail, outline. Nothing is translucent but the shade, which `fine` leaves
/// out.
void paintFigure(QPainter& painter, const ViewArt& art, const QTransform& toPainter, const MarkOf& mark,
                 const Theme& theme, const FigureDetail& detail = {});

/// The outline of several regions taken together, in millimeters of their figure.
[[nodiscard]] QPainterPath unionOf(const ViewArt& art, const std::vector<RegionKey>& regions);

/// The transform that fits `source` (millimeters) into `target`, keeping its shape, centered.
[[nodiscard]] QTransform fitting(const QRectF& source, const QRectF& target);

} // namespace rhizograph::app
