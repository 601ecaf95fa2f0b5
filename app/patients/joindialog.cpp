#include "patients/joindialog.h"

#include "parts/button.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/textsize.h"
#include "patients/words.h"

#include <algorithm>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

QString entryText(const Patient& patient) {
    QStringList parts{QString::fromStdString(patient.identity.name), ageAndSex(patient.identity, today())};
    if (!patient.identity.birthDate.empty())
        parts << JoinDialog::tr("born %1").arg(dayText(patient.identity.birthDate));
    if (!patient.identity.recordNumber.empty())
        parts << QString::fromStdString(patient.identity.recordNumber);
    parts.removeAll(QString{});
    return parts.join(QStringLiteral(" · "));
}

} // namespace

JoinDialog::JoinDialog(Store& store, const Patient& patient, QWidget* parent)
    : QDialog(parent), store_(store), patient_(patient) {
    setWindowTitle(tr("Join a duplicate"));
    build();
    // Duplicates are most often of the same name.
    search_->setText(QString::fromStdString(patient.identity.name));
    search();
}

void JoinDialog::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 20, 24, 20);
    column->setSpacing(10);
    auto* title = new Label(tr("Who else is %1?").arg(QString::fromStdString(patient_.identity.name)), 19,
                            QFont::DemiBold, Label::Tone::ink, this);
    title->setWordWrap(true);
    column->addWidget(title);
    search_ = new QLineEdit(this);
    search_->setPlaceholderText(tr("Name or record number"));
    search_->setAccessibleName(tr("Search the duplicate"));
    column->addWidget(search_);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Entries that may be the same person"));
    list_->setWordWrap(true);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setMinimumHeight(grown(this, 220));
    column->addWidget(list_, 1);
    consequence_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, this);
    consequence_->setWordWrap(true);
    consequence_->setMinimumHeight(grown(this, 64));
    column->addWidget(consequence_);
    auto* buttons = new FlowLayout(8);
    column->addLayout(buttons);
    join_ = new PlainButton(tr("Join"), PlainButton::Kind::primary, this);
    auto* cancel = new PlainButton(tr("Cancel"), PlainButton::Kind::quiet, this);
    buttons->addWidget(join_);
    buttons->addWidget(cancel);
    connect(search_, &QLineEdit::textChanged, this, &JoinDialog::search);
    connect(list_, &QListWidget::currentRowChanged, this, &JoinDialog::choose);
    connect(join_, &PlainButton::clicked, this, &QDialog::accept);
    connect(cancel, &PlainButton::clicked, this, &QDialog::reject);
    resize(grown(this, 560), grown(this, 480));
}

void JoinDialog::search() {
    constexpr int most = 60;
    list_->clear();
    found_.clear();
    const std::string text = search_->text().simplified().toStdString();
    if (!text.empty()) {
        auto found = store_.searchPatients(text, most);
        if (!found) {
            consequence_->setText(reasonText(found.problems()));
            return;
        }
        found_ = std::move(*found);
    }
    std::erase_if(found_, [this](const Patient& each) { return each.id == patient_.id; });
    for (const Patient& each : found_) {
        auto* item = new QListWidgetItem(entryText(each), list_);
        item->setSizeHint({0, std::max(grown(this, 44), 2 * list_->fontMetrics().lineSpacing() + 12)});
    }
    choose(-1);
}

void JoinDialog::choose(int row) {
    const bool any = row >= 0 && row < static_cast<int>(found_.size());
    join_->setEnabled(any);
    chosen_ = any ? found_[static_cast<std::size_t>(row)].id : PatientId{};
    if (!any) {
        consequence_->setText(found_.empty() ? tr("No other entry matches.")
                                             : tr("Choose the entry that is the same person."));
        return;
    }
    const auto visits = store_.visitsOf(chosen_);
    const QString count = visitCount(visits ? static_cast<int>(visits->size()) : 0);
    consequence_->setText(
        tr("%1 (%2) will stand with %3, and no longer by itself. Nothing is rewritten: the two can be parted "
           "again.")
            .arg(QString::fromStdString(found_[static_cast<std::size_t>(row)].identity.name), count,
                 QString::fromStdString(patient_.identity.name)));
}

} // namespace rhizograph::app
