#pragma once

#include <QAbstractButton>
#include <QElapsedTimer>
#include <QTimer>

namespace rhizograph::app {

/// Does its work only after being held for 600 ms, or after Enter twice: what must not happen by accident.
/// Assistive programs press it once, since they say before what they press.
class HoldButton : public QAbstractButton {
    Q_OBJECT

public:
    static constexpr int holdMilliseconds = 600;

    explicit HoldButton(QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

signals:
    void confirmed();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    void stop();

    QTimer beat_;
    QElapsedTimer held_;
    bool holding_ = false;
    bool armed_ = false; ///< Enter was pressed once
};

} // namespace rhizograph::app
