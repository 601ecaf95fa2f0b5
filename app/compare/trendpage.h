#pragma once

#include "compare/trendchart.h"

#include <optional>
#include <QSet>
#include <QWidget>

class QScrollArea;

namespace rhizograph {
class Store;
}

namespace rhizograph::app {

class Label;
class PlainButton;
class Segmented;
class VisitSession;

/// The course over all visits: which measures changed by more than their threshold, and when.
class TrendPage : public QWidget {
    Q_OBJECT

public:
    TrendPage(VisitSession& session, Store& store, QWidget* parent = nullptr);

    [[nodiscard]] TrendChart& chart() { return *chart_; }
    void setScoresOnly(bool scoresOnly);
    void setShown(const QString& measure, bool shown);

signals:
    void visitChosen(const rhizograph::VisitId& visit); ///< to be opened read only

protected:
    void showEvent(QShowEvent* event) override;

private:
    void build();
    void refresh();
    void choose();
    void showRows();

    VisitSession& session_;
    Store& store_;
    std::vector<TrendVisit> visits_;
    std::vector<TrendRow> rows_;
    std::optional<QSet<QString>> chosen_; ///< what the person chose; the most important rows otherwise
    bool scoresOnly_ = false;
    bool stale_ = true;
    Segmented* choice_ = nullptr;
    PlainButton* measures_ = nullptr;
    Label* say_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    TrendChart* chart_ = nullptr;
};

} // namespace rhizograph::app
