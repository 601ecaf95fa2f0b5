#pragma once

#include "shell/theme.h"

#include <QAbstractButton>

class QPainter;

namespace rhizograph::app {

/// Line drawings on buttons, 20 px, in the button's text color.
enum class Glyph {
    none,
    down,
    up,
    left,
    right,
    arrow,
    zoomIn,
    zoomOut,
    rings,
    printer,
    page,
    copy,
    close,
    undo,
    redo,
    lock,
    menu,
    search,
    plus,
    check,
    sides,
    trend
};

void paintGlyph(QPainter& painter, Glyph glyph, const QPointF& center, const QColor& color, qreal size = 20);

/// A button of our look: at least 44 px high, radius 10, outline 1.5, a ring when it has the keyboard.
class PlainButton : public QAbstractButton {
    Q_OBJECT

public:
    /// quiet: edge outline; action: spruce outline and text; primary: filled spruce; choice: quiet until
    /// checked; flat: no outline at all; tab: flat until checked, then a choice.
    enum class Kind { quiet, action, primary, choice, flat, tab };

    PlainButton(const QString& text, Kind kind, QWidget* parent = nullptr);
    void setGlyph(Glyph glyph, bool behindText = false);
    void setBold(bool bold);

    [[nodiscard]] QSize sizeHint() const override;
    /// Words break into lines in a button narrower than they are.
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;
    /// Room beside the text, on each side, at 100 % text.
    [[nodiscard]] virtual int padding() const { return 16; }
    /// Room the picture before the text needs.
    [[nodiscard]] virtual int pictureWidth() const;
    virtual void paintPicture(QPainter& painter, const QPointF& center, const QColor& ink);
    [[nodiscard]] const Theme& theme() const { return Theme::of(this); }

private:
    [[nodiscard]] QFont textFont() const;
    /// Room the picture and the edges leave the words of a button this wide, in px.
    [[nodiscard]] int wordRoom(int width) const;

    Kind kind_;
    Glyph glyph_ = Glyph::none;
    bool glyphBehind_ = false;
    bool bold_ = false;
};

/// The ring that shows where the keyboard is: 2 px ink, 2 px outside the shape.
void paintFocusRing(QPainter& painter, const QRectF& shape, qreal radius, const Theme& theme);

} // namespace rhizograph::app
