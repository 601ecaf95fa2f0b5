#pragma once

#include <memory>
#include <QFont>
#include <QTextLayout>
#include <vector>

namespace rhizograph::app {

/// The page is laid out in twentieths of a point, whatever it is painted on, so that lines and pages break in
/// the same places on paper, in the file and on the screen.
constexpr qreal unitsPerPoint = 20;
constexpr int pageResolution = 1440; ///< units to the inch

[[nodiscard]] constexpr qreal millimeters(qreal length) {
    return length * pageResolution / 25.4;
}

/// The page's typeface at a size in points. Without ligatures: a search for "reflex" has to find it.
[[nodiscard]] QFont pageFont(qreal points, QFont::Weight weight = QFont::Normal);

/// Words in one color and weight.
struct PageRun {
    QString text;
    QFont::Weight weight = QFont::Normal;
    QColor color;
};

/// A paragraph broken into lines of at most `width` units.
class PageText {
public:
    PageText(const std::vector<PageRun>& runs, qreal points, qreal width,
             Qt::Alignment alignment = Qt::AlignLeft);

    [[nodiscard]] int lines() const { return layout_->lineCount(); }
    [[nodiscard]] qreal lineHeight() const { return lineHeight_; }
    [[nodiscard]] qreal height() const { return lines() * lineHeight_; }
    [[nodiscard]] const std::shared_ptr<QTextLayout>& layout() const { return layout_; }

private:
    std::shared_ptr<QTextLayout> layout_;
    qreal lineHeight_ = 0;
};

} // namespace rhizograph::app
