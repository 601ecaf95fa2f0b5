#include "impression/impressionlist.h"
#include "parts/button.h"
#include "parts/textsize.h"
#include "shell/theme.h"

#include <cmath>
#include <QPainter>
#include <QPaintEvent>

// How the rows of the impression are measured and painted.

namespace rhizograph::app {
namespace {

using Kind = ImpressionRow::Kind;

constexpr int redSignIndent = 36; // room of the diamond
constexpr double pixelsADeciban = 5;
constexpr double longestReason = 56; // px to either side of the axis

void paintDiamond(QPainter& painter, const QPointF& center, qreal size, const QColor& color) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(color);
    const qreal half = size / 2;
    painter.drawPolygon(QPolygonF{{center.x(), center.y() - half},
                                  {center.x() + half, center.y()},
                                  {center.x(), center.y() + half},
                                  {center.x() - half, center.y()}});
}

void paintShareBar(QPainter& painter, const QRectF& track, double share, const Theme& theme) {
    const qreal radius = track.height() / 2;
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.sunk);
    painter.drawRoundedRect(track, radius, radius);
    painter.setBrush(theme.ink);
    QRectF filled = track;
    filled.setWidth(std::max(track.height(), track.width() * share));
    painter.drawRoundedRect(filled, radius, radius);
}

} // namespace

int ImpressionList::barWidth(int width) const {
    return std::min(120, width * 2 / 5);
}

/// Whether the words over the bars need a line of their own.
bool ImpressionList::headInTwo(const ImpressionRow& row, int width) const {
    const QFontMetrics metrics(sized(this, 15));
    const int bars = std::max(metrics.horizontalAdvance(row.right) + 14, barWidth(width) / 2 + 8);
    return metrics.horizontalAdvance(row.text) + metrics.horizontalAdvance(row.second) + 12 + bars > width;
}

std::shared_ptr<const RichLine> ImpressionList::line(const QString& bold, const QString& text,
                                                     const QFont& font, int room) const {
    const LineKey key{bold, text, font.key(), room};
    std::shared_ptr<const RichLine>& kept = lines_[key];
    if (kept == nullptr) kept = std::make_shared<const RichLine>(bold, text, font, room);
    return kept;
}

ImpressionList::Placed ImpressionList::measured(const ImpressionRow& row, int width) const {
    const auto words = [&](const QString& bold, const QString& text, const QFont& font, int room) {
        return line(bold, text, font, std::max(room, 40));
    };
    const QFont small = sized(this, 15);
    Placed placed;
    int height = 0;
    switch (row.kind) {
    case Kind::redSign: {
        const int room = width - redSignIndent - 12;
        placed.main = words(row.bold, row.text, small, room);
        if (!row.second.isEmpty()) placed.second = words({}, row.second, small, room);
        if (!row.right.isEmpty()) placed.third = words(row.right, {}, small, room);
        const qreal below = (placed.second ? placed.second->height() + 4 : 0) +
                            (placed.third ? placed.third->height() + 4 : 0);
        height = std::max(44, qCeil(placed.main->height() + below) + 20);
        break;
    }
    case Kind::firstSite:
    case Kind::nextSite: {
        const bool first = row.kind == Kind::firstSite;
        placed.third = words({}, row.right, sized(this, first ? 16 : 15, QFont::DemiBold), width);
        const int room = width - qCeil(placed.third->naturalWidth()) - 12;
        placed.main = words({}, row.text,
                            first ? sized(this, 17, QFont::Bold)
                                  : sized(this, 16, row.chosen ? QFont::DemiBold : QFont::Normal),
                            room);
        height = std::max(44, qCeil(placed.main->height()) + (first ? 12 + 10 : 8 + 12));
        break;
    }
    case Kind::reasonHead:
        height = grown(this, headInTwo(row, width) ? 48 : 24);
        break;
    case Kind::reason:
        placed.main = words({}, row.text, small, width - barWidth(width) - 10);
        height = std::max(grown(this, 26), qCeil(placed.main->height()) + 6);
        break;
    case Kind::more:
        height = grown(this, 44);
        break;
    case Kind::words:
        placed.third = words({}, row.right, small, width);
        placed.main = words(row.bold, row.text, small,
                            width - (row.right.isEmpty() ? 0 : qCeil(placed.third->naturalWidth()) + 12) -
                                (row.pressable() ? 22 : 0));
        height = std::max(row.pressable() ? 44 : 0, qCeil(placed.main->height()) + 4);
        break;
    case Kind::head:
        placed.main = words({}, row.text, sized(this, 15, QFont::DemiBold), width);
        height = std::max(grown(this, 30), qCeil(placed.main->height()) + 8);
        break;
    case Kind::nextTest:
        placed.main = words(row.bold, {}, small, width - 60);
        placed.second = words({}, row.text, small, width - 60);
        height = std::max(44, qCeil(placed.main->height() + placed.second->height()) + 14);
        break;
    case Kind::line:
        height = 17;
        break;
    }
    placed.rect = {0, 0, width, height};
    return placed;
}

std::vector<ImpressionList::Placed> ImpressionList::place(int width) const {
    std::vector<Placed> out;
    int y = 0;
    for (const ImpressionRow& row : rows_) {
        Placed placed = measured(row, std::max(width - rightPadding_, 120));
        placed.rect.moveTop(y);
        y += placed.rect.height();
        if (row.kind == Kind::redSign || row.kind == Kind::nextTest) y += 8;
        out.push_back(std::move(placed));
    }
    return out;
}

void ImpressionList::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < rows_.size() && i < placed_.size(); ++i)
        if (placed_[i].rect.adjusted(-4, -4, 4, 4).intersects(event->rect())) paintRow(painter, i);
}

void ImpressionList::paintRow(QPainter& painter, std::size_t index) const {
    const ImpressionRow& row = rows_[index];
    const Placed& placed = placed_[index];
    switch (row.kind) {
    case Kind::redSign:
        paintRedSign(painter, row, placed);
        break;
    case Kind::firstSite:
    case Kind::nextSite:
        paintSite(painter, row, placed);
        break;
    case Kind::reasonHead:
        paintReasonHead(painter, row, placed);
        break;
    case Kind::reason:
        paintReason(painter, row, placed);
        break;
    case Kind::more:
        paintMore(painter, row, placed);
        break;
    case Kind::words:
        paintWords(painter, row, placed);
        break;
    case Kind::head:
        placed.main->paint(painter, {0, placed.rect.center().y() - placed.main->height() / 2},
                           Theme::of(this).quiet, Theme::of(this).quiet);
        break;
    case Kind::nextTest:
        paintTest(painter, placed);
        break;
    case Kind::line:
        painter.setPen({Theme::of(this).line, 1});
        painter.drawLine(QPointF(0, placed.rect.center().y() + 0.5),
                         QPointF(placed.rect.width(), placed.rect.center().y() + 0.5));
        break;
    }
    paintState(painter, index);
}

void ImpressionList::paintState(QPainter& painter, std::size_t index) const {
    if (!rows_[index].pressable()) return;
    const Theme& theme = Theme::of(this);
    const auto isRow = [&](int cell) {
        return cell >= 0 && cells_.at(static_cast<std::size_t>(cell)) == static_cast<int>(index);
    };
    const QRectF shape = QRectF(placed_[index].rect).adjusted(0.75, 0.75, -0.75, -0.75);
    if (isRow(down_) || isRow(hover_)) {
        QColor over = theme.ink;
        over.setAlphaF(isRow(down_) ? 0.08F : 0.03F);
        painter.setPen(Qt::NoPen);
        painter.setBrush(over);
        painter.drawRoundedRect(shape, 6, 6);
    }
    if (hasFocus() && isRow(focus_)) paintFocusRing(painter, shape.adjusted(3, 3, -3, -3), 6, theme);
}

void ImpressionList::paintRedSign(QPainter& painter, const ImpressionRow& row, const Placed& placed) const {
    const Theme& theme = Theme::of(this);
    const QRectF shape = QRectF(placed.rect).adjusted(0.75, 0.75, -0.75, -0.75);
    // A note stands apart from what is urgent by more than its word: no fill and a plain outline.
    painter.setBrush(row.quiet ? theme.raised : theme.brickTint);
    painter.setPen({row.quiet ? theme.edge : theme.brick, 1.5});
    painter.drawRoundedRect(shape, 10, 10);
    const qreal lineHeight = QFontMetricsF(sized(this, 15)).height();
    qreal y =
        placed.second || placed.third ? shape.top() + 9.5 : shape.center().y() - placed.main->height() / 2;
    paintDiamond(painter, {shape.left() + 19, y + lineHeight / 2}, 14, row.quiet ? theme.quiet : theme.brick);
    const qreal x = shape.left() + redSignIndent;
    placed.main->paint(painter, {x, y}, theme.ink, theme.ink);
    y += placed.main->height() + 4;
    if (placed.second) {
        placed.second->paint(painter, {x, y}, theme.ink, theme.ink);
        y += placed.second->height() + 4;
    }
    if (placed.third) placed.third->paint(painter, {x, y}, theme.ink, theme.ink);
}

void ImpressionList::paintSite(QPainter& painter, const ImpressionRow& row, const Placed& placed) const {
    const Theme& theme = Theme::of(this);
    const bool first = row.kind == Kind::firstSite;
    const qreal bar = first ? 12 : 8;
    const QRectF box(placed.rect);
    const qreal textTop = box.top() + (first ? 3 : 5);
    placed.main->paint(painter, {box.left(), textTop}, theme.ink, theme.ink);
    const qreal drop = std::max(0.0, (QFontMetricsF(sized(this, first ? 17 : 16)).ascent() -
                                      QFontMetricsF(sized(this, first ? 16 : 15)).ascent()));
    placed.third->paint(painter, {box.right() - placed.third->naturalWidth(), textTop + drop}, theme.ink,
                        theme.ink);
    paintShareBar(painter, {box.left(), box.bottom() - bar - 4, box.width(), bar}, row.share, theme);
}

void ImpressionList::paintReasonHead(QPainter& painter, const ImpressionRow& row,
                                     const Placed& placed) const {
    painter.setFont(sized(this, 15));
    painter.setPen(Theme::of(this).quiet);
    const QRect whole = placed.rect;
    const bool two = headInTwo(row, whole.width());
    QRect line = whole;
    if (two) line.setTop(whole.top() + whole.height() / 2);
    painter.drawText(two ? QRect(whole.left(), whole.top(), whole.width(), whole.height() / 2) : whole,
                     Qt::AlignVCenter | Qt::AlignLeft, row.text);
    const int forWords = painter.fontMetrics().horizontalAdvance(row.right);
    const int axis = whole.right() - barWidth(whole.width()) / 2;
    const int against = std::min(axis - 8, whole.right() - forWords - 14);
    painter.drawText(QRect(0, line.top(), against, line.height()), Qt::AlignVCenter | Qt::AlignRight,
                     row.second);
    painter.drawText(line, Qt::AlignVCenter | Qt::AlignRight, row.right);
}

void ImpressionList::paintReason(QPainter& painter, const ImpressionRow& row, const Placed& placed) const {
    const Theme& theme = Theme::of(this);
    const QRectF box(placed.rect);
    placed.main->paint(painter, {box.left(), box.center().y() - placed.main->height() / 2}, theme.ink,
                       theme.ink);
    const qreal room = barWidth(placed.rect.width()) / 2.0;
    const qreal axis = box.right() - room;
    const qreal longest = std::min(longestReason, room - 2);
    const qreal length = std::clamp(std::abs(row.decibans) * pixelsADeciban, 2.0, longest);
    painter.setPen(Qt::NoPen);
    painter.setBrush(row.decibans < 0 ? theme.ochre : theme.ink);
    const qreal left = row.decibans < 0 ? axis - 1 - length : axis + 1;
    painter.drawRoundedRect(QRectF(left, box.center().y() - 4, length, 8), 2, 2);
    painter.setBrush(theme.quiet);
    painter.drawRect(QRectF(axis - 0.5, box.center().y() - 9, 1, 18));
}

void ImpressionList::paintWords(QPainter& painter, const ImpressionRow& row, const Placed& placed) const {
    const Theme& theme = Theme::of(this);
    const QRectF box(placed.rect);
    const QColor color = row.quiet ? theme.quiet : theme.ink;
    const qreal top = box.center().y() - placed.main->height() / 2;
    placed.main->paint(painter, {box.left(), top}, color, color);
    if (!row.right.isEmpty())
        placed.third->paint(painter, {box.right() - placed.third->naturalWidth(), top}, color, color);
    if (row.pressable()) paintGlyph(painter, Glyph::right, {box.right() - 8, box.center().y()}, theme.quiet);
}

void ImpressionList::paintMore(QPainter& painter, const ImpressionRow& row, const Placed& placed) const {
    const Theme& theme = Theme::of(this);
    painter.setFont(sized(this, 15, QFont::Medium));
    painter.setPen(theme.spruce);
    painter.drawText(placed.rect, Qt::AlignVCenter | Qt::AlignLeft, row.text);
}

void ImpressionList::paintTest(QPainter& painter, const Placed& placed) const {
    const Theme& theme = Theme::of(this);
    const QRectF shape = QRectF(placed.rect).adjusted(0.75, 0.75, -0.75, -0.75);
    painter.setBrush(theme.raised);
    painter.setPen({theme.edge, 1.5});
    painter.drawRoundedRect(shape, 10, 10);
    const qreal height = placed.main->height() + placed.second->height();
    const qreal top = shape.center().y() - height / 2;
    placed.main->paint(painter, {shape.left() + 13, top}, theme.ink, theme.ink);
    placed.second->paint(painter, {shape.left() + 13, top + placed.main->height()}, theme.quiet, theme.quiet);
    paintGlyph(painter, Glyph::arrow, {shape.right() - 22, shape.center().y()}, theme.ink);
}

} // namespace rhizograph::app
