#include "window/finder.h"

#include "language/language.h"
#include "parts/textsize.h"
#include "record/patientindex.h"
#include "shell/theme.h"

#include <algorithm>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

QString placeOf(const Catalogue& catalogue, const Item& item) {
    const Group* group = catalogue.group(item.step, item.group);
    QString place = group != nullptr ? medical(group->label) : QString{};
    for (const Step& step : catalogue.steps())
        if (step.id == item.step) place = medical(step.label) + QStringLiteral(" · ") + place;
    return place;
}

/// Without marks over letters and in small letters.
QString plain(const QString& words) {
    return QString::fromStdString(folded(words.toStdString()));
}

} // namespace

Finder::Finder(const Catalogue& catalogue, QWidget* parent)
    : QWidget(parent), catalogue_(catalogue), field_(new QLineEdit(this)), list_(new QListWidget(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 12, 12, 12);
    field_->setPlaceholderText(tr("Find an item by name"));
    field_->setAccessibleName(tr("Find an item by name"));
    field_->installEventFilter(this);
    list_->setAccessibleName(tr("Items found"));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setWordWrap(true);
    column->addWidget(field_);
    column->addWidget(list_, 1);
    connect(field_, &QLineEdit::textChanged, this, &Finder::search);
    connect(field_, &QLineEdit::returnPressed, this, &Finder::take);
    connect(list_, &QListWidget::itemClicked, this, &Finder::take);
    connect(list_, &QListWidget::itemActivated, this, &Finder::take);
    hide();
}

void Finder::open() {
    field_->clear();
    show();
    raise();
    search({}); // once more: names break into lines at the width of the sheet
    field_->setFocus();
}

std::vector<const Item*> Finder::matches(const Catalogue& catalogue, const QString& text, std::size_t most) {
    const QStringList words = plain(text).split(' ', Qt::SkipEmptyParts);
    std::vector<const Item*> begins;
    std::vector<const Item*> holds;
    for (const Item& item : catalogue.items()) {
        // The name in the source language is found too: it stands in papers and in the record.
        const QString label = plain(medical(item.label));
        const QString all =
            label + ' ' + plain(placeOf(catalogue, item)) + ' ' + plain(QString::fromStdString(item.label));
        if (!std::all_of(words.begin(), words.end(), [&](const QString& word) { return all.contains(word); }))
            continue;
        const bool first = !words.isEmpty() && label.startsWith(words.first());
        (first ? begins : holds).push_back(&item);
    }
    begins.insert(begins.end(), holds.begin(), holds.end());
    if (begins.size() > most) begins.resize(most);
    return begins;
}

/// A name that does not fit breaks into lines.
int Finder::rowHeight(const QString& text) const {
    const QRect room(0, 0, std::max(100, list_->viewport()->width() - 24), 10'000);
    const QRect words = list_->fontMetrics().boundingRect(room, Qt::TextWordWrap, text);
    return std::max(grown(this, 44), words.height() + 12);
}

void Finder::search(const QString& text) {
    found_ = matches(catalogue_, text, 40);
    list_->clear();
    for (const Item* item : found_) {
        auto* row = new QListWidgetItem(
            medical(item->label) + QStringLiteral("   ") + placeOf(catalogue_, *item), list_);
        row->setSizeHint(QSize(100, rowHeight(row->text())));
    }
    if (!found_.empty()) list_->setCurrentRow(0);
}

void Finder::take() {
    const int row = list_->currentRow();
    if (row < 0) return;
    const ItemId item = found_.at(static_cast<std::size_t>(row))->id;
    hide();
    emit chosen(item);
}

bool Finder::eventFilter(QObject* watched, QEvent* event) {
    if (watched == field_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Down || key == Qt::Key_Up) {
            const int row = list_->currentRow() + (key == Qt::Key_Down ? 1 : -1);
            list_->setCurrentRow(std::clamp(row, 0, std::max(0, list_->count() - 1)));
            return true;
        }
        if (key == Qt::Key_Escape) {
            hide();
            return true;
        }
    }
    // Pressing elsewhere closes it; moving into its own list does not.
    if (watched == field_ && event->type() == QEvent::FocusOut && !list_->hasFocus() && !list_->underMouse())
        hide();
    return QWidget::eventFilter(watched, event);
}

void Finder::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(theme.raised);
    painter.setPen(QPen(theme.edge, 1.5));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 10, 10);
}

} // namespace rhizograph::app
