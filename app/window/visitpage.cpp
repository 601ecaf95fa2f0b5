#include "window/visitpage.h"

#include "exam/steptally.h"
#include "impression/impressionpanel.h"
#include "parts/textsize.h"
#include "patients/words.h"
#include "shell/visitsession.h"
#include "window/finder.h"
#include "window/noticebar.h"
#include "window/patientstrip.h"
#include "window/queuedrecord.h"
#include "window/redsignbar.h"

#include <QEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedWidget>
#include <set>

namespace rhizograph::app {
namespace {

/// Narrower than this the rail goes to the bottom and the impression becomes a bar.
constexpr int uprightBelow = 1000;
/// The work area grows no wider, so that right and left stay in one glance; spare width goes to the
/// impression.
constexpr int widestWork = 1180;
/// Below this width, at 100 % text, the strip has no room for record number and user.
constexpr int stripWords = 1100;

} // namespace

VisitPage::VisitPage(VisitSession& session, QueuedRecord* record, std::vector<WorkPage> pages,
                     QWidget* parent)
    : QWidget(parent), session_(session), record_(record) {
    for (WorkPage& page : pages)
        pages_.push_back({std::move(page), nullptr});
    build();
    connectRecord();
    refreshRail();
    setFocusPolicy(Qt::StrongFocus); // keys work before anything is pressed
    showPage(0);
}

void VisitPage::build() {
    work_ = new QStackedWidget(this);
    strip_ = new PatientStrip(session_, this);
    redSigns_ = new RedSignBar(session_, session_.mayAcknowledge(), this);
    rail_ = new Rail(this);
    impression_ = new ImpressionPanel(session_, this);
    finder_ = new Finder(session_.catalogue(), this);
    saveNotice_ = new NoticeBar(this);
    saveNotice_->hide();
    connect(saveNotice_->addWayOut(tr("Try again")), &PlainButton::clicked, this, [this] {
        if (record_ != nullptr) record_->retry();
    });
    connect(saveNotice_->addWayOut(tr("Save a copy …")), &PlainButton::clicked, this,
            &VisitPage::saveCopyWanted);
    notice_ = new NoticeBar(this);
    notice_->hide();
    connect(notice_->addWayOut(tr("Close")), &PlainButton::clicked, this, [this] {
        notice_->hide();
        arrange();
    });
    wayBack_ = new NoticeBar(this);
    wayBack_->hide();
    connect(wayBack_->addWayOut(tr("Back to the course")), &PlainButton::clicked, this,
            &VisitPage::wayBackWanted);
    connect(rail_, &Rail::wanted, this, &VisitPage::showPage);
    connect(redSigns_, &RedSignBar::neededChanged, this, &VisitPage::arrange);
    connect(redSigns_, &RedSignBar::goToItem, this, &VisitPage::goTo);
    connect(impression_, &ImpressionPanel::goToItem, this, &VisitPage::goTo);
    connect(impression_, &ImpressionPanel::foldedChanged, this, &VisitPage::arrange);
    connect(finder_, &Finder::chosen, this, [this](const ItemId& id) {
        if (const Item* item = session_.catalogue().find(id)) goTo(keysOf(*item).front());
    });
    connect(&session_, &VisitSession::assessed, this, &VisitPage::refreshRail);
    connect(&session_, &VisitSession::acknowledgementsChanged, this, &VisitPage::refreshRail);
    const auto shortcut = [this](const QKeySequence& keys, auto work) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, work);
    };
    shortcut(QKeySequence(Qt::Key_Slash), [this] { openFinder(); });
    shortcut(QKeySequence::Find, [this] { openFinder(); });
    shortcut(QKeySequence(Qt::Key_U), [this] { session_.undoStack().undo(); });
    shortcut(QKeySequence::Undo, [this] { session_.undoStack().undo(); });
    shortcut(QKeySequence::Redo, [this] { session_.undoStack().redo(); });
    shortcut(QKeySequence(Qt::CTRL | Qt::Key_PageDown), [this] { showPage((current_ + 1) % pageCount()); });
    shortcut(QKeySequence(Qt::CTRL | Qt::Key_PageUp),
             [this] { showPage((current_ + pageCount() - 1) % pageCount()); });
}

void VisitPage::connectRecord() {
    SavedMark& mark = strip_->savedMark();
    if (session_.readOnly()) {
        const bool locked = session_.start().visit.state == VisitState::signedOff;
        mark.set(SavedMark::State::readOnly, locked ? tr("Signed, read only") : tr("Read only"));
    } else {
        mark.set(SavedMark::State::saved, tr("Saved"));
    }
    if (record_ == nullptr) return;
    connect(record_, &QueuedRecord::handedOver, this, [this] {
        if (!record_->failing()) strip_->savedMark().set(SavedMark::State::saving, tr("Saving"));
    });
    connect(&session_, &VisitSession::saved, this, &VisitPage::showSaved);
    connect(&session_, &VisitSession::saveFailed, this, &VisitPage::showSaveFailure);
    connect(record_, &QueuedRecord::refused, this,
            [this](const QString& reason) { notice(tr("Not recorded: %1").arg(reason)); });
    connect(strip_, &PatientStrip::savedPressed, record_, &QueuedRecord::retry);
}

void VisitPage::showSaved() {
    const QString at = upright_ ? QString{} : timeText(record_->savedUntil().toStdString());
    strip_->savedMark().set(SavedMark::State::saved, at.isEmpty() ? tr("Saved") : tr("Saved %1").arg(at));
    saveNotice_->hide();
    arrange();
}

void VisitPage::showSaveFailure(const QString& reason) {
    strip_->savedMark().set(SavedMark::State::failing, tr("Not saved"));
    saveNotice_->say(tr("%1 What was recorded since is kept here (changes waiting: %2).")
                         .arg(reason)
                         .arg(record_->waiting()));
    saveNotice_->show();
    arrange();
}

void VisitPage::notice(const QString& text) {
    notice_->say(text);
    notice_->show();
    arrange();
}

QString VisitPage::noticed() const {
    return notice_->isHidden() ? QString{} : notice_->text();
}

void VisitPage::offerWayBack(const QString& text) {
    wayBack_->say(text);
    wayBack_->show();
    arrange();
}

QWidget& VisitPage::page(int index) {
    Held& held = pages_.at(static_cast<std::size_t>(index));
    if (held.widget == nullptr) {
        held.widget = held.page.make(work_);
        work_->addWidget(held.widget);
        emit pageMade(held.widget);
    }
    return *held.widget;
}

void VisitPage::showPage(int index) {
    if (index < 0 || index >= pageCount()) return;
    work_->setCurrentWidget(&page(index));
    current_ = index;
    rail_->setChosen(index);
    if (upright_ && !impression_->folded()) impression_->setFolded(true);
    arrange();
    emit pageShown(index);
}

void VisitPage::goTo(const FindingKey& key) {
    const Item* item = session_.catalogue().find(key.item);
    if (item == nullptr) return;
    for (int index = 0; index < pageCount(); ++index) {
        const WorkPage& target = pages_[static_cast<std::size_t>(index)].page;
        if (target.step != item->step.text() || !target.goTo) continue;
        showPage(index);
        target.goTo(page(index), key);
        return;
    }
}

void VisitPage::openFinder() {
    const int width = std::min(grown(this, 560), work_->width() - 24);
    const int height = std::min(grown(this, 460), work_->height() - 24);
    finder_->setGeometry(work_->x() + (work_->width() - width) / 2, work_->y() + 12, width, height);
    finder_->open();
}

void VisitPage::refreshRail() {
    std::set<ItemId> red;
    for (const RedSign& sign : session_.assessment().redSigns)
        if (sign.urgency != Urgency::note)
            for (const FindingKey& key : sign.because)
                red.insert(key.item);
    const auto standsIn = [&](const std::string& step) {
        for (const ItemId& id : red)
            if (const Item* item = session_.catalogue().find(id);
                item != nullptr && item->step.text() == step)
                return true;
        return false;
    };
    std::vector<RailPlace> places;
    for (const Held& held : pages_) {
        RailPlace place{held.page.label, held.page.glyph};
        if (place.step()) {
            const StepTally tally = stepTally(session_, held.page.step);
            place.shown = tally.shown;
            place.recorded = tally.recorded;
            if (tally.abnormal > 0) place.mark = RailPlace::Mark::abnormal;
            if (standsIn(held.page.step)) place.mark = RailPlace::Mark::redSign;
        }
        places.push_back(std::move(place));
    }
    rail_->setPlaces(std::move(places));
}

void VisitPage::resizeEvent(QResizeEvent*) {
    arrange();
}

void VisitPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) arrange();
}

bool VisitPage::event(QEvent* event) {
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) arrange();
    return done;
}

int VisitPage::placeTop() {
    int top = 0;
    const auto put = [&](QWidget* widget, int height) {
        widget->setGeometry(0, top, width(), height);
        top += height;
    };
    strip_->fit(width());
    put(strip_, strip_->sizeHint().height());
    redSigns_->setVisible(redSigns_->needed());
    if (redSigns_->needed()) put(redSigns_, redSigns_->sizeHint().height());
    for (NoticeBar* bar : {saveNotice_, notice_, wayBack_})
        if (!bar->isHidden()) put(bar, std::max(bar->sizeHint().height(), bar->heightForWidth(width())));
    return top;
}

void VisitPage::arrange() {
    if (current_ < 0) return;
    const bool upright = width() < uprightBelow;
    if (upright != upright_) {
        upright_ = upright;
        redSigns_->setNarrow(upright);
        rail_->setAtBottom(upright);
        impression_->setPortrait(upright);
        impression_->setFolded(upright);
    }
    strip_->setNarrow(upright_ || width() < grown(this, stripWords));
    const int before = work_->y();
    const int top = placeTop();
    if (upright_)
        placeUpright(top);
    else
        placeWide(top);
    keepUnderFinger(work_->y() - before);
}

/// A bar that comes or goes at the top moves the work: its rows are scrolled the other way, so that the next
/// press of a quick hand does not land on the row beside.
void VisitPage::keepUnderFinger(int moved) {
    if (moved == 0 || !isVisible() || work_->currentWidget() == nullptr) return;
    for (QScrollArea* area : work_->currentWidget()->findChildren<QScrollArea*>())
        if (area->isVisible())
            area->verticalScrollBar()->setValue(area->verticalScrollBar()->value() + moved);
}

void VisitPage::placeUpright(int top) {
    const int railHeight = rail_->thickness();
    rail_->setGeometry(0, height() - railHeight, width(), railHeight);
    const bool wide = pages_[static_cast<std::size_t>(current_)].page.wide;
    impression_->setVisible(!wide);
    int bottom = height() - railHeight;
    if (!wide) {
        // As a sheet it covers the work, which keeps its size below.
        const int bar = impression_->barHeight();
        const int sheet = impression_->folded() ? bar : height() * 7 / 10;
        impression_->setGeometry(0, bottom - sheet, width(), sheet);
        impression_->raise();
        bottom -= bar;
    }
    work_->setGeometry(0, top, width(), std::max(0, bottom - top));
}

void VisitPage::placeWide(int top) {
    const int rail = rail_->thickness();
    rail_->setGeometry(0, top, rail, height() - top);
    const bool wide = pages_[static_cast<std::size_t>(current_)].page.wide;
    impression_->setVisible(!wide);
    if (wide) {
        work_->setGeometry(rail, top, width() - rail, height() - top);
        return;
    }
    const int least = impression_->minimumWidth();
    const int spare = width() - rail - least - widestWork;
    const int panel =
        impression_->folded() ? least : std::clamp(least + spare, least, impression_->maximumWidth());
    impression_->setGeometry(width() - panel, top, panel, height() - top);
    const int room = width() - rail - panel;
    const int work = std::min(room, grown(this, widestWork));
    work_->setGeometry(rail + (room - work) / 2, top, work, height() - top);
}

} // namespace rhizograph::app
