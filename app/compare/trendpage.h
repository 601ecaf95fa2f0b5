#pragma once

#include "compare/trendchart.h"
#include "record/model.h"

#include <optional>
#include <QSet>
#include <QWidget>

class QBoxLayout;
class QScrollArea;

namespace rhizograph {
class Store;
}

namespace rhizograph::app {

class ChangeList;
class EventsCard;
class Label;
class PlainButton;
class Segmented;
class VisitSession;

/// The course over all visits: which measures changed by more than their threshold, and when, beside what
/// happened in between.
class TrendPage : public QWidget {
    Q_OBJECT

public:
    enum class Export { png, svg, csv };

    TrendPage(VisitSession& session, Store& store, QWidget* parent = nullptr);

    [[nodiscard]] TrendChart& chart() { return *chart_; }
    [[nodiscard]] EventsCard& eventsCard() { return *events_; }
    [[nodiscard]] ChangeList& changes() { return *changes_; }
    void setScoresOnly(bool scoresOnly);
    void setShown(const QString& measure, bool shown);
    void showEvents(bool shown);
    /// Writes the chart as it stands, or all figures, to a file of its own; noted in the record's audit
    /// first.
    Outcome exportTo(const QString& path, Export what);

signals:
    void visitChosen(const rhizograph::VisitId& visit); ///< to be opened read only

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    void buildTop(QBoxLayout& column);
    void buildChart();
    void buildChanges();
    void showChanges(const std::vector<Exam>& exams);
    void showCurve(const QString& curve);
    void placeSide(QWidget& side, int height) const;
    void refresh();
    QString readVisits(std::vector<Exam>& exams);
    void choose();
    void showRows();
    [[nodiscard]] std::vector<TrendEvent> shownEvents() const;
    void askExport();
    [[nodiscard]] QWidget& exportButton() const;
    void say(const QString& text);

    VisitSession& session_;
    Store& store_;
    std::vector<TrendVisit> visits_;
    std::vector<TrendRow> rows_;
    Trend trend_;
    std::optional<QSet<QString>> chosen_; ///< what the person chose; the most important rows otherwise
    bool scoresOnly_ = false;
    bool stale_ = true;
    Segmented* choice_ = nullptr;
    PlainButton* measures_ = nullptr;
    PlainButton* eventsButton_ = nullptr;
    PlainButton* export_ = nullptr;
    QBoxLayout* work_ = nullptr;
    Label* say_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    TrendChart* chart_ = nullptr;
    EventsCard* events_ = nullptr;
    QWidget* changesCard_ = nullptr; ///< gives way to the events
    Label* changesTitle_ = nullptr;
    ChangeList* changes_ = nullptr;
};

} // namespace rhizograph::app
