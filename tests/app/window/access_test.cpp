#include "hands.h"
#include "support/inventedvisits.h"

#include "figures/figurecanvas.h"
#include "impression/impressionlist.h"
#include "impression/impressionpanel.h"
#include "patients/patientform.h"
#include "patients/patientpage.h"
#include "patients/setuppage.h"
#include "settings/settingspage.h"
#include "summary/pagepreview.h"
#include "window/redsignbar.h"

#include <gtest/gtest.h>
#include <QAccessible>
#include <QComboBox>
#include <QPlainTextEdit>
#include <set>

namespace rhizograph::app::testing {
namespace {

/// Fingers hit 44 px reliably (common practice; the project's own minimum).
constexpr int least = 44;

bool takesPresses(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) != nullptr ||
           qobject_cast<const QLineEdit*>(&widget) != nullptr ||
           qobject_cast<const QComboBox*>(&widget) != nullptr ||
           qobject_cast<const QPlainTextEdit*>(&widget) != nullptr;
}

/// Drawn skin is as small as toes are: a press there counts for the nearest region, and the foot can be
/// enlarged. The reasons of the impression stand close together: each one's item is also reached by the rail
/// and the search.
bool mayBeSmall(const CellHost& host) {
    return dynamic_cast<const FigureCanvas*>(&host) != nullptr ||
           dynamic_cast<const ImpressionList*>(&host) != nullptr ||
           dynamic_cast<const PagePreview*>(&host) != nullptr;
}

class Inspector {
public:
    /// Every fault of what shows on this screen, each once.
    void look(QWidget& screen, const std::string& where) {
        QApplication::processEvents();
        QApplication::processEvents();
        for (QWidget* widget : screen.findChildren<QWidget*>()) {
            if (!widget->isVisibleTo(&screen) || widget->visibleRegion().isEmpty()) continue;
            const auto* host = dynamic_cast<const CellHost*>(widget);
            if (host != nullptr)
                lookAtCells(*widget, *host, where);
            else if (takesPresses(*widget) && widget->isEnabled())
                lookAtControl(*widget, where);
        }
    }

    std::set<std::string> faults;
    int controls = 0;
    int cells = 0;

private:
    static std::string describe(const QWidget& widget, const QString& name) {
        return std::string(widget.metaObject()->className()) + " \"" + name.toStdString() + "\"";
    }
    static std::string sizeText(const QSize& size) {
        return std::to_string(size.width()) + "x" + std::to_string(size.height());
    }
    void lookAtControl(const QWidget& widget, const std::string& where) {
        // Buttons inside a field (clear) belong to the field.
        if (qobject_cast<const QLineEdit*>(widget.parentWidget()) != nullptr) return;
        if (qobject_cast<const QComboBox*>(widget.parentWidget()) != nullptr) return;
        ++controls;
        QAccessibleInterface* interface =
            QAccessible::queryAccessibleInterface(const_cast<QWidget*>(&widget));
        const QString name = interface != nullptr ? interface->text(QAccessible::Name) : QString{};
        if (name.trimmed().isEmpty()) faults.insert(where + ": " + describe(widget, name) + " has no name");
        reachable(widget, name, where);
        if (widget.width() < least || widget.height() < least)
            faults.insert(where + ": " + describe(widget, name) + " is " + sizeText(widget.size()));
    }
    /// By Tab alone, without a mouse.
    void reachable(const QWidget& widget, const QString& name, const std::string& where) {
        if (!(widget.focusPolicy() & Qt::TabFocus))
            faults.insert(where + ": " + describe(widget, name) + " is out of the keyboard's reach");
    }
    void lookAtCells(const QWidget& widget, const CellHost& host, const std::string& where) {
        bool pressableParts = false;
        for (int index = 0; index < host.cellCount(); ++index)
            pressableParts = pressableParts ||
                             (host.cell(index).enabled && host.cell(index).role != QAccessible::StaticText);
        if (pressableParts) reachable(widget, host.hostName(), where);
        if (host.hostName().isEmpty()) faults.insert(where + ": " + describe(widget, {}) + " has no name");
        for (int index = 0; index < host.cellCount(); ++index) {
            const Cell cell = host.cell(index);
            ++cells;
            if (cell.name.trimmed().isEmpty())
                faults.insert(where + ": a part of " + describe(widget, host.hostName()) + " has no name");
            const bool pressable = cell.enabled && cell.role != QAccessible::StaticText && !mayBeSmall(host);
            if (pressable && (cell.rect.width() < least || cell.rect.height() < least))
                faults.insert(where + ": " + describe(widget, cell.name) + " is " +
                              sizeText(cell.rect.size()));
        }
    }
};

std::string list(const std::set<std::string>& faults) {
    std::string out;
    for (const std::string& fault : faults)
        out += "\n  " + fault;
    return out;
}

class EveryScreen : public ::testing::TestWithParam<QSize> {};

TEST_P(EveryScreen, HasNamedControlsLargeEnoughForAFinger) {
    AppClinic clinic;
    Inspector inspector;
    {
        auto window = clinic.window();
        window->resize(GetParam());
        window->openDatabase();
        window->show();
        inspector.look(*window->setupPage(), "set-up");
    }
    clinic.create();
    const VisitId visit = inventDay(*clinic.opened());
    auto window = clinic.window();
    window->resize(GetParam());
    window->openDatabase();
    window->show();
    inspector.look(window->signInPage(), "sign-in");
    signIn(*window);
    inspector.look(*window, "patients");
    const auto found = need(window->store()->searchPatients("fern"));
    emit window->patientsPage().patientChosen(found.front().id);
    inspector.look(*window, "patient");
    emit window->patientsPage().newPatientWanted({});
    inspector.look(*window, "form");
    window->showSettings();
    inspector.look(*window, "settings");
    window->openVisitById(visit);
    VisitPage& page = *window->visitPage();
    for (int index = 0; index < page.pageCount(); ++index) {
        page.showPage(index);
        auto* step = dynamic_cast<StepPage*>(&page.page(index));
        const int tabs = step != nullptr ? static_cast<int>(step->pageNames().size()) : 1;
        for (int tab = 0; tab < tabs; ++tab) {
            if (step != nullptr) step->showPage(tab);
            inspector.look(*window, "visit page " + std::to_string(index) + "." + std::to_string(tab));
        }
    }
    page.showPage(0);
    page.impression().setFolded(!page.impression().folded());
    inspector.look(*window, "impression turned");
    std::printf("[ access ] %d controls, %d painted parts\n", inspector.controls, inspector.cells);
    EXPECT_GT(inspector.controls, 100);
    EXPECT_GT(inspector.cells, 500);
    EXPECT_TRUE(inspector.faults.empty()) << list(inspector.faults);
}

TEST(QuickHand, ARedSignThatComesUpLeavesTheRowUnderTheFinger) {
    AppClinic clinic;
    clinic.create();
    const auto store = clinic.opened();
    const VisitId visit =
        need(
            store->addVisit(
                need(store->addPatient({"Barnaby Oxlip", "00502", "1992-07-02", "male", {}, {}})).id, day(0)))
            .id;
    auto window = clinic.window();
    window->resize(1280, 800);
    window->openDatabase();
    window->show();
    signIn(*window);
    window->openVisitById(visit);
    VisitPage& page = *window->visitPage();
    const FindingKey key{ItemId{"strength.great_toe_extension"}, Side::left};
    page.goTo(key);
    for (int i = 0; i < 5; ++i)
        QApplication::processEvents();
    FindingRow& row = *dynamic_cast<StepPage&>(page.page(page.pageIndex())).row(key.item);
    const QPoint before = row.mapTo(window.get(), QPoint(0, 0));
    pressCell(row, row, row.cellOf(key.side, Value::token("1")));
    for (int i = 0; i < 5; ++i)
        QApplication::processEvents();
    ASSERT_TRUE(page.redSignBar().isVisible());
    EXPECT_EQ(row.mapTo(window.get(), QPoint(0, 0)), before);
}

INSTANTIATE_TEST_SUITE_P(Sizes, EveryScreen,
                         ::testing::Values(QSize(1280, 800), QSize(800, 1280), QSize(1920, 1080)));

} // namespace
} // namespace rhizograph::app::testing
