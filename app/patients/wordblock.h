#pragma once

#include <QColor>
#include <QFont>
#include <QRect>
#include <QString>
#include <vector>

class QPainter;

namespace rhizograph::app {

/// Words one under another, each broken into as many lines as the width asks for; nothing is shortened.
class WordBlock {
public:
    /// Empty words take no room.
    void add(const QString& words, const QFont& font, const QColor& color);
    /// With a small diamond of the same color before them; behind the words above where both fit.
    void addMarked(const QString& words, const QFont& font, const QColor& color);
    [[nodiscard]] int height(int width) const;
    /// Centered from top to bottom.
    void paint(QPainter& painter, const QRect& room) const;

private:
    struct Line {
        QString words;
        QFont font;
        QColor color;
        bool marked;
    };
    /// Where each line stands, from the upper left corner of the block.
    [[nodiscard]] std::vector<QRect> place(int width) const;

    std::vector<Line> lines_;
};

} // namespace rhizograph::app
