// The anatomy held beside the International Standards for Neurological Classification of Spinal Cord Injury
// (American Spinal Injury Association and International Spinal Cord Society, revision of 2019): key muscles
// from memory, key sensory points as the figures hold them (read second hand).
#include "checks/safety/levels.h"

#include <gmock/gmock.h>
#include <map>

namespace rhizograph::safety {
namespace {

/// Share of each root in the supply of a target.
std::map<std::string, double> supply(const std::string& target) {
    const auto json = readJsonFile(testing::knowledgeDirectory() / "anatomy.json");
    std::map<std::string, double> shares;
    for (const auto& each : json->at("targets")) {
        if (each.at("target") != target) continue;
        for (const auto& bundle : each.at("supply"))
            shares[bundle.at(0)] += bundle.at(1).get<double>();
    }
    return shares;
}

std::string strongest(const std::map<std::string, double>& shares) {
    std::string best;
    for (const auto& [root, share] : shares)
        if (best.empty() || share > shares.at(best)) best = root;
    return best;
}

TEST(CordStandard, EachKeyMuscleIsMovedByTheRootItStandsFor) {
    const std::map<std::string, std::string> keys = {{"L2", "movement.hip_flexion"},
                                                     {"L3", "movement.knee_extension"},
                                                     {"L5", "movement.great_toe_extension"},
                                                     {"S1", "movement.ankle_plantarflexion"}};
    for (const auto& [root, movement] : keys)
        EXPECT_EQ(strongest(supply(movement)), root) << movement;
}

// The standard takes ankle dorsiflexion for L4; studies of single roots give L5 the larger part. Both must be
// large.
TEST(CordStandard, AnkleDorsiflexionIsSharedByTheRootOfTheStandardAndTheOneBelow) {
    const auto shares = supply("movement.ankle_dorsiflexion");
    EXPECT_GE(shares.at("L4"), 1.0 / 3);
    EXPECT_GE(shares.at("L5"), 1.0 / 3);
    EXPECT_GE(shares.at("L4") + shares.at("L5"), 0.9);
}

TEST(CordStandard, EachKeySensoryPointLiesInARegionOfItsRoot) {
    const auto points =
        readJsonFile(std::filesystem::path{RHIZOGRAPH_RESOURCES} / "figures" / "keypoints.json");
    // Where the region is wider than the point: the root of the point must still hold a quarter of it or, at
    // the groin, be present; the whole region is recorded with one answer.
    const std::map<std::string, double> wider = {{"T12", 0.1}, {"L2", 0.4}, {"S3", 0.25}};
    int checked = 0;
    for (const auto& point : points->at("points")) {
        const std::string root = point.at("id");
        const std::string region = point.at("region");
        const auto shares = supply("region." + region);
        ASSERT_FALSE(shares.empty()) << region;
        ++checked;
        if (wider.contains(root)) {
            EXPECT_GE(shares.contains(root) ? shares.at(root) : 0, wider.at(root))
                << root << " in " << region;
            continue;
        }
        const std::string best = strongest(shares);
        EXPECT_TRUE(best == root || root.find(best) != std::string::npos)
            << root << " in " << region << " is mostly " << best;
    }
    EXPECT_GE(checked, 9);
}

} // namespace
} // namespace rhizograph::safety
