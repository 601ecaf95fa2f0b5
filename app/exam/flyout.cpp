#include "exam/flyout.h"

#include "language/language.h"
#include "parts/button.h"
#include "parts/textsize.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QScreen>

namespace rhizograph::app {

QPoint popupPlace(const QWidget* widget, const QRect& place, const QSize& size, bool above) {
    const QRect screen = widget->screen()->availableGeometry();
    const QPoint top = widget->mapToGlobal(place.topLeft());
    const QPoint bottom = widget->mapToGlobal(place.bottomLeft());
    const int over = top.y() - size.height() - 6;
    const int under = bottom.y() + 7;
    const bool fitsUnder = under + size.height() <= screen.bottom();
    const int y = (above && over >= screen.top()) || !fitsUnder ? std::max(over, screen.top()) : under;
    const int x = top.x() + (place.width() - size.width()) / 2;
    return {std::clamp(x, screen.left(), std::max(screen.left(), screen.right() - size.width())), y};
}

Flyout::Flyout(const Scale& scale, const std::vector<std::string>& tokens, const Finding* current,
               QWidget* parent)
    : QFrame(parent, Qt::Popup) {
    setAttribute(Qt::WA_DeleteOnClose);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 8, 8, 8);
    row->setSpacing(8);
    for (const std::string& token : tokens) {
        const Value value = Value::token(token);
        auto* button = new PlainButton(medical(display(scale, value)), PlainButton::Kind::choice, this);
        button->setFixedSize(grown(this, 56), grown(this, 44));
        button->setChecked(current != nullptr && current->value == value);
        row->addWidget(button);
        connect(button, &QAbstractButton::clicked, this, [this, token] {
            emit chosen(QString::fromStdString(token));
            close();
        });
    }
}

void Flyout::openAbove(const QRect& cell) {
    adjustSize();
    move(popupPlace(parentWidget(), cell, size(), true));
    show();
    if (auto* first = findChild<PlainButton*>()) first->setFocus();
}

void Flyout::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.raised);
    painter.setPen(theme.edge);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace rhizograph::app
