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

void TrendChart::show(std::vector<TrendVisit> visits, std::vector<TrendRow> rows) {
    visits_ = std::move(visits);
    rows_ = std::move(rows);
    focus_ = -1;
    placeDots();
    updateGeometry();
    update();
}

int TrendChart::headHeight() const {
    return grown(this, 46);
}
int TrendChart::rowHeight() const {
    return grown(this, 96);
}
int TrendChart::left() const {
    return grown(this, 146) + grown(this, 52);
}
int TrendChart::right() const {
    return width() - grown(this, 96);
}

QSize TrendChart::sizeHint() const {
    return {800, headHeight() + rowHeight() * static_cast<int>(rows_.size()) + 1};
}

QRectF TrendChart::rowBox(std::size_t row) const {
    return {0, headHeight() + static_cast<qreal>(row) * rowHeight(), static_cast<qreal>(width()),
            static_cast<qreal>(rowHeight())};
}

qreal TrendChart::xOf(std::size_t visit) const {
    const auto dateOf = [&](std::size_t index) {
        return QDate::fromString(QString::fromStdString(visits_[index].date), Qt::ISODate);
    };
    const qreal room = right() - left();
    const auto last = visits_.size() - 1;
    if (last == 0) return left() + room / 2;
    const auto days = static_cast<qreal>(dateOf(0).daysTo(dateOf(last)));
    // Visits of one day, or without a date, stand at equal distances.
    const bool dated = std::all_of(visits_.begin(), visits_.end(),
                                   [](const TrendVisit& each) { return !each.date.empty(); });
    if (!dated || days <= 0) return left() + room * static_cast<qreal>(visit) / static_cast<qreal>(last);
    return left() + room * static_cast<qreal>(dateOf(0).daysTo(dateOf(visit))) / days;
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

Cell TrendChart::cell(int index) const {
    const Dot& dot = dots_.at(static_cast<std::size_t>(index));
    const TrendRow& row = rows_[dot.row];
    const TrendLine& line = row.lines[dot.line];
    QString name = tr("%1, visit %2: %3")
                       .arg(line.name.isEmpty() ? row.title : row.title + QStringLiteral(" ") + line.name)
                       .arg(visits_[dot.visit].number)
                       .arg(line.value.at(dot.visit));
    constexpr int reach = 22; // half of a finger's 44 px
    const QPoint at = dot.at.toPoint();
    return {name,
            tr("Opens that visit, read only"),
            QRect(at.x() - reach, at.y() - reach, 2 * reach, 2 * reach),
            QAccessible::PushButton,
            true,
            false};
}

int TrendChart::cellAt(const QPoint& position) const {
    int best = -1;
    qreal nearest = 22.0 * 22.0 * 2;
    for (int i = 0; i < cellCount(); ++i) {
        if (!cell(i).rect.contains(position)) continue;
        const QPointF away = dots_[static_cast<std::size_t>(i)].at - position;
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
    const VisitId visit = visits_[dots_[static_cast<std::size_t>(index)].visit].id;
    emit visitPressed(visit);
}

void TrendChart::resizeEvent(QResizeEvent*) {
    placeDots();
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
