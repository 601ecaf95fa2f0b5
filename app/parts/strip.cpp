#include "parts/strip.h"

#include "parts/button.h"
#include "parts/label.h"
#include "parts/textsize.h"

#include <algorithm>
#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QShortcut>

namespace rhizograph::app {
namespace {

constexpr int before = 20;
constexpr int gap = 12;

class Divider final : public QWidget {
public:
    explicit Divider(QWidget* parent) : QWidget(parent) { setFixedSize(1, 24); }

protected:
    void paintEvent(QPaintEvent*) override { QPainter(this).fillRect(rect(), Theme::of(this).line); }
};

} // namespace

Strip::Strip(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    both_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
    both_->setContentsMargins(before, 0, gap, 0);
    both_->setSpacing(gap);
    content_ = new QHBoxLayout;
    content_->setSpacing(gap);
    both_->addLayout(content_, 1);
    tools_ = new QHBoxLayout;
    tools_->setSpacing(gap);
    both_->addLayout(tools_);
    both_->setAlignment(tools_, Qt::AlignRight | Qt::AlignVCenter);
    tools_->addWidget(divider(this));
    user_ = new Label({}, 16, QFont::Normal, Label::Tone::ink, this);
    tools_->addWidget(user_);
    auto* lock = new PlainButton({}, PlainButton::Kind::flat, this);
    lock->setGlyph(Glyph::lock);
    lock->setAccessibleName(tr("Lock the screen"));
    lock->setToolTip(tr("Lock (Ctrl+L)"));
    tools_->addWidget(lock);
    menu_ = new PlainButton({}, PlainButton::Kind::flat, this);
    menu_->setGlyph(Glyph::menu);
    menu_->setAccessibleName(tr("Menu"));
    menu_->setToolTip(tr("Menu (F10)"));
    tools_->addWidget(menu_);
    connect(lock, &PlainButton::clicked, this, &Strip::lockWanted);
    connect(menu_, &PlainButton::clicked, this, &Strip::menuWanted);
    connect(new QShortcut(QKeySequence(Qt::Key_F10), this), &QShortcut::activated, this, &Strip::menuWanted);
}

void Strip::setUser(const QString& name) {
    user_->setText(name);
}
void Strip::setUserShown(bool shown) {
    user_->setVisible(shown);
}
QWidget* Strip::divider(QWidget* parent) {
    return new Divider(parent);
}

void Strip::addTool(QWidget* tool) {
    tools_->insertWidget(ownTools_++, tool);
}

void Strip::fit(int width) {
    const int needed = before + content_->sizeHint().width() + gap + tools_->sizeHint().width() + gap;
    const bool stacked = needed > width;
    if (stacked == stacked_) return;
    stacked_ = stacked;
    both_->setDirection(stacked ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    both_->setSpacing(stacked ? 0 : gap);
    updateGeometry();
}

void Strip::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit(width());
}

bool Strip::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest) fit(width());
    return QWidget::event(event);
}

QSize Strip::sizeHint() const {
    return {QWidget::sizeHint().width(), grown(this, stacked_ ? 104 : 56)};
}
QSize Strip::minimumSizeHint() const {
    const int width = std::max(content_->minimumSize().width(), tools_->minimumSize().width());
    return {before + width + gap, sizeHint().height()};
}

void Strip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), Theme::of(this).raised);
    painter.fillRect(0, height() - 1, width(), 1, Theme::of(this).line);
}

} // namespace rhizograph::app
