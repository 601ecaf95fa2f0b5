#pragma once

#include "compare/changerows.h"
#include "parts/cells.h"
#include "parts/richline.h"

#include <memory>
#include <QWidget>
#include <set>

namespace rhizograph::app {

/// The table of a comparison, painted by one widget. What stayed the same and what cannot be compared is
/// folded away under its count, never left out.
class ChangeTable : public QWidget, public CellHost {
    Q_OBJECT

public:
    explicit ChangeTable(QWidget* parent = nullptr);

    void setRows(ChangeRows rows);
    [[nodiscard]] const ChangeRows& rows() const { return rows_; }
    [[nodiscard]] const std::vector<ChangeRow>& shown() const { return shown_; }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {320, 0}; }

    [[nodiscard]] QString hostName() const override { return rows_.title; }
    [[nodiscard]] int cellCount() const override { return static_cast<int>(shown_.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return focus_; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void findingPressed(const rhizograph::FindingKey& key);
    void focusMoved(const QRect& rect);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Placed {
        QRect rect;
        std::shared_ptr<const RichLine> item;
        std::shared_ptr<const RichLine> values; ///< where the columns do not fit
        std::shared_ptr<const RichLine> threshold;
    };
    /// Left edges of the columns, and the right edges of those that are aligned there.
    struct Columns {
        int item = 0, side = 0, beforeRight = 0, nowRight = 0, change = 0, threshold = 0, end = 0;
        bool stacked = false; ///< one below the other: too narrow for columns
    };
    struct Needs {
        int side = 0, before = 0, now = 0, mark = 0; ///< px
    };
    void measure();
    [[nodiscard]] Columns columns(int width) const;
    [[nodiscard]] QString stackedWords(const ChangeRow& row) const;
    [[nodiscard]] int valuesHeight(const ChangeRow& row) const;
    [[nodiscard]] Placed placedRow(const ChangeRow& row, const Columns& column) const;
    [[nodiscard]] std::vector<Placed> place(int width) const;
    [[nodiscard]] int headHeight() const;
    void gather();
    void placeRows();
    void paintHead(QPainter& painter) const;
    void paintRow(QPainter& painter, std::size_t index) const;
    void paintMark(QPainter& painter, const ChangeRow& row, const QPointF& middleLeft, int room) const;
    void paintColumns(QPainter& painter, const ChangeRow& row, const Placed& placed,
                      const Columns& column) const;
    void paintStacked(QPainter& painter, const ChangeRow& row, const Placed& placed,
                      const Columns& column) const;

    ChangeRows rows_;
    std::vector<ChangeRow> shown_;
    Needs needs_;
    std::vector<Placed> placed_;
    int placedFor_ = -1; ///< the width the rows are placed for, in px
    std::set<int> open_;
    int focus_ = -1;
};

} // namespace rhizograph::app
