#pragma once

#include <optional>
#include <QWidget>

namespace rhizograph::app {

/// A protractor for one angle: the finger turns the hand round the half circle, in steps of five degrees. The
/// same number can be typed, so the dial takes no part in the keyboard's way.
class AngleDial : public QWidget {
    Q_OBJECT

public:
    /// Range in degrees; a range below zero starts at the left all the same.
    AngleDial(double minimum, double maximum, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<double> angle() const { return angle_; }
    /// Nothing is shown where there is none; outside the range the hand rests at its end.
    void setAngle(std::optional<double> angle);
    /// The angle at a place of the dial, rounded to the step; used by presses and tests alike.
    [[nodiscard]] double angleAt(const QPointF& place) const;
    /// Where the hand points at this angle.
    [[nodiscard]] QPointF placeOf(double angle) const;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

signals:
    void turned(double angle);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] QPointF center() const;
    [[nodiscard]] qreal radius() const;
    [[nodiscard]] double share(double angle) const { return (angle - minimum_) / (maximum_ - minimum_); }
    void turnTo(const QPointF& place);

    double minimum_;
    double maximum_;
    std::optional<double> angle_;
};

} // namespace rhizograph::app
