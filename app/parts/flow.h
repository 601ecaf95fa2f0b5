#pragma once

#include <memory>
#include <QLayout>
#include <vector>

namespace rhizograph::app {

/// Places widgets side by side and breaks into further rows where the width ends.
class FlowLayout : public QLayout {
public:
    explicit FlowLayout(int gap) : gap_(gap) {}

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

    std::vector<std::unique_ptr<QLayoutItem>> items_;
    int gap_;
};

} // namespace rhizograph::app
