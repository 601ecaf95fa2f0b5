#include "exam/historysheet.h"

#include "exam/flyout.h"
#include "exam/rowwords.h"
#include "parts/button.h"
#include "parts/findingwords.h"
#include "parts/textsize.h"

#include <QDateTime>
#include <QLabel>
#include <QLocale>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

QString momentText(const std::string& utc) {
    const QDateTime time = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODate).toLocalTime();
    return time.isValid() ? QLocale().toString(time, "d MMM yyyy, HH:mm") : QString::fromStdString(utc);
}

QString dateText(const std::string& isoDate) {
    return QLocale().toString(QDate::fromString(QString::fromStdString(isoDate), Qt::ISODate), "d MMM yyyy");
}

} // namespace

HistorySheet::HistorySheet(const VisitSession& session, const Item& item, Side side, QWidget* parent)
    : QFrame(parent, Qt::Popup), item_(item) {
    setAttribute(Qt::WA_DeleteOnClose);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(16, 16, 16, 16);
    outer->setSpacing(8);
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    outer->addWidget(area, 1);
    inside_ = new QWidget(area);
    column_ = new QVBoxLayout(inside_);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(4);
    area->setWidget(inside_);
    area->viewport()->setAutoFillBackground(false);
    inside_->setAutoFillBackground(false);
    addText(findingName(item, side), 17, QFont::DemiBold, false);
    addPast(session.start().past(FindingKey{item.id, side}));
    column_->addStretch(1);
    auto* close = new PlainButton(tr("Close"), PlainButton::Kind::quiet, this);
    connect(close, &QAbstractButton::clicked, this, &QWidget::close);
    outer->addWidget(close);
}

void HistorySheet::addText(const QString& text, int pixels, QFont::Weight weight, bool quiet) {
    auto* label = new QLabel(text, inside_);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setFont(sized(this, pixels, weight));
    QPalette colors = label->palette();
    if (quiet) colors.setColor(QPalette::WindowText, Theme::of(this).quiet);
    label->setPalette(colors);
    column_->addWidget(label);
    lines_ << text;
}

void HistorySheet::addPast(const Result<std::vector<PastValue>>& past) {
    if (!past) {
        for (const Problem& problem : past.problems())
            addText(QString::fromStdString(problem.reason), 16, QFont::Normal, false);
        return;
    }
    if (past->empty()) addText(tr("Never recorded."), 16, QFont::Normal, true);
    VisitId last;
    for (const PastValue& each : *past) {
        if (each.visit.id != last) {
            column_->addSpacing(6);
            addText(tr("Visit %1, %2").arg(each.visit.number).arg(dateText(each.visit.date)), 15,
                    QFont::DemiBold, true);
        }
        last = each.visit.id;
        addValue(each.event);
    }
}

void HistorySheet::addValue(const FindingEvent& event) {
    QString what = tr("cleared");
    if (event.finding) {
        what = valueWords(item_, event.finding->value);
        if (event.finding->bulk) what += tr(", filled with the rest");
    }
    addText(what, 16, QFont::Medium, false);
    if (event.finding && !event.finding->note.empty())
        addText(QStringLiteral("“%1”").arg(QString::fromStdString(event.finding->note)), 15, QFont::Normal,
                false);
    addText(tr("%1, %2").arg(QString::fromStdString(event.by), momentText(event.at)), 15, QFont::Normal,
            true);
}

HistorySheet* HistorySheet::open(const VisitSession& session, const Item& item, Side side, QWidget* over) {
    auto* sheet = new HistorySheet(session, item, side, over);
    const int width = grown(over, 360);
    const int inside = sheet->inside_->layout()->heightForWidth(width - 48);
    sheet->setFixedSize(width, std::min(inside + grown(over, 44) + 48, grown(over, 440)));
    sheet->move(popupPlace(over, over->rect(), sheet->size(), false));
    sheet->show();
    return sheet;
}

void HistorySheet::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.raised);
    painter.setPen(theme.edge);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace rhizograph::app
