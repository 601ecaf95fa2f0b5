#include "exam/findingrow.h"

#include "exam/flyout.h"
#include "exam/keypad.h"
#include "exam/rowmenu.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>

namespace rhizograph::app {
namespace {

constexpr int fingerSlack = 14; ///< px a finger may wander and still tap

} // namespace

bool FindingRow::pageMoved() const {
    return (mapToGlobal(QPoint(0, 0)) - pressedRow_).manhattanLength() > 3;
}

void FindingRow::dropPress() {
    longPress_.stop();
    if (pressed_ < 0) return;
    pressed_ = -1;
    update();
}

void FindingRow::setHover(int index) {
    if (index == hover_) return;
    hover_ = index;
    setCursor(index >= 0 && answers(index) ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void FindingRow::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    const int index = cellAt(event->position().toPoint());
    if (index < 0 || !answers(index)) return;
    pressed_ = index;
    pressedAt_ = event->position().toPoint();
    pressedRow_ = mapToGlobal(QPoint(0, 0));
    focus_ = pressed_;
    longPress_.start();
    update();
}

void FindingRow::mouseMoveEvent(QMouseEvent* event) {
    const QPoint position = event->position().toPoint();
    if (pressed_ >= 0 && ((position - pressedAt_).manhattanLength() > fingerSlack || pageMoved()))
        dropPress();
    if (!event->buttons()) setHover(cellAt(position));
}

void FindingRow::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || pressed_ < 0) return;
    const int index = pressed_;
    const bool moved = pageMoved() || cellAt(event->position().toPoint()) != index;
    dropPress();
    if (!moved) pressCell(index);
}

void FindingRow::contextMenuEvent(QContextMenuEvent* event) {
    const bool keyboard = event->reason() == QContextMenuEvent::Keyboard;
    const int index = keyboard ? focus_ : cellAt(event->pos());
    dropPress();
    if (index >= 0) openMenu(index);
}

void FindingRow::leaveEvent(QEvent*) {
    setHover(-1);
}

/// In a visit that is only read, the name still opens its menu: what it was before, how it is done.
bool FindingRow::answers(int index) const {
    return !session_.readOnly() || at(index).kind == RowCell::Kind::label;
}

void FindingRow::pressCell(int index) {
    if (index < 0 || index >= cellCount() || !answers(index)) return;
    focus_ = index;
    const RowCell each = at(index);
    switch (each.kind) {
    case RowCell::Kind::value:
        session_.tap(key(each.side), *each.value);
        break;
    case RowCell::Kind::fold:
        openFlyout(index);
        break;
    case RowCell::Kind::field:
        openKeypad(index);
        break;
    case RowCell::Kind::notTestable:
        session_.tap(key(each.side), *each.value);
        break;
    case RowCell::Kind::label:
        openMenu(index);
        break;
    }
}

void FindingRow::focusCell(int index) {
    if (index < 0 || index >= cellCount()) return;
    focus_ = index;
    update();
    announceCell(this, index, QAccessible::Focus);
}

void FindingRow::goTo(Side side) {
    setFocus(Qt::OtherFocusReason);
    const Finding* found = now(side);
    const std::optional<Value> wanted =
        found != nullptr ? std::optional{found->value} : normalValue(item_.scale);
    int index = wanted ? cellOf(side, *wanted) : -1;
    for (int i = 0; index < 0 && i < cellCount(); ++i)
        if (at(i).side == side) index = i;
    focusCell(std::max(index, 0));
}

void FindingRow::comeFrom(const FindingRow& row) {
    const Side side = row.at(row.focus_).side;
    goTo(item_.sided && side == Side::none ? Side::right : item_.sided ? side : Side::none);
}

void FindingRow::openMenu(int index) {
    const HowTo* howTo = options_.howTos != nullptr ? options_.howTos->find(item_.id) : nullptr;
    auto* menu = new RowMenu(session_, item_, at(index).side, howTo, this);
    emit popupOpened(menu);
    menu->popup(mapToGlobal(at(index).rect.center().toPoint()));
}

void FindingRow::openFlyout(int index) {
    const Side side = at(index).side;
    auto* flyout = new Flyout(item_.scale, layout_.folded, now(side), this);
    connect(flyout, &Flyout::chosen, this, [this, side](const QString& token) {
        session_.tap(key(side), Value::token(token.toStdString()));
    });
    flyout->openAbove(at(index).rect.toAlignedRect());
    emit popupOpened(flyout);
}

void FindingRow::openKeypad(int index, const QString& typed) {
    auto* keypad = new Keypad(session_, item_, at(index).side, options_.length, this);
    if (!typed.isEmpty()) keypad->type(typed);
    keypad->openAt(at(index).rect.toAlignedRect());
    emit popupOpened(keypad);
}

bool FindingRow::typeDigit(int digit) {
    const Side side = at(focus_).side;
    if (at(focus_).kind == RowCell::Kind::label && item_.sided) return false;
    const Scale& scale = item_.scale;
    const std::string word = std::to_string(digit);
    if (scale.kind == Scale::Kind::grade) {
        if (!scale.index(word)) return false;
        session_.tap(key(side), Value::token(word));
    } else if (scale.kind == Scale::Kind::choice) {
        const auto place = static_cast<std::size_t>(digit);
        if (place < 1 || place > scale.values.size()) return false;
        session_.tap(key(side), Value::token(scale.values[place - 1].token));
    } else if (isScore(scale)) {
        if (digit < scale.minimum || digit > scale.maximum) return false;
        session_.tap(key(side), Value::number(digit));
    } else {
        openKeypad(focus_, QString::number(digit));
    }
    return true;
}

void FindingRow::moveAlong(int steps) {
    const int next = focus_ + steps;
    if (next >= 0 && next < cellCount()) focusCell(next);
}

void FindingRow::keyPressEvent(QKeyEvent* event) {
    const int digit = event->text().isEmpty() ? -1 : event->text().at(0).digitValue();
    switch (event->key()) {
    case Qt::Key_Left:
        return moveAlong(-1);
    case Qt::Key_Right:
        return moveAlong(1);
    case Qt::Key_Up:
        emit leaving(-1);
        return;
    case Qt::Key_Down:
        emit leaving(1);
        return;
    case Qt::Key_N:
        emit restNormalAsked();
        return;
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return pressCell(focus_);
    case Qt::Key_Backspace:
    case Qt::Key_Delete: {
        const Side side = at(focus_).side;
        if (now(side) != nullptr)
            session_.change(tr("%1: cleared").arg(hostName()), {{key(side), std::nullopt}});
        return;
    }
    default:
        break;
    }
    if (digit >= 0 && !session_.readOnly() && typeDigit(digit)) return;
    QWidget::keyPressEvent(event);
}

void FindingRow::focusInEvent(QFocusEvent* event) {
    // Coming with the tab key starts at the value that stands or at the normal one, never in the middle of
    // nowhere.
    if (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason)
        goTo(item_.sided ? Side::right : Side::none);
    update();
}

void FindingRow::focusOutEvent(QFocusEvent*) {
    update();
}

} // namespace rhizograph::app
