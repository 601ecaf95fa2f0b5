#pragma once

#include <algorithm>
#include <QFont>
#include <QFontInfo>
#include <QWidget>

namespace rhizograph::app {

/// How far the person's text size stands above the smallest offered (1.0 at a 16 px application font).
inline qreal textScale(const QWidget* widget) {
    return std::max(1.0, QFontInfo(widget->font()).pixelSize() / 16.0);
}

/// A length of the layout grown with the text.
inline int grown(const QWidget* widget, int pixels) {
    return qRound(pixels * textScale(widget));
}

/// The widget's typeface at a size given for 100 % text.
inline QFont sized(const QWidget* widget, int pixels, QFont::Weight weight = QFont::Normal) {
    QFont font = widget->font();
    font.setPixelSize(grown(widget, pixels));
    font.setWeight(weight);
    return font;
}

} // namespace rhizograph::app
