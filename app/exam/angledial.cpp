#include "exam/angledial.h"

#include "parts/textsize.h"
#include "shell/theme.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QMouseEvent>
#include <QPainter>

namespace rhizograph::app {
namespace {

constexpr double step = 5;      ///< degrees a finger can set apart
constexpr double longMark = 30; ///< marks with a number
constexpr qreal markLength = 8; ///< px
constexpr int numberRoom = 24;  ///< px round the scale, at 100 % text
constexpr int underLine = 14;   ///< px under the base line

} // namespace

AngleDial::AngleDial(double minimum, double maximum, QWidget* parent)
    : QWidget(parent), minimum_(minimum), maximum_(maximum) {
    setFocusPolicy(Qt::NoFocus);
    setCursor(Qt::PointingHandCursor);
    setAccessibleName(tr("Angle"));
    setAccessibleDescription(tr("Turn the hand, or type the degrees"));
}

void AngleDial::setAngle(std::optional<double> angle) {
    if (angle) angle = std::clamp(*angle, minimum_, maximum_);
    if (angle == angle_) return;
    angle_ = angle;
    update();
}

QSize AngleDial::sizeHint() const {
    return {grown(this, 240), grown(this, 136)};
}

QPointF AngleDial::center() const {
    return {width() / 2.0, height() - static_cast<qreal>(grown(this, underLine))};
}

qreal AngleDial::radius() const {
    return std::min(width() / 2.0, center().y()) - grown(this, numberRoom);
}

QPointF AngleDial::placeOf(double angle) const {
    const double turn = std::numbers::pi * (1 - share(angle));
    return center() + radius() * QPointF(std::cos(turn), -std::sin(turn));
}

double AngleDial::angleAt(const QPointF& place) const {
    const QPointF from = place - center();
    // Below the base line the nearer end counts.
    const double turn =
        from.y() > 0 ? (from.x() < 0 ? std::numbers::pi : 0) : std::atan2(-from.y(), from.x());
    const double angle = minimum_ + (maximum_ - minimum_) * (1 - turn / std::numbers::pi);
    return std::clamp(std::round(angle / step) * step, minimum_, maximum_);
}

void AngleDial::turnTo(const QPointF& place) {
    const double angle = angleAt(place);
    if (angle_ == angle) return;
    setAngle(angle);
    emit turned(angle);
}

void AngleDial::mousePressEvent(QMouseEvent* event) {
    turnTo(event->position());
}

void AngleDial::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons().testFlag(Qt::LeftButton)) turnTo(event->position());
}

void AngleDial::paintEvent(QPaintEvent*) {
    const Theme& theme = Theme::of(this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF circle(center() - QPointF(radius(), radius()), QSizeF(2 * radius(), 2 * radius()));
    painter.setPen(QPen(theme.edge, 1.5));
    painter.drawArc(circle, 0, 180 * 16);
    painter.setFont(sized(this, 15));
    for (double angle = std::ceil(minimum_ / 10) * 10; angle <= maximum_; angle += 10) {
        const bool numbered = std::fmod(angle, longMark) == 0;
        const QPointF outward = (placeOf(angle) - center()) / radius();
        painter.setPen(QPen(theme.edge, numbered ? 2 : 1));
        painter.drawLine(placeOf(angle), placeOf(angle) - outward * (numbered ? markLength + 4 : markLength));
        if (!numbered) continue;
        painter.setPen(theme.quiet);
        const QSizeF room(grown(this, 40), grown(this, 20));
        const QPointF middle = placeOf(angle) + outward * grown(this, 14);
        painter.drawText(QRectF(middle - QPointF(room.width() / 2, room.height() / 2), room), Qt::AlignCenter,
                         QString::number(angle));
    }
    if (!angle_) return;
    painter.setPen(QPen(theme.spruce, 4, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(center(), placeOf(*angle_));
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.spruce);
    painter.drawEllipse(placeOf(*angle_), 10, 10);
    painter.drawEllipse(center(), 5, 5);
}

} // namespace rhizograph::app
