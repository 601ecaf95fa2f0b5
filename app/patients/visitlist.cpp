#include "patients/visitlist.h"

#include "parts/button.h"
#include "parts/textsize.h"
#include "patients/words.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <stdexcept>

namespace rhizograph::app {
namespace {

constexpr int margin = 16;
constexpr int beside = 12; ///< between two columns, and above and below the words of a row

QPolygonF diamond(const QPointF& center, qreal reach) {
    return QPolygonF({center + QPointF(0, -reach), center + QPointF(reach, 0), center + QPointF(0, reach),
                      center + QPointF(-reach, 0)});
}

void paintMark(QPainter& painter, StateMark mark, const QPointF& center, const Theme& theme) {
    const QRectF circle(center.x() - 7, center.y() - 7, 14, 14);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.edge, 2));
    switch (mark) {
    case StateMark::none:
        return;
    case StateMark::notBegun:
        painter.drawEllipse(circle);
        return;
    case StateMark::begun:
        painter.setPen(QPen(theme.ochre, 2));
        painter.drawEllipse(circle);
        painter.setBrush(theme.ochre);
        painter.drawPie(circle, 90 * 16, -180 * 16);
        return;
    case StateMark::inRoom:
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.spruce);
        painter.drawEllipse(circle.adjusted(-1, -1, 1, 1));
        return;
    case StateMark::toReview:
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.plum);
        painter.drawPolygon(diamond(center, 9));
        return;
    case StateMark::done:
        paintGlyph(painter, Glyph::check, center, theme.quiet, 20);
        return;
    }
    throw std::logic_error("no such mark");
}

} // namespace

StateMark markOf(const Visit& visit) {
    switch (visit.state) {
    case VisitState::intake:
        return visit.findings == 0 ? StateMark::notBegun : StateMark::begun;
    case VisitState::inRoom:
        return StateMark::inRoom;
    case VisitState::toReview:
        return StateMark::toReview;
    case VisitState::signedOff:
        return StateMark::done;
    }
    return StateMark::none;
}

VisitList::VisitList(const QString& name, Of of, QWidget* parent) : QWidget(parent), name_(name), of_(of) {
    installCellAccess();
    setAccessibleName(name);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void VisitList::setRows(std::vector<ListedVisit> rows, const QString& whenEmpty) {
    rows_ = std::move(rows);
    whenEmpty_ = whenEmpty;
    focus_ = std::clamp(focus_, 0, std::max(0, cellCount() - 1));
    hover_ = -1;
    down_ = -1;
    measure();
    updateGeometry();
    update();
}

int VisitList::headHeight() const {
    return grown(this, 36);
}
int VisitList::nameEnd(const Columns& at) {
    return (at.narrow ? at.state : at.record) - beside;
}

QSize VisitList::sizeHint() const {
    const int rows = std::max(1, cellCount());
    return {grown(this, 600), headHeight() + rows * rowHeight_ + 1};
}

QSize VisitList::minimumSizeHint() const {
    return {320, sizeHint().height()};
}

QRect VisitList::rowRect(int index) const {
    return {0, headHeight() + index * rowHeight_, width(), rowHeight_};
}

VisitList::Columns VisitList::columns() const {
    const int action = grown(this, 104);
    const int end = width() - 10;
    const bool narrow = width() < grown(this, 900);
    const int room = end - action - margin;
    if (narrow) return {margin, -1, -1, margin + room * 48 / 100, end - action, end, true};
    return {margin,
            margin + room * 32 / 100,
            margin + room * 43 / 100,
            margin + room * 53 / 100,
            end - action,
            end,
            false};
}

Cell VisitList::cell(int index) const {
    const ListedVisit& row = rows_.at(static_cast<std::size_t>(index));
    QStringList words{row.name, row.about, row.record, row.visit, row.state, row.detail};
    if (row.redSigns > 0) words << redSignCount(row.redSigns);
    words.removeAll(QString{});
    return {words.join(", "), row.action, rowRect(index), QAccessible::Button, true, false};
}

int VisitList::cellAt(const QPoint& position) const {
    if (position.y() < headHeight()) return -1;
    const int index = (position.y() - headHeight()) / rowHeight_;
    return index < cellCount() ? index : -1;
}

void VisitList::focusCell(int index) {
    if (index < 0 || index >= cellCount()) return;
    focus_ = index;
    setFocus();
    emit focusMoved(rowRect(index));
    announceCell(this, index, QAccessible::Focus);
    update();
}

void VisitList::pressCell(int index) {
    if (index >= 0 && index < cellCount()) emit pressed(index);
}

void VisitList::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    down_ = cellAt(event->pos());
    update();
}

void VisitList::mouseReleaseEvent(QMouseEvent* event) {
    const int down = std::exchange(down_, -1);
    update();
    if (down < 0 || cellAt(event->pos()) != down) return;
    focus_ = down;
    pressCell(down);
}

void VisitList::mouseMoveEvent(QMouseEvent* event) {
    const int hover = cellAt(event->pos());
    if (hover == hover_) return;
    hover_ = hover;
    update();
}

void VisitList::leaveEvent(QEvent*) {
    hover_ = -1;
    update();
}

void VisitList::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Down:
        focusCell(std::min(focus_ + 1, cellCount() - 1));
        return;
    case Qt::Key_Up:
        focusCell(std::max(focus_ - 1, 0));
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        pressCell(focus_);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void VisitList::resizeEvent(QResizeEvent*) {
    measure();
}

void VisitList::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::FontChange) return;
    measure();
    updateGeometry();
}

void VisitList::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    QPainterPath shape;
    shape.addRoundedRect(frame, 10, 10);
    painter.fillPath(shape, theme.raised);
    painter.save();
    painter.setClipPath(shape);
    const Columns at = columns();
    paintHead(painter, at);
    if (rows_.empty()) {
        painter.setFont(sized(this, 16));
        painter.setPen(theme.quiet);
        painter.drawText(QRect(margin, headHeight(), width() - 2 * margin, rowHeight_),
                         Qt::AlignVCenter | Qt::TextWordWrap, whenEmpty_);
    }
    for (int index = 0; index < cellCount(); ++index)
        paintRow(painter, at, index);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.line, 1));
    painter.drawPath(shape);
    if (hasFocus() && !rows_.empty()) {
        painter.setPen(QPen(theme.ink, 2));
        painter.drawRoundedRect(QRectF(rowRect(focus_)).adjusted(3, 3, -3, -3), 8, 8);
    }
}

void VisitList::paintHead(QPainter& painter, const Columns& at) const {
    painter.setFont(sized(this, 15));
    painter.setPen(Theme::of(this).quiet);
    const auto head = [&](int x, const QString& text) {
        if (x >= 0) painter.drawText(QRect(x, 0, width() - x, headHeight()), Qt::AlignVCenter, text);
    };
    head(at.name, of_ == Of::patients ? tr("Patient") : tr("Visit"));
    if (of_ == Of::patients) {
        head(at.record, tr("Record"));
        head(at.visit, tr("Visit"));
    }
    head(at.state, tr("Where it stands"));
}

WordBlock VisitList::nameBlock(const ListedVisit& row, bool narrow) const {
    const Theme& theme = Theme::of(this);
    QStringList about{row.about};
    if (narrow) about << row.record << row.visit;
    about.removeAll(QString{});
    for (QString& part : about)
        part.replace(u' ', QChar::Nbsp); // lines break between the parts
    WordBlock block;
    block.add(row.name, sized(this, 16, QFont::DemiBold), theme.ink);
    block.add(about.join(QStringLiteral(" · ")), sized(this, 15), theme.quiet);
    return block;
}

WordBlock VisitList::stateBlock(const ListedVisit& row) const {
    const Theme& theme = Theme::of(this);
    WordBlock block;
    block.add(row.state, sized(this, 16, QFont::DemiBold), theme.ink);
    if (row.redSigns > 0)
        block.addMarked(redSignCount(row.redSigns), sized(this, 15, QFont::DemiBold), theme.brick);
    block.add(row.detail, sized(this, 15), theme.quiet);
    return block;
}

WordBlock VisitList::wordBlock(const QString& words) const {
    WordBlock block;
    block.add(words, sized(this, 16), Theme::of(this).ink);
    return block;
}

int VisitList::stateLeft(const Columns& at, const ListedVisit& row) {
    return at.state + (row.mark != StateMark::none ? 28 : 0);
}

/// All rows are as high as the highest needs to be.
void VisitList::measure() {
    const Columns at = columns();
    int words = 0;
    for (const ListedVisit& row : rows_) {
        words = std::max(words, nameBlock(row, at.narrow).height(nameEnd(at) - at.name));
        words = std::max(words, stateBlock(row).height(at.action - beside - stateLeft(at, row)));
        if (at.narrow) continue;
        words = std::max(words, wordBlock(row.record).height(at.visit - at.record - beside));
        words = std::max(words, wordBlock(row.visit).height(at.state - at.visit - beside));
    }
    const int height = std::max(grown(this, 72), words + 2 * beside);
    if (height == rowHeight_) return;
    rowHeight_ = height;
    updateGeometry();
    update();
}

void VisitList::paintRow(QPainter& painter, const Columns& at, int index) const {
    const Theme& theme = Theme::of(this);
    const ListedVisit& row = rows_[static_cast<std::size_t>(index)];
    const QRect box = rowRect(index);
    if (index == down_ || index == hover_) {
        QColor over = theme.ink;
        over.setAlphaF(index == down_ ? 0.08F : 0.03F);
        painter.fillRect(box, over);
    }
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(QPointF(0, box.top() + 0.5), QPointF(width(), box.top() + 0.5));
    const auto column = [&](int from, int to) { return QRect(from, box.top(), to - from, box.height()); };
    nameBlock(row, at.narrow).paint(painter, column(at.name, nameEnd(at)));
    if (!at.narrow) {
        wordBlock(row.record).paint(painter, column(at.record, at.visit - beside));
        wordBlock(row.visit).paint(painter, column(at.visit, at.state - beside));
    }
    if (row.mark != StateMark::none)
        paintMark(painter, row.mark, QPointF(at.state + 9, box.center().y() + 1), theme);
    stateBlock(row).paint(painter, column(stateLeft(at, row), at.action - beside));
    const int height = grown(this, 44);
    paintAction(painter, QRect(at.action, box.center().y() - height / 2 + 1, at.end - at.action, height),
                row);
}

void VisitList::paintAction(QPainter& painter, const QRect& box, const ListedVisit& visit) const {
    const Theme& theme = Theme::of(this);
    painter.setBrush(visit.primary ? theme.spruce : theme.raised);
    painter.setPen(QPen(visit.primary ? theme.spruce : theme.edge, 1.5));
    painter.drawRoundedRect(QRectF(box).adjusted(0.75, 0.75, -0.75, -0.75), 10, 10);
    painter.setFont(sized(this, 16, QFont::Medium));
    painter.setPen(visit.primary ? theme.onSpruce : theme.ink);
    painter.drawText(box, Qt::AlignCenter, visit.action);
}

} // namespace rhizograph::app
