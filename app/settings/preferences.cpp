#include "settings/preferences.h"

#include "shell/dress.h"

#include <algorithm>
#include <QLocale>
#include <QSettings>

namespace rhizograph::app {
namespace {

/// In the order of ThemeName.
constexpr std::array themeWords{"light", "dark", "high contrast"};

} // namespace

Preferences loadPreferences(const QString& file) {
    const QSettings settings(file, QSettings::IniFormat);
    Preferences out;
    const QString theme = settings.value("theme").toString();
    for (std::size_t i = 0; i < themeWords.size(); ++i)
        if (theme == QLatin1String(themeWords.at(i))) out.theme = static_cast<ThemeName>(i);
    const int percent = settings.value("text").toInt();
    if (std::find(textPercents.begin(), textPercents.end(), percent) != textPercents.end())
        out.textPercent = percent;
    out.impressionFolded = settings.value("impressionFolded").toBool();
    out.backupFolder = settings.value("backupFolder").toString();
    out.tourSeen = settings.value("tourSeen").toBool();
    // Until somebody chooses, the program speaks the machine's language where it knows it.
    out.language = languageNamed(settings.value("language", QLocale::system().name()).toString());
    return out;
}

void savePreferences(const QString& file, const Preferences& preferences) {
    QSettings settings(file, QSettings::IniFormat);
    settings.setValue("theme",
                      QString::fromLatin1(themeWords.at(static_cast<std::size_t>(preferences.theme))));
    settings.setValue("text", preferences.textPercent);
    settings.setValue("impressionFolded", preferences.impressionFolded);
    settings.setValue("backupFolder", preferences.backupFolder);
    settings.setValue("tourSeen", preferences.tourSeen);
    settings.setValue("language", codeOf(preferences.language));
}

void apply(const Preferences& preferences) {
    if (spoken() != preferences.language) speak(preferences.language);
    dressApplication(preferences.theme, preferences.textPercent / 100.0);
}

} // namespace rhizograph::app
