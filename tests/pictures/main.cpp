#include "courses.h"
#include "support/inventedvisits.h"

#include "compare/comparepage.h"
#include "compare/eventscard.h"
#include "compare/trendpage.h"
#include "exam/findingrow.h"
#include "exam/historysheet.h"
#include "exam/howtosheet.h"
#include "exam/keypad.h"
#include "exam/steppage.h"
#include "impression/impressionpanel.h"
#include "patients/erasedialog.h"
#include "patients/joindialog.h"
#include "patients/patientform.h"
#include "patients/patientpage.h"
#include "patients/patientspage.h"
#include "patients/restorepage.h"
#include "patients/setuppage.h"
#include "patients/signinpage.h"
#include "settings/recordcard.h"
#include "settings/settingspage.h"
#include "summary/summarypage.h"
#include "window/finder.h"
#include "window/problempage.h"
#include "window/tour.h"
#include "window/visitpage.h"

#include <cstdio>
#include <QDir>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTest>

namespace rhizograph::app::testing {
namespace {

struct Look {
    QString name;
    QSize size;
    ThemeName theme;
    int percent;
    Language language = Language::english;
    QStringList only = {}; ///< the screens wanted; all where empty
};

/// Shows one screen after another and keeps a picture of each.
class Photographer {
public:
    Photographer(QString folder, Look look) : folder_(std::move(folder)), look_(std::move(look)) {}

    void run() {
        apply(preferences());
        AppClinic clinic;
        {
            auto window = shown(clinic);
            shoot(*window, "01-first-run");
        }
        clinic.create();
        const VisitId visit = inventDay(*clinic.opened());
        const Courses courses = inventCourses(*clinic.opened());
        auto window = shown(clinic);
        shoot(*window, "02-sign-in");
        emit window->signInPage().signInWanted(need(window->store()->users()).front().id, passphrase);
        if (!waitUntil([&] { return window->screen() == &window->patientsPage(); }))
            throw std::runtime_error("nobody could sign in");
        around(*window);
        inVisit(*window, visit);
        inCourses(*window, courses);
        inSigned(*window, visit);
        window->lock();
        shoot(*window, "40-locked");
        window->problemPage().say("The clinic cannot be opened", "/home/somebody/clinic.rhizo",
                                  "This is not a clinic file, or it is damaged from its first byte on.");
        static_cast<QStackedWidget*>(window->centralWidget())->setCurrentWidget(&window->problemPage());
        shoot(*window, "41-problem");
    }

private:
    [[nodiscard]] Preferences preferences() const {
        return {look_.theme, look_.percent, false, look_.language};
    }

    [[nodiscard]] std::unique_ptr<MainWindow> shown(const AppClinic& clinic) const {
        savePreferences(QString::fromStdString(clinic.path("preferences.ini").string()), preferences());
        auto window = clinic.window();
        window->resize(look_.size);
        window->openDatabase();
        window->show();
        return window;
    }

    void shoot(QWidget& window, const QString& name) const {
        if (!look_.only.isEmpty() && !look_.only.contains(name)) return;
        for (int i = 0; i < 6; ++i)
            QApplication::processEvents(QEventLoop::AllEvents, 20);
        QPixmap picture = window.grab();
        if (QWidget* popup = QApplication::activePopupWidget()) {
            QPainter painter(&picture);
            painter.drawPixmap(popup->mapToGlobal(QPoint()) - window.mapToGlobal(QPoint()), popup->grab());
        }
        const QString file = QStringLiteral("%1/%2-%3.png").arg(folder_, name, look_.name);
        if (!picture.save(file, "PNG", 0)) throw std::runtime_error("cannot write " + file.toStdString());
        std::printf("%s\n", qPrintable(file));
    }

    void around(MainWindow& window) const {
        shoot(window, "03-patients");
        window.patientsPage().searchField().setText("fern");
        shoot(window, "04-search");
        const auto found = need(window.store()->searchPatients("fern"));
        emit window.patientsPage().patientChosen(found.front().id);
        shoot(window, "05-patient");
        emit window.patientsPage().newPatientWanted("Hyacinth Mossgrave");
        shoot(window, "06-new-patient");
        window.showSettings();
        shoot(window, "07-settings");
        keeping(window);
        const Patient patient = found.front();
        JoinDialog join(*window.store(), patient, &window);
        join.searchField().setText("e");
        join.list().setCurrentRow(0);
        join.show();
        shoot(join, "08-join");
        join.close();
        EraseDialog erase(patient, 3, &window);
        erase.show();
        shoot(erase, "09-erase");
        erase.close();
        window.showPatients();
    }

    void keeping(MainWindow& window) const {
        RecordCard& card = window.settingsPage().recordCard();
        card.say("Backed up: clinic-20260304.rhzbackup, 412.0 KB, read back and verified (41 visits).", true);
        for (auto* area : window.settingsPage().findChildren<QScrollArea*>())
            if (area->isAncestorOf(&card)) area->ensureWidgetVisible(&card);
        shoot(window, "07a-record");
        emit card.auditWanted();
        shoot(window, "07b-audit");
        window.restorePage().begin(window.backupFolder().parent_path() / "clinic.rhizo");
        auto& stack = *static_cast<QStackedWidget*>(window.centralWidget());
        QWidget* before = stack.currentWidget();
        stack.setCurrentWidget(&window.restorePage());
        shoot(window, "07c-restore");
        stack.setCurrentWidget(before);
    }

    /// The visit once it is signed, with an addendum.
    void inSigned(MainWindow& window, const VisitId& visit) const {
        window.showPatients();
        need(window.store()->sign(visit, "invented"));
        window.openVisitById(visit);
        turnTo<SummaryPage>(window).addAddendum(
            "Telephoned: less pain since Tuesday, the toe as weak as before.");
        shoot(window, "42-signed");
    }

    template <class Page> Page& turnTo(MainWindow& window) const {
        VisitPage& page = *window.visitPage();
        for (int index = 0; index < page.pageCount(); ++index)
            if (auto* found = qobject_cast<Page*>(&page.page(index))) {
                page.showPage(index);
                return *found;
            }
        throw std::runtime_error("no such page");
    }

    void inCourses(MainWindow& window, const Courses& courses) const {
        window.openVisitById(courses.crossing);
        turnTo<ComparePage>(window);
        shoot(window, "50-crossing-compare");
        turnTo<TrendPage>(window);
        shoot(window, "51-crossing-trend");
        window.openVisitById(courses.sameDay);
        turnTo<TrendPage>(window);
        shoot(window, "52-same-day");
        window.openVisitById(courses.sixty);
        auto& trend = turnTo<TrendPage>(window);
        shoot(window, "53-sixty");
        trend.showEvents(true);
        shoot(window, "54-sixty-events");
        const Outcome written = trend.exportTo(QStringLiteral("%1/55-export-%2.png").arg(folder_, look_.name),
                                               TrendPage::Export::png);
        if (!written) throw std::runtime_error(written.problems().front().text());
        const auto visits = need(window.store()->visitsOf(trend.eventsCard().events().front().patient));
        window.readVisit(visits.front().id);
        shoot(window, "56-read-earlier");
        window.showPatients();
        for (auto* button : window.patientsPage().findChildren<QAbstractButton*>())
            if (button->text() == "Needs a look") button->click();
        shoot(window, "57-needs-a-look");
    }

    void inVisit(MainWindow& window, const VisitId& visit) const {
        window.openVisitById(visit);
        VisitPage& page = *window.visitPage();
        for (int index = 0; index < page.pageCount(); ++index) {
            page.showPage(index);
            const QString number = QString::number(10 + index * 5);
            auto* step = qobject_cast<StepPage*>(&page.page(index));
            if (step == nullptr) {
                shoot(window, number + "-page");
                continue;
            }
            const QStringList tabs = step->pageNames();
            for (int tab = 0; tab < tabs.size(); ++tab) {
                step->showPage(tab);
                shoot(window, QStringLiteral("%1-%2-%3")
                                  .arg(10 + index * 5 + tab)
                                  .arg(QString::fromStdString(step->step().text()))
                                  .arg(tab));
            }
        }
        page.showPage(3);
        const Item& item = *page.session().catalogue().find(ItemId{"reflex.knee"});
        if (auto* step = qobject_cast<StepPage*>(&page.page(3));
            step != nullptr && step->row(item.id) != nullptr) {
            page.session().tap({item.id, Side::left}, Value::token("1"));
            auto* sheet = HistorySheet::open(page.session(), item, Side::left, step->row(item.id));
            shoot(*sheet, "35-history");
            sheet->close();
            page.session().undoStack().undo();
        }
        page.impression().setFolded(!page.impression().folded());
        shoot(window, "36-impression-turned");
        page.impression().setFolded(page.upright());
        page.openFinder();
        page.finder().field().setText("toe");
        shoot(window, "37-finder");
        page.finder().hide();
        popups(window, page);
        page.notice("Not recorded: this visit was signed on another machine.");
        shoot(window, "38-notice");
        window.showPatients();
    }

    /// The number pad with its dial, a reminder of how a test is done, and the tour.
    void popups(MainWindow& window, VisitPage& page) const {
        for (const Item& item : page.session().catalogue().items()) {
            if (item.id.text() != "tension.slr_supine_angle") continue;
            page.goTo({item.id, Side::left});
            auto& step = static_cast<StepPage&>(page.page(page.pageIndex()));
            FindingRow* row = step.row(item.id);
            for (int cell = 0; row != nullptr && cell < row->cellCount(); ++cell)
                if (row->rowLayout().cells[static_cast<std::size_t>(cell)].side == Side::left)
                    row->pressCell(cell);
            if (auto* keypad = qobject_cast<Keypad*>(QApplication::activePopupWidget())) keypad->type("40");
            shoot(window, "46-dial");
            if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
            if (const HowTo* howTo = materials().howTos->find(item.id); howTo != nullptr && row != nullptr)
                HowToSheet::open(item, *howTo, row);
            shoot(window, "47-how-to");
            if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
        }
        page.showPage(3);
        Tour tour(visitStops(page), &page);
        QTest::keyClick(&tour, Qt::Key_Right);
        QTest::keyClick(&tour, Qt::Key_Right);
        shoot(window, "48-tour");
    }

    QString folder_;
    Look look_;
};

/// What the user guide shows.
std::vector<Look> guideLooks() {
    const QSize wide(1280, 800);
    const QStringList screens{
        "02-sign-in",  "03-patients", "05-patient",  "06-new-patient", "07-settings", "07b-audit",
        "48-tour",     "10-intake-0", "11-intake-1", "15-standing-0",  "20-gait-0",   "25-seated-0",
        "26-seated-1", "30-lying-0",  "35-page",     "40-page",        "45-page",     "46-dial",
        "47-how-to",   "37-finder",   "42-signed",   "57-needs-a-look"};
    return {
        {"light", wide, ThemeName::light, 100, Language::english, screens},
        {"dark", wide, ThemeName::dark, 100, Language::english, {"25-seated-0", "26-seated-1"}},
        {"contrast", wide, ThemeName::highContrast, 100, Language::english, {"25-seated-0"}},
        {"upright", {800, 1280}, ThemeName::light, 100, Language::english, {"25-seated-0", "26-seated-1"}},
        {"large", wide, ThemeName::light, 150, Language::english, {"25-seated-0"}},
        {"german", wide, ThemeName::light, 100, Language::german, {"25-seated-0"}},
        {"spanish", wide, ThemeName::light, 100, Language::spanish, {"25-seated-0"}}};
}

void takeAll(const QString& folder, const QStringList& only) {
    const std::vector<std::pair<QString, QSize>> sizes{
        {"1280x800", {1280, 800}}, {"800x1280", {800, 1280}}, {"1920x1080", {1920, 1080}}};
    const std::vector<std::pair<QString, ThemeName>> themes{
        {"light", ThemeName::light}, {"dark", ThemeName::dark}, {"contrast", ThemeName::highContrast}};
    std::vector<Look> looks;
    for (const auto& [sizeName, size] : sizes)
        for (const auto& [themeName, theme] : themes)
            looks.push_back({sizeName + "-" + themeName, size, theme, 100});
    looks.push_back({"1280x800-text150", {1280, 800}, ThemeName::light, 150});
    looks.push_back({"800x1280-text130", {800, 1280}, ThemeName::light, 130});
    looks.push_back({"800x1280-text200", {800, 1280}, ThemeName::light, 200});
    looks.push_back({"1280x800-german", {1280, 800}, ThemeName::light, 100, Language::german});
    looks.push_back({"800x1280-spanish", {800, 1280}, ThemeName::light, 100, Language::spanish});
    for (const Look& look : looks)
        if (only.isEmpty() || only.contains(look.name)) Photographer(folder, look).run();
    if (only.contains(QStringLiteral("guide")))
        for (const Look& look : guideLooks())
            Photographer(folder, look).run();
}

} // namespace
} // namespace rhizograph::app::testing

int main(int count, char** arguments) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(count, arguments);
    QStringList words = QApplication::arguments().mid(1);
    if (words.isEmpty()) {
        std::fputs(
            "usage: rhizograph-pictures FOLDER [LOOK …]   (a look: 1280x800-light, 800x1280-dark, …)\n",
            stderr);
        return 2;
    }
    const QString folder = words.takeFirst();
    if (!QDir().mkpath(folder)) {
        std::fprintf(stderr, "rhizograph-pictures: the folder %s cannot be made\n", qPrintable(folder));
        return 2;
    }
    try {
        rhizograph::app::testing::takeAll(folder, words);
    } catch (const std::exception& error) {
        std::fprintf(stderr, "rhizograph-pictures: %s\n", error.what());
        return 1;
    }
    return 0;
}
