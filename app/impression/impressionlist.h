#pragma once

#include "impression/impressionrows.h"
#include "parts/cells.h"
#include "parts/richline.h"

#include <map>
#include <memory>
#include <QWidget>
#include <tuple>

namespace rhizograph::app {

struct Theme;

/// The rows of the impression, painted by one widget; every row is a part that assistive programs see.
class ImpressionList : public QWidget, public CellHost {
    Q_OBJECT

public:
    explicit ImpressionList(QWidget* parent = nullptr);

    void setRows(std::vector<ImpressionRow> rows);
    /// Room left free at the right of the rows, so that they keep their width beside a scroll bar.
    void setRightPadding(int pixels);
    [[nodiscard]] const std::vector<ImpressionRow>& rows() const { return rows_; }
    [[nodiscard]] QRect rectOf(int row) const { return placed_.at(static_cast<std::size_t>(row)).rect; }

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {0, 0}; }

    [[nodiscard]] QString hostName() const override;
    [[nodiscard]] int cellCount() const override { return static_cast<int>(cells_.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return focus_; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void findingPressed(const rhizograph::FindingKey& key);
    void sitePressed(const rhizograph::SiteId& site, rhizograph::Side side);
    void morePressed();
    void focusMoved(const QRect& rect); ///< to be scrolled into view

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// One row with its place and its words measured for that place.
    struct Placed {
        QRect rect;
        std::shared_ptr<const RichLine> main;
        std::shared_ptr<const RichLine> second;
        std::shared_ptr<const RichLine> third;
    };

    [[nodiscard]] std::vector<Placed> place(int width) const;
    [[nodiscard]] Placed measured(const ImpressionRow& row, int width) const;
    [[nodiscard]] int barWidth(int width) const;
    [[nodiscard]] bool headInTwo(const ImpressionRow& row, int width) const;
    void relayout();
    void placeRows();
    void paintRow(QPainter& painter, std::size_t index) const;
    void paintRedSign(QPainter& painter, const ImpressionRow& row, const Placed& placed) const;
    void paintSite(QPainter& painter, const ImpressionRow& row, const Placed& placed) const;
    void paintReasonHead(QPainter& painter, const ImpressionRow& row, const Placed& placed) const;
    void paintReason(QPainter& painter, const ImpressionRow& row, const Placed& placed) const;
    void paintWords(QPainter& painter, const ImpressionRow& row, const Placed& placed) const;
    void paintMore(QPainter& painter, const ImpressionRow& row, const Placed& placed) const;
    void paintTest(QPainter& painter, const Placed& placed) const;
    void paintState(QPainter& painter, std::size_t index) const;
    [[nodiscard]] int nextPressable(int from, int step) const;

    /// Breaking words into lines takes most of the time between a press and its answer, and most rows stay.
    using LineKey = std::tuple<QString, QString, QString, int>;
    [[nodiscard]] std::shared_ptr<const RichLine> line(const QString& bold, const QString& text,
                                                       const QFont& font, int room) const;

    mutable std::map<LineKey, std::shared_ptr<const RichLine>> lines_;
    std::vector<ImpressionRow> rows_;
    std::vector<Placed> placed_;
    int placedFor_ = -1;     ///< the width the rows are placed for, in px
    std::vector<int> cells_; ///< rows that are more than a hairline
    int rightPadding_ = 0;
    int focus_ = -1;
    int hover_ = -1;
    int down_ = -1;
};

} // namespace rhizograph::app
