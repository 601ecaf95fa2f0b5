#include "exam/howtosheet.h"

#include "exam/flyout.h"
#include "language/language.h"
#include "parts/button.h"
#include "parts/textsize.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace rhizograph::app {

HowToSheet::HowToSheet(const Item& item, const HowTo& howTo, QWidget* parent) : QFrame(parent, Qt::Popup) {
    setAttribute(Qt::WA_DeleteOnClose);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(8);
    const auto add = [&](const QString& text, int pixels, QFont::Weight weight, bool quiet) {
        auto* label = new QLabel(text, this);
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
        label->setFont(sized(this, pixels, weight));
        QPalette colors = label->palette();
        if (quiet) colors.setColor(QPalette::WindowText, Theme::of(this).quiet);
        label->setPalette(colors);
        column->addWidget(label);
    };
    add(medical(item.label), 17, QFont::DemiBold, false);
    add(medical(howTo.how), 16, QFont::Normal, false);
    add(tr("What counts: %1").arg(medical(howTo.counts)), 16, QFont::Normal, false);
    add(tr("Source: %1").arg(QString::fromStdString(howTo.source)), 15, QFont::Normal, true);
    auto* close = new PlainButton(tr("Close"), PlainButton::Kind::quiet, this);
    connect(close, &QAbstractButton::clicked, this, &QWidget::close);
    column->addWidget(close);
}

HowToSheet* HowToSheet::open(const Item& item, const HowTo& howTo, QWidget* over) {
    auto* sheet = new HowToSheet(item, howTo, over);
    const int width = grown(over, 400);
    sheet->setFixedSize(width, sheet->layout()->heightForWidth(width));
    sheet->move(popupPlace(over, over->rect(), sheet->size(), false));
    sheet->show();
    return sheet;
}

void HowToSheet::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.raised);
    painter.setPen(theme.edge);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace rhizograph::app
