#pragma once

#include "compare/changerows.h"
#include "parts/cells.h"
#include "parts/richline.h"

#include <memory>
#include <QWidget>
#include <vector>

namespace rhizograph::app {

/// What changed between two visits in a narrow column, the most important first: the item over its values and
/// the word of the change. A press asks for the curve of the row.
class ChangeList : public QWidget, public CellHost {
    Q_OBJECT

public:
    explicit ChangeList(QWidget* parent = nullptr);

    void setRows(std::vector<ChangeRow> rows);
    [[nodiscard]] const std::vector<ChangeRow>& rows() const { return rows_; }

    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {200, 44}; }
    [[nodiscard]] QString hostName() const override { return tr("What changed since the visit before"); }
    [[nodiscard]] int cellCount() const override { return static_cast<int>(rows_.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return hasFocus() ? focus_ : -1; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void rowPressed(int row);
    void focusMoved(const QRect& rect);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Placed {
        std::shared_ptr<const RichLine> item;
        std::shared_ptr<const RichLine> values;
        QRect rect;
    };
    [[nodiscard]] std::vector<Placed> place(int width) const;
    void placeAgain();

    std::vector<ChangeRow> rows_;
    std::vector<Placed> placed_; ///< for placedFor_
    int placedFor_ = -1;         ///< a width
    int focus_ = -1;
};

} // namespace rhizograph::app
