#pragma once

#include "exam/examoptions.h"
#include "exam/steptally.h"
#include "figures/figureart.h"
#include "shell/visitsession.h"

#include <memory>
#include <QWidget>
#include <vector>

class QAbstractButton;
class QButtonGroup;
class QHBoxLayout;
class QScrollArea;
class QStackedWidget;

namespace rhizograph::app {

class FindingRow;
class FlowLayout;
class GroupCard;
class Legend;
class PainDrawing;
class PlainButton;
class SkinFigure;

/// One step of the examination, made from the catalogue: its pages as tabs, on each page the cards of its
/// groups, the skin figures, or the patient's drawing. Where there is room the drawing stands beside the
/// questions.
class StepPage : public QWidget {
    Q_OBJECT

public:
    StepPage(VisitSession& session, std::shared_ptr<const FigureArt> art, const std::string& stepId,
             QWidget* parent = nullptr);

    [[nodiscard]] const StepId& step() const { return step_; }
    void setOptions(const ExamOptions& options);
    /// Whether the item belongs to this step.
    [[nodiscard]] bool shows(const FindingKey& key) const;
    /// Turns to the item's page, opens More where it waits there, scrolls to it and gives it the keyboard.
    void goTo(const FindingKey& key);

    [[nodiscard]] QStringList pageNames() const;
    [[nodiscard]] int currentPage() const;
    void showPage(int index);
    /// Null where the item is not shown as a row of this step.
    [[nodiscard]] FindingRow* row(const ItemId& item) const;
    [[nodiscard]] std::vector<GroupCard*> cards() const;
    [[nodiscard]] SkinFigure* skin() const { return skin_; }
    [[nodiscard]] PainDrawing* drawing() const { return drawing_; }
    /// Null where a whole step cannot be filled: what the patient tells has to be asked.
    [[nodiscard]] PlainButton* restButton() const { return rest_; }
    [[nodiscard]] QAbstractButton* tab(int index) const;

public slots:
    /// Marks as normal what shows on any page of the step and is unexamined: one undo step, marked as filled
    /// in bulk. Warning questions still open are never filled this way.
    void restOfStep();

signals:
    void pageChanged(int index);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    struct Page {
        QString name;
        std::vector<const Group*> groups;
        std::vector<GroupCard*> cards;
        QWidget* widget = nullptr;
        QScrollArea* scroll = nullptr; ///< null for a page that is a figure
    };

    void collectPages();
    void buildTop();
    void buildPage(Page& page);
    GroupCard* addCard(Page& page, const Group& group, QWidget* parent);
    void placeDrawing();
    void showLegend();
    void refresh(const std::vector<FindingKey>& keys);
    void moveFrom(FindingRow* row, int direction);
    void updateRest();
    [[nodiscard]] std::vector<const Item*> fillable() const;
    [[nodiscard]] int pageOf(const Item& item) const;

    VisitSession& session_;
    std::shared_ptr<const FigureArt> art_;
    StepId step_;
    ExamOptions options_;
    std::vector<Page> pages_;
    std::vector<const Item*> skinItems_; ///< shown on the skin figures
    QButtonGroup* tabs_ = nullptr;
    PlainButton* rest_ = nullptr;
    Legend* legend_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    QHBoxLayout* body_ = nullptr;
    SkinFigure* skin_ = nullptr;
    PainDrawing* drawing_ = nullptr;
    int drawingPage_ = -1;
};

} // namespace rhizograph::app
