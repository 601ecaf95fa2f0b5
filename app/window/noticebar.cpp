#include "window/noticebar.h"

#include "parts/button.h"
#include "parts/label.h"

#include <QHBoxLayout>
#include <QPainter>

namespace rhizograph::app {

NoticeBar::NoticeBar(QWidget* parent) : QWidget(parent), row_(new QHBoxLayout(this)) {
    row_->setContentsMargins(20, 8, 12, 8);
    row_->setSpacing(10);
    words_ = new Label({}, 16, QFont::Medium, Label::Tone::warning, this);
    words_->setWordWrap(true);
    row_->addWidget(words_, 1);
}

void NoticeBar::say(const QString& text) {
    words_->setText(text);
    setAccessibleName(text);
}

QString NoticeBar::text() const {
    return words_->text();
}

PlainButton* NoticeBar::addWayOut(const QString& text) {
    auto* button = new PlainButton(text, PlainButton::Kind::quiet, this);
    row_->addWidget(button);
    return button;
}

void NoticeBar::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.ochreTint);
    painter.fillRect(0, height() - 2, width(), 2, theme.ochre);
}

} // namespace rhizograph::app
