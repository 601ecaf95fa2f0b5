#include "parts/button.h"
#include "parts/strip.h"
#include "window/mainwindow.h"
#include "window/visitpage.h"

#include <QActionGroup>
#include <QFileDialog>
#include <QMenu>
#include <QMessageBox>

namespace rhizograph::app {

void MainWindow::showMenu(Strip& strip) {
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (visitPage_ != nullptr) addVisitWork(*menu);
    addLooks(*menu);
    connect(menu->addAction(tr("Settings …")), &QAction::triggered, this, &MainWindow::showSettings);
    connect(menu->addAction(tr("Bring back unsaved changes …")), &QAction::triggered, this,
            &MainWindow::bringBackUnsaved);
    menu->addSeparator();
    connect(menu->addAction(tr("Switch user")), &QAction::triggered, this, &MainWindow::lock);
    connect(menu->addAction(tr("Quit")), &QAction::triggered, this, &MainWindow::close);
    const PlainButton& button = strip.menuButton();
    menu->popup(button.mapToGlobal(QPoint(button.width() - menu->sizeHint().width(), button.height())));
}

void MainWindow::addLooks(QMenu& menu) {
    QMenu* themes = menu.addMenu(tr("Theme"));
    auto* themeGroup = new QActionGroup(themes);
    const QStringList names{tr("Light"), tr("Dark"), tr("High contrast")};
    for (int index = 0; index < names.size(); ++index) {
        QAction* action = themes->addAction(names[index]);
        action->setCheckable(true);
        action->setChecked(static_cast<int>(preferences_.theme) == index);
        themeGroup->addAction(action);
        connect(action, &QAction::triggered, this, [this, index] {
            Preferences changed = preferences_;
            changed.theme = static_cast<ThemeName>(index);
            setPreferences(changed);
        });
    }
    QMenu* words = menu.addMenu(tr("Language"));
    auto* wordGroup = new QActionGroup(words);
    for (const Language language : languages) {
        QAction* action = words->addAction(nameOf(language));
        action->setCheckable(true);
        action->setChecked(preferences_.language == language);
        wordGroup->addAction(action);
        connect(action, &QAction::triggered, this, [this, language] {
            Preferences changed = preferences_;
            changed.language = language;
            setPreferences(changed);
        });
    }
    QMenu* sizes = menu.addMenu(tr("Text size"));
    auto* sizeGroup = new QActionGroup(sizes);
    for (const int percent : textPercents) {
        QAction* action = sizes->addAction(tr("%1 %").arg(percent));
        action->setCheckable(true);
        action->setChecked(preferences_.textPercent == percent);
        sizeGroup->addAction(action);
        connect(action, &QAction::triggered, this, [this, percent] {
            Preferences changed = preferences_;
            changed.textPercent = percent;
            setPreferences(changed);
        });
    }
}

void MainWindow::addVisitWork(QMenu& menu) {
    connect(menu.addAction(tr("Find an item …")), &QAction::triggered, this,
            [this] { visitPage_->openFinder(); });
    connect(menu.addAction(tr("Show the tour")), &QAction::triggered, this, &MainWindow::showTour);
    if (!session()->readOnly()) {
        connect(menu.addAction(tr("In the room")), &QAction::triggered, this,
                [this] { moveVisitOn(VisitState::inRoom); });
        connect(menu.addAction(tr("To review")), &QAction::triggered, this,
                [this] { moveVisitOn(VisitState::toReview); });
    }
    menu.addSeparator();
}

void MainWindow::bringBackUnsaved() {
    const QString file = QFileDialog::getOpenFileName(this, tr("Bring back unsaved changes"), {},
                                                      tr("Unsaved changes (*.unsaved);;All files (*)"));
    if (file.isEmpty() || !closeVisit()) return;
    auto count = store_->replayUnsaved(file.toStdString());
    if (!count) return complain(count.problems());
    showPatients();
    QMessageBox::information(this, tr("Rhizograph"), tr("Changes brought back: %1.").arg(*count));
}

} // namespace rhizograph::app
