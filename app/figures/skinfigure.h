#pragma once

#include "figures/figurecanvas.h"
#include "figures/stroke.h"

#include <functional>

class QLabel;

namespace rhizograph::app {

class PlainButton;
class Segmented;

/// Skin a root or nerve supplies, by the name people read.
struct Territory {
    QString name;
    std::vector<RegionKey> regions;
};

/// The skin figures of the examination: layers (light touch, pinprick), front, back, feet, soles and saddle.
/// A press moves a region on to its next state, a stroke paints what the first region became.
class SkinFigure : public QWidget {
    Q_OBJECT

public:
    SkinFigure(VisitSession& session, std::shared_ptr<const FigureArt> art, QWidget* parent = nullptr);

    /// Whether this item is a region of one of the layers here.
    [[nodiscard]] bool shows(const FindingKey& key) const;
    /// Brings the item's layer forward and puts the keyboard on its region.
    void goTo(const FindingKey& key);

    /// Territories the button offers, asked for each time it opens; the button is hidden when there are none
    /// to ask.
    void setTerritories(std::function<std::vector<Territory>()> territories);
    /// Ghosts the skin of a site over the figures; nothing when empty.
    void setTerritory(const Territory& territory);

    [[nodiscard]] FigureCanvas& canvas() { return *canvas_; }
    [[nodiscard]] const SkinLayer& layer() const { return layers_[static_cast<std::size_t>(layer_)]; }
    void setLayer(int index);

public slots:
    /// Marks as normal what is unexamined on this layer (bulk, one undo step), never the saddle.
    void fillRest();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitWords();
    void build();
    void begin(const RegionKey& region);
    void paintOver(const RegionKey& region);
    void end();
    void cancel();
    void typed(int key, const QString& text);
    void setValue(const RegionKey& region, std::optional<Value> value);
    void refresh(const std::vector<FindingKey>& keys);
    void updateWords();
    void showTerritories();
    void toggleZoom();
    [[nodiscard]] SkinMark mark(const RegionKey& region) const;
    [[nodiscard]] QString spoken(const RegionKey& region) const;

    VisitSession& session_;
    std::shared_ptr<const FigureArt> art_;
    std::vector<SkinLayer> layers_;
    int layer_ = 0;
    SkinStroke stroke_;
    std::function<std::vector<Territory>()> territories_;
    FigureCanvas* canvas_ = nullptr;
    Segmented* layerChoice_ = nullptr;
    PlainButton* territoryButton_ = nullptr;
    PlainButton* fillButton_ = nullptr;
    PlainButton* zoomButton_ = nullptr;
    QLabel* tally_ = nullptr;
    QLabel* area_ = nullptr;
};

/// Skin with less feeling (reduced or absent) on a layer, in about cm² of an average adult.
[[nodiscard]] double dullSkin(const SkinLayer& layer, const FigureArt& art, const Exam& exam);

/// "about 690 cm²": two figures, since the drawing is an average adult.
[[nodiscard]] QString aboutArea(double area);

} // namespace rhizograph::app
