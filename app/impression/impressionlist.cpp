#include "impression/impressionlist.h"

#include "parts/textsize.h"

#include <algorithm>
#include <QKeyEvent>
#include <QMouseEvent>

namespace rhizograph::app {

ImpressionList::ImpressionList(QWidget* parent) : QWidget(parent) {
    installCellAccess();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void ImpressionList::setRows(std::vector<ImpressionRow> rows) {
    if (rows == rows_) return;
    const QString focused = focus_ >= 0 ? cell(focus_).name : QString();
    rows_ = std::move(rows);
    cells_.clear();
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (rows_[i].kind != ImpressionRow::Kind::line) cells_.push_back(static_cast<int>(i));
    hover_ = down_ = -1;
    focus_ = -1;
    relayout();
    // The keyboard stays on the row that reads the same.
    for (int i = 0; i < cellCount() && !focused.isEmpty(); ++i)
        if (cell(i).name == focused) focus_ = i;
}

void ImpressionList::setRightPadding(int pixels) {
    if (pixels == rightPadding_) return;
    rightPadding_ = pixels;
    relayout();
}

void ImpressionList::relayout() {
    placeRows();
    std::erase_if(lines_, [](const auto& kept) { return kept.second.use_count() == 1; });
    updateGeometry();
    update();
}

void ImpressionList::placeRows() {
    placedFor_ = width();
    placed_ = place(placedFor_);
}

int ImpressionList::heightForWidth(int width) const {
    if (rows_.empty()) return 0;
    // Asked while the widget is being resized, before it hears of its new width.
    if (width == placedFor_ && placed_.size() == rows_.size()) return placed_.back().rect.bottom() + 13;
    return place(width).back().rect.bottom() + 13;
}

QSize ImpressionList::sizeHint() const {
    return {grown(this, 296), heightForWidth(std::max(width(), 200))};
}

QString ImpressionList::hostName() const {
    return tr("Impression");
}

Cell ImpressionList::cell(int index) const {
    const auto row = static_cast<std::size_t>(cells_.at(static_cast<std::size_t>(index)));
    const ImpressionRow& shown = rows_[row];
    QString action;
    if (shown.finding)
        action = tr("Goes to the finding");
    else if (shown.site)
        action = tr("Shows its reasons and its skin");
    const auto role = shown.pressable() ? QAccessible::PushButton : QAccessible::StaticText;
    return {shown.spoken, action, placed_.at(row).rect, role, true, shown.chosen};
}

int ImpressionList::cellAt(const QPoint& position) const {
    for (int i = 0; i < cellCount(); ++i) {
        const auto row = static_cast<std::size_t>(cells_[static_cast<std::size_t>(i)]);
        if (placed_[row].rect.contains(position)) return i;
    }
    return -1;
}

void ImpressionList::focusCell(int index) {
    focus_ = index;
    if (index >= 0) emit focusMoved(cell(index).rect);
    announceCell(this, index, QAccessible::Focus);
    update();
}

void ImpressionList::pressCell(int index) {
    if (index < 0 || index >= cellCount()) return;
    // Copied: what hears the signal may set other rows.
    const ImpressionRow row = rows_[static_cast<std::size_t>(cells_[static_cast<std::size_t>(index)])];
    if (row.finding)
        emit findingPressed(*row.finding);
    else if (row.site)
        emit sitePressed(row.site->first, row.site->second);
    else if (row.kind == ImpressionRow::Kind::more)
        emit morePressed();
}

void ImpressionList::resizeEvent(QResizeEvent*) {
    placeRows();
}

void ImpressionList::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange) relayout();
    QWidget::changeEvent(event);
}

void ImpressionList::mouseMoveEvent(QMouseEvent* event) {
    const int over = cellAt(event->position().toPoint());
    if (over == hover_) return;
    hover_ = over;
    const bool pressable = over >= 0 && cell(over).role == QAccessible::PushButton;
    setCursor(pressable ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void ImpressionList::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    down_ = cellAt(event->position().toPoint());
    update();
}

void ImpressionList::mouseReleaseEvent(QMouseEvent* event) {
    const int pressed = std::exchange(down_, -1);
    update();
    if (pressed >= 0 && pressed == cellAt(event->position().toPoint())) {
        focus_ = pressed;
        pressCell(pressed);
    }
}

void ImpressionList::leaveEvent(QEvent*) {
    hover_ = -1;
    update();
}

int ImpressionList::nextPressable(int from, int step) const {
    for (int i = from + step; i >= 0 && i < cellCount(); i += step)
        if (cell(i).role == QAccessible::PushButton) return i;
    return -1;
}

void ImpressionList::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Down:
    case Qt::Key_Up: {
        const int next = nextPressable(focus_, event->key() == Qt::Key_Down ? 1 : -1);
        if (next >= 0) focusCell(next);
        return;
    }
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        return pressCell(focus_);
    default:
        QWidget::keyPressEvent(event);
    }
}

void ImpressionList::focusInEvent(QFocusEvent* event) {
    if (focus_ < 0 && event->reason() != Qt::MouseFocusReason) focusCell(nextPressable(-1, 1));
    QWidget::focusInEvent(event);
}

} // namespace rhizograph::app
