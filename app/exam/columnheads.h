#pragma once

#include <QWidget>

namespace rhizograph::app {

/// "Right" and "Left" over the two blocks of buttons of a card; the patient's right is on the left whatever
/// the reading direction.
class ColumnHeads : public QWidget {
    Q_OBJECT

public:
    explicit ColumnHeads(QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
};

} // namespace rhizograph::app
