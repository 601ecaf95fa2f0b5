#pragma once

#include "figures/figurepainter.h"
#include "parts/cells.h"

#include <memory>
#include <QPixmap>
#include <QTimer>
#include <QWidget>
#include <set>

class QGestureEvent;

namespace rhizograph::app {

/// One figure, or a cut from one, placed on the canvas. Right and Left are written below the sides it shows.
struct FigurePanel {
    FigureView view = FigureView::front;
    QRectF source;           ///< millimeters of the view
    QRectF target;           ///< canvas pixels at no zoom, for the figure alone
    std::vector<Side> sides; ///< which sides it shows and names
    QString title;           ///< above it, at its left
    QString note;            ///< below the names of the sides
    bool detail = false;     ///< an enlargement of a part that another panel shows whole
};

struct FigureLayout {
    std::vector<FigurePanel> panels;
    std::vector<QLineF> dividers;
};

/// Paints figures and turns fingers, mouse and keys into regions. It knows no findings: what a region wears
/// and how it reads comes from outside, what was pressed goes out as a stroke.
class FigureCanvas : public QWidget, public CellHost {
    Q_OBJECT

public:
    using Layouter = std::function<FigureLayout(const QSizeF&, qreal textScale)>;
    using Speaker = std::function<QString(const RegionKey&)>;

    FigureCanvas(std::shared_ptr<const FigureArt> art, Layouter layouter, QWidget* parent = nullptr);

    void setName(const QString& name) { name_ = name; }
    void setMarks(MarkOf marks);
    void setSpeaker(Speaker speaker) { speaker_ = std::move(speaker); }
    /// Regions that can be pressed; the rest is drawn bare.
    void setPressable(std::function<bool(const RegionKey&)> pressable);
    void setReadOnly(bool readOnly);
    /// Repaints these regions only.
    void refresh(const std::vector<RegionKey>& regions);
    void refreshAll();

    /// Replaces the words below this figure ("not examined"); the layout's own when empty.
    void setNote(FigureView view, const QString& note);
    /// The dashed outline of a territory; none when empty.
    void setTerritory(std::vector<RegionKey> territory);
    [[nodiscard]] const std::vector<RegionKey>& territory() const { return territory_; }
    void setKeyPointsShown(bool shown);
    [[nodiscard]] bool keyPointsShown() const { return keyPointsShown_; }

    void focusRegion(const RegionKey& region);
    [[nodiscard]] std::optional<RegionKey> focusedRegion() const;
    /// The region a press at this place counts for: the one under it, else the nearest within 12 px.
    [[nodiscard]] std::optional<RegionKey> regionAt(const QPointF& position) const;
    /// A place that lies inside the region, on its largest picture; empty when it is not shown.
    [[nodiscard]] std::optional<QPointF> placeOf(const RegionKey& region) const;

    [[nodiscard]] qreal zoom() const { return zoom_; }
    void setZoom(qreal zoom, const QPointF& about);
    /// Fills the canvas with one panel.
    void zoomTo(const FigurePanel& panel);
    void resetZoom();
    [[nodiscard]] const FigureLayout& figureLayout() const { return layout_; }

    [[nodiscard]] QString hostName() const override { return name_; }
    [[nodiscard]] int cellCount() const override { return static_cast<int>(cells_.size()); }
    [[nodiscard]] Cell cell(int index) const override;
    [[nodiscard]] int cellAt(const QPoint& position) const override;
    [[nodiscard]] int focusedCell() const override { return focus_; }
    void focusCell(int index) override;
    void pressCell(int index) override;

signals:
    void strokeBegan(const rhizograph::app::RegionKey& region);
    void strokeMovedOver(const rhizograph::app::RegionKey& region);
    void strokeEnded();
    void strokeCancelled();
    void keyTyped(int key, const QString& text); ///< with a region in focus; digits and letters
    void zoomChanged(qreal zoom);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Picture { ///< one region on one panel, as placed on the canvas now
        std::size_t panel;
        const RegionArt* art;
        QPainterPath path;
    };

    void place();
    void render(const QRegion& dirty);
    void paintPanel(QPainter& painter, const FigurePanel& panel, const QRectF& dirty);
    void paintWords(QPainter& painter, const FigurePanel& panel);
    void paintOverlays(QPainter& painter, const QRect& dirty);
    void paintTerritory(QPainter& painter);
    void paintKeyPoints(QPainter& painter);
    void strokeTo(const QPointF& position);
    void longPress();
    bool pinch(QGestureEvent* event);
    void pan(const QPointF& by);
    void moveFocus(int key);
    void setHover(std::optional<RegionKey> region);
    [[nodiscard]] QTransform transformOf(const FigurePanel& panel) const;
    [[nodiscard]] QRectF placed(const QRectF& target) const;
    [[nodiscard]] QRect extent(const RegionKey& region) const;
    /// The largest picture of the region; null when it is not shown.
    [[nodiscard]] const Picture* mainPicture(const RegionKey& region) const;
    [[nodiscard]] const FigurePanel* detailOf(const RegionKey& region) const;
    [[nodiscard]] bool pressable(const RegionKey& region) const { return !pressable_ || pressable_(region); }
    [[nodiscard]] const Theme& theme() const;

    std::shared_ptr<const FigureArt> art_;
    Layouter layouter_;
    QString name_;
    MarkOf marks_;
    Speaker speaker_;
    std::function<bool(const RegionKey&)> pressable_;
    FigureLayout layout_;
    std::vector<Picture> pictures_;
    std::vector<RegionKey> cells_; ///< pressable regions that show, in reading order
    QPixmap cache_;
    std::optional<ThemeName> cachedTheme_;
    std::map<FigureView, QString> notes_;
    std::vector<RegionKey> territory_;
    std::map<FigureView, QPainterPath> territoryUnion_;
    bool keyPointsShown_ = false;
    bool readOnly_ = false;
    int focus_ = -1;
    std::optional<RegionKey> hover_;
    std::optional<RegionKey> stroke_; ///< the region the stroke is over
    QPointF strokeFrom_;
    bool stroking_ = false;
    bool panning_ = false;
    QPointF panFrom_;
    QTimer longPress_;
    qreal zoom_ = 1;
    QPointF offset_; ///< canvas pixels by which the zoomed picture is moved
};

} // namespace rhizograph::app
