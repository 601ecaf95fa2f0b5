// How the record behaves as it grows. Prints medians and 95th percentiles; fails when a promise is broken.
//   record_bench                    two clinics made for the occasion: 10,000 and 100,000 visits
//   RHIZOGRAPH_BENCH_CLINIC=FILE    one made before with makeclinic
//   RHIZOGRAPH_BENCH_VISITS=N,M     other sizes
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
#include <sqlite3.h>
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
    void report(benchmark::State& state) {
        state.counters["p50_us"] = quantile(wall_, 0.5);
        state.counters["p95_us"] = quantile(wall_, 0.95);
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
        if (const char* given = std::getenv("RHIZOGRAPH_BENCH_CLINIC")) return files_[visits] = given;
        const fs::path file = folder_ / fmt::format("{}.rhz", visits);
        inventClinic(file, {visits / 10, visits, 6});
        return files_[visits] = file;
    }
    [[nodiscard]] const fs::path& folder() const { return folder_; }

private:
    fs::path folder_;
    std::map<int, fs::path> files_;
};

Clinics& clinics() {
    static Clinics all;
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
}

/// Everything a visit's screen needs.
void openVisit(benchmark::State& state) {
    auto store = openedClinic(clinics().of(visitsOf(state)));
    std::vector<Visit> visits;
    for (const Patient& patient : need(store->searchPatients("", 300)))
        for (const Visit& visit : need(store->visitsOf(patient.id)))
            visits.push_back(visit);
    std::mt19937 random{3};
    Times times;
    for (auto _ : state) {
        const Visit& visit = visits[random() % visits.size()];
        times.measure([&] {
            benchmark::DoNotOptimize(need(store->visit(visit.id)));
            benchmark::DoNotOptimize(need(store->patient(visit.patient)));
            if (need(store->exam(visit.id)).findings().empty()) throw std::runtime_error("an empty visit");
            benchmark::DoNotOptimize(need(store->plan(visit.id)));
            benchmark::DoNotOptimize(need(store->notes(visit.id)));
            benchmark::DoNotOptimize(need(store->acknowledgements(visit.id)));
            benchmark::DoNotOptimize(need(store->signature(visit.id)));
        });
    }
    times.report(state);
}

/// All findings of a patient of 40 visits.
void trendOfForty(benchmark::State& state) {
    auto store = openedClinic(clinics().of(visitsOf(state)));
    const Patient patient = need(store->searchPatients(longHistoryName)).at(0);
    Times times;
    for (auto _ : state)
        times.measure([&] {
            int visits = 0;
            for (const Visit& visit : need(store->visitsOf(patient.id)))
                visits += need(store->exam(visit.id)).findings().empty() ? 0 : 1;
            if (visits != longHistory) throw std::runtime_error("not all visits are there");
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

/// The statements of a tap in plain SQLite C, with rows as long as ours, on a file of its own.
class BareTap {
public:
    explicit BareTap(const fs::path& file) {
        check(sqlite3_open(file.c_str(), &database_));
        run("pragma journal_mode = wal; pragma synchronous = full;"
            "create table visit (id text primary key, changed text, state text, signs integer, events "
            "integer, head blob, "
            "mac blob) strict;"
            "create table event (visit text, number integer, kind text, item text, side text, bulk integer, "
            "author text, "
            "session text, at text, sealed blob, mac blob, primary key (visit, number)) strict;"
            "create index event_kind on event (visit, kind);"
            "create table finding (visit text, item text, side text, event integer, primary key (visit, "
            "item, side)) strict;"
            "insert into visit values ('0123456789abcdef0123456789abcdef', '', '', 0, 0, x'', x'')");
        select_ = prepared("select * from visit where id = ?1");
        insert_ = prepared("insert into event values (?1, ?2, 'finding', 'strength.one', 'left', 0, ?1, ?1, "
                           "'2026-03-04T09:00:00Z', ?3, ?4)");
        upsert_ = prepared(
            "insert into finding values (?1, 'strength.one', 'left', ?2) on conflict (visit, item, side) "
            "do update set event = excluded.event");
        update_ = prepared("update visit set changed = '2026-03-04T09:00:00Z', events = ?2, head = ?3, mac = "
                           "?4 where id = ?1");
        begin_ = prepared("begin immediate");
        commit_ = prepared("commit");
    }
    ~BareTap() {
        for (sqlite3_stmt* statement : {select_, insert_, upsert_, update_, begin_, commit_})
            sqlite3_finalize(statement);
        sqlite3_close(database_);
    }
    BareTap(const BareTap&) = delete;
    BareTap& operator=(const BareTap&) = delete;

    void tap() {
        ++number_;
        step(begin_, {}, {}, {});
        step(select_, visit_, {}, {});
        step(insert_, visit_, sealed_, mac_);
        step(upsert_, visit_, {}, {});
        step(update_, visit_, mac_, mac_);
        step(commit_, {}, {}, {});
    }

private:
    static void check(int code) {
        if (code != SQLITE_OK) throw std::runtime_error(sqlite3_errstr(code));
    }
    void run(const char* script) { check(sqlite3_exec(database_, script, nullptr, nullptr, nullptr)); }
    sqlite3_stmt* prepared(const char* text) {
        sqlite3_stmt* statement = nullptr;
        check(sqlite3_prepare_v2(database_, text, -1, &statement, nullptr));
        return statement;
    }
    void step(sqlite3_stmt* statement, const std::string& visit, const std::string& first,
              const std::string& second) {
        const int count = sqlite3_bind_parameter_count(statement);
        if (count > 0)
            check(
                sqlite3_bind_text(statement, 1, visit.data(), static_cast<int>(visit.size()), SQLITE_STATIC));
        if (count > 1) check(sqlite3_bind_int64(statement, 2, number_));
        if (count > 2)
            check(
                sqlite3_bind_blob(statement, 3, first.data(), static_cast<int>(first.size()), SQLITE_STATIC));
        if (count > 3)
            check(sqlite3_bind_blob(statement, 4, second.data(), static_cast<int>(second.size()),
                                    SQLITE_STATIC));
        int code = SQLITE_ROW;
        while ((code = sqlite3_step(statement)) == SQLITE_ROW) {
        }
        if (code != SQLITE_DONE) throw std::runtime_error(sqlite3_errmsg(database_));
        check(sqlite3_reset(statement));
    }

    sqlite3* database_ = nullptr;
    sqlite3_stmt* select_ = nullptr;
    sqlite3_stmt* insert_ = nullptr;
    sqlite3_stmt* upsert_ = nullptr;
    sqlite3_stmt* update_ = nullptr;
    sqlite3_stmt* begin_ = nullptr;
    sqlite3_stmt* commit_ = nullptr;
    std::int64_t number_ = 0;
    std::string visit_ = "0123456789abcdef0123456789abcdef";
    std::string sealed_ = std::string(81, 's'); // nonce 24, tag 16, content 41
    std::string mac_ = std::string(32, 'm');
};

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
        state.counters["p50_ratio"] = ours.wall(0.5) / theirs.wall(0.5);
        state.counters["p95_ratio"] = ours.wall(0.95) / theirs.wall(0.95);
    }
    for (const char* suffix : {"", "-wal", "-shm"})
        fs::remove(bareFile.string() + suffix);
}

std::vector<int> sizes() {
    if (std::getenv("RHIZOGRAPH_BENCH_CLINIC") != nullptr) return {1'000'000};
    std::vector<int> out;
    if (const char* given = std::getenv("RHIZOGRAPH_BENCH_VISITS")) {
        std::istringstream in{given};
        for (std::string one; std::getline(in, one, ',');)
            out.push_back(std::max(1000, std::atoi(one.c_str())));
    }
    return out.empty() ? std::vector{10'000, 100'000} : out;
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
                                     {"OpenVisit", openVisit, 2000},
                                     {"TrendOf40Visits", trendOfForty, 200},
                                     {"ListOfADay", listOfADay, 300},
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
    } catch (const std::exception& error) {
        std::fprintf(stderr, "record_bench: %s\n", error.what());
        return 1;
    }
    return 0;
}
