#include "patients/patientspage.h"

#include "parts/button.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "patients/practicerows.h"
#include "patients/visitlist.h"
#include "patients/words.h"

#include <algorithm>
#include <map>
#include <memory>
#include <QAction>
#include <QButtonGroup>
#include <QEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr int margin = 24;
constexpr int gap = 12;
constexpr int tabGap = 8;
constexpr int searchMargins = 72; ///< of the field's frame and its clear button

enum Which { ofToday, toReview, notSigned, needsEye, everyone };

QString actionOf(const Visit& visit) {
    switch (visit.state) {
    case VisitState::intake:
        return visit.findings == 0 ? PatientsPage::tr("Begin") : PatientsPage::tr("Open");
    case VisitState::inRoom:
        return PatientsPage::tr("Open");
    case VisitState::toReview:
        return PatientsPage::tr("Review");
    case VisitState::signedOff:
        return PatientsPage::tr("Read");
    }
    return {};
}

std::vector<Visit> inReview(const std::vector<Visit>& visits) {
    std::vector<Visit> out;
    std::copy_if(visits.begin(), visits.end(), std::back_inserter(out),
                 [](const Visit& visit) { return visit.state == VisitState::toReview; });
    return out;
}

} // namespace

PatientsPage::PatientsPage(QWidget* parent) : QWidget(parent), which_(new QButtonGroup(this)) {
    build();
}

void PatientsPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin, 20, margin, 0);
    column->setSpacing(16);
    buildTop(*column);
    buildTabs(*column);
    buildList(*column);
}

void PatientsPage::buildTop(QBoxLayout& column) {
    top_ = new QBoxLayout(QBoxLayout::LeftToRight);
    top_->setSpacing(gap);
    column.addLayout(top_);
    search_ = new QLineEdit(this);
    search_->setPlaceholderText(tr("Name or record number"));
    search_->setAccessibleName(tr("Search patients by name or record number"));
    search_->setClearButtonEnabled(true);
    top_->addWidget(search_, 1);
    fromList_ = new PlainButton(tr("From a list …"), PlainButton::Kind::quiet, this);
    fromList_->setAccessibleName(tr("Bring in a list of patients"));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(gap);
    buttons->addWidget(fromList_);
    connect(fromList_, &PlainButton::clicked, this, &PatientsPage::listWanted);
    newPatient_ = new PlainButton(tr("New patient"), PlainButton::Kind::primary, this);
    newPatient_->setGlyph(Glyph::plus);
    buttons->addWidget(newPatient_);
    top_->addLayout(buttons);
    connect(search_, &QLineEdit::textChanged, this, &PatientsPage::refreshWanted);
    connect(search_, &QLineEdit::returnPressed, this, [this] {
        if (!targets_.empty()) choose(0);
    });
    connect(newPatient_, &PlainButton::clicked, this,
            [this] { emit newPatientWanted(search_->text().simplified()); });
}

void PatientsPage::buildTabs(QBoxLayout& column) {
    head_ = new QBoxLayout(QBoxLayout::LeftToRight);
    head_->setSpacing(gap);
    column.addLayout(head_);
    auto tabs = std::make_unique<FlowLayout>(tabGap);
    tabs->setContentsMargins(0, 0, 0, 0);
    const QStringList names{tr("Today"), tr("To review"), tr("Unsigned"), tr("Needs a look"), tr("All")};
    for (int index = 0; index < names.size(); ++index) {
        auto* tab = new PlainButton(names[index], PlainButton::Kind::choice, this);
        which_->addButton(tab, index);
        tabs->addWidget(tab);
    }
    which_->button(ofToday)->setChecked(true);
    auto* row = new QWidget(this);
    row->setLayout(tabs.release());
    head_->addWidget(row, 1);
    order_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, this);
    head_->addWidget(order_);
    connect(which_, &QButtonGroup::idClicked, this, [this] {
        const QSignalBlocker quiet(search_);
        search_->clear();
        emit refreshWanted();
    });
}

void PatientsPage::buildList(QBoxLayout& column) {
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    column.addWidget(area, 1);
    auto* inside = new QWidget(area);
    auto* below = new QVBoxLayout(inside);
    below->setContentsMargins(0, 0, 0, 24);
    list_ = new VisitList(tr("Patients"), VisitList::Of::patients, inside);
    below->addWidget(list_);
    below->addStretch(1);
    area->setWidget(inside);
    connect(list_, &VisitList::pressed, this, &PatientsPage::choose);
    connect(list_, &VisitList::focusMoved, area, [area](const QRect& row) {
        area->ensureVisible(row.center().x(), row.bottom(), 0, row.height() / 2);
    });
}

void PatientsPage::chooseNeedsALook() {
    which_->button(needsEye)->click();
}

/// What does not fit beside its neighbor goes below it.
void PatientsPage::arrangeHead() {
    const int room = width() - 2 * margin;
    int tabs = 0;
    for (const QAbstractButton* tab : which_->buttons())
        if (tab->isVisibleTo(this)) tabs += tab->sizeHint().width() + tabGap;
    const bool beside = tabs + gap + order_->fontMetrics().horizontalAdvance(order_->text()) <= room;
    head_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    order_->setWordWrap(!beside);
    order_->setVisible(!order_->text().isEmpty());
    const int words = search_->fontMetrics().horizontalAdvance(search_->placeholderText());
    const int buttons = fromList_->sizeHint().width() + newPatient_->sizeHint().width() + 2 * gap;
    top_->setDirection(words + searchMargins + buttons <= room ? QBoxLayout::LeftToRight
                                                               : QBoxLayout::TopToBottom);
}

void PatientsPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrangeHead();
}

bool PatientsPage::event(QEvent* event) {
    // Words, counts and sizes of text change how much there is to place.
    if (event->type() == QEvent::LayoutRequest) arrangeHead();
    return QWidget::event(event);
}

void PatientsPage::clear() {
    const QSignalBlocker quiet(search_);
    search_->clear();
    targets_.clear();
    list_->setRows({}, {});
}

void PatientsPage::choose(int row) {
    const Target& target = targets_.at(static_cast<std::size_t>(row));
    if (const auto* visit = std::get_if<VisitId>(&target))
        emit visitChosen(*visit);
    else
        emit patientChosen(std::get<PatientId>(target));
}

Outcome PatientsPage::refresh(Store& store) {
    const auto user = store.signedIn();
    newPatient_->setEnabled(user && allows(user->role, Permission::editPatients));
    fromList_->setEnabled(newPatient_->isEnabled());
    const bool mayReview = user && allows(user->role, Permission::reviewPractice);
    which_->button(needsEye)->setVisible(mayReview);
    if (!mayReview && which_->checkedId() == needsEye) which_->button(ofToday)->setChecked(true);
    const std::string text = search_->text().simplified().toStdString();
    if (!text.empty()) return showPatients(store, text); // each letter typed: only what it asks for
    auto dayVisits = store.visitsOn(today());
    if (!dayVisits) return dayVisits.problems();
    auto unsignedVisits = store.unsignedVisits();
    if (!unsignedVisits) return unsignedVisits.problems();
    countUp(*dayVisits, *unsignedVisits);
    switch (which_->checkedId()) {
    case ofToday:
        order_->setText(tr("in the order of the day"));
        return showVisits(store, *dayVisits, tr("No visits today. Search for a patient, or add a new one."));
    case toReview:
        order_->setText({});
        return showVisits(store, inReview(*unsignedVisits), tr("Nothing waits for review."));
    case notSigned:
        order_->setText({});
        return showVisits(store, *unsignedVisits, tr("Every visit is signed."));
    case needsEye:
        return showPractice(store);
    default:
        return showPatients(store, {});
    }
}

void PatientsPage::countUp(const std::vector<Visit>& dayVisits, const std::vector<Visit>& unsignedVisits) {
    const auto label = [this](int id, const QString& word, std::size_t count) {
        auto* button = which_->button(id);
        button->setText(count > 0 ? QStringLiteral("%1  %2").arg(word).arg(count) : word);
        button->updateGeometry();
    };
    label(ofToday, tr("Today"), dayVisits.size());
    label(toReview, tr("To review"), inReview(unsignedVisits).size());
    label(notSigned, tr("Unsigned"), unsignedVisits.size());
}

Outcome PatientsPage::showVisits(Store& store, const std::vector<Visit>& visits, const QString& whenEmpty) {
    std::vector<ListedVisit> rows;
    std::vector<Target> targets;
    for (const Visit& visit : visits) {
        auto patient = store.patient(visit.patient);
        if (!patient) return patient.problems();
        const Identity& identity = patient->identity;
        const QString when = visit.date == today() ? QString{} : QStringLiteral(", ") + dayText(visit.date);
        rows.push_back({QString::fromStdString(identity.name), ageAndSex(identity, visit.date),
                        QString::fromStdString(identity.recordNumber), tr("Visit %1").arg(visit.number),
                        markOf(visit), stateText(visit), stateDetail(visit) + when,
                        visit.state == VisitState::signedOff ? 0 : visit.openRedSigns, actionOf(visit),
                        visit.state == VisitState::inRoom});
        targets.emplace_back(visit.id);
    }
    targets_ = std::move(targets);
    list_->setRows(std::move(rows), whenEmpty);
    return {};
}

Outcome PatientsPage::showPractice(Store& store) {
    constexpr int most = 100;
    const auto practice = store.practice(today(), most);
    if (!practice) return practice.problems();
    std::vector<ListedVisit> rows;
    std::vector<Target> targets;
    for (const Attention& one : practice->patients) {
        auto patient = store.patient(one.patient);
        if (!patient) return patient.problems();
        rows.push_back(attentionRow(one, patient->identity));
        if (one.visit.empty())
            targets.emplace_back(one.patient);
        else
            targets.emplace_back(one.visit);
    }
    order_->setText(practiceWords(*practice));
    targets_ = std::move(targets);
    list_->setRows(std::move(rows), tr("Nobody: no open red sign, nothing worse, no follow-up passed, every "
                                       "visit signed."));
    return {};
}

Outcome PatientsPage::showPatients(Store& store, const std::string& text) {
    constexpr int most = 60;
    auto found = store.searchPatients(text, most);
    if (!found) return found.problems();
    std::vector<PatientId> ids;
    for (const Patient& patient : *found)
        ids.push_back(patient.id);
    const auto visits = store.newestVisits(ids); // one question for all rows
    if (!visits) return visits.problems();
    std::map<PatientId, const Visit*> newest;
    for (const Visit& visit : *visits)
        newest[visit.patient] = &visit;
    std::vector<ListedVisit> rows;
    std::vector<Target> targets;
    for (const Patient& patient : *found) {
        ListedVisit row;
        row.name = QString::fromStdString(patient.identity.name);
        row.about = ageAndSex(patient.identity, today());
        row.record = QString::fromStdString(patient.identity.recordNumber);
        row.action = tr("Choose");
        if (const auto seen = newest.find(patient.id); seen != newest.end()) {
            const Visit& last = *seen->second;
            row.visit = visitCount(last.number);
            row.mark = markOf(last);
            row.state = stateText(last);
            row.detail = dayText(last.date);
            row.redSigns = last.state == VisitState::signedOff ? 0 : last.openRedSigns;
        } else {
            row.state = tr("No visit yet");
        }
        rows.push_back(std::move(row));
        targets.emplace_back(patient.id);
    }
    const bool cut = found->size() == static_cast<std::size_t>(most);
    order_->setText(cut ? tr("the first %1; type more to narrow down").arg(most) : QString{});
    targets_ = std::move(targets);
    list_->setRows(std::move(rows), text.empty()
                                        ? tr("No patients yet.")
                                        : tr("Nobody by this name or number. New patient takes it over."));
    return {};
}

} // namespace rhizograph::app
