#pragma once

#include "catalogue/catalogue.h"
#include "exam/exam.h"

#include <QString>

namespace rhizograph::app {

/// The name of an item with its side, "Great toe extension, left"; the side is left out where it is `known`
/// anyway.
[[nodiscard]] QString itemWords(const Catalogue& catalogue, const FindingKey& key, Side known = Side::none);

/// A value with its unit, "35°", "reduced", "not testable, pain".
[[nodiscard]] QString valueWords(const Item& item, const Value& value);

/// Why something could not be tested, as people read it: "cast or brace".
[[nodiscard]] QString reasonWords(const std::string& reason);

/// Both together, "Great toe extension 3", "Pain at night: yes"; the name alone when nothing was found there.
[[nodiscard]] QString findingWords(const Catalogue& catalogue, const Exam& exam, const FindingKey& key,
                                   Side known = Side::none);

/// "left", "right", "both sides"; empty for none.
[[nodiscard]] QString sideWords(Side side);

/// "L5 root, left".
[[nodiscard]] QString withSide(const QString& what, Side side);

/// The first letter made small unless the word is an abbreviation or the language writes nouns large.
[[nodiscard]] QString inSentence(const QString& label);

/// A probability as whole percent; never 0 or 100, which would claim to be certain.
[[nodiscard]] QString percentWords(double probability);

} // namespace rhizograph::app
