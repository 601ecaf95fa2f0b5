// From the start of the program to its first painted window, beside an empty window of the same toolkit in
// the same run: at most half as much again.
#include "record/store.h"
#include "support/process.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <sstream>
#include <sys/resource.h>
#include <vector>

namespace {

using namespace rhizograph;

constexpr int starts = 15;
constexpr double mostTimes = 1.5;

struct Start {
    double milliseconds = 0;
    double work = 0;   ///< ms of processor, of all its threads
    long resident = 0; ///< kB, with what is shared with other programs
    long own = 0;      ///< kB of its own
};

bool by(const Start& a, const Start& b) {
    return a.milliseconds < b.milliseconds;
}

/// Processor time of the children so far, ms.
double childrenWorked() {
    rusage used{};
    getrusage(RUSAGE_CHILDREN, &used);
    const auto ms = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_usec) / 1e3;
    };
    return ms(used.ru_utime) + ms(used.ru_stime);
}

Start start(const std::vector<std::string>& command, const std::string& folder) {
    const double before = childrenWorked();
    const auto result = rhizograph::testing::runProcess(
        command, {.environment = {"QT_QPA_PLATFORM=offscreen", "HOME=" + folder, "XDG_CONFIG_HOME=" + folder,
                                  "XDG_RUNTIME_DIR=" + folder},
                  .standardOutput = {}});
    if (result.code != 0) {
        std::fprintf(stderr, "%s ended with %d: %s\n", command.front().c_str(), result.code,
                     result.err.c_str());
        std::exit(1);
    }
    Start out{result.milliseconds, childrenWorked() - before, 0, 0};
    std::istringstream(result.out) >> out.resident >> out.own;
    return out;
}

Start median(std::vector<Start>& runs) {
    Start middle;
    std::sort(runs.begin(), runs.end(), [](const Start& a, const Start& b) { return a.work < b.work; });
    middle.work = runs[runs.size() / 2].work;
    std::sort(runs.begin(), runs.end(), by);
    middle.milliseconds = runs[runs.size() / 2].milliseconds;
    middle.resident = runs[runs.size() / 2].resident;
    middle.own = runs[runs.size() / 2].own;
    return middle;
}

void print(const char* what, const std::vector<Start>& runs, const Start& middle) {
    std::printf(
        "[ start ] %-12s median %6.1f ms, least %6.1f, most %6.1f; processor %5.1f ms; memory %5.1f MB, of "
        "its own %5.1f MB\n",
        what, middle.milliseconds, runs.front().milliseconds, runs.back().milliseconds, middle.work,
        static_cast<double>(middle.resident) / 1024, static_cast<double>(middle.own) / 1024);
}

} // namespace

int main() {
    std::string folder = (std::filesystem::temp_directory_path() / "rhizograph-start-XXXXXX").string();
    if (mkdtemp(folder.data()) == nullptr) return 1;
    const std::string clinic = folder + "/clinic.rhizo";
    ClinicOptions options;
    options.cost = KeyCost::cheapest();
    const Outcome made = createClinic(clinic, "Practice at the Old Ferry",
                                      {"Ottilie Marrow", Role::administrator, "seven quiet herons"}, options);
    if (!made) {
        std::fprintf(stderr, "%s\n", made.problems().front().text().c_str());
        return 1;
    }
    std::vector<Start> empty, ours;
    for (int i = 0; i <= starts; ++i) {
        const Start first = start({EMPTYPROBE}, folder);
        const Start second = start({STARTPROBE, "--database", clinic}, folder);
        if (i == 0) continue; // fills the cache of the disk
        empty.push_back(first);
        ours.push_back(second);
    }
    std::filesystem::remove_all(folder);
    const Start small = median(empty);
    const Start whole = median(ours);
    print("empty window", empty, small);
    print("rhizograph", ours, whole);
    const double times = whole.milliseconds / small.milliseconds;
    std::printf(
        "[ start ] %.2f times the empty window (at most %.2f); processor %.2f times; memory %.2f times\n",
        times, mostTimes, whole.work / small.work,
        static_cast<double>(whole.resident) / static_cast<double>(small.resident));
    std::printf("[ start ] %s\n", times <= mostTimes ? "met" : "not met");
    return 0;
}
