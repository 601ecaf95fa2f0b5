#include "window/rail.h"

#include "parts/textsize.h"

#include <algorithm>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

namespace rhizograph::app {
namespace {

constexpr int pageGap = 16;  ///< room for the hairline between steps and pages
constexpr int ringRoom = 52; ///< px a ring takes above its label, whatever the text size

} // namespace

Rail::Rail(QWidget* parent) : QWidget(parent) {
    installCellAccess();
    setAccessibleName(hostName());
    setFocusPolicy(Qt::StrongFocus);
}

void Rail::setPlaces(std::vector<RailPlace> places) {
    places_ = std::move(places);
    chosen_ = std::min(chosen_, cellCount() - 1);
    update();
}

void Rail::setAtBottom(bool atBottom) {
    atBottom_ = atBottom;
    update();
}

void Rail::setChosen(int index) {
    chosen_ = index;
    focus_ = index;
    update();
}

int Rail::widestWord() const {
    const QFontMetrics metrics(sized(this, 15, QFont::DemiBold));
    int widest = 0;
    for (const RailPlace& place : places_)
        widest = std::max(widest, metrics.horizontalAdvance(place.label.section(u' ', 0, 0)));
    return widest + 6;
}

int Rail::rows() const {
    const int whole = parentWidget() != nullptr ? parentWidget()->width() : width();
    return atBottom_ && widestWord() * cellCount() > whole ? 2 : 1;
}

int Rail::thickness() const {
    if (!atBottom_) return std::max(std::min(grown(this, 104), 150), widestWord() + 2);
    return rows() == 1 ? grown(this, 84) : rows() * (ringRoom + grown(this, 24));
}

QRect Rail::rectOf(int index) const {
    const int count = std::max(1, cellCount());
    if (atBottom_) {
        const int lines = rows();
        const int each = (count + lines - 1) / lines;
        const int column = index % each;
        const int left = width() * column / each;
        const int top = height() * (index / each) / lines;
        return {left, top, width() * (column + 1) / each - left, height() / lines};
    }
    constexpr int above = 6;
    const int step = std::min(grown(this, 76), (height() - pageGap - above) / count);
    const bool page = !places_[static_cast<std::size_t>(index)].step();
    return {0, above + index * step + (page ? pageGap : 0), width() - 1, step};
}

Cell Rail::cell(int index) const {
    const RailPlace& place = places_.at(static_cast<std::size_t>(index));
    QString name = place.label;
    if (place.step()) name += tr(", %1 of %2 recorded").arg(place.recorded).arg(place.shown);
    if (place.mark == RailPlace::Mark::abnormal) name += tr(", holds something abnormal");
    if (place.mark == RailPlace::Mark::redSign) name += tr(", holds a red sign");
    return {name, tr("Shows this page"), rectOf(index), QAccessible::PageTab, true, index == chosen_};
}

int Rail::cellAt(const QPoint& position) const {
    for (int index = 0; index < cellCount(); ++index)
        if (rectOf(index).contains(position)) return index;
    return -1;
}

void Rail::focusCell(int index) {
    if (index < 0 || index >= cellCount()) return;
    focus_ = index;
    setFocus();
    announceCell(this, index, QAccessible::Focus);
    update();
}

void Rail::pressCell(int index) {
    if (index >= 0 && index < cellCount()) emit wanted(index);
}

void Rail::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) pressCell(cellAt(event->pos()));
}

void Rail::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    if (key == (atBottom_ ? Qt::Key_Right : Qt::Key_Down))
        focusCell(focus_ + 1);
    else if (key == (atBottom_ ? Qt::Key_Left : Qt::Key_Up))
        focusCell(focus_ - 1);
    else if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space)
        pressCell(focus_);
    else
        QWidget::keyPressEvent(event);
}

bool Rail::event(QEvent* event) {
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const int index = cellAt(help->pos());
        if (index >= 0) QToolTip::showText(help->globalPos(), cell(index).name, this);
        return true;
    }
    return QWidget::event(event);
}

QString Rail::fittingLabel(const QString& label, const QFontMetrics& metrics, int width) const {
    if (metrics.horizontalAdvance(label) <= width) return label;
    // Whole words as far as they fit; a label never ends in a joining word.
    QStringList words = label.split(' ');
    while (words.size() > 1) {
        words.removeLast();
        if (words.size() > 1 && words.last().size() <= 3) words.removeLast();
        const QString shorter = words.join(' ');
        if (metrics.horizontalAdvance(shorter) <= width) return shorter;
    }
    return metrics.elidedText(words.first(), Qt::ElideRight, width);
}

void Rail::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme.paper);
    if (atBottom_)
        painter.fillRect(0, 0, width(), 1, theme.line);
    else
        painter.fillRect(width() - 1, 0, 1, height(), theme.line);
    for (int index = 0; index < cellCount(); ++index) {
        const bool firstPage = index > 0 && !places_[static_cast<std::size_t>(index)].step() &&
                               places_[static_cast<std::size_t>(index - 1)].step();
        if (firstPage && !atBottom_)
            painter.fillRect(16, rectOf(index).top() - pageGap / 2, width() - 33, 1, theme.line);
        paintPlace(painter, index);
    }
}

void Rail::paintPlace(QPainter& painter, int index) const {
    const Theme& theme = Theme::of(this);
    const RailPlace& place = places_[static_cast<std::size_t>(index)];
    const QRect box = rectOf(index);
    const bool chosen = index == chosen_;
    if (chosen) {
        painter.fillRect(box.adjusted(0, atBottom_ ? 1 : 0, 0, 0), theme.raised);
        const QRectF bar = atBottom_ ? QRectF(box.left() + 12, box.top(), box.width() - 24, 4)
                                     : QRectF(0, box.top() + 6, 4, box.height() - 12);
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.spruce);
        painter.drawRoundedRect(bar, 2, 2);
    }
    QFont font = sized(this, 15, chosen ? QFont::DemiBold : QFont::Normal);
    // Words grow with the text as far as they fit; they are shortened only when even 15 px are too large.
    const QString& first = place.label.section(u' ', 0, 0);
    while (font.pixelSize() > 15 && QFontMetrics(font).horizontalAdvance(first) > box.width() - 10)
        font.setPixelSize(font.pixelSize() - 1);
    const int words = QFontMetrics(font).height();
    const qreal room = box.height() - words - 4;
    const QPointF center(box.center().x() + 0.5, box.top() + room / 2 + 3);
    // On a low screen with large text there is no room for the ring: the label and its mark stay.
    if (room < 40)
        paintMark(painter, place, QPointF(box.right() - 9.0, box.top() + 9.0));
    else if (place.step())
        paintRing(painter, place, center);
    else
        paintGlyph(painter, place.glyph, center, theme.ink, 32);
    painter.setFont(font);
    painter.setPen(theme.ink);
    const QRect under(box.left() + 2, box.bottom() - words - 3, box.width() - 4, words);
    painter.drawText(under, Qt::AlignCenter, fittingLabel(place.label, painter.fontMetrics(), under.width()));
    if (hasFocus() && focus_ == index) paintFocusRing(painter, QRectF(box).adjusted(6, 5, -6, -5), 6, theme);
}

void Rail::paintRing(QPainter& painter, const RailPlace& place, const QPointF& center) const {
    const Theme& theme = Theme::of(this);
    const QRectF circle(center.x() - 18, center.y() - 18, 36, 36);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.line, 4));
    painter.drawEllipse(circle);
    const bool complete = place.shown > 0 && place.recorded >= place.shown;
    if (place.recorded > 0 && place.shown > 0) {
        const double share = std::min(1.0, static_cast<double>(place.recorded) / place.shown);
        painter.setPen(QPen(theme.spruce, 4, Qt::SolidLine, Qt::RoundCap));
        painter.drawArc(circle, 90 * 16, -qRound(share * 360 * 16));
    }
    if (complete) {
        paintGlyph(painter, Glyph::check, center, theme.spruce, 22);
    } else {
        QFont font = painter.font();
        font.setPixelSize(15); // the ring does not grow with the text
        font.setWeight(QFont::DemiBold);
        painter.setFont(font);
        painter.setPen(theme.ink);
        painter.drawText(circle, Qt::AlignCenter, QString::number(place.recorded));
    }
    paintMark(painter, place, center + QPointF(16, -14));
}

void Rail::paintMark(QPainter& painter, const RailPlace& place, const QPointF& corner) const {
    const Theme& theme = Theme::of(this);
    if (place.mark == RailPlace::Mark::none) return;
    constexpr qreal reach = 7;
    painter.setPen(QPen(theme.paper, 2));
    painter.setBrush(place.mark == RailPlace::Mark::redSign ? theme.brick : theme.ochre);
    painter.drawPolygon(QPolygonF({corner + QPointF(0, -reach), corner + QPointF(reach, 0),
                                   corner + QPointF(0, reach), corner + QPointF(-reach, 0)}));
}

} // namespace rhizograph::app
