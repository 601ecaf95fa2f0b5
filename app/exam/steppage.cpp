#include "exam/steppage.h"

#include "exam/findingrow.h"
#include "exam/groupcard.h"
#include "exam/legend.h"
#include "figures/paindrawing.h"
#include "figures/skinfigure.h"
#include "language/language.h"
#include "parts/button.h"
#include "parts/flow.h"
#include "parts/scrolling.h"
#include "parts/textsize.h"

#include <algorithm>
#include <QButtonGroup>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QScroller>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr int besideWidth = 1128; ///< from here on the drawing stands beside the questions
constexpr int rightMargin = 16;
constexpr int scrollBarWidth = 12; ///< as the application's style has it
constexpr int widest = 1180;       ///< of a column of cards

} // namespace

StepPage::StepPage(VisitSession& session, std::shared_ptr<const FigureArt> art, const std::string& stepId,
                   QWidget* parent)
    : QWidget(parent), session_(session), art_(std::move(art)), step_(stepId) {
    auto* column = new QVBoxLayout(this);
    // The scroll bar stands in the right margin, so that cards and tabs end on one line.
    column->setContentsMargins(16, 12, rightMargin - scrollBarWidth, 0);
    column->setSpacing(8);
    stack_ = new QStackedWidget(this);
    collectPages();
    buildTop();
    body_ = new QHBoxLayout;
    body_->setSpacing(0);
    body_->addWidget(stack_, 7);
    column->addLayout(body_, 1);
    for (Page& page : pages_)
        buildPage(page);
    connect(&session_, &VisitSession::findingsChanged, this, &StepPage::refresh);
    showPage(0);
    updateRest();
}

void StepPage::collectPages() {
    for (const Group* group : session_.catalogue().groupsOf(step_)) {
        if (session_.catalogue().itemsOf(group->step, group->id).empty()) continue;
        const QString name = medical(group->page);
        auto found = std::ranges::find(pages_, name, &Page::name);
        if (found == pages_.end()) {
            pages_.push_back({name, {}, {}, nullptr, nullptr});
            found = std::prev(pages_.end());
        }
        found->groups.push_back(group);
        if (!isSkin(session_.catalogue(), *group)) continue;
        const auto items = session_.catalogue().itemsOf(group->step, group->id);
        skinItems_.insert(skinItems_.end(), items.begin(), items.end());
    }
}

void StepPage::buildTop() {
    auto* holder = new QWidget(this);
    auto* flow = new FlowLayout(8);
    flow->setContentsMargins(0, 0, scrollBarWidth, 0);
    holder->setLayout(flow);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    holder->setSizePolicy(policy);
    tabs_ = new QButtonGroup(this);
    for (int i = 0; i < static_cast<int>(pages_.size()); ++i) {
        auto* tab = new PlainButton(pages_[static_cast<std::size_t>(i)].name, PlainButton::Kind::tab, holder);
        tab->setFocusPolicy(Qt::TabFocus);
        tabs_->addButton(tab, i);
        flow->addWidget(tab);
    }
    connect(tabs_, &QButtonGroup::idClicked, this, &StepPage::showPage);
    const auto groups = session_.catalogue().groupsOf(step_);
    const bool told = std::ranges::any_of(
        groups, [&](const Group* group) { return isDrawing(session_.catalogue(), *group); });
    if (!told && groups.size() > 1 && !session_.readOnly()) {
        rest_ = new PlainButton(tr("Rest of step normal"), PlainButton::Kind::action, holder);
        rest_->setFocusPolicy(Qt::TabFocus);
        rest_->setToolTip(
            tr("Marks what shows on all pages of this step and is not examined as normal, in bulk"));
        flow->addWidget(rest_);
        flow->setAlignment(rest_, Qt::AlignRight);
        connect(rest_, &QAbstractButton::clicked, this, &StepPage::restOfStep);
    }
    auto* column = static_cast<QVBoxLayout*>(layout());
    column->addWidget(holder);
    const auto& last = session_.start().previousVisit;
    const QString ghost = session_.previous() == nullptr ? QString()
                          : last && last->number > 0     ? tr("visit %1").arg(last->number)
                                                         : tr("last visit");
    legend_ = new Legend(ghost, this);
    column->addWidget(legend_);
}

GroupCard* StepPage::addCard(Page& page, const Group& group, QWidget* parent) {
    auto* card = new GroupCard(session_, group, options_, parent);
    page.cards.push_back(card);
    connect(card, &GroupCard::rowLeft, this, &StepPage::moveFrom);
    return card;
}

void StepPage::buildPage(Page& page) {
    const Catalogue& catalogue = session_.catalogue();
    const auto figure = [&](const Group* group) { return isSkin(catalogue, *group); };
    const auto drawn = [&](const Group* group) { return isDrawing(catalogue, *group); };
    page.widget = new QWidget(stack_);
    auto* whole = new QVBoxLayout(page.widget);
    whole->setContentsMargins(0, 0, scrollBarWidth, 12);
    stack_->addWidget(page.widget);
    if (std::ranges::any_of(page.groups, figure) && skin_ == nullptr) {
        // Where large text leaves the figures too little height, the page scrolls.
        auto* holder = new QWidget(page.widget);
        auto* column = new QVBoxLayout(scrolledInside(*holder));
        column->setContentsMargins(0, 0, 0, 0);
        skin_ = new SkinFigure(session_, art_, holder);
        column->addWidget(skin_);
        whole->addWidget(holder, 3);
    }
    if (std::ranges::any_of(page.groups, drawn) && drawing_ == nullptr) {
        drawing_ = new PainDrawing(session_, art_, page.widget);
        drawingPage_ = stack_->indexOf(page.widget);
        whole->addWidget(drawing_, 3);
    }
    if (std::ranges::all_of(page.groups, [&](const Group* group) { return figure(group) || drawn(group); }))
        return;
    whole->setContentsMargins(0, 0, 0, 0);
    page.scroll = new QScrollArea(page.widget);
    page.scroll->setFrameShape(QFrame::NoFrame);
    page.scroll->setWidgetResizable(true);
    page.scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    page.scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    QScroller::grabGesture(page.scroll->viewport(), QScroller::TouchGesture);
    whole->addWidget(page.scroll, 2);
    auto* content = new QWidget;
    content->setMaximumWidth(widest);
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(0, 0, 0, 16);
    column->setSpacing(10);
    for (const Group* group : page.groups)
        if (!figure(group) && !drawn(group)) column->addWidget(addCard(page, *group, content));
    column->addStretch(1);
    page.scroll->setWidget(content);
}

void StepPage::setOptions(const ExamOptions& options) {
    options_ = options;
    for (GroupCard* card : cards())
        card->setOptions(options);
    showLegend();
}

std::vector<GroupCard*> StepPage::cards() const {
    std::vector<GroupCard*> out;
    for (const Page& page : pages_)
        out.insert(out.end(), page.cards.begin(), page.cards.end());
    return out;
}

FindingRow* StepPage::row(const ItemId& item) const {
    for (const GroupCard* card : cards())
        if (FindingRow* found = card->row(item)) return found;
    return nullptr;
}

QStringList StepPage::pageNames() const {
    QStringList names;
    for (const Page& page : pages_)
        names << page.name;
    return names;
}

int StepPage::currentPage() const {
    return std::max(0, stack_->currentIndex());
}

QAbstractButton* StepPage::tab(int index) const {
    return tabs_->button(index);
}

void StepPage::showPage(int index) {
    if (index < 0 || index >= static_cast<int>(pages_.size())) return;
    const Page& page = pages_[static_cast<std::size_t>(index)];
    for (GroupCard* card : page.cards)
        card->bringForward();
    stack_->setCurrentIndex(index);
    tabs_->button(index)->setChecked(true);
    showLegend();
    emit pageChanged(index);
}

bool StepPage::shows(const FindingKey& key) const {
    const Item* item = session_.catalogue().find(key.item);
    return item != nullptr && item->step == step_;
}

int StepPage::pageOf(const Item& item) const {
    for (std::size_t i = 0; i < pages_.size(); ++i)
        for (const Group* group : pages_[i].groups)
            if (group->id == item.group) return static_cast<int>(i);
    return -1;
}

void StepPage::goTo(const FindingKey& key) {
    if (!shows(key)) return;
    const Item& item = *session_.catalogue().find(key.item);
    if (drawing_ != nullptr && drawing_->shows(key)) {
        if (drawingPage_ == pageOf(item) && drawing_->parentWidget() != this) showPage(drawingPage_);
        return drawing_->goTo(key);
    }
    const int index = pageOf(item);
    showPage(index);
    const Page& page = pages_[static_cast<std::size_t>(index)];
    for (GroupCard* card : page.cards) {
        if (!card->holds(item.id)) continue;
        card->reveal(item.id);
        page.scroll->widget()->layout()->activate();
        page.scroll->ensureWidgetVisible(card->rowWidget(item.id), 0, 80);
        if (FindingRow* found = card->row(item.id))
            found->goTo(key.side);
        else
            card->rowWidget(item.id)->setFocus(Qt::OtherFocusReason);
        return;
    }
    if (skin_ != nullptr) skin_->goTo(key);
}

void StepPage::moveFrom(FindingRow* row, int direction) {
    const Page& page = pages_[static_cast<std::size_t>(currentPage())];
    std::vector<FindingRow*> rows;
    for (const GroupCard* card : page.cards) {
        const auto shown = card->shownRows();
        rows.insert(rows.end(), shown.begin(), shown.end());
    }
    const auto place = std::ranges::find(rows, row);
    if (place == rows.end()) return;
    const auto next = place - rows.begin() + direction;
    if (next < 0 || next >= static_cast<std::ptrdiff_t>(rows.size())) return;
    FindingRow* to = rows[static_cast<std::size_t>(next)];
    page.scroll->ensureWidgetVisible(to, 0, 60);
    to->comeFrom(*row);
}

std::vector<const Item*> StepPage::fillable() const {
    std::vector<const Item*> items;
    for (const GroupCard* card : cards())
        for (const Item* item : card->shownItems())
            items.push_back(item);
    for (const Item* item : skinItems_)
        if (countsAsShown(session_, *item)) items.push_back(item);
    const auto& open = session_.assessment().notAsked;
    std::erase_if(items, [&](const Item* item) {
        return !normalValue(item->scale) || recordedWhole(session_.exam(), *item) ||
               std::ranges::any_of(open, [&](const FindingKey& key) { return key.item == item->id; });
    });
    return items;
}

void StepPage::restOfStep() {
    session_.restNormal(tr("Rest of step normal"), fillable());
}

void StepPage::updateRest() {
    if (rest_ != nullptr) rest_->setEnabled(!fillable().empty());
}

void StepPage::refresh(const std::vector<FindingKey>& keys) {
    for (GroupCard* card : cards())
        card->refresh(keys);
    updateRest();
}

void StepPage::placeDrawing() {
    if (drawing_ == nullptr) return;
    const bool beside = width() >= besideWidth;
    if (beside == (drawing_->parentWidget() == this)) return;
    Page& page = pages_[static_cast<std::size_t>(drawingPage_)];
    if (beside) {
        body_->addWidget(drawing_, 5);
        body_->setContentsMargins(0, 0, scrollBarWidth, 12);
        if (currentPage() == drawingPage_) showPage(drawingPage_ == 0 ? 1 : 0);
    } else {
        body_->removeWidget(drawing_);
        body_->setContentsMargins(0, 0, 0, 0);
        static_cast<QVBoxLayout*>(page.widget->layout())->insertWidget(0, drawing_, 3);
    }
    drawing_->show();
    tabs_->button(drawingPage_)->setVisible(!beside || !page.cards.empty());
}

/// On a low screen with large text the rows need its room more.
void StepPage::showLegend() {
    if (pages_.empty()) return; // a step without items
    const bool room = height() >= grown(this, 300);
    legend_->setVisible(options_.legend && room &&
                        !pages_[static_cast<std::size_t>(currentPage())].cards.empty());
}

void StepPage::resizeEvent(QResizeEvent* event) {
    placeDrawing();
    showLegend();
    QWidget::resizeEvent(event);
}

void StepPage::showEvent(QShowEvent* event) {
    for (GroupCard* card : cards())
        card->bringForward();
    QWidget::showEvent(event);
}

} // namespace rhizograph::app
