#include "record/sqlstore.h"

#include <fmt/format.h>

namespace rhizograph {

PatientEventRow SqlStore::eventRow(const PatientEventId& id) {
    const auto row = database_->first(
        fmt::format("select {} from patient_event where id = $1 order by revision desc limit 1",
                    PatientEventRow::columns),
        {id.text()});
    if (!row) refuse("There is no such event.");
    PatientEventRow out = PatientEventRow::from(*row);
    if (out.removed) refuse("This event was taken off the list.");
    return out;
}

PatientEvent SqlStore::eventFrom(const PatientEventRow& row) {
    const std::string content = open(keys().sealing, row.sealed, row.context());
    Unpacker in{content};
    PatientEvent out;
    out.id = PatientEventId{row.id};
    out.patient = PatientId{row.patient};
    out.date = row.date;
    out.kind = in.text();
    out.text = in.text();
    out.awaited = row.awaited;
    out.by = userName(row.author);
    out.at = row.at;
    return out;
}

/// Writes the next version, vouched for by the audit.
void SqlStore::storeEvent(PatientEventRow row, const std::string& content) {
    ++row.revision;
    row.author = session().user.id.text();
    row.at = now();
    row.sealed = seal(keys().sealing, content, row.context());
    database_->run(fmt::format("insert into patient_event ({}) values ($1, $2, $3, $4, $5, $6, $7, $8, $9)",
                               PatientEventRow::columns),
                   {row.id, row.revision, row.patient, row.date, std::int64_t{row.awaited},
                    std::int64_t{row.removed}, row.author, row.at, row.sealed});
    addAudit(AuditAction::eventWritten, row.id, row.patient, {{claim::event, row.claim(keys())}});
}

Result<std::vector<PatientEvent>> SqlStore::eventsOf(const PatientId& patient) {
    return guarded<std::vector<PatientEvent>>([&] {
        require(Permission::read);
        std::vector<PatientEvent> out;
        // A duplicate's events are the patient's.
        const std::string person = personOf(patient);
        for (const sql::Row& row : database_->rows(
                 fmt::format("select {} from patient_event e "
                             "where e.patient in (select id from patient where person = $1) and removed = 0 "
                             "and revision = (select max(revision) from patient_event f where f.id = e.id) "
                             "order by date, id",
                             PatientEventRow::columns),
                 {person})) {
            out.push_back(eventFrom(PatientEventRow::from(row)));
            out.back().patient = PatientId{person};
        }
        return out;
    });
}

Result<PatientEvent> SqlStore::writeEvent(const PatientEvent& event) {
    return guarded<PatientEvent>([&] {
        require(Permission::recordFindings);
        if (!isCalendarDate(event.date))
            refuse(fmt::format("\"{}\" is not a date (year-month-day).", event.date));
        if (event.kind.empty()) refuse("An event needs a kind.");
        sql::Transaction transaction{*database_};
        PatientEventRow row;
        if (event.id.empty()) {
            row.id = randomId();
            row.patient = personOf(event.patient);
        } else {
            row = eventRow(event.id);
        }
        row.date = event.date;
        row.awaited = event.awaited;
        storeEvent(row, Packer{}.text(event.kind).text(event.text).packed());
        PatientEvent out = eventFrom(eventRow(PatientEventId{row.id}));
        transaction.commit();
        return out;
    });
}

Outcome SqlStore::removeEvent(const PatientEventId& event) {
    return guardedAction([&] {
        require(Permission::recordFindings);
        sql::Transaction transaction{*database_};
        PatientEventRow row = eventRow(event);
        const std::string content = open(keys().sealing, row.sealed, row.context());
        row.removed = true;
        storeEvent(row, content);
        transaction.commit();
    });
}

} // namespace rhizograph
