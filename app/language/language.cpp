#include "language/language.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>
#include <stdexcept>

/// The words stand in a library, whose resources a program has to ask for; in the global namespace only.
static void openLanguages() {
    Q_INIT_RESOURCE(languages);
}

namespace rhizograph::app {
namespace {

constexpr const char* property = "rhizograph.language";

/// The files of one language: the user interface and the medical words.
void install(const QString& code) {
    for (const QString& part : {QStringLiteral("screens"), QStringLiteral("medicine")}) {
        auto* translator = new QTranslator(qApp);
        if (!translator->load(QStringLiteral(":/languages/%1_%2.qm").arg(part, code)))
            throw std::logic_error("a language was built without its words: " + code.toStdString());
        QCoreApplication::installTranslator(translator);
    }
}

} // namespace

QString codeOf(Language language) {
    switch (language) {
    case Language::english:
        return QStringLiteral("en");
    case Language::german:
        return QStringLiteral("de");
    case Language::spanish:
        return QStringLiteral("es");
    }
    throw std::logic_error("no such language");
}

QString nameOf(Language language) {
    switch (language) {
    case Language::english:
        return QStringLiteral("English");
    case Language::german:
        return QStringLiteral("Deutsch");
    case Language::spanish:
        return QStringLiteral("Español");
    }
    throw std::logic_error("no such language");
}

Language languageNamed(const QString& code) {
    for (const Language language : languages)
        if (code.left(2) == codeOf(language)) return language;
    return Language::english;
}

void speak(Language language) {
    for (QTranslator* old : qApp->findChildren<QTranslator*>(Qt::FindDirectChildrenOnly)) {
        QCoreApplication::removeTranslator(old);
        delete old;
    }
    qApp->setProperty(property, static_cast<int>(language));
    // English keeps the machine's own way of writing dates.
    QLocale::setDefault(language == Language::english ? QLocale::system() : QLocale(codeOf(language)));
    if (language == Language::english) return;
    openLanguages();
    install(codeOf(language));
}

Language spoken() {
    return static_cast<Language>(qApp->property(property).toInt());
}

QString medical(const std::string& english) {
    return english.empty() ? QString() : QCoreApplication::translate("medicine", english.c_str());
}

QString medicalInSentence(const std::string& english) {
    return smallFirst(medical(english));
}

QString smallFirst(const QString& words) {
    if (words.isEmpty() || spoken() == Language::german) return words;
    const bool abbreviation = words.size() > 1 && !words.at(1).isLower() && words.at(1) != QLatin1Char(' ');
    return abbreviation ? words : words.at(0).toLower() + words.mid(1);
}

} // namespace rhizograph::app
