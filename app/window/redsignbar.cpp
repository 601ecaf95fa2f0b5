#include "window/redsignbar.h"

#include "language/language.h"
#include "parts/button.h"
#include "parts/textsize.h"
#include "shell/visitsession.h"
#include "window/holdbutton.h"

#include <algorithm>
#include <QPainter>

namespace rhizograph::app {
namespace {

QString wordOf(Urgency urgency) {
    switch (urgency) {
    case Urgency::emergency:
        return RedSignBar::tr("Emergency");
    case Urgency::urgent:
        return RedSignBar::tr("Urgent");
    case Urgency::note:
        break;
    }
    return RedSignBar::tr("Note");
}

} // namespace

/// An outlined button in the bar's own colors.
class RedSignBar::LightButton : public QAbstractButton {
public:
    LightButton(const QString& text, Glyph glyph, QWidget* parent) : QAbstractButton(parent), glyph_(glyph) {
        setText(text);
        setFocusPolicy(Qt::StrongFocus);
    }
    [[nodiscard]] QSize sizeHint() const override {
        const int words = QFontMetrics(sized(this, 16, QFont::Medium)).horizontalAdvance(text());
        return {std::max(grown(this, 44), text().isEmpty() ? 0 : words + 34), grown(this, 44)};
    }

protected:
    void paintEvent(QPaintEvent*) override {
        const Theme& theme = Theme::of(this);
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(theme.onRedbar, hasFocus() ? 3 : 1.5));
        painter.drawRoundedRect(QRectF(rect()).adjusted(2, 2, -2, -2), 10, 10);
        painter.setFont(sized(this, 16, QFont::Medium));
        painter.drawText(rect(), Qt::AlignCenter, text());
        if (glyph_ != Glyph::none) paintGlyph(painter, glyph_, QRectF(rect()).center(), theme.onRedbar);
    }

private:
    Glyph glyph_;
};

RedSignBar::RedSignBar(VisitSession& session, bool mayAcknowledge, QWidget* parent)
    : QWidget(parent), session_(session), mayAcknowledge_(mayAcknowledge),
      next_(new LightButton({}, Glyph::right, this)),
      items_(new LightButton(tr("Show items"), Glyph::none, this)), acknowledge_(new HoldButton(this)) {
    next_->setAccessibleName(tr("Next red sign"));
    acknowledge_->setToolTip(tr("Hold for a moment, or press Enter twice"));
    connect(next_, &QAbstractButton::clicked, this, [this] {
        index_ = (index_ + 1) % static_cast<int>(open_.size());
        arrange();
        update();
    });
    connect(items_, &QAbstractButton::clicked, this, [this] {
        if (needed() && !current().because.empty()) emit goToItem(current().because.front());
    });
    connect(acknowledge_, &HoldButton::confirmed, this, &RedSignBar::acknowledge);
    connect(&session_, &VisitSession::assessed, this, &RedSignBar::refresh);
    connect(&session_, &VisitSession::acknowledgementsChanged, this, &RedSignBar::refresh);
    refresh();
}

void RedSignBar::refresh() {
    const bool before = needed();
    const std::string shown = before ? current().id : std::string{};
    open_.clear();
    for (const RedSign& sign : session_.assessment().redSigns)
        if (sign.urgency != Urgency::note && !session_.acknowledged(sign)) open_.push_back(sign);
    std::stable_sort(open_.begin(), open_.end(),
                     [](const RedSign& a, const RedSign& b) { return a.urgency > b.urgency; });
    index_ = 0; // a graver sign comes to the front; otherwise the one that was read stays
    for (std::size_t i = 0; i < open_.size(); ++i)
        if (open_[i].id == shown && open_[i].urgency == open_.front().urgency) index_ = static_cast<int>(i);
    if (needed()) {
        const QString sentence = medical(current().sentence);
        setAccessibleName(tr("Red sign, %1: %2").arg(wordOf(current().urgency), sentence));
        setToolTip(sentence + '\n' + medical(current().action));
    }
    arrange();
    update();
    if (before != needed()) emit neededChanged();
}

void RedSignBar::acknowledge() {
    if (needed()) session_.acknowledge(QString::fromStdString(current().id), urgencyWord(current().urgency));
}

void RedSignBar::setNarrow(bool narrow) {
    narrow_ = narrow;
    arrange();
}

QSize RedSignBar::sizeHint() const {
    return {600, grown(this, 56)};
}

QString RedSignBar::countText() const {
    return open_.size() > 1 ? tr("%1 of %2").arg(index_ + 1).arg(open_.size()) : QString{};
}

void RedSignBar::arrange() {
    acknowledge_->setText(narrow_ ? tr("Acknowledge")
                                  : tr("Acknowledge as %1").arg(session_.start().userName));
    acknowledge_->setAccessibleName(tr("Acknowledge the red sign as %1").arg(session_.start().userName));
    acknowledge_->setVisible(mayAcknowledge_);
    items_->setVisible(!narrow_);
    next_->setVisible(open_.size() > 1);
    int right = width() - 12;
    for (QAbstractButton* button :
         {static_cast<QAbstractButton*>(acknowledge_), static_cast<QAbstractButton*>(items_),
          static_cast<QAbstractButton*>(next_)}) {
        if (button->isHidden()) continue;
        const QSize size = button->sizeHint();
        right -= size.width();
        button->setGeometry(right, (height() - size.height()) / 2, size.width(), size.height());
        right -= 10;
    }
}

void RedSignBar::resizeEvent(QResizeEvent*) {
    arrange();
}

void RedSignBar::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme.redbar);
    if (!needed()) return;
    int end = width() - 12;
    for (const QWidget* button :
         {static_cast<QWidget*>(acknowledge_), static_cast<QWidget*>(items_), static_cast<QWidget*>(next_)})
        if (!button->isHidden()) end = std::min(end, button->x() - 12);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.onRedbar);
    const QPointF center(27, height() / 2.0);
    painter.drawPolygon(QPolygonF(
        {center + QPointF(0, -9), center + QPointF(9, 0), center + QPointF(0, 9), center + QPointF(-9, 0)}));
    painter.setPen(theme.onRedbar);
    int x = 48;
    const auto write = [&](const QString& text, QFont::Weight weight, int limit) {
        painter.setFont(sized(this, 17, weight));
        const QString fitting = painter.fontMetrics().elidedText(text, Qt::ElideMiddle, limit);
        painter.drawText(QRect(x, 0, limit, height()), Qt::AlignVCenter | Qt::AlignLeft, fitting);
        x += painter.fontMetrics().horizontalAdvance(fitting) + 14;
    };
    write(wordOf(current().urgency), QFont::Bold, end - x);
    painter.setFont(sized(this, 15));
    const QString count = countText();
    const int countWidth = count.isEmpty() ? 0 : painter.fontMetrics().horizontalAdvance(count) + 8;
    write(medical(current().sentence), QFont::Normal, std::max(0, end - countWidth - x));
    painter.setFont(sized(this, 15));
    painter.drawText(QRect(end - countWidth, 0, countWidth, height()), Qt::AlignVCenter | Qt::AlignRight,
                     count);
}

} // namespace rhizograph::app
