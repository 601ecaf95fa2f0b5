// A weaker grade speaks for more loss: what holds of it for every lesion, and for every site that expects it.
#include "reasoning/knowledge.h"
#include "reasoning/localizer.h"
#include "support/randomexam.h"

#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace rhizograph {
namespace {

const Knowledge& knowledge() {
    static const Result<Knowledge> loaded = Knowledge::load(RHIZOGRAPH_RESOURCES "/knowledge");
    return *loaded;
}

const Engine& engine() {
    return knowledge().localizer().engine();
}

/// One graded movement of one side, and P(grade | hypothesis) when nothing else of that side is graded.
class Graded {
public:
    Graded(const Item& item, Side side)
        : item_(&item), side_(side), place_(*engine().place({item.id, side})) {}

    [[nodiscard]] FindingKey key() const { return {item_->id, side_}; }
    [[nodiscard]] std::size_t grades() const { return item_->scale.values.size(); }
    [[nodiscard]] Value grade(std::size_t index) const {
        return Value::token(item_->scale.values[index].token);
    }

    [[nodiscard]] std::vector<double> probabilities(const Hypothesis& h) const {
        const Factor& factor = *engine().factors()[place_.factor];
        std::vector<int> values(factor.slots().size(), kUnread);
        std::vector<double> out;
        for (std::size_t v = 0; v < grades(); ++v) {
            values[place_.slot] = static_cast<int>(v);
            out.push_back(factor.probability(engine().features(place_.factor, h), values, Setting{}));
        }
        return out;
    }

private:
    const Item* item_;
    Side side_;
    Engine::Place place_;
};

/// Every item of the grades from 0 to 5 that is read as strength, on each side.
const std::vector<Graded>& allGraded() {
    static const std::vector<Graded> all = [] {
        std::vector<Graded> out;
        for (const Item& item : knowledge().catalogue().items())
            if (item.id.text().rfind(engine().model().strength.prefix, 0) == 0 &&
                item.scale.values.size() == 8)
                for (const Side side : {Side::left, Side::right})
                    out.emplace_back(item, side);
        return out;
    }();
    return all;
}

TEST(StrengthProperties, AWorseLesionMakesEveryWeakerGradeMoreLikely) {
    std::size_t compared = 0;
    const Grid& grid = engine().grid();
    for (const Graded& graded : allGraded())
        for (std::size_t block = 0; block < grid.blocks().size(); ++block)
            for (std::size_t motor = 1; motor < grid.motorLevels(); ++motor) {
                const auto milder = graded.probabilities({block, motor - 1, 0, 0});
                const auto worse = graded.probabilities({block, motor, 0, 0});
                double atMostMilder = 0, atMostWorse = 0; // P(this grade or a weaker one)
                for (std::size_t v = 0; v < graded.grades(); ++v) {
                    atMostMilder += milder[v];
                    atMostWorse += worse[v];
                    ASSERT_GE(atMostWorse, atMostMilder - 1e-12)
                        << graded.key().item.text() << ' ' << graded.grade(v).word();
                    ++compared;
                }
            }
    EXPECT_GT(compared, 100000U);
    std::printf("worse lesions: %zu comparisons\n", compared);
}

using SiteSideName = std::pair<SiteId, Side>;

/// Grades that some lesion of a site makes more likely than any other grade.
std::map<SiteSideName, std::vector<bool>> expectedGrades(const Graded& graded) {
    std::map<SiteSideName, std::vector<bool>> out;
    const auto prior = engine().grid().logPrior(std::nullopt);
    engine().forHypotheses([&](std::size_t index, const Hypothesis& h) {
        if (!std::isfinite(prior[index])) return;
        const Block& block = engine().grid().blocks()[h.block];
        auto& expected = out[{engine().model().sites[block.site].reportAs, block.side}];
        expected.resize(graded.grades());
        const auto p = graded.probabilities(h);
        expected[static_cast<std::size_t>(std::max_element(p.begin(), p.end()) - p.begin())] = true;
    });
    return out;
}

/// An exam of items that say nothing about how severe a lesion is.
Exam anyExamWithoutSeverity() {
    const Exam any = *rhizograph::testing::anyExam(knowledge().catalogue());
    Exam out;
    out.subject = any.subject;
    for (const auto& [key, finding] : any.findings()) {
        const auto* place = engine().place(key);
        if (!place || engine().changesSetting(key)) continue;
        const Depends& on = engine().factors()[place->factor]->depends();
        if (!on.motor && !on.sensory) out.set(key, finding);
    }
    return out;
}

/// Odds of each site against "no lesion" for each grade of one movement.
std::vector<std::map<SiteSideName, double>> oddsByGrade(const Graded& graded, Exam exam) {
    std::vector<std::map<SiteSideName, double>> out;
    for (std::size_t v = 0; v < graded.grades(); ++v) {
        exam.set(graded.key(), {graded.grade(v), false, {}});
        const auto all = knowledge().localizer().posterior(exam);
        const auto none =
            std::find_if(all.begin(), all.end(), [](const auto& s) { return s.side == Side::none; });
        out.emplace_back();
        for (const auto& site : all)
            out.back()[{site.site, site.side}] = site.probability / none->probability;
    }
    return out;
}

// Grades 0, 1 and 2, all too weak for the limb's own weight, count as one here. No sound person is expected
// to show any of them, so noise alone answers for them there, and among them a site gains or loses only by
// how often its lesions are complete.
TEST(StrengthProperties, AWeakerGradeNeverLowersASiteThatExpectsItAgainstNoLesion) {
    constexpr std::size_t againstGravity = 3;
    std::size_t exams = 0, compared = 0;
    EXPECT_TRUE(rc::check("weaker grades", [&] {
        const Graded graded = *rc::gen::elementOf(allGraded());
        const auto expected = expectedGrades(graded);
        const auto odds = oddsByGrade(graded, anyExamWithoutSeverity());
        for (const auto& [site, grades] : expected)
            for (std::size_t weaker = 0; weaker + 1 < grades.size(); ++weaker)
                for (std::size_t stronger = std::max(weaker + 1, againstGravity);
                     grades[weaker] && stronger < grades.size(); ++stronger) {
                    if (odds[weaker].count(site) == 0) continue; // reported without a side, as "no lesion"
                    RC_ASSERT(odds[weaker].at(site) >= odds[stronger].at(site) * (1 - 1e-12));
                    ++compared;
                }
        ++exams;
    }));
    EXPECT_GT(compared, 5000U);
    std::printf("weaker grades: %zu exams, %zu comparisons\n", exams, compared);
}

} // namespace
} // namespace rhizograph
