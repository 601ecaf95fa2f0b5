#include "summary/summarypanel.h"

#include "parts/button.h"
#include "parts/flow.h"
#include "parts/label.h"
#include "parts/textsize.h"
#include "summary/switchrow.h"
#include "summary/wordseditor.h"

#include <memory>
#include <QHBoxLayout>
#include <QMenu>
#include <QPainter>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr int phraseButtons = 3;
constexpr int longestPhraseButton = 24; // characters; longer ones wait in the list

/// A warning with its diamond and, where there is a place to go, the way there.
class WarningRow final : public QWidget {
public:
    WarningRow(const SigningWarning& warning, QWidget* parent) : QWidget(parent), grave_(warning.grave) {
        auto* row = new QHBoxLayout(this);
        row->setContentsMargins(20, 2, 0, 2);
        auto* words = new Label(warning.text, 15, QFont::Normal, Label::Tone::ink, this);
        words->setWordWrap(true);
        row->addWidget(words, 1);
        if (!warning.finding) return;
        way_ = new PlainButton(SummaryPanel::tr("Go there"), PlainButton::Kind::action, this);
        way_->setAccessibleName(SummaryPanel::tr("Go there: %1").arg(warning.text));
        row->addWidget(way_);
    }
    [[nodiscard]] PlainButton* way() const { return way_; }

protected:
    void paintEvent(QPaintEvent*) override {
        const Theme& theme = Theme::of(this);
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(grave_ ? theme.brick : theme.ochre);
        const qreal y = height() / 2.0;
        painter.drawPolygon(QPolygonF{{7, y - 6}, {13, y}, {7, y + 6}, {1, y}});
    }

private:
    PlainButton* way_ = nullptr;
    bool grave_;
};

} // namespace

SummaryPanel::SummaryPanel(const QStringList& phrases, QWidget* parent) : QWidget(parent) {
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    upper_ = new QWidget;
    auto* scroll = new QScrollArea(this);
    scroll->setWidget(upper_);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->viewport()->setAutoFillBackground(false);
    upper_->setAutoFillBackground(false);
    whole->addWidget(scroll, 1);
    auto* column = new QVBoxLayout(upper_);
    column->setContentsMargins(16, 12, 16, 8);
    column->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->addWidget(new Label(tr("Summary"), 17, QFont::DemiBold, Label::Tone::ink, upper_));
    head->addStretch(1);
    state_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, upper_);
    head->addWidget(state_);
    column->addLayout(head);
    buildPlan(*column, phrases);
    buildAddendum(*column);
    buildWarnings(*column);
    buildOptions(*column);
    column->addStretch(1);
    // Ways out and signing are always in sight.
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(16, 8, 16, 16);
    foot->setSpacing(8);
    buildWaysOut(*foot);
    whole->addLayout(foot);
}

void SummaryPanel::buildWarnings(QVBoxLayout& column) {
    warnings_ = new QWidget(upper_);
    warningRows_ = new QVBoxLayout(warnings_);
    warningRows_->setContentsMargins(0, 0, 0, 0);
    warningRows_->setSpacing(4);
    column.addWidget(warnings_);
}

Label* SummaryPanel::heading(const QString& text) {
    return new Label(text, 15, QFont::DemiBold, Label::Tone::quiet, upper_);
}

void SummaryPanel::buildPlan(QVBoxLayout& column, const QStringList& phrases) {
    column.addWidget(heading(tr("Plan")));
    plan_ = new QPlainTextEdit(upper_);
    dressField(*plan_);
    plan_->setAccessibleName(tr("Plan"));
    plan_->setPlaceholderText(tr("What was agreed and advised"));
    plan_->setTabChangesFocus(true);
    plan_->setFixedHeight(grown(this, 92));
    connect(plan_, &QPlainTextEdit::textChanged, this, &SummaryPanel::planEdited);
    column.addWidget(plan_);
    phrases_ = new QWidget(upper_);
    auto flow = std::make_unique<FlowLayout>(8);
    flow->setContentsMargins(0, 0, 0, 0);
    int shown = 0;
    for (const QString& phrase : phrases) {
        if (shown == phraseButtons) break;
        if (phrase.size() > longestPhraseButton) continue;
        QString label = phrase;
        if (label.endsWith(u'.')) label.chop(1);
        auto* button = new PlainButton(label, PlainButton::Kind::quiet, phrases_);
        connect(button, &QAbstractButton::clicked, this, [this, phrase] { addPhrase(phrase); });
        flow->addWidget(button);
        ++shown;
    }
    auto* all = new PlainButton(tr("All phrases"), PlainButton::Kind::quiet, phrases_);
    connect(all, &QAbstractButton::clicked, this, [this, phrases, all] { showPhrases(phrases, all); });
    flow->addWidget(all);
    phrases_->setLayout(flow.release());
    column.addWidget(phrases_);
}

void SummaryPanel::addPhrase(const QString& phrase) {
    const QString before = plan_->toPlainText().trimmed();
    plan_->setPlainText(before + (before.isEmpty() ? QString() : QStringLiteral(" ")) + phrase);
    plan_->moveCursor(QTextCursor::End);
}

void SummaryPanel::showPhrases(const QStringList& phrases, QWidget* below) {
    QMenu menu(this);
    for (const QString& phrase : phrases)
        menu.addAction(phrase, this, [this, phrase] { addPhrase(phrase); });
    menu.exec(below->mapToGlobal(QPoint(0, below->height())));
}

void SummaryPanel::buildOptions(QVBoxLayout& column) {
    column.addWidget(heading(tr("Show on the page")));
    brief_ = new SwitchRow(tr("Short form"), upper_);
    connect(brief_, &QAbstractButton::toggled, this, &SummaryPanel::optionsChanged);
    column.addWidget(brief_);
    figures_ = new SwitchRow(tr("Figures"), upper_);
    reasons_ = new SwitchRow(tr("Reasons"), upper_);
    notExamined_ = new SwitchRow(tr("Items not examined"), upper_);
    for (SwitchRow* row : {figures_, reasons_, notExamined_}) {
        row->setChecked(true);
        connect(row, &QAbstractButton::toggled, this, &SummaryPanel::optionsChanged);
        column.addWidget(row);
    }
}

void SummaryPanel::buildWaysOut(QVBoxLayout& column) {
    said_ = new Label({}, 15, QFont::Normal, Label::Tone::quiet, this);
    said_->setWordWrap(true);
    said_->hide();
    column.addWidget(said_);
    auto* row = new FlowLayout(8);
    auto* print = new PlainButton(tr("Print"), PlainButton::Kind::quiet, this);
    print->setGlyph(Glyph::printer);
    pdf_ = new PlainButton(tr("PDF"), PlainButton::Kind::quiet, this);
    pdf_->setGlyph(Glyph::page);
    auto* text = new PlainButton(tr("Text"), PlainButton::Kind::quiet, this);
    text->setGlyph(Glyph::copy);
    pdf_->setAccessibleName(tr("Write as PDF file"));
    text->setAccessibleName(tr("Copy as text"));
    connect(print, &QAbstractButton::clicked, this, &SummaryPanel::printPressed);
    connect(pdf_, &QAbstractButton::clicked, this, &SummaryPanel::pdfPressed);
    connect(text, &QAbstractButton::clicked, this, &SummaryPanel::textPressed);
    for (PlainButton* button : {print, pdf_, text})
        row->addWidget(button);
    column.addLayout(row);
    sign_ = new PlainButton(tr("Sign and lock"), PlainButton::Kind::primary, this);
    connect(sign_, &QAbstractButton::clicked, this, &SummaryPanel::signPressed);
    column.addWidget(sign_);
}

void SummaryPanel::buildAddendum(QVBoxLayout& column) {
    addendum_ = new QWidget(upper_);
    auto* rows = new QVBoxLayout(addendum_);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    rows->addWidget(heading(tr("Addendum")));
    addendumField_ = new QPlainTextEdit(addendum_);
    dressField(*addendumField_);
    addendumField_->setAccessibleName(tr("Addendum"));
    addendumField_->setPlaceholderText(tr("What is to be added to the signed visit"));
    addendumField_->setTabChangesFocus(true);
    addendumField_->setFixedHeight(grown(this, 92));
    rows->addWidget(addendumField_);
    auto* add = new PlainButton(tr("Add to the signed visit"), PlainButton::Kind::action, addendum_);
    connect(add, &QAbstractButton::clicked, this, [this] {
        const QString text = addendumField_->toPlainText().trimmed();
        if (!text.isEmpty()) emit addendumWritten(text);
    });
    rows->addWidget(add);
    addendum_->hide();
    column.addWidget(addendum_);
}

void SummaryPanel::setPlan(const QString& plan) {
    if (plan != plan_->toPlainText()) plan_->setPlainText(plan);
}

QString SummaryPanel::plan() const {
    return plan_->toPlainText();
}

void SummaryPanel::allow(const May& may, const QString& state) {
    state_->setText(state);
    plan_->setReadOnly(!may.plan);
    phrases_->setVisible(may.plan);
    sign_->setVisible(may.sign);
    warnings_->setVisible(may.change);
    addendum_->setVisible(may.addend);
    addendumField_->clear();
}

void SummaryPanel::showWarnings(const std::vector<SigningWarning>& warnings) {
    while (const std::unique_ptr<QLayoutItem> item{warningRows_->takeAt(0)}) {
        if (item->widget() != nullptr) item->widget()->deleteLater();
    }
    if (warnings.empty()) return;
    warningRows_->addWidget(heading(tr("Before signing")));
    for (const SigningWarning& warning : warnings) {
        auto* row = new WarningRow(warning, warnings_);
        if (PlainButton* way = row->way())
            connect(way, &QAbstractButton::clicked, this,
                    [this, key = *warning.finding] { emit goToItem(key); });
        warningRows_->addWidget(row);
    }
}

void SummaryPanel::say(const QString& text) {
    said_->setText(text);
    said_->setVisible(!text.isEmpty());
}

QString SummaryPanel::said() const {
    return said_->text();
}

void SummaryPanel::setBusy(bool busy) {
    pdf_->setEnabled(!busy);
}

bool SummaryPanel::brief() const {
    return brief_->isChecked();
}
bool SummaryPanel::figures() const {
    return figures_->isChecked();
}
bool SummaryPanel::reasons() const {
    return reasons_->isChecked();
}
bool SummaryPanel::notExamined() const {
    return notExamined_->isChecked();
}

void SummaryPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), Theme::of(this).raised);
    painter.fillRect(QRect(0, 0, 1, height()), Theme::of(this).line);
    painter.fillRect(QRect(0, 0, width(), 1), Theme::of(this).line);
}

} // namespace rhizograph::app
