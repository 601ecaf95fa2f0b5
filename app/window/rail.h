#pragma once

#include "parts/button.h"
#include "parts/cells.h"

#include <QWidget>
#include <vector>

namespace rhizograph::app {

/// One place of the rail: a step with its ring, or a page with its drawing.
struct RailPlace {
    QString label;
    Glyph glyph = Glyph::none; ///< none: a step with a ring
    int shown = 0;             ///< items that count in the ring
    int recorded = 0;
    enum class Mark { none, abnormal, redSign } mark = Mark::none;
    [[nodiscard]] bool step() const { return glyph == Glyph::none; }
};

/// The steps and pages of the visit: down the left edge, or along the bottom in portrait.
class Rail : public QWidget, public CellHost {
    Q_OBJECT

public:
    explicit Rail(QWidget* parent = nullptr);

    void setPlaces(std::vector<RailPlace> places);
    [[nodiscard]] const std::vector<RailPlace>& places() const { return places_; }
    void setAtBottom(bool atBottom);
    void setChosen(int index);
    [[nodiscard]] int chosen() const { return chosen_; }
    /// Width at the left, height at the bottom.
    [[nodiscard]] int thickness() const;

    [[nodiscard]] QString hostName() const override { return tr("Steps of the visit"); }
    [[nodiscard]] int cellCount() const override { return static_cast<int>(places_.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return hasFocus() ? focus_ : -1; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void wanted(int index);

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QRect rectOf(int index) const;
    [[nodiscard]] int widestWord() const; ///< the first words of the labels, in px
    [[nodiscard]] int rows() const;       ///< two where the labels need it, at the bottom only
    [[nodiscard]] QString fittingLabel(const QString& label, const QFontMetrics& metrics, int width) const;
    void paintPlace(QPainter& painter, int index) const;
    void paintRing(QPainter& painter, const RailPlace& place, const QPointF& center) const;
    void paintMark(QPainter& painter, const RailPlace& place, const QPointF& corner) const;

    std::vector<RailPlace> places_;
    bool atBottom_ = false;
    int chosen_ = 0;
    int focus_ = 0;
};

} // namespace rhizograph::app
