#include "window/options.h"

#include <QCommandLineParser>
#include <QStandardPaths>

namespace rhizograph::app {

Options readOptions(const QStringList& arguments, const QString& version) {
    QCommandLineParser parser;
    parser.setApplicationDescription(QStringLiteral(
        "Records the examination of back and leg pain and names the nerve root it points to."));
    const QCommandLineOption database(
        QStringLiteral("database"),
        QStringLiteral("Open this clinic; where there is no such file, offer to set one up."),
        QStringLiteral("FILE"));
    const QCommandLineOption help({QStringLiteral("h"), QStringLiteral("help")},
                                  QStringLiteral("Show this help."));
    const QCommandLineOption ask({QStringLiteral("v"), QStringLiteral("version")},
                                 QStringLiteral("Show the version."));
    parser.addOptions({database, help, ask});
    Options out;
    if (!parser.parse(arguments)) {
        out.problem = parser.errorText();
        return out;
    }
    if (!parser.positionalArguments().isEmpty())
        out.problem = QStringLiteral("Unexpected argument '%1'; a clinic is opened with --database FILE.")
                          .arg(parser.positionalArguments().first());
    if (parser.isSet(help)) out.answer = parser.helpText();
    if (parser.isSet(ask)) out.answer = QStringLiteral("rhizograph %1\n").arg(version);
    out.database = parser.isSet(database)
                       ? parser.value(database)
                       : QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
                             QStringLiteral("/rhizograph/clinic.rhizo");
    if (out.database.isEmpty()) out.problem = QStringLiteral("--database needs the name of a file.");
    return out;
}

} // namespace rhizograph::app
