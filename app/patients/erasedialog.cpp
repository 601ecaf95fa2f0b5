#include "patients/erasedialog.h"

#include "parts/button.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/textsize.h"
#include "patients/words.h"

#include <QLineEdit>
#include <QVBoxLayout>

namespace rhizograph::app {

EraseDialog::EraseDialog(const Patient& patient, int visits, QWidget* parent)
    : QDialog(parent), name_(QString::fromStdString(patient.identity.name)) {
    setWindowTitle(tr("Erase for good"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 20, 24, 20);
    column->setSpacing(10);
    const auto words = [&](const QString& text, int pixels, QFont::Weight weight, Label::Tone tone) {
        auto* label = new Label(text, pixels, weight, tone, this);
        label->setWordWrap(true);
        column->addWidget(label);
    };
    words(tr("Erase %1 and everything recorded?").arg(name_), 19, QFont::DemiBold, Label::Tone::ink);
    words(tr("%1, signed ones too, are removed for good. The audit keeps that it was done, by whom and why, "
             "but no "
             "name. Backups made before still hold the person until they are rotated out.")
              .arg(visitCount(visits)),
          16, QFont::Normal, Label::Tone::ink);
    words(tr("Reason, kept in the audit (without a name)"), 15, QFont::Medium, Label::Tone::quiet);
    reason_ = new QLineEdit(this);
    reason_->setAccessibleName(tr("Reason"));
    column->addWidget(reason_);
    words(tr("Type the name to confirm: %1").arg(name_), 15, QFont::Medium, Label::Tone::quiet);
    typed_ = new QLineEdit(this);
    typed_->setAccessibleName(tr("Name of the patient"));
    column->addWidget(typed_);
    auto* buttons = new FlowLayout(8);
    column->addLayout(buttons);
    erase_ = new PlainButton(tr("Erase for good"), PlainButton::Kind::action, this);
    auto* cancel = new PlainButton(tr("Cancel"), PlainButton::Kind::quiet, this);
    buttons->addWidget(erase_);
    buttons->addWidget(cancel);
    for (QLineEdit* each : {reason_, typed_})
        connect(each, &QLineEdit::textChanged, this, &EraseDialog::check);
    connect(erase_, &PlainButton::clicked, this, &QDialog::accept);
    connect(cancel, &PlainButton::clicked, this, &QDialog::reject);
    check();
    resize(grown(this, 520), sizeHint().height());
    reason_->setFocus();
}

std::string EraseDialog::reason() const {
    return reason_->text().simplified().toStdString();
}

void EraseDialog::check() {
    erase_->setEnabled(!reason().empty() && typed_->text().simplified() == name_.simplified());
}

} // namespace rhizograph::app
