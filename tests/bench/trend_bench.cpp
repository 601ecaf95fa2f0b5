// How long the course of a patient of forty visits takes from being asked for to being painted, beside an
// empty chart in a window of the same size in the same run.
#include "compare/trendpage.h"
#include "record/store.h"
#include "shell/visitsession.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <QApplication>
#include <QDate>
#include <QTemporaryDir>
#include <stdexcept>

namespace {

using namespace rhizograph;
using namespace rhizograph::app;

constexpr int visits = 40;
constexpr int rounds = 15;

template <class T> T need(Result<T> result) {
    if (!result) throw std::runtime_error(result.problems().front().text());
    return std::move(result).value();
}
void need(const Outcome& outcome) {
    if (!outcome) throw std::runtime_error(outcome.problems().front().text());
}

/// Every graded item on both sides, pain, angles and the skin of both legs: as many findings as a thorough
/// examination has, each changing from visit to visit.
std::vector<FindingChange> findingsOf(const Catalogue& catalogue, int visit) {
    std::vector<FindingChange> out;
    int place = 0;
    for (const Item& item : catalogue.items()) {
        if (item.tier != Tier::core || item.scale.kind == Scale::Kind::text) continue;
        for (const Side side : {Side::none, Side::right, Side::left}) {
            if (item.sided == (side == Side::none)) continue;
            const auto step = static_cast<std::size_t>(visit * 7 + ++place * 3);
            const Value value =
                item.scale.numeric()
                    ? Value::number(item.scale.minimum + static_cast<double>(step % 9) / 10 *
                                                             (item.scale.maximum - item.scale.minimum))
                    : Value::token(item.scale.values[step % item.scale.values.size()].token);
            if (!check(catalogue, {item.id, side}, value))
                out.push_back({{item.id, side}, Finding{value, false, {}}});
        }
    }
    return out;
}

double median(std::vector<double> times) {
    std::nth_element(times.begin(), times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2),
                     times.end());
    return times[times.size() / 2];
}

double millisecondsOf(const std::function<void()>& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
}

/// Shown, laid out and painted.
void show(QWidget& widget) {
    widget.resize(1104, 680);
    widget.show();
    QApplication::processEvents();
    widget.repaint();
}

void run() {
    const QTemporaryDir folder;
    const auto file = std::filesystem::path(folder.filePath("clinic.rhizo").toStdString());
    ClinicOptions options;
    options.cost = KeyCost::cheapest();
    need(createClinic(file, "Clinic of the Forty Visits", {"Head", Role::administrator, "long enough"},
                      options));
    const auto store = need(openClinic(file, options));
    need(store->signIn(need(store->users()).front().id, "long enough"));
    const Knowledge knowledge =
        need(Knowledge::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "knowledge"));
    VisitSession::Start start;
    start.patient = need(store->addPatient({"Evergreen Longwalker", "40", "1970-02-11", "female", "", ""}));
    for (int i = 0; i < visits; ++i) {
        const auto date = QDate(2023, 1, 9).addDays(i * 28).toString(Qt::ISODate).toStdString();
        start.visit = need(store->addVisit(start.patient.id, date));
        need(store->record(start.visit.id, findingsOf(knowledge.catalogue(), i)));
    }
    start.exam = need(store->exam(start.visit.id));
    VisitSession session(knowledge, start, nullptr);
    std::vector<double> course;
    std::vector<double> empty;
    for (int i = 0; i < rounds; ++i) {
        empty.push_back(millisecondsOf([] {
            TrendChart chart;
            show(chart);
        }));
        course.push_back(millisecondsOf([&] {
            TrendPage page(session, *store);
            show(page);
        }));
    }
    std::printf("course of %d visits of %zu findings, asked for to painted: median %.1f ms, best %.1f ms\n",
                visits, start.exam.findings().size(), median(course),
                *std::min_element(course.begin(), course.end()));
    std::printf("empty chart in a window: median %.1f ms, best %.1f ms; ratio of medians %.1f\n",
                median(empty), *std::min_element(empty.begin(), empty.end()), median(course) / median(empty));
}

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    try {
        run();
    } catch (const std::exception& error) {
        std::fprintf(stderr, "trend_bench: %s\n", error.what());
        return 1;
    }
    return 0;
}
