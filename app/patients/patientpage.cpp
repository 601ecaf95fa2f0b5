#include "patients/patientpage.h"

#include "parts/button.h"
#include "parts/label.h"
#include "parts/textsize.h"
#include "patients/visitlist.h"
#include "patients/words.h"

#include <algorithm>
#include <QEvent>
#include <QMenu>
#include <QScrollArea>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr int margin = 24;
constexpr int gap = 12;

} // namespace

PatientPage::PatientPage(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(margin, 20, margin, 0);
    column->setSpacing(16);
    head_ = new QBoxLayout(QBoxLayout::LeftToRight);
    head_->setSpacing(gap);
    column->addLayout(head_);
    auto* who = new QHBoxLayout;
    who->setSpacing(gap);
    head_->addLayout(who, 1);
    auto* leave = new PlainButton({}, PlainButton::Kind::quiet, this);
    leave->setGlyph(Glyph::left);
    leave->setAccessibleName(tr("Back to the patients"));
    who->addWidget(leave, 0, Qt::AlignTop);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    who->addLayout(words, 1);
    name_ = new Label({}, 22, QFont::DemiBold, Label::Tone::ink, this);
    about_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, this);
    for (Label* label : {name_, about_})
        label->setWordWrap(true);
    words->addWidget(name_);
    words->addWidget(about_);
    edit_ = new PlainButton(tr("Correct entry"), PlainButton::Kind::quiet, this);
    visit_ = new PlainButton(tr("New visit"), PlainButton::Kind::primary, this);
    visit_->setGlyph(Glyph::plus);
    more_ = new PlainButton({}, PlainButton::Kind::quiet, this);
    more_->setGlyph(Glyph::menu);
    more_->setAccessibleName(tr("More for this patient"));
    auto* actions = new QHBoxLayout;
    actions->setSpacing(gap);
    for (PlainButton* action : {edit_, visit_, more_})
        actions->addWidget(action);
    head_->addLayout(actions);
    head_->setAlignment(actions, Qt::AlignLeft | Qt::AlignTop);

    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    column->addWidget(area, 1);
    auto* inside = new QWidget(area);
    auto* below = new QVBoxLayout(inside);
    below->setContentsMargins(0, 0, 0, 24);
    list_ = new VisitList(tr("Visits"), VisitList::Of::onePatient, inside);
    below->addWidget(list_);
    below->addStretch(1);
    area->setWidget(inside);

    connect(leave, &PlainButton::clicked, this, &PatientPage::back);
    connect(edit_, &PlainButton::clicked, this, [this] { emit editWanted(patient_); });
    connect(more_, &PlainButton::clicked, this, &PatientPage::showMore);
    connect(visit_, &PlainButton::clicked, this, [this] { emit newVisitWanted(patient_.id); });
    connect(list_, &VisitList::pressed, this,
            [this](int row) { emit visitChosen(visits_.at(static_cast<std::size_t>(row)).id); });
    connect(list_, &VisitList::focusMoved, area, [area](const QRect& row) {
        area->ensureVisible(row.center().x(), row.bottom(), 0, row.height() / 2);
    });
}

/// The actions go below the name where both do not fit beside one another.
void PatientPage::arrangeHead() {
    const auto wide = [](const Label* label) {
        return label->fontMetrics().horizontalAdvance(label->text());
    };
    int needed = std::max(wide(name_), wide(about_)) + grown(this, 44) + gap;
    for (const PlainButton* action : {edit_, visit_, more_})
        needed += action->sizeHint().width() + gap;
    const bool fits = needed <= width() - 2 * margin;
    head_->setDirection(fits ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

void PatientPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrangeHead();
}

bool PatientPage::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest) arrangeHead();
    return QWidget::event(event);
}

Outcome PatientPage::show(Store& store, const PatientId& patient) {
    auto read = store.patient(patient);
    if (!read) return read.problems();
    auto visits = store.visitsOf(patient);
    if (!visits) return visits.problems();
    auto joined = store.duplicatesOf(read->id);
    if (!joined) return joined.problems();
    patient_ = *read;
    joined_ = std::move(*joined);
    visits_ = *visits;
    std::reverse(visits_.begin(), visits_.end());
    name_->setText(QString::fromStdString(patient_.identity.name));
    QStringList about{ageAndSex(patient_.identity, today())};
    if (!patient_.identity.recordNumber.empty())
        about << tr("record %1").arg(QString::fromStdString(patient_.identity.recordNumber));
    if (!patient_.identity.birthDate.empty())
        about << tr("born %1").arg(dayText(patient_.identity.birthDate));
    if (!joined_.empty())
        about << (joined_.size() == 1 ? tr("1 duplicate joined")
                                      : tr("%1 duplicates joined").arg(joined_.size()));
    if (!patient_.identity.contact.empty()) about << QString::fromStdString(patient_.identity.contact);
    about.removeAll(QString{});
    about_->setText(about.join(QStringLiteral(" · ")));
    std::vector<ListedVisit> rows;
    for (const Visit& visit : visits_) {
        const bool read_only = visit.state == VisitState::signedOff;
        rows.push_back({tr("Visit %1").arg(visit.number),
                        dayText(visit.date),
                        {},
                        {},
                        markOf(visit),
                        stateText(visit),
                        stateDetail(visit),
                        read_only ? 0 : visit.openRedSigns,
                        read_only ? tr("Read") : tr("Open"),
                        !read_only});
    }
    list_->setRows(std::move(rows), tr("No visit yet."));
    user_ = store.signedIn();
    edit_->setEnabled(user_ && allows(user_->role, Permission::editPatients));
    visit_->setEnabled(user_ && allows(user_->role, Permission::openVisits));
    return {};
}

void PatientPage::showMore() {
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const auto add = [&](const QString& text, Permission permission, auto work) {
        QAction* action = menu->addAction(text, this, work);
        action->setEnabled(user_ && allows(user_->role, permission));
    };
    add(tr("Join a duplicate …"), Permission::mergePatients, [this] { emit joinWanted(patient_); });
    for (const Patient& each : joined_) {
        QString name = QString::fromStdString(each.identity.name);
        if (!each.identity.recordNumber.empty())
            name += QStringLiteral(", ") + QString::fromStdString(each.identity.recordNumber);
        add(tr("Part again: %1").arg(name), Permission::mergePatients,
            [this, each] { emit partWanted(each); });
    }
    menu->addSeparator();
    add(tr("Hand out everything …"), Permission::exportData, [this] { emit handOutWanted(patient_); });
    add(tr("Erase for good …"), Permission::erasePatients, [this] { emit eraseWanted(patient_); });
    menu->popup(more_->mapToGlobal(QPoint(more_->width() - menu->sizeHint().width(), more_->height())));
}

} // namespace rhizograph::app
