#pragma once

#include "hands.h"
#include "support/inventedvisits.h"

#include "compare/trendpage.h"
#include "exam/groupcard.h"
#include "exam/historysheet.h"
#include "exam/howtosheet.h"
#include "exam/keypad.h"
#include "impression/impressionpanel.h"
#include "patients/erasedialog.h"
#include "patients/joindialog.h"
#include "patients/listdialog.h"
#include "patients/patientform.h"
#include "patients/patientpage.h"
#include "patients/restorepage.h"
#include "patients/setuppage.h"
#include "settings/auditpage.h"
#include "settings/recordcard.h"
#include "settings/settingspage.h"
#include "summary/summarypage.h"
#include "window/finder.h"
#include "window/noticebar.h"
#include "window/problempage.h"
#include "window/tour.h"

#include <fstream>
#include <QListWidget>
#include <QStackedWidget>

namespace rhizograph::app::testing {

/// Leads through every screen of the program, each shown as a person would see it.
class Walk {
public:
    /// What looks at a screen gets its name.
    using Look = std::function<void(QWidget&, const std::string&)>;

    Walk(QSize size, Preferences preferences, Look look)
        : size_(size), preferences_(std::move(preferences)), look_(std::move(look)) {}

    void run() {
        apply(preferences_);
        savePreferences(QString::fromStdString(clinic_.path("preferences.ini").string()), preferences_);
        {
            auto window = opened();
            show(*window, "set-up");
        }
        clinic_.create();
        const VisitId visit = inventDay(*clinic_.opened());
        auto window = opened();
        show(*window, "sign-in");
        emit window->signInPage().signInWanted(need(window->store()->users()).front().id, passphrase);
        if (!waitUntil([&] { return window->screen() == &window->patientsPage(); }))
            throw std::runtime_error("nobody could sign in");
        around(*window);
        window->openVisitById(visit);
        inVisit(*window);
        over(*window);
        signedVisit(*window, visit);
        atTheDoor(*window);
    }

private:
    [[nodiscard]] std::unique_ptr<MainWindow> opened() const {
        auto window = clinic_.window();
        window->resize(size_);
        window->openDatabase();
        window->show();
        return window;
    }
    void show(QWidget& screen, const std::string& name) const {
        for (int i = 0; i < 8; ++i)
            QApplication::processEvents();
        look_(screen, name);
    }

    /// Patients, settings and what stands around the visit.
    void around(MainWindow& window) const {
        show(window, "patients");
        window.patientsPage().searchField().setText("fern");
        show(window, "search");
        window.patientsPage().searchField().setText("nobody of this name");
        show(window, "nobody found");
        const auto found = need(window.store()->searchPatients("fern"));
        window.patientsPage().searchField().clear();
        window.patientsPage().chooseNeedsALook();
        show(window, "needs a look");
        emit window.patientsPage().patientChosen(found.front().id);
        show(window, "patient");
        emit window.patientsPage().newPatientWanted({});
        show(window, "form");
        dialogs(window, found.front());
        window.showSettings();
        show(window, "settings");
        window.settingsPage().recordCard().say(
            "Backed up: clinic-20260304.rhzbackup, 412.0 KB, read back and verified (41 visits).", true);
        show(window, "settings, backed up");
        emit window.settingsPage().recordCard().auditWanted();
        show(window, "audit");
        window.restorePage().begin(clinic_.file());
        turnTo(window, window.restorePage());
        show(window, "restore");
        window.showPatients();
    }
    void dialogs(MainWindow& window, const Patient& patient) const {
        JoinDialog join(*window.store(), patient, &window);
        join.searchField().setText("e");
        join.list().setCurrentRow(0);
        join.show();
        show(join, "join");
        join.close();
        EraseDialog erase(patient, 3, &window);
        erase.show();
        show(erase, "erase");
        erase.close();
        const std::filesystem::path table = clinic_.path("patients.csv");
        std::ofstream(table) << "name,number,born,sex\nSorrel Wintergreen,00701,1970-02-03,female\n"
                                "Bracken Underhill,00702,31.02.1980,male\n";
        ListDialog list(*window.store(), &window);
        list.open(QString::fromStdString(table.string()));
        list.show();
        show(list, "list of patients");
        list.close();
    }

    /// Every page of the open visit, with what waits behind More.
    void inVisit(MainWindow& window) const {
        VisitPage& page = *window.visitPage();
        for (int index = 0; index < page.pageCount(); ++index) {
            page.showPage(index);
            const std::string name = "visit page " + std::to_string(index) + ".";
            auto* step = dynamic_cast<StepPage*>(&page.page(index));
            if (step == nullptr) {
                show(window, name + "0");
                continue;
            }
            for (GroupCard* card : step->cards())
                card->setMoreShown(true);
            for (int tab = 0; tab < static_cast<int>(step->pageNames().size()); ++tab) {
                step->showPage(tab);
                show(window, name + std::to_string(tab));
            }
        }
        for (int index = 0; index < page.pageCount(); ++index)
            if (auto* trend = dynamic_cast<TrendPage*>(&page.page(index))) {
                page.showPage(index);
                trend->showEvents(true);
                show(window, "events");
                trend->showEvents(false);
            } else if (auto* summary = dynamic_cast<SummaryPage*>(&page.page(index))) {
                page.showPage(index);
                summary->editSection("impression");
                show(window, "words");
            }
        page.showPage(0);
        page.impression().setFolded(!page.impression().folded());
        show(window, "impression turned");
        page.impression().setFolded(page.upright());
    }

    /// What lies over the work for a moment.
    void over(MainWindow& window) const {
        VisitPage& page = *window.visitPage();
        page.openFinder();
        page.finder().field().setText("toe");
        show(page.finder(), "finder");
        page.finder().hide();
        page.notice("Not recorded: this visit was signed on another machine.");
        show(window, "notice");
        sheets(page);
        Tour tour(visitStops(page), &page);
        for (std::size_t stop = 0; stop < tour.length(); ++stop) {
            show(tour, "tour " + std::to_string(stop));
            if (stop + 1 < tour.length()) QTest::keyClick(&tour, Qt::Key_Right);
        }
    }
    void sheets(VisitPage& page) const {
        const auto closed = [&](const std::string& name) {
            QWidget* popup = QApplication::activePopupWidget();
            if (popup == nullptr) throw std::runtime_error("no sheet: " + name);
            show(*popup, name);
            popup->close();
        };
        const Item& item = *page.session().catalogue().find("tension.slr_supine_angle");
        page.goTo({item.id, Side::left});
        FindingRow& row = *dynamic_cast<StepPage&>(page.page(page.pageIndex())).row(item.id);
        for (int cell = 0; cell < row.cellCount() && QApplication::activePopupWidget() == nullptr; ++cell)
            if (row.rowLayout().cells[static_cast<std::size_t>(cell)].side == Side::left) row.pressCell(cell);
        if (auto* keypad = dynamic_cast<Keypad*>(QApplication::activePopupWidget())) keypad->type("940");
        closed("dial");
        HowToSheet::open(item, *materials().howTos->find(item.id), &row);
        closed("how it is done");
        const Item& toe = *page.session().catalogue().find("strength.great_toe_extension");
        HistorySheet::open(page.session(), toe, Side::left, &row);
        closed("what it was before");
    }

    /// The same visit, signed, with an addendum; and one that is only read.
    void signedVisit(MainWindow& window, const VisitId& visit) const {
        window.showPatients();
        need(window.store()->sign(visit, "invented"));
        window.openVisitById(visit);
        VisitPage& page = *window.visitPage();
        page.offerWayBack("You read an earlier visit.");
        show(window, "signed, first page");
        for (int index = 0; index < page.pageCount(); ++index)
            if (auto* summary = dynamic_cast<SummaryPage*>(&page.page(index))) {
                page.showPage(index);
                summary->addAddendum("Telephoned: the leg is better since Tuesday.");
                show(window, "signed, summary");
            }
    }
    void atTheDoor(MainWindow& window) const {
        window.lock();
        show(window, "locked");
        window.problemPage().say("The clinic is not open", "/home/somebody/clinic.rhizo",
                                 "This is not a clinic file, or it is damaged from its first byte on.");
        turnTo(window, window.problemPage());
        show(window, "problem");
    }
    static void turnTo(MainWindow& window, QWidget& page) {
        static_cast<QStackedWidget*>(window.centralWidget())->setCurrentWidget(&page);
    }

    QSize size_;
    Preferences preferences_;
    Look look_;
    AppClinic clinic_;
};

inline void everyScreen(const QSize& size, const Preferences& preferences, const Walk::Look& look) {
    Walk(size, preferences, look).run();
}

} // namespace rhizograph::app::testing
