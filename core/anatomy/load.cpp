#include "anatomy/anatomy.h"
#include "base/json.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <map>
#include <set>

namespace rhizograph {
namespace {

/// A node that some roots' fibres pass just before another node.
struct Join {
    std::string node;
    std::string before;
    std::vector<std::string> roots;
};

class Reader {
public:
    Reader(const nlohmann::json& json, const std::string& file, Problems& problems)
        : root_(json, file, problems) {}

    Anatomy read() {
        if (root_.at("format").string() != "rhizograph.anatomy")
            root_.fail("format is not rhizograph.anatomy");
        readNodes();
        readJoins();
        for (const auto& [routeName, route] : root_.at("routes").members())
            routes_[routeName] = readRoute(route);
        std::vector<Target> targets;
        std::set<std::string> seen;
        for (const JsonNode& node : root_.at("targets").items()) {
            if (!seen.insert(node.at("target").string()).second) node.fail("target named twice");
            targets.push_back(readTarget(node));
        }
        refuseOrphans(targets);
        return Anatomy{nodes_, roots_.size(), std::move(targets)};
    }

private:
    void readNodes() {
        roots_ = root_.at("roots").strings();
        nodes_ = roots_;
        for (const std::string& node : root_.at("nodes").strings())
            nodes_.push_back(node);
        if (std::set<std::string>(nodes_.begin(), nodes_.end()).size() != nodes_.size())
            root_.at("nodes").fail("a root or node is named twice");
    }

    void readJoins() {
        if (!root_.has("joins")) return;
        for (const JsonNode& node : root_.at("joins").items())
            joins_.push_back(
                {node.at("node").string(), node.at("before").string(), node.at("roots").strings()});
    }

    std::vector<std::string> readRoute(const JsonNode& route) {
        std::vector<std::string> names = route.strings();
        for (const std::string& nodeName : names)
            if (index(nodeName) == nodes_.size()) route.fail("no node named \"" + nodeName + "\"");
        return names;
    }

    NodeIndex index(const std::string& nodeName) const {
        return static_cast<NodeIndex>(std::find(nodes_.begin(), nodes_.end(), nodeName) - nodes_.begin());
    }

    std::vector<NodeIndex> path(const std::string& root, const std::vector<std::string>& route) const {
        std::vector<NodeIndex> out{index(root)};
        for (const std::string& step : route) {
            for (const Join& join : joins_)
                if (join.before == step && std::count(join.roots.begin(), join.roots.end(), root) > 0)
                    out.push_back(index(join.node));
            out.push_back(index(step));
        }
        return out;
    }

    std::vector<Bundle> readSupply(const JsonNode& node) {
        std::vector<Bundle> supply;
        double sum = 0;
        for (const JsonNode& entry : node.items()) {
            const auto parts = entry.items();
            if (parts.size() != 3) {
                entry.fail("should be [root, share, route]");
                continue;
            }
            const std::string root = parts[0].string();
            if (std::find(roots_.begin(), roots_.end(), root) == roots_.end()) parts[0].fail("no such root");
            const auto route = routes_.find(parts[2].string());
            if (route == routes_.end()) {
                parts[2].fail("no such route");
                continue;
            }
            const double share = parts[1].number();
            if (share <= 0 || share > 1) parts[1].fail("share is not above 0 and at most 1");
            sum += share;
            supply.push_back({share, path(root, route->second)});
        }
        if (std::abs(sum - 1) > 1e-9) node.fail(fmt::format("shares add to {}, not to 1", sum));
        return supply;
    }

    Target readTarget(const JsonNode& node) {
        Target target;
        const std::string full = node.at("target").string();
        const auto dot = full.find('.');
        const std::string kind = full.substr(0, dot);
        target.kind = kind == "region"   ? TargetKind::region
                      : kind == "reflex" ? TargetKind::reflex
                                         : TargetKind::movement;
        if (dot == std::string::npos || kind != name(target.kind))
            node.at("target").fail("kind of target unknown");
        else
            target.name = full.substr(dot + 1);
        target.supply = readSupply(node.at("supply"));
        target.distance = fraction(node.at("distance"));
        if (const auto pyramidal = node.find("pyramidal")) target.pyramidal = fraction(*pyramidal);
        if (const auto reserve = node.find("reserve")) target.reserve = fraction(*reserve);
        target.source = node.at("source").string();
        return target;
    }

    static double fraction(const JsonNode& node) {
        const double value = node.number();
        if (value < 0 || value > 1) node.fail("should lie between 0 and 1");
        return value;
    }

    void refuseOrphans(const std::vector<Target>& targets) const {
        std::set<NodeIndex> used;
        for (const Target& target : targets)
            for (const Bundle& bundle : target.supply)
                used.insert(bundle.path.begin(), bundle.path.end());
        for (NodeIndex i = 0; i < nodes_.size(); ++i)
            if (!used.contains(i)) root_.at("nodes").fail("\"" + nodes_[i] + "\" carries no fibres");
    }

    JsonNode root_;
    std::vector<std::string> roots_;
    std::vector<std::string> nodes_;
    std::vector<Join> joins_;
    std::map<std::string, std::vector<std::string>> routes_;
};

} // namespace

Result<Anatomy> loadAnatomy(const std::filesystem::path& file) {
    auto json = readJsonFile(file);
    if (!json) return json.problems();
    Problems problems;
    Anatomy anatomy = Reader{*json, file.string(), problems}.read();
    if (!problems.empty()) return problems;
    return anatomy;
}

} // namespace rhizograph
