#include "exam/rowlayout.h"

#include "exam/rowwords.h"
#include "language/language.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QStringList>

namespace rhizograph::app {
namespace {

constexpr qreal edge = 10;  ///< free at both ends of a row
constexpr qreal gap = 8;    ///< between buttons
constexpr qreal least = 44; ///< smallest side of anything pressable
constexpr qreal border = 8; ///< free above and below the buttons
constexpr qreal labelLeast = 120;
constexpr qreal unpairedEdge = 16;

using Kind = RowCell::Kind;

QFont fontOf(const RowFrame& frame, int pixels, QFont::Weight weight) {
    QFont font = frame.font;
    font.setPixelSize(qRound(pixels * frame.scale));
    font.setWeight(weight);
    return font;
}

int pixelsOf(const Scale& scale) {
    return scale.kind == Scale::Kind::choice ? 15 : 17;
}

/// Measured bold, so that a button keeps its place when it is chosen.
qreal textWidth(const RowFrame& frame, const Scale& scale, const QString& text) {
    return QFontMetricsF(fontOf(frame, pixelsOf(scale), QFont::Bold)).horizontalAdvance(text);
}

/// Whether a button of this width holds its text; words may break into two lines, never inside a word.
bool holdsText(const RowFrame& frame, int pixels, const QString& text, qreal width) {
    const QFontMetricsF metrics(fontOf(frame, pixels, QFont::Bold));
    const qreal room = width - 10;
    for (const QString& word : text.split(' '))
        if (metrics.horizontalAdvance(word) > room) return false;
    const QRectF box = metrics.boundingRect(QRectF(0, 0, room, 10000), Qt::TextWordWrap, text);
    return box.height() <= std::round(least * frame.scale) - 2;
}

qreal lineHeight(const RowFrame& frame) {
    return QFontMetricsF(fontOf(frame, 16, QFont::Normal)).height();
}

bool wholeGrade(const std::string& token) {
    return std::all_of(token.begin(), token.end(), [](char c) { return c >= '0' && c <= '9'; });
}

bool holds(const Exam* exam, const Item& item, const std::string& token) {
    if (exam == nullptr) return false;
    for (const Side side : {Side::none, Side::left, Side::right}) {
        const Finding* found = exam->find(FindingKey{item.id, side});
        if (found != nullptr && found->value == Value::token(token)) return true;
    }
    return false;
}

/// The values offered, normal end first: what stands next to the label comes first, worse further out.
std::vector<Value> offered(const RowContent& content) {
    const Scale& scale = content.item->scale;
    std::vector<Value> values;
    if (isScore(scale)) {
        for (double number = scale.minimum; number <= scale.maximum; ++number)
            values.push_back(Value::number(number));
        return values;
    }
    for (const ScaleValue& each : scale.values) {
        // A grade between whole ones that was recorded shows even where the setting would leave it out.
        const bool shown = scale.kind != Scale::Kind::grade || content.options.splitGrades ||
                           wholeGrade(each.token) || holds(content.exam, *content.item, each.token) ||
                           holds(content.previous, *content.item, each.token);
        if (shown) values.push_back(Value::token(each.token));
    }
    if (scale.kind == Scale::Kind::grade) std::reverse(values.begin(), values.end());
    return values;
}

struct Block {
    std::vector<RowCell> cells; ///< normal end first
    std::size_t columns = 1;
    std::vector<std::string> folded;
};

RowCell valueCell(const RowContent& content, const Value& value, Side side) {
    const Scale& scale = content.item->scale;
    const QString text = value.isNumber() ? shownNumber(scale, value.number(), content.options.length, true)
                                          : medical(display(scale, value));
    return {Kind::value, side, value, text, {}};
}

/// Buttons in a line, as many as hold their texts, spread evenly over the lines needed.
std::size_t columnsFor(const RowContent& content, const RowFrame& frame, const std::vector<RowCell>& cells,
                       qreal width) {
    for (std::size_t columns = cells.size(); columns > 1; --columns) {
        const qreal each = (width - gap * static_cast<qreal>(columns - 1)) / static_cast<qreal>(columns);
        const auto fits = [&](const RowCell& cell) {
            return holdsText(frame, pixelsOf(content.item->scale), cell.text, each);
        };
        if (each < least || !std::all_of(cells.begin(), cells.end(), fits)) continue;
        const std::size_t lines = (cells.size() + columns - 1) / columns;
        return (cells.size() + lines - 1) / lines;
    }
    return 1;
}

/// Puts the outermost grades behind one button when a line does not hold them all.
void fold(Block& block, const RowFrame& frame, qreal width) {
    auto fit = static_cast<std::size_t>(std::floor((width + gap) / (least + gap)));
    for (fit = std::min(fit, block.cells.size() - 1); fit >= 4; --fit) {
        const std::size_t kept = fit - 1;
        const qreal each = (width - gap * static_cast<qreal>(kept)) / static_cast<qreal>(fit);
        const QString text = block.cells.back().text + QChar(0x2013) + block.cells[kept].text;
        if (!holdsText(frame, 15, text, each)) continue;
        const RowCell folded{Kind::fold, block.cells.front().side, std::nullopt, text, {}};
        for (std::size_t i = block.cells.size(); i-- > kept;)
            block.folded.push_back(block.cells[i].value->word());
        block.cells.resize(kept);
        block.cells.push_back(folded);
        block.columns = fit;
        return;
    }
}

Block blockOf(const RowContent& content, const RowFrame& frame, Side side, qreal width) {
    const Item& item = *content.item;
    const Finding* now = content.exam->find(FindingKey{item.id, side});
    Block block;
    if (now != nullptr && !now->value.testable()) {
        block.cells.push_back({Kind::notTestable,
                               side,
                               now->value,
                               valueText(item.scale, now->value, content.options.length),
                               {}});
        return block;
    }
    if (item.scale.numeric() && !isScore(item.scale)) {
        const QString text = now != nullptr
                                 ? shownNumber(item.scale, now->value.number(), content.options.length)
                                 : QChar(0x2013) + shownUnit(item.scale, content.options.length).suffix;
        block.cells.push_back(
            {Kind::field, side, now != nullptr ? std::optional{now->value} : std::nullopt, text, {}});
        return block;
    }
    for (const Value& value : offered(content))
        block.cells.push_back(valueCell(content, value, side));
    block.columns = columnsFor(content, frame, block.cells, width);
    if (item.scale.kind == Scale::Kind::grade && block.columns < block.cells.size())
        fold(block, frame, width);
    return block;
}

std::size_t linesOf(const Block& block) {
    return (block.cells.size() + block.columns - 1) / block.columns;
}

qreal blockHeight(const Block& block, const RowFrame& frame) {
    const auto lines = static_cast<qreal>(linesOf(block));
    return lines * std::round(least * frame.scale) + (lines - 1) * gap;
}

/// Places a side's cells in a block; `inner` is the end at the label, where the normal value stands.
void placeBlock(Block& block, const RowFrame& frame, const QRectF& room, bool innerIsLeft) {
    const auto columns = static_cast<qreal>(block.columns);
    const qreal width = (room.width() - gap * (columns - 1)) / columns;
    const qreal height = std::round(least * frame.scale);
    for (std::size_t i = 0; i < block.cells.size(); ++i) {
        const auto column = static_cast<qreal>(i % block.columns);
        const auto line = static_cast<qreal>(i / block.columns);
        const qreal fromInner = column * (width + gap);
        const qreal x = innerIsLeft ? room.left() + fromInner : room.right() - fromInner - width;
        block.cells[i].rect = {x, room.top() + line * (height + gap), width, height};
    }
}

void append(RowLayout& layout, Block& block) {
    for (RowCell& each : block.cells)
        layout.cells.push_back(std::move(each));
    if (layout.folded.empty()) layout.folded = std::move(block.folded);
}

/// Height of the label in this width, and whether it keeps to two lines without breaking a word.
qreal labelHeight(const RowFrame& frame, const QString& text, qreal width, bool* fits = nullptr) {
    const QFontMetricsF metrics(fontOf(frame, 16, QFont::Normal));
    const QRectF box = metrics.boundingRect(QRectF(0, 0, width, 10000), Qt::TextWordWrap, text);
    if (fits != nullptr) {
        *fits = box.height() <= 2.2 * metrics.lineSpacing();
        for (const QString& word : text.split(' '))
            *fits = *fits && metrics.horizontalAdvance(word) <= width;
    }
    return box.height();
}

qreal labelWidth(const RowFrame& frame, const QString& text) {
    return QFontMetricsF(fontOf(frame, 16, QFont::Normal)).horizontalAdvance(text);
}

qreal longestWord(const RowFrame& frame, const QString& text) {
    qreal widest = 0;
    for (const QString& word : text.split(' '))
        widest = std::max(widest, labelWidth(frame, word));
    return widest;
}

QString rowLabel(const Item& item) {
    return medical(item.shortLabel.empty() ? item.label : item.shortLabel);
}

bool stacked(const Block& block) {
    return block.columns == 1 && block.cells.size() > 3;
}

RowLayout pairedLayout(const RowContent& content, const RowFrame& frame) {
    qreal side = sideWidth(frame.width, frame.scale);
    Block right = blockOf(content, frame, Side::right, side);
    Block left = blockOf(content, frame, Side::left, side);
    bool fits = labelsBetween(frame.width, frame.scale);
    if (stacked(right) || stacked(left)) {
        // A tall stack of words: give up the middle column for wider sides.
        fits = false;
        side = std::floor((frame.width - 2 * edge - 16) / 2);
        right = blockOf(content, frame, Side::right, side);
        left = blockOf(content, frame, Side::left, side);
    }
    const QString text = rowLabel(*content.item);
    const qreal between = frame.width - 2 * (edge + side) - 16;
    RowLayout layout;
    qreal words = labelHeight(frame, text, between, fits ? &fits : nullptr);
    layout.labelAbove = !fits;
    const qreal buttons = std::max(blockHeight(right, frame), blockHeight(left, frame));
    qreal top = border;
    if (frame.heads) {
        const qreal high = std::round(26 * frame.scale);
        layout.rightHead = {edge, 2, side, high};
        layout.leftHead = {frame.width - edge - side, 2, side, high};
        top = high + 4;
    }
    if (layout.labelAbove) {
        words = labelHeight(frame, text, frame.width - 2 * unpairedEdge);
        const qreal high = std::max(words, lineHeight(frame));
        // The name shares the line of the sides where it leaves them their room.
        const bool shared = frame.heads && words < 1.5 * lineHeight(frame) &&
                            labelWidth(frame, text) < side - 60 * frame.scale;
        const qreal y = shared ? (layout.rightHead.height() - high) / 2 + 3 : top;
        layout.label = {unpairedEdge, y, frame.width - 2 * unpairedEdge, high};
        if (!shared) top += high + 6;
    } else {
        layout.label = {edge + side + 8, top, between, buttons};
    }
    placeBlock(right, frame, {edge, top, side, buttons}, false);
    placeBlock(left, frame, {frame.width - edge - side, top, side, buttons}, true);
    std::reverse(right.cells.begin(), right.cells.end());
    append(layout, right);
    append(layout, left);
    layout.height = qCeil(top + buttons + border);
    return layout;
}

/// Buttons as wide as their words, in reading order, broken into lines where the width ends; returns the size
/// used.
QSizeF flow(Block& block, const RowContent& content, const RowFrame& frame, qreal width) {
    const qreal height = std::round(least * frame.scale);
    qreal x = 0, y = 0, widest = 0;
    for (RowCell& each : block.cells) {
        qreal wide = textWidth(frame, content.item->scale, each.text) + 28 * frame.scale;
        if (each.kind == Kind::field) wide = std::max(wide, 152 * frame.scale);
        if (isScore(content.item->scale)) wide = textWidth(frame, content.item->scale, each.text) + 12;
        wide = std::min(width, std::max(wide, isScore(content.item->scale) ? least : 64 * frame.scale));
        if (x > 0 && x + wide > width) x = 0, y += height + gap;
        each.rect = {x, y, wide, height};
        widest = std::max(widest, x + wide);
        x += wide + gap;
    }
    return {widest, y + height};
}

RowLayout singleLayout(const RowContent& content, const RowFrame& frame) {
    const QString text = rowLabel(*content.item);
    const qreal room = frame.width - 2 * unpairedEdge;
    Block block = blockOf(content, frame, Side::none, room);
    block.columns = std::max<std::size_t>(1, block.cells.size());
    // Reading order for words: what stands first in the catalogue comes first.
    if (content.item->scale.kind == Scale::Kind::grade) std::reverse(block.cells.begin(), block.cells.end());
    QSizeF used = flow(block, content, frame, room);
    const qreal beside = room - used.width() - 16;
    RowLayout layout;
    const bool oneLine = used.height() <= std::round(least * frame.scale) + 1;
    layout.labelAbove =
        !oneLine || beside < std::min(180 * frame.scale, room * 0.34) || beside < longestWord(frame, text);
    const qreal words = labelHeight(frame, text, layout.labelAbove ? room : beside);
    QPointF at;
    if (layout.labelAbove) {
        layout.label = {unpairedEdge, border + 2, room, words};
        at = {unpairedEdge, border + words + 8};
        layout.height = qCeil(at.y() + used.height() + border);
    } else {
        const qreal high = std::max(used.height(), words);
        layout.label = {unpairedEdge, border, beside, high};
        at = {frame.width - unpairedEdge - used.width() + 6, border + (high - used.height()) / 2};
        layout.height = qCeil(high + 2 * border);
    }
    for (RowCell& each : block.cells) {
        each.rect.translate(at);
        if (frame.rightToLeft) each.rect.moveLeft(frame.width - each.rect.right());
    }
    if (frame.rightToLeft) layout.label.moveLeft(frame.width - layout.label.right());
    append(layout, block);
    return layout;
}

/// Room for the remark, below an unpaired row's label and after a paired one's.
void placeNote(RowLayout& layout, const RowContent& content, const RowFrame& frame) {
    const Finding* now = content.exam->find(FindingKey{content.item->id, Side::none});
    if (content.item->sided || now == nullptr || now->note.empty()) return;
    const qreal line = QFontMetricsF(fontOf(frame, 15, QFont::Normal)).height();
    const qreal below = layout.labelAbove ? layout.height : 0;
    if (layout.labelAbove) {
        layout.note = {layout.label.left(), below - border + 2, layout.label.width(), line};
        layout.height += qCeil(line + 4);
    } else {
        const qreal words = labelHeight(frame, rowLabel(*content.item), layout.label.width());
        layout.height = std::max(layout.height, qCeil(words + line + 2 * border));
        layout.label = {layout.label.left(), (layout.height - words - line) / 2, layout.label.width(), words};
        layout.note = {layout.label.left(), layout.label.bottom(), layout.label.width(), line};
        for (RowCell& each : layout.cells)
            each.rect.moveTop((layout.height - each.rect.height()) / 2);
    }
}

} // namespace

bool labelsBetween(int width, qreal scale) {
    return scale < 1.25 && (width - 2 * edge - labelLeast * scale) / 2 >= 300;
}

qreal sideWidth(int width, qreal scale) {
    const qreal wished = (width >= 1000 ? 408 : 304) * scale;
    const qreal middle = labelsBetween(width, scale) ? labelLeast * scale : 16;
    return std::floor(std::min(wished, (width - 2 * edge - middle) / 2));
}

RowLayout layOutRow(const RowContent& content, const RowFrame& frame) {
    RowLayout layout = content.item->sided ? pairedLayout(content, frame) : singleLayout(content, frame);
    placeNote(layout, content, frame);
    // The whole height beside the buttons opens the menu, so that a finger finds it.
    QRectF press = layout.label;
    if (!layout.labelAbove) press.setTop(layout.rightHead.height()), press.setBottom(layout.height);
    layout.cells.push_back({Kind::label, Side::none, std::nullopt, rowLabel(*content.item), press});
    return layout;
}

} // namespace rhizograph::app
