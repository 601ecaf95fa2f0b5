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
    placed_ = place(width());
    placedFor_ = width();
    updateGeometry();
    update();
}

ChangeTable::Columns ChangeTable::columns(int width) const {
    const auto at = [width](double share) { return qRound(width * share); };
    return {16, at(0.27), at(0.44), at(0.575), at(0.6), at(0.745), width - 12};
}

int ChangeTable::headHeight() const {
    return grown(this, 36);
}

std::vector<ChangeTable::Placed> ChangeTable::place(int width) const {
    const Columns column = columns(width);
    std::vector<Placed> out;
    int y = headHeight();
    for (const ChangeRow& row : shown_) {
        Placed placed;
        const QFont font = sized(this, 16, row.mark.strong ? QFont::DemiBold : QFont::Normal);
        placed.item = std::make_shared<const RichLine>(
            QString(), row.item, font, (row.fold ? column.end - 40 : column.side - 10) - column.item);
        placed.threshold = std::make_shared<const RichLine>(QString(), row.threshold, sized(this, 15),
                                                            column.end - column.threshold);
        const int text = qCeil(std::max(placed.item->height(), placed.threshold->height()));
        placed.rect = {0, y, width, std::max(grown(this, 44), text + 14)};
        y += placed.rect.height();
        out.push_back(std::move(placed));
    }
    return out;
}

int ChangeTable::heightForWidth(int width) const {
    // A scroll area asks between the change of the width and the event that tells of it.
    const auto placed = width == placedFor_ && placed_.size() == shown_.size() ? placed_ : place(width);
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
    placed.item->paint(painter,
                       {static_cast<qreal>(column.item), box.center().y() - placed.item->height() / 2},
                       theme.ink, row.fold ? theme.quiet : theme.ink);
    if (row.fold) {
        const Glyph glyph = open_.contains(*row.fold) ? Glyph::up : Glyph::down;
        paintGlyph(painter, glyph, {column.end - 14.0, box.center().y()}, theme.quiet);
    } else {
        const auto write = [&](const QString& text, int from, int to, Qt::Alignment alignment) {
            painter.drawText(QRectF(from, box.top(), to - from, box.height()),
                             Qt::AlignVCenter | alignment | Qt::TextWordWrap, text);
        };
        painter.setFont(sized(this, 15));
        painter.setPen(theme.quiet);
        write(row.side, column.side, column.beforeRight, Qt::AlignLeft);
        painter.setPen(theme.ink);
        const int sideRoom = row.side.isEmpty() ? 0 : painter.fontMetrics().horizontalAdvance(row.side) + 8;
        write(row.before, column.side + sideRoom, column.beforeRight, Qt::AlignRight);
        painter.setFont(sized(this, 15, QFont::DemiBold));
        write(row.now, column.beforeRight + 10, column.nowRight, Qt::AlignRight);
        paintChangeShape(painter, row.mark.shape, {column.change + 7.0, box.center().y()}, row.mark.color);
        painter.setFont(sized(this, 15, row.mark.strong ? QFont::DemiBold : QFont::Medium));
        painter.setPen(row.mark.color);
        write(row.mark.word, column.change + 22, column.threshold - 6, Qt::AlignLeft);
        placed.threshold->paint(
            painter,
            {static_cast<qreal>(column.threshold), box.center().y() - placed.threshold->height() / 2},
            theme.quiet, theme.quiet);
    }
    if (hasFocus() && focus_ == static_cast<int>(index))
        paintFocusRing(painter, box.adjusted(5, 5, -5, -5), 6, theme);
}

void ChangeTable::resizeEvent(QResizeEvent*) {
    placed_ = place(width());
    placedFor_ = width();
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
