#include "parts/strip.h"

#include "parts/button.h"
#include "parts/label.h"
#include "parts/textsize.h"

#include <QHBoxLayout>
#include <QPainter>

namespace rhizograph::app {
namespace {

class Divider final : public QWidget {
public:
    explicit Divider(QWidget* parent) : QWidget(parent) { setFixedSize(1, 24); }

protected:
    void paintEvent(QPaintEvent*) override { QPainter(this).fillRect(rect(), Theme::of(this).line); }
};

} // namespace

Strip::Strip(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(20, 0, 12, 0);
    row->setSpacing(12);
    content_ = new QHBoxLayout;
    content_->setSpacing(12);
    row->addLayout(content_, 1);
    row->addWidget(divider(this));
    user_ = new Label({}, 16, QFont::Normal, Label::Tone::ink, this);
    row->addWidget(user_);
    auto* lock = new PlainButton({}, PlainButton::Kind::flat, this);
    lock->setGlyph(Glyph::lock);
    lock->setAccessibleName(tr("Lock the screen"));
    lock->setToolTip(tr("Lock (Ctrl+L)"));
    row->addWidget(lock);
    menu_ = new PlainButton({}, PlainButton::Kind::flat, this);
    menu_->setGlyph(Glyph::menu);
    menu_->setAccessibleName(tr("Menu"));
    menu_->setToolTip(tr("Menu (F10)"));
    row->addWidget(menu_);
    connect(lock, &PlainButton::clicked, this, &Strip::lockWanted);
    connect(menu_, &PlainButton::clicked, this, &Strip::menuWanted);
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

QSize Strip::sizeHint() const {
    return {QWidget::sizeHint().width(), grown(this, 56)};
}
QSize Strip::minimumSizeHint() const {
    return {QWidget::minimumSizeHint().width(), grown(this, 56)};
}

void Strip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), Theme::of(this).raised);
    painter.fillRect(0, height() - 1, width(), 1, Theme::of(this).line);
}

} // namespace rhizograph::app
