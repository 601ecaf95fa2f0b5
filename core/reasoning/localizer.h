#pragma once

#include "reasoning/assessment.h"
#include "reasoning/posterior.h"

#include <filesystem>
#include <memory>
#include <set>
#include <string>
#include <vector>

namespace rhizograph {

/// Localization: posterior over sites, reasons, fit, disc levels and next tests of one exam.
class Localizer {
public:
    static Result<std::shared_ptr<const Localizer>> load(const std::filesystem::path& directory,
                                                         const Catalogue& catalogue);
    Localizer(Model model, const Catalogue& catalogue);

    /// Everything but the next tests, which cost more and can follow a frame later.
    void localize(const Exam& exam, Assessment& assessment) const;
    /// The unexamined items with what each would tell, best for its cost first.
    [[nodiscard]] std::vector<NextTest> nextTests(const Exam& exam) const;

    /// Probability of every site and side, in a fixed order; adds to 1.
    struct SiteProbability {
        SiteId site;
        Side side = Side::none;
        double probability = 0;
    };
    [[nodiscard]] std::vector<SiteProbability> posterior(const Exam& exam) const;

    /// Ids of all sites, those reported under another too.
    [[nodiscard]] std::set<std::string> siteNames() const;
    [[nodiscard]] const std::string* label(const SiteId& site) const;
    /// Skin regions of which the site takes at least `share` when complete, by name (for a drawn territory).
    [[nodiscard]] std::vector<std::string> territory(const SiteId& site, double share = 0.4) const;
    [[nodiscard]] const Engine& engine() const { return engine_; }

private:
    struct Reported {
        SiteId site;
        Side side = Side::none;
        std::vector<std::size_t> parts; ///< site-sides whose probability it sums
    };

    /// Log probability of one reading against what the hypothesis and the factor's other readings predict.
    struct Surprise {
        double observed = 0, mean = 0, variance = 0;
    };

    [[nodiscard]] Surprise surpriseOf(const Posterior& posterior, const Hypothesis& h, std::size_t factor,
                                      std::size_t slot) const;
    [[nodiscard]] bool sided(const SiteId& id) const;
    [[nodiscard]] double sum(const std::vector<double>& siteSides, const Reported& reported) const;
    [[nodiscard]] Support support(double probability) const;
    void addReasons(const Posterior& posterior, const Exam& exam, std::vector<SiteResult>& results,
                    const std::vector<std::size_t>& reportedIndex) const;
    [[nodiscard]] Fit fit(const Posterior& posterior, const Reported& best) const;
    [[nodiscard]] std::vector<Level> levels(const SiteId& site) const;
    [[nodiscard]] double cost(const Item& item) const;

    Engine engine_;
    const Catalogue* catalogue_;
    std::vector<Reported> reported_;
};

} // namespace rhizograph
