#include "patients/words.h"

#include "base/date.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

QString sexWord(const std::string& sex) {
    if (sex == "female") return tr("woman");
    if (sex == "male") return tr("man");
    if (sex == "other") return tr("other");
    return {};
}

} // namespace

QString dayText(const std::string& isoDate) {
    const QDate date = QDate::fromString(QString::fromStdString(isoDate), Qt::ISODate);
    return date.isValid() ? QLocale().toString(date, "d MMM yyyy") : QString::fromStdString(isoDate);
}

QString timeText(const std::string& utc) {
    const QDateTime time = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODate);
    return time.isValid() ? time.toLocalTime().toString("HH:mm") : QString{};
}

std::string today() {
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

QString ageAndSex(const Identity& identity, const std::string& onDay) {
    QStringList parts;
    if (const auto age = ageOn(identity.birthDate, onDay)) parts << tr("%1 y").arg(*age);
    if (const QString sex = sexWord(identity.sex); !sex.isEmpty()) parts << sex;
    return parts.join(", ");
}

QString stateText(const Visit& visit) {
    switch (visit.state) {
    case VisitState::intake:
        return visit.findings == 0 ? tr("Not begun") : tr("Intake, %1 recorded").arg(visit.findings);
    case VisitState::inRoom:
        return tr("In the room");
    case VisitState::toReview:
        return tr("To review");
    case VisitState::signedOff:
        return tr("Signed");
    }
    return {};
}

QString stateDetail(const Visit& visit) {
    const QString author = QString::fromStdString(visit.author);
    const QString time = timeText(visit.changedAt);
    switch (visit.state) {
    case VisitState::intake:
        return visit.findings == 0 ? tr("opened by %1").arg(author) : tr("with %1").arg(author);
    case VisitState::inRoom:
        return tr("last change %1").arg(time);
    case VisitState::toReview:
        return tr("drafted %1").arg(time);
    case VisitState::signedOff:
        return tr("signed %1").arg(time);
    }
    return {};
}

QString redSignCount(int count) {
    return count == 1 ? tr("1 red sign") : tr("%1 red signs").arg(count);
}

QString visitCount(int count) {
    return count == 1 ? tr("1 visit") : tr("%1 visits").arg(count);
}

QString reasonText(const Problems& problems) {
    QStringList lines;
    for (const Problem& problem : problems)
        lines << QString::fromStdString(problem.reason);
    return lines.join('\n');
}

} // namespace rhizograph::app
