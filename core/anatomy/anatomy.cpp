#include "anatomy/anatomy.h"

namespace rhizograph {
namespace {

std::string fullName(TargetKind kind, std::string_view target) {
    return std::string{name(kind)} + "." + std::string{target};
}

} // namespace

std::string_view name(TargetKind kind) {
    switch (kind) {
    case TargetKind::movement:
        return "movement";
    case TargetKind::region:
        return "region";
    case TargetKind::reflex:
        break;
    }
    return "reflex";
}

Anatomy::Anatomy(std::vector<std::string> nodes, std::size_t roots, std::vector<Target> targets)
    : nodes_(std::move(nodes)), roots_(roots), targets_(std::move(targets)) {
    for (NodeIndex i = 0; i < nodes_.size(); ++i)
        nodeIndex_.emplace(nodes_[i], i);
    for (std::size_t i = 0; i < targets_.size(); ++i)
        targetIndex_.emplace(fullName(targets_[i].kind, targets_[i].name), i);
}

NodeIndex Anatomy::node(std::string_view nodeName) const {
    const auto found = nodeIndex_.find(std::string{nodeName});
    return found == nodeIndex_.end() ? nodes_.size() : found->second;
}

std::size_t Anatomy::target(TargetKind kind, std::string_view targetName) const {
    const auto found = targetIndex_.find(fullName(kind, targetName));
    return found == targetIndex_.end() ? targets_.size() : found->second;
}

double Anatomy::fibreLoss(const Target& target, const std::vector<double>& severity) const {
    double loss = 0;
    for (const Bundle& bundle : target.supply) {
        double kept = 1;
        for (const NodeIndex node : bundle.path)
            kept *= 1 - severity[node];
        loss += bundle.share * (1 - kept);
    }
    return loss;
}

} // namespace rhizograph
