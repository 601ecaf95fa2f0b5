#include "record/sqlstore.h"

#include <cmath>
#include <fmt/format.h>

namespace rhizograph {
namespace {

constexpr std::int64_t cleared = -1;

void check(const FindingChange& change) {
    if (change.key.item.empty()) refuse("A finding needs an item.");
    if (change.key.side == Side::both) refuse("A finding is of one side.");
    if (change.finding && change.finding->value.isNumber() && !std::isfinite(change.finding->value.number()))
        refuse(fmt::format("The value of {} is not a number.", change.key.item.text()));
}

Side sideOf(const std::string& word) {
    const auto side = sideNamed(word);
    if (!side) reportDamage("A finding names a side that does not exist.");
    return *side;
}

} // namespace

std::string packFinding(const std::optional<Finding>& finding) {
    if (!finding) return Packer{}.number(cleared).packed();
    const Value& value = finding->value;
    return Packer{}
        .number(static_cast<std::int64_t>(value.kind()))
        .text(value.word())
        .real(value.number())
        .text(finding->note)
        .packed();
}

std::optional<Finding> unpackFinding(std::string_view bytes, bool bulk) {
    Unpacker in{bytes};
    const std::int64_t kind = in.number();
    if (kind == cleared) return std::nullopt;
    const std::string word = in.text();
    const double number = in.real();
    const std::string note = in.text();
    switch (kind) {
    case static_cast<std::int64_t>(Value::Kind::token):
        return Finding{Value::token(word), bulk, note};
    case static_cast<std::int64_t>(Value::Kind::number):
        return Finding{Value::number(number), bulk, note};
    case static_cast<std::int64_t>(Value::Kind::text):
        return Finding{Value::text(word), bulk, note};
    case static_cast<std::int64_t>(Value::Kind::notTestable):
        return Finding{Value::notTestable(word), bulk, note};
    default:
        reportDamage("A stored finding has an unknown form.");
    }
}

void SqlStore::recordWithin(VisitRow& visit, const std::vector<FindingChange>& changes) {
    for (const FindingChange& change : changes) {
        check(change);
        const bool bulk = change.finding && change.finding->bulk;
        append(visit, {{"finding", packFinding(change.finding), change.key, bulk}});
        const std::string side{name(change.key.side)};
        if (change.finding)
            database_->run("insert into finding (visit, item, side, event) values ($1, $2, $3, $4) "
                           "on conflict (visit, item, side) do update set event = excluded.event",
                           {visit.id, change.key.item.text(), side, visit.events});
        else
            database_->run("delete from finding where visit = $1 and item = $2 and side = $3",
                           {visit.id, change.key.item.text(), side});
    }
}

Outcome SqlStore::record(const VisitId& visit, const std::vector<FindingChange>& changes) {
    return guardedAction([&] {
        changeVisit(visit, Permission::recordFindings, [&](VisitRow& row) { recordWithin(row, changes); });
    });
}

Result<Exam> SqlStore::exam(const VisitId& id) {
    return std::move(exams({id}).front());
}

std::vector<Result<Exam>> SqlStore::exams(const std::vector<VisitId>& visits) {
    std::vector<Result<Exam>> out;
    out.reserve(visits.size());
    const Outcome done = guardedAction([&] {
        // One moment for all that is read; locks are taken and rights are looked up once.
        const sql::Transaction moment{*database_, sql::Transaction::Use::reading};
        require(Permission::read);
        for (const VisitId& visit : visits)
            out.push_back(guarded<Exam>([&] { return loadedExam(visit); }));
    });
    if (!done) out.assign(visits.size(), Result<Exam>{done.problems()});
    return out;
}

Exam SqlStore::loadedExam(const VisitId& id) {
    const VisitRow visit = visitRow(id);
    Exam exam;
    exam.date = visit.date;
    if (visit.age) exam.subject.age = static_cast<int>(*visit.age);
    exam.subject.sex = loadedPatient(PatientId{visit.patient}).identity.sex;
    // Only what a finding is made of: a course of many visits reads thousands of rows.
    EventRow event;
    event.visit = id.text();
    event.kind = "finding";
    // The events of a visit lie together: one walk over them is cheaper than a search for each (the sign
    // before the number keeps it a walk).
    database_->each("select number, item, side, bulk, sealed from visit_event where visit = $1 and "
                    "+number in (select event from finding where visit = $1)",
                    {id.text()}, [&](const sql::Row& row) {
                        event.number = row.smallInteger(0);
                        event.item = row.text(1);
                        event.side = row.text(2);
                        event.bulk = row.flag(3);
                        event.sealed = row.bytes(4);
                        if (auto finding = unpackFinding(event.content(keys()), event.bulk))
                            exam.set({ItemId{event.item}, sideOf(event.side)}, std::move(*finding));
                        return true;
                    });
    return exam;
}

FindingEvent SqlStore::findingEvent(const EventRow& row) {
    FindingEvent event;
    event.number = static_cast<int>(row.number);
    event.key = {ItemId{row.item}, sideOf(row.side)};
    event.finding = unpackFinding(row.content(keys()), row.bulk);
    event.at = row.at;
    event.here = row.session == session().id;
    return event;
}

Result<std::vector<FindingEvent>> SqlStore::history(const VisitId& visit, const FindingKey& key) {
    return guarded<std::vector<FindingEvent>>([&] {
        std::vector<FindingEvent> out;
        for (const EventRow& row : eventsOfKind(visit, "finding")) {
            if (row.item != key.item.text() || row.side != name(key.side)) continue;
            out.push_back(findingEvent(row));
            out.back().by = userName(row.author);
        }
        return out;
    });
}

Result<std::vector<FindingEvent>> SqlStore::eventsAfter(const VisitId& visit, int number) {
    return guarded<std::vector<FindingEvent>>([&] {
        require(Permission::read);
        std::vector<FindingEvent> out;
        for (const sql::Row& row : database_->rows(
                 fmt::format(
                     "select {} from visit_event where visit = $1 and number > $2 and kind = 'finding' "
                     "order by number",
                     EventRow::columns),
                 {visit.text(), std::int64_t{number}})) {
            const EventRow event = EventRow::from(row);
            out.push_back(findingEvent(event));
            out.back().by = userName(event.author);
        }
        return out;
    });
}

} // namespace rhizograph
