#include "exam/findingrow.h"

#include "exam/rowwords.h"
#include "language/language.h"
#include "parts/button.h"
#include "parts/textsize.h"

#include <QPainter>

namespace rhizograph::app {
namespace {

/// The sheet of paper with lines that stands for a remark, in a box of 14 by 16.
void paintNoteGlyph(QPainter& painter, const QPointF& center, const QColor& color, qreal scale) {
    painter.save();
    painter.translate(center);
    painter.scale(scale, scale);
    painter.setPen(QPen(color, 1.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(-5.5, -6.5, 11, 13));
    for (const qreal y : {-3.0, 0.0, 3.0})
        painter.drawLine(QPointF(-3, y), QPointF(3, y));
    painter.restore();
}

} // namespace

FindingRow::FindingRow(VisitSession& session, const Item& item, const ExamOptions& options, QWidget* parent)
    : QWidget(parent), session_(session), item_(item), options_(options) {
    installCellAccess();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setObjectName(QString::fromStdString(item.id.text()));
    longPress_.setSingleShot(true);
    longPress_.setInterval(500);
    connect(&longPress_, &QTimer::timeout, this, [this] {
        const int index = pressed_;
        dropPress();
        if (index >= 0 && !pageMoved()) openMenu(index);
    });
    layOut();
}

QString FindingRow::hostName() const {
    return medical(item_.label);
}

RowContent FindingRow::content() const {
    return {&item_, &session_.exam(), session_.previous(), options_};
}

RowFrame FindingRow::frame(int width) const {
    return {width, textScale(this), font(), heads_, layoutDirection() == Qt::RightToLeft};
}

const Finding* FindingRow::before(Side side) const {
    return session_.previous() != nullptr ? session_.previous()->find(key(side)) : nullptr;
}

int FindingRow::heightForWidth(int width) const {
    return layOutRow(content(), frame(width)).height;
}

QSize FindingRow::sizeHint() const {
    const int wide = width() > 320 ? width() : 816;
    return {wide, heightForWidth(wide)};
}

void FindingRow::layOut() {
    const int was = layout_.height;
    layout_ = layOutRow(content(), frame(std::max(width(), 320)));
    focus_ = std::min(focus_, cellCount() - 1);
    if (layout_.height != was) {
        // Words never give way to a layout that reckoned with less height.
        setMinimumHeight(layout_.height);
        updateGeometry();
    }
    update();
}

void FindingRow::setOptions(const ExamOptions& options) {
    options_ = options;
    layOut();
}

void FindingRow::setHeads(bool shown) {
    if (shown == heads_) return;
    heads_ = shown;
    layOut();
}

void FindingRow::refresh() {
    layOut();
    announceCell(this, focus_, QAccessible::StateChanged);
}

void FindingRow::resizeEvent(QResizeEvent*) {
    layOut();
}

void FindingRow::changeEvent(QEvent* event) {
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LayoutDirectionChange) layOut();
    QWidget::changeEvent(event);
}

int FindingRow::cellOf(Side side, const Value& value) const {
    for (int i = 0; i < cellCount(); ++i)
        if (at(i).side == side && at(i).kind != RowCell::Kind::label && at(i).value == value) return i;
    return -1;
}

QString FindingRow::cellName(const RowCell& cell) const {
    const QString name = findingName(item_, cell.side);
    switch (cell.kind) {
    case RowCell::Kind::value: {
        const Finding* found = now(cell.side);
        const bool bulk = found != nullptr && found->bulk && found->value == *cell.value;
        const QString spoken = name + ", " + valueSpoken(item_.scale, *cell.value, options_.length);
        return bulk ? tr("%1, filled in bulk").arg(spoken) : spoken;
    }
    case RowCell::Kind::fold:
        return name + ", " + cell.text;
    case RowCell::Kind::field:
        return name + ", " +
               (cell.value ? valueSpoken(item_.scale, *cell.value, options_.length) : tr("not examined"));
    case RowCell::Kind::notTestable:
        return name + ", " + valueSpoken(item_.scale, *cell.value, options_.length);
    case RowCell::Kind::label:
        break;
    }
    return tr("%1, more").arg(medical(item_.label));
}

Cell FindingRow::cell(int index) const {
    const RowCell& each = at(index);
    const Finding* found = now(each.side);
    const bool value = each.kind == RowCell::Kind::value;
    Cell out;
    out.name = cellName(each);
    out.rect = each.rect.toAlignedRect();
    // A name above its buttons is a heading: too low to be pressed safely, the menu is on the buttons too.
    const bool heading = each.kind == RowCell::Kind::label && layout_.labelAbove;
    out.role = value ? QAccessible::RadioButton : heading ? QAccessible::StaticText : QAccessible::ButtonMenu;
    out.enabled = !session_.readOnly();
    out.checked = value && found != nullptr && found->value == *each.value;
    if (value && before(each.side) != nullptr && before(each.side)->value == *each.value)
        out.description = tr("value of the last visit");
    return out;
}

int FindingRow::cellAt(const QPoint& position) const {
    for (int i = 0; i < cellCount(); ++i)
        if (at(i).rect.contains(position)) return i;
    return -1;
}

CellFace FindingRow::face(int index) const {
    const RowCell& each = at(index);
    const Finding* found = now(each.side);
    const Finding* last = before(each.side);
    CellFace face;
    face.rect = each.rect;
    face.text = each.text;
    face.scale = textScale(this);
    face.pressed = index == pressed_;
    face.hovered = index == hover_;
    face.focused = hasFocus() && index == focus_;
    face.readOnly = session_.readOnly();
    const bool words = item_.scale.kind == Scale::Kind::choice || each.kind == RowCell::Kind::notTestable ||
                       each.kind == RowCell::Kind::fold;
    face.font = sized(this, words ? 15 : 17, QFont::Medium);
    const auto among = [&](const Finding* one) {
        return one != nullptr && one->value.kind() == Value::Kind::token &&
               std::ranges::find(layout_.folded, one->value.word()) != layout_.folded.end();
    };
    switch (each.kind) {
    case RowCell::Kind::notTestable:
        face.state = CellFace::State::notTestable;
        break;
    case RowCell::Kind::fold:
        if (among(found)) {
            face.state = CellFace::State::chosen;
            face.text = valueText(item_.scale, found->value, options_.length);
            face.font = sized(this, 17, QFont::Medium);
            face.look = lookOf(item_.scale, found->value);
        }
        face.ghost = among(last);
        break;
    case RowCell::Kind::field:
        if (found != nullptr) {
            face.state = found->bulk ? CellFace::State::bulk : CellFace::State::field;
            face.look = lookOf(item_.scale, found->value);
        }
        if (last != nullptr && last->value.isNumber())
            face.aside =
                tr("was %1").arg(shownNumber(item_.scale, last->value.number(), options_.length, true));
        break;
    case RowCell::Kind::value:
        if (found != nullptr && found->value == *each.value) {
            face.state = found->bulk ? CellFace::State::bulk : CellFace::State::chosen;
            // How much pain is a measure, not a sign: a chosen score is plain.
            face.look = each.value->isNumber() ? Look::plain : lookOf(item_.scale, found->value);
        }
        face.ghost = last != nullptr && last->value == *each.value;
        break;
    case RowCell::Kind::label:
        break;
    }
    return face;
}

QString FindingRow::noteWords() const {
    QStringList notes;
    for (const FindingKey& each : keysOf(item_))
        if (const Finding* found = session_.exam().find(each); found != nullptr && !found->note.empty())
            notes << QString::fromStdString(found->note);
    return notes.join(QStringLiteral("; "));
}

void FindingRow::paintHeads(QPainter& painter) const {
    if (layout_.rightHead.isEmpty()) return;
    painter.setFont(sized(this, 15, QFont::Bold));
    painter.setPen(Theme::of(this).ink);
    painter.drawText(layout_.rightHead, Qt::AlignCenter, tr("Right"));
    painter.drawText(layout_.leftHead, Qt::AlignCenter, tr("Left"));
}

void FindingRow::paintLabel(QPainter& painter) const {
    const Theme& theme = Theme::of(this);
    const RowCell& label = layout_.cells.back();
    const QString note = noteWords();
    painter.setFont(sized(this, 16));
    painter.setPen(theme.ink);
    if (!item_.sided) {
        const int side = layoutDirection() == Qt::RightToLeft ? Qt::AlignRight : Qt::AlignLeft;
        painter.drawText(layout_.label, side | Qt::AlignVCenter | Qt::TextWordWrap | Qt::AlignAbsolute,
                         label.text);
        if (note.isEmpty()) return;
        painter.setFont(sized(this, 15));
        painter.setPen(theme.quiet);
        painter.drawText(layout_.note, side | Qt::AlignVCenter | Qt::AlignAbsolute,
                         painter.fontMetrics().elidedText(note, Qt::ElideRight, int(layout_.note.width())));
        return;
    }
    const qreal scale = textScale(this);
    QRectF room = layout_.label;
    const int flags = Qt::AlignCenter | Qt::TextWordWrap;
    QRectF words = painter.boundingRect(room, flags, label.text);
    const bool under =
        !note.isEmpty() && words.height() < 1.5 * painter.fontMetrics().height() && !layout_.labelAbove;
    if (under) words = painter.boundingRect(room.translated(0, -10 * scale), flags, label.text);
    painter.drawText(words.adjusted(-2, 0, 2, 0), flags, label.text);
    if (note.isEmpty()) return;
    const QPointF beside(std::min(words.right() + 10 * scale, room.right() - 2), words.bottom() - 11 * scale);
    paintNoteGlyph(painter, under ? QPointF(room.center().x(), words.bottom() + 10 * scale) : beside,
                   theme.quiet, scale);
}

void FindingRow::paintEvent(QPaintEvent* event) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(0, height() - 1, width(), 1), theme.line);
    paintHeads(painter);
    paintLabel(painter);
    for (int i = 0; i < cellCount(); ++i) {
        if (at(i).kind == RowCell::Kind::label ||
            !event->region().intersects(at(i).rect.adjusted(-6, -6, 6, 9).toAlignedRect()))
            continue;
        paintCell(painter, theme, face(i));
    }
    const RowCell& label = layout_.cells.back();
    if (hasFocus() && focus_ == cellCount() - 1)
        paintFocusRing(painter, label.rect.adjusted(8, 8, -8, -8), 6, theme);
}

} // namespace rhizograph::app
