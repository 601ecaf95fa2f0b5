#include "record/claims.h"

#include "record/sqlstore.h"

#include <charconv>
#include <utility>

namespace rhizograph {
namespace {

constexpr std::string_view withClaims = "\x1f"; // entries of schema 1 are the bare words
constexpr std::string_view betweenSettingAndValue = " = ";

std::int64_t numberIn(const std::string& text) {
    std::int64_t number = 0;
    std::from_chars(text.data(), text.data() + text.size(), number);
    return number;
}

} // namespace

std::string AuditText::joined() const {
    Packer out;
    out.text(detail).number(static_cast<std::int64_t>(claims.size()));
    for (const auto& [kind, value] : claims)
        out.text(kind).text(value);
    return std::string{withClaims} + out.packed();
}

AuditText AuditText::from(std::string_view joined) {
    if (!joined.starts_with(withClaims)) return {std::string{joined}, {}};
    Unpacker in{joined.substr(withClaims.size())};
    AuditText text{in.text(), {}};
    for (std::size_t left = in.count(); left > 0; --left) {
        std::string kind = in.text();
        text.claims.emplace(std::move(kind), in.text());
    }
    return text;
}

std::string claim::ofIdentity(const Keys& keys, const std::string& patient, const Bytes& sealed) {
    return hexText(
        keyedHash(keys.chain, Packer{}.text("identity claim").text(patient).bytes(sealed).packed()));
}

std::string claim::ofSlot(const Keys& keys, const std::string& user, const Bytes& salt,
                          const Bytes& wrapped) {
    return hexText(
        keyedHash(keys.chain, Packer{}.text("slot claim").text(user).bytes(salt).bytes(wrapped).packed()));
}

void AuditClaims::add(const Keys& keys, const AuditRow& row) {
    const AuditText text = row.content(keys);
    const auto take = [&](const char* kind, std::string& into) {
        if (const auto found = text.claims.find(kind); found != text.claims.end()) into = found->second;
    };
    switch (auditActionNamed(row.action).value_or(AuditAction::opened)) {
    case AuditAction::clinicCreated:
        complete = text.claims.contains(claim::all);
        clinicName = text.detail;
        take(claim::clinic, clinicId);
        break;
    case AuditAction::userAdded:
    case AuditAction::userChanged:
    case AuditAction::passphraseChanged:
        if (text.claims.contains(claim::staff)) take(claim::staff, staff[row.subject]);
        if (text.claims.contains(claim::slot)) take(claim::slot, slots[row.subject]);
        break;
    case AuditAction::settingsChanged:
        if (const std::size_t at = text.detail.find(betweenSettingAndValue); at != std::string::npos)
            settings[text.detail.substr(0, at)] = text.detail.substr(at + betweenSettingAndValue.size());
        break;
    case AuditAction::patientAdded:
    case AuditAction::patientChanged:
        take(claim::identity, patients[row.subject].emplace_back());
        break;
    case AuditAction::eventWritten:
        patientEvents[row.subject].patient = text.detail;
        take(claim::event, patientEvents[row.subject].versions.emplace_back());
        break;
    case AuditAction::patientErased:
        erased.insert(row.subject);
        patients.erase(row.subject);
        visits.erase(row.subject);
        joined.erase(row.subject);
        std::erase_if(patientEvents, [&](const auto& each) { return each.second.patient == row.subject; });
        break;
    case AuditAction::patientsMerged:
        joined[row.subject] = text.detail;
        break;
    case AuditAction::patientsParted:
        joined.erase(row.subject);
        break;
    case AuditAction::visitAdded:
        visits.insert(row.subject);
        break;
    case AuditAction::visitSigned:
    case AuditAction::addendumAdded:
        events[row.subject].insert(numberIn(text.detail));
        break;
    default:
        break;
    }
}

} // namespace rhizograph
