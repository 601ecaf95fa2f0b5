#pragma once

#include <optional>
#include <QString>
#include <QStringList>

namespace rhizograph::app {

/// What the command line asks for.
struct Options {
    QString database; ///< the clinic file
    QString answer;   ///< text to print instead of opening a window
    QString problem;  ///< why the command line makes no sense
};

/// Reads the arguments, the program's name first. The clinic file is by default in the user's data folder.
[[nodiscard]] Options readOptions(const QStringList& arguments, const QString& version);

} // namespace rhizograph::app
