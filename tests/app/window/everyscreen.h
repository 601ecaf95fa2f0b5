#pragma once

#include "hands.h"
#include "support/inventedvisits.h"

#include "impression/impressionpanel.h"
#include "patients/patientform.h"
#include "patients/patientpage.h"
#include "patients/setuppage.h"
#include "settings/settingspage.h"
#include "window/finder.h"

namespace rhizograph::app::testing {

/// Leads through every screen of the program, each shown as a person would see it; `look` gets its name.
inline void everyScreen(const QSize& size, const Preferences& preferences,
                        const std::function<void(QWidget&, const std::string&)>& look) {
    AppClinic clinic;
    apply(preferences);
    savePreferences(QString::fromStdString(clinic.path("preferences.ini").string()), preferences);
    const auto show = [&](QWidget& screen, const std::string& name) {
        for (int i = 0; i < 3; ++i)
            QApplication::processEvents();
        look(screen, name);
    };
    const auto opened = [&] {
        auto window = clinic.window();
        window->resize(size);
        window->openDatabase();
        window->show();
        return window;
    };
    {
        auto window = opened();
        show(*window, "set-up");
    }
    clinic.create();
    const VisitId visit = inventDay(*clinic.opened());
    auto window = opened();
    show(*window, "sign-in");
    emit window->signInPage().signInWanted(need(window->store()->users()).front().id, passphrase);
    if (!waitUntil([&] { return window->screen() == &window->patientsPage(); }))
        throw std::runtime_error("nobody could sign in");
    show(*window, "patients");
    window->patientsPage().searchField().setText("fern");
    show(*window, "search");
    const auto found = need(window->store()->searchPatients("fern"));
    window->patientsPage().searchField().clear();
    window->patientsPage().chooseNeedsALook();
    show(*window, "needs a look");
    emit window->patientsPage().patientChosen(found.front().id);
    show(*window, "patient");
    emit window->patientsPage().newPatientWanted({});
    show(*window, "form");
    window->showSettings();
    show(*window, "settings");
    window->openVisitById(visit);
    VisitPage& page = *window->visitPage();
    for (int index = 0; index < page.pageCount(); ++index) {
        page.showPage(index);
        auto* step = dynamic_cast<StepPage*>(&page.page(index));
        const int tabs = step != nullptr ? static_cast<int>(step->pageNames().size()) : 1;
        for (int tab = 0; tab < tabs; ++tab) {
            if (step != nullptr) step->showPage(tab);
            show(*window, "visit page " + std::to_string(index) + "." + std::to_string(tab));
        }
    }
    page.showPage(0);
    page.impression().setFolded(!page.impression().folded());
    // Upright it lies over the work.
    show(page.upright() ? static_cast<QWidget&>(page.impression()) : *window, "impression turned");
    page.impression().setFolded(page.upright());
    page.openFinder();
    page.finder().field().setText("toe");
    show(page.finder(), "finder"); // it lies over the work
}

} // namespace rhizograph::app::testing
