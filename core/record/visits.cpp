#include "record/sqlstore.h"

#include <fmt/format.h>

namespace rhizograph {
namespace {

std::string_view stateWord(VisitState state) {
    switch (state) {
    case VisitState::intake:
        return "intake";
    case VisitState::inRoom:
        return "in_room";
    case VisitState::toReview:
        return "to_review";
    case VisitState::signedOff:
        break;
    }
    return "signed";
}

VisitState stateOf(const std::string& word) {
    for (const VisitState state :
         {VisitState::intake, VisitState::inRoom, VisitState::toReview, VisitState::signedOff})
        if (stateWord(state) == word) return state;
    reportDamage("A visit is in a state that does not exist.");
}

/// Whole years lived on `date`; nothing when the birth date is unknown or later.
std::optional<std::int64_t> ageOn(const std::string& birthDate, const std::string& date) {
    if (birthDate.empty() || birthDate > date) return std::nullopt;
    const int years = std::stoi(date.substr(0, 4)) - std::stoi(birthDate.substr(0, 4));
    return date.substr(5) < birthDate.substr(5) ? years - 1 : years;
}

/// A visit as it is shown: counted among all visits of the person, duplicates' included.
constexpr const char* shownColumns = R"sql(
    select v.id, p.person, v.date, v.started_at, v.changed_at, v.state, v.age, s.name, v.open_red_signs, v.worse,
           (select count(*) from finding f where f.visit = v.id),
           (select count(*) from visit w join patient q on q.id = w.patient
             where q.person = p.person and (w.date, w.started_at, w.id) <= (v.date, v.started_at, v.id))
      from visit v join patient p on p.id = v.patient join staff s on s.id = v.author
     where )sql";

} // namespace

std::vector<Visit> SqlStore::visitsWhere(const std::string& condition, const sql::Parameters& parameters) {
    require(Permission::read);
    std::vector<Visit> out;
    for (const sql::Row& row :
         database_->rows(shownColumns + condition + " order by v.date, v.started_at, v.id", parameters)) {
        Visit v;
        v.id = VisitId{row.text(0)};
        v.patient = PatientId{row.text(1)};
        v.date = row.text(2);
        v.startedAt = row.text(3);
        v.changedAt = row.text(4);
        v.state = stateOf(row.text(5));
        if (!row.isNull(6)) v.ageAtVisit = row.smallInteger(6);
        v.author = row.text(7);
        v.openRedSigns = row.smallInteger(8);
        v.worse = row.smallInteger(9);
        v.findings = row.smallInteger(10);
        v.number = row.smallInteger(11);
        out.push_back(std::move(v));
    }
    return out;
}

Result<Visit> SqlStore::visit(const VisitId& id) {
    return guarded<Visit>([&] {
        std::vector<Visit> found = visitsWhere("v.id = $1", {id.text()});
        if (found.empty()) refuse("There is no such visit.");
        return std::move(found.front());
    });
}

Result<std::vector<Visit>> SqlStore::visitsOf(const PatientId& patient) {
    return guarded<std::vector<Visit>>([&] {
        require(Permission::read);
        return visitsWhere("p.person = $1", {personOf(patient)});
    });
}

Result<std::vector<Visit>> SqlStore::newestVisits(const std::vector<PatientId>& patients) {
    return guarded<std::vector<Visit>>([&]() -> std::vector<Visit> {
        require(Permission::read);
        if (patients.empty()) return {};
        sql::Parameters ids;
        std::string places;
        for (const PatientId& id : patients) {
            ids.emplace_back(id.text());
            places += fmt::format("{}${}", places.empty() ? "" : ", ", ids.size());
        }
        return visitsWhere(
            fmt::format(
                "p.person in (select person from patient where id in ({})) and not exists (select 1 from "
                "visit w join patient q on q.id = w.patient where q.person = p.person and (w.date, "
                "w.started_at, w.id) > (v.date, v.started_at, v.id))",
                places),
            ids);
    });
}

Result<std::vector<Visit>> SqlStore::visitsOn(const std::string& date) {
    return guarded<std::vector<Visit>>([&] { return visitsWhere("v.date = $1", {date}); });
}

Result<std::vector<Visit>> SqlStore::unsignedVisits() {
    return guarded<std::vector<Visit>>([&] { return visitsWhere("v.state <> 'signed'", {}); });
}

Result<Visit> SqlStore::addVisit(const PatientId& patient, const std::string& date) {
    VisitRow row;
    const Outcome added = guardedAction([&] {
        require(Permission::openVisits);
        if (!isCalendarDate(date)) refuse(fmt::format("\"{}\" is not a date (year-month-day).", date));
        const Patient person = loadedPatient(patient);
        row.id = randomId();
        row.patient = person.id.text();
        row.date = date;
        row.startedAt = now();
        row.changedAt = row.startedAt;
        row.state = stateWord(VisitState::intake);
        row.age = ageOn(person.identity.birthDate, date);
        row.author = session().user.id.text();
        row.head = row.origin(keys());
        sql::Transaction transaction{*database_};
        database_->run("insert into visit (id, patient, date, started_at, changed_at, state, age, author, "
                       "open_red_signs, "
                       "events, head, mac) values ($1, $2, $3, $4, $5, $6, $7, $8, 0, 0, $9, $10)",
                       {row.id, row.patient, row.date, row.startedAt, row.changedAt, row.state,
                        row.age ? sql::Cell{*row.age} : sql::Cell{}, row.author, row.head,
                        row.expectedMac(keys())});
        addAudit(AuditAction::visitAdded, row.id, row.patient);
        transaction.commit();
    });
    if (!added) return added.problems();
    return visit(VisitId{row.id});
}

VisitRow SqlStore::visitRow(const VisitId& id) {
    const auto row =
        database_->first(fmt::format("select {} from visit where id = $1", VisitRow::columns), {id.text()});
    if (!row) refuse("There is no such visit.");
    return VisitRow::from(*row);
}

VisitRow SqlStore::unsignedVisitRow(const VisitId& id) {
    VisitRow visit = visitRow(id);
    // Building on a row somebody tampered with would give the tampering a valid hash.
    if (!sameMac(visit.mac, visit.expectedMac(keys())))
        reportDamage(
            "This visit was changed outside the program or is damaged, so nothing is added to it. Verify the "
            "record.");
    if (visit.state == stateWord(VisitState::signedOff))
        refuse("This visit is signed and can no longer be changed. Write an addendum instead.");
    return visit;
}

void SqlStore::append(VisitRow& visit, const std::vector<NewEvent>& events) {
    const std::string at = now();
    for (const NewEvent& added : events) {
        EventRow e{visit.id,
                   visit.events + 1,
                   added.kind,
                   added.key.item.text(),
                   std::string{name(added.key.side)},
                   added.bulk,
                   session().user.id.text(),
                   session().id,
                   at,
                   {},
                   {}};
        e.sealed = seal(keys().sealing, added.content, e.context());
        e.mac = e.expectedMac(keys(), visit.head);
        database_->run("insert into visit_event (visit, number, kind, item, side, bulk, author, session, at, "
                       "sealed, mac) "
                       "values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11)",
                       {e.visit, e.number, e.kind, e.item, e.side, std::int64_t{e.bulk}, e.author, e.session,
                        e.at, e.sealed, e.mac});
        visit.events = e.number;
        visit.head = e.mac;
    }
    visit.changedAt = at;
}

void SqlStore::store(VisitRow& visit) {
    visit.mac = visit.expectedMac(keys());
    database_->run("update visit set changed_at = $2, state = $3, open_red_signs = $4, worse = $5, events = "
                   "$6, head = $7, "
                   "mac = $8 where id = $1",
                   {visit.id, visit.changedAt, visit.state, visit.openRedSigns, visit.worse, visit.events,
                    visit.head, visit.mac});
}

void SqlStore::changeVisit(const VisitId& id, Permission permission,
                           const std::function<void(VisitRow&)>& change) {
    require(permission);
    sql::Transaction transaction{*database_};
    VisitRow visit = unsignedVisitRow(id);
    change(visit);
    store(visit);
    transaction.commit();
}

Outcome SqlStore::setState(const VisitId& id, VisitState state) {
    if (state == VisitState::signedOff) return sign(id, "");
    return guardedAction([&] {
        changeVisit(id, Permission::openVisits, [&](VisitRow& visit) {
            visit.state = stateWord(state);
            append(visit, {{"state", visit.state, {}}});
        });
    });
}

Outcome SqlStore::setOpenRedSigns(const VisitId& id, int count) {
    return guardedAction([&] {
        changeVisit(id, Permission::recordFindings, [&](VisitRow& visit) { visit.openRedSigns = count; });
    });
}

Outcome SqlStore::setWorse(const VisitId& id, int count) {
    return guardedAction(
        [&] { changeVisit(id, Permission::recordFindings, [&](VisitRow& visit) { visit.worse = count; }); });
}

void SqlStore::signWithin(VisitRow& visit, const std::string& knowledgeVersion) {
    visit.state = stateWord(VisitState::signedOff);
    append(visit, {{"signature", knowledgeVersion, {}}});
    addAudit(AuditAction::visitSigned, visit.id, std::to_string(visit.events));
}

Outcome SqlStore::sign(const VisitId& id, const std::string& knowledgeVersion) {
    return guardedAction([&] {
        changeVisit(id, Permission::sign, [&](VisitRow& visit) { signWithin(visit, knowledgeVersion); });
    });
}

std::vector<EventRow> SqlStore::eventsOfKind(const VisitId& visit, const std::string& kind) {
    require(Permission::read);
    std::vector<EventRow> out;
    // What is not a finding is rare and has an index of its own; the second condition lets it be used.
    const char* rare = kind == "finding" ? "" : "and kind <> 'finding' ";
    for (const sql::Row& row : database_->rows(
             fmt::format("select {} from visit_event where visit = $1 and kind = $2 {}order by number",
                         EventRow::columns, rare),
             {visit.text(), kind}))
        out.push_back(EventRow::from(row));
    return out;
}

Result<std::optional<Signature>> SqlStore::signature(const VisitId& visit) {
    return guarded<std::optional<Signature>>([&]() -> std::optional<Signature> {
        const std::vector<EventRow> found = eventsOfKind(visit, "signature");
        if (found.empty()) return std::nullopt;
        return Signature{userName(found.back().author), found.back().at, found.back().content(keys())};
    });
}

Result<std::string> SqlStore::plan(const VisitId& visit) {
    return guarded<std::string>([&] {
        const std::vector<EventRow> found = eventsOfKind(visit, "plan");
        return found.empty() ? std::string{} : found.back().content(keys());
    });
}

Outcome SqlStore::setPlan(const VisitId& id, const std::string& text) {
    return guardedAction([&] {
        changeVisit(id, Permission::writePlan, [&](VisitRow& visit) { append(visit, {{"plan", text, {}}}); });
    });
}

Outcome SqlStore::addNote(const VisitId& id, const std::string& text) {
    return guardedAction([&] {
        if (text.empty()) refuse("The note is empty.");
        changeVisit(id, Permission::recordFindings, [&](VisitRow& visit) {
            append(visit, {{"note", text, {}}});
        });
    });
}

std::vector<AuthoredText> SqlStore::textsOfKind(const VisitId& visit, const std::string& kind) {
    std::vector<AuthoredText> out;
    for (const EventRow& event : eventsOfKind(visit, kind))
        out.push_back({event.content(keys()), userName(event.author), event.at});
    return out;
}

Result<std::vector<AuthoredText>> SqlStore::notes(const VisitId& visit) {
    return guarded<std::vector<AuthoredText>>([&] { return textsOfKind(visit, "note"); });
}

Result<std::vector<AuthoredText>> SqlStore::addenda(const VisitId& visit) {
    return guarded<std::vector<AuthoredText>>([&] { return textsOfKind(visit, "addendum"); });
}

Outcome SqlStore::addAddendum(const VisitId& id, const std::string& text) {
    return guardedAction([&] {
        require(Permission::sign);
        if (text.empty()) refuse("The addendum is empty.");
        sql::Transaction transaction{*database_};
        VisitRow visit = visitRow(id);
        if (visit.state != stateWord(VisitState::signedOff))
            refuse("This visit is not signed yet. Change it, instead of adding an addendum.");
        if (!sameMac(visit.mac, visit.expectedMac(keys())))
            reportDamage("This visit was changed outside the program or is damaged, so nothing is added to "
                         "it. Verify the "
                         "record.");
        append(visit, {{"addendum", text, {}}});
        store(visit);
        addAudit(AuditAction::addendumAdded, visit.id, std::to_string(visit.events));
        transaction.commit();
    });
}

Outcome SqlStore::acknowledge(const VisitId& id, const std::string& sign, const std::string& urgency) {
    return guardedAction([&] {
        changeVisit(id, Permission::acknowledgeSigns, [&](VisitRow& visit) {
            append(visit, {{"acknowledgement", Packer{}.text(sign).text(urgency).packed(), {}}});
        });
    });
}

Result<std::vector<RedSignAcknowledgement>> SqlStore::acknowledgements(const VisitId& visit) {
    return guarded<std::vector<RedSignAcknowledgement>>([&] {
        std::vector<RedSignAcknowledgement> out;
        for (const EventRow& event : eventsOfKind(visit, "acknowledgement")) {
            const std::string content = event.content(keys());
            Unpacker in{content};
            RedSignAcknowledgement a;
            a.sign = in.text();
            a.urgency = in.text();
            a.by = userName(event.author);
            a.at = event.at;
            out.push_back(std::move(a));
        }
        return out;
    });
}

} // namespace rhizograph
