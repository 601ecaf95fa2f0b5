#pragma once

#include <QColor>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QRectF>
#include <QString>
#include <QTextItem>
#include <QWidget>
#include <vector>

namespace rhizograph::app::testing {

/// A piece of text as a widget drew it, in the widget's coordinates.
struct DrawnText {
    QString text;
    QRectF box;  ///< of the letters, from their ascent to their descent
    QRectF clip; ///< what the painter let through; empty where it did not clip
    QColor color;
    bool upright = true; ///< not turned
};

/// Takes down the texts that are drawn and draws nothing.
class TextEngine final : public QPaintEngine {
public:
    TextEngine() : QPaintEngine(AllFeatures) {}

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    [[nodiscard]] Type type() const override { return User; }
    void updateState(const QPaintEngineState& now) override {
        if (now.state().testFlag(DirtyTransform)) transform_ = now.transform();
    }
    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        if (item.text().trimmed().isEmpty()) return;
        DrawnText text;
        text.text = item.text();
        // Blanks at the end of a broken line take no room on the screen.
        const QFontMetricsF metrics(item.font());
        QString bare = text.text;
        while (bare.endsWith(u' '))
            bare.chop(1);
        const qreal width = bare.size() < text.text.size() ? metrics.horizontalAdvance(bare) : item.width();
        text.box =
            transform_.mapRect(QRectF(at.x(), at.y() - item.ascent(), width, item.ascent() + item.descent()));
        const QPainter* by = painter();
        if (by->hasClipping()) text.clip = transform_.mapRect(by->clipBoundingRect());
        text.color = by->pen().color();
        text.upright = transform_.type() <= QTransform::TxScale;
        texts.push_back(std::move(text));
    }
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {}
    void drawTiledPixmap(const QRectF&, const QPixmap&, const QPointF&) override {}
    void drawPath(const QPainterPath&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
    void drawPolygon(const QPoint*, int, PolygonDrawMode) override {}
    void drawRects(const QRect*, int) override {}
    void drawRects(const QRectF*, int) override {}
    void drawLines(const QLine*, int) override {}
    void drawLines(const QLineF*, int) override {}
    void drawEllipse(const QRectF&) override {}
    void drawPoints(const QPointF*, int) override {}

    std::vector<DrawnText> texts;

private:
    QTransform transform_;
};

/// A sheet of the size of one widget that only texts leave a trace on.
class TextSheet final : public QPaintDevice {
public:
    explicit TextSheet(const QSize& size) : size_(size) {}
    [[nodiscard]] QPaintEngine* paintEngine() const override { return &engine_; }
    [[nodiscard]] const std::vector<DrawnText>& texts() const { return engine_.texts; }

protected:
    [[nodiscard]] int metric(PaintDeviceMetric what) const override {
        switch (what) {
        case PdmWidth:
            return size_.width();
        case PdmHeight:
            return size_.height();
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY:
            return 96;
        case PdmDevicePixelRatio:
            return 1;
        case PdmDepth:
            return 32;
        default:
            return QPaintDevice::metric(what);
        }
    }

private:
    QSize size_;
    mutable TextEngine engine_;
};

/// The texts this widget itself draws, without its children.
inline std::vector<DrawnText> textsOf(QWidget& widget) {
    TextSheet sheet(widget.size());
    widget.render(&sheet, {}, {}, {});
    return sheet.texts();
}

} // namespace rhizograph::app::testing
