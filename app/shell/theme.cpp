#include "shell/theme.h"

#include <QApplication>
#include <QFontDatabase>
#include <QImage>
#include <QPainter>
#include <QPalette>
#include <QWidget>
#include <stdexcept>

namespace rhizograph::app {
namespace {

constexpr const char* themeProperty = "rhizograph.theme";

Theme makeLight() {
    Theme theme;
    theme.name = ThemeName::light;
    theme.paper = QColor(0xF6F3EC), theme.raised = QColor(0xFFFFFF), theme.sunk = QColor(0xEFEADE);
    theme.line = QColor(0xD9D3C5), theme.edge = QColor(0x948C79);
    theme.ink = QColor(0x1D2B2A), theme.quiet = QColor(0x5B6865);
    theme.spruce = QColor(0x1F5F56), theme.onSpruce = QColor(0xFFFFFF), theme.spruceTint = QColor(0xDDE9E4);
    theme.ochre = QColor(0xB4761A), theme.ochreInk = QColor(0x7A4E0C), theme.ochreTint = QColor(0xF6E7CC);
    theme.brick = QColor(0x9E3328), theme.onBrick = QColor(0xFFFFFF), theme.brickTint = QColor(0xF5DFDA);
    theme.plum = QColor(0x6A4A7C), theme.plumTint = QColor(0xE9E0EE);
    theme.redbar = QColor(0x9E3328), theme.onRedbar = QColor(0xFFFFFF);
    theme.skin = QColor(0xFDFBF6), theme.region = QColor(0x9A8F74);
    return theme;
}

Theme makeDark() {
    Theme theme;
    theme.name = ThemeName::dark;
    theme.paper = QColor(0x16201F), theme.raised = QColor(0x1F2B2A), theme.sunk = QColor(0x121A19);
    theme.line = QColor(0x35423F), theme.edge = QColor(0x71827D);
    theme.ink = QColor(0xECE8DE), theme.quiet = QColor(0xA3AFAB);
    theme.spruce = QColor(0x6FBFB0), theme.onSpruce = QColor(0x10211E), theme.spruceTint = QColor(0x25433D);
    theme.ochre = QColor(0xE0B05C), theme.ochreInk = QColor(0xEBC784), theme.ochreTint = QColor(0x44381F);
    theme.brick = QColor(0xE98B7E), theme.onBrick = QColor(0x2B0F0A), theme.brickTint = QColor(0x4A2923);
    theme.plum = QColor(0xB79BC9), theme.plumTint = QColor(0x3A3044);
    theme.redbar = QColor(0x8A2D23), theme.onRedbar = QColor(0xFFF6EF);
    theme.skin = QColor(0x243231), theme.region = QColor(0x74857F);
    return theme;
}

/// Text pairs of 7:1 and outlines in ink, for tired eyes and bright rooms.
Theme makeHighContrast() {
    Theme theme;
    theme.name = ThemeName::highContrast;
    theme.paper = QColor(0xFFFFFF), theme.raised = QColor(0xFFFFFF), theme.sunk = QColor(0xE4E4E4);
    theme.line = QColor(0x5A5A5A), theme.edge = QColor(0x1A1A1A);
    theme.ink = QColor(0, 0, 0), theme.quiet = QColor(0x333333);
    theme.spruce = QColor(0x06423A), theme.onSpruce = QColor(0xFFFFFF), theme.spruceTint = QColor(0xD8ECE5);
    theme.ochre = QColor(0x7A4A00), theme.ochreInk = QColor(0x5C3800), theme.ochreTint = QColor(0xFBE7BF);
    theme.brick = QColor(0x7E1510), theme.onBrick = QColor(0xFFFFFF), theme.brickTint = QColor(0xFADFDA);
    theme.plum = QColor(0x43245A), theme.plumTint = QColor(0xECDFF5);
    theme.redbar = QColor(0x7E1510), theme.onRedbar = QColor(0xFFFFFF);
    theme.skin = QColor(0xFFFFFF), theme.region = QColor(0x444444);
    return theme;
}

QPalette paletteOf(const Theme& theme) {
    QPalette palette;
    palette.setColor(QPalette::Window, theme.paper);
    palette.setColor(QPalette::WindowText, theme.ink);
    palette.setColor(QPalette::Base, theme.raised);
    palette.setColor(QPalette::AlternateBase, theme.sunk);
    palette.setColor(QPalette::Text, theme.ink);
    palette.setColor(QPalette::PlaceholderText, theme.quiet);
    palette.setColor(QPalette::Button, theme.raised);
    palette.setColor(QPalette::ButtonText, theme.ink);
    palette.setColor(QPalette::BrightText, theme.brick);
    palette.setColor(QPalette::Highlight, theme.spruce);
    palette.setColor(QPalette::HighlightedText, theme.onSpruce);
    palette.setColor(QPalette::Link, theme.spruce);
    palette.setColor(QPalette::ToolTipBase, theme.raised);
    palette.setColor(QPalette::ToolTipText, theme.ink);
    palette.setColor(QPalette::Mid, theme.line);
    palette.setColor(QPalette::Dark, theme.edge);
    palette.setColor(QPalette::Disabled, QPalette::Text, theme.quiet);
    palette.setColor(QPalette::Disabled, QPalette::ButtonText, theme.quiet);
    palette.setColor(QPalette::Disabled, QPalette::WindowText, theme.quiet);
    return palette;
}

/// Draws into a square tile of `size` logical pixels that repeats without a seam.
template <class Draw> QBrush tile(int size, const QColor& ground, qreal devicePixelRatio, Draw draw) {
    const int pixels = qRound(size * devicePixelRatio);
    QImage image(pixels, pixels, QImage::Format_ARGB32_Premultiplied);
    image.fill(ground);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const qreal scale = static_cast<qreal>(pixels) / size;
    painter.scale(scale, scale);
    draw(painter);
    painter.end();
    QBrush brush(image);
    brush.setTransform(QTransform::fromScale(1 / scale, 1 / scale));
    return brush;
}

/// `over` at this share over `ground`, without transparency so that it prints as it shows.
QColor blended(const QColor& over, const QColor& ground, qreal share) {
    const auto mix = [share](int a, int b) { return qRound(share * a + (1 - share) * b); };
    return {mix(over.red(), ground.red()), mix(over.green(), ground.green()),
            mix(over.blue(), ground.blue())};
}

QBrush diagonals(const Theme& theme, qreal devicePixelRatio, qreal strength) {
    // A tile of 10 px puts 45 degree lines 7 px apart.
    return tile(10, theme.ochreTint, devicePixelRatio, [&](QPainter& painter) {
        painter.setPen(
            QPen(blended(theme.ochre, theme.ochreTint, strength), 2, Qt::SolidLine, Qt::SquareCap));
        for (const qreal shift : {-10.0, 0.0, 10.0})
            painter.drawLine(QPointF(shift - 2, 12), QPointF(shift + 12, -2));
    });
}

QBrush dots(const Theme& theme, qreal devicePixelRatio, qreal strength) {
    return tile(7, theme.plumTint, devicePixelRatio, [&](QPainter& painter) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(blended(theme.plum, theme.plumTint, strength));
        painter.drawEllipse(QPointF(3.5, 3.5), 1.6, 1.6);
    });
}

} // namespace

const Theme& Theme::named(ThemeName name) {
    static const Theme light = makeLight();
    static const Theme dark = makeDark();
    static const Theme highContrast = makeHighContrast();
    switch (name) {
    case ThemeName::light:
        return light;
    case ThemeName::dark:
        return dark;
    case ThemeName::highContrast:
        return highContrast;
    }
    throw std::logic_error("no such theme");
}

const Theme& Theme::of(const QWidget*) {
    return named(static_cast<ThemeName>(qApp->property(themeProperty).toInt()));
}

void Theme::apply(ThemeName name) {
    qApp->setProperty(themeProperty, static_cast<int>(name));
    QApplication::setPalette(paletteOf(named(name)));
    for (QWidget* widget : QApplication::allWidgets())
        widget->update();
}

QBrush hatch(const Theme& theme, Look look, qreal devicePixelRatio, qreal strength) {
    switch (look) {
    case Look::plain:
        return Qt::NoBrush;
    case Look::normal:
        return theme.spruceTint;
    case Look::reduced:
        return diagonals(theme, devicePixelRatio, strength);
    case Look::marked:
        return theme.brick;
    case Look::heightened:
        return dots(theme, devicePixelRatio, strength);
    }
    throw std::logic_error("no such look");
}

} // namespace rhizograph::app
