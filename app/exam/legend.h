#pragma once

#include "exam/cellpaint.h"

#include <QWidget>
#include <vector>

namespace rhizograph::app {

/// One line that says in words how the states of the buttons look.
class Legend : public QWidget {
    Q_OBJECT

public:
    /// `lastVisit` names the visit the ghost marks stand for; none are explained when empty.
    explicit Legend(const QString& lastVisit, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {100, sizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Entry {
        QString word;
        CellFace::State state;
        Look look;
        bool ghost;
    };
    std::vector<Entry> entries_;
};

} // namespace rhizograph::app
