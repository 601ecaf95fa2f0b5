#include "parts/flow.h"

#include <algorithm>
#include <QLabel>
#include <QWidget>
#include <utility>

namespace rhizograph::app {

QLayoutItem* FlowLayout::itemAt(int index) const {
    return index >= 0 && index < count() ? items_[static_cast<std::size_t>(index)].get() : nullptr;
}

QLayoutItem* FlowLayout::takeAt(int index) {
    if (index < 0 || index >= count()) return nullptr;
    auto taken = std::move(items_[static_cast<std::size_t>(index)]);
    items_.erase(items_.begin() + index);
    return taken.release();
}

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const auto& item : items_)
        size = size.expandedTo(item->minimumSize());
    return size;
}

void FlowLayout::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

namespace {

/// What a part takes in a row of this width.
QSize sizeOf(const QLayoutItem& item, int width) {
    QSize size = item.sizeHint();
    // Words that break into lines take the row, not the square a label would like.
    const auto* label = qobject_cast<const QLabel*>(const_cast<QLayoutItem&>(item).widget());
    if (size.width() > width || (label != nullptr && label->wordWrap())) {
        size.setWidth(std::max(width, item.minimumSize().width()));
        if (item.hasHeightForWidth()) size.setHeight(item.heightForWidth(size.width()));
    }
    return size;
}

} // namespace

int FlowLayout::arrange(const QRect& whole, bool apply) const {
    const QMargins margins = contentsMargins();
    const QRect rect = whole.marginsRemoved(margins);
    int x = rect.x();
    int y = rect.y();
    int rowHeight = 0;
    std::size_t first = 0;
    for (std::size_t i = 0; i < items_.size(); ++i) {
        if (items_[i]->isEmpty()) continue;
        const QSize size = sizeOf(*items_[i], rect.width());
        if (x > rect.x() && x + size.width() > rect.x() + rect.width()) {
            if (apply) placeRow(first, i, {rect.x(), y, rect.width(), rowHeight});
            first = i;
            x = rect.x();
            y += rowHeight + gap_;
            rowHeight = 0;
        }
        x += size.width() + gap_;
        rowHeight = std::max(rowHeight, size.height());
    }
    if (apply) placeRow(first, items_.size(), {rect.x(), y, rect.width(), rowHeight});
    return y + rowHeight - rect.y() + margins.top() + margins.bottom();
}

void FlowLayout::placeRow(std::size_t from, std::size_t to, const QRect& row) const {
    int spare = row.width() + gap_;
    for (std::size_t i = from; i < to; ++i)
        if (!items_[i]->isEmpty()) spare -= sizeOf(*items_[i], row.width()).width() + gap_;
    int x = row.x();
    for (std::size_t i = from; i < to; ++i) {
        if (items_[i]->isEmpty()) continue;
        const bool pushed = static_cast<int>(i) == pushed_ && from == 0 && to == items_.size();
        if (pushed || items_[i]->alignment().testFlag(Qt::AlignRight)) x += std::exchange(spare, 0);
        if (items_[i]->alignment().testFlag(Qt::AlignHCenter)) x += std::exchange(spare, 0) / 2;
        QSize size = sizeOf(*items_[i], row.width());
        if (items_[i]->expandingDirections().testFlag(Qt::Horizontal))
            size.rwidth() += std::exchange(spare, 0);
        const int down =
            items_[i]->alignment().testFlag(Qt::AlignVCenter) ? (row.height() - size.height()) / 2 : 0;
        // Given the exact size: the alignment is the row's business, not the item's.
        const QRect place(x, row.y() + down, size.width(), size.height());
        if (QWidget* widget = items_[i]->widget())
            widget->setGeometry(place);
        else
            items_[i]->setGeometry(place);
        x += size.width() + gap_;
    }
}

} // namespace rhizograph::app
