#include "record/sqlstore.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <fmt/format.h>
#include <set>
#include <unordered_set>

namespace rhizograph {
namespace {

std::string identityContext(const std::string& patient) {
    return Packer{}.text("identity").text(patient).packed();
}

void check(const Identity& identity) {
    if (identity.name.empty()) refuse("A patient needs a name.");
    if (!identity.birthDate.empty() && !isCalendarDate(identity.birthDate))
        refuse(fmt::format("\"{}\" is not a date of birth (year-month-day).", identity.birthDate));
    static const std::set<std::string> sexes{"", "female", "male", "other"};
    if (!sexes.contains(identity.sex))
        refuse(fmt::format("\"{}\" is not one of female, male, other.", identity.sex));
}

} // namespace

bool isCalendarDate(const std::string& text) {
    int year = 0;
    unsigned month = 0;
    unsigned day = 0;
    int used = 0;
    const bool shape = text.size() == 10 && std::all_of(text.begin(), text.end(), [](char c) {
                           return c == '-' || (c >= '0' && c <= '9');
                       });
    if (!shape || std::sscanf(text.c_str(), "%4d-%2u-%2u%n", &year, &month, &day, &used) != 3 || used != 10)
        return false;
    return std::chrono::year_month_day{std::chrono::year{year}, std::chrono::month{month},
                                       std::chrono::day{day}}
        .ok();
}

std::string packIdentity(const Identity& identity) {
    return Packer{}
        .number(6)
        .text(identity.name)
        .text(identity.recordNumber)
        .text(identity.birthDate)
        .text(identity.sex)
        .text(identity.contact)
        .text(identity.notes)
        .packed();
}

Identity unpackIdentity(std::string_view bytes) {
    Unpacker in{bytes};
    if (in.number() != 6) reportDamage("A stored identity has an unknown form.");
    Identity out;
    for (std::string* field :
         {&out.name, &out.recordNumber, &out.birthDate, &out.sex, &out.contact, &out.notes})
        *field = in.text();
    return out;
}

/// A number kept in the table of facts about the clinic.
std::int64_t SqlStore::counter(const std::string& key) {
    const auto row = database_->first("select value from meta where key = $1", {key});
    const std::string text = row ? row->text(0) : std::string{};
    std::int64_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size())
        reportDamage("The clinic file has lost count of its patients.");
    return value;
}

std::int64_t SqlStore::nextPatientRevision() {
    const std::int64_t next = counter("patient_revision") + 1;
    database_->run("update meta set value = $1 where key = 'patient_revision'", {std::to_string(next)});
    return next;
}

Claims SqlStore::storeIdentity(const PatientId& id, const Identity& identity, bool isNew) {
    const std::int64_t revision = nextPatientRevision();
    const Bytes sealed = seal(keys().sealing, packIdentity(identity), identityContext(id.text()));
    if (isNew)
        database_->run("insert into patient (id, person, revision, sealed) values ($1, $1, $2, $3)",
                       {id.text(), revision, sealed});
    else
        database_->run("update patient set revision = $2, sealed = $3 where id = $1",
                       {id.text(), revision, sealed});
    // Every identity a patient ever had is kept, with who wrote it.
    database_->run(
        "insert into patient_version (patient, revision, author, at, sealed) values ($1, $2, $3, $4, $5)",
        {id.text(), revision, session().user.id.text(), now(), sealed});
    return {{claim::identity, claim::ofIdentity(keys(), id.text(), sealed)}};
}

/// Unseals what was written since the last look, by this connection or another.
void SqlStore::refreshPatients() {
    if (const std::int64_t erasures = counter("erasures"); erasures != indexedErasures_) {
        forgetPatients();
        indexedErasures_ = erasures;
    }
    for (const sql::Row& row :
         database_->rows("select id, person, revision, sealed from patient where revision > $1 "
                         "order by revision",
                         {indexedRevision_})) {
        const PatientId id{row.text(0)};
        // A duplicate is found under the patient it belongs to, by its own name and number too.
        index_.put({id, unsealedIdentity(id, row.bytes(3))}, PatientId{row.text(1)});
        indexedRevision_ = row.integer(2);
    }
}

/// One damaged entry must not hide all the others, and must not vanish from the list either.
Identity SqlStore::unsealedIdentity(const PatientId& id, const Bytes& sealed) {
    unreadable_.erase(id);
    try {
        return unpackIdentity(open(keys().sealing, sealed, identityContext(id.text())));
    } catch (const RecordError&) {
        unreadable_.insert(id);
        Identity unreadable;
        unreadable.name = "(This entry cannot be read. Verify the record.)";
        return unreadable;
    }
}

void SqlStore::forgetPatients() {
    index_.clear();
    unreadable_.clear();
    indexedRevision_ = -1;
}

std::string SqlStore::personOf(const PatientId& id) {
    const auto row = database_->first("select person from patient where id = $1", {id.text()});
    if (!row) refuse("There is no such patient.");
    return row->text(0);
}

Patient SqlStore::loadedPatient(const PatientId& id) {
    refreshPatients();
    const PatientId person{personOf(id)};
    const Identity* identity = index_.find(person);
    if (identity == nullptr || unreadable_.contains(person))
        reportDamage(
            "The entry of this patient was changed outside the program or is damaged. Verify the record.");
    return {person, *identity};
}

Result<Patient> SqlStore::addPatient(const Identity& identity) {
    return guarded<Patient>([&] {
        require(Permission::editPatients);
        check(identity);
        const PatientId id{randomId()};
        sql::Transaction transaction{*database_};
        addAudit(AuditAction::patientAdded, id.text(), "", storeIdentity(id, identity, true));
        transaction.commit();
        return Patient{id, identity};
    });
}

Outcome SqlStore::updatePatient(const Patient& patient) {
    return guardedAction([&] {
        require(Permission::editPatients);
        check(patient.identity);
        sql::Transaction transaction{*database_};
        const PatientId person{personOf(patient.id)};
        addAudit(AuditAction::patientChanged, person.text(), "",
                 storeIdentity(person, patient.identity, false));
        transaction.commit();
    });
}

Result<Patient> SqlStore::patient(const PatientId& id) {
    return guarded<Patient>([&] {
        require(Permission::read);
        return loadedPatient(id);
    });
}

/// The patients seen last come first, then those who never had a visit, the latest added first.
std::vector<PatientId> SqlStore::byNewestVisit(std::size_t limit) {
    std::vector<PatientId> out;
    std::unordered_set<std::string> seen;
    const auto take = [&](const sql::Row& row) {
        if (out.size() < limit && seen.insert(row.text(0)).second) out.emplace_back(row.text(0));
        return out.size() < limit;
    };
    database_->each("select p.person from visit v join patient p on p.id = v.patient "
                    "order by v.date desc, v.started_at desc, v.id desc",
                    {}, take);
    if (out.size() < limit)
        database_->each("select id from patient where person = id order by revision desc", {}, take);
    return out;
}

Result<std::vector<Patient>> SqlStore::searchPatients(const std::string& text, int limit) {
    return guarded<std::vector<Patient>>([&] {
        require(Permission::read);
        refreshPatients();
        const auto most = static_cast<std::size_t>(std::max(limit, 0));
        const bool everyone = text.find_first_not_of(" \t") == std::string::npos;
        std::vector<Patient> out;
        for (const PatientId& id : everyone ? byNewestVisit(most) : index_.search(text, most)) {
            if (out.size() == most) break;
            if (const Identity* identity = index_.find(id)) out.push_back({id, *identity});
        }
        return out;
    });
}

Outcome SqlStore::mergePatients(const PatientId& duplicate, const PatientId& into) {
    return guardedAction([&] {
        require(Permission::mergePatients);
        sql::Transaction transaction{*database_};
        const std::string person = personOf(into);
        if (personOf(duplicate) != duplicate.text()) refuse("This patient already belongs to another one.");
        if (person == duplicate.text()) refuse("A patient cannot be a duplicate of itself.");
        if (database_->first("select 1 from patient where person = $1 and id <> $1", {duplicate.text()}))
            refuse("This patient has duplicates of its own. Part them first.");
        database_->run("update patient set person = $2, revision = $3 where id = $1",
                       {duplicate.text(), person, nextPatientRevision()});
        addAudit(AuditAction::patientsMerged, duplicate.text(), person);
        transaction.commit();
    });
}

Outcome SqlStore::partPatients(const PatientId& duplicate) {
    return guardedAction([&] {
        require(Permission::mergePatients);
        sql::Transaction transaction{*database_};
        const std::string person = personOf(duplicate);
        if (person == duplicate.text()) refuse("This patient was not joined to another one.");
        database_->run("update patient set person = id, revision = $2 where id = $1",
                       {duplicate.text(), nextPatientRevision()});
        addAudit(AuditAction::patientsParted, duplicate.text(), person);
        transaction.commit();
    });
}

Result<std::vector<Patient>> SqlStore::duplicatesOf(const PatientId& patient) {
    return guarded<std::vector<Patient>>([&] {
        require(Permission::read);
        std::vector<Patient> out;
        for (const sql::Row& row :
             database_->rows("select id, sealed from patient where person = $1 and id <> $1 "
                             "order by (select min(revision) from patient_version v "
                             "where v.patient = patient.id)",
                             {personOf(patient)})) {
            const PatientId id{row.text(0)};
            out.push_back({id, unsealedIdentity(id, row.bytes(1))});
        }
        return out;
    });
}

Outcome SqlStore::erasePatient(const PatientId& patient, const std::string& reason) {
    return guardedAction([&] {
        require(Permission::erasePatients);
        if (reason.empty()) refuse("Erasing a patient needs a reason.");
        sql::Transaction transaction{*database_};
        const std::string person = personOf(patient);
        const std::string visits =
            "(select v.id from visit v join patient p on p.id = v.patient where p.person = $1)";
        for (const sql::Row& row : database_->rows("select id from visit where id in " + visits, {person}))
            addAudit(AuditAction::patientErased, row.text(0), "visit");
        for (const sql::Row& row :
             database_->rows("select id from patient where person = $1 and id <> $1", {person}))
            addAudit(AuditAction::patientErased, row.text(0), "duplicate");
        addAudit(AuditAction::patientErased, person, reason);
        database_->run("delete from finding where visit in " + visits, {person});
        database_->run("delete from visit_event where visit in " + visits, {person});
        database_->run("delete from visit where id in " + visits, {person});
        database_->run("delete from patient where person = $1", {person});
        database_->run("update meta set value = $1 where key = 'erasures'",
                       {std::to_string(counter("erasures") + 1)});
        transaction.commit();
        database_->purge();
    });
}

} // namespace rhizograph
