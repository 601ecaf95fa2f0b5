#pragma once

#include "base/problem.h"
#include "exam/side.h"

#include <array>
#include <filesystem>
#include <map>
#include <optional>
#include <QPainterPath>
#include <QPolygonF>
#include <QRectF>
#include <string>
#include <string_view>
#include <vector>

namespace rhizograph::app {

/// The four drawings. The patient's right stands on the left in all but `back`, which is seen from behind.
enum class FigureView { front, back, sole, saddle };

inline constexpr std::array allFigureViews{FigureView::front, FigureView::back, FigureView::sole,
                                           FigureView::saddle};

/// "front", "back", "sole", "saddle": the words of the catalogue and the figure files.
[[nodiscard]] std::string_view name(FigureView view);
[[nodiscard]] std::optional<FigureView> figureViewNamed(std::string_view word);

/// A patch of skin on one side of the body.
struct RegionKey {
    std::string region;
    Side side = Side::right;
    auto operator<=>(const RegionKey&) const = default;
};

/// One region as drawn, in millimeters of its figure.
struct RegionArt {
    RegionKey key;
    QPainterPath path;
    std::vector<QPolygonF> border; ///< the path flattened, for distances
    QPointF label;                 ///< well inside the region
};

/// One drawing: everything in millimeters of its box.
struct ViewArt {
    FigureView view = FigureView::front;
    QRectF box;
    std::vector<RegionArt> regions;
    std::vector<QPainterPath> context; ///< drawn, not pressable
    std::vector<QPainterPath> shade;
    std::vector<QPainterPath> detail;
    std::vector<QPainterPath> outline;
    std::map<Side, QPainterPath> silhouette; ///< the whole half of the body

    [[nodiscard]] const RegionArt* find(const RegionKey& key) const;
    /// The region under a point, else the nearest whose border is within `reach` millimeters; null otherwise.
    [[nodiscard]] const RegionArt* hit(const QPointF& point, double reach) const;
};

/// Where to touch for one level of the international standard; positions in millimeters of the view.
struct KeyPoint {
    std::string id;
    FigureView view = FigureView::front;
    std::string region;
    QPointF right;
    QPointF left;
    std::string where;
};

/// The skin figures as loaded from resources/figures; immutable after loading.
class FigureArt {
public:
    /// Reads the four drawings, areas.json and keypoints.json; every problem at once with file and place.
    static Result<FigureArt> load(const std::filesystem::path& directory);

    [[nodiscard]] const ViewArt& view(FigureView view) const { return views_.at(view); }
    /// The drawing that shows this region; none when there is no such region.
    [[nodiscard]] std::optional<FigureView> viewOf(const std::string& region) const;
    /// About how much skin one side's region covers, in cm² of an average adult; 0 when there is no such
    /// region.
    [[nodiscard]] double area(const std::string& region) const;
    [[nodiscard]] const std::vector<KeyPoint>& keyPoints() const { return keyPoints_; }
    /// Every region of both sides, in the order of the drawings.
    [[nodiscard]] std::vector<RegionKey> regions() const;

private:
    std::map<FigureView, ViewArt> views_;
    std::map<std::string, double> areas_;
    std::vector<KeyPoint> keyPoints_;
};

/// Reads one drawing from SVG text made of paths with absolute M, C and Z only; `file` stands in problems.
Result<ViewArt> parseFigure(std::string_view svg, FigureView view, const std::string& file);

/// Reads the path data of one `d` attribute; the reason when it holds anything but absolute M, C and Z.
Result<QPainterPath> parsePathData(QStringView data, const std::string& file, const std::string& place);

/// Distance from a point to the nearest edge of a flattened border.
[[nodiscard]] double distanceToBorder(const std::vector<QPolygonF>& border, const QPointF& point);

} // namespace rhizograph::app
