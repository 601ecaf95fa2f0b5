#pragma once

#include "exam/cellpaint.h"
#include "exam/rowlayout.h"
#include "parts/cells.h"
#include "shell/visitsession.h"

#include <QPointer>
#include <QTimer>
#include <QWidget>

namespace rhizograph::app {

/// One item of the catalogue as a row that paints all its buttons itself: for a sided item the patient's
/// right on the left half and the left on the right half, whatever the reading direction. A press records, a
/// second press on the same value clears, a long press or the label opens the menu.
class FindingRow : public QWidget, public CellHost {
    Q_OBJECT

public:
    FindingRow(VisitSession& session, const Item& item, const ExamOptions& options,
               QWidget* parent = nullptr);

    [[nodiscard]] const Item& item() const { return item_; }
    void setOptions(const ExamOptions& options);
    /// Names the sides above the buttons: on the first paired row below others.
    void setHeads(bool shown);
    /// Lays out again and repaints when the item's findings read differently now.
    void refresh();
    /// Puts the keyboard on the value that stands, else on the normal one of this side.
    void goTo(Side side);
    /// Takes the keyboard from another row, on the same side of the patient.
    void comeFrom(const FindingRow& row);
    /// Where a value of a side is shown; -1 when it is not (behind the fold, or not testable).
    [[nodiscard]] int cellOf(Side side, const Value& value) const;
    [[nodiscard]] const RowLayout& rowLayout() const { return layout_; }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override {
        return {320, heightForWidth(std::max(320, width()))};
    }

    [[nodiscard]] QString hostName() const override;
    [[nodiscard]] int cellCount() const override { return static_cast<int>(layout_.cells.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return focus_; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void leaving(int direction); ///< the keyboard wants the row above (-1) or below (+1)
    void restNormalAsked();
    void popupOpened(QWidget* popup); ///< menu, keypad, flyout or note editor

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] RowContent content() const;
    [[nodiscard]] RowFrame frame(int width) const;
    [[nodiscard]] RowCell& at(int index) { return layout_.cells[static_cast<std::size_t>(index)]; }
    [[nodiscard]] const RowCell& at(int index) const {
        return layout_.cells[static_cast<std::size_t>(index)];
    }
    [[nodiscard]] FindingKey key(Side side) const { return {item_.id, side}; }
    [[nodiscard]] const Finding* now(Side side) const { return session_.exam().find(key(side)); }
    [[nodiscard]] const Finding* before(Side side) const;
    [[nodiscard]] CellFace face(int index) const;
    [[nodiscard]] QString cellName(const RowCell& cell) const;
    void paintHeads(QPainter& painter) const;
    void paintLabel(QPainter& painter) const;
    [[nodiscard]] QString noteWords() const;
    void layOut();
    void setHover(int index);
    /// Forgets the press without acting on it: the finger went away or the page moved under it.
    void dropPress();
    [[nodiscard]] bool pageMoved() const;
    [[nodiscard]] bool answers(int index) const;
    void openMenu(int index);
    void openFlyout(int index);
    void openKeypad(int index, const QString& typed = {});
    bool typeDigit(int digit);
    void moveAlong(int steps);

    VisitSession& session_;
    const Item& item_;
    ExamOptions options_;
    RowLayout layout_;
    bool heads_ = false;
    int focus_ = 0;
    int hover_ = -1;
    int pressed_ = -1;
    QPoint pressedAt_;  ///< in the row
    QPoint pressedRow_; ///< where the row stood on the screen then
    QTimer longPress_;
};

} // namespace rhizograph::app
