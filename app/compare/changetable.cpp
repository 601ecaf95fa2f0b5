#include "compare/changetable.h"

#include "parts/button.h"
#include "parts/textsize.h"

#include <algorithm>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

namespace rhizograph::app {

ChangeTable::ChangeTable(QWidget* parent) : QWidget(parent) {
    installCellAccess();
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void ChangeTable::setRows(ChangeRows rows) {
    rows_ = std::move(rows);
    focus_ = -1;
    gather();
}

void ChangeTable::gather() {
    shown_.clear();
    for (std::size_t fold = 0; fold < rows_.folds.size(); ++fold) {
        const auto& rows = rows_.folds[fold];
        const int number = static_cast<int>(fold);
        if (fold > 0) {
            if (rows.empty()) continue;
            ChangeRow head;
            head.item = rows_.foldNames[fold];
            head.fold = number;
            shown_.push_back(head);
            if (!open_.contains(number)) continue;
        }
        shown_.insert(shown_.end(), rows.begin(), rows.end());
    }
    measure();
    placeRows();
    updateGeometry();
    update();
}

void ChangeTable::placeRows() {
    placedFor_ = width();
    placed_ = place(placedFor_);
}

/// What the words between the item and its threshold need; a long value breaks into lines.
void ChangeTable::measure() {
    const QFontMetrics plain(sized(this, 15));
    const QFontMetrics strong(sized(this, 15, QFont::DemiBold));
    const auto head = [&](int index) {
        return index < rows_.heads.size() ? plain.horizontalAdvance(rows_.heads[index]) : 0;
    };
    needs_ = {head(1), head(2), head(3), head(4)};
    for (const ChangeRow& row : shown_) {
        needs_.side = std::max(needs_.side, plain.horizontalAdvance(row.side));
        const int longest = grown(this, 130);
        needs_.before = std::max(needs_.before, std::min(longest, plain.horizontalAdvance(row.before)));
        needs_.now = std::max(needs_.now, std::min(longest, strong.horizontalAdvance(row.now)));
        needs_.mark = std::max(needs_.mark, 22 + strong.horizontalAdvance(row.mark.word));
    }
}

ChangeTable::Columns ChangeTable::columns(int width) const {
    constexpr int edge = 16;
    constexpr int gap = 14;
    const int between = needs_.side + needs_.before + needs_.now + needs_.mark + 5 * gap;
    const int rest = width - edge - 12 - between;
    Columns out;
    out.item = edge;
    out.end = width - 12;
    out.stacked = rest < grown(this, 230);
    out.side = edge + rest / 2 + gap;
    out.beforeRight = out.side + needs_.side + gap + needs_.before;
    out.nowRight = out.beforeRight + gap + needs_.now;
    out.change = out.nowRight + gap;
    out.threshold = out.change + needs_.mark + gap;
    return out;
}

int ChangeTable::headHeight() const {
    return columns(width()).stacked ? 0 : grown(this, 36);
}

/// Where the columns do not fit: what the columns say, in a line of its own.
QString ChangeTable::stackedWords(const ChangeRow& row) const {
    const auto named = [&](int head, const QString& value) {
        return value.isEmpty() || head >= rows_.heads.size() || rows_.heads[head].isEmpty()
                   ? value
                   : rows_.heads[head] + QStringLiteral(": ") + value;
    };
    QStringList words{row.side, named(2, row.before), named(3, row.now)};
    words.removeAll(QString());
    return words.join(QStringLiteral(" · "));
}

int ChangeTable::valuesHeight(const ChangeRow& row) const {
    const auto high = [&](const QString& text, int room, QFont::Weight weight) {
        return QFontMetrics(sized(this, 15, weight))
            .boundingRect(QRect(0, 0, room, 10'000), Qt::TextWordWrap, text)
            .height();
    };
    return std::max(high(row.before, needs_.before, QFont::Normal),
                    high(row.now, needs_.now, QFont::DemiBold));
}

ChangeTable::Placed ChangeTable::placedRow(const ChangeRow& row, const Columns& column) const {
    Placed placed;
    const QFont font = sized(this, 16, row.mark.strong ? QFont::DemiBold : QFont::Normal);
    const int whole = column.end - column.item;
    const int itemRoom = row.fold ? whole - 40 : column.stacked ? whole : column.side - 10 - column.item;
    placed.item = std::make_shared<const RichLine>(QString(), row.item, font, itemRoom);
    placed.threshold = std::make_shared<const RichLine>(
        QString(), row.threshold, sized(this, 15), column.stacked ? whole : column.end - column.threshold);
    qreal text = std::max(placed.item->height(), placed.threshold->height());
    if (!column.stacked) text = std::max<qreal>(text, valuesHeight(row));
    if (column.stacked && !row.fold) {
        placed.values =
            std::make_shared<const RichLine>(QString(), stackedWords(row), sized(this, 15), whole);
        text = placed.item->height() + placed.values->height() + grown(this, 22) + placed.threshold->height();
    }
    placed.rect.setHeight(std::max(grown(this, 44), qCeil(text) + 14));
    return placed;
}

std::vector<ChangeTable::Placed> ChangeTable::place(int width) const {
    const Columns column = columns(width);
    std::vector<Placed> out;
    int y = column.stacked ? 0 : grown(this, 36);
    for (const ChangeRow& row : shown_) {
        Placed placed = placedRow(row, column);
        placed.rect = {0, y, width, placed.rect.height()};
        y += placed.rect.height();
        out.push_back(std::move(placed));
    }
    return out;
}

int ChangeTable::heightForWidth(int width) const {
    // Asked while the widget is being resized, before it hears of its new width: what is placed may be of
    // another width.
    const bool known = width == placedFor_ && placed_.size() == shown_.size();
    const auto placed = known ? placed_ : place(width);
    return placed.empty() ? headHeight() : placed.back().rect.bottom() + 2;
}

QSize ChangeTable::sizeHint() const {
    return {640, heightForWidth(std::max(width(), 320))};
}

Cell ChangeTable::cell(int index) const {
    const ChangeRow& row = shown_.at(static_cast<std::size_t>(index));
    const QString action = row.fold      ? tr("Shows or hides them")
                           : row.finding ? tr("Goes to the finding")
                                         : QString();
    const auto role = row.fold || row.finding ? QAccessible::PushButton : QAccessible::StaticText;
    return {row.spoken(), action, placed_.at(static_cast<std::size_t>(index)).rect,
            role,         true,   row.fold && open_.contains(*row.fold)};
}

int ChangeTable::cellAt(const QPoint& position) const {
    for (int i = 0; i < cellCount(); ++i)
        if (placed_[static_cast<std::size_t>(i)].rect.contains(position)) return i;
    return -1;
}

void ChangeTable::focusCell(int index) {
    focus_ = index;
    if (index >= 0) emit focusMoved(cell(index).rect);
    announceCell(this, index, QAccessible::Focus);
    update();
}

void ChangeTable::pressCell(int index) {
    if (index < 0 || index >= cellCount()) return;
    const ChangeRow row = shown_[static_cast<std::size_t>(index)];
    if (row.fold) {
        if (!open_.erase(*row.fold)) open_.insert(*row.fold);
        gather();
    } else if (row.finding) {
        emit findingPressed(*row.finding);
    }
}

void ChangeTable::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintHead(painter);
    for (std::size_t i = 0; i < placed_.size(); ++i)
        if (placed_[i].rect.intersects(event->rect())) paintRow(painter, i);
}

void ChangeTable::paintHead(QPainter& painter) const {
    const Columns column = columns(width());
    if (column.stacked) return;
    const int height = headHeight();
    painter.setFont(sized(this, 15));
    painter.setPen(Theme::of(this).quiet);
    const auto write = [&](int index, int from, int to, Qt::Alignment alignment) {
        if (index < rows_.heads.size())
            painter.drawText(QRect(from, 0, to - from, height), Qt::AlignVCenter | alignment,
                             rows_.heads[index]);
    };
    write(0, column.item, column.side, Qt::AlignLeft);
    write(1, column.side, column.beforeRight, Qt::AlignLeft);
    write(2, column.side, column.beforeRight, Qt::AlignRight);
    write(3, column.beforeRight, column.nowRight, Qt::AlignRight);
    write(4, column.change, column.threshold, Qt::AlignLeft);
    write(5, column.threshold, column.end, Qt::AlignLeft);
}

void ChangeTable::paintRow(QPainter& painter, std::size_t index) const {
    const Theme& theme = Theme::of(this);
    const ChangeRow& row = shown_[index];
    const Placed& placed = placed_[index];
    const QRectF box(placed.rect);
    const Columns column = columns(width());
    painter.fillRect(QRectF(0, box.top(), width(), 1), theme.line);
    const bool stacked = column.stacked && !row.fold;
    const qreal top = stacked ? box.top() + 7 : box.center().y() - placed.item->height() / 2;
    placed.item->paint(painter, {static_cast<qreal>(column.item), top}, theme.ink,
                       row.fold ? theme.quiet : theme.ink);
    if (row.fold) {
        const Glyph glyph = open_.contains(*row.fold) ? Glyph::up : Glyph::down;
        paintGlyph(painter, glyph, {column.end - 14.0, box.center().y()}, theme.quiet);
    } else if (stacked) {
        paintStacked(painter, row, placed, column);
    } else {
        paintColumns(painter, row, placed, column);
    }
    if (hasFocus() && focus_ == static_cast<int>(index))
        paintFocusRing(painter, box.adjusted(5, 5, -5, -5), 6, theme);
}

void ChangeTable::paintMark(QPainter& painter, const ChangeRow& row, const QPointF& middleLeft,
                            int room) const {
    paintChangeShape(painter, row.mark.shape, middleLeft + QPointF(7, 0), row.mark.color);
    painter.setFont(sized(this, 15, row.mark.strong ? QFont::DemiBold : QFont::Medium));
    painter.setPen(row.mark.color);
    const int high = grown(this, 22);
    painter.drawText(QRectF(middleLeft.x() + 22, middleLeft.y() - high / 2.0, room - 22, high),
                     Qt::AlignVCenter | Qt::AlignLeft, row.mark.word);
}

void ChangeTable::paintColumns(QPainter& painter, const ChangeRow& row, const Placed& placed,
                               const Columns& column) const {
    const Theme& theme = Theme::of(this);
    const QRectF box(placed.rect);
    const auto write = [&](const QString& text, int from, int to, Qt::Alignment alignment) {
        painter.drawText(QRectF(from, box.top(), to - from, box.height()),
                         Qt::AlignVCenter | Qt::TextWordWrap | alignment, text);
    };
    painter.setFont(sized(this, 15));
    painter.setPen(theme.quiet);
    write(row.side, column.side, column.beforeRight, Qt::AlignLeft);
    painter.setPen(theme.ink);
    write(row.before, column.beforeRight - needs_.before - 1, column.beforeRight, Qt::AlignRight);
    painter.setFont(sized(this, 15, QFont::DemiBold));
    write(row.now, column.nowRight - needs_.now - 1, column.nowRight, Qt::AlignRight);
    paintMark(painter, row, {static_cast<qreal>(column.change), box.center().y()},
              column.threshold - column.change);
    placed.threshold->paint(
        painter, {static_cast<qreal>(column.threshold), box.center().y() - placed.threshold->height() / 2},
        theme.quiet, theme.quiet);
}

void ChangeTable::paintStacked(QPainter& painter, const ChangeRow& row, const Placed& placed,
                               const Columns& column) const {
    const Theme& theme = Theme::of(this);
    const auto left = static_cast<qreal>(column.item);
    qreal y = placed.rect.top() + 7 + placed.item->height();
    placed.values->paint(painter, {left, y}, theme.ink, theme.ink);
    y += placed.values->height();
    const int high = grown(this, 22);
    paintMark(painter, row, {left, y + high / 2.0}, column.end - column.item);
    placed.threshold->paint(painter, {left, y + high}, theme.quiet, theme.quiet);
}

void ChangeTable::resizeEvent(QResizeEvent*) {
    placeRows();
}

void ChangeTable::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) gather();
    QWidget::changeEvent(event);
}

void ChangeTable::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    focus_ = cellAt(event->position().toPoint());
    pressCell(focus_);
    update();
}

void ChangeTable::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Down:
        return focusCell(std::min(focus_ + 1, cellCount() - 1));
    case Qt::Key_Up:
        return focusCell(std::max(focus_ - 1, 0));
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        return pressCell(focus_);
    default:
        QWidget::keyPressEvent(event);
    }
}

/// The source of a threshold stands in the tip.
bool ChangeTable::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const int row = cellAt(help->pos());
        if (row >= 0)
            QToolTip::showText(help->globalPos(), shown_[static_cast<std::size_t>(row)].source, this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace rhizograph::app
