#include "patients/wordblock.h"

#include <algorithm>
#include <QFontMetrics>
#include <QPainter>

namespace rhizograph::app {
namespace {

constexpr int between = 3;
constexpr int markRoom = 18;
constexpr int markReach = 6;
constexpr int beforeMark = 12;

/// Breaks between words; within one only where it alone is too long.
int breaking(const QString& words, const QFont& font, int width) {
    const QFontMetrics metrics(font);
    for (const QString& word : words.split(u' '))
        if (metrics.horizontalAdvance(word) > width) return Qt::TextWrapAnywhere;
    return Qt::TextWordWrap;
}

} // namespace

void WordBlock::add(const QString& words, const QFont& font, const QColor& color) {
    if (!words.isEmpty()) lines_.push_back({words, font, color, false});
}

void WordBlock::addMarked(const QString& words, const QFont& font, const QColor& color) {
    if (!words.isEmpty()) lines_.push_back({words, font, color, true});
}

std::vector<QRect> WordBlock::place(int width) const {
    std::vector<QRect> out;
    int top = 0;
    int taken = width; // of the row above, at its left
    for (const Line& line : lines_) {
        const QFontMetrics metrics(line.font);
        const int mark = line.marked ? markRoom : 0;
        const int natural = mark + metrics.horizontalAdvance(line.words) + 2; // rounding must not break it
        if (line.marked && taken + beforeMark + natural <= width) {
            const QRect above = out.back();
            out.emplace_back(taken + beforeMark, above.top(), natural, above.height());
            continue;
        }
        const int room = std::max(1, width - mark);
        const int height =
            metrics.boundingRect(0, 0, room, 1 << 20, breaking(line.words, line.font, room), line.words)
                .height();
        out.emplace_back(0, top, width, height);
        top += height + between;
        taken = natural <= width ? natural : width;
    }
    return out;
}

int WordBlock::height(int width) const {
    int bottom = 0;
    for (const QRect& each : place(width))
        bottom = std::max(bottom, each.bottom() + 1);
    return bottom;
}

void WordBlock::paint(QPainter& painter, const QRect& room) const {
    const QPoint corner = room.topLeft() + QPoint(0, (room.height() - height(room.width())) / 2);
    const std::vector<QRect> placed = place(room.width());
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const Line& line = lines_[i];
        QRect box = placed[i].translated(corner);
        if (line.marked) {
            const int x = box.left() + markReach;
            const int y = box.top() + QFontMetrics(line.font).height() / 2;
            painter.setPen(Qt::NoPen);
            painter.setBrush(line.color);
            painter.drawPolygon(QPolygon({QPoint(x, y - markReach), QPoint(x + markReach, y),
                                          QPoint(x, y + markReach), QPoint(x - markReach, y)}));
            box.setLeft(box.left() + markRoom);
        }
        painter.setFont(line.font);
        painter.setPen(line.color);
        painter.drawText(box, Qt::AlignVCenter | breaking(line.words, line.font, box.width()), line.words);
    }
}

} // namespace rhizograph::app
