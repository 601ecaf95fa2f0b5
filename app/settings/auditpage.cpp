#include "settings/auditpage.h"

#include "parts/button.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/textsize.h"
#include "patients/words.h"
#include "settings/auditwords.h"

#include <QEvent>
#include <QHeaderView>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr int atOnce = 500;
enum Column { when, who, what, whom, more, columns };

QString momentText(const std::string& utc) {
    return dayText(utc.substr(0, 10)) + QStringLiteral(", ") + timeText(utc);
}

} // namespace

AuditPage::AuditPage(QWidget* parent) : QWidget(parent) {
    build();
}

void AuditPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(24, 20, 24, 20);
    column->setSpacing(16);
    auto* head = new FlowLayout(12);
    column->addLayout(head);
    auto* leave = new PlainButton({}, PlainButton::Kind::quiet, this);
    leave->setGlyph(Glyph::left);
    leave->setAccessibleName(tr("Back to the settings"));
    head->addWidget(leave);
    auto* title = new Label(tr("Audit"), 22, QFont::DemiBold, Label::Tone::ink, this);
    head->addWidget(title);
    head->setAlignment(title, Qt::AlignVCenter);
    search_ = new QLineEdit(this);
    search_->setPlaceholderText(tr("Name, day or action"));
    search_->setAccessibleName(tr("Narrow the audit down"));
    search_->setClearButtonEnabled(true);
    search_->setMinimumWidth(grown(this, 280));
    head->addWidget(search_);
    table_ = new QTableWidget(0, columns, this);
    table_->setAccessibleName(tr("Audit, newest first"));
    table_->setHorizontalHeaderLabels({tr("When"), tr("Who"), tr("What"), tr("Whom"), tr("More")});
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->verticalHeader()->hide();
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->setAlternatingRowColors(true);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    column->addWidget(table_, 1);
    auto* foot = new QHBoxLayout;
    column->addLayout(foot);
    count_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, this);
    foot->addWidget(count_, 1);
    more_ = new PlainButton(tr("Older entries"), PlainButton::Kind::quiet, this);
    foot->addWidget(more_);
    connect(leave, &PlainButton::clicked, this, &AuditPage::back);
    connect(search_, &QLineEdit::textChanged, this, &AuditPage::narrow);
    connect(more_, &PlainButton::clicked, this, [this] {
        limit_ *= 4;
        if (const Outcome outcome = read(); !outcome) count_->setText(reasonText(outcome.problems()));
    });
}

Outcome AuditPage::show(Store& store) {
    store_ = &store;
    limit_ = atOnce;
    search_->clear();
    const Outcome outcome = read();
    table_->scrollToTop();
    return outcome;
}

void AuditPage::clear() {
    table_->setRowCount(0);
    search_->clear();
    count_->setText({});
}

Outcome AuditPage::read() {
    const auto entries = store_->audit(limit_);
    if (!entries) return entries.problems();
    AuditWords words(*store_);
    table_->setRowCount(static_cast<int>(entries->size()));
    int row = 0;
    for (const AuditEntry& entry : *entries) {
        const QString by = entry.by.empty() ? tr("nobody signed in") : QString::fromStdString(entry.by);
        const QStringList cells{momentText(entry.at), by, actionText(entry.action), words.subject(entry),
                                words.detail(entry)};
        for (int column = 0; column < columns; ++column) {
            auto* item = new QTableWidgetItem(cells.at(column));
            item->setToolTip(cells.at(column));
            table_->setItem(row, column, item);
        }
        ++row;
    }
    more_->setVisible(static_cast<int>(entries->size()) == limit_);
    fit();
    narrow();
    return {};
}

void AuditPage::fit() {
    table_->verticalHeader()->setDefaultSectionSize(grown(this, 40));
    table_->horizontalHeader()->setMinimumHeight(grown(this, 40));
    for (int column = 0; column < more; ++column) {
        table_->resizeColumnToContents(column);
        const int most = grown(this, column == whom ? 340 : 230);
        table_->setColumnWidth(column, std::min(table_->columnWidth(column) + grown(this, 16), most));
    }
}

void AuditPage::narrow() {
    const QString text = search_->text().simplified();
    int shown = 0;
    for (int row = 0; row < table_->rowCount(); ++row) {
        bool found = text.isEmpty();
        for (int column = 0; column < columns && !found; ++column)
            found = table_->item(row, column)->text().contains(text, Qt::CaseInsensitive);
        table_->setRowHidden(row, !found);
        shown += found ? 1 : 0;
    }
    count_->setText(shown == table_->rowCount() ? tr("%1 entries, the newest first").arg(shown)
                                                : tr("%1 of %2 entries").arg(shown).arg(table_->rowCount()));
}

void AuditPage::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::ApplicationFontChange) fit();
    QWidget::changeEvent(event);
}

} // namespace rhizograph::app
