#include "exam/textrow.h"

#include "language/language.h"
#include "parts/textsize.h"
#include "shell/theme.h"

#include <QLabel>
#include <QPainter>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace rhizograph::app {

TextRow::TextRow(VisitSession& session, const Item& item, QWidget* parent)
    : QWidget(parent), session_(session), item_(item) {
    const QString name = medical(item.label);
    label_ = new QLabel(name, this);
    label_->setWordWrap(true);
    edit_ = new QPlainTextEdit(this);
    edit_->setAccessibleName(name);
    edit_->setFrameShape(QFrame::NoFrame);
    edit_->viewport()->setAutoFillBackground(false);
    edit_->setTabChangesFocus(true);
    edit_->setReadOnly(session.readOnly());
    edit_->installEventFilter(this);
    label_->setBuddy(edit_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 8, 20, 13);
    column->setSpacing(9);
    column->addWidget(label_);
    column->addWidget(edit_);
    pause_.setSingleShot(true);
    pause_.setInterval(1500);
    connect(edit_, &QPlainTextEdit::textChanged, this, [this] { pause_.start(); });
    connect(&pause_, &QTimer::timeout, this, &TextRow::keep);
    fitHeight();
    refresh();
}

void TextRow::fitHeight() {
    label_->setFont(sized(this, 16));
    edit_->setFont(sized(this, 16));
    edit_->setFixedHeight(QFontMetrics(edit_->font()).lineSpacing() * 2 + 22);
}

void TextRow::changeEvent(QEvent* event) {
    if (event->type() == QEvent::ApplicationFontChange) fitHeight();
    QWidget::changeEvent(event);
}

void TextRow::refresh() {
    const Finding* now = session_.exam().find(key());
    const QString text = now != nullptr ? QString::fromStdString(now->value.word()) : QString();
    if (text == edit_->toPlainText().trimmed()) return;
    const QSignalBlocker quiet(edit_);
    edit_->setPlainText(text);
}

void TextRow::goTo() {
    edit_->setFocus(Qt::OtherFocusReason);
}

bool TextRow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusOut) keep();
    if (event->type() == QEvent::FocusOut || event->type() == QEvent::FocusIn) update();
    return QWidget::eventFilter(watched, event);
}

void TextRow::keep() {
    pause_.stop();
    const std::string text = edit_->toPlainText().trimmed().toStdString();
    const Finding* now = session_.exam().find(key());
    if (text == (now != nullptr ? now->value.word() : std::string{})) return;
    std::optional<Finding> next;
    if (!text.empty()) next = Finding{Value::text(text), false, now != nullptr ? now->note : std::string{}};
    session_.change(medical(item_.label), {{key(), std::move(next)}});
}

void TextRow::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(0, height() - 1, width(), 1), theme.line);
    painter.setPen(edit_->hasFocus() ? QPen(theme.ink, 2) : QPen(theme.edge, 1.5));
    painter.drawRoundedRect(QRectF(edit_->geometry()).adjusted(-4, -4, 4, 4), 10, 10);
}

} // namespace rhizograph::app
