#include "window/tour.h"

#include "exam/groupcard.h"
#include "exam/steppage.h"
#include "impression/impressionpanel.h"
#include "parts/button.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/textsize.h"
#include "shell/theme.h"
#include "window/patientstrip.h"
#include "window/rail.h"
#include "window/visitpage.h"

#include <algorithm>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

namespace rhizograph::app {

Tour::Tour(std::vector<Stop> stops, QWidget* parent) : QWidget(parent), stops_(std::move(stops)) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Tour"));
    build();
    parent->installEventFilter(this);
    setGeometry(parent->rect());
    show();
    raise();
    go(0);
    next_->setFocus();
}

void Tour::build() {
    sheet_ = new Card(this);
    auto* column = new QVBoxLayout(sheet_);
    column->setContentsMargins(20, 16, 20, 16);
    column->setSpacing(8);
    title_ = new Label({}, 19, QFont::DemiBold, Label::Tone::ink, sheet_);
    title_->setWordWrap(true);
    words_ = new Label({}, 16, QFont::Normal, Label::Tone::ink, sheet_);
    words_->setWordWrap(true);
    count_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, sheet_);
    column->addWidget(title_);
    column->addWidget(words_, 1);
    auto* row = new FlowLayout(8);
    auto* skip = new PlainButton(tr("Skip"), PlainButton::Kind::flat, sheet_);
    back_ = new PlainButton(tr("Back"), PlainButton::Kind::quiet, sheet_);
    next_ = new PlainButton({}, PlainButton::Kind::primary, sheet_);
    row->addWidget(count_);
    row->setAlignment(count_, Qt::AlignVCenter);
    row->addWidget(skip);
    row->addWidget(back_);
    row->addWidget(next_);
    row->setAlignment(skip, Qt::AlignRight);
    column->addLayout(row);
    connect(skip, &QAbstractButton::clicked, this, &Tour::end);
    connect(back_, &QAbstractButton::clicked, this, [this] { go(place_ - 1); });
    connect(next_, &QAbstractButton::clicked, this, &Tour::next);
}

void Tour::go(std::size_t place) {
    if (place >= stops_.size()) return;
    place_ = place;
    const Stop& stop = stops_[place_];
    title_->setText(stop.title);
    words_->setText(stop.words);
    count_->setText(tr("%1 of %2").arg(place_ + 1).arg(stops_.size()));
    back_->setEnabled(place_ > 0);
    next_->setText(place_ + 1 < stops_.size() ? tr("Next") : tr("Begin"));
    arrange();
}

void Tour::next() {
    if (place_ + 1 < stops_.size())
        go(place_ + 1);
    else
        end();
}

void Tour::end() {
    hide();
    emit ended();
    deleteLater();
}

QRect Tour::shownPart() const {
    const QWidget* part = stops_[place_].part;
    if (part == nullptr || !part->isVisible()) return {};
    return QRect(part->mapTo(parentWidget(), QPoint(0, 0)), part->size()) & rect();
}

void Tour::arrange() {
    setGeometry(parentWidget()->rect());
    const int width = std::min(grown(this, 420), this->width() - 32);
    sheet_->setFixedWidth(width);
    const int height = std::max(sheet_->sizeHint().height(), sheet_->heightForWidth(width));
    const QRect part = shownPart();
    // Beside the part where there is room, else below or above it, else over its middle.
    QPoint at((this->width() - width) / 2, (this->height() - height) / 2);
    if (!part.isEmpty()) {
        const int left =
            std::clamp(part.center().x() - width / 2, 16, std::max(16, this->width() - width - 16));
        const int top =
            std::clamp(part.center().y() - height / 2, 16, std::max(16, this->height() - height - 16));
        if (part.right() + width + 32 < this->width())
            at = {part.right() + 16, top};
        else if (part.left() > width + 32)
            at = {part.left() - width - 16, top};
        else if (part.bottom() + height + 32 < this->height())
            at = {left, part.bottom() + 16};
        else if (part.top() > height + 32)
            at = {left, part.top() - height - 16};
    }
    sheet_->setGeometry(QRect(at, QSize(width, height)));
    update();
}

void Tour::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath dark;
    dark.addRect(rect());
    const QRect part = shownPart();
    QPainterPath hole;
    if (!part.isEmpty()) hole.addRoundedRect(QRectF(part).adjusted(-2, -2, 2, 2), 10, 10);
    QColor shade(0x10, 0x18, 0x17, 150);
    painter.fillPath(dark.subtracted(hole), shade);
    if (part.isEmpty()) return;
    painter.setPen(QPen(theme.spruce, 3));
    painter.drawPath(hole);
}

void Tour::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Escape:
        return end();
    case Qt::Key_Right:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return next();
    case Qt::Key_Left:
        return place_ > 0 ? go(place_ - 1) : void();
    default:
        QWidget::keyPressEvent(event);
    }
}

bool Tour::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() &&
        (event->type() == QEvent::Resize || event->type() == QEvent::LayoutRequest))
        arrange();
    return QWidget::eventFilter(watched, event);
}

std::vector<Tour::Stop> visitStops(VisitPage& page) {
    std::vector<Tour::Stop> stops;
    stops.push_back({nullptr, Tour::tr("A visit in one minute"),
                     Tour::tr("Six parts, ten seconds each. Escape leaves the tour at any time.")});
    stops.push_back(
        {&page.rail(), Tour::tr("The steps"),
         Tour::tr("Take them in any order. A ring fills as you record; a mark says that something is "
                  "abnormal.")});
    if (auto* step = dynamic_cast<StepPage*>(&page.page(page.pageIndex()));
        step != nullptr && !step->cards().empty())
        stops.push_back(
            {step->cards().front(), Tour::tr("One press records"),
             Tour::tr("A second press on the same value clears it. The patient's right stands on the left "
                      "half, as when you face each other. Hold a button for a note, for not testable and "
                      "for how the test is done.")});
    stops.push_back(
        {nullptr, Tour::tr("The rest normal"),
         Tour::tr("After what is abnormal, one press marks the rest of a card as normal. It stays visible "
                  "as filled in bulk. What was not examined never looks normal.")});
    stops.push_back(
        {&page.impression(), Tour::tr("The impression"),
         Tour::tr("What the findings speak for, why, and what to test next; each line leads to its item. "
                  "It supports your decision and is no diagnosis.")});
    stops.push_back(
        {&page.strip(), Tour::tr("Saved at once"),
         Tour::tr("Every press is on disk by itself. Undo takes back any step. The slash key finds an item "
                  "by name; this tour stays in the menu.")});
    return stops;
}

} // namespace rhizograph::app
