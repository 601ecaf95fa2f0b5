#pragma once

#include "compare/trendaxis.h"
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

/// Something that happened to the patient, or is awaited.
struct TrendEvent {
    PatientEventId id;
    std::string date;
    QString words; ///< "Injection: L5, left"
    bool awaited = false;
};

/// Measures over all visits on one time axis, true to days. Left sides are solid with filled dots, right
/// sides dashed with hollow ones; a triangle stands at a visit whose change passes its threshold. A press on
/// a dot opens its visit. What happened in between stands above the rows with a line down through them.
class TrendChart : public QWidget, public CellHost {
    Q_OBJECT

public:
    explicit TrendChart(QWidget* parent = nullptr);

    void show(std::vector<TrendVisit> visits, std::vector<TrendRow> rows,
              std::vector<TrendEvent> events = {});
    /// Makes one row stand out and asks for it to be seen; nothing where it does not show.
    void choose(const QString& row);
    [[nodiscard]] const QString& chosen() const { return chosen_; }
    [[nodiscard]] const std::vector<TrendRow>& rows() const { return rows_; }
    [[nodiscard]] const std::vector<TrendEvent>& events() const { return events_; }
    /// Where a visit stands on the axis, in widget coordinates.
    [[nodiscard]] qreal xOf(std::size_t visit) const { return axis_.visit(visit); }
    /// The whole chart as it is on the screen, without the keyboard's ring.
    void paintTo(QPainter& painter, const QRect& part) const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {360, sizeHint().height()}; }
    [[nodiscard]] QString hostName() const override { return tr("Course over all visits"); }
    [[nodiscard]] int cellCount() const override {
        return static_cast<int>(dots_.size() + eventMarks_.size());
    }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return focus_; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void visitPressed(const rhizograph::VisitId& visit);
    void eventPressed(const rhizograph::PatientEventId& event);
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
    /// An event in its lane above the rows; `label` is empty where there was no room for words.
    struct EventMark {
        std::size_t event;
        QPointF at;
        QString label;
        QRectF words;
        bool onAxis = true; ///< else it lies before the first visit or after the last
    };
    [[nodiscard]] int headHeight() const;
    [[nodiscard]] int visitsHeight() const; ///< of the numbers and days of the visits
    [[nodiscard]] int laneHeight() const;
    [[nodiscard]] int rowHeight() const;
    [[nodiscard]] int nameRoom() const; ///< of the names of the measures
    [[nodiscard]] int left() const;     ///< of the plotting room
    [[nodiscard]] int right() const;
    [[nodiscard]] QRectF rowBox(std::size_t row) const;
    [[nodiscard]] qreal yOf(const TrendRow& row, const QRectF& box, double place) const;
    [[nodiscard]] qreal dotRadius() const; ///< smaller where many visits stand close
    [[nodiscard]] bool dotNear(const TrendRow& row, const TrendLine& line, std::size_t visit,
                               const QRectF& box, qreal y) const;
    void place();
    void measureWords();
    void placeDots();
    void placeEvents();
    [[nodiscard]] QPointF pointOf(int cell) const;
    void paintHead(QPainter& painter) const;
    void paintVisitNames(QPainter& painter) const;
    void paintEvents(QPainter& painter) const;
    void paintRow(QPainter& painter, std::size_t row) const;
    void paintLine(QPainter& painter, const TrendRow& row, const TrendLine& line, const QRectF& box) const;
    void paintMarks(QPainter& painter, const TrendRow& row, const TrendLine& line, const QRectF& box) const;
    void paintValues(QPainter& painter, const TrendRow& row, const QRectF& box) const;

    std::vector<TrendVisit> visits_;
    std::vector<TrendRow> rows_;
    std::vector<TrendEvent> events_; ///< oldest first
    TrendAxis axis_;
    std::vector<Dot> dots_;
    std::vector<EventMark> eventMarks_;
    int lanes_ = 0;
    int nameRoom_ = 0;
    int valueRoom_ = 0;
    int focus_ = -1;
    QString chosen_; ///< id of the row that stands out
};

/// A day of the record's calendar; invalid where the text is none.
[[nodiscard]] QDate dateOf(const std::string& iso);

} // namespace rhizograph::app
