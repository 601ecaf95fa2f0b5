// Writes the localization model as a Bayesian network, one JSON document a line, for general-purpose
// libraries of exact inference: first the parts that every exam shares, then one exam a line with the
// engine's answer.
//   network_export KNOWLEDGE EXAMS [CASE.json ...]
#include "exchange/examfile.h"
#include "reasoning/knowledge.h"
#include "reasoning/localizer.h"
#include "support/someexam.h"

#include <chrono>
#include <cmath>
#include <cstdlib>
#include <fmt/format.h>
#include <iostream>
#include <nlohmann/json.hpp>

namespace {

using namespace rhizograph;
using Json = nlohmann::json;

class Exporter {
public:
    explicit Exporter(const Knowledge& knowledge)
        : localizer_(knowledge.localizer()), engine_(localizer_.engine()) {
        for (const auto& site : localizer_.posterior(Exam{}))
            sites_.emplace_back(site.site.text(), site.side);
    }

    /// Names of the sites, the site of each block, the hidden levels given the block, and for each factor on
    /// which of the hidden levels it depends and the class that each combination belongs to.
    [[nodiscard]] Json shared() const {
        const Grid& grid = engine_.grid();
        Json sites = Json::array(), blocks = Json::array(), factors = Json::array();
        for (const auto& [site, side] : sites_)
            sites.push_back(fmt::format("{} {}", site, name(side)));
        for (const Block& block : grid.blocks())
            blocks.push_back(siteOf(block));
        for (std::size_t f = 0; f < engine_.factors().size(); ++f) {
            const Depends& on = engine_.factors()[f]->depends();
            factors.push_back(
                {{"depends", {on.motor, on.sensory, on.irritable}}, {"classes", engine_.classes(f).of}});
        }
        return {{"sites", sites},
                {"blocks", blocks},
                {"levels", {grid.motorLevels(), grid.sensoryLevels(), 2}},
                {"hidden", hidden()},
                {"factors", factors}};
    }

    [[nodiscard]] Json exam(const std::string& called, const Exam& exam) const {
        const Posterior posterior{engine_, exam};
        Json read = Json::array(), answer = Json::array();
        for (const std::size_t f : posterior.readFactors())
            read.push_back(table(f, posterior));
        for (const auto& site : localizer_.posterior(exam))
            answer.push_back(site.probability);
        return {{"name", called},
                {"findings", exam.findings().size()},
                {"blocks", blockPrior(exam.subject.age)},
                {"read", read},
                {"posterior", answer},
                {"microseconds", microseconds(exam)}};
    }

private:
    /// Position of the reported site among the names.
    [[nodiscard]] std::size_t siteOf(const Block& block) const {
        const std::string site = engine_.model().sites[block.site].reportAs.text();
        for (const Side side : {block.side, Side::none})
            for (std::size_t i = 0; i < sites_.size(); ++i)
                if (sites_[i] == std::pair{site, side}) return i;
        throw std::runtime_error("no reported site for " + site);
    }

    [[nodiscard]] std::vector<double> blockPrior(std::optional<int> age) const {
        const std::vector<double> log = engine_.grid().logPrior(age);
        std::vector<double> out(engine_.grid().blocks().size(), 0);
        double total = 0;
        for (std::size_t h = 0; h < log.size(); ++h) {
            out[h / perBlock()] += std::exp(log[h]);
            total += std::exp(log[h]);
        }
        for (double& p : out)
            p /= total;
        return out;
    }

    /// P(motor, sensory, irritable | block), the last fastest.
    [[nodiscard]] Json hidden() const {
        const std::vector<double> log = engine_.grid().logPrior(std::nullopt);
        Json out = Json::array();
        for (std::size_t b = 0; b < engine_.grid().blocks().size(); ++b) {
            std::vector<double> row;
            double total = 0;
            for (std::size_t k = 0; k < perBlock(); ++k) {
                row.push_back(std::exp(log[b * perBlock() + k]));
                total += row.back();
            }
            for (double& p : row)
                p /= total;
            out.push_back(row);
        }
        return out;
    }

    [[nodiscard]] std::size_t perBlock() const {
        return engine_.grid().hypotheses() / engine_.grid().blocks().size();
    }

    /// P(value | class) of every value where one reading was taken, of the values read and of any others
    /// where there were more; and which of them it was.
    [[nodiscard]] Json table(std::size_t f, const Posterior& posterior) const {
        const Factor& factor = *engine_.factors()[f];
        std::vector<int> values = posterior.values(f);
        std::vector<std::size_t> slots;
        for (std::size_t slot = 0; slot < values.size(); ++slot)
            if (values[slot] != kUnread) slots.push_back(slot);
        const bool single = slots.size() == 1;
        const int value = single ? values[slots.front()] : 0;
        Json rows = Json::array();
        for (std::size_t c = 0; c < engine_.classes(f).features.size(); ++c) {
            const std::span<const double> features = engine_.classes(f).features.row(c);
            std::vector<double> row;
            if (single)
                for (std::size_t v = 0; v < factor.slots()[slots.front()].values; ++v) {
                    values[slots.front()] = static_cast<int>(v);
                    row.push_back(factor.probability(features, values, posterior.setting()));
                }
            else {
                const double p = factor.probability(features, values, posterior.setting());
                row = {p, 1 - p};
            }
            rows.push_back(row);
        }
        return {{"factor", f}, {"readings", slots.size()}, {"value", value}, {"rows", rows}};
    }

    /// The engine's own time for the posterior, best of five.
    [[nodiscard]] double microseconds(const Exam& exam) const {
        double best = INFINITY;
        for (int i = 0; i < 5; ++i) {
            const auto start = std::chrono::steady_clock::now();
            const auto answer = localizer_.posterior(exam);
            const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - start;
            best = std::min(best, answer.empty() ? INFINITY : took.count());
        }
        return best;
    }

    const Localizer& localizer_;
    const Engine& engine_;
    std::vector<std::pair<std::string, Side>> sites_;
};

/// Items that the localization reads.
std::vector<const Item*> readItems(const Knowledge& knowledge) {
    std::vector<const Item*> out;
    for (const Item& item : knowledge.catalogue().items())
        if (item.scale.kind != Scale::Kind::text &&
            knowledge.localizer().engine().place({item.id, item.sided ? Side::left : Side::none}))
            out.push_back(&item);
    return out;
}

int run(const std::vector<std::string>& arguments) {
    const auto knowledge = Knowledge::load(arguments[0]);
    if (!knowledge.ok()) {
        std::cerr << knowledge.problems().front().text() << '\n';
        return 2;
    }
    const Exporter exporter{*knowledge};
    std::cout << exporter.shared() << '\n';
    const auto items = readItems(*knowledge);
    std::mt19937 random{20260401};
    for (int i = 0; i < std::atoi(arguments[1].c_str()); ++i) {
        const auto from = i % 2 == 0 ? rhizograph::testing::oneFamily(items, random) : items;
        const Exam exam = rhizograph::testing::someExam(from, 1 + random() % 6, random);
        std::cout << exporter.exam("random " + std::to_string(i), exam) << '\n';
    }
    for (std::size_t i = 2; i < arguments.size(); ++i) {
        const auto exam = readExamFile(arguments[i], knowledge->catalogue());
        if (!exam.ok()) {
            std::cerr << exam.problems().front().text() << '\n';
            return 2;
        }
        std::cout << exporter.exam(arguments[i], *exam) << '\n';
    }
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 3) {
        std::cerr << "usage: network_export KNOWLEDGE EXAMS [CASE.json ...]\n";
        return 2;
    }
    return run({argv + 1, argv + argc});
}
