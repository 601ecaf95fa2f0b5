#include "record/verify.h"

#include "record/claims.h"
#include "record/failure.h"

#include <fmt/format.h>
#include <map>
#include <set>
#include <unordered_map>
#include <unordered_set>

namespace rhizograph {
namespace {

class Verifier {
public:
    Verifier(sql::Connection& database, const Keys& keys) : database_(database), keys_(keys) {}

    Verification run() {
        for (const auto check : {&Verifier::checkStructure, &Verifier::checkAudit, &Verifier::checkClinic,
                                 &Verifier::checkStaff, &Verifier::checkPatients, &Verifier::checkVersions,
                                 &Verifier::checkEvents, &Verifier::checkVisits}) {
            try {
                (this->*check)();
            } catch (const RecordError& error) {
                if (error.kind() != Failure::damaged && error.kind() != Failure::foreign) throw;
                damage(error.what());
            }
        }
        return std::move(found_);
    }

private:
    void damage(const std::string& what, const std::string& visit = {}) {
        found_.damage.push_back({VisitId{visit}, what});
    }

    /// Whether an identity was sealed for this patient.
    [[nodiscard]] bool opens(const std::string& patient, const Bytes& sealed) const;
    void checkStructure();
    void checkAudit();
    void checkAuditEnd(const AuditRow& last);
    void checkClinic();
    void checkStaff();
    void checkPatients();
    void checkVersions();
    void checkEvents();
    void checkVisits();
    void checkVisit(const VisitRow& visit);
    std::vector<EventRow> checkChain(const VisitRow& visit);
    void checkCurrent(const VisitRow& visit, const std::vector<EventRow>& events);
    void checkSigning(const VisitRow& visit, const std::vector<EventRow>& events);

    sql::Connection& database_;
    const Keys& keys_;
    AuditClaims claims_;
    bool audited_ = false; ///< the audit is whole, so what it does not say is not so
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

bool Verifier::opens(const std::string& patient, const Bytes& sealed) const {
    try {
        (void)open(keys_.sealing, sealed, Packer{}.text("identity").text(patient).packed());
        return true;
    } catch (const RecordError&) {
        return false;
    }
}

void Verifier::checkStructure() {
    if (const auto structure = database_.structuralDamage())
        damage(fmt::format("The file itself is damaged: {}", *structure));
}

void Verifier::checkAudit() {
    AuditRow last;
    AuditClaims claims;
    bool whole = true;
    database_.each(fmt::format("select {} from audit order by number", AuditRow::columns), {},
                   [&](const sql::Row& raw) {
                       ++found_.auditEntries;
                       auto row = readable<AuditRow>(raw);
                       whole = row && row->number == last.number + 1 &&
                               sameMac(row->mac, row->expectedMac(keys_, last.mac));
                       if (!whole) return false;
                       try {
                           claims.add(keys_, *row);
                       } catch (const RecordError&) {
                           whole = false; // its hash is right, its sealed text is not
                       }
                       if (whole) last = std::move(*row);
                       return whole;
                   });
    // Half of what the audit says would blame what the other half explains.
    if (!whole) return damage(fmt::format("The audit was changed at entry {}.", last.number + 1));
    audited_ = true;
    claims_ = std::move(claims);
    checkAuditEnd(last);
}

void Verifier::checkAuditEnd(const AuditRow& last) {
    const auto head = database_.first("select number, mac from audit_head");
    if (!head || head->integer(0) != last.number || !sameMac(head->bytes(1), last.asEnd(keys_)))
        damage("The end of the audit was cut off or changed.");
}

void Verifier::checkClinic() {
    std::map<std::string, std::string> facts;
    for (const sql::Row& row : database_.rows("select key, value from meta"))
        facts.emplace(row.text(0), row.text(1));
    if (!claims_.clinicName.empty() && facts["clinic_name"] != claims_.clinicName)
        damage("The name of the clinic was changed outside the program.");
    if (!claims_.clinicId.empty() && facts["clinic"] != claims_.clinicId)
        damage("The id of the clinic was changed outside the program.");
    std::map<std::string, std::string> settings;
    for (const sql::Row& row : database_.rows("select key, value from setting"))
        settings.emplace(row.text(0), row.text(1));
    if (audited_ && settings != claims_.settings) damage("The settings were changed outside the program.");
}

void Verifier::checkStaff() {
    std::map<std::string, std::string> missing = claims_.staff;
    for (const sql::Row& row :
         database_.rows("select id, name, role, active, mac, salt, wrapped from staff")) {
        const std::string& id = row.text(0);
        const auto claimed = claims_.staff.find(id);
        const auto slot = claims_.slots.find(id);
        const Mac& mac = row.bytes(4);
        const std::int64_t active = row.integer(3);
        if (active < 0 || active > 1 ||
            !sameMac(mac, staffMac(keys_, id, row.text(1), row.text(2), active != 0)) ||
            (claimed == claims_.staff.end() ? claims_.complete : claimed->second != hexText(mac)))
            damage(fmt::format("The entry of the user {} was changed.", row.text(1)));
        if (slot != claims_.slots.end() &&
            slot->second != claim::ofSlot(keys_, id, row.bytes(5), row.bytes(6)))
            damage(
                fmt::format("The passphrase of the user {} was changed outside the program.", row.text(1)));
        missing.erase(id);
    }
    if (!missing.empty()) damage("A user was removed outside the program.");
}

void Verifier::checkPatients() {
    std::unordered_set<std::string> present;
    database_.each("select id, person, sealed from patient", {}, [&](const sql::Row& row) {
        const std::string& id = row.text(0);
        present.insert(id);
        const auto joined = claims_.joined.find(id);
        if (audited_ && row.text(1) != (joined == claims_.joined.end() ? id : joined->second))
            damage(fmt::format("The patient with the id {} was joined or parted outside the program.", id));
        const auto claimed = claims_.patients.find(id);
        const bool known = claimed != claims_.patients.end();
        if (!opens(id, row.bytes(2)) ||
            (known ? claimed->second.back() != claim::ofIdentity(keys_, id, row.bytes(2)) : claims_.complete))
            damage(fmt::format("The identity of the patient with the id {} was changed.", id));
        return true;
    });
    for (const auto& [id, versions] : claims_.patients)
        if (!present.contains(id)) damage(fmt::format("The patient with the id {} was removed.", id));
}

/// Every identity a patient ever had.
void Verifier::checkVersions() {
    std::unordered_map<std::string, std::vector<std::string>> found;
    database_.each(
        "select patient, sealed from patient_version order by revision", {}, [&](const sql::Row& row) {
            const std::string& id = row.text(0);
            if (!opens(id, row.bytes(1)))
                damage(fmt::format("A former identity of the patient with the id {} was changed.", id));
            found[id].push_back(claim::ofIdentity(keys_, id, row.bytes(1)));
            return true;
        });
    for (const auto& [id, claimed] : claims_.patients) {
        std::vector<std::string>& versions = found[id];
        // What was written before the audit vouched for identities comes first.
        if (!claims_.complete && versions.size() > claimed.size())
            versions.erase(versions.begin(), versions.end() - static_cast<std::ptrdiff_t>(claimed.size()));
        if (versions != claimed)
            damage(fmt::format(
                "A former identity of the patient with the id {} was changed, added or removed.", id));
    }
}

/// What happened to the patients, every version of it.
void Verifier::checkEvents() {
    std::map<std::string, std::vector<std::string>> found;
    database_.each(
        fmt::format("select {} from patient_event order by id, revision", PatientEventRow::columns), {},
        [&](const sql::Row& raw) {
            const auto row = readable<PatientEventRow>(raw);
            if (!row || !unsealed(keys_, *row))
                damage("An event of a patient was changed.");
            else
                found[row->id].push_back(row->claim(keys_));
            return true;
        });
    if (!audited_) return;
    std::map<std::string, std::vector<std::string>> claimed;
    for (const auto& [id, event] : claims_.patientEvents)
        claimed.emplace(id, event.versions);
    if (found != claimed) damage("The events of a patient are not the ones written.");
}

void Verifier::checkVisits() {
    std::unordered_set<std::string> present;
    database_.each(fmt::format("select {} from visit order by date, started_at, id", VisitRow::columns), {},
                   [&](const sql::Row& raw) {
                       ++found_.visits;
                       const auto row = readable<VisitRow>(raw);
                       present.insert(raw.text(0));
                       if (row)
                           checkVisit(*row);
                       else
                           damage("A visit cannot be read.", raw.text(0));
                       return true;
                   });
    for (const std::string& visit : claims_.visits)
        if (!present.contains(visit)) damage("A visit was removed.", visit);
    for (const auto& [visit, numbers] : claims_.events)
        if (!present.contains(visit) && !claims_.visits.contains(visit) && !claims_.erased.contains(visit))
            damage("A signed visit was removed.", visit);
    for (const char* table : {"select distinct visit from visit_event", "select distinct visit from finding"})
        database_.each(table, {}, [&](const sql::Row& row) {
            if (!present.contains(row.text(0))) damage("Events or findings belong to no visit.", row.text(0));
            return true;
        });
}

void Verifier::checkVisit(const VisitRow& visit) {
    if (!sameMac(visit.mac, visit.expectedMac(keys_))) damage("The visit itself was changed.", visit.id);
    if (claims_.complete && !claims_.visits.contains(visit.id))
        damage("The audit does not know of this visit.", visit.id);
    const std::vector<EventRow> events = checkChain(visit);
    checkCurrent(visit, events);
    checkSigning(visit, events);
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

void Verifier::checkSigning(const VisitRow& visit, const std::vector<EventRow>& events) {
    const auto known = claims_.events.find(visit.id);
    const std::set<std::int64_t> claimed =
        known == claims_.events.end() ? std::set<std::int64_t>{} : known->second;
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
    if (audited_ && present != claimed)
        damage("Signature and addenda are not the ones the audit knows of.", visit.id);
}

} // namespace

Verification verifyRecord(sql::Connection& database, const Keys& keys) {
    return Verifier{database, keys}.run();
}

} // namespace rhizograph
