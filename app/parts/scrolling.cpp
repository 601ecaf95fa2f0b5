#include "parts/scrolling.h"

#include <QLabel>
#include <QScrollArea>
#include <QTextDocument>
#include <QVBoxLayout>

namespace rhizograph::app {

QWidget* scrolledInside(QWidget& page) {
    auto* whole = new QVBoxLayout(&page);
    whole->setContentsMargins(0, 0, 0, 0);
    auto* area = new QScrollArea(&page);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->viewport()->setAutoFillBackground(false);
    auto* inside = new QWidget;
    area->setWidget(inside);
    inside->setAutoFillBackground(false); // setWidget() turned it on
    whole->addWidget(area);
    return inside;
}

void wrapWithin(QLabel& label, int room) {
    QTextDocument words;
    qreal wide = 0;
    if (label.textFormat() == Qt::RichText) {
        words.setDefaultFont(label.font());
        words.setDocumentMargin(0);
        words.setHtml(label.text());
        wide = words.idealWidth() + 2;
    } else {
        wide = label.fontMetrics().horizontalAdvance(label.text()) + 2;
    }
    if (label.wordWrap() != (wide > room)) label.setWordWrap(wide > room);
}

} // namespace rhizograph::app
