#include "figures/figureart.h"

#include "base/json.h"

#include <limits>

namespace rhizograph::app {
namespace {

void append(Problems& all, const Problems& more) {
    all.insert(all.end(), more.begin(), more.end());
}

QPointF point(const JsonNode& node) {
    const auto numbers = node.numbers();
    if (numbers.size() != 2) {
        node.fail("a point needs two numbers");
        return {};
    }
    return {numbers[0], numbers[1]};
}

std::map<std::string, double> readAreas(const JsonNode& file) {
    std::map<std::string, double> areas;
    const JsonNode roundness = file.at("roundness");
    for (const auto& [view, regions] : file.at("areas").members()) {
        const double factor = roundness.at(view).number();
        for (const auto& [region, area] : regions.members()) {
            const double drawn = area.number();
            if (drawn <= 0) area.fail("an area is more than 0");
            areas.emplace(region, drawn * factor);
        }
    }
    return areas;
}

std::vector<KeyPoint> readKeyPoints(const JsonNode& file) {
    std::vector<KeyPoint> points;
    for (const auto& node : file.at("points").items()) {
        const auto view = figureViewNamed(node.at("view").string());
        if (!view) {
            node.at("view").fail("no such figure");
            continue;
        }
        points.push_back({node.at("id").string(), *view, node.at("region").string(), point(node.at("right")),
                          point(node.at("left")), node.at("where").string()});
    }
    return points;
}

} // namespace

std::string_view name(FigureView view) {
    switch (view) {
    case FigureView::front:
        return "front";
    case FigureView::back:
        return "back";
    case FigureView::sole:
        return "sole";
    case FigureView::saddle:
        return "saddle";
    }
    throw std::logic_error("no such figure");
}

std::optional<FigureView> figureViewNamed(std::string_view word) {
    for (const FigureView view : allFigureViews) {
        if (name(view) == word) return view;
    }
    return std::nullopt;
}

const RegionArt* ViewArt::find(const RegionKey& key) const {
    const auto found = std::ranges::find(regions, key, &RegionArt::key);
    return found == regions.end() ? nullptr : &*found;
}

const RegionArt* ViewArt::hit(const QPointF& point, double reach) const {
    for (const auto& region : regions) {
        if (region.path.contains(point)) return &region;
    }
    const RegionArt* nearest = nullptr;
    double distance = reach;
    for (const auto& region : regions) {
        const QRectF near = region.path.boundingRect().adjusted(-reach, -reach, reach, reach);
        if (!near.contains(point)) continue;
        if (const double here = distanceToBorder(region.border, point); here <= distance) {
            nearest = &region;
            distance = here;
        }
    }
    return nearest;
}

Result<FigureArt> FigureArt::load(const std::filesystem::path& directory) {
    FigureArt art;
    Problems problems;
    for (const FigureView view : allFigureViews) {
        const auto path = directory / (std::string(name(view)) + ".svg");
        const auto text = readTextFile(path);
        if (!text) {
            append(problems, text.problems());
            continue;
        }
        auto parsed = parseFigure(*text, view, path.string());
        if (!parsed) {
            append(problems, parsed.problems());
            continue;
        }
        art.views_.emplace(view, std::move(*parsed));
    }
    const auto areas = readJsonFile(directory / "areas.json");
    const auto points = readJsonFile(directory / "keypoints.json");
    if (!areas) append(problems, areas.problems());
    if (!points) append(problems, points.problems());
    if (!problems.empty()) return problems;

    art.areas_ = readAreas(JsonNode(*areas, (directory / "areas.json").string(), problems));
    art.keyPoints_ = readKeyPoints(JsonNode(*points, (directory / "keypoints.json").string(), problems));
    for (const auto& key : art.regions()) {
        if (!art.areas_.contains(key.region)) {
            problems.push_back(
                {(directory / "areas.json").string(), "/areas", "no area for the region " + key.region});
        }
    }
    for (const auto& keyPoint : art.keyPoints_) {
        if (art.view(keyPoint.view).find({keyPoint.region, Side::right}) == nullptr) {
            problems.push_back({(directory / "keypoints.json").string(), "point " + keyPoint.id,
                                "the figure has no region " + keyPoint.region});
        }
    }
    if (!problems.empty()) return problems;
    return art;
}

std::optional<FigureView> FigureArt::viewOf(const std::string& region) const {
    for (const auto& [view, art] : views_) {
        if (art.find({region, Side::right}) != nullptr) return view;
    }
    return std::nullopt;
}

double FigureArt::area(const std::string& region) const {
    const auto found = areas_.find(region);
    return found == areas_.end() ? 0 : found->second;
}

std::vector<RegionKey> FigureArt::regions() const {
    std::vector<RegionKey> keys;
    for (const FigureView view : allFigureViews) {
        for (const auto& region : views_.at(view).regions)
            keys.push_back(region.key);
    }
    return keys;
}

} // namespace rhizograph::app
