#include "exam/groupcard.h"

#include "exam/findingrow.h"
#include "exam/steptally.h"
#include "exam/textrow.h"
#include "language/language.h"
#include "parts/button.h"
#include "parts/flow.h"
#include "parts/scrolling.h"
#include "parts/textsize.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace rhizograph::app {

GroupCard::GroupCard(VisitSession& session, const Group& group, const ExamOptions& options, QWidget* parent)
    : Card(parent), session_(session), group_(group), options_(options),
      items_(session.catalogue().itemsOf(group.step, group.id)) {
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(1, 1, 1, 1);
    column_->setSpacing(0);
    buildHead();
    dressHead();
    buildRows();
    bringForward();
}

void GroupCard::buildHead() {
    // Title and count keep to one line and break only where the card is too narrow for both.
    auto* words = new QWidget(this);
    auto* flow = new FlowLayout(10);
    flow->setContentsMargins(0, 0, 0, 0);
    words->setLayout(flow);
    title_ = new QLabel(medical(group_.label), words);
    count_ = new QLabel(words);
    flow->addWidget(title_);
    flow->addWidget(count_);
    // Words break into lines before they push the card beyond the screen.
    title_->setMinimumWidth(1);
    count_->setMinimumWidth(1);
    rest_ = new PlainButton(restWords(), PlainButton::Kind::action, this);
    rest_->setAccessibleName(medical(group_.label) + ", " + restWords());
    rest_->setVisible(!session_.readOnly());
    connect(rest_, &QAbstractButton::clicked, this, &GroupCard::restNormal);
    rest_->setFocusPolicy(Qt::TabFocus);
    head_ = new QHBoxLayout;
    head_->setContentsMargins(16, 4, 8, 4);
    head_->setSpacing(10);
    head_->addWidget(words, 1, Qt::AlignVCenter);
    head_->addWidget(rest_);
    head_->addStrut(grown(this, 44));
    column_->addLayout(head_);
}

void GroupCard::buildRows() {
    for (const Item* item : items_) {
        if (item->scale.kind == Scale::Kind::text) {
            auto* row = new TextRow(session_, *item, this);
            texts_[item->id] = row;
            column_->addWidget(row);
            continue;
        }
        auto* row = new FindingRow(session_, *item, options_, this);
        rows_[item->id] = row;
        column_->addWidget(row);
        connect(row, &FindingRow::restNormalAsked, this, &GroupCard::restNormal);
        connect(row, &FindingRow::leaving, this,
                [this, row](int direction) { emit rowLeft(row, direction); });
    }
    more_ = new PlainButton(QString(), PlainButton::Kind::flat, this);
    more_->setFocusPolicy(Qt::TabFocus);
    connect(more_, &QAbstractButton::clicked, this, [this] { setMoreShown(!moreShown_); });
    column_->addWidget(more_);
}

void GroupCard::resizeEvent(QResizeEvent* event) {
    Card::resizeEvent(event);
    fitHead();
}

void GroupCard::fitHead() {
    const int button = rest_->isHidden() ? 0 : rest_->sizeHint().width() + 10;
    wrapWithin(*title_, width() - 26 - button);
    wrapWithin(*count_, width() - 26 - button);
}

bool GroupCard::holds(const ItemId& item) const {
    return rows_.contains(item) || texts_.contains(item);
}

FindingRow* GroupCard::row(const ItemId& item) const {
    const auto found = rows_.find(item);
    return found == rows_.end() ? nullptr : found->second;
}

QWidget* GroupCard::rowWidget(const ItemId& item) const {
    if (FindingRow* found = row(item)) return found;
    const auto text = texts_.find(item);
    return text == texts_.end() ? nullptr : text->second;
}

bool GroupCard::shown(const Item& item) const {
    return moreShown_ || session_.everyday(item) || forward_.contains(item.id);
}

std::vector<const Item*> GroupCard::shownItems() const {
    std::vector<const Item*> out;
    for (const Item* item : items_)
        if (shown(*item)) out.push_back(item);
    return out;
}

std::vector<FindingRow*> GroupCard::shownRows() const {
    std::vector<FindingRow*> out;
    for (const Item* item : shownItems())
        if (FindingRow* found = row(item->id)) out.push_back(found);
    return out;
}

void GroupCard::setOptions(const ExamOptions& options) {
    options_ = options;
    for (const auto& [id, row] : rows_)
        row->setOptions(options);
}

void GroupCard::bringForward() {
    for (const Item* item : items_)
        if (comesForward(session_, *item)) forward_.insert(item->id);
    arrange();
}

void GroupCard::reveal(const ItemId& item) {
    if (!holds(item)) return;
    forward_.insert(item);
    arrange();
}

void GroupCard::setMoreShown(bool shown) {
    moreShown_ = shown;
    arrange();
}

void GroupCard::arrange() {
    bool below = false; // another paired row stands right above
    std::size_t waiting = 0;
    for (const Item* item : items_) {
        const bool visible = shown(*item);
        rowWidget(item->id)->setVisible(visible);
        if (FindingRow* found = row(item->id); found != nullptr && visible)
            found->setHeads(item->sided && !below);
        if (visible) below = item->sided;
        waiting += session_.everyday(*item) || forward_.contains(item->id) ? 0 : 1;
    }
    more_->setVisible(waiting > 0);
    more_->setText(moreShown_ ? tr("Fewer") : tr("More (%1)").arg(waiting));
    more_->setAccessibleName(medical(group_.label) + ", " + more_->text());
    more_->setGlyph(moreShown_ ? Glyph::up : Glyph::down, true);
    updateHead();
}

void GroupCard::refresh(const std::vector<FindingKey>& keys) {
    bool mine = false;
    for (const FindingKey& key : keys) {
        if (FindingRow* found = row(key.item))
            found->refresh(), mine = true;
        else if (const auto text = texts_.find(key.item); text != texts_.end())
            text->second->refresh(), mine = true;
    }
    if (mine) updateHead();
}

/// Where most answers are a plain yes or no, the word the button answers with; else empty.
std::string GroupCard::commonAnswer() const {
    std::map<std::string, int> answers;
    int fillable = 0;
    for (const Item* item : items_) {
        if (!item->scale.normal) continue;
        ++fillable;
        if (item->scale.kind == Scale::Kind::choice && item->scale.values.size() == 2)
            ++answers[display(item->scale, Value::token(*item->scale.normal))];
    }
    for (const auto& [word, times] : answers)
        if (2 * times > fillable) return word;
    return {};
}

QString GroupCard::restWords() const {
    const std::string answer = commonAnswer();
    return answer.empty() ? tr("Rest normal") : tr("All %1").arg(medicalInSentence(answer));
}

/// "All no" answers what can be answered with "no": a score left open is not a score of 0.
bool GroupCard::fills(const Item& item) const {
    const std::optional<Value> normal = normalValue(item.scale);
    if (!normal) return false;
    const std::string answer = commonAnswer();
    return answer.empty() ||
           (item.scale.kind == Scale::Kind::choice && display(item.scale, *normal) == answer);
}

void GroupCard::dressHead() {
    QPalette colors = count_->palette();
    colors.setColor(QPalette::WindowText, Theme::of(this).quiet);
    count_->setPalette(colors);
    count_->setFont(sized(this, 15));
    title_->setFont(sized(this, 17, QFont::DemiBold));
    for (QLabel* label : {title_, count_})
        label->setMinimumHeight(grown(this, 24));
}

void GroupCard::updateHead() {
    int total = 0, whole = 0, open = 0, bulk = 0;
    const Exam& exam = session_.exam();
    bool fillable = false;
    for (const Item* item : shownItems()) {
        ++total;
        whole += recordedWhole(exam, *item) ? 1 : 0;
        const bool takes = fills(*item);
        fillable = fillable || takes;
        bool byHand = true;
        for (const FindingKey& key : keysOf(*item)) {
            const Finding* found = exam.find(key);
            open += found == nullptr && takes ? 1 : 0;
            byHand = byHand && !(found != nullptr && found->bulk);
        }
        bulk += byHand ? 0 : 1;
    }
    QString words = tr("%1 of %2 recorded").arg(whole).arg(total);
    if (bulk > 0) words += tr(", %1 in bulk").arg(bulk);
    count_->setText(total > 0 ? words : tr("when needed"));
    rest_->setVisible(fillable && !session_.readOnly());
    rest_->setEnabled(open > 0);
    fitHead();
}

void GroupCard::restNormal() {
    std::vector<const Item*> items = shownItems();
    std::erase_if(items, [this](const Item* item) { return !fills(*item); });
    session_.restNormal(medical(group_.label) + ": " + smallFirst(restWords()), std::move(items));
}

void GroupCard::paintEvent(QPaintEvent* event) {
    Card::paintEvent(event);
    const int below = head_->geometry().bottom() + 1;
    QPainter(this).fillRect(QRect(1, below, width() - 2, 1), Theme::of(this).line);
}

void GroupCard::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) dressHead();
    Card::changeEvent(event);
}

} // namespace rhizograph::app
