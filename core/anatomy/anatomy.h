#pragma once

#include "base/problem.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace rhizograph {

/// Index of a place where fibres can be damaged: a root or a nerve, in the order of the anatomy file.
using NodeIndex = std::size_t;

/// What fibres supply. Movements lose by motor severity, regions by sensory, reflexes by both.
enum class TargetKind { movement, region, reflex };

/// A strand of a target's supply: its share of the whole, and every node it runs through, root first.
struct Bundle {
    double share = 0;
    std::vector<NodeIndex> path;
};

/// A movement, skin region or reflex arc.
struct Target {
    std::string name; ///< without its kind: "ankle_dorsiflexion"
    TargetKind kind = TargetKind::movement;
    std::vector<Bundle> supply; ///< shares add to 1
    double distance = 0;        ///< 0 near the spine to 1 at the toes, for length-dependent loss
    double pyramidal = 0;       ///< weight of upper motor neuron weakness, movements only
    double reserve = 0;         ///< part of the loss a strong muscle hides from the hand
    std::string source;
};

/// The fibre graph: which roots and nerves carry what. Immutable after loading.
class Anatomy {
public:
    Anatomy() = default;
    Anatomy(std::vector<std::string> nodes, std::size_t roots, std::vector<Target> targets);

    [[nodiscard]] const std::vector<std::string>& nodes() const { return nodes_; }
    [[nodiscard]] bool isRoot(NodeIndex node) const { return node < roots_; }
    /// nodes().size() when there is none of that name.
    [[nodiscard]] NodeIndex node(std::string_view name) const;
    [[nodiscard]] const std::vector<Target>& targets() const { return targets_; }
    /// targets().size() when there is none.
    [[nodiscard]] std::size_t target(TargetKind kind, std::string_view name) const;

    /// Share of a target's fibres lost when each node has this severity in [0, 1]; result in [0, 1].
    [[nodiscard]] double fibreLoss(const Target& target, const std::vector<double>& severity) const;

private:
    std::vector<std::string> nodes_;
    std::size_t roots_ = 0;
    std::vector<Target> targets_;
    std::unordered_map<std::string, NodeIndex> nodeIndex_;
    std::unordered_map<std::string, std::size_t> targetIndex_;
};

/// Prefix of a target's name in the files: "movement", "region", "reflex".
[[nodiscard]] std::string_view name(TargetKind kind);

/// Loads anatomy.json: shares add to 1, every root, node and route exists, no node is an orphan.
Result<Anatomy> loadAnatomy(const std::filesystem::path& file);

} // namespace rhizograph
