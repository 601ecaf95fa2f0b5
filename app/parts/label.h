#pragma once

#include "shell/theme.h"

#include <QLabel>

namespace rhizograph::app {

/// Words on a screen, in a size of the layout and a role of the theme; follows both when they change.
class Label : public QLabel {
    Q_OBJECT

public:
    enum class Tone { ink, quiet, warning, brick, spruce };

    Label(const QString& text, int pixels, QFont::Weight weight = QFont::Normal, Tone tone = Tone::ink,
          QWidget* parent = nullptr);
    void setTone(Tone tone);
    /// Words that do not fit end in an ellipsis, on one line; the whole text stands in the tip and for
    /// assistive programs.
    void setElided(bool elided);
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void dress();

    int pixels_;
    QFont::Weight weight_;
    Tone tone_;
    bool dressing_ = false;
    bool elided_ = false;
};

} // namespace rhizograph::app
