#include "parts/findingwords.h"

#include "language/language.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <QCoreApplication>
#include <utility>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

/// How people write the units of the catalogue, with the space before them where one is due.
QString unitWords(const std::string& unit) {
    // Not kept: the language may change.
    const std::array<std::pair<std::string, QString>, 9> written{{
        {"deg", QStringLiteral("°")},
        {"Cel", QStringLiteral(" °C")},
        {"mm[Hg]", QStringLiteral(" mmHg")},
        {"0-10", tr(" of 10")},
        {"0-24", tr(" of 24")},
        {"%", QStringLiteral(" %")},
        {"T", {}},
        {"ratio", {}},
        {"count", {}},
    }};
    for (const auto& [code, words] : written)
        if (code == unit) return words;
    return unit.empty() ? QString() : QStringLiteral(" ") + medical(unit);
}

} // namespace

QString sideWords(Side side) {
    switch (side) {
    case Side::left:
        return tr("left");
    case Side::right:
        return tr("right");
    case Side::both:
        return tr("both sides");
    case Side::none:
        break;
    }
    return {};
}

QString withSide(const QString& what, Side side) {
    // A name that says "both sides" itself needs no second one.
    if (side == Side::none || what.endsWith(sideWords(side))) return what;
    return what + QStringLiteral(", ") + sideWords(side);
}

QString inSentence(const QString& label) {
    return smallFirst(label);
}

QString itemWords(const Catalogue& catalogue, const FindingKey& key, Side known) {
    const Item* item = catalogue.find(key.item);
    const QString label = medical(item == nullptr ? key.item.text() : item->label);
    return key.side == known ? label : withSide(label, key.side);
}

QString reasonWords(const std::string& reason) {
    std::string words = reason;
    std::ranges::replace(words, '_', ' ');
    return medical(words);
}

QString valueWords(const Item& item, const Value& value) {
    if (!value.testable()) return tr("not testable, %1").arg(reasonWords(value.word()));
    QString words = value.kind() == Value::Kind::token ? medical(display(item.scale, value))
                                                       : QString::fromStdString(display(item.scale, value));
    if (value.isNumber()) words += unitWords(item.scale.unit);
    return item.scale.kind == Scale::Kind::choice ? inSentence(words) : words;
}

QString findingWords(const Catalogue& catalogue, const Exam& exam, const FindingKey& key, Side known) {
    const QString label = itemWords(catalogue, key, known);
    const Item* item = catalogue.find(key.item);
    const Finding* finding = exam.find(key);
    if (item == nullptr || finding == nullptr) return label;
    const bool figure = finding->value.testable() && item->scale.kind != Scale::Kind::choice &&
                        item->scale.kind != Scale::Kind::text;
    const QString joint = figure                             ? QStringLiteral(" ")
                          : label.contains(QLatin1Char(':')) ? QStringLiteral(", ")
                                                             : QStringLiteral(": ");
    return label + joint + valueWords(*item, finding->value);
}

QString percentWords(double probability) {
    if (probability < 0.01) return tr("under 1 %");
    if (probability > 0.99) return tr("over 99 %");
    return QStringLiteral("%1 %").arg(static_cast<int>(std::lround(100 * probability)));
}

} // namespace rhizograph::app
