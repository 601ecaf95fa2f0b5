#include "exam/cellpaint.h"

#include "parts/button.h"

#include <QFontMetricsF>
#include <QPaintDevice>
#include <QPainter>

namespace rhizograph::app {
namespace {

using State = CellFace::State;

struct Dress {
    QBrush ground = Qt::NoBrush;
    QPen outline;
    QColor text;
    QFont::Weight weight = QFont::Medium;
    QColor plate; ///< behind the text where a hatch would make it hard to read; invalid for none
};

Dress chosenDress(const Theme& theme, Look look, qreal ratio) {
    switch (look) {
    case Look::normal:
        return {theme.spruce, QPen(theme.spruce, 1.5), theme.onSpruce, QFont::Bold, {}};
    case Look::reduced:
        return {hatch(theme, look, ratio, 0.38), QPen(theme.ochre, 2), theme.ink, QFont::Bold,
                theme.ochreTint};
    case Look::marked:
        return {theme.brick, QPen(theme.brick, 1.5), theme.onBrick, QFont::Bold, {}};
    case Look::heightened:
        return {hatch(theme, look, ratio, 0.5), QPen(theme.plum, 2), theme.ink, QFont::Bold, theme.plumTint};
    case Look::plain:
        break;
    }
    return {theme.ink, QPen(theme.ink, 1.5), theme.raised, QFont::Bold, {}};
}

QPen dashed(const QColor& color) {
    QPen pen(color, 1.5, Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({2.2, 1.8});
    return pen;
}

Dress dressOf(const Theme& theme, const CellFace& face, qreal ratio) {
    switch (face.state) {
    case State::unexamined:
        return {Qt::NoBrush, QPen(theme.edge, 1.5), theme.quiet, QFont::Medium, {}};
    case State::chosen:
        return chosenDress(theme, face.look, ratio);
    case State::bulk:
        return {theme.spruceTint, dashed(theme.spruce), theme.ink, QFont::DemiBold, {}};
    case State::notTestable:
        return {Qt::NoBrush, dashed(theme.edge), theme.ink, QFont::Medium, {}};
    case State::field:
        break;
    }
    return {theme.raised, QPen(theme.ink, 1.5), theme.ink, QFont::Bold, {}};
}

void paintGhost(QPainter& painter, const Theme& theme, const CellFace& face) {
    const qreal width = 18 * face.scale;
    const QRectF bar(face.rect.center().x() - width / 2, face.rect.bottom() + 2.5, width, 4);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.quiet);
    painter.drawRoundedRect(bar, 2, 2);
}

void paintText(QPainter& painter, const Theme& theme, const CellFace& face, const Dress& dress) {
    QFont font = face.font;
    font.setWeight(dress.weight);
    painter.setFont(font);
    QRectF room = face.rect.adjusted(4, 1, -4, -1);
    if (!face.aside.isEmpty()) {
        QFont small = face.font;
        small.setPixelSize(qRound(15 * face.scale));
        painter.setFont(small);
        painter.setPen(theme.quiet);
        painter.drawText(room.adjusted(8, 0, -8, 0), Qt::AlignRight | Qt::AlignVCenter, face.aside);
        painter.setFont(font);
        room.setRight(room.right() - QFontMetricsF(small).horizontalAdvance(face.aside) - 16);
    }
    const int flags = Qt::AlignCenter | Qt::TextWordWrap;
    if (dress.plate.isValid()) {
        const QRectF words = painter.boundingRect(room, flags, face.text).adjusted(-4, 0, 4, 0);
        painter.setPen(Qt::NoPen);
        painter.setBrush(dress.plate);
        painter.drawRoundedRect(words, 4, 4);
    }
    painter.setPen(dress.text);
    painter.drawText(room, flags, face.text);
}

} // namespace

void paintCell(QPainter& painter, const Theme& theme, const CellFace& face) {
    Dress dress = dressOf(theme, face, painter.device()->devicePixelRatioF());
    if (face.readOnly) dress.outline.setWidthF(1);
    const qreal half = dress.outline.widthF() / 2;
    const QRectF shape = face.rect.adjusted(half, half, -half, -half);
    painter.setPen(dress.outline);
    painter.setBrush(dress.ground);
    painter.setBrushOrigin(face.rect.topLeft());
    painter.drawRoundedRect(shape, face.corner, face.corner);
    if (!face.readOnly && (face.pressed || face.hovered)) {
        QColor over = theme.ink;
        over.setAlphaF(face.pressed ? 0.08F : 0.03F);
        painter.setPen(Qt::NoPen);
        painter.setBrush(over);
        painter.drawRoundedRect(shape, face.corner, face.corner);
    }
    if (!face.text.isEmpty()) paintText(painter, theme, face, dress);
    if (face.ghost) paintGhost(painter, theme, face);
    if (face.focused) paintFocusRing(painter, shape, 10, theme);
}

} // namespace rhizograph::app
