#include "figures/figureart.h"

#include <cmath>
#include <limits>
#include <QXmlStreamReader>
#include <set>

namespace rhizograph::app {
namespace {

std::vector<QPolygonF> flattened(const QPainterPath& path) {
    const auto polygons = path.toSubpathPolygons();
    return {polygons.begin(), polygons.end()};
}

bool insideBorder(const std::vector<QPolygonF>& border, const QPointF& point) {
    return std::ranges::any_of(
        border, [&](const QPolygonF& polygon) { return polygon.containsPoint(point, Qt::WindingFill); });
}

/// The point of a coarse grid over the region that lies deepest inside it.
QPointF deepestPoint(const QPainterPath& path, const std::vector<QPolygonF>& border) {
    constexpr int steps = 12;
    const QRectF box = path.boundingRect();
    QPointF best = box.center();
    double depth = -1;
    for (int row = 1; row < steps; ++row) {
        for (int column = 1; column < steps; ++column) {
            const QPointF point(box.left() + box.width() * column / steps,
                                box.top() + box.height() * row / steps);
            if (!insideBorder(border, point)) continue;
            const double here = distanceToBorder(border, point);
            if (here > depth) {
                depth = here;
                best = point;
            }
        }
    }
    return best;
}

/// Sorts the paths of one drawing by what their ids say they are.
class FigureReader {
public:
    FigureReader(std::string_view svg, FigureView view, std::string file)
        : xml_(QByteArray::fromRawData(svg.data(), static_cast<qsizetype>(svg.size()))),
          file_(std::move(file)) {
        art_.view = view;
    }

    Result<ViewArt> read() {
        while (!xml_.atEnd()) {
            if (xml_.readNext() != QXmlStreamReader::StartElement) continue;
            if (xml_.name() == u"svg") {
                readBox();
            } else if (xml_.name() == u"path") {
                readPath();
            }
        }
        if (xml_.hasError()) fail(xml_.errorString().toStdString());
        checkSides();
        if (!problems_.empty()) return problems_;
        return std::move(art_);
    }

private:
    [[nodiscard]] std::string place() const { return "line " + std::to_string(xml_.lineNumber()); }
    void fail(std::string reason) { problems_.push_back({file_, place(), std::move(reason)}); }

    void readBox() {
        const auto parts = xml_.attributes().value("viewBox").toString().split(u' ', Qt::SkipEmptyParts);
        bool ok = parts.size() == 4;
        std::array<double, 4> numbers{};
        for (int i = 0; ok && i < 4; ++i) {
            numbers[static_cast<std::size_t>(i)] = parts[i].toDouble(&ok);
        }
        if (!ok || !(numbers[2] > 0) || !(numbers[3] > 0)) {
            fail("viewBox needs four numbers with a positive width and height");
            return;
        }
        art_.box = {numbers[0], numbers[1], numbers[2], numbers[3]};
    }

    void readPath() {
        const auto attributes = xml_.attributes();
        const std::string id = attributes.value("id").toString().toStdString();
        auto path = parsePathData(attributes.value("d"), file_, place() + ", path " + id);
        if (!path) {
            problems_.insert(problems_.end(), path.problems().begin(), path.problems().end());
            return;
        }
        if (!seen_.insert(id).second) {
            fail("the id " + id + " stands twice");
            return;
        }
        sortIn(id, std::move(*path));
    }

    void sortIn(const std::string& id, QPainterPath path) {
        const auto dot = id.find('.');
        const std::string head = id.substr(0, dot);
        const std::string tail = dot == std::string::npos ? "" : id.substr(dot + 1);
        const auto side = sideNamed(head);
        if (side == Side::left || side == Side::right) {
            addRegion({tail, *side}, std::move(path));
        } else if (head == "context") {
            art_.context.push_back(std::move(path));
        } else if (head == "shade") {
            art_.shade.push_back(std::move(path));
        } else if (head == "detail") {
            art_.detail.push_back(std::move(path));
        } else if (head == "outline") {
            art_.outline.push_back(std::move(path));
        } else if (const auto half = sideNamed(tail); head == "silhouette" && half) {
            art_.silhouette.emplace(*half, std::move(path));
        } else {
            fail("the id \"" + id +
                 "\" is none of right., left., context., shade., detail., outline., silhouette.");
        }
    }

    void addRegion(RegionKey key, QPainterPath path) {
        if (key.region.empty()) {
            fail("a region has no name");
            return;
        }
        auto border = flattened(path);
        const QPointF label = deepestPoint(path, border);
        art_.regions.push_back({std::move(key), std::move(path), std::move(border), label});
    }

    void checkSides() {
        if (!problems_.empty()) return;
        if (art_.box.isEmpty()) fail("there is no svg element with a viewBox");
        if (art_.regions.empty()) fail("there are no regions");
        for (const auto& region : art_.regions) {
            if (art_.find({region.key.region, mirrored(region.key.side)}) == nullptr) {
                fail("the region " + region.key.region + " has no twin on the other side");
            }
        }
        for (const Side side : {Side::left, Side::right}) {
            if (!art_.silhouette.contains(side))
                fail("silhouette." + std::string(name(side)) + " is missing");
        }
    }

    QXmlStreamReader xml_;
    std::string file_;
    ViewArt art_;
    Problems problems_;
    std::set<std::string> seen_;
};

double distanceToEdge(const QPointF& from, const QPointF& to, const QPointF& point) {
    const QPointF edge = to - from;
    const double length = QPointF::dotProduct(edge, edge);
    const double along =
        length > 0 ? std::clamp(QPointF::dotProduct(point - from, edge) / length, 0.0, 1.0) : 0.0;
    const QPointF off = point - (from + along * edge);
    return std::hypot(off.x(), off.y());
}

} // namespace

double distanceToBorder(const std::vector<QPolygonF>& border, const QPointF& point) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const auto& polygon : border) {
        for (qsizetype i = 0; i + 1 < polygon.size(); ++i) {
            nearest = std::min(nearest, distanceToEdge(polygon[i], polygon[i + 1], point));
        }
    }
    return nearest;
}

Result<ViewArt> parseFigure(std::string_view svg, FigureView view, const std::string& file) {
    return FigureReader(svg, view, file).read();
}

} // namespace rhizograph::app
