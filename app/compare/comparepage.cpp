#include "compare/comparepage.h"

#include "compare/changetable.h"
#include "compare/figurepair.h"
#include "figures/skinlayer.h"
#include "language/language.h"
#include "parts/button.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/scrolling.h"
#include "parts/segmented.h"
#include "parts/textsize.h"
#include "record/store.h"
#include "shell/visitsession.h"

#include <algorithm>
#include <QBoxLayout>
#include <QDate>
#include <QLocale>
#include <QMenu>
#include <QScrollArea>
#include <QSignalBlocker>

namespace rhizograph::app {
namespace {

constexpr int wideFrom = 1000; // px at 100 % text; below it the figures go under the table

QString word(const std::string& text) {
    return QString::fromStdString(text);
}

} // namespace

ComparePage::ComparePage(VisitSession& session, Store& store, std::shared_ptr<const FigureArt> art,
                         QWidget* parent)
    : QWidget(parent), session_(session), store_(store), art_(std::move(art)) {
    readVisits();
    build();
    if (!earlier_.empty()) showAgainst(0);
    connect(&session_, &VisitSession::assessed, this, &ComparePage::refreshSoon);
}

void ComparePage::readVisits() {
    const auto visits = store_.visitsOf(session_.start().visit.patient);
    if (!visits) {
        problem_ = word(visits.problems().front().text());
        return;
    }
    for (const Visit& visit : *visits)
        if (visit.number < session_.start().visit.number) earlier_.insert(earlier_.begin(), visit);
}

QString ComparePage::nameOf(const Visit& visit) const {
    const QDate date = QDate::fromString(word(visit.date), Qt::ISODate);
    return tr("Visit %1, %2")
        .arg(visit.number)
        .arg(QLocale(QLocale::English).toString(date, QStringLiteral("d MMM yyyy")));
}

void ComparePage::build() {
    auto* column = new QVBoxLayout(scrolledInside(*this));
    column->setContentsMargins(16, 12, 16, 8);
    column->setSpacing(10);
    buildTop(*column);
    work_ = new QBoxLayout(QBoxLayout::LeftToRight);
    work_->setSpacing(12);
    auto* card = new Card(this);
    auto* rows = new QVBoxLayout(card);
    rows->setContentsMargins(1, 0, 1, 1);
    rows->setSpacing(0);
    title_ = new Label({}, 17, QFont::DemiBold, Label::Tone::ink, card);
    title_->setContentsMargins(16, 0, 16, 0);
    title_->setMinimumHeight(grown(this, 48));
    title_->setWordWrap(true);
    rows->addWidget(title_);
    table_ = new ChangeTable;
    scroll_ = new QScrollArea(card);
    scroll_->setWidget(table_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->viewport()->setAutoFillBackground(false);
    table_->setAutoFillBackground(false);
    scroll_->setMinimumHeight(grown(this, 240));
    rows->addWidget(scroll_, 1);
    work_->addWidget(card, 62);
    buildFigures();
    column->addLayout(work_, 1);
    note_ = new Label(
        tr("A difference smaller than the error of measurement is called the same. Hold the pointer over a "
           "row for the source of its threshold."),
        15, QFont::Normal, Label::Tone::quiet, this);
    note_->setWordWrap(true);
    column->addWidget(note_);
    connect(table_, &ChangeTable::findingPressed, this, &ComparePage::goToItem);
    connect(table_, &ChangeTable::focusMoved, this, [this](const QRect& rect) {
        scroll_->ensureVisible(rect.center().x(), rect.center().y(), 0, rect.height());
    });
}

void ComparePage::buildTop(QBoxLayout& column) {
    auto* top = new FlowLayout(8);
    choice_ = new Segmented(tr("What is compared"),
                            {tr("Right against left"), tr("Against an earlier visit")}, this);
    top->addWidget(choice_);
    visit_ = new PlainButton({}, PlainButton::Kind::quiet, this);
    visit_->setGlyph(Glyph::down, true);
    top->addWidget(visit_);
    top->setAlignment(visit_, Qt::AlignRight);
    column.addLayout(top);
    connect(choice_, &Segmented::chosenChanged, this, [this](int index) {
        if (index == 0) return showSides();
        if (!earlier_.empty()) return showAgainst(std::max(against_, 0));
        against_ = -1;
        refresh();
    });
    connect(visit_, &QAbstractButton::clicked, this, &ComparePage::askVisit);
}

void ComparePage::buildFigures() {
    if (art_ == nullptr) return;
    figureCard_ = new Card(this);
    auto* rows = new QVBoxLayout(figureCard_);
    rows->setContentsMargins(8, 8, 8, 8);
    QStringList names;
    for (const SkinLayer& layer : skinLayers(session_.catalogue()))
        names << medical(layer.label());
    layers_ = new Segmented(tr("Layer of the figures"), names, figureCard_);
    const auto centered = [rows](Segmented* choice) {
        auto* row = new FlowLayout(0);
        row->addWidget(choice);
        row->setAlignment(choice, Qt::AlignHCenter);
        rows->addLayout(row);
    };
    centered(layers_);
    figures_ = new FigurePair(art_, figureCard_);
    rows->addWidget(figures_, 1);
    views_ = new Segmented(tr("View of the figures"), {tr("Front"), tr("Back"), tr("Soles"), tr("Saddle")},
                           figureCard_);
    centered(views_);
    figureNote_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, figureCard_);
    figureNote_->setWordWrap(true);
    figureNote_->setAlignment(Qt::AlignHCenter);
    rows->addWidget(figureNote_);
    work_->addWidget(figureCard_, 38);
    connect(layers_, &Segmented::chosenChanged, this, &ComparePage::showLayer);
    connect(views_, &Segmented::chosenChanged, this, [this](int index) {
        view_ = allFigureViews.at(static_cast<std::size_t>(index));
        refresh();
    });
}

void ComparePage::askVisit() {
    QMenu menu(this);
    for (std::size_t i = 0; i < earlier_.size(); ++i)
        menu.addAction(nameOf(earlier_[i]), this, [this, i] { showAgainst(static_cast<int>(i)); });
    menu.exec(visit_->mapToGlobal(QPoint(0, visit_->height())));
}

void ComparePage::showSides() {
    against_ = -1;
    before_.reset();
    choice_->choose(0);
    refresh();
}

void ComparePage::showAgainst(int visit) {
    against_ = visit;
    const auto exam = store_.exam(earlier_.at(static_cast<std::size_t>(visit)).id);
    problem_ = exam ? QString() : word(exam.problems().front().text());
    before_ = exam ? std::optional{*exam} : std::nullopt;
    choice_->choose(1);
    refresh();
}

void ComparePage::refreshSoon() {
    stale_ = true;
    if (isVisible()) refresh();
}

void ComparePage::refresh() {
    stale_ = false;
    const Theme& theme = Theme::of(this);
    const bool against = choice_->chosen() == 1;
    visit_->setVisible(against && !earlier_.empty());
    QString earlierName;
    std::optional<VisitComparison> comparison;
    if (against && before_) {
        const Visit& visit = earlier_.at(static_cast<std::size_t>(against_));
        visit_->setText(nameOf(visit));
        visit_->setAccessibleName(tr("Compare with: %1").arg(nameOf(visit)));
        earlierName = tr("Visit %1").arg(visit.number);
        comparison = compareVisits(*before_, session_.exam(), session_.knowledge());
        table_->setRows(visitRows(*comparison, session_.catalogue(), theme, earlierName));
        title_->setText(table_->rows().title);
    } else if (against) {
        table_->setRows({});
        title_->setText(problem_.isEmpty() ? tr("There is no earlier visit to compare with") : problem_);
    } else {
        table_->setRows(
            sideRows(compareSides(session_.exam(), session_.knowledge()), session_.catalogue(), theme));
        title_->setText(table_->rows().title);
    }
    refreshFigures(comparison ? &*comparison : nullptr, earlierName);
}

void ComparePage::showLayer(int layer) {
    layer_ = layer;
    view_.reset();
    if (layers_ != nullptr && layers_->chosen() != layer) layers_->choose(layer);
    refresh();
}

FigureView ComparePage::chosenView() const {
    return allFigureViews.at(static_cast<std::size_t>(views_->chosen()));
}

void ComparePage::showMostChangedView(const std::map<RegionKey, Change>& changes) {
    std::map<FigureView, int> counts;
    for (const auto& [region, change] : changes)
        if (const auto view = art_->viewOf(region.region)) ++counts[*view];
    FigureView most = FigureView::front;
    for (const FigureView view : allFigureViews)
        if (counts[view] > counts[most]) most = view;
    const QSignalBlocker quiet(views_); // a choice of the page, not of the person
    views_->choose(
        static_cast<int>(std::ranges::find(allFigureViews, view_.value_or(most)) - allFigureViews.begin()));
    int elsewhere = 0;
    for (const auto& [view, count] : counts)
        elsewhere += view == chosenView() ? 0 : count;
    QString note = changes.empty() ? tr("No change of the skin where both visits examined it.")
                                   : tr("Outlined: worse in full, better broken.");
    if (elsewhere > 0) note += QStringLiteral(" ") + tr("In other views: %1 changed.").arg(elsewhere);
    figureNote_->setText(note);
}

void ComparePage::refreshFigures(const VisitComparison* comparison, const QString& earlierName) {
    if (figures_ == nullptr) return;
    const auto layer =
        std::make_shared<SkinLayer>(skinLayers(session_.catalogue()).at(static_cast<std::size_t>(layer_)));
    const auto marks = [layer](const Exam& exam) {
        return [layer, exam](const RegionKey& region) { return layer->mark(region, exam); };
    };
    const MarkOf now = marks(session_.exam());
    views_->setVisible(comparison != nullptr);
    figureNote_->setVisible(comparison != nullptr);
    if (comparison == nullptr)
        return figures_->setPictures(
            {{tr("Now"), FigureView::front, now, {}}, {tr("Now"), FigureView::back, now, {}}});
    std::map<RegionKey, Change> changes;
    for (const ItemChange& each : comparison->items)
        if (const auto region = layer->region(each.key);
            region && each.change != Change::same && each.change != Change::notComparable)
            changes.emplace(*region, each.change);
    showMostChangedView(changes);
    figures_->setPictures(
        {{earlierName, chosenView(), marks(*before_), changes}, {tr("Now"), chosenView(), now, changes}});
}

void ComparePage::showEvent(QShowEvent* event) {
    if (stale_) refresh();
    QWidget::showEvent(event);
}

void ComparePage::changeEvent(QEvent* event) {
    // The colors of the marks are the theme's.
    if (event->type() == QEvent::PaletteChange && table_ != nullptr) refreshSoon();
    QWidget::changeEvent(event);
}

void ComparePage::resizeEvent(QResizeEvent*) {
    work_->setDirection(width() >= grown(this, wideFrom) ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

} // namespace rhizograph::app
