#pragma once

#include <QAbstractButton>

namespace rhizograph::app {

/// A label with a switch at the right; 44 px high at least.
class SwitchRow : public QAbstractButton {
    Q_OBJECT

public:
    explicit SwitchRow(const QString& text, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace rhizograph::app
