#pragma once

#include <QWidget>

namespace rhizograph::app {

/// A raised ground with a hairline border, radius 10.
class Card : public QWidget {
    Q_OBJECT

public:
    explicit Card(QWidget* parent = nullptr) : QWidget(parent) {}

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace rhizograph::app
