// The engine's posterior against the second implementation beside this file, finding for finding.
#include "checks/bruteforce/reference.h"
#include "checks/bruteforce/shaken.h"
#include "exchange/examfile.h"
#include "reasoning/knowledge.h"
#include "reasoning/localizer.h"
#include "support/someexam.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace {

using namespace rhizograph;
using bruteforce::Json;

class Exactness : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        const std::string directory = RHIZOGRAPH_RESOURCES "/knowledge";
        const auto loaded = Knowledge::load(directory);
        ASSERT_TRUE(loaded.ok()) << loaded.problems().front().text();
        knowledge = new Knowledge(*loaded);
        reference = new bruteforce::Reference(directory);
    }
    static void TearDownTestSuite() {
        delete knowledge;
        delete reference;
    }

    static double difference(const Exam& exam, const Json& file) {
        return difference(*knowledge, *reference, exam, file);
    }
    /// Largest difference over all sites and sides; infinite when the two do not know the same ones.
    static double difference(const Knowledge& loaded, const bruteforce::Reference& second, const Exam& exam,
                             const Json& file) {
        auto expected = second.posterior(file);
        double worst = 0;
        for (const auto& site : loaded.localizer().posterior(exam)) {
            const auto found = expected.find({site.site.text(), std::string{name(site.side)}});
            if (found == expected.end()) return INFINITY;
            worst = std::max(worst, std::abs(found->second - site.probability));
            expected.erase(found);
        }
        return expected.empty() ? worst : INFINITY;
    }

    static const Knowledge* knowledge;
    static const bruteforce::Reference* reference;
};

const Knowledge* Exactness::knowledge = nullptr;
const bruteforce::Reference* Exactness::reference = nullptr;

/// Items that bear on the site at all, as the reference sees it; measures of both sides count as one item.
std::vector<const Item*> bearing(const bruteforce::Reference& reference, const Catalogue& catalogue,
                                 std::mt19937& random) {
    std::vector<const Item*> out;
    for (const Item& item : catalogue.items()) {
        if (item.scale.kind == Scale::Kind::text) continue;
        Exam exam;
        for (const Side side : item.sided ? std::vector{Side::left, Side::right} : std::vector{Side::none})
            exam.set({item.id, side}, {rhizograph::testing::someValue(item.scale, random), false, {}});
        if (!reference.factors(examToJson(exam, catalogue)).empty()) out.push_back(&item);
    }
    return out;
}

constexpr double tolerance = 1e-9;

TEST_F(Exactness, AnEmptyExamGivesThePriorsOfTheKnowledge) {
    const auto file = Json::parse(R"({"findings": []})");
    EXPECT_LT(difference(Exam{}, file), tolerance) << "the priors differ";
    std::printf("%zu joint hypotheses\n", reference->hypotheses().size());
}

TEST_F(Exactness, EverySingleFindingMovesTheSitesAsTheSecondImplementationSays) {
    std::mt19937 random{1};
    std::size_t tried = 0;
    double worst = 0;
    for (const Item* item : bearing(*reference, knowledge->catalogue(), random))
        for (int repeat = 0; repeat < 2; ++repeat) {
            const Exam exam = rhizograph::testing::someExam({item}, 1, random);
            const double d = difference(exam, examToJson(exam, knowledge->catalogue()));
            EXPECT_LT(d, tolerance) << examText(exam, knowledge->catalogue());
            worst = std::max(worst, d);
            ++tried;
        }
    std::printf("%zu single findings, largest difference %.2g\n", tried, worst);
}

TEST_F(Exactness, RandomExamsOfAHandfulOfFindingsAgree) {
    std::mt19937 random{20260302};
    const auto items = bearing(*reference, knowledge->catalogue(), random);
    double worst = 0;
    constexpr int exams = 500;
    for (int i = 0; i < exams; ++i) {
        const Exam exam = rhizograph::testing::someExam(
            i % 2 == 0 ? rhizograph::testing::oneFamily(items, random) : items, 1 + random() % 9, random);
        const double d = difference(exam, examToJson(exam, knowledge->catalogue()));
        EXPECT_LT(d, tolerance) << examText(exam, knowledge->catalogue());
        worst = std::max(worst, d);
    }
    std::printf("%zu items bear on the site; %d random exams, largest difference %.2g\n", items.size(), exams,
                worst);
}

TEST_F(Exactness, RandomExamsWithNearlyEveryItemAgree) {
    std::mt19937 random{7};
    const auto items = bearing(*reference, knowledge->catalogue(), random);
    double worst = 0;
    constexpr int exams = 12;
    for (int i = 0; i < exams; ++i) {
        const Exam exam = rhizograph::testing::someExam(items, 2 * items.size(), random);
        const double d = difference(exam, examToJson(exam, knowledge->catalogue()));
        EXPECT_LT(d, tolerance) << examText(exam, knowledge->catalogue());
        worst = std::max(worst, d);
    }
    std::printf("%d random exams of nearly every item, largest difference %.2g\n", exams, worst);
}

TEST_F(Exactness, TheyAgreeOnOtherNumbersThanThoseOfToday) {
    std::mt19937 random{11};
    double worst = 0;
    constexpr unsigned editions = 4, exams = 30;
    std::size_t changed = 0;
    for (unsigned edition = 0; edition < editions; ++edition) {
        const bruteforce::ShakenKnowledge shaken{RHIZOGRAPH_RESOURCES "/knowledge", edition};
        const auto loaded = Knowledge::load(shaken.directory());
        ASSERT_TRUE(loaded.ok()) << loaded.problems().front().text();
        const bruteforce::Reference second{shaken.directory()};
        const auto items = bearing(second, loaded->catalogue(), random);
        for (unsigned i = 0; i < exams; ++i) {
            const Exam exam =
                rhizograph::testing::someExam(items, i % 3 == 0 ? 60 : 1 + random() % 9, random);
            const double d = difference(*loaded, second, exam, examToJson(exam, loaded->catalogue()));
            EXPECT_LT(d, tolerance) << examText(exam, loaded->catalogue());
            worst = std::max(worst, d);
        }
        changed += shaken.changed();
    }
    EXPECT_GT(changed, 1000U * editions);
    std::printf("%u editions with %zu numbers or rows changed each, %u exams, largest difference %.2g\n",
                editions, changed / editions, editions * exams, worst);
}

TEST_F(Exactness, EveryCaseAgrees) {
    namespace fs = std::filesystem;
    std::size_t tried = 0;
    double worst = 0;
    for (const auto& entry : fs::recursive_directory_iterator(RHIZOGRAPH_TEST_DATA "/cases")) {
        if (entry.path().extension() != ".json") continue;
        const auto exam = readExamFile(entry.path(), knowledge->catalogue());
        ASSERT_TRUE(exam.ok()) << exam.problems().front().text();
        std::ifstream in(entry.path());
        const double d = difference(*exam, Json::parse(in));
        EXPECT_LT(d, tolerance) << entry.path().filename();
        worst = std::max(worst, d);
        ++tried;
    }
    ASSERT_GT(tried, 100U);
    std::printf("%zu cases, largest difference %.2g\n", tried, worst);
}

} // namespace
