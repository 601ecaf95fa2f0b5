#pragma once

#include <QFont>
#include <QString>
#include <QTextLayout>

class QPainter;

namespace rhizograph::app {

/// Words that wrap, of which the first ones may be bold. Measured once, painted often.
class RichLine {
public:
    RichLine(const QString& bold, const QString& text, const QFont& font, qreal width);

    [[nodiscard]] qreal height() const { return height_; }
    [[nodiscard]] qreal naturalWidth() const { return natural_; }
    /// `boldColor` for the first words, `color` for the rest; `at` is the upper left corner.
    void paint(QPainter& painter, const QPointF& at, const QColor& boldColor, const QColor& color) const;

private:
    QTextLayout layout_;
    int boldLength_ = 0;
    qreal height_ = 0;
    qreal natural_ = 0;
};

} // namespace rhizograph::app
