#include "patients/listdialog.h"

#include "base/json.h"
#include "parts/button.h"
#include "parts/label.h"
#include "parts/scrolling.h"
#include "parts/textsize.h"
#include "patients/words.h"

#include <algorithm>
#include <QComboBox>
#include <QCoreApplication>
#include <QFileInfo>
#include <QGridLayout>
#include <QHeaderView>
#include <QScrollArea>
#include <QTableWidget>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

constexpr std::size_t shownRows = 50;
constexpr std::size_t shownWrong = 500;

/// What a column can hold, in the order of ListField.
QStringList fieldNames() {
    QStringList out;
    for (const char* name :
         {QT_TRANSLATE_NOOP("rhizograph::app", "Name"), QT_TRANSLATE_NOOP("rhizograph::app", "Given name"),
          QT_TRANSLATE_NOOP("rhizograph::app", "Family name"),
          QT_TRANSLATE_NOOP("rhizograph::app", "Record number"),
          QT_TRANSLATE_NOOP("rhizograph::app", "Birth date"), QT_TRANSLATE_NOOP("rhizograph::app", "Sex"),
          QT_TRANSLATE_NOOP("rhizograph::app", "Contact"), QT_TRANSLATE_NOOP("rhizograph::app", "Remarks")})
        out << tr(name);
    return out;
}

QTableWidget* tableOf(const QString& name, const QStringList& heads, QWidget* parent) {
    auto* table = new QTableWidget(parent);
    table->setAccessibleName(name);
    table->setColumnCount(static_cast<int>(heads.size()));
    table->setHorizontalHeaderLabels(heads);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setStretchLastSection(true);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table->setSelectionMode(QAbstractItemView::NoSelection);
    return table;
}

void setRow(QTableWidget& table, int row, const QStringList& words) {
    for (int column = 0; column < words.size(); ++column)
        table.setItem(row, column, new QTableWidgetItem(words[column]));
}

} // namespace

ListDialog::ListDialog(Store& store, QWidget* parent) : QDialog(parent), store_(store) {
    setWindowTitle(tr("Bring in a list of patients"));
    resize(980, 700);
    auto* column = new QVBoxLayout(scrolledInside(*this));
    column->setContentsMargins(24, 20, 24, 20);
    column->setSpacing(12);
    said_ = new Label({}, 16, QFont::Medium, Label::Tone::ink, this);
    said_->setWordWrap(true);
    column->addWidget(said_);
    column->addWidget(new Label(tr("What each column holds"), 15, QFont::DemiBold, Label::Tone::quiet, this));
    auto* area = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    mapping_ = new QWidget(area);
    area->setWidget(mapping_);
    area->setMinimumHeight(grown(this, 110));
    column->addWidget(area, 2);
    column->addWidget(new Label(tr("As they would be taken"), 15, QFont::DemiBold, Label::Tone::quiet, this));
    rows_ = tableOf(tr("Patients as they would be taken"),
                    {tr("Line"), tr("Name"), tr("Record number"), tr("Birth date"), tr("Sex"), tr("Contact")},
                    this);
    rows_->setMinimumHeight(grown(this, 150));
    column->addWidget(rows_, 3);
    column->addWidget(new Label(tr("Rows that are left out"), 15, QFont::DemiBold, Label::Tone::quiet, this));
    wrong_ = tableOf(tr("Rows that are left out and why"), {tr("Line"), tr("Why")}, this);
    wrong_->setMinimumHeight(grown(this, 130));
    column->addWidget(wrong_, 2);
    auto* buttons = new QHBoxLayout;
    column->addLayout(buttons);
    take_ = new PlainButton(tr("Bring in"), PlainButton::Kind::primary, this);
    auto* cancel = new PlainButton(tr("Close"), PlainButton::Kind::quiet, this);
    buttons->addStretch(1);
    buttons->addWidget(cancel);
    buttons->addWidget(take_);
    connect(cancel, &QAbstractButton::clicked, this, &QDialog::reject);
    connect(take_, &QAbstractButton::clicked, this, &ListDialog::take);
    take_->setEnabled(false);
}

void ListDialog::say(const QString& text) {
    said_->setText(text);
}

QString ListDialog::said() const {
    return said_->text();
}

void ListDialog::open(const QString& path) {
    file_ = QFileInfo(path).fileName().toStdString();
    const auto text = readTextFile(path.toStdString());
    const auto table = text ? parseCsv(*text, file_) : Result<CsvTable>(text.problems());
    if (!table) return say(reasonText(table.problems()));
    const auto known = store_.searchPatients({}, 10'000'000);
    if (!known) return say(reasonText(known.problems()));
    table_ = *table;
    known_ = *known;
    showColumns();
    refresh();
}

void ListDialog::showColumns() {
    auto* grid = new QGridLayout(mapping_);
    grid->setContentsMargins(0, 0, 0, 0);
    const ListMapping guess = guessedMapping(table_);
    for (std::size_t i = 0; i < table_.head.size(); ++i) {
        const QString head = QString::fromStdString(table_.head[i]);
        auto* label = new Label(head, 16, QFont::Normal, Label::Tone::ink, mapping_);
        auto* field = new QComboBox(mapping_);
        field->setMinimumHeight(44);
        field->setAccessibleName(tr("Column %1 holds").arg(head));
        field->addItem(tr("Left out"));
        field->addItems(fieldNames());
        if (guess.columns[i]) field->setCurrentIndex(1 + static_cast<int>(*guess.columns[i]));
        field->setMinimumWidth(grown(this, 240));
        connect(field, &QComboBox::currentIndexChanged, this, &ListDialog::refresh);
        columns_.push_back(field);
        const int row = static_cast<int>(i / 2);
        const int left = static_cast<int>(i % 2) * 2;
        grid->addWidget(label, row, left);
        grid->addWidget(field, row, left + 1);
    }
    dates_ = new QComboBox(mapping_);
    dates_->setMinimumHeight(44);
    dates_->setAccessibleName(tr("How days are written"));
    dates_->addItems({tr("Year, month, day"), tr("Day, month, year"), tr("Month, day, year")});
    connect(dates_, &QComboBox::currentIndexChanged, this, &ListDialog::refresh);
    const int below = grid->rowCount();
    grid->addWidget(new Label(tr("How days are written"), 16, QFont::Normal, Label::Tone::ink, mapping_),
                    below, 0);
    grid->addWidget(dates_, below, 1);
}

void ListDialog::refresh() {
    ListMapping mapping;
    for (const QComboBox* field : columns_)
        mapping.columns.push_back(field->currentIndex() == 0
                                      ? std::nullopt
                                      : std::optional{static_cast<ListField>(field->currentIndex() - 1)});
    mapping.dates = static_cast<DateOrder>(dates_->currentIndex());
    preview_ = previewList(table_, file_, mapping, known_);
    showRows();
    const auto ready = static_cast<int>(preview_.ready.size());
    say(tr("%1: %2 patients are ready, %3 rows are left out.")
            .arg(QString::fromStdString(file_))
            .arg(ready)
            .arg(preview_.bad));
    take_->setEnabled(ready > 0);
    take_->setText(tr("Bring in %1 patients").arg(ready));
}

void ListDialog::showRows() {
    const auto word = [](const std::string& text) { return QString::fromStdString(text); };
    const std::size_t count = std::min(preview_.ready.size(), shownRows);
    rows_->setRowCount(static_cast<int>(count));
    for (std::size_t i = 0; i < count; ++i) {
        const auto& [line, identity] = preview_.ready[i];
        setRow(*rows_, static_cast<int>(i),
               {QString::number(line), word(identity.name), word(identity.recordNumber),
                word(identity.birthDate), word(identity.sex), word(identity.contact)});
    }
    const std::size_t wrong = std::min(preview_.problems.size(), shownWrong);
    wrong_->setRowCount(static_cast<int>(wrong));
    for (std::size_t i = 0; i < wrong; ++i)
        setRow(*wrong_, static_cast<int>(i),
               {word(preview_.problems[i].place), word(preview_.problems[i].reason)});
    rows_->resizeColumnsToContents();
    wrong_->resizeColumnToContents(0);
    wrong_->resizeRowsToContents();
}

void ListDialog::take() {
    const Outcome written = importList(store_, preview_);
    if (!written) return say(tr("Nothing was brought in. %1").arg(reasonText(written.problems())));
    accept();
}

} // namespace rhizograph::app
