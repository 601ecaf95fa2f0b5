#include "record/verify.h"

#include <fmt/format.h>
#include <map>
#include <set>

namespace rhizograph {
namespace {

/// What the audit says must be there: by visit, the numbers of events that sign or add to it.
struct AuditClaims {
    std::map<std::string, std::set<std::int64_t>> events;
    std::set<std::string> erased;
    std::map<std::string, std::string> joined; ///< duplicate to the patient it belongs to
};

class Verifier {
public:
    Verifier(sql::Connection& database, const Keys& keys) : database_(database), keys_(keys) {}

    Verification run() {
        const AuditClaims claims = checkAudit();
        checkStaff();
        checkPatients(claims);
        checkVisits(claims);
        return std::move(found_);
    }

private:
    void damage(const std::string& what, const std::string& visit = {}) {
        found_.damage.push_back({VisitId{visit}, what});
    }

    AuditClaims checkAudit();
    void checkAuditEnd(std::int64_t number, const Mac& last);
    void noteClaim(const AuditRow& row, AuditClaims& claims);
    void checkStaff();
    void checkPatients(const AuditClaims& claims);
    void checkVisits(const AuditClaims& claims);
    void checkVisit(const VisitRow& visit, const std::set<std::int64_t>& claimed);
    std::vector<EventRow> checkChain(const VisitRow& visit);
    void checkCurrent(const VisitRow& visit, const std::vector<EventRow>& events);
    void checkSigning(const VisitRow& visit, const std::vector<EventRow>& events,
                      const std::set<std::int64_t>& claimed);

    sql::Connection& database_;
    const Keys& keys_;
    Verification found_;
};

/// Runs `read`; false when the row does not even have the right shape.
template <class Row> std::optional<Row> readable(const sql::Row& row) {
    try {
        return Row::from(row);
    } catch (const RecordError&) {
        return std::nullopt;
    }
}

template <class Row> std::optional<std::string> unsealed(const Keys& keys, const Row& row) {
    try {
        return open(keys.sealing, row.sealed, row.context());
    } catch (const RecordError&) {
        return std::nullopt;
    }
}

AuditClaims Verifier::checkAudit() {
    AuditClaims claims;
    Mac before;
    std::int64_t expected = 1;
    for (const sql::Row& raw :
         database_.rows(fmt::format("select {} from audit order by number", AuditRow::columns))) {
        ++found_.auditEntries;
        const auto row = readable<AuditRow>(raw);
        if (!row || row->number != expected || !sameMac(row->mac, row->expectedMac(keys_, before))) {
            damage(fmt::format("The audit was changed at entry {}.", expected));
            return claims;
        }
        noteClaim(*row, claims);
        before = row->mac;
        ++expected;
    }
    checkAuditEnd(expected - 1, before);
    return claims;
}

void Verifier::checkAuditEnd(std::int64_t number, const Mac& last) {
    const auto head = database_.first("select number, mac from audit_head");
    const Mac expected =
        keyedHash(keys_.chain, Packer{}.text("audit head").number(number).bytes(last).packed());
    if (!head || head->integer(0) != number || !sameMac(head->bytes(1), expected))
        damage("The end of the audit was cut off or changed.");
}

void Verifier::noteClaim(const AuditRow& row, AuditClaims& claims) {
    const bool adds =
        row.action == name(AuditAction::visitSigned) || row.action == name(AuditAction::addendumAdded);
    if (adds)
        if (const auto number = unsealed(keys_, row)) claims.events[row.subject].insert(std::stoll(*number));
    if (row.action == name(AuditAction::patientErased)) claims.erased.insert(row.subject);
    if (row.action == name(AuditAction::patientsMerged))
        claims.joined[row.subject] = unsealed(keys_, row).value_or("");
    if (row.action == name(AuditAction::patientsParted)) claims.joined.erase(row.subject);
}

void Verifier::checkStaff() {
    for (const sql::Row& row : database_.rows("select id, name, role, active, mac from staff"))
        if (!sameMac(row.bytes(4),
                     staffMac(keys_, row.text(0), row.text(1), row.text(2), row.integer(3) != 0)))
            damage(fmt::format("The entry of the user {} was changed.", row.text(1)));
}

void Verifier::checkPatients(const AuditClaims& claims) {
    for (const sql::Row& row : database_.rows("select id, person from patient")) {
        const auto joined = claims.joined.find(row.text(0));
        if (row.text(1) != (joined == claims.joined.end() ? row.text(0) : joined->second))
            damage(fmt::format("The patient with the id {} was joined or parted outside the program.",
                               row.text(0)));
    }
    for (const char* table :
         {"select id, sealed from patient", "select patient, sealed from patient_version"})
        for (const sql::Row& row : database_.rows(table)) {
            try {
                (void)open(keys_.sealing, row.bytes(1), Packer{}.text("identity").text(row.text(0)).packed());
            } catch (const RecordError&) {
                damage(fmt::format("The identity of the patient with the id {} was changed.", row.text(0)));
            }
        }
}

void Verifier::checkVisits(const AuditClaims& claims) {
    std::set<std::string> present;
    for (const sql::Row& raw : database_.rows(
             fmt::format("select {} from visit order by date, started_at, id", VisitRow::columns))) {
        ++found_.visits;
        const auto row = readable<VisitRow>(raw);
        if (!row) {
            damage("A visit cannot be read.", raw.text(0));
            continue;
        }
        present.insert(row->id);
        const auto claimed = claims.events.find(row->id);
        checkVisit(*row, claimed == claims.events.end() ? std::set<std::int64_t>{} : claimed->second);
    }
    for (const auto& [visit, numbers] : claims.events)
        if (!present.contains(visit) && !claims.erased.contains(visit))
            damage("A signed visit was removed.", visit);
    for (const sql::Row& row : database_.rows("select distinct visit from visit_event"))
        if (!present.contains(row.text(0))) damage("Events belong to no visit.", row.text(0));
}

void Verifier::checkVisit(const VisitRow& visit, const std::set<std::int64_t>& claimed) {
    if (!sameMac(visit.mac, visit.expectedMac(keys_))) damage("The visit itself was changed.", visit.id);
    const std::vector<EventRow> events = checkChain(visit);
    checkCurrent(visit, events);
    checkSigning(visit, events, claimed);
}

/// The events up to the first that does not fit.
std::vector<EventRow> Verifier::checkChain(const VisitRow& visit) {
    std::vector<EventRow> events;
    Mac before = visit.origin(keys_);
    for (const sql::Row& raw : database_.rows(
             fmt::format("select {} from visit_event where visit = $1 order by number", EventRow::columns),
             {visit.id})) {
        ++found_.events;
        auto row = readable<EventRow>(raw);
        const auto expected = static_cast<std::int64_t>(events.size()) + 1;
        if (!row || row->number != expected || !sameMac(row->mac, row->expectedMac(keys_, before)) ||
            !unsealed(keys_, *row)) {
            damage(fmt::format("Event {} was changed, moved or removed.", expected), visit.id);
            return events;
        }
        before = row->mac;
        events.push_back(std::move(*row));
    }
    if (static_cast<std::int64_t>(events.size()) != visit.events || !sameMac(before, visit.head))
        damage(fmt::format("The visit has {} events, but {} were written.", events.size(), visit.events),
               visit.id);
    return events;
}

/// What is shown as the findings must be what the events say.
void Verifier::checkCurrent(const VisitRow& visit, const std::vector<EventRow>& events) {
    using Key = std::pair<std::string, std::string>;
    std::map<Key, std::int64_t> expected;
    for (const EventRow& event : events) {
        if (event.kind != "finding") continue;
        const bool cleared = !unpackFinding(event.content(keys_), event.bulk);
        if (cleared)
            expected.erase({event.item, event.side});
        else
            expected[{event.item, event.side}] = event.number;
    }
    std::map<Key, std::int64_t> shown;
    for (const sql::Row& row :
         database_.rows("select item, side, event from finding where visit = $1", {visit.id}))
        shown[{row.text(0), row.text(1)}] = row.integer(2);
    if (shown != expected) damage("The findings shown are not the ones recorded.", visit.id);
}

void Verifier::checkSigning(const VisitRow& visit, const std::vector<EventRow>& events,
                            const std::set<std::int64_t>& claimed) {
    std::string state = "intake";
    std::set<std::int64_t> present;
    for (const EventRow& event : events) {
        if (state == "signed" && event.kind != "addendum")
            damage(fmt::format("Event {} was written after signing.", event.number), visit.id);
        if (event.kind == "state") state = event.content(keys_);
        if (event.kind == "signature") state = "signed";
        if (event.kind == "signature" || event.kind == "addendum") present.insert(event.number);
    }
    if (state != visit.state) damage("The visit's state is not the one recorded.", visit.id);
    if (present != claimed) damage("Signature and addenda are not the ones the audit knows of.", visit.id);
}

} // namespace

Verification verifyRecord(sql::Connection& database, const Keys& keys) {
    return Verifier{database, keys}.run();
}

} // namespace rhizograph
