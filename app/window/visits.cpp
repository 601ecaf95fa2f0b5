#include "compare/comparepage.h"
#include "compare/trendpage.h"
#include "exam/steppage.h"
#include "figures/skinfigure.h"
#include "impression/impressionpanel.h"
#include "patients/patientform.h"
#include "patients/patientpage.h"
#include "patients/patientspage.h"
#include "patients/words.h"
#include "settings/layoutcard.h"
#include "summary/summarypage.h"
#include "window/mainwindow.h"
#include "window/pages.h"
#include "window/patientstrip.h"
#include "window/tour.h"
#include "window/visitpage.h"
#include "window/visitwatch.h"

#include <algorithm>
#include <QApplication>
#include <QDateTime>
#include <QFileDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>

namespace rhizograph::app {
namespace {

constexpr std::chrono::seconds longestWait{3};
constexpr std::chrono::milliseconds betweenTries{250};

ExamOptions examOptions(const ClinicSettings& settings, std::shared_ptr<const HowTos> howTos) {
    ExamOptions options;
    options.length = settings.inches ? LengthUnit::inches : LengthUnit::centimeters;
    options.splitGrades = settings.splitGrades;
    options.howTos = std::move(howTos);
    return options;
}

} // namespace

void MainWindow::showPatients() {
    if (!closeVisit()) return;
    rooms_->setCurrentWidget(patients_);
    stack_->setCurrentWidget(house_);
    if (succeeded(patients_->refresh(*store_))) patients_->searchField().setFocus();
}

void MainWindow::showPatient(const PatientId& id) {
    if (!succeeded(patient_->show(*store_, id))) return;
    rooms_->setCurrentWidget(patient_);
    stack_->setCurrentWidget(house_);
}

void MainWindow::showForm() {
    rooms_->setCurrentWidget(form_);
    stack_->setCurrentWidget(house_);
}

void MainWindow::savePatient(const PatientId& id, const Identity& identity, bool visit) {
    PatientId saved = id;
    if (id.empty()) {
        auto added = store_->addPatient(identity);
        if (!added) return form_->refuse(reasonText(added.problems()));
        saved = added->id;
    } else if (const Outcome outcome = store_->updatePatient({id, identity}); !outcome) {
        return form_->refuse(reasonText(outcome.problems()));
    }
    if (visit)
        beginVisit(saved);
    else
        showPatient(saved);
}

void MainWindow::beginVisit(const PatientId& patient) {
    auto visit = store_->addVisit(patient, today());
    if (!visit) return complain(visit.problems());
    openVisitById(visit->id);
}

void MainWindow::openVisitById(const VisitId& id, int page) {
    if (closeVisit()) showVisit(id, page, {});
}

void MainWindow::readVisit(const VisitId& id) {
    // From course to course the way back leads to where it began.
    const WayBack back =
        wayBack_.value_or(WayBack{visit_.session->start().visit.id, visitPage_->pageIndex()});
    if (id == back.visit) return openVisitById(id, back.page);
    if (closeVisit()) showVisit(id, 0, back);
}

bool MainWindow::reopenVisit() {
    const VisitId id = visit_.session->start().visit.id;
    const int page = visitPage_->pageIndex();
    const std::optional<WayBack> back = wayBack_;
    if (!closeVisit()) return false;
    showVisit(id, page, back);
    return true;
}

void MainWindow::judgeVisitAnew() {
    if (visitPage_ == nullptr || locked_) return; // the next sign-in judges it
    // What a dialog still works on must not vanish below it.
    const bool busy =
        QApplication::activeModalWidget() != nullptr || QApplication::activePopupWidget() != nullptr;
    if (busy || (visit_.record != nullptr && visit_.record->waiting() > 0)) {
        QTimer::singleShot(betweenTries, this, &MainWindow::judgeVisitAnew);
        return;
    }
    QStringList said{visitPage_->noticed()};               // what was not recorded any more
    const bool behind = stack_->currentWidget() == house_; // the settings stand over it
    if (!reopenVisit() || visitPage_ == nullptr) return;
    if (behind) stack_->setCurrentWidget(house_);
    user_ = store_->signedIn();
    if (visit_.session->start().visit.state == VisitState::signedOff)
        said << tr("This visit was signed meanwhile: it can only be read now.");
    else
        said << tr("Your role in this clinic was changed.");
    said.removeAll(QString{});
    visitPage_->notice(said.join(u' '));
}

/// A visit that was opened only to be read stays so, whoever goes on with it.
void MainWindow::showVisit(const VisitId& id, int page, const std::optional<WayBack>& back) {
    auto opened = materials_.get() ? openVisit(*store_, materials().knowledge, id, back.has_value())
                                   : Result<OpenVisit>{materials_.get().problems()};
    if (!opened) {
        if (stack_->currentWidget() != house_) showPatients();
        return complain(opened.problems());
    }
    visit_ = std::move(opened).value();
    wayBack_ = back;
    showVisitPage(page);
}

/// Whether somebody signed the open visit since it was opened; unreadable counts as signed.
bool MainWindow::signedMeanwhile() {
    const Visit& shown = visit_.session->start().visit;
    const auto present = store_->visit(shown.id);
    return shown.state != VisitState::signedOff && (!present || present->state == VisitState::signedOff);
}

void MainWindow::connectWayBack() {
    if (!wayBack_) return;
    visitPage_->offerWayBack(tr("An earlier visit, only to be read."));
    connect(visitPage_.get(), &VisitPage::wayBackWanted, this, [this, back = *wayBack_] {
        QMetaObject::invokeMethod(
            this, [this, back] { openVisitById(back.visit, back.page); }, Qt::QueuedConnection);
    });
}

void MainWindow::showVisitPage(int page) {
    VisitSession& session = *visit_.session;
    session.setPlaces(clinic_.places);
    const auto sign = [this] {
        // Not from inside the page: signing makes it anew.
        QMetaObject::invokeMethod(this, &MainWindow::signVisit, Qt::QueuedConnection);
    };
    visitPage_ = std::make_unique<VisitPage>(
        session, visit_.record.get(),
        workPages(session, *store_, materials().art, examOptions(clinic_, materials().howTos),
                  orderedSteps(session.catalogue(), clinic_.stepOrder), sign));
    visitPage_->impression().setFolded(preferences_.impressionFolded);
    PatientStrip& strip = visitPage_->strip();
    connect(&strip, &PatientStrip::backWanted, this, &MainWindow::showPatients);
    connect(&strip, &Strip::lockWanted, this, &MainWindow::lock);
    connect(&strip, &Strip::menuWanted, this, [this] { showMenu(visitPage_->strip()); });
    connect(&strip, &PatientStrip::handOverWanted, this, [this] { moveVisitOn(VisitState::inRoom); });
    connect(visitPage_.get(), &VisitPage::saveCopyWanted, this, &MainWindow::saveCopy);
    connect(visitPage_.get(), &VisitPage::pageMade, this, [this](QWidget* made) {
        if (auto* summary = qobject_cast<SummaryPage*>(made))
            connect(summary, &SummaryPage::goToItem, visitPage_.get(), &VisitPage::goTo);
        if (auto* compare = qobject_cast<ComparePage*>(made))
            connect(compare, &ComparePage::goToItem, visitPage_.get(), &VisitPage::goTo);
        if (auto* trend = qobject_cast<TrendPage*>(made))
            // Not from inside the page: opening another visit makes it anew.
            connect(trend, &TrendPage::visitChosen, this, [this](const VisitId& chosen) {
                if (chosen != visit_.session->start().visit.id)
                    QMetaObject::invokeMethod(
                        this, [this, chosen] { readVisit(chosen); }, Qt::QueuedConnection);
            });
    });
    connect(visitPage_.get(), &VisitPage::pageShown, this, &MainWindow::offerHandOver);
    connect(&visitPage_->impression(), &ImpressionPanel::foldedChanged, this, [this](bool folded) {
        if (visitPage_->upright()) return; // on an upright screen folding is only a passing view
        preferences_.impressionFolded = folded;
        savePreferences(setup_.preferencesFile, preferences_);
    });
    connect(&visitPage_->impression(), &ImpressionPanel::siteChosen, this,
            [this](const SiteId& site, Side side) {
                for (StepPage* made : visitPage_->findChildren<StepPage*>())
                    if (SkinFigure* skin = made->skin())
                        skin->setTerritory(territoryOf(*visit_.session, site, side));
            });
    watch_ = std::make_unique<VisitWatch>(*store_, session, visit_.record.get());
    connect(watch_.get(), &VisitWatch::overwritten, visitPage_.get(), &VisitPage::notice);
    connect(watch_.get(), &VisitWatch::judgementDue, this, &MainWindow::judgeVisitAnew, Qt::QueuedConnection);
    connectWayBack();
    stack_->addWidget(visitPage_.get());
    stack_->setCurrentWidget(visitPage_.get());
    visitPage_->setFocus();
    setWindowTitle(tr("Rhizograph: %1").arg(QString::fromStdString(session.start().patient.identity.name)));
    if (page >= 0) visitPage_->showPage(page);
    offerHandOver();
    if (setup_.tour && !preferences_.tourSeen)
        QMetaObject::invokeMethod(this, &MainWindow::showTour, Qt::QueuedConnection);
}

void MainWindow::showTour() {
    if (visitPage_ == nullptr || visitPage_->findChild<Tour*>() != nullptr) return;
    auto* tour = new Tour(visitStops(*visitPage_), visitPage_.get());
    connect(tour, &Tour::ended, this, [this] {
        preferences_.tourSeen = true;
        savePreferences(setup_.preferencesFile, preferences_);
        if (visitPage_ != nullptr) visitPage_->setFocus();
    });
}

void MainWindow::followVisit() {
    if (visitPage_ == nullptr) return;
    // Steps may have changed places and items come or gone: the pages are made anew.
    const int page = visitPage_->pageIndex();
    visitPage_.reset();
    showVisitPage(page);
    stack_->setCurrentWidget(house_);
}

bool MainWindow::settleRecord() {
    if (visit_.record == nullptr) return true;
    for (SummaryPage* page : visitPage_->findChildren<SummaryPage*>())
        page->flushPlan();
    while (!visit_.record->flush(longestWait)) {
        QMessageBox box(
            QMessageBox::Warning, tr("Not everything is saved"),
            tr("Changes of this visit that are not on disk yet: %1.").arg(visit_.record->waiting()),
            QMessageBox::NoButton, this);
        auto* retry = box.addButton(tr("Try again"), QMessageBox::AcceptRole);
        auto* copy = box.addButton(tr("Save a copy and close"), QMessageBox::ActionRole);
        box.addButton(tr("Stay here"), QMessageBox::RejectRole);
        box.exec();
        if (box.clickedButton() == retry) {
            visit_.record->retry();
            continue;
        }
        if (box.clickedButton() != copy) return false;
        saveCopy();
        return visit_.record == nullptr || !visit_.record->failing() || copySaved_;
    }
    return true;
}

bool MainWindow::closeVisit() {
    if (visitPage_ == nullptr) return true;
    if (!settleRecord()) return false;
    // Often asked for by one of the page's own buttons, which must not vanish while it is being pressed.
    struct Closing {
        OpenVisit visit;
        std::unique_ptr<VisitPage> page; ///< uses the visit, so it goes first
    };
    auto closing = std::make_shared<Closing>();
    watch_.reset();
    closing->visit = std::move(visit_);
    closing->page = std::move(visitPage_);
    closing->page->hide();
    stack_->removeWidget(closing->page.get());
    closing->page->setParent(nullptr); // the stack must not delete it too
    QMetaObject::invokeMethod(
        this, [closing] {}, Qt::QueuedConnection);
    visit_ = {};
    setWindowTitle(tr("Rhizograph"));
    return true;
}

void MainWindow::saveCopy() {
    copySaved_ = false;
    const QString stamp = QDateTime::currentDateTime().toString("yyyyMMdd-HHmmss");
    const QString file = QFileDialog::getSaveFileName(this, tr("Save a sealed copy of what is not saved"),
                                                      QStringLiteral("rhizograph-%1.unsaved").arg(stamp),
                                                      tr("Unsaved changes (*.unsaved)"));
    if (file.isEmpty()) return;
    const Outcome outcome = visit_.record->saveCopy(file.toStdString());
    copySaved_ = outcome.ok();
    if (!outcome) return complain(outcome.problems());
    visitPage_->notice(
        tr("A sealed copy is in %1. When the record can be written again, choose “Bring back unsaved "
           "changes” in the menu.")
            .arg(file));
}

void MainWindow::offerHandOver() {
    const VisitSession& session = *visit_.session;
    const bool due = !session.readOnly() && session.start().visit.state == VisitState::intake &&
                     visitPage_->pageIndex() == 0;
    visitPage_->strip().setHandOver(due ? tr("Hand over") : QString{});
}

void MainWindow::moveVisitOn(VisitState state) {
    if (!settleRecord()) return;
    if (succeeded(store_->setState(visit_.session->start().visit.id, state))) showPatients();
}

void MainWindow::signVisit() {
    if (visit_.session == nullptr || !settleRecord()) return;
    const VisitId id = visit_.session->start().visit.id;
    if (succeeded(store_->sign(id, materials().knowledge.version()))) reopenVisit();
}

} // namespace rhizograph::app
