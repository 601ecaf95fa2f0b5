#include "compare/changelist.h"

#include "parts/button.h"
#include "parts/textsize.h"

#include <algorithm>
#include <cmath>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace rhizograph::app {
namespace {

constexpr int markRoom = 26; ///< of the shape, at the left
constexpr int above = 8;     ///< and below the words of a row
constexpr int atEnd = 8;

} // namespace

ChangeList::ChangeList(QWidget* parent) : QWidget(parent) {
    installCellAccess();
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void ChangeList::setRows(std::vector<ChangeRow> rows) {
    rows_ = std::move(rows);
    focus_ = -1;
    placeAgain();
}

void ChangeList::placeAgain() {
    placed_ = place(width());
    placedFor_ = width();
    updateGeometry();
    update();
}

std::vector<ChangeList::Placed> ChangeList::place(int width) const {
    std::vector<Placed> out;
    const QFont font = sized(this, 15);
    const int room = width - markRoom - atEnd;
    int top = 0;
    for (const ChangeRow& row : rows_) {
        Placed placed;
        placed.item = std::make_shared<const RichLine>(row.item, row.side, font, room);
        placed.values = std::make_shared<const RichLine>(row.mark.word,
                                                         tr("%1 → %2").arg(row.before, row.now), font, room);
        const int words = static_cast<int>(std::ceil(placed.item->height() + placed.values->height()));
        placed.rect = QRect(0, top, width, std::max(grown(this, 48), words + 2 * above));
        top += placed.rect.height();
        out.push_back(std::move(placed));
    }
    return out;
}

int ChangeList::heightForWidth(int width) const {
    if (rows_.empty()) return 0;
    // A scroll area asks between the change of the width and the event that tells of it.
    const auto placed = width == placedFor_ && placed_.size() == rows_.size() ? placed_ : place(width);
    return placed.back().rect.bottom() + 1;
}

QSize ChangeList::sizeHint() const {
    return {grown(this, 280), heightForWidth(std::max(width(), 200))};
}

Cell ChangeList::cell(int index) const {
    const auto row = static_cast<std::size_t>(index);
    return {rows_.at(row).spoken(),
            tr("Shows its curve"),
            placed_.at(row).rect,
            QAccessible::Button,
            true,
            false};
}

int ChangeList::cellAt(const QPoint& position) const {
    for (int index = 0; index < cellCount(); ++index)
        if (placed_[static_cast<std::size_t>(index)].rect.contains(position)) return index;
    return -1;
}

void ChangeList::focusCell(int index) {
    if (index < 0 || index >= cellCount()) return;
    focus_ = index;
    setFocus();
    emit focusMoved(placed_[static_cast<std::size_t>(index)].rect);
    announceCell(this, index, QAccessible::Focus);
    update();
}

void ChangeList::pressCell(int index) {
    if (index >= 0 && index < cellCount()) emit rowPressed(index);
}

void ChangeList::paintEvent(QPaintEvent* event) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < placed_.size(); ++i) {
        const Placed& placed = placed_[i];
        if (!placed.rect.intersects(event->rect())) continue;
        const ChangeMark& mark = rows_[i].mark;
        if (i > 0) painter.fillRect(QRect(0, placed.rect.top(), width(), 1), theme.line);
        const qreal words = placed.item->height() + placed.values->height();
        const qreal top = placed.rect.top() + (placed.rect.height() - words) / 2;
        paintChangeShape(painter, mark.shape, {9.0, top + placed.item->height() / 2}, mark.color);
        placed.item->paint(painter, {qreal(markRoom), top}, theme.ink, theme.quiet);
        placed.values->paint(painter, {qreal(markRoom), top + placed.item->height()}, mark.color, theme.ink);
        if (hasFocus() && focus_ == static_cast<int>(i))
            paintFocusRing(painter, QRectF(placed.rect).adjusted(2, 3, -2, -3), 6, theme);
    }
}

void ChangeList::resizeEvent(QResizeEvent*) {
    placeAgain();
}

void ChangeList::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) placeAgain();
}

void ChangeList::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    const int pressed = cellAt(event->position().toPoint());
    if (pressed < 0) return;
    focus_ = pressed;
    update();
    pressCell(pressed);
}

void ChangeList::keyPressEvent(QKeyEvent* event) {
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

} // namespace rhizograph::app
