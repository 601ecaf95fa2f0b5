#include "summary/wordseditor.h"

#include "parts/button.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/scrolling.h"
#include "parts/textsize.h"
#include "summary/worddifference.h"

#include <QPainter>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QVBoxLayout>

namespace rhizograph::app {

void dressField(QPlainTextEdit& field) {
    field.setStyleSheet(QStringLiteral(
        "QPlainTextEdit { border: 2px solid palette(dark); border-radius: 10px; padding: 4px 6px; "
        "background: palette(base); color: palette(text); }"
        "QPlainTextEdit:focus { border-color: palette(highlight); }"));
}

WordsEditor::WordsEditor(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(scrolledInside(*this));
    column->setContentsMargins(16, 12, 16, 12);
    column->setSpacing(8);
    title_ = new Label({}, 17, QFont::DemiBold, Label::Tone::ink, this);
    title_->setWordWrap(true);
    column->addWidget(title_);
    field_ = new QPlainTextEdit(this);
    field_->setTabChangesFocus(true);
    dressField(*field_);
    field_->setMinimumHeight(grown(this, 110));
    column->addWidget(field_, 2);
    auto* changed =
        new Label(tr("Changed from the program's words"), 15, QFont::DemiBold, Label::Tone::quiet, this);
    changed->setWordWrap(true);
    column->addWidget(changed);
    difference_ = new QLabel(this);
    difference_->setWordWrap(true);
    difference_->setTextFormat(Qt::RichText);
    difference_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setWidget(difference_);
    scroll->viewport()->setAutoFillBackground(false);
    difference_->setAutoFillBackground(false);
    scroll->setMinimumHeight(grown(this, 80));
    column->addWidget(scroll, 2);
    auto* keep = new Label(tr("What was not examined stays on the page."), 15, QFont::Normal,
                           Label::Tone::quiet, this);
    keep->setWordWrap(true);
    column->addWidget(keep);
    auto* accept = new PlainButton(tr("Use these words"), PlainButton::Kind::primary, this);
    auto* reset = new PlainButton(tr("Back to the program's words"), PlainButton::Kind::quiet, this);
    auto* cancel = new PlainButton(tr("Cancel"), PlainButton::Kind::quiet, this);
    auto* buttons = new FlowLayout(8);
    for (PlainButton* button : {accept, reset, cancel})
        buttons->addWidget(button);
    column->addLayout(buttons);
    connect(field_, &QPlainTextEdit::textChanged, this, &WordsEditor::showDifference);
    connect(reset, &QAbstractButton::clicked, this, [this] { field_->setPlainText(generated_); });
    connect(cancel, &QAbstractButton::clicked, this, &WordsEditor::cancelled);
    connect(accept, &QAbstractButton::clicked, this,
            [this] { emit accepted(section_, field_->toPlainText().simplified(), generated_); });
}

void WordsEditor::open(const QString& section, const QString& title, const QString& generated,
                       const QString& words) {
    section_ = section;
    generated_ = generated;
    title_->setText(title);
    field_->setAccessibleName(tr("Words of %1").arg(title));
    field_->setFont(sized(this, 16));
    field_->setPlainText(words);
    field_->setFocus();
    showDifference();
}

void WordsEditor::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), Theme::of(this).raised);
}

QString WordsEditor::difference() const {
    return difference_->text();
}

void WordsEditor::showDifference() {
    const Theme& theme = Theme::of(this);
    difference_->setFont(sized(this, 15));
    QStringList parts;
    bool changed = false;
    for (const WordChange& change : wordDifference(generated_, field_->toPlainText())) {
        const QString words = change.words.toHtmlEscaped();
        changed = changed || change.kind != WordChange::Kind::same;
        switch (change.kind) {
        case WordChange::Kind::same:
            parts << words;
            break;
        case WordChange::Kind::removed:
            parts << QStringLiteral("<s style='color:%1'>[%2]</s>").arg(theme.brick.name(), words);
            break;
        case WordChange::Kind::added:
            parts << QStringLiteral("<b><u style='color:%1'>%2</u></b>").arg(theme.spruce.name(), words);
            break;
        }
    }
    difference_->setText(changed ? parts.join(u' ') : tr("Nothing is changed."));
}

} // namespace rhizograph::app
