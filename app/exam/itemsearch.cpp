#include "exam/itemsearch.h"

#include "exam/flyout.h"
#include "parts/slimscroll.h"
#include "parts/textsize.h"
#include "shell/theme.h"

#include <algorithm>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QScrollBar>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

/// Step and card, for people who search by where a test stands.
QString placeOf(const Catalogue& catalogue, const Item& item) {
    const auto& steps = catalogue.steps();
    const auto step = std::ranges::find(steps, item.step, &Step::id);
    const Group* group = catalogue.group(item.step, item.group);
    QString place = step != steps.end() ? QString::fromStdString(step->label) : QString();
    if (group != nullptr) place += ", " + QString::fromStdString(group->label);
    return place;
}

} // namespace

std::vector<const Item*> itemsNamed(const Catalogue& catalogue, const QString& text, int limit) {
    const QStringList words = text.split(' ', Qt::SkipEmptyParts);
    std::vector<const Item*> found;
    if (words.isEmpty()) return found;
    for (const Item& item : catalogue.items()) {
        const QString name = QString::fromStdString(item.label) + " " + placeOf(catalogue, item);
        const auto holds = [&](const QString& word) { return name.contains(word, Qt::CaseInsensitive); };
        if (std::ranges::all_of(words, holds)) found.push_back(&item);
    }
    std::ranges::stable_partition(found, [&](const Item* item) {
        return QString::fromStdString(item->label).startsWith(text.trimmed(), Qt::CaseInsensitive);
    });
    if (found.size() > static_cast<std::size_t>(limit)) found.resize(static_cast<std::size_t>(limit));
    return found;
}

ItemSearch::ItemSearch(const Catalogue& catalogue, QWidget* parent)
    : QFrame(parent, Qt::Popup), catalogue_(catalogue) {
    setAttribute(Qt::WA_DeleteOnClose);
    edit_ = new QLineEdit(this);
    edit_->setPlaceholderText(tr("Find an item by name"));
    edit_->setAccessibleName(tr("Find an item by name"));
    edit_->installEventFilter(this);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("Items found"));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->verticalScrollBar()->setStyleSheet(slimScrollBar);
    list_->setFocusPolicy(Qt::NoFocus);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 12, 12, 12);
    column->setSpacing(8);
    column->addWidget(edit_);
    column->addWidget(list_);
    connect(edit_, &QLineEdit::textChanged, this, &ItemSearch::find);
    connect(edit_, &QLineEdit::returnPressed, this, &ItemSearch::choose);
    connect(list_, &QListWidget::itemClicked, this, &ItemSearch::choose);
}

void ItemSearch::openAt(const QRect& place) {
    setFixedSize(grown(this, 420), grown(this, 360));
    move(popupPlace(parentWidget(), place, size(), false));
    show();
    edit_->setFocus();
}

void ItemSearch::find(const QString& text) {
    found_ = itemsNamed(catalogue_, text);
    list_->clear();
    for (const Item* item : found_) {
        auto* line = new QListWidgetItem(
            QString::fromStdString(item->label) + "\n" + placeOf(catalogue_, *item), list_);
        line->setSizeHint({0, grown(this, 56)});
    }
    if (!found_.empty()) list_->setCurrentRow(0);
}

void ItemSearch::choose() {
    const int row = list_->currentRow();
    if (row < 0 || row >= static_cast<int>(found_.size())) return;
    const Item& item = *found_[static_cast<std::size_t>(row)];
    emit chosen({item.id, item.sided ? Side::right : Side::none});
    close();
}

bool ItemSearch::eventFilter(QObject* watched, QEvent* event) {
    if (watched != edit_ || event->type() != QEvent::KeyPress) return QFrame::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Up && key != Qt::Key_Down) return QFrame::eventFilter(watched, event);
    const int row = list_->currentRow() + (key == Qt::Key_Down ? 1 : -1);
    list_->setCurrentRow(std::clamp(row, 0, std::max(0, list_->count() - 1)));
    return true;
}

void ItemSearch::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.raised);
    painter.setPen(theme.edge);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace rhizograph::app
