#include "compare/trendchart.h"

#include "parts/textsize.h"

#include <algorithm>
#include <cmath>
#include <QDate>
#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>

namespace rhizograph::app {

TrendChart::TrendChart(QWidget* parent) : QWidget(parent) {
    installCellAccess();
    setFocusPolicy(Qt::StrongFocus);
}

QDate dateOf(const std::string& iso) {
    return QDate::fromString(QString::fromStdString(iso), Qt::ISODate);
}

void TrendChart::show(std::vector<TrendVisit> visits, std::vector<TrendRow> rows,
                      std::vector<TrendEvent> events) {
    visits_ = std::move(visits);
    rows_ = std::move(rows);
    events_ = std::move(events);
    focus_ = -1;
    place();
    updateGeometry();
    update();
}

void TrendChart::choose(const QString& row) {
    chosen_.clear();
    update();
    for (std::size_t index = 0; index < rows_.size(); ++index) {
        if (rows_[index].id != row) continue;
        chosen_ = row;
        emit focusMoved(rowBox(index).toRect());
    }
}

/// Where everything stands at the present width.
void TrendChart::place() {
    std::vector<QDate> dates;
    for (const TrendVisit& visit : visits_)
        dates.push_back(dateOf(visit.date));
    measureWords();
    axis_ = TrendAxis(std::move(dates), left(), right());
    placeEvents();
    placeDots();
}

int TrendChart::visitsHeight() const {
    return grown(this, 46);
}
int TrendChart::laneHeight() const {
    return grown(this, 28);
}
int TrendChart::headHeight() const {
    return visitsHeight() + lanes_ * laneHeight();
}
int TrendChart::rowHeight() const {
    return grown(this, 96);
}
int TrendChart::nameRoom() const {
    return nameRoom_;
}
int TrendChart::left() const {
    return 16 + nameRoom_ + grown(this, 56);
}
int TrendChart::right() const {
    return width() - valueRoom_;
}

/// Names may break into lines but never within a word, values never at all.
void TrendChart::measureWords() {
    const QFontMetrics strong(sized(this, 15, QFont::DemiBold));
    nameRoom_ = grown(this, 126);
    valueRoom_ = grown(this, 96);
    for (const TrendRow& row : rows_) {
        for (const QString& word : (row.title + QStringLiteral(" ") + row.unit).split(u' '))
            nameRoom_ = std::max(nameRoom_, strong.horizontalAdvance(word) + 2);
        for (const TrendLine& line : row.lines)
            if (!line.value.empty())
                valueRoom_ =
                    std::max(valueRoom_, 22 + strong.horizontalAdvance(line.name + QStringLiteral(" ") +
                                                                       line.value.back()));
    }
}

QSize TrendChart::sizeHint() const {
    return {800, headHeight() + rowHeight() * static_cast<int>(rows_.size()) + 1};
}

QRectF TrendChart::rowBox(std::size_t row) const {
    return {0, headHeight() + static_cast<qreal>(row) * rowHeight(), static_cast<qreal>(width()),
            static_cast<qreal>(rowHeight())};
}

qreal TrendChart::dotRadius() const {
    return std::clamp(axis_.narrowest() / 2 - 0.5, 2.5, 5.5);
}

qreal TrendChart::yOf(const TrendRow& row, const QRectF& box, double place) const {
    const qreal share = (place - row.low) / (row.high - row.low);
    return box.bottom() - 14 - share * (box.height() - 28);
}

void TrendChart::placeDots() {
    dots_.clear();
    if (visits_.empty()) return;
    for (std::size_t row = 0; row < rows_.size(); ++row) {
        for (std::size_t line = 0; line < rows_[row].lines.size(); ++line) {
            const auto& place = rows_[row].lines[line].place;
            for (std::size_t visit = 0; visit < std::min(place.size(), visits_.size()); ++visit) {
                if (!place[visit]) continue;
                dots_.push_back(
                    {row, line, visit, {xOf(visit), yOf(rows_[row], rowBox(row), *place[visit])}});
            }
        }
    }
}

QPointF TrendChart::pointOf(int cell) const {
    const auto index = static_cast<std::size_t>(cell);
    return index < dots_.size() ? dots_[index].at : eventMarks_.at(index - dots_.size()).at;
}

Cell TrendChart::cell(int index) const {
    constexpr int reach = 22; // half of a finger's 44 px
    const QPoint at = pointOf(index).toPoint();
    const QRect place(at.x() - reach, at.y() - reach, 2 * reach, 2 * reach);
    if (static_cast<std::size_t>(index) >= dots_.size()) {
        const TrendEvent& event = events_[eventMarks_[static_cast<std::size_t>(index) - dots_.size()].event];
        const QString day =
            QLocale(QLocale::English).toString(dateOf(event.date), QStringLiteral("d MMM yyyy"));
        return {tr("%1, %2").arg(event.words, day), tr("Shows the list of events"), place};
    }
    const Dot& dot = dots_[static_cast<std::size_t>(index)];
    const TrendRow& row = rows_[dot.row];
    const TrendLine& line = row.lines[dot.line];
    const QString name =
        tr("%1, visit %2: %3")
            .arg(line.name.isEmpty() ? row.title : row.title + QStringLiteral(" ") + line.name)
            .arg(visits_[dot.visit].number)
            .arg(line.value.at(dot.visit));
    return {name, tr("Opens that visit, read only"), place};
}

int TrendChart::cellAt(const QPoint& position) const {
    int best = -1;
    qreal nearest = 22.0 * 22.0 * 2;
    for (int i = 0; i < cellCount(); ++i) {
        if (!cell(i).rect.contains(position)) continue;
        const QPointF away = pointOf(i) - position;
        const qreal distance = QPointF::dotProduct(away, away);
        if (distance < nearest) {
            nearest = distance;
            best = i;
        }
    }
    return best;
}

void TrendChart::focusCell(int index) {
    focus_ = index;
    if (index >= 0) emit focusMoved(cell(index).rect);
    announceCell(this, index, QAccessible::Focus);
    update();
}

void TrendChart::pressCell(int index) {
    if (index < 0 || index >= cellCount()) return;
    const auto pressed = static_cast<std::size_t>(index);
    if (pressed < dots_.size()) {
        const VisitId visit = visits_[dots_[pressed].visit].id;
        emit visitPressed(visit);
    } else {
        const PatientEventId event = events_[eventMarks_[pressed - dots_.size()].event].id;
        emit eventPressed(event);
    }
}

void TrendChart::resizeEvent(QResizeEvent*) {
    const int lanes = lanes_;
    place();
    if (lanes != lanes_) updateGeometry();
}

void TrendChart::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    const int pressed = cellAt(event->position().toPoint());
    if (pressed < 0) return;
    focus_ = pressed;
    update();
    pressCell(pressed);
}

void TrendChart::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Right:
    case Qt::Key_Down:
        return focusCell(std::min(focus_ + 1, cellCount() - 1));
    case Qt::Key_Left:
    case Qt::Key_Up:
        return focusCell(std::max(focus_ - 1, 0));
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        return pressCell(focus_);
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace rhizograph::app
