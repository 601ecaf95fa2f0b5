#include "settings/auditwords.h"

#include "patients/words.h"

#include <QCoreApplication>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

QString gone(const std::string& id) {
    return tr("no longer in the record (%1)").arg(QString::fromStdString(id.substr(0, 8)));
}

} // namespace

QString actionText(AuditAction action) {
    switch (action) {
    case AuditAction::clinicCreated:
        return tr("Clinic created");
    case AuditAction::signedIn:
        return tr("Signed in");
    case AuditAction::signInFailed:
        return tr("Sign-in failed");
    case AuditAction::opened:
        return tr("Visit opened");
    case AuditAction::exported:
        return tr("Handed out");
    case AuditAction::printed:
        return tr("Printed");
    case AuditAction::settingsChanged:
        return tr("Setting changed");
    case AuditAction::userAdded:
        return tr("User added");
    case AuditAction::userChanged:
        return tr("User changed");
    case AuditAction::passphraseChanged:
        return tr("Passphrase changed");
    case AuditAction::visitSigned:
        return tr("Visit signed");
    case AuditAction::addendumAdded:
        return tr("Addendum written");
    case AuditAction::patientsMerged:
        return tr("Duplicate joined");
    case AuditAction::patientsParted:
        return tr("Duplicate parted");
    case AuditAction::patientAdded:
        return tr("Patient added");
    case AuditAction::patientChanged:
        return tr("Patient corrected");
    case AuditAction::visitAdded:
        return tr("Visit begun");
    case AuditAction::patientErased:
        return tr("Erased");
    case AuditAction::backedUp:
        return tr("Backed up");
    case AuditAction::restored:
        return tr("Restored");
    case AuditAction::verified:
        return tr("Verified");
    case AuditAction::unsavedReplayed:
        return tr("Unsaved changes brought back");
    case AuditAction::eventWritten:
        return tr("Event written");
    case AuditAction::imported:
        return tr("Imported");
    }
    return {};
}

AuditWords::AuditWords(Store& store) : store_(store) {
    if (const auto users = store.users())
        for (const User& each : *users)
            users_.emplace(each.id.text(), QString::fromStdString(each.name));
}

QString AuditWords::user(const std::string& id) {
    const auto found = users_.find(id);
    return found == users_.end() ? QString{} : found->second;
}

QString AuditWords::patient(const std::string& id) {
    const auto [place, isNew] = known_.try_emplace(id);
    if (!isNew) return place->second;
    const auto found = store_.patient(PatientId{id});
    place->second = found ? QString::fromStdString(found->identity.name) : QString{};
    return place->second;
}

/// A joined duplicate goes by the patient's name everywhere but here.
QString AuditWords::duplicate(const std::string& id, const std::string& person) {
    if (const auto joined = store_.duplicatesOf(PatientId{person}))
        for (const Patient& each : *joined)
            if (each.id.text() == id) return QString::fromStdString(each.identity.name);
    return {};
}

QString AuditWords::visit(const std::string& id) {
    const auto [place, isNew] = known_.try_emplace("visit " + id);
    if (!isNew) return place->second;
    const auto found = store_.visit(VisitId{id});
    const QString whose = found ? patient(found->patient.text()) : QString{};
    if (!whose.isEmpty()) place->second = tr("%1, visit of %2").arg(whose, dayText(found->date));
    return place->second;
}

QString AuditWords::subject(const AuditEntry& entry) {
    if (entry.action == AuditAction::eventWritten) {
        const QString whose = patient(entry.detail);
        return whose.isEmpty() ? gone(entry.detail) : whose;
    }
    if (entry.subject.empty()) return {};
    if (entry.action == AuditAction::patientsMerged || entry.action == AuditAction::patientsParted)
        if (const QString own = duplicate(entry.subject, entry.detail); !own.isEmpty()) return own;
    for (const QString& words : {user(entry.subject), visit(entry.subject), patient(entry.subject)})
        if (!words.isEmpty()) return words;
    return gone(entry.subject);
}

QString AuditWords::detail(const AuditEntry& entry) {
    switch (entry.action) {
    case AuditAction::visitAdded:
    case AuditAction::eventWritten:
        return {};
    case AuditAction::patientsMerged:
    case AuditAction::patientsParted:
        return patient(entry.detail);
    case AuditAction::visitSigned:
    case AuditAction::addendumAdded:
        return tr("%1 entries").arg(QString::fromStdString(entry.detail));
    default:
        return QString::fromStdString(entry.detail);
    }
}

} // namespace rhizograph::app
