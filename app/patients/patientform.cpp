#include "patients/patientform.h"

#include "base/date.h"
#include "parts/button.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/segmented.h"
#include "patients/words.h"

#include <array>
#include <QDate>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

/// The record's words for the choices of the form, in their order.
constexpr std::array<const char*, 4> sexes{"female", "male", "other", ""};

} // namespace

PatientForm::PatientForm(QWidget* parent) : QWidget(parent) {
    auto* outer = new QHBoxLayout(this);
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    outer->addWidget(area);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* inside = new QWidget(area);
    area->setWidget(inside);
    auto* middle = new QHBoxLayout(inside);
    middle->setContentsMargins(24, 24, 24, 24);
    auto* card = new Card(inside);
    card->setMaximumWidth(680);
    middle->addStretch(1);
    middle->addWidget(card, 6, Qt::AlignTop);
    middle->addStretch(1);

    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(24, 20, 24, 24);
    column->setSpacing(8);
    title_ = new Label({}, 22, QFont::DemiBold, Label::Tone::ink, card);
    column->addWidget(title_);
    name_ = field(tr("Name"), {});
    record_ = field(tr("Record number"), {});
    birth_ = field(tr("Birth date"), tr("1974-05-30 or 30.5.1974"));
    column->addWidget(new Label(tr("Sex"), 15, QFont::Medium, Label::Tone::quiet, card));
    sex_ = new Segmented(tr("Sex"), {tr("Woman"), tr("Man"), tr("Other"), tr("Not stated")}, card);
    column->addWidget(sex_, 0, Qt::AlignLeft);
    contact_ = field(tr("Contact"), tr("optional"));
    notes_ = field(tr("Remarks"), tr("optional"));
    problem_ = new Label({}, 15, QFont::Medium, Label::Tone::brick, card);
    problem_->setWordWrap(true);
    problem_->hide();
    column->addWidget(problem_);
    column->addSpacing(8);
    auto* buttons = new FlowLayout(8);
    column->addLayout(buttons);
    saveAndVisit_ = new PlainButton(tr("Save and begin a visit"), PlainButton::Kind::primary, card);
    save_ = new PlainButton(tr("Save"), PlainButton::Kind::action, card);
    auto* cancel = new PlainButton(tr("Cancel"), PlainButton::Kind::quiet, card);
    buttons->addWidget(saveAndVisit_);
    buttons->addWidget(save_);
    buttons->addWidget(cancel);
    connect(saveAndVisit_, &PlainButton::clicked, this, [this] { submit(true); });
    connect(save_, &PlainButton::clicked, this, [this] { submit(false); });
    connect(cancel, &PlainButton::clicked, this, &PatientForm::canceled);
    connect(name_, &QLineEdit::returnPressed, record_, qOverload<>(&QWidget::setFocus));
    connect(record_, &QLineEdit::returnPressed, birth_, qOverload<>(&QWidget::setFocus));
}

QLineEdit* PatientForm::field(const QString& name, const QString& hint) {
    auto* card = findChild<Card*>();
    auto* label = new Label(name, 15, QFont::Medium, Label::Tone::quiet, card);
    auto* edit = new QLineEdit(card);
    edit->setAccessibleName(name);
    edit->setPlaceholderText(hint);
    label->setBuddy(edit);
    card->layout()->addWidget(label);
    card->layout()->addWidget(edit);
    return edit;
}

void PatientForm::begin(const QString& name) {
    id_ = {};
    title_->setText(tr("New patient"));
    fill({});
    // What was searched for and not found is most often the name or number of who stands there.
    const bool number = !name.isEmpty() && name.at(0).isDigit();
    (number ? record_ : name_)->setText(name);
    saveAndVisit_->show();
    name_->setFocus();
}

void PatientForm::edit(const Patient& patient) {
    id_ = patient.id;
    title_->setText(tr("Correct the patient's entry"));
    fill(patient.identity);
    saveAndVisit_->hide();
    name_->setFocus();
}

void PatientForm::fill(const Identity& identity) {
    name_->setText(QString::fromStdString(identity.name));
    record_->setText(QString::fromStdString(identity.recordNumber));
    birth_->setText(QString::fromStdString(identity.birthDate));
    contact_->setText(QString::fromStdString(identity.contact));
    notes_->setText(QString::fromStdString(identity.notes));
    int sex = static_cast<int>(sexes.size()) - 1;
    for (std::size_t i = 0; i < sexes.size(); ++i)
        if (identity.sex == sexes.at(i)) sex = static_cast<int>(i);
    sex_->choose(sex);
    problem_->hide();
}

void PatientForm::refuse(const QString& reason) {
    problem_->setText(reason);
    problem_->show();
}

std::optional<Identity> PatientForm::checked() {
    Identity identity;
    identity.name = name_->text().simplified().toStdString();
    identity.recordNumber = record_->text().simplified().toStdString();
    identity.contact = contact_->text().trimmed().toStdString();
    identity.notes = notes_->text().trimmed().toStdString();
    identity.sex = sexes.at(static_cast<std::size_t>(sex_->chosen()));
    if (identity.name.empty()) {
        refuse(tr("The patient needs a name."));
        name_->setFocus();
        return std::nullopt;
    }
    const QString birth = birth_->text().simplified();
    if (birth.isEmpty()) return identity;
    QDate date = QDate::fromString(birth, Qt::ISODate);
    if (!date.isValid()) date = QDate::fromString(birth, QStringLiteral("d.M.yyyy"));
    identity.birthDate = date.isValid() ? date.toString(Qt::ISODate).toStdString() : std::string{};
    const auto age = ageOn(identity.birthDate, today());
    if (!date.isValid() || !age || *age > 130) {
        refuse(tr("“%1” is no birth date. Write year-month-day (1974-05-30) or day.month.year (30.5.1974).")
                   .arg(birth));
        birth_->setFocus();
        return std::nullopt;
    }
    return identity;
}

void PatientForm::submit(bool visit) {
    problem_->hide();
    if (const auto identity = checked()) emit saveWanted(id_, *identity, visit);
}

} // namespace rhizograph::app
