#include "parts/richline.h"

#include <QPainter>

namespace rhizograph::app {

RichLine::RichLine(const QString& bold, const QString& text, const QFont& font, qreal width)
    : layout_(bold + (bold.isEmpty() || text.isEmpty() ? QString() : QStringLiteral(" ")) + text, font),
      boldLength_(static_cast<int>(bold.size())) {
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout_.setTextOption(option);
    if (boldLength_ > 0) {
        QTextCharFormat strong;
        strong.setFontWeight(QFont::DemiBold);
        layout_.setFormats({{0, boldLength_, strong}});
    }
    layout_.setCacheEnabled(true);
    layout_.beginLayout();
    for (QTextLine line = layout_.createLine(); line.isValid(); line = layout_.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, height_});
        height_ += line.height();
        natural_ = std::max(natural_, line.naturalTextWidth());
    }
    layout_.endLayout();
}

void RichLine::paint(QPainter& painter, const QPointF& at, const QColor& boldColor,
                     const QColor& color) const {
    painter.setPen(color);
    QList<QTextLayout::FormatRange> colors;
    if (boldLength_ > 0 && boldColor != color) {
        QTextCharFormat strong;
        strong.setFontWeight(QFont::DemiBold);
        strong.setForeground(boldColor);
        colors.push_back({0, boldLength_, strong});
    }
    layout_.draw(&painter, at, colors);
}

} // namespace rhizograph::app
