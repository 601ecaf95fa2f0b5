#include "exam/rowwords.h"

#include "language/language.h"
#include "parts/findingwords.h"

#include <QCoreApplication>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

} // namespace

QString sideWord(Side side) {
    switch (side) {
    case Side::right:
        return tr("right");
    case Side::left:
        return tr("left");
    case Side::both:
    case Side::none:
        break;
    }
    return {};
}

QString lookWord(Look look) {
    switch (look) {
    case Look::normal:
        return tr("normal");
    case Look::reduced:
        return tr("reduced");
    case Look::marked:
        return tr("marked");
    case Look::heightened:
        return tr("heightened");
    case Look::plain:
        break;
    }
    return {};
}

QString reasonWord(const std::string& reason) {
    return reasonWords(reason);
}

QString valueText(const Scale& scale, const Value& value, LengthUnit length) {
    if (!value.testable()) return tr("Not testable, %1").arg(reasonWord(value.word()));
    if (value.isNumber()) return shownNumber(scale, value.number(), length);
    return medical(display(scale, value));
}

QString valueSpoken(const Scale& scale, const Value& value, LengthUnit length) {
    QString text = valueText(scale, value, length);
    if (scale.kind != Scale::Kind::grade) return smallFirst(text);
    const QString look = lookWord(lookOf(scale, value));
    return look.isEmpty() ? text : text + ", " + look;
}

QString findingName(const Item& item, Side side) {
    const QString label = medical(item.label);
    return side == Side::none ? label : label + ", " + sideWord(side);
}

} // namespace rhizograph::app
