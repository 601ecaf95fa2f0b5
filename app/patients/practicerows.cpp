#include "patients/practicerows.h"

#include "patients/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QStringList>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

const QString apart = QStringLiteral(" · ");

/// "3 Mar 26": the column is narrow.
QString shortDay(const std::string& isoDate) {
    const QDate date = QDate::fromString(QString::fromStdString(isoDate), Qt::ISODate);
    return QLocale(QLocale::English).toString(date, QStringLiteral("d MMM yy"));
}

/// The gravest reason, for the bold line.
QString firstReason(const Attention& one) {
    if (one.redSigns > 0) return redSignCount(one.redSigns);
    if (one.worse > 0) return one.worse == 1 ? tr("1 finding worse") : tr("%1 findings worse").arg(one.worse);
    if (!one.overdueSince.empty()) return tr("Follow-up passed");
    return tr("Not signed");
}

QStringList otherReasons(const Attention& one) {
    QStringList out;
    if (one.redSigns > 0 && one.worse > 0) out << tr("%1 worse").arg(one.worse);
    if (!one.overdueSince.empty()) out << tr("follow-up due %1").arg(dayText(one.overdueSince));
    const bool said = one.redSigns == 0 && one.worse == 0 && one.overdueSince.empty();
    if (one.unsignedVisits > 1)
        out << tr("%1 visits not signed").arg(one.unsignedVisits);
    else if (one.unsignedVisits == 1 && !said)
        out << tr("not signed");
    return out;
}

} // namespace

ListedVisit attentionRow(const Attention& one, const Identity& identity) {
    ListedVisit row;
    row.name = QString::fromStdString(identity.name);
    row.about = ageAndSex(identity, one.date.empty() ? today() : one.date);
    row.record = QString::fromStdString(identity.recordNumber);
    row.visit = one.date.empty() ? tr("none yet") : shortDay(one.date);
    row.state = firstReason(one);
    row.detail = otherReasons(one).join(apart);
    row.action = one.visit.empty() ? tr("Choose") : tr("Open");
    row.primary = one.redSigns > 0;
    return row;
}

QString practiceWords(const Practice& practice) {
    QStringList parts;
    const auto count = [&](int number, const QString& text) {
        if (number > 0) parts << text.arg(number);
    };
    count(practice.withRedSigns, tr("%1 with a red sign"));
    count(practice.withWorse, tr("%1 worse"));
    count(practice.withOverdue, tr("%1 follow-ups passed"));
    count(practice.withUnsigned, tr("%1 not signed"));
    if (practice.patients.size() < static_cast<std::size_t>(practice.all))
        parts << tr("the first %1 of %2").arg(practice.patients.size()).arg(practice.all);
    return parts.join(apart);
}

} // namespace rhizograph::app
