#include "compare/trendpage.h"

#include "compare/changelist.h"
#include "compare/eventscard.h"
#include "parts/button.h"
#include "parts/card.h"
#include "parts/findingwords.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/scrolling.h"
#include "parts/segmented.h"
#include "parts/textsize.h"
#include "record/store.h"
#include "shell/visitsession.h"

#include <algorithm>
#include <QBoxLayout>
#include <QMenu>
#include <QScrollArea>

namespace rhizograph::app {
namespace {

constexpr std::size_t usualRows = 8; // shown until the person chooses
constexpr int wideFrom = 1000;       // px; below it the events go under the chart

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
    auto* column = new QVBoxLayout(scrolledInside(*this));
    column->setContentsMargins(16, 12, 16, 8);
    column->setSpacing(10);
    buildTop(*column);
    work_ = new QBoxLayout(QBoxLayout::LeftToRight);
    work_->setSpacing(12);
    column->addLayout(work_, 1);
    buildChart();
    buildChanges();
    events_ = new EventsCard(session_.knowledge(), store_, session_.start().visit.patient, this);
    events_->hide();
    work_->addWidget(events_, 0);
    connect(events_, &EventsCard::changed, this, &TrendPage::showRows);
    say_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, this);
    say_->setWordWrap(true);
    column->addWidget(say_);
}

void TrendPage::buildTop(QBoxLayout& column) {
    auto* top = new FlowLayout(8);
    auto* title = new Label(tr("All visits"), 22, QFont::DemiBold, Label::Tone::ink, this);
    title->setFixedHeight(grown(this, 44));
    title->setContentsMargins(0, 0, 16, 0);
    top->addWidget(title);
    choice_ = new Segmented(tr("Which measures"), {tr("Left and right"), tr("Scores only")}, this);
    top->addWidget(choice_);
    measures_ = new PlainButton(tr("Choose measures"), PlainButton::Kind::quiet, this);
    measures_->setGlyph(Glyph::down, true);
    top->addWidget(measures_);
    eventsButton_ = new PlainButton(tr("Events"), PlainButton::Kind::choice, this);
    eventsButton_->setCheckable(true);
    top->addWidget(eventsButton_);
    export_ = new PlainButton(tr("Export"), PlainButton::Kind::quiet, this);
    export_->setGlyph(Glyph::down, true);
    const auto user = store_.signedIn();
    export_->setEnabled(user && allows(user->role, Permission::exportData));
    top->addWidget(export_);
    column.addLayout(top);
    connect(choice_, &Segmented::chosenChanged, this, [this](int index) { setScoresOnly(index == 1); });
    connect(measures_, &QAbstractButton::clicked, this, &TrendPage::choose);
    connect(eventsButton_, &QAbstractButton::toggled, this, &TrendPage::showEvents);
    connect(export_, &QAbstractButton::clicked, this, &TrendPage::askExport);
}

void TrendPage::buildChart() {
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
    scroll_->setMinimumHeight(grown(this, 240));
    rows->addWidget(scroll_);
    work_->addWidget(card, 1);
    connect(chart_, &TrendChart::visitPressed, this, &TrendPage::visitChosen);
    connect(chart_, &TrendChart::eventPressed, this, [this](const PatientEventId& event) {
        showEvents(true);
        events_->edit(event);
    });
    connect(chart_, &TrendChart::focusMoved, this, [this](const QRect& rect) {
        scroll_->ensureVisible(rect.center().x(), rect.center().y(), 0, rect.height());
    });
}

void TrendPage::buildChanges() {
    auto* card = new Card(this);
    changesCard_ = card;
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(16, 12, 4, 8);
    column->setSpacing(6);
    column->addWidget(new Label(tr("What changed"), 17, QFont::DemiBold, Label::Tone::ink, card));
    changesTitle_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, card);
    changesTitle_->setWordWrap(true);
    column->addWidget(changesTitle_);
    changes_ = new ChangeList;
    auto* area = new QScrollArea(card);
    area->setWidget(changes_);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->viewport()->setAutoFillBackground(false);
    changes_->setAutoFillBackground(false);
    column->addWidget(area, 1);
    card->hide();
    work_->addWidget(card, 0);
    connect(changes_, &ChangeList::rowPressed, this, [this](int row) {
        const QString curve = changes_->rows().at(static_cast<std::size_t>(row)).curve;
        showCurve(curve);
    });
    connect(changes_, &ChangeList::focusMoved, area, [area](const QRect& rect) {
        area->ensureVisible(rect.center().x(), rect.center().y(), 0, rect.height());
    });
}

/// Between the last two visits, the most important first.
void TrendPage::showChanges(const std::vector<Exam>& exams) {
    const std::size_t count = exams.size();
    changesCard_->setVisible(count >= 2 && !eventsButton_->isChecked());
    if (count < 2) return changes_->setRows({});
    ChangeRows rows = visitRows(compareVisits(exams[count - 2], exams[count - 1], session_.knowledge()),
                                session_.catalogue(), Theme::of(this), {});
    changesTitle_->setText(tr("Visit %1 to visit %2: %3")
                               .arg(visits_[count - 2].number)
                               .arg(visits_[count - 1].number)
                               .arg(inSentence(rows.title)));
    changes_->setRows(std::move(rows.folds.front()));
}

/// What has no curve is looked up where it stood before.
void TrendPage::showCurve(const QString& curve) {
    const auto row = std::ranges::find(rows_, curve, &TrendRow::id);
    if (row == rows_.end()) {
        if (visits_.size() >= 2) emit visitChosen(visits_[visits_.size() - 2].id);
        return;
    }
    if (scoresOnly_ && !row->score) choice_->choose(0);
    const auto& shown = chart_->rows();
    if (std::ranges::find(shown, curve, &TrendRow::id) == shown.end()) setShown(curve, true);
    chart_->choose(curve);
}

QWidget& TrendPage::exportButton() const {
    return *export_;
}

void TrendPage::say(const QString& text) {
    say_->setText(text);
}

/// Every visit up to the open one, oldest first; what could not be read, in words.
QString TrendPage::readVisits(std::vector<Exam>& exams) {
    visits_.clear();
    QString problem;
    const auto visits = store_.visitsOf(session_.start().visit.patient);
    if (!visits) return QString::fromStdString(visits.problems().front().text());
    const Visit& open = session_.start().visit;
    std::vector<VisitId> ids;
    for (const Visit& visit : *visits)
        ids.push_back(visit.id);
    std::vector<Result<Exam>> read = store_.exams(ids);
    for (std::size_t i = 0; i < ids.size(); ++i) {
        const Visit& visit = (*visits)[i];
        if (visit.number > open.number) continue;
        // The open visit stands as it is on the screen, with what is still on its way to the record.
        if (visit.id == open.id) read[i] = Result<Exam>(session_.exam());
        if (!read[i]) {
            problem = QString::fromStdString(read[i].problems().front().text());
            continue;
        }
        read[i]->date = visit.date;
        exams.push_back(std::move(*read[i]));
        visits_.push_back({visit.id, visit.number, visit.date});
    }
    return problem;
}

void TrendPage::refresh() {
    stale_ = false;
    std::vector<Exam> exams;
    QString problem = readVisits(exams);
    trend_ = exams.empty() ? Trend{} : trendOf(exams, session_.knowledge());
    rows_ = trendRows(trend_, session_.knowledge());
    if (const Outcome read = events_->refresh(); !read && problem.isEmpty())
        problem = QString::fromStdString(read.problems().front().text());
    QString text =
        tr("A triangle or diamond marks a change larger than its threshold. A gap in a line: not examined at "
           "that visit. Press a point to open that visit, read only.");
    if (exams.size() < 2) text = tr("There is one visit so far: a course needs two.");
    if (!trend_.unknown.empty())
        text += QStringLiteral(" ") +
                tr("Recorded, but not in today's catalogue and so not shown: %1.").arg(trend_.unknown.size());
    say(problem.isEmpty() ? text : problem);
    showRows();
    showChanges(exams);
}

std::vector<TrendEvent> TrendPage::shownEvents() const {
    std::vector<TrendEvent> out;
    for (const PatientEvent& each : events_->events())
        out.push_back({each.id, each.date, events_->wordsOf(each), each.awaited});
    return out;
}

void TrendPage::showEvents(bool shown) {
    events_->setVisible(shown);
    eventsButton_->setChecked(shown);
    changesCard_->setVisible(!shown && visits_.size() >= 2);
}

void TrendPage::showRows() {
    std::vector<TrendRow> shown;
    auto room = usualRows - std::min(usualRows, static_cast<std::size_t>(std::ranges::count_if(
                                                    rows_, [](const TrendRow& row) { return row.usual; })));
    for (const TrendRow& row : rows_) {
        if (scoresOnly_ && !row.score) continue;
        const bool fits = row.usual || room > 0;
        if (!row.usual && room > 0) --room;
        if (chosen_ ? chosen_->contains(row.id) : fits) shown.push_back(row);
    }
    chart_->show(visits_, std::move(shown), shownEvents());
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

void TrendPage::resizeEvent(QResizeEvent*) {
    const bool wide = width() >= grown(this, wideFrom);
    work_->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    placeSide(*events_, 460);
    placeSide(*changesCard_, 320);
}

/// Beside the chart, or below it, as high as that but never lower than what it holds; the page scrolls then.
void TrendPage::placeSide(QWidget& side, int height) const {
    const bool wide = width() >= grown(this, wideFrom);
    const int least = side.minimumSizeHint().height();
    const int usual = grown(this, height);
    side.setMinimumWidth(wide ? grown(this, 320) : 0);
    side.setMaximumWidth(wide ? grown(this, 320) : QWIDGETSIZE_MAX);
    side.setMaximumHeight(wide ? QWIDGETSIZE_MAX : std::max(least, usual));
    side.setMinimumHeight(wide ? 0 : std::max(least, std::min(usual, this->height() / 2)));
}

void TrendPage::showEvent(QShowEvent* event) {
    if (stale_) refresh();
    QWidget::showEvent(event);
}

} // namespace rhizograph::app
