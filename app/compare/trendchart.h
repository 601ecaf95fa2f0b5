#pragma once

#include "compare/trendrows.h"
#include "parts/cells.h"

#include <QWidget>

namespace rhizograph::app {

/// One visit on the time axis.
struct TrendVisit {
    VisitId id;
    int number = 1;
    std::string date;
};

/// Measures over all visits on one time axis, true to days. Left sides are solid with filled dots, right
/// sides dashed with hollow ones; a triangle stands at a visit whose change passes its threshold. A press on
/// a dot opens its visit.
class TrendChart : public QWidget, public CellHost {
    Q_OBJECT

public:
    explicit TrendChart(QWidget* parent = nullptr);

    void show(std::vector<TrendVisit> visits, std::vector<TrendRow> rows);
    [[nodiscard]] const std::vector<TrendRow>& rows() const { return rows_; }
    /// Where a visit stands on the axis, in widget coordinates.
    [[nodiscard]] qreal xOf(std::size_t visit) const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {360, sizeHint().height()}; }
    [[nodiscard]] QString hostName() const override { return tr("Course over all visits"); }
    [[nodiscard]] int cellCount() const override { return static_cast<int>(dots_.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return focus_; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void visitPressed(const rhizograph::VisitId& visit);
    void focusMoved(const QRect& rect);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Dot {
        std::size_t row, line, visit;
        QPointF at;
    };
    [[nodiscard]] int headHeight() const;
    [[nodiscard]] int rowHeight() const;
    [[nodiscard]] int left() const; ///< of the plotting room
    [[nodiscard]] int right() const;
    [[nodiscard]] QRectF rowBox(std::size_t row) const;
    [[nodiscard]] qreal yOf(const TrendRow& row, const QRectF& box, double place) const;
    void placeDots();
    void paintHead(QPainter& painter) const;
    void paintRow(QPainter& painter, std::size_t row) const;
    void paintLine(QPainter& painter, const TrendRow& row, const TrendLine& line, const QRectF& box) const;
    void paintMarks(QPainter& painter, const TrendRow& row, const TrendLine& line, const QRectF& box) const;
    void paintValues(QPainter& painter, const TrendRow& row, const QRectF& box) const;

    std::vector<TrendVisit> visits_;
    std::vector<TrendRow> rows_;
    std::vector<Dot> dots_;
    int focus_ = -1;
};

} // namespace rhizograph::app
