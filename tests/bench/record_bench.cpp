// How the record behaves as it grows. Prints medians and 95th percentiles, by the clock on the wall and by
// what this program alone used; fails when the latter breaks a promise.
//   record_bench                    two clinics made for the occasion: 10,000 and 100,000 visits
//   RHIZOGRAPH_BENCH_VISITS=N,M     other sizes
//   RHIZOGRAPH_BENCH_CLINICS=N=FILE,M=FILE
//       made before with makeclinic, of N and M visits and a tenth as many patients; then growth from the
//       first to the last is held to its promise as well
#include "baretap.h"
#include "invented.h"

#include <algorithm>
#include <benchmark/benchmark.h>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fmt/format.h>
#include <map>
#include <random>
#include <sstream>
#include <unistd.h>

namespace rhizograph::bench {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

double cpuMicroseconds() {
    timespec now{};
    ::clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e6 + static_cast<double>(now.tv_nsec) / 1e3;
}

/// Times of single steps, in microseconds: by the clock on the wall, and of this thread alone, which says
/// what the work costs when the machine is busy with something else.
class Times {
public:
    template <class Work> void measure(Work work) {
        const double cpu = cpuMicroseconds();
        const auto start = Clock::now();
        work();
        wall_.push_back(std::chrono::duration<double, std::micro>(Clock::now() - start).count());
        cpu_.push_back(cpuMicroseconds() - cpu);
    }
    [[nodiscard]] double wall(double share) { return quantile(wall_, share); }
    [[nodiscard]] double cpu(double share) { return quantile(cpu_, share); }
    void report(benchmark::State& state) {
        state.counters["p50_us"] = quantile(wall_, 0.5);
        state.counters["p95_us"] = quantile(wall_, 0.95);
        state.counters["cpu_p50_us"] = quantile(cpu_, 0.5);
        state.counters["cpu_p95_us"] = quantile(cpu_, 0.95);
    }

private:
    static double quantile(std::vector<double>& of, double share) {
        std::sort(of.begin(), of.end());
        return of.at(static_cast<std::size_t>(share * static_cast<double>(of.size() - 1)));
    }
    std::vector<double> wall_;
    std::vector<double> cpu_;
};

/// Clinics made once for all measurements, removed at the end.
class Clinics {
public:
    Clinics() {
        std::string pattern = (fs::temp_directory_path() / "rhizograph-bench-XXXXXX").string();
        if (::mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no temporary folder");
        folder_ = pattern;
    }
    ~Clinics() {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
    }
    Clinics(const Clinics&) = delete;
    Clinics& operator=(const Clinics&) = delete;

    const fs::path& of(int visits) {
        const auto known = files_.find(visits);
        if (known != files_.end()) return known->second;
        const fs::path file = folder_ / fmt::format("{}.rhz", visits);
        inventClinic(file, {visits / 10, visits, 6});
        return files_[visits] = file;
    }
    void know(int visits, const fs::path& file) { files_[visits] = file; }

private:
    fs::path folder_;
    std::map<int, fs::path> files_;
};

Clinics& clinics() {
    static Clinics all;
    return all;
}

/// What was measured, for the promises: in microseconds of this thread, by what and by how many visits.
std::map<std::string, std::map<int, double>>& kept() {
    static std::map<std::string, std::map<int, double>> all;
    return all;
}

int visitsOf(const benchmark::State& state) {
    return static_cast<int>(state.range(0));
}

/// Opening, signing in (the passphrase costs nothing here) and the first list of patients.
void openAndSignIn(benchmark::State& state) {
    const fs::path& file = clinics().of(visitsOf(state));
    Times times;
    for (auto _ : state)
        times.measure([&] {
            auto store = openedClinic(file);
            if (need(store->searchPatients("")).empty()) throw std::runtime_error("no patients");
        });
    times.report(state);
    kept()["open, sign in, list p95"][visitsOf(state)] = times.cpu(0.95);
    kept()["open, sign in, list p50"][visitsOf(state)] = times.cpu(0.5);
}

/// One letter after another of a name somebody types: each is a search.
void searchAsYouType(benchmark::State& state) {
    auto store = openedClinic(clinics().of(visitsOf(state)));
    need(store->searchPatients(""));
    std::mt19937 random{2};
    Times times;
    std::size_t found = 0;
    for (auto _ : state) {
        const std::string name =
            inventedName(1 + static_cast<int>(random() % static_cast<unsigned>(visitsOf(state) / 10 - 1)));
        for (std::size_t typed = 1; typed <= 8; ++typed)
            times.measure([&] { found += need(store->searchPatients(name.substr(0, typed))).size(); });
    }
    if (found == 0) throw std::runtime_error("nothing was found");
    times.report(state);
    kept()["search p95"][visitsOf(state)] = times.cpu(0.95);
    kept()["search p50"][visitsOf(state)] = times.cpu(0.5);
}

/// The same with the visits of the first 60 found, as the screen lists them.
void searchAndList(benchmark::State& state) {
    auto store = openedClinic(clinics().of(visitsOf(state)));
    need(store->searchPatients(""));
    std::mt19937 random{4};
    Times times;
    for (auto _ : state) {
        const std::string name =
            inventedName(1 + static_cast<int>(random() % static_cast<unsigned>(visitsOf(state) / 10 - 1)));
        for (std::size_t typed = 1; typed <= 8; ++typed)
            times.measure([&] {
                for (const Patient& patient : need(store->searchPatients(name.substr(0, typed), 60)))
                    benchmark::DoNotOptimize(need(store->visitsOf(patient.id)));
            });
    }
    times.report(state);
}

/// Everything a visit's screen needs.
void openVisit(benchmark::State& state) {
    auto store = openedClinic(clinics().of(visitsOf(state)));
    std::mt19937 random{3};
    std::vector<Visit> visits;
    // From all over the clinic, not the newest that are at hand anyway.
    for (int i = 0; i < 300; ++i) {
        const int number = 1 + static_cast<int>(random() % static_cast<unsigned>(visitsOf(state) / 10 - 1));
        for (const Patient& patient : need(store->searchPatients(fmt::format("R-{:07}", number), 1)))
            for (const Visit& visit : need(store->visitsOf(patient.id)))
                visits.push_back(visit);
    }
    const auto open = [&](const Visit& visit) {
        benchmark::DoNotOptimize(need(store->visit(visit.id)));
        benchmark::DoNotOptimize(need(store->patient(visit.patient)));
        if (need(store->exam(visit.id)).findings().empty()) throw std::runtime_error("an empty visit");
        benchmark::DoNotOptimize(need(store->plan(visit.id)));
        benchmark::DoNotOptimize(need(store->notes(visit.id)));
        benchmark::DoNotOptimize(need(store->acknowledgements(visit.id)));
        benchmark::DoNotOptimize(need(store->signature(visit.id)));
    };
    Times times;
    for (auto _ : state) {
        const Visit& visit = visits[random() % visits.size()];
        times.measure([&] { open(visit); });
    }
    // How it grows is asked of visits that were looked at before: a small clinic is in memory as a whole, and
    // the comparison would be one of memory with the disk.
    Times again;
    for (int pass = 0; pass < 2; ++pass)
        for (std::size_t i = 0; i < std::min<std::size_t>(visits.size(), 500); ++i) {
            if (pass == 0)
                open(visits[i]);
            else
                again.measure([&] { open(visits[i]); });
        }
    kept()["visit again p50"][visitsOf(state)] = again.cpu(0.5);
    state.counters["again_cpu_p50_us"] = again.cpu(0.5);
    times.report(state);
    kept()["visit p95"][visitsOf(state)] = times.cpu(0.95);
}

/// All findings of a patient of 40 visits.
void trendOfForty(benchmark::State& state) {
    auto store = openedClinic(clinics().of(visitsOf(state)));
    const Patient patient = need(store->searchPatients(longHistoryName)).at(0);
    Times times;
    for (auto _ : state)
        times.measure([&] {
            std::vector<VisitId> ids;
            for (const Visit& visit : need(store->visitsOf(patient.id)))
                ids.push_back(visit.id);
            int visits = 0;
            for (const Result<Exam>& exam : store->exams(ids))
                visits += exam && !exam->findings().empty() ? 1 : 0;
            if (visits < longHistory) throw std::runtime_error("not all visits are there");
        });
    times.report(state);
    kept()["trend p95"][visitsOf(state)] = times.cpu(0.95);
    kept()["trend p50"][visitsOf(state)] = times.cpu(0.5);
}

/// Who in the whole clinic needs a look. Of the invented clinic one visit in ten is not signed, which is far
/// more than a clinic leaves lying; all of them are read and counted, a hundred patients are named.
void whoNeedsALook(benchmark::State& state) {
    auto store = openedClinic(clinics().of(visitsOf(state)));
    need(store->searchPatients(""));
    Times times;
    for (auto _ : state)
        times.measure([&] {
            const Practice practice = need(store->practice("2026-03-04", 100));
            if (practice.patients.size() != 100) throw std::runtime_error("too few patients");
            for (const Attention& one : practice.patients)
                benchmark::DoNotOptimize(need(store->patient(one.patient)));
        });
    times.report(state);
}

/// What a day's list costs: the visits of a day and those not signed yet are drawn from a thousand.
void listOfADay(benchmark::State& state) {
    auto store = openedClinic(clinics().of(visitsOf(state)));
    Times times;
    for (auto _ : state)
        times.measure([&] {
            benchmark::DoNotOptimize(need(store->visitsOn("2020-05-05")));
            benchmark::DoNotOptimize(need(store->searchPatients("")));
        });
    times.report(state);
}

/// One saved tap, and beside it, in turn, what the same writing costs in plain SQLite on the same disk.
void durableTap(benchmark::State& state) {
    const fs::path& file = clinics().of(visitsOf(state));
    auto store = openedClinic(file);
    const VisitId visit =
        need(store->addVisit(need(store->searchPatients(longHistoryName)).at(0).id, "2026-03-04")).id;
    const fs::path bareFile = file.parent_path() / fmt::format("bare-{}", ::getpid());
    {
        BareTap bare{bareFile};
        Times ours;
        Times theirs;
        for (auto _ : state) {
            ours.measure([&] {
                need(store->record(
                    visit, {{{ItemId{"strength.one"}, Side::left}, Finding{Value::token("2"), false, ""}}}));
            });
            theirs.measure([&] { bare.tap(); });
        }
        ours.report(state);
        state.counters["bare_p50_us"] = theirs.wall(0.5);
        state.counters["bare_p95_us"] = theirs.wall(0.95);
        kept()["tap, times plain SQLite"][visitsOf(state)] = ours.wall(0.5) / theirs.wall(0.5);
        state.counters["p50_ratio"] = ours.wall(0.5) / theirs.wall(0.5);
        state.counters["p95_ratio"] = ours.wall(0.95) / theirs.wall(0.95);
    }
    for (const char* suffix : {"", "-wal", "-shm"})
        fs::remove(bareFile.string() + suffix);
}

std::vector<int> sizes() {
    std::vector<int> out;
    const char* made = std::getenv("RHIZOGRAPH_BENCH_CLINICS");
    const char* wanted = std::getenv("RHIZOGRAPH_BENCH_VISITS");
    std::istringstream in{made != nullptr ? made : wanted != nullptr ? wanted : "10000,100000"};
    for (std::string one; std::getline(in, one, ',');) {
        const std::size_t sign = one.find('=');
        out.push_back(std::max(1000, std::atoi(one.substr(0, sign).c_str())));
        if (sign != std::string::npos) clinics().know(out.back(), one.substr(sign + 1));
    }
    return out;
}

/// Prints a promise with what was measured; whether it is kept.
bool holds(const char* what, double measured, double most, const char* unit) {
    fmt::print("{:9} {}: {:.3g} {} (at most {:g})\n", measured <= most ? "kept" : "BROKEN", what, measured,
               unit, most);
    return measured <= most;
}

bool promisesKept() {
    bool kept = true;
    const auto atMost = [&](const std::string& what, double most) {
        for (const auto& [visits, time] : bench::kept()[what])
            kept = holds(fmt::format("{}, {} visits", what, visits).c_str(), time / 1000, most, "ms") && kept;
    };
    atMost("open, sign in, list p95", 2000);
    atMost("search p95", 30);
    atMost("visit p95", 5);
    atMost("trend p95", 10);
    if (std::getenv("RHIZOGRAPH_BENCH_CLINICS") == nullptr) return kept;
    for (const auto& [visits, ratio] : bench::kept()["tap, times plain SQLite"])
        kept = holds(fmt::format("tap, {} visits", visits).c_str(), ratio, 1.3, "times plain SQLite") && kept;
    for (const char* what : {"visit again p50", "trend p50"})
        if (const auto& times = bench::kept()[what]; times.size() > 1)
            kept = holds(fmt::format("growth of {}", what).c_str(),
                         times.rbegin()->second / times.begin()->second, 1.3, "times") &&
                   kept;
    return kept;
}

void registerAll() {
    struct Measurement {
        const char* name;
        void (*run)(benchmark::State&);
        int iterations;
    };
    for (const int size : sizes())
        for (const Measurement& m : {Measurement{"OpenSignInList", openAndSignIn, 20},
                                     {"SearchAsYouType", searchAsYouType, 100},
                                     {"SearchAndList", searchAndList, 40},
                                     {"OpenVisit", openVisit, 2000},
                                     {"TrendOf40Visits", trendOfForty, 200},
                                     {"ListOfADay", listOfADay, 300},
                                     {"WhoNeedsALook", whoNeedsALook, 30},
                                     {"DurableTap", durableTap, 1000}})
            benchmark::RegisterBenchmark(m.name, m.run)
                ->Arg(size)
                ->Iterations(m.iterations)
                ->Unit(benchmark::kMicrosecond);
}

} // namespace
} // namespace rhizograph::bench

int main(int argc, char* argv[]) {
    benchmark::Initialize(&argc, argv);
    if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 2;
    try {
        rhizograph::bench::registerAll();
        benchmark::RunSpecifiedBenchmarks();
        if (!rhizograph::bench::promisesKept()) return 1;
    } catch (const std::exception& error) {
        std::fprintf(stderr, "record_bench: %s\n", error.what());
        return 1;
    }
    return 0;
}
