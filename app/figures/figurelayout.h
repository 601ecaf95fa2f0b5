#pragma once

#include "figures/figurecanvas.h"

namespace rhizograph::app {

/// The examination sheet: front and back, the feet again enlarged, soles and saddle. Wide and tall canvases
/// differ.
[[nodiscard]] FigureLayout examinationLayout(const FigureArt& art, const QSizeF& size, qreal textScale);

/// The patient's drawing: front and back, soles and saddle small beside them.
[[nodiscard]] FigureLayout drawingLayout(const FigureArt& art, const QSizeF& size, qreal textScale);

} // namespace rhizograph::app
