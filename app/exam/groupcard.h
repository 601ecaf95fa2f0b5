#pragma once

#include "exam/examoptions.h"
#include "parts/card.h"
#include "shell/visitsession.h"

#include <map>
#include <set>

class QLabel;
class QHBoxLayout;
class QVBoxLayout;

namespace rhizograph::app {

class FindingRow;
class PlainButton;
class TextRow;

/// One group of items: title, how many are recorded, one press for the rest, the rows, and More for the items
/// that wait until they are asked for.
class GroupCard : public Card {
    Q_OBJECT

public:
    GroupCard(VisitSession& session, const Group& group, const ExamOptions& options,
              QWidget* parent = nullptr);

    [[nodiscard]] const Group& group() const { return group_; }
    [[nodiscard]] bool holds(const ItemId& item) const;
    /// Null for items in free words and for items not here.
    [[nodiscard]] FindingRow* row(const ItemId& item) const;
    [[nodiscard]] QWidget* rowWidget(const ItemId& item) const;
    [[nodiscard]] std::vector<FindingRow*> shownRows() const;
    /// What shows now: what the rest button fills.
    [[nodiscard]] std::vector<const Item*> shownItems() const;
    [[nodiscard]] PlainButton* restButton() const { return rest_; }
    [[nodiscard]] PlainButton* moreButton() const { return more_; }

    void setOptions(const ExamOptions& options);
    /// Brings items forward that are due now. Only when a page is entered: a row that slips in under a finger
    /// would make it press the wrong one.
    void bringForward();
    void reveal(const ItemId& item); ///< opens More where the item is behind it
    void setMoreShown(bool shown);
    void refresh(const std::vector<FindingKey>& keys);
    void restNormal();

signals:
    void rowLeft(rhizograph::app::FindingRow* row, int direction);
    void rowMade(rhizograph::app::FindingRow* row);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void buildHead();
    void buildRows();
    void arrange();
    void dressHead();
    void updateHead();
    void fitHead();
    [[nodiscard]] bool shown(const Item& item) const;
    [[nodiscard]] std::string commonAnswer() const;
    [[nodiscard]] QString restWords() const;
    [[nodiscard]] bool fills(const Item& item) const;

    VisitSession& session_;
    const Group& group_;
    ExamOptions options_;
    std::vector<const Item*> items_;
    std::map<ItemId, FindingRow*> rows_;
    std::map<ItemId, TextRow*> texts_;
    std::set<ItemId> forward_;
    bool moreShown_ = false;
    QVBoxLayout* column_ = nullptr;
    QHBoxLayout* head_ = nullptr;
    QLabel* title_ = nullptr;
    QLabel* count_ = nullptr;
    PlainButton* rest_ = nullptr;
    PlainButton* more_ = nullptr;
};

} // namespace rhizograph::app
