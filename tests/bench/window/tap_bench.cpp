// From a press to the repainted impression, over random presses in a full visit that is being stored, beside
// the repaint of an empty widget in the same run.
#include "support/inventedvisits.h"

#include "exam/findingrow.h"
#include "exam/groupcard.h"
#include "exam/steppage.h"
#include "impression/impressionlist.h"
#include "impression/impressionpanel.h"
#include "patients/patientspage.h"
#include "patients/signinpage.h"
#include "window/visitpage.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <QMouseEvent>
#include <QTest>
#include <random>

namespace rhizograph::app::testing {
namespace {

using Clock = std::chrono::steady_clock;

/// Time this thread worked, in ms: what other programs on the machine cannot lengthen.
double worked() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) / 1e6;
}

constexpr int presses = 2000;
constexpr double frame = 16; ///< ms

double since(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

/// Counts how often a widget was painted.
class PaintCount : public QObject {
public:
    explicit PaintCount(QWidget& widget) { widget.installEventFilter(this); }
    int painted = 0;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        painted += event->type() == QEvent::Paint ? 1 : 0;
        return QObject::eventFilter(watched, event);
    }
};

void print(const char* what, std::vector<double> times) {
    std::sort(times.begin(), times.end());
    const auto at = [&](double share) {
        return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
    };
    std::printf("[ taps ] %-34s median %6.2f ms, p95 %6.2f, p99 %6.2f, most %6.2f (%zu)\n", what, at(0.5),
                at(0.95), at(0.99), at(1), times.size());
}

double percentile(std::vector<double> times, double share) {
    std::sort(times.begin(), times.end());
    return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
}

/// Buttons of the rows that show: what a finger could press now.
struct Target {
    FindingRow* row;
    int cell;
};

std::vector<Target> targets(StepPage& page) {
    std::vector<Target> out;
    for (GroupCard* card : page.cards())
        for (FindingRow* row : card->shownRows())
            if (row->isVisible() && !row->visibleRegion().isEmpty())
                for (int cell = 0; cell < row->cellCount(); ++cell)
                    if (row->cell(cell).role == QAccessible::RadioButton &&
                        row->visibleRegion().contains(row->cell(cell).rect.center()))
                        out.push_back({row, cell});
    return out;
}

struct Times {
    std::vector<double> presses, pressWork, assessments, assessmentWork, pages, pageWork, empty, emptyWork;
    int unpainted = 0;
};

Times measure(MainWindow& window, QWidget& blank) {
    VisitPage& visit = *window.visitPage();
    PaintCount impression(visit.impression().list());
    std::mt19937 random(20240611);
    Times times;
    const auto pick = [&](int count) { return std::uniform_int_distribution<int>(0, count - 1)(random); };
    while (static_cast<int>(times.presses.size()) < presses) {
        const auto turned = Clock::now();
        const double turnedWork = worked();
        visit.showPage(pick(5));
        auto* step = qobject_cast<StepPage*>(&visit.page(visit.pageIndex()));
        step->showPage(pick(static_cast<int>(step->pageNames().size())));
        QApplication::processEvents();
        times.pages.push_back(since(turned));
        times.pageWork.push_back(worked() - turnedWork);
        for (int i = 0; i < 10 && static_cast<int>(times.presses.size()) < presses; ++i) {
            const auto all = targets(*step);
            if (all.empty()) break;
            const Target target = all[static_cast<std::size_t>(pick(static_cast<int>(all.size())))];
            const QPoint at = target.row->cell(target.cell).rect.center();
            const int before = impression.painted;
            const auto start = Clock::now();
            const double startWork = worked();
            QTest::mousePress(target.row, Qt::LeftButton, {}, at, 0);
            QTest::mouseRelease(target.row, Qt::LeftButton, {}, at, 0);
            QApplication::processEvents();
            times.presses.push_back(since(start));
            times.pressWork.push_back(worked() - startWork);
            times.unpainted += impression.painted == before ? 1 : 0;
            const auto bare = Clock::now();
            const double bareWork = worked();
            blank.update();
            QApplication::processEvents();
            times.empty.push_back(since(bare));
            times.emptyWork.push_back(worked() - bareWork);
            const auto thinking = Clock::now();
            const double thinkingWork = worked();
            const Assessment again =
                assess(visit.session().exam(), visit.session().knowledge(), visit.session().previous());
            times.assessments.push_back(since(thinking));
            times.assessmentWork.push_back(worked() - thinkingWork);
        }
    }
    return times;
}

int run() {
    apply({ThemeName::light, 100, false, Language::english});
    AppClinic clinic;
    clinic.create();
    const VisitId visit = inventDay(*clinic.opened());
    auto window = clinic.window();
    window->resize(1280, 800);
    window->openDatabase();
    window->show();
    emit window->signInPage().signInWanted(need(window->store()->users()).front().id, passphrase);
    if (!waitUntil([&] { return window->screen() == &window->patientsPage(); })) return 1;
    const auto opening = Clock::now();
    window->openVisitById(visit);
    QApplication::processEvents();
    const double opened = since(opening);
    QWidget blank;
    blank.resize(1280, 800);
    blank.show();
    QApplication::processEvents();
    const Times times = measure(*window, blank);
    std::printf("[ taps ] opening the visit %.1f ms; %d findings at the end\n", opened,
                static_cast<int>(window->session()->exam().findings().size()));
    print("press to repainted impression", times.presses);
    print("  work of its thread", times.pressWork);
    print("of these the assessment alone", times.assessments);
    print("  work of its thread", times.assessmentWork);
    print("turning to a step and a tab", times.pages);
    print("  work of its thread", times.pageWork);
    print("repaint of an empty widget", times.empty);
    print("  work of its thread", times.emptyWork);
    std::printf("[ taps ] presses that left the impression as it was: %d\n", times.unpainted);
    // Where even an empty widget waits for the processor, only the work itself can be judged.
    const bool quiet = percentile(times.empty, 0.99) < 2;
    const double judged = percentile(quiet ? times.presses : times.pressWork, 0.99);
    std::printf("[ taps ] judged by %s: p99 %.2f ms (at most %.0f)\n",
                quiet ? "the clock" : "the work of the thread, since the machine is busy", judged, frame);
    std::printf("[ taps ] %s\n", judged <= frame ? "met" : "not met");
    return 0;
}

} // namespace
} // namespace rhizograph::app::testing

int main(int count, char** arguments) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(count, arguments);
    try {
        return rhizograph::app::testing::run();
    } catch (const std::exception& error) {
        std::fprintf(stderr, "tap_bench: %s\n", error.what());
        return 1;
    }
}
