#include "parts/flow.h"

#include <QWidget>

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

/// Of the items from this one on, side by side.
int FlowLayout::widthFrom(int index) const {
    int width = 0;
    for (int i = index; i < count(); ++i) {
        const QLayoutItem& item = *items_[static_cast<std::size_t>(i)];
        if (!item.isEmpty()) width += (width > 0 ? gap_ : 0) + item.sizeHint().width();
    }
    return width;
}

int FlowLayout::arrange(const QRect& rect, bool apply) const {
    int x = rect.x();
    int y = rect.y();
    int rowHeight = 0;
    const bool oneRow = pushed_ > 0 && widthFrom(0) <= rect.width();
    for (int i = 0; i < count(); ++i) {
        const auto& item = items_[static_cast<std::size_t>(i)];
        if (oneRow && i == pushed_) x = rect.x() + rect.width() - widthFrom(i);
        if (item->isEmpty()) continue;
        const QSize size = item->sizeHint();
        if (x > rect.x() && x + size.width() > rect.x() + rect.width()) {
            x = rect.x();
            y += rowHeight + gap_;
            rowHeight = 0;
        }
        if (apply) item->setGeometry({QPoint(x, y), size});
        x += size.width() + gap_;
        rowHeight = std::max(rowHeight, size.height());
    }
    return y + rowHeight - rect.y();
}

} // namespace rhizograph::app
