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
        std::shared_ptr<const RichLine> threshold;
    };
    /// Left edges of the columns, and the right edges of those that are aligned there.
    struct Columns {
        int item, side, beforeRight, nowRight, change, threshold, end;
    };
    [[nodiscard]] Columns columns(int width) const;
    [[nodiscard]] std::vector<Placed> place(int width) const;
    [[nodiscard]] int headHeight() const;
    void gather();
    void paintHead(QPainter& painter) const;
    void paintRow(QPainter& painter, std::size_t index) const;

    ChangeRows rows_;
    std::vector<ChangeRow> shown_;
    std::vector<Placed> placed_;
    int placedFor_ = -1; ///< the width they are placed for
    std::set<int> open_;
    int focus_ = -1;
};

} // namespace rhizograph::app
