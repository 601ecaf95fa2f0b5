// What holds of the localization for every exam, whatever the medicine in the files says.
#include "reasoning/knowledge.h"
#include "reasoning/localizer.h"
#include "support/noisebound.h"
#include "support/randomexam.h"

#include <cmath>
#include <cstdio>
#include <functional>
#include <gtest/gtest.h>
#include <rapidcheck.h>

namespace rhizograph {
namespace {

const std::filesystem::path directory = RHIZOGRAPH_RESOURCES "/knowledge";

const Knowledge& knowledge() {
    static const Result<Knowledge> loaded = Knowledge::load(directory);
    return *loaded;
}

const Localizer& localizer() {
    return knowledge().localizer();
}

using Probabilities = std::vector<Localizer::SiteProbability>;

double probabilityOf(const Probabilities& all, const SiteId& site, Side side) {
    for (const auto& one : all)
        if (one.site == site && one.side == side) return one.probability;
    RC_FAIL("no such site and side");
    return 0;
}

void assertSame(const Probabilities& one, const Probabilities& other) {
    RC_ASSERT(one.size() == other.size());
    for (std::size_t i = 0; i < one.size(); ++i)
        RC_ASSERT(one[i].probability == other[i].probability);
}

/// Runs a property on as many exams as RapidCheck makes and prints how often it held.
void holds(const char* what, const std::function<std::size_t()>& property) {
    std::size_t exams = 0, comparisons = 0;
    EXPECT_TRUE(rc::check(what, [&] {
        comparisons += property();
        ++exams;
    }));
    std::printf("%s: %zu exams, %zu comparisons\n", what, exams, comparisons);
}

TEST(LocalizerProperties, SwappingTheSidesSwapsThePosterior) {
    holds("mirrored", [] {
        const Exam exam = *rhizograph::testing::anyExam(knowledge().catalogue());
        const Probabilities straight = localizer().posterior(exam),
                            turned = localizer().posterior(exam.mirrored());
        for (const auto& one : straight)
            RC_ASSERT(std::abs(one.probability - probabilityOf(turned, one.site, mirrored(one.side))) <
                      1e-12);
        return straight.size();
    });
}

TEST(LocalizerProperties, TheOrderInWhichFindingsWereRecordedDoesNotMatter) {
    holds("any order", [] {
        const Exam exam = *rhizograph::testing::anyExam(knowledge().catalogue());
        std::vector<std::pair<FindingKey, Finding>> findings{exam.findings().begin(), exam.findings().end()};
        for (std::size_t i = findings.size(); i > 1; --i)
            std::swap(findings[i - 1], findings[*rc::gen::inRange<std::size_t>(0, i)]);
        Exam other;
        other.subject = exam.subject;
        for (const auto& [key, finding] : findings)
            other.set(key, finding);
        assertSame(localizer().posterior(exam), localizer().posterior(other));
        return findings.size();
    });
}

TEST(LocalizerProperties, WhatCouldNotBeTestedAddsNothing) {
    holds("not testable", [] {
        const Exam exam = *rhizograph::testing::anyExam(knowledge().catalogue());
        Exam without, with = exam;
        without.subject = exam.subject;
        std::size_t added = 0;
        for (const auto& [key, finding] : exam.findings())
            if (finding.value.testable()) without.set(key, finding);
        const auto& reasons = knowledge().catalogue().notTestableReasons();
        for (const Item& item : knowledge().catalogue().items())
            for (const Side side :
                 item.sided ? std::vector{Side::left, Side::right} : std::vector{Side::none})
                if (!exam.find({item.id, side}) && *rc::gen::inRange(0, 3) == 0) {
                    with.set({item.id, side}, {Value::notTestable(*rc::gen::elementOf(reasons)), false, {}});
                    ++added;
                }
        assertSame(localizer().posterior(with), localizer().posterior(without));
        return added;
    });
}

TEST(LocalizerProperties, ProbabilitiesAddToOne) {
    holds("adds to one", [] {
        const Probabilities all =
            localizer().posterior(*rhizograph::testing::anyExam(knowledge().catalogue()));
        double total = 0;
        for (const auto& one : all) {
            RC_ASSERT(one.probability >= 0 && one.probability <= 1);
            total += one.probability;
        }
        RC_ASSERT(std::abs(total - 1) < 1e-12);
        return all.size();
    });
}

/// Whether another finding of the exam is read by the same factor; then the two are bounded together only.
bool readTogether(const Exam& exam, const FindingKey& key) {
    const Engine& engine = localizer().engine();
    const auto* here = engine.place(key);
    for (const auto& [other, finding] : exam.findings()) {
        const auto* there = engine.place(other);
        if (other != key && there && there->factor == here->factor) return true;
    }
    return false;
}

/// Largest change of the log odds between any two sites.
double largestShift(const Probabilities& before, const Probabilities& after) {
    double lowest = INFINITY, highest = -INFINITY;
    for (std::size_t i = 0; i < before.size(); ++i) {
        const double shift = std::log(after[i].probability) - std::log(before[i].probability);
        lowest = std::min(lowest, shift);
        highest = std::max(highest, shift);
    }
    return highest - lowest;
}

TEST(LocalizerProperties, OneFindingMovesTheOddsNoFurtherThanItsNoiseAllows) {
    const rhizograph::testing::NoiseBound bound{directory};
    double nearest = 0;
    std::size_t tried = 0;
    holds("bounded by noise", [&] {
        Exam exam = *rhizograph::testing::anyExam(knowledge().catalogue());
        for (const char* item :
             {"strength.give_way", "behavior.hip_extension_returns"}) // they change other noise
            for (const Side side : {Side::left, Side::right})
                exam.clear({ItemId{item}, side});
        const Probabilities before = localizer().posterior(exam);
        std::size_t compared = 0;
        for (const Item& item : knowledge().catalogue().items()) {
            const FindingKey key{item.id,
                                 item.sided ? *rc::gen::element(Side::left, Side::right) : Side::none};
            const Engine& engine = localizer().engine();
            if (exam.find(key) || !engine.place(key) || engine.changesSetting(key) || readTogether(exam, key))
                continue;
            Exam more = exam;
            const Value value =
                *rhizograph::testing::anyValue(item, knowledge().catalogue().notTestableReasons());
            if (!value.testable()) continue; // adds nothing: the test above
            more.set(key, {value, false, {}});
            const double allowed = std::log(bound.odds(item, value));
            const double shift = largestShift(before, localizer().posterior(more));
            RC_ASSERT(shift <= allowed + 1e-9);
            nearest = std::max(nearest, shift / allowed);
            ++compared;
        }
        tried += compared;
        return compared;
    });
    EXPECT_GT(tried, 5000U);
    std::printf("the largest shift took %.3f of what is allowed\n", nearest);
}

} // namespace
} // namespace rhizograph
