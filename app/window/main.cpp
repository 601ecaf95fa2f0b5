#include "patients/words.h"
#include "record/privacy.h"
#include "settings/preferences.h"
#include "window/mainwindow.h"
#include "window/options.h"

#include <cstdio>
#include <QApplication>
#include <QMessageBox>
#include <QStandardPaths>

namespace {

QStringList argumentsOf(int count, char** arguments) {
    QStringList out;
    for (int i = 0; i < count; ++i)
        out << QString::fromLocal8Bit(arguments[i]);
    return out;
}

QString problemList(const rhizograph::Problems& problems) {
    QStringList lines;
    for (const auto& problem : problems)
        lines << QString::fromStdString(problem.text());
    return lines.join('\n');
}

} // namespace

int main(int count, char** arguments) {
    using namespace rhizograph::app;
    // A crash image would hold names in the clear.
    rhizograph::forbidCrashImages();
    // Help and version need no screen.
    QCoreApplication::setApplicationName(QStringLiteral("rhizograph"));
    const QString version = QStringLiteral(RHIZOGRAPH_VERSION);
    {
        QStringList ours = argumentsOf(count, arguments);
        if (ours.contains(QStringLiteral("--help")) || ours.contains(QStringLiteral("-h")) ||
            ours.contains(QStringLiteral("--version")) || ours.contains(QStringLiteral("-v"))) {
            const QCoreApplication nameless(count, arguments); // for the program's name in the help
            const Options options = readOptions(ours, version);
            std::fputs(qPrintable(options.problem.isEmpty() ? options.answer : options.problem + '\n'),
                       options.problem.isEmpty() ? stdout : stderr);
            return options.problem.isEmpty() ? 0 : 2;
        }
    }
    QApplication application(count, arguments);
    const Options options = readOptions(QApplication::arguments(), version);
    if (!options.problem.isEmpty()) {
        std::fputs(qPrintable(QStringLiteral("rhizograph: %1\n").arg(options.problem)), stderr);
        return 2;
    }
    PromisedMaterials materials = loadMaterials(resourceFolder());
    const QString preferences = QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) +
                                QStringLiteral("/rhizograph.ini");
    apply(loadPreferences(preferences));
    MainWindow::Setup setup;
    setup.database = options.database.toStdString();
    setup.preferencesFile = preferences;
    setup.tour = true;
    MainWindow window(std::move(materials), std::move(setup));
    window.openDatabase();
    window.show();
    QObject::connect(
        &window, &MainWindow::materialsUnreadable, &window, [&window](const rhizograph::Problems& problems) {
            const QString text = problemList(problems);
            std::fputs(qPrintable(QStringLiteral("rhizograph: ") + text + '\n'), stderr);
            QMessageBox::critical(&window, MainWindow::tr("Rhizograph cannot start"),
                                  MainWindow::tr("Its medical knowledge cannot be read:\n%1").arg(text));
            QApplication::exit(2);
        });
    return QApplication::exec();
}
