#pragma once

#include "parts/cells.h"
#include "patients/wordblock.h"
#include "record/model.h"
#include "shell/theme.h"

#include <QWidget>
#include <vector>

namespace rhizograph::app {

/// Where a visit stands, as a small mark with a shape of its own.
enum class StateMark { none, notBegun, begun, inRoom, toReview, done };

[[nodiscard]] StateMark markOf(const Visit& visit);

/// One row of a list of visits or patients, in words.
struct ListedVisit {
    QString name;   ///< bold
    QString about;  ///< under the name
    QString record; ///< record number
    QString visit;  ///< "Visit 4"
    StateMark mark = StateMark::none;
    QString state;    ///< bold
    QString detail;   ///< under the state
    int redSigns = 0; ///< urgent or emergency, not acknowledged
    QString action;   ///< what a press does: "Open", "Read"
    bool primary = false;
};

/// Rows at least 72 px high under column heads; words that do not fit on a line take more. Pressing anywhere
/// in a row does its action.
class VisitList : public QWidget, public CellHost {
    Q_OBJECT

public:
    /// Whose rows: of several patients, or the visits of one, which need no column for record and number.
    enum class Of { patients, onePatient };
    VisitList(const QString& name, Of of, QWidget* parent = nullptr);

    void setRows(std::vector<ListedVisit> rows, const QString& whenEmpty);
    [[nodiscard]] const std::vector<ListedVisit>& rows() const { return rows_; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] QString hostName() const override { return name_; }
    [[nodiscard]] int cellCount() const override { return static_cast<int>(rows_.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return hasFocus() ? focus_ : -1; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void pressed(int row);
    void focusMoved(const QRect& row); ///< the row with the keyboard, to be scrolled into view

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Columns {
        int name, record, visit, state, action, end;
        bool narrow;
    };
    [[nodiscard]] Columns columns() const;
    [[nodiscard]] QRect rowRect(int index) const;
    [[nodiscard]] int headHeight() const;
    [[nodiscard]] static int nameEnd(const Columns& at);
    [[nodiscard]] static int stateLeft(const Columns& at, const ListedVisit& row);
    [[nodiscard]] WordBlock nameBlock(const ListedVisit& row, bool narrow) const;
    [[nodiscard]] WordBlock stateBlock(const ListedVisit& row) const;
    [[nodiscard]] WordBlock wordBlock(const QString& words) const;
    void measure();
    void paintHead(QPainter& painter, const Columns& at) const;
    void paintRow(QPainter& painter, const Columns& at, int index) const;
    void paintAction(QPainter& painter, const QRect& box, const ListedVisit& visit) const;

    QString name_;
    Of of_;
    QString whenEmpty_;
    std::vector<ListedVisit> rows_;
    int rowHeight_ = 72; ///< px
    int focus_ = 0;
    int hover_ = -1;
    int down_ = -1;
};

} // namespace rhizograph::app
