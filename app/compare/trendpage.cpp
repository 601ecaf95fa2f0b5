#include "compare/trendpage.h"

#include "parts/button.h"
#include "parts/card.h"
#include "parts/label.h"
#include "parts/segmented.h"
#include "record/store.h"
#include "shell/visitsession.h"

#include <algorithm>
#include <QBoxLayout>
#include <QMenu>
#include <QScrollArea>

namespace rhizograph::app {
namespace {

constexpr std::size_t usualRows = 8; // shown until the person chooses

} // namespace

TrendPage::TrendPage(VisitSession& session, Store& store, QWidget* parent)
    : QWidget(parent), session_(session), store_(store) {
    build();
    connect(&session_, &VisitSession::assessed, this, [this] {
        stale_ = true;
        if (isVisible()) refresh();
    });
}

void TrendPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 8);
    column->setSpacing(10);
    auto* top = new QHBoxLayout;
    top->addWidget(new Label(tr("All visits"), 22, QFont::DemiBold, Label::Tone::ink, this));
    top->addStretch(1);
    choice_ = new Segmented(tr("Which measures"), {tr("Left and right"), tr("Scores only")}, this);
    top->addWidget(choice_);
    measures_ = new PlainButton(tr("Choose measures"), PlainButton::Kind::quiet, this);
    measures_->setGlyph(Glyph::down, true);
    top->addWidget(measures_);
    column->addLayout(top);
    auto* card = new Card(this);
    auto* rows = new QVBoxLayout(card);
    rows->setContentsMargins(1, 1, 1, 1);
    chart_ = new TrendChart;
    scroll_ = new QScrollArea(card);
    scroll_->setWidget(chart_);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->viewport()->setAutoFillBackground(false);
    chart_->setAutoFillBackground(false);
    rows->addWidget(scroll_);
    column->addWidget(card, 1);
    say_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, this);
    say_->setWordWrap(true);
    column->addWidget(say_);
    connect(choice_, &Segmented::chosenChanged, this, [this](int index) { setScoresOnly(index == 1); });
    connect(measures_, &QAbstractButton::clicked, this, &TrendPage::choose);
    connect(chart_, &TrendChart::visitPressed, this, &TrendPage::visitChosen);
    connect(chart_, &TrendChart::focusMoved, this, [this](const QRect& rect) {
        scroll_->ensureVisible(rect.center().x(), rect.center().y(), 0, rect.height());
    });
}

void TrendPage::refresh() {
    stale_ = false;
    visits_.clear();
    std::vector<Exam> exams;
    QString problem;
    const auto visits = store_.visitsOf(session_.start().visit.patient);
    if (!visits) problem = QString::fromStdString(visits.problems().front().text());
    const Visit& open = session_.start().visit;
    if (visits) {
        for (const Visit& visit : *visits) {
            if (visit.number > open.number) continue;
            // The open visit stands as it is on the screen, with what is still on its way to the record.
            auto exam = visit.id == open.id ? Result<Exam>(session_.exam()) : store_.exam(visit.id);
            if (!exam) {
                problem = QString::fromStdString(exam.problems().front().text());
                continue;
            }
            exam->date = visit.date;
            exams.push_back(std::move(*exam));
            visits_.push_back({visit.id, visit.number, visit.date});
        }
    }
    rows_ = exams.empty() ? std::vector<TrendRow>{}
                          : trendRows(trendOf(exams, session_.knowledge()), session_.knowledge());
    if (!problem.isEmpty())
        say_->setText(problem);
    else if (exams.size() < 2)
        say_->setText(tr("There is one visit so far: a course needs two."));
    else
        say_->setText(
            tr("A triangle marks a change larger than its threshold. A gap in a line: not examined at that "
               "visit. Press a point to open that visit, read only."));
    showRows();
}

void TrendPage::showRows() {
    std::vector<TrendRow> shown;
    for (const TrendRow& row : rows_) {
        if (scoresOnly_ && !row.score) continue;
        if (chosen_ ? chosen_->contains(row.id) : shown.size() < usualRows) shown.push_back(row);
    }
    chart_->show(visits_, std::move(shown));
}

void TrendPage::setScoresOnly(bool scoresOnly) {
    scoresOnly_ = scoresOnly;
    showRows();
}

void TrendPage::setShown(const QString& measure, bool shown) {
    if (!chosen_) {
        chosen_.emplace();
        for (const TrendRow& row : chart_->rows())
            chosen_->insert(row.id);
    }
    if (shown)
        chosen_->insert(measure);
    else
        chosen_->remove(measure);
    showRows();
}

void TrendPage::choose() {
    QMenu menu(this);
    for (const TrendRow& row : rows_) {
        QAction* action = menu.addAction(row.title);
        action->setCheckable(true);
        const auto& now = chart_->rows();
        action->setChecked(
            std::any_of(now.begin(), now.end(), [&](const TrendRow& each) { return each.id == row.id; }));
        connect(action, &QAction::toggled, this, [this, id = row.id](bool on) { setShown(id, on); });
    }
    menu.exec(measures_->mapToGlobal(QPoint(0, measures_->height())));
}

void TrendPage::showEvent(QShowEvent* event) {
    if (stale_) refresh();
    QWidget::showEvent(event);
}

} // namespace rhizograph::app
