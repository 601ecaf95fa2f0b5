#pragma once

#include "figures/figurepainter.h"
#include "parts/button.h"

#include <QWidget>
#include <vector>

namespace rhizograph::app {

/// A small patch that shows what a mark looks like.
void paintSwatch(QPainter& painter, const QRectF& box, SkinMark mark, const Theme& theme);

/// A choice button with a swatch before its word.
class MarkButton : public PlainButton {
    Q_OBJECT

public:
    MarkButton(const QString& text, SkinMark mark, QWidget* parent = nullptr);

protected:
    [[nodiscard]] int padding() const override { return 11; }
    [[nodiscard]] int pictureWidth() const override;
    void paintPicture(QPainter& painter, const QPointF& center, const QColor& ink) override;

private:
    SkinMark mark_;
};

/// Swatches with their words, in as many rows as they need, and a hint at the right where there is room.
class MarkLegend : public QWidget {
    Q_OBJECT

public:
    struct Entry {
        SkinMark mark;
        QString word;
    };
    MarkLegend(std::vector<Entry> entries, const QString& hint, QWidget* parent = nullptr);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int entriesWidth() const;
    [[nodiscard]] int entryWidth(const Entry& entry) const;
    [[nodiscard]] std::vector<QPoint> places(int width) const;

    std::vector<Entry> entries_;
    QString hint_;
};

} // namespace rhizograph::app
