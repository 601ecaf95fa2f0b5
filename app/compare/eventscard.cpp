#include "compare/eventscard.h"

#include "language/language.h"
#include "parts/button.h"
#include "parts/flow.h"
#include "parts/label.h"

#include <algorithm>
#include <QDate>
#include <QLineEdit>
#include <QLocale>
#include <QMenu>
#include <QScrollArea>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

QString word(const std::string& text) {
    return QString::fromStdString(text);
}

/// A day as people write it: 2026-03-02 or 2.3.2026.
QDate dayFrom(const QString& text) {
    for (const char* form : {"yyyy-MM-dd", "d.M.yyyy", "d MMM yyyy"})
        if (const QDate date = QLocale(QLocale::English).toDate(text.simplified(), form); date.isValid())
            return date;
    return {};
}

QString dayWords(const std::string& iso) {
    return QLocale(QLocale::English)
        .toString(QDate::fromString(word(iso), Qt::ISODate), QStringLiteral("d MMM yyyy"));
}

} // namespace

EventsCard::EventsCard(const Knowledge& knowledge, Store& store, PatientId patient, QWidget* parent)
    : Card(parent), knowledge_(knowledge), store_(store), patient_(std::move(patient)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 16);
    column->setSpacing(8);
    column->addWidget(new Label(tr("Events"), 17, QFont::DemiBold, Label::Tone::ink, this));
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->viewport()->setAutoFillBackground(false);
    auto* inside = new QWidget;
    inside->setAutoFillBackground(false);
    auto* list = new QVBoxLayout(inside);
    list->setContentsMargins(0, 0, 14, 0); // beside the scroll bar
    rows_ = new QVBoxLayout;
    rows_->setSpacing(4);
    list->addLayout(rows_);
    list->addStretch(1);
    area->setWidget(inside);
    inside->setAutoFillBackground(false); // setWidget() turned it on
    area->setMinimumHeight(96);
    column->addWidget(area, 1);
    buildForm(*column);
    begin();
}

void EventsCard::buildForm(QVBoxLayout& column) {
    const auto user = store_.signedIn();
    const bool mayWrite = user && allows(user->role, Permission::recordFindings);
    formTitle_ = new Label({}, 15, QFont::DemiBold, Label::Tone::ink, this);
    kind_ = new PlainButton({}, PlainButton::Kind::quiet, this);
    kind_->setGlyph(Glyph::down, true);
    connect(kind_, &QAbstractButton::clicked, this, &EventsCard::askKind);
    if (!knowledge_.eventKinds().empty()) chooseKind(knowledge_.eventKinds().front().id);
    day_ = new QLineEdit(this);
    day_->setPlaceholderText(tr("Day: 2026-03-02 or 2.3.2026"));
    day_->setAccessibleName(tr("Day of the event"));
    words_ = new QLineEdit(this);
    words_->setPlaceholderText(tr("Words, optional"));
    words_->setAccessibleName(tr("Words about the event"));
    problem_ = new Label({}, 15, QFont::Medium, Label::Tone::brick, this);
    problem_->setWordWrap(true);
    save_ = new PlainButton({}, PlainButton::Kind::action, this);
    cancel_ = new PlainButton(tr("Cancel"), PlainButton::Kind::quiet, this);
    for (QWidget* part : std::initializer_list<QWidget*>{formTitle_, kind_, day_, words_, problem_}) {
        column.addWidget(part);
        part->setVisible(mayWrite);
    }
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(save_);
    buttons->addWidget(cancel_);
    buttons->addStretch(1);
    column.addLayout(buttons);
    save_->setVisible(mayWrite);
    connect(save_, &QAbstractButton::clicked, this, &EventsCard::save);
    connect(words_, &QLineEdit::returnPressed, this, &EventsCard::save);
    connect(cancel_, &QAbstractButton::clicked, this, &EventsCard::begin);
}

QString EventsCard::kindWords(const std::string& kind) const {
    const auto& kinds = knowledge_.eventKinds();
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [&](const EventKind& each) { return each.id == kind; });
    return found == kinds.end() ? word(kind) : medical(found->label);
}

void EventsCard::chooseKind(const std::string& kind) {
    chosenKind_ = kind;
    kind_->setText(kindWords(kind));
    kind_->setAccessibleName(tr("Kind of event: %1").arg(kind_->text()));
}

void EventsCard::askKind() {
    QMenu menu(this);
    for (const EventKind& each : knowledge_.eventKinds())
        menu.addAction(medical(each.label), this, [this, id = each.id] { chooseKind(id); });
    menu.exec(kind_->mapToGlobal(QPoint(0, kind_->height())));
}

QString EventsCard::wordsOf(const PatientEvent& event) const {
    const QString kind = kindWords(event.kind);
    return event.text.empty() ? kind : tr("%1: %2").arg(kind, word(event.text));
}

QString EventsCard::problem() const {
    return problem_->text();
}

Outcome EventsCard::refresh() {
    auto events = store_.eventsOf(patient_);
    if (!events) return events.problems();
    events_ = std::move(*events);
    while (QLayoutItem* item = rows_->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide(); // often asked for by one of its own buttons
            widget->deleteLater();
        }
        delete item;
    }
    if (events_.empty())
        rows_->addWidget(new Label(tr("None noted."), 15, QFont::Normal, Label::Tone::quiet, this));
    for (auto event = events_.rbegin(); event != events_.rend(); ++event)
        addRow(*event);
    return {};
}

void EventsCard::addRow(const PatientEvent& event) {
    auto* row = new QWidget(this);
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(4);
    auto* about = new QVBoxLayout;
    about->setSpacing(0);
    auto* what = new Label(wordsOf(event), 15, QFont::Medium, Label::Tone::ink, row);
    what->setWordWrap(true);
    about->addWidget(what);
    about->addWidget(
        new Label(event.awaited ? tr("awaited %1").arg(dayWords(event.date)) : dayWords(event.date), 15,
                  QFont::Normal, Label::Tone::quiet, row));
    line->addLayout(about, 1);
    rows_->addWidget(row);
    if (!save_->isVisibleTo(this)) return;
    auto* change = new PlainButton(tr("Change"), PlainButton::Kind::flat, row);
    change->setAccessibleName(tr("Change %1").arg(wordsOf(event)));
    auto* away = new PlainButton({}, PlainButton::Kind::flat, row);
    away->setGlyph(Glyph::close);
    away->setAccessibleName(tr("Take %1 off the list").arg(wordsOf(event)));
    line->addWidget(change);
    line->addWidget(away);
    connect(change, &QAbstractButton::clicked, this, [this, id = event.id] { edit(id); });
    connect(away, &QAbstractButton::clicked, this, [this, id = event.id] { remove(id); });
}

void EventsCard::begin() {
    edited_ = {};
    formTitle_->setText(tr("Add an event"));
    save_->setText(tr("Add"));
    cancel_->hide();
    day_->clear();
    words_->clear();
    problem_->clear();
}

void EventsCard::edit(const PatientEventId& event) {
    const auto found = std::find_if(events_.begin(), events_.end(),
                                    [&](const PatientEvent& each) { return each.id == event; });
    if (found == events_.end()) return;
    edited_ = event;
    formTitle_->setText(tr("Change this event"));
    save_->setText(tr("Save"));
    cancel_->setVisible(save_->isVisibleTo(this));
    chooseKind(found->kind);
    day_->setText(word(found->date));
    words_->setText(word(found->text));
    problem_->clear();
    day_->setFocus();
}

void EventsCard::save() {
    const QDate day = dayFrom(day_->text());
    if (!day.isValid()) {
        problem_->setText(day_->text().isEmpty()
                              ? tr("The day is missing.")
                              : tr("“%1” is no day. Write it as 2026-03-02 or 2.3.2026.").arg(day_->text()));
        day_->setFocus();
        return;
    }
    PatientEvent event;
    event.id = edited_;
    event.patient = patient_;
    event.date = day.toString(Qt::ISODate).toStdString();
    event.kind = chosenKind_;
    event.text = words_->text().simplified().toStdString();
    const auto& kinds = knowledge_.eventKinds();
    event.awaited = std::any_of(kinds.begin(), kinds.end(),
                                [&](const EventKind& each) { return each.id == event.kind && each.awaited; });
    auto written = store_.writeEvent(event);
    report(written ? Outcome{} : Outcome{written.problems()});
}

void EventsCard::remove(const PatientEventId& event) {
    report(store_.removeEvent(event));
}

void EventsCard::report(const Outcome& outcome) {
    if (outcome) begin();
    const Outcome shown = refresh();
    for (const Outcome* each : {&outcome, &shown})
        if (!each->ok()) problem_->setText(word(each->problems().front().text()));
    if (outcome) emit changed();
}

} // namespace rhizograph::app
