#pragma once

#include "catalogue/howto.h"

#include <QFrame>

namespace rhizograph::app {

/// A small sheet over the row: how the test is done, what counts, and where that comes from.
class HowToSheet : public QFrame {
    Q_OBJECT

public:
    HowToSheet(const Item& item, const HowTo& howTo, QWidget* parent);
    static HowToSheet* open(const Item& item, const HowTo& howTo, QWidget* over);

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace rhizograph::app
