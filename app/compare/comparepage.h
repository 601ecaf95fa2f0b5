#pragma once

#include "compare/compare.h"
#include "figures/figureart.h"
#include "record/model.h"

#include <memory>
#include <QWidget>

class QBoxLayout;
class QScrollArea;

namespace rhizograph {
class Store;
}

namespace rhizograph::app {

class Card;
class ChangeTable;
class FigurePair;
class Label;
class PlainButton;
class Segmented;
class VisitSession;

/// Right against left of this visit, or this visit against an earlier one, with the figures side by side.
class ComparePage : public QWidget {
    Q_OBJECT

public:
    /// `art` may be null: there are no figures then.
    ComparePage(VisitSession& session, Store& store, std::shared_ptr<const FigureArt> art,
                QWidget* parent = nullptr);

    [[nodiscard]] ChangeTable& table() { return *table_; }
    [[nodiscard]] FigurePair* figures() { return figures_; }
    /// What is compared on the figures: 0 the first layer of the catalogue.
    void showLayer(int layer);
    [[nodiscard]] const std::vector<Visit>& earlierVisits() const { return earlier_; }
    void showSides();
    /// Against one of earlierVisits(). Precondition: there is such a visit.
    void showAgainst(int visit);

signals:
    void goToItem(const rhizograph::FindingKey& key);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build();
    void buildTop(QBoxLayout& column);
    void buildFigures();
    void readVisits();
    void refreshSoon();
    void refresh();
    void refreshFigures(const VisitComparison* comparison, const QString& earlierName);
    [[nodiscard]] FigureView chosenView() const;
    void showMostChangedView(const std::map<RegionKey, Change>& changes);
    void askVisit();
    [[nodiscard]] QString nameOf(const Visit& visit) const;

    VisitSession& session_;
    Store& store_;
    std::shared_ptr<const FigureArt> art_;
    std::vector<Visit> earlier_; ///< newest first
    int against_ = -1;           ///< index into earlier_; -1: right against left
    std::optional<Exam> before_; ///< of that visit
    int layer_ = 0;
    std::optional<FigureView> view_; ///< what the person chose; the one that changed most otherwise
    bool stale_ = true;
    QString problem_;
    Segmented* choice_ = nullptr;
    PlainButton* visit_ = nullptr;
    QBoxLayout* work_ = nullptr;
    Label* title_ = nullptr;
    ChangeTable* table_ = nullptr;
    QScrollArea* scroll_ = nullptr;
    Card* figureCard_ = nullptr;
    Segmented* layers_ = nullptr;
    Segmented* views_ = nullptr;
    Label* figureNote_ = nullptr;
    FigurePair* figures_ = nullptr;
    Label* note_ = nullptr;
};

} // namespace rhizograph::app
