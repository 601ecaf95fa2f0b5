#include "window/problempage.h"

#include "parts/button.h"
#include "parts/card.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/scrolling.h"
#include "parts/textsize.h"

#include <QVBoxLayout>

namespace rhizograph::app {

ProblemPage::ProblemPage(QWidget* parent) : QWidget(parent) {
    auto* outer = new QVBoxLayout(scrolledInside(*this));
    auto* middle = new QHBoxLayout;
    outer->addStretch(1);
    outer->addLayout(middle);
    outer->addStretch(2);
    auto* card = new Card(this);
    card->setMinimumWidth(440);
    card->setMaximumWidth(grown(this, 640));
    middle->addStretch(1);
    middle->addWidget(card, 4);
    middle->addStretch(1);
    auto* column = new QVBoxLayout(card);
    column->setContentsMargins(24, 24, 24, 24);
    column->setSpacing(12);
    title_ = new Label({}, 22, QFont::DemiBold, Label::Tone::ink, card);
    file_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, card);
    reason_ = new Label({}, 16, QFont::Normal, Label::Tone::ink, card);
    for (Label* label : {title_, file_, reason_}) {
        label->setWordWrap(true);
        column->addWidget(label);
    }
    reason_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* buttons = new FlowLayout(8);
    column->addLayout(buttons);
    const auto button = [&](const QString& text, PlainButton::Kind kind) {
        auto* out = new PlainButton(text, kind, card);
        buttons->addWidget(out);
        return out;
    };
    connect(button(tr("Try again"), PlainButton::Kind::primary), &PlainButton::clicked, this,
            &ProblemPage::retryWanted);
    connect(button(tr("Restore a backup …"), PlainButton::Kind::action), &PlainButton::clicked, this,
            &ProblemPage::restoreWanted);
    connect(button(tr("Open another clinic …"), PlainButton::Kind::quiet), &PlainButton::clicked, this,
            &ProblemPage::otherFileWanted);
    connect(button(tr("Quit"), PlainButton::Kind::quiet), &PlainButton::clicked, this,
            &ProblemPage::quitWanted);
}

void ProblemPage::say(const QString& title, const QString& file, const QString& reason) {
    title_->setText(title);
    file_->setText(file);
    reason_->setText(reason);
}

QString ProblemPage::text() const {
    return title_->text() + '\n' + file_->text() + '\n' + reason_->text();
}

} // namespace rhizograph::app
