// What the model implies for single tests, against published accuracy. A row that cannot be met says why, and
// the test fails when it is met after all: the list of exceptions stays true.
#include "base/json.h"
#include "reasoning/knowledge.h"
#include "reasoning/localizer.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>

namespace {

using namespace rhizograph;

struct Published {
    std::string id, source, measure, why;
    std::vector<std::string> sites, against;
    std::vector<std::pair<FindingKey, std::vector<std::string>>> findings; ///< own side is the left
    bool anyAbnormal = false; ///< positive when any finding differs from its (only) value; else when all hold
    double from = 0, to = 0;
    bool met = true;
    std::optional<int> age;
};

class Implied : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        auto loaded = Knowledge::load(RHIZOGRAPH_RESOURCES "/knowledge");
        ASSERT_TRUE(loaded.ok()) << loaded.problems().front().text();
        knowledge = new Knowledge(std::move(loaded).value());
    }
    static void TearDownTestSuite() { delete knowledge; }

    static const Engine& engine() { return knowledge->localizer().engine(); }

    /// P(findings) among people with one of these sites (on the left or both sides), each in its prior share.
    static double probability(const Exam& exam, const std::vector<std::string>& sites) {
        const Grid& grid = engine().grid();
        std::vector<double> weight = grid.logPrior(exam.subject.age);
        for (std::size_t g = 0; g < engine().factors().size(); ++g) {
            const Factor& factor = *engine().factors()[g];
            std::vector<int> values;
            for (std::size_t slot = 0; slot < factor.slots().size(); ++slot)
                values.push_back(factor.read(slot, exam));
            if (std::all_of(values.begin(), values.end(), [](int v) { return v == kUnread; })) continue;
            const std::vector<double> chance =
                factor.probabilities(engine().classes(g).features, values, engine().setting(exam));
            const Space& space = engine().space(engine().spaceOf(g));
            engine().forHypotheses([&](std::size_t index, const Hypothesis& h) {
                weight[index] += std::log(chance[engine().classes(g).of[space.state(h)]]);
            });
        }
        const std::vector<double> prior = grid.logPrior(exam.subject.age);
        double all = 0;
        double seen = 0;
        engine().forHypotheses([&](std::size_t index, const Hypothesis& h) {
            const Block& block = grid.blocks()[h.block];
            if (block.side == Side::right || !among(block, sites)) return;
            all += std::exp(prior[index]);
            seen += std::exp(weight[index]);
        });
        return seen / all;
    }

    static bool among(const Block& block, const std::vector<std::string>& sites) {
        const SiteModel& site = engine().model().sites[block.site];
        return std::any_of(sites.begin(), sites.end(), [&](const std::string& name) {
            return name == site.id.text() || name == site.reportAs.text();
        });
    }

    /// P(test positive | sites): summed over the combinations of values that count as positive.
    static double positive(const Published& row, const std::vector<std::string>& sites) {
        double sum = 0;
        std::vector<std::size_t> choice(row.findings.size(), 0);
        while (true) {
            Exam exam;
            exam.subject.age = row.age;
            for (std::size_t i = 0; i < choice.size(); ++i)
                exam.set(row.findings[i].first,
                         {value(row.findings[i].first, row.findings[i].second[choice[i]]), false, {}});
            sum += probability(exam, sites);
            std::size_t i = 0;
            while (i < choice.size() && ++choice[i] == row.findings[i].second.size())
                choice[i++] = 0;
            if (i == choice.size()) break;
        }
        return row.anyAbnormal ? 1 - sum : sum;
    }

    static Value value(const FindingKey& key, const std::string& token) {
        const Item* item = knowledge->catalogue().find(key.item);
        return item->scale.numeric() ? Value::number(std::stod(token)) : Value::token(token);
    }

    static double implied(const Published& row) {
        const double sens = positive(row, row.sites);
        if (row.measure == "sensitivity") return sens;
        const double falsely = positive(row, row.against);
        if (row.measure == "specificity") return 1 - falsely;
        return row.measure == "lr_positive" ? sens / falsely : (1 - sens) / (1 - falsely);
    }

    static std::vector<Published> rows() {
        const std::string file = RHIZOGRAPH_TEST_DATA "/checks/implied/implied.json";
        const auto document = readJsonFile(file);
        if (!document) throw std::runtime_error(document.problems().front().text());
        Problems problems;
        std::vector<Published> out;
        for (const JsonNode& node : JsonNode{*document, file, problems}.at("rows").items())
            out.push_back(row(node));
        if (!problems.empty()) throw std::runtime_error(problems.front().text());
        return out;
    }

    static Published row(const JsonNode& node) {
        Published out;
        out.id = node.at("id").string();
        out.source = node.at("source").string();
        out.measure = node.at("measure").string();
        out.sites = node.at("sites").strings();
        if (node.has("against")) out.against = node.at("against").strings();
        out.anyAbnormal = node.has("any_not");
        for (const auto& [place, values] : node.at(out.anyAbnormal ? "any_not" : "all").members()) {
            const auto at = place.find('@');
            const Side side = at == std::string::npos ? Side::none : sideNamed(place.substr(at + 1)).value();
            out.findings.push_back({{ItemId{place.substr(0, at)}, side}, values.strings()});
        }
        out.from = node.at("from").number();
        out.to = node.at("to").number();
        if (node.has("not_met")) {
            out.met = false;
            out.why = node.at("not_met").string();
        }
        if (node.has("age")) out.age = static_cast<int>(node.at("age").number());
        return out;
    }

    static const Knowledge* knowledge;
};

const Knowledge* Implied::knowledge = nullptr;

TEST_F(Implied, AccuracyOfEachModeledTestLiesInThePublishedInterval) {
    int met = 0, excepted = 0;
    for (const Published& row : rows()) {
        const double reached = implied(row);
        const bool inside = reached >= row.from && reached <= row.to;
        std::printf("%-6s %-12s published %.3g to %.3g, implied %.3g%s\n", row.id.c_str(),
                    row.measure.c_str(), row.from, row.to, reached,
                    row.met ? "" : (" (not met: " + row.why + ")").c_str());
        EXPECT_EQ(inside, row.met) << row.id << " " << row.measure << ": " << row.source;
        (row.met ? met : excepted) += 1;
    }
    std::printf("%d rows met, %d listed as not met\n", met, excepted);
    EXPECT_GE(met, 20);
}

} // namespace
