// The time from a tap to its answer, on the published case with the most findings.
#include "exchange/examfile.h"
#include "reasoning/knowledge.h"
#include "reasoning/localizer.h"

#include <benchmark/benchmark.h>
#include <filesystem>
#include <iostream>

namespace {

using namespace rhizograph;

struct Setting {
    Knowledge knowledge;
    Exam exam;
    std::string name;
};

std::optional<Knowledge> loadKnowledge() {
    const auto loaded = Knowledge::load(RHIZOGRAPH_RESOURCES "/knowledge");
    return loaded.ok() ? std::optional{*loaded} : std::nullopt;
}

/// The exam of the most findings in tests/cases; nothing when one cannot be read.
std::optional<Setting> fullestCase() {
    const auto knowledge = loadKnowledge();
    if (!knowledge) return std::nullopt;
    Setting fullest{*knowledge, {}, {}};
    for (const auto& entry : std::filesystem::directory_iterator(RHIZOGRAPH_TEST_DATA "/cases")) {
        if (entry.path().extension() != ".json") continue;
        const auto exam = readExamFile(entry.path(), knowledge->catalogue());
        if (!exam.ok()) return std::nullopt;
        const auto size = exam->findings().size();
        const bool firstOfItsSize =
            size == fullest.exam.findings().size() && entry.path().stem() < fullest.name;
        if (size < fullest.exam.findings().size() ||
            (size == fullest.exam.findings().size() && !firstOfItsSize))
            continue;
        fullest.exam = *exam;
        fullest.name = entry.path().stem();
    }
    return fullest;
}

/// The exams that one tap after another on the same graded movement makes.
std::vector<Exam> taps(const Setting& setting) {
    std::vector<Exam> out;
    for (const auto& [key, finding] : setting.exam.findings()) {
        const Item* item = setting.knowledge.catalogue().find(key.item);
        if (item->scale.kind != Scale::Kind::grade) continue;
        for (const auto& value : item->scale.values) {
            out.push_back(setting.exam);
            out.back().set(key, {Value::token(value.token), false, {}});
        }
        return out;
    }
    return out;
}

void assessment(benchmark::State& state, const Setting& setting) {
    for (auto _ : state)
        benchmark::DoNotOptimize(assess(setting.exam, setting.knowledge));
}

void localizationAlone(benchmark::State& state, const Setting& setting) {
    for (auto _ : state)
        benchmark::DoNotOptimize(setting.knowledge.localizer().posterior(setting.exam));
}

void reassessmentAfterATap(benchmark::State& state, const Setting& setting) {
    const std::vector<Exam> exams = taps(setting);
    if (exams.empty()) return state.SkipWithError("no graded movement in the exam");
    std::size_t next = 0;
    for (auto _ : state)
        benchmark::DoNotOptimize(assess(exams[next++ % exams.size()], setting.knowledge));
}

void nextTests(benchmark::State& state, const Setting& setting) {
    for (auto _ : state)
        benchmark::DoNotOptimize(setting.knowledge.localizer().nextTests(setting.exam));
}

void reasonsAndFit(benchmark::State& state, const Setting& setting) {
    for (auto _ : state) {
        Assessment assessment;
        setting.knowledge.localizer().localize(setting.exam, assessment);
        benchmark::DoNotOptimize(assessment);
    }
}

void loadOfKnowledge(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(loadKnowledge());
}

} // namespace

int main(int argc, char** argv) {
    benchmark::Initialize(&argc, argv);
    const auto setting = fullestCase();
    if (!setting) {
        std::cerr << "knowledge or cases cannot be read\n";
        return 2;
    }
    std::cout << setting->name << ": " << setting->exam.findings().size() << " findings\n";
    const auto add = [&](const char* name, auto function) {
        benchmark::RegisterBenchmark(name, [&, function](benchmark::State& state) {
            function(state, *setting);
        })->Unit(benchmark::kMicrosecond);
    };
    add("full assessment", assessment);
    add("localization alone (posterior)", localizationAlone);
    add("localization with reasons and fit", reasonsAndFit);
    add("reassessment after one tap", reassessmentAfterATap);
    add("next tests", nextTests);
    benchmark::RegisterBenchmark("load of knowledge", loadOfKnowledge)->Unit(benchmark::kMicrosecond);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
