#pragma once

#include "figures/figurecanvas.h"
#include "figures/stroke.h"

class QButtonGroup;
class QLabel;

namespace rhizograph::app {

/// The patient's drawing: choose a mark, then paint it on the skin with a finger or pen. Rubbing out takes a
/// mark away again and leaves the region as if it had never been marked.
class PainDrawing : public QWidget {
    Q_OBJECT

public:
    PainDrawing(VisitSession& session, std::shared_ptr<const FigureArt> art, QWidget* parent = nullptr);

    [[nodiscard]] bool shows(const FindingKey& key) const { return layer_.region(key).has_value(); }
    void goTo(const FindingKey& key);
    [[nodiscard]] FigureCanvas& canvas() { return *canvas_; }
    [[nodiscard]] const SkinLayer& layer() const { return layer_; }
    /// The brush: a value of the layer's scale, or rub out.
    void setBrush(std::optional<Value> brush);
    [[nodiscard]] const std::optional<Value>& brush() const { return brush_; }

private:
    void build();
    void begin(const RegionKey& region);
    void end();
    void typed(int key, const QString& text);
    void refresh(const std::vector<FindingKey>& keys);
    void updateWords();
    [[nodiscard]] SkinMark mark(const RegionKey& region) const;

    VisitSession& session_;
    std::shared_ptr<const FigureArt> art_;
    SkinLayer layer_;
    std::vector<std::optional<Value>> brushes_; ///< in the order of the buttons
    std::optional<Value> brush_;
    SkinStroke stroke_;
    FigureCanvas* canvas_ = nullptr;
    QButtonGroup* choice_ = nullptr;
    QLabel* hint_ = nullptr;
};

} // namespace rhizograph::app
