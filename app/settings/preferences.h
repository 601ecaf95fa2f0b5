#pragma once

#include "language/language.h"
#include "shell/theme.h"

#include <array>
#include <QString>

namespace rhizograph::app {

/// How the program looks on this machine for whoever uses this account.
struct Preferences {
    ThemeName theme = ThemeName::light;
    int textPercent = 100;
    bool impressionFolded = false;
    Language language = Language::english;
    bool tourSeen = false;
    QString backupFolder{}; ///< where the daily backups go; empty: a folder beside the clinic
    bool operator==(const Preferences&) const = default;
};

/// The text sizes offered, in percent.
inline constexpr std::array textPercents{100, 115, 130, 150, 200};

/// Reads the settings file; what is missing or makes no sense keeps its default.
[[nodiscard]] Preferences loadPreferences(const QString& file);
void savePreferences(const QString& file, const Preferences& preferences);
/// Dresses the application accordingly.
void apply(const Preferences& preferences);

} // namespace rhizograph::app
