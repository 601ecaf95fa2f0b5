#include "parts/button.h"

#include "parts/textsize.h"

#include <QPainter>
#include <QPainterPath>

namespace rhizograph::app {
namespace {

struct ButtonColors {
    QColor ground, outline, text;
};

ButtonColors colorsOf(PlainButton::Kind kind, bool checked, const Theme& theme) {
    using Kind = PlainButton::Kind;
    switch (kind) {
    case Kind::quiet:
        return {theme.raised, theme.edge, theme.ink};
    case Kind::action:
        return {theme.raised, theme.spruce, theme.spruce};
    case Kind::primary:
        return {theme.spruce, theme.spruce, theme.onSpruce};
    case Kind::choice:
        return checked ? ButtonColors{theme.raised, theme.ink, theme.ink}
                       : ButtonColors{theme.raised, theme.edge, theme.quiet};
    case Kind::flat:
        return {Qt::transparent, Qt::transparent, theme.ink};
    case Kind::tab:
        return checked ? ButtonColors{theme.raised, theme.ink, theme.ink}
                       : ButtonColors{Qt::transparent, Qt::transparent, theme.quiet};
    }
    throw std::logic_error("no such button");
}

/// The strokes of a glyph in a box of 20 by 20 around the origin.
QPainterPath strokes(Glyph glyph) {
    QPainterPath path;
    const auto line = [&path](std::initializer_list<QPointF> points) {
        path.moveTo(*points.begin());
        for (const auto& point : points)
            path.lineTo(point);
    };
    switch (glyph) {
    case Glyph::none:
        break;
    case Glyph::down:
        line({{-5, -2}, {0, 3}, {5, -2}});
        break;
    case Glyph::up:
        line({{-5, 2}, {0, -3}, {5, 2}});
        break;
    case Glyph::left:
        line({{2, -5}, {-3, 0}, {2, 5}});
        break;
    case Glyph::right:
        line({{-2, -5}, {3, 0}, {-2, 5}});
        break;
    case Glyph::arrow:
        line({{-6, 0}, {6, 0}});
        line({{2, -4.5}, {6.5, 0}, {2, 4.5}});
        break;
    case Glyph::zoomIn:
        line({{-1, -5}, {-1, 3}});
        [[fallthrough]];
    case Glyph::zoomOut:
        path.addEllipse(QPointF(-1, -1), 6.5, 6.5);
        line({{-4.5, -1}, {2.5, -1}});
        line({{3.8, 3.8}, {8, 8}});
        break;
    case Glyph::rings:
        path.addEllipse(QPointF(-3.5, -4), 3, 3);
        path.addEllipse(QPointF(4, 0), 3, 3);
        path.addEllipse(QPointF(-2, 5), 3, 3);
        break;
    case Glyph::printer:
        line({{-4, -3}, {-4, -8}, {4, -8}, {4, -3}});
        path.addRoundedRect(QRectF(-7.5, -3, 15, 8), 1.5, 1.5);
        line({{-4, 2}, {-4, 8}, {4, 8}, {4, 2}, {-4, 2}});
        break;
    case Glyph::page:
        line({{1, -8}, {-6, -8}, {-6, 8}, {6, 8}, {6, -3}, {1, -8}, {1, -3}, {6, -3}});
        break;
    case Glyph::copy:
        path.addRoundedRect(QRectF(-3, -3, 10, 10), 1.5, 1.5);
        line({{3, -6}, {-6, -6}, {-6, 3}});
        break;
    case Glyph::close:
        line({{-5, -5}, {5, 5}});
        line({{5, -5}, {-5, 5}});
        break;
    case Glyph::undo:
        line({{-3, -7}, {-7, -3}, {-3, 1}});
        path.moveTo(-7, -3);
        path.lineTo(2, -3);
        path.cubicTo({8, -3}, {8, 6}, {2, 6});
        path.lineTo(-2, 6);
        break;
    case Glyph::redo:
        line({{3, -7}, {7, -3}, {3, 1}});
        path.moveTo(7, -3);
        path.lineTo(-2, -3);
        path.cubicTo({-8, -3}, {-8, 6}, {-2, 6});
        path.lineTo(2, 6);
        break;
    case Glyph::lock:
        path.addRoundedRect(QRectF(-6.5, -1.5, 13, 9.5), 1.5, 1.5);
        path.moveTo(-3.5, -1.5);
        path.lineTo(-3.5, -4);
        path.cubicTo({-3.5, -9}, {3.5, -9}, {3.5, -4});
        path.lineTo(3.5, -1.5);
        break;
    case Glyph::menu:
        line({{-7, -5}, {7, -5}});
        line({{-7, 0}, {7, 0}});
        line({{-7, 5}, {7, 5}});
        break;
    case Glyph::search:
        path.addEllipse(QPointF(-1.5, -1.5), 5.5, 5.5);
        line({{2.6, 2.6}, {7, 7}});
        break;
    case Glyph::plus:
        line({{-6, 0}, {6, 0}});
        line({{0, -6}, {0, 6}});
        break;
    case Glyph::check:
        line({{-6, 0.5}, {-2, 5}, {6, -4.5}});
        break;
    case Glyph::sides:
        line({{-3, -6}, {-8, -6}, {-8, 6}, {-3, 6}, {-3, -6}});
        line({{3, -6}, {8, -6}, {8, 6}, {3, 6}, {3, -6}});
        line({{0, -8}, {0, -4}});
        line({{0, -2}, {0, 2}});
        line({{0, 4}, {0, 8}});
        break;
    case Glyph::trend:
        line({{-8, -7}, {-8, 7}, {8, 7}});
        line({{-5, 3}, {-1.5, -1}, {1, 1.5}, {7, -5}});
        break;
    }
    return path;
}

} // namespace

void paintGlyph(QPainter& painter, Glyph glyph, const QPointF& center, const QColor& color, qreal size) {
    painter.save();
    painter.translate(center);
    painter.scale(size / 20, size / 20);
    painter.setBrush(Qt::NoBrush);
    painter.setPen({color, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin});
    painter.drawPath(strokes(glyph));
    painter.restore();
}

void paintFocusRing(QPainter& painter, const QRectF& shape, qreal radius, const Theme& theme) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen({theme.ink, 2});
    painter.drawRoundedRect(shape.adjusted(-3, -3, 3, 3), radius + 3, radius + 3);
}

PlainButton::PlainButton(const QString& text, Kind kind, QWidget* parent)
    : QAbstractButton(parent), kind_(kind) {
    setText(text);
    setFocusPolicy(Qt::StrongFocus);
    setCheckable(kind == Kind::choice || kind == Kind::tab);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void PlainButton::setGlyph(Glyph glyph, bool behindText) {
    glyph_ = glyph;
    glyphBehind_ = behindText;
    updateGeometry();
    update();
}

void PlainButton::setBold(bool bold) {
    bold_ = bold;
    updateGeometry();
    update();
}

QFont PlainButton::textFont() const {
    const bool strong = bold_ || kind_ == Kind::action || kind_ == Kind::primary || isChecked();
    return sized(this, 16, strong ? QFont::DemiBold : QFont::Medium);
}

int PlainButton::pictureWidth() const {
    return glyph_ == Glyph::none ? 0 : grown(this, 20);
}

void PlainButton::paintPicture(QPainter& painter, const QPointF& center, const QColor& ink) {
    paintGlyph(painter, glyph_, center, ink, grown(this, 20));
}

QSize PlainButton::sizeHint() const {
    // Measured bold, so that a choice does not move its neighbors when it is chosen.
    const QFontMetrics metrics(
        sized(this, 16, kind_ == Kind::quiet || kind_ == Kind::flat ? QFont::Medium : QFont::DemiBold));
    const int words = metrics.horizontalAdvance(text());
    const int picture = pictureWidth();
    const int gap = words > 0 && picture > 0 ? 8 : 0;
    const int beside = kind_ == Kind::tab ? 12 : padding();
    return {std::max(grown(this, 44), words + picture + gap + 2 * beside), grown(this, 44)};
}

int PlainButton::wordRoom(int width) const {
    const int picture = pictureWidth();
    return width - 12 - (picture > 0 ? picture + 8 : 0);
}

int PlainButton::heightForWidth(int width) const {
    const int height = grown(this, 44);
    const QFontMetrics metrics(sized(this, 16, QFont::DemiBold));
    if (text().isEmpty() || width >= sizeHint().width()) return height;
    const QRect words = metrics.boundingRect(QRect(0, 0, std::max(1, wordRoom(width)), 10'000),
                                             Qt::TextWordWrap | Qt::AlignCenter, text());
    return std::max(height, words.height() + 16);
}

void PlainButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const ButtonColors colors = colorsOf(kind_, isChecked(), theme());
    // The ring stands inside the widget: the shape draws back when it has the keyboard.
    const qreal inset = hasFocus() ? 4 : 0.75;
    const QRectF shape = QRectF(rect()).adjusted(inset, inset, -inset, -inset);
    painter.setOpacity(isEnabled() ? 1 : 0.45);
    painter.setBrush(colors.ground);
    painter.setPen(colors.outline.alpha() == 0 ? QPen(Qt::NoPen) : QPen(colors.outline, 1.5));
    painter.drawRoundedRect(shape, 10, 10);
    if (isDown() || (underMouse() && isEnabled())) {
        QColor over = theme().ink;
        over.setAlphaF(isDown() ? 0.08F : 0.03F);
        painter.setBrush(over);
        painter.setPen(Qt::NoPen);
        painter.drawRoundedRect(shape, 10, 10);
    }
    painter.setFont(textFont());
    const int whole = painter.fontMetrics().horizontalAdvance(text());
    const int words = std::min(whole, wordRoom(width()));
    const int picture = pictureWidth();
    const int gap = words > 0 && picture > 0 ? 8 : 0;
    qreal x = (width() - words - picture - gap) / 2.0;
    const qreal middle = height() / 2.0;
    if (picture > 0 && !glyphBehind_) {
        paintPicture(painter, {x + picture / 2.0, middle}, colors.text);
        x += picture + gap;
    }
    painter.setPen(colors.text);
    if (words < whole)
        painter.drawText(QRectF(x, 0, words, height()), Qt::AlignCenter | Qt::TextWordWrap, text());
    else
        painter.drawText(QRectF(x, 0, words + 2, height()), Qt::AlignVCenter | Qt::AlignLeft, text());
    if (picture > 0 && glyphBehind_)
        paintPicture(painter, {x + words + gap + picture / 2.0, middle}, colors.text);
    painter.setOpacity(1);
    if (hasFocus()) paintFocusRing(painter, shape, 10, theme());
}

void PlainButton::enterEvent(QEnterEvent*) {
    update();
}
void PlainButton::leaveEvent(QEvent*) {
    update();
}

} // namespace rhizograph::app
