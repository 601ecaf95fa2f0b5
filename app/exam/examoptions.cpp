#include "exam/examoptions.h"

#include "language/language.h"

#include <algorithm>
#include <map>
#include <string>

namespace rhizograph::app {
namespace {

constexpr double centimetersAnInch = 2.54; // exact: international yard and pound agreement, 1959

/// UCUM codes that people write differently; an empty word where the label already says it.
QString suffixOf(const std::string& unit) {
    static const std::map<std::string, QString> words{{"deg", QStringLiteral("°")},
                                                      {"Cel", QStringLiteral(" °C")},
                                                      {"mm[Hg]", QStringLiteral(" mmHg")},
                                                      {"/min", QStringLiteral("/min")},
                                                      {"min", QStringLiteral(" min")},
                                                      {"0-10", QString()},
                                                      {"0-24", QString()},
                                                      {"count", QString()},
                                                      {"ratio", QString()},
                                                      {"T", QString()},
                                                      {"%", QStringLiteral(" %")}};
    const auto found = words.find(unit);
    return found != words.end() ? found->second : " " + medical(unit);
}

} // namespace

ShownUnit shownUnit(const Scale& scale, LengthUnit length) {
    if (scale.unit == "cm" && length == LengthUnit::inches)
        return {QStringLiteral(" in"), 1 / centimetersAnInch, std::max(1, scale.decimals())};
    return {suffixOf(scale.unit), 1, scale.decimals()};
}

QString shownNumber(const Scale& scale, double stored, LengthUnit length, bool bare) {
    const ShownUnit unit = shownUnit(scale, length);
    QString text = QString::number(stored * unit.factor, 'f', unit.decimals);
    text.replace('-', QChar(0x2212));
    return bare ? text : text + unit.suffix;
}

bool isScore(const Scale& scale) {
    return scale.numeric() && scale.step == 1 && scale.minimum >= 0 && scale.maximum - scale.minimum <= 10;
}

} // namespace rhizograph::app
