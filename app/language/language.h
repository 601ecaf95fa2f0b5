#pragma once

#include <array>
#include <QString>
#include <string>

namespace rhizograph::app {

/// The languages of the user interface; English is the source.
enum class Language { english, german, spanish };

inline constexpr std::array languages{Language::english, Language::german, Language::spanish};

/// "en", "de", "es".
[[nodiscard]] QString codeOf(Language language);
/// The language's name in itself.
[[nodiscard]] QString nameOf(Language language);
/// The language of this code, or of a locale such as "de_AT"; English for any other.
[[nodiscard]] Language languageNamed(const QString& code);

/// From now on tr() and medical() answer in this language, and dates are written its way. Needs the
/// application. Screens that stand already are to be made anew.
void speak(Language language);
[[nodiscard]] Language spoken();

/// A word of the catalogue or of the rules (label, value, sentence) in the language of the user interface; as
/// it is where it has no translation. What is stored are ids and tokens, which no language touches.
[[nodiscard]] QString medical(const std::string& english);
/// The same inside a sentence: small first letter where the language writes nouns small.
[[nodiscard]] QString medicalInSentence(const std::string& english);
/// The first letter made small, except in abbreviations and in languages that write nouns large.
[[nodiscard]] QString smallFirst(const QString& words);

} // namespace rhizograph::app
