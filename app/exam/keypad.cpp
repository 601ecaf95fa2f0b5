#include "exam/keypad.h"

#include "exam/angledial.h"
#include "exam/flyout.h"
#include "exam/rowwords.h"
#include "parts/button.h"
#include "parts/textsize.h"

#include <cmath>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>

namespace rhizograph::app {
namespace {

const QString point = QStringLiteral(".");
const QString minus = QStringLiteral("-");
const std::string angleUnit = "deg"; // UCUM

} // namespace

Keypad::Keypad(VisitSession& session, const Item& item, Side side, LengthUnit length, QWidget* parent)
    : QFrame(parent, Qt::Popup), session_(session), item_(item), side_(side), length_(length),
      unit_(shownUnit(item.scale, length)) {
    setAttribute(Qt::WA_DeleteOnClose);
    setFocusPolicy(Qt::StrongFocus);
    const Finding* now = session_.exam().find(key());
    if (now != nullptr && now->value.isNumber())
        typed_ = QString::number(now->value.number() * unit_.factor, 'f', unit_.decimals);
    build();
    updateWords();
}

void Keypad::build() {
    auto* title = new QLabel(findingName(item_, side_), this);
    title->setFont(sized(this, 16, QFont::DemiBold));
    title->setWordWrap(true);
    value_ = new QLabel(this);
    value_->setAlignment(Qt::AlignCenter);
    value_->setMinimumHeight(grown(this, 48));
    hint_ = new QLabel(this);
    hint_->setWordWrap(true);
    hint_->setFont(sized(this, 15));
    hint_->setMinimumHeight(grown(this, 40));
    hint_->setAlignment(Qt::AlignLeft | Qt::AlignTop);

    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(12, 12, 12, 12);
    grid->setSpacing(8);
    grid->addWidget(title, 0, 0, 1, 3);
    grid->addWidget(value_, 1, 0, 1, 3);
    grid->addWidget(hint_, 2, 0, 1, 3);
    if (item_.scale.unit == angleUnit) addDial(*grid);
    buildKeys(*grid);
}

void Keypad::addDial(QGridLayout& grid) {
    dial_ = new AngleDial(item_.scale.minimum, item_.scale.maximum, this);
    grid.addWidget(dial_, 3, 0, 1, 3, Qt::AlignHCenter);
    connect(dial_, &AngleDial::turned, this, [this](double angle) {
        typed_ = QString::number(angle, 'f', unit_.decimals);
        fresh_ = true; // a key begins a new number
        updateWords();
    });
}

void Keypad::buildKeys(QGridLayout& grid) {
    const auto add = [&](const QString& text, int row, int column, int span = 1) {
        auto* button = new PlainButton(text, PlainButton::Kind::quiet, this);
        button->setMinimumSize(grown(this, 72), grown(this, 48));
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
        button->setFocusPolicy(Qt::NoFocus);
        button->setObjectName("key." + text);
        grid.addWidget(button, row, column, 1, span);
        return button;
    };
    for (int digit = 1; digit <= 9; ++digit) {
        const QString text = QString::number(digit);
        auto* button = add(text, 4 + (9 - digit) / 3, (digit - 1) % 3);
        connect(button, &QAbstractButton::clicked, this, [this, text] { press(text); });
    }
    const bool negative = item_.scale.minimum < 0;
    const bool decimals = unit_.decimals > 0;
    const int zeroSpan = negative || decimals ? 1 : 2;
    if (negative || decimals) {
        const QString extra = decimals ? point : minus;
        auto* button = add(decimals ? point : QString(QChar(0x2212)), 7, 0);
        connect(button, &QAbstractButton::clicked, this, [this, extra] { press(extra); });
    }
    auto* zero = add(QStringLiteral("0"), 7, zeroSpan == 2 ? 0 : 1, zeroSpan);
    connect(zero, &QAbstractButton::clicked, this, [this] { press(QStringLiteral("0")); });
    auto* back = add(QString(), 7, 2);
    back->setGlyph(Glyph::left);
    back->setAccessibleName(tr("Erase the last digit"));
    connect(back, &QAbstractButton::clicked, this, &Keypad::erase);

    auto* clear = add(tr("Clear"), 8, 0);
    clear->setEnabled(session_.exam().find(key()) != nullptr);
    connect(clear, &QAbstractButton::clicked, this, &Keypad::clearFinding);
    record_ = new PlainButton(tr("Record"), PlainButton::Kind::primary, this);
    record_->setObjectName(QStringLiteral("key.record"));
    record_->setFocusPolicy(Qt::NoFocus);
    grid.addWidget(record_, 8, 1, 1, 2);
    connect(record_, &QAbstractButton::clicked, this, &Keypad::record);
}

void Keypad::openAt(const QRect& place) {
    setFixedWidth(grown(this, 264));
    adjustSize();
    move(popupPlace(parentWidget(), place, size(), false));
    show();
    setFocus();
}

void Keypad::type(const QString& keys) {
    for (const QChar each : keys)
        press(QString(each));
}

void Keypad::press(const QString& key) {
    if (fresh_) typed_.clear();
    fresh_ = false;
    if (key == minus) {
        typed_ = typed_.startsWith(minus) ? typed_.mid(1) : minus + typed_;
    } else if (key == point) {
        if (unit_.decimals > 0 && !typed_.contains(point)) typed_ += typed_.isEmpty() ? "0." : ".";
    } else if (typed_.size() < 7) {
        typed_ += key;
    }
    updateWords();
}

void Keypad::erase() {
    fresh_ = false;
    typed_.chop(1);
    updateWords();
}

void Keypad::clearFinding() {
    session_.change(tr("%1: cleared").arg(findingName(item_, side_)), {{key(), std::nullopt}});
    close();
}

std::optional<double> Keypad::number() const {
    bool valid = false;
    const double shown = typed_.toDouble(&valid);
    if (!valid) return std::nullopt;
    const double stored = shown / unit_.factor;
    const double step = item_.scale.step;
    return step > 0 ? std::round(stored / step) * step : stored;
}

QString Keypad::problem() const {
    const auto value = number();
    const QString from = shownNumber(item_.scale, item_.scale.minimum, length_);
    const QString to = shownNumber(item_.scale, item_.scale.maximum, length_);
    if (!value) return tr("Type a number from %1 to %2.").arg(from, to);
    if (*value < item_.scale.minimum - 1e-9 || *value > item_.scale.maximum + 1e-9)
        return tr("That is out of range: from %1 to %2.").arg(from, to);
    return {};
}

void Keypad::record() {
    if (!problem().isEmpty()) return;
    const Finding* now = session_.exam().find(key());
    const Value value = Value::number(*number());
    Finding next{value, false, now != nullptr ? now->note : std::string{}};
    session_.change(findingName(item_, side_) + ": " + shownNumber(item_.scale, value.number(), length_),
                    {{key(), std::move(next)}});
    close();
}

void Keypad::updateWords() {
    const Theme& theme = Theme::of(this);
    QString shown = typed_;
    shown.replace('-', QChar(0x2212));
    value_->setFont(sized(this, 28, QFont::DemiBold));
    value_->setText(shown.isEmpty() ? QString(QChar(0x2013)) : shown + unit_.suffix);
    const QString reason = problem();
    const QString range = tr("From %1 to %2.")
                              .arg(shownNumber(item_.scale, item_.scale.minimum, length_),
                                   shownNumber(item_.scale, item_.scale.maximum, length_));
    QPalette colors = hint_->palette();
    const bool wrong = !reason.isEmpty() && !typed_.isEmpty();
    colors.setColor(QPalette::WindowText, wrong ? theme.brick : theme.quiet);
    hint_->setPalette(colors);
    hint_->setText(reason.isEmpty() ? range : reason);
    record_->setEnabled(reason.isEmpty());
    if (dial_ != nullptr) dial_->setAngle(reason.isEmpty() ? number() : std::nullopt);
}

void Keypad::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        record();
        return;
    case Qt::Key_Backspace:
        erase();
        return;
    case Qt::Key_Delete:
        clearFinding();
        return;
    case Qt::Key_Minus:
        if (item_.scale.minimum < 0) press(minus);
        return;
    case Qt::Key_Comma:
    case Qt::Key_Period:
        press(point);
        return;
    default:
        break;
    }
    const int digit = event->text().isEmpty() ? -1 : event->text().at(0).digitValue();
    if (digit >= 0)
        press(QString::number(digit));
    else
        QFrame::keyPressEvent(event);
}

void Keypad::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.fillRect(rect(), theme.raised);
    painter.setPen(theme.edge);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

} // namespace rhizograph::app
