#pragma once

#include "casesreport/score.h"

namespace rhizograph::casesreport {

/// The baseline: a textbook vote. Every site gets points for findings a textbook expects there and loses some
/// for what it does not explain; no probabilities. Order of the list breaks ties.
class TextbookVote {
public:
    /// Throws std::runtime_error when the file is wrong: it is part of the tests.
    TextbookVote(const std::filesystem::path& file, const Catalogue& catalogue);

    /// Sites and sides by points, best first; `probability` holds the points.
    [[nodiscard]] std::vector<Ranked> rank(const Exam& exam) const;
    /// Rank of the first accepted site; 0 when nowhere.
    [[nodiscard]] std::size_t rankOfTruth(const Case& given) const;

private:
    struct Expected {
        SiteId site;
        bool both = false; ///< expected on both sides; else on one, the other side normal
        bool none = false;
        double start = 0;
        std::map<std::string, double> weights; ///< by item, "skin.region" for touch, pin and drawing alike
    };

    [[nodiscard]] double points(const Expected& expected, Side side, const Exam& exam) const;

    const Catalogue* catalogue_;
    std::vector<Expected> sites_;
};

} // namespace rhizograph::casesreport
