#pragma once

#include <memory>
#include <QLayout>
#include <vector>

namespace rhizograph::app {

/// Places widgets side by side and breaks into further rows where the width ends. A part aligned right goes
/// to the end of its row with what follows it; a part wider than the row gets the row and as much height as
/// it then needs; one that expands takes the room its row has to spare.
class FlowLayout : public QLayout {
public:
    explicit FlowLayout(int gap) : gap_(gap) {}

    /// Where all fits into one row, the widgets from this one on stand at its end.
    void pushFrom(int index) { pushed_ = index; }

    void addItem(QLayoutItem* item) override { items_.emplace_back(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override { return arrange({0, 0, width, 0}, false); }
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& rect) override;

private:
    int arrange(const QRect& rect, bool apply) const;
    void placeRow(std::size_t from, std::size_t to, const QRect& row) const;

    std::vector<std::unique_ptr<QLayoutItem>> items_;
    int gap_;
    int pushed_ = -1;
};

} // namespace rhizograph::app
