#include "record/schema.h"

#include "record/failure.h"

#include <fmt/format.h>

namespace rhizograph::schema {
namespace {

constexpr const char* first = R"sql(
create table meta (
    key text primary key,
    value text not null
) strict;

create table setting (
    key text primary key,
    value text not null
) strict;

-- The people of the clinic; each row holds the clinic's data key wrapped with a key made from the passphrase.
create table staff (
    id text primary key,
    name text not null,
    role text not null check (role in ('nurse', 'clinician', 'reviewer', 'administrator')),
    active integer not null check (active in (0, 1)),
    operations integer not null,
    memory integer not null,
    salt blob not null,
    wrapped blob not null,
    failures integer not null default 0,
    failed_at integer not null default 0,
    mac blob not null
) strict;

-- Failed sign-ins, until the next successful one moves them into the audit: only then is there a key to chain them.
create table signin_failure (
    number integer primary key,
    staff text not null references staff (id),
    at text not null
) strict;

-- person: the patient this one was found to be (itself unless merged as a duplicate).
create table patient (
    id text primary key,
    person text not null references patient (id),
    revision integer not null unique,
    sealed blob not null
) strict;
create index patient_person on patient (person);

create table patient_version (
    patient text not null references patient (id) on delete cascade,
    revision integer not null,
    author text not null references staff (id),
    at text not null,
    sealed blob not null,
    primary key (patient, revision)
) strict;

-- events, head and mac: how many events the visit has, the hash of the last one, and a keyed hash of this row.
create table visit (
    id text primary key,
    patient text not null references patient (id),
    date text not null,
    started_at text not null,
    changed_at text not null,
    state text not null check (state in ('intake', 'in_room', 'to_review', 'signed')),
    age integer,
    author text not null references staff (id),
    open_red_signs integer not null,
    events integer not null,
    head blob not null,
    mac blob not null
) strict;
create index visit_patient on visit (patient);
create index visit_date on visit (date);
create index visit_unsigned on visit (state) where state <> 'signed';

-- Everything ever written to a visit, in order, each event hashed with the one before.
create table visit_event (
    visit text not null references visit (id),
    number integer not null check (number > 0),
    kind text not null check (kind in ('finding', 'plan', 'note', 'acknowledgement', 'state', 'signature', 'addendum')),
    item text not null,
    side text not null,
    bulk integer not null check (bulk in (0, 1)),
    author text not null references staff (id),
    session text not null,
    at text not null,
    sealed blob not null,
    mac blob not null,
    primary key (visit, number)
) strict;
create index visit_event_kind on visit_event (visit, kind);
create trigger visit_event_is_append_only before update on visit_event
begin
    select raise(abort, 'events are never changed');
end;

-- The current findings: which event holds the value of each.
create table finding (
    visit text not null,
    item text not null,
    side text not null,
    event integer not null,
    primary key (visit, item, side),
    foreign key (visit, event) references visit_event (visit, number)
) strict;

create table audit (
    number integer primary key check (number > 0),
    at text not null,
    staff text,
    action text not null,
    subject text not null,
    sealed blob not null,
    mac blob not null
) strict;
create table audit_head (
    one integer primary key check (one = 1),
    number integer not null,
    mac blob not null
) strict;
create trigger audit_is_append_only before update on audit
begin
    select raise(abort, 'the audit is never changed');
end;
create trigger audit_is_kept before delete on audit
begin
    select raise(abort, 'the audit is never shortened');
end;
)sql";

/// Large clinics: the newest visits of all patients without sorting every visit.
constexpr const char* second = R"sql(
drop index visit_date;
create index visit_newest on visit (date, started_at, id);
)sql";

/// What happened to patients between visits, and what the whole clinic should look at.
constexpr const char* third = R"sql(
-- Every version of an event; the last of an id counts. awaited: a follow-up. sealed: its kind and words.
create table patient_event (
    id text not null,
    revision integer not null check (revision > 0),
    patient text not null references patient (id) on delete cascade,
    date text not null,
    awaited integer not null check (awaited in (0, 1)),
    removed integer not null check (removed in (0, 1)),
    author text not null references staff (id),
    at text not null,
    sealed blob not null,
    primary key (id, revision)
) strict;
create index patient_event_patient on patient_event (patient);
create index patient_event_awaited on patient_event (date) where awaited = 1;
create trigger patient_event_is_append_only before update on patient_event
begin
    select raise(abort, 'events are never changed');
end;

alter table visit add column worse integer not null default 0;
create index visit_red on visit (patient) where open_red_signs > 0;
create index visit_worse on visit (patient) where worse > 0;
)sql";

/// A large clinic again: what belongs to a visit lies together and is found with one search, and the visits
/// of a patient are counted without reading them.
constexpr const char* fourth = R"sql(
drop index visit_patient;
create index visit_of_patient on visit (patient, date, started_at, id);

create table event_moved (
    visit text not null references visit (id),
    number integer not null check (number > 0),
    kind text not null check (kind in ('finding', 'plan', 'note', 'acknowledgement', 'state', 'signature', 'addendum')),
    item text not null,
    side text not null,
    bulk integer not null check (bulk in (0, 1)),
    author text not null references staff (id),
    session text not null,
    at text not null,
    sealed blob not null,
    mac blob not null,
    primary key (visit, number)
) strict, without rowid;
insert into event_moved select visit, number, kind, item, side, bulk, author, session, at, sealed, mac
    from visit_event order by visit, number;
create table finding_moved (
    visit text not null,
    item text not null,
    side text not null,
    event integer not null
) strict;
insert into finding_moved select visit, item, side, event from finding;
drop table finding;
drop table visit_event;
alter table event_moved rename to visit_event;
create index visit_event_rare on visit_event (visit, kind) where kind <> 'finding';
create trigger visit_event_is_append_only before update on visit_event
begin
    select raise(abort, 'events are never changed');
end;

create table finding (
    visit text not null,
    item text not null,
    side text not null,
    event integer not null,
    primary key (visit, item, side),
    foreign key (visit, event) references visit_event (visit, number)
) strict, without rowid;
insert into finding select visit, item, side, event from finding_moved order by visit, item, side;
drop table finding_moved;
)sql";

} // namespace

const std::vector<Migration>& migrations() {
    static const std::vector<Migration> all{{1, first}, {2, second}, {3, third}, {4, fourth}};
    return all;
}

int currentVersion() {
    return migrations().back().to;
}

int versionOf(sqlite::Database& database, int newest) {
    const auto id = database.first("pragma application_id")->integer(0);
    const int version = database.first("pragma user_version")->smallInteger(0);
    if (id != applicationId || version < 1)
        throw RecordError(Failure::foreign,
                          "This is a database of another program, not a clinic file. Nothing was changed "
                          "in it.");
    if (version > newest)
        throw RecordError(Failure::foreign,
                          fmt::format("This clinic was written by a newer version of the program (schema {}, "
                                      "this one knows up to {}). Install the newer version; nothing was "
                                      "changed.",
                                      version, newest));
    return version;
}

void migrate(sqlite::Database& database, const std::vector<Migration>& steps) {
    for (const Migration& step : steps) {
        sql::Transaction transaction{database};
        if (database.first("pragma user_version")->integer(0) >= step.to) continue;
        database.script(step.statements);
        database.script(
            fmt::format("pragma application_id = {}; pragma user_version = {};", applicationId, step.to));
        database.run("insert into meta (key, value) values ('schema', $1) "
                     "on conflict (key) do update set value = excluded.value",
                     {std::to_string(step.to)});
        transaction.commit();
    }
}

} // namespace rhizograph::schema
