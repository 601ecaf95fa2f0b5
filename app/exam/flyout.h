#pragma once

#include "catalogue/scale.h"
#include "exam/exam.h"

#include <QFrame>
#include <string>
#include <vector>

namespace rhizograph::app {

/// The outermost grades of a row, opened above the button that stands for them.
class Flyout : public QFrame {
    Q_OBJECT

public:
    /// `current` may be null.
    Flyout(const Scale& scale, const std::vector<std::string>& tokens, const Finding* current,
           QWidget* parent);
    /// Above this cell of the parent, below it where the screen ends.
    void openAbove(const QRect& cell);

signals:
    void chosen(const QString& token);

protected:
    void paintEvent(QPaintEvent* event) override;
};

/// Keeps a popup of this size on the screen of `widget`, above or below the place (widget coordinates).
[[nodiscard]] QPoint popupPlace(const QWidget* widget, const QRect& place, const QSize& size, bool above);

} // namespace rhizograph::app
