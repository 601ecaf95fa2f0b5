#include "record/sqlstore.h"
#include "record/verify.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <utility>

namespace rhizograph {
namespace {

constexpr std::array<std::pair<AuditAction, std::string_view>, 24> actionWords{{
    {AuditAction::clinicCreated, "clinic created"},
    {AuditAction::signedIn, "signed in"},
    {AuditAction::signInFailed, "sign-in failed"},
    {AuditAction::opened, "opened"},
    {AuditAction::exported, "exported"},
    {AuditAction::printed, "printed"},
    {AuditAction::settingsChanged, "settings changed"},
    {AuditAction::userAdded, "user added"},
    {AuditAction::userChanged, "user changed"},
    {AuditAction::passphraseChanged, "passphrase changed"},
    {AuditAction::visitSigned, "visit signed"},
    {AuditAction::addendumAdded, "addendum added"},
    {AuditAction::patientsMerged, "patients merged"},
    {AuditAction::patientsParted, "patients parted"},
    {AuditAction::patientAdded, "patient added"},
    {AuditAction::patientChanged, "patient changed"},
    {AuditAction::visitAdded, "visit added"},
    {AuditAction::patientErased, "patient erased"},
    {AuditAction::backedUp, "backed up"},
    {AuditAction::restored, "restored"},
    {AuditAction::verified, "verified"},
    {AuditAction::unsavedReplayed, "unsaved changes replayed"},
    {AuditAction::eventWritten, "event written"},
    {AuditAction::imported, "imported"},
}};

} // namespace

std::string_view name(AuditAction action) {
    return std::find_if(actionWords.begin(), actionWords.end(),
                        [&](const auto& entry) { return entry.first == action; })
        ->second;
}

std::optional<AuditAction> auditActionNamed(std::string_view word) {
    for (const auto& [action, text] : actionWords)
        if (text == word) return action;
    return std::nullopt;
}

void SqlStore::addAuditFor(const Keys& keys, const std::string& staff, const std::string& at,
                           AuditAction action, const std::string& subject, const std::string& detail,
                           const Claims& claims) {
    const auto lastRow =
        database_->first(fmt::format("select {} from audit order by number desc limit 1", AuditRow::columns));
    const AuditRow last = lastRow ? AuditRow::from(*lastRow) : AuditRow{};
    const auto head = database_->first("select number, mac from audit_head");
    AuditRow row{last.number + 1, at, staff, std::string{name(action)}, subject, {}, {}};
    row.sealed = seal(keys.sealing, AuditText{detail, claims}.joined(), row.context());
    row.mac = row.expectedMac(keys, last.mac);
    database_->run("insert into audit (number, at, staff, action, subject, sealed, mac) values ($1, $2, $3, "
                   "$4, $5, $6, $7)",
                   {row.number, row.at, row.staff.empty() ? sql::Cell{} : sql::Cell{row.staff}, row.action,
                    row.subject, row.sealed, row.mac});
    // The audit's end is vouched for too: otherwise its last entries could be cut off unnoticed. Where that
    // has happened already, a new end would cover it up, so the old one is left to be found.
    const bool first = !lastRow && !head;
    if (first ||
        (lastRow && head && head->integer(0) == last.number && sameMac(head->bytes(1), last.asEnd(keys))))
        database_->run("insert into audit_head (one, number, mac) values (1, $1, $2) "
                       "on conflict (one) do update set number = excluded.number, mac = excluded.mac",
                       {row.number, row.asEnd(keys)});
}

void SqlStore::addAudit(AuditAction action, const std::string& subject, const std::string& detail,
                        const Claims& claims) {
    addAuditFor(keys(), session().user.id.text(), now(), action, subject, detail, claims);
}

void SqlStore::noteRestored(const Keys& keys, const std::string& user, const std::string& detail) {
    sql::Transaction transaction{*database_};
    addAuditFor(keys, user, now(), AuditAction::restored, "", detail);
    transaction.commit();
}

Outcome SqlStore::log(AuditAction action, const std::string& subject, const std::string& detail) {
    return guardedAction([&] {
        static constexpr std::array<std::pair<AuditAction, Permission>, 4> outside{
            {{AuditAction::opened, Permission::read},
             {AuditAction::exported, Permission::exportData},
             {AuditAction::printed, Permission::exportData},
             {AuditAction::imported, Permission::editPatients}}};
        const auto known = std::find_if(outside.begin(), outside.end(),
                                        [&](const auto& entry) { return entry.first == action; });
        if (known == outside.end()) refuse("The record notes this by itself.");
        require(known->second);
        sql::Transaction transaction{*database_};
        addAudit(action, subject, detail);
        transaction.commit();
    });
}

Result<std::vector<AuditEntry>> SqlStore::audit(int limit) {
    return guarded<std::vector<AuditEntry>>([&] {
        require(Permission::readAudit);
        std::vector<AuditEntry> out;
        for (const sql::Row& found : database_->rows(
                 fmt::format("select {} from audit order by number desc limit $1", AuditRow::columns),
                 {std::int64_t{std::max(limit, 0)}})) {
            const AuditRow row = AuditRow::from(found);
            const auto action = auditActionNamed(row.action);
            if (!action) reportDamage("The audit names an action that does not exist.");
            out.push_back({row.number, row.at, row.staff.empty() ? "" : userName(row.staff), *action,
                           row.subject, row.content(keys()).detail});
        }
        return out;
    });
}

Result<Verification> SqlStore::verify() {
    return guarded<Verification>([&] {
        require(Permission::readAudit);
        Verification found;
        {
            const sql::Transaction moment{*database_, sql::Transaction::Use::reading};
            found = verifyRecord(*database_, keys());
        }
        sql::Transaction transaction{*database_};
        addAudit(AuditAction::verified, "", fmt::format("{} places damaged", found.damage.size()));
        transaction.commit();
        return found;
    });
}

} // namespace rhizograph
