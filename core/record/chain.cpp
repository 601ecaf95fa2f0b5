#include "record/chain.h"

#include "record/claims.h"
#include "record/pack.h"

namespace rhizograph {

Keys::Keys(SecretKey dataKey) : data(std::move(dataKey)), sealing(data.derived(1)), chain(data.derived(2)) {}

VisitRow VisitRow::from(const sql::Row& row) {
    VisitRow v;
    v.id = row.text(0);
    v.patient = row.text(1);
    v.date = row.text(2);
    v.startedAt = row.text(3);
    v.changedAt = row.text(4);
    v.state = row.text(5);
    if (!row.isNull(6)) v.age = row.smallInteger(6);
    v.author = row.text(7);
    v.openRedSigns = row.smallInteger(8);
    v.worse = row.smallInteger(9);
    v.events = row.smallInteger(10);
    v.head = row.bytes(11);
    v.mac = row.bytes(12);
    return v;
}

Mac VisitRow::expectedMac(const Keys& keys) const {
    Packer message;
    message.text("visit").text(id).text(patient).text(date).text(startedAt).text(changedAt).text(state);
    message.number(age ? 1 : 0)
        .number(age.value_or(0))
        .text(author)
        .number(openRedSigns)
        .number(events)
        .bytes(head);
    if (worse != 0) message.number(worse); // visits written before there was such a count have none
    return keyedHash(keys.chain, message.packed());
}

Mac VisitRow::origin(const Keys& keys) const {
    return keyedHash(keys.chain, Packer{}.text("visit origin").text(id).text(patient).packed());
}

EventRow EventRow::from(const sql::Row& row) {
    EventRow e;
    e.visit = row.text(0);
    e.number = row.smallInteger(1);
    e.kind = row.text(2);
    e.item = row.text(3);
    e.side = row.text(4);
    e.bulk = row.flag(5);
    e.author = row.text(6);
    e.session = row.text(7);
    e.at = row.text(8);
    e.sealed = row.bytes(9);
    e.mac = row.bytes(10);
    return e;
}

Mac EventRow::expectedMac(const Keys& keys, const Mac& before) const {
    Packer message;
    message.text("event").bytes(before).text(visit).number(number).text(kind).text(item).text(side);
    message.number(bulk ? 1 : 0).text(author).text(session).text(at).bytes(sealed);
    return keyedHash(keys.chain, message.packed());
}

std::string EventRow::context() const {
    return Packer{}.text("event").text(visit).number(number).text(kind).text(item).text(side).packed();
}

PatientEventRow PatientEventRow::from(const sql::Row& row) {
    PatientEventRow e;
    e.id = row.text(0);
    e.revision = row.smallInteger(1);
    e.patient = row.text(2);
    e.date = row.text(3);
    e.awaited = row.flag(4);
    e.removed = row.flag(5);
    e.author = row.text(6);
    e.at = row.text(7);
    e.sealed = row.bytes(8);
    return e;
}

std::string PatientEventRow::context() const {
    return Packer{}.text("patient event").text(id).number(revision).packed();
}

std::string PatientEventRow::claim(const Keys& keys) const {
    Packer message;
    message.text("patient event claim").text(id).number(revision).text(patient).text(date);
    message.number(awaited ? 1 : 0).number(removed ? 1 : 0).text(author).text(at).bytes(sealed);
    return hexText(keyedHash(keys.chain, message.packed()));
}

AuditRow AuditRow::from(const sql::Row& row) {
    AuditRow a;
    a.number = row.integer(0);
    a.at = row.text(1);
    a.staff = row.text(2);
    a.action = row.text(3);
    a.subject = row.text(4);
    a.sealed = row.bytes(5);
    a.mac = row.bytes(6);
    return a;
}

Mac AuditRow::expectedMac(const Keys& keys, const Mac& before) const {
    Packer message;
    message.text("audit").bytes(before).number(number).text(at).text(staff).text(action).text(subject).bytes(
        sealed);
    return keyedHash(keys.chain, message.packed());
}

std::string AuditRow::context() const {
    return Packer{}.text("audit").number(number).text(action).packed();
}

AuditText AuditRow::content(const Keys& keys) const {
    return AuditText::from(open(keys.sealing, sealed, context()));
}

Mac AuditRow::asEnd(const Keys& keys) const {
    return keyedHash(keys.chain, Packer{}.text("audit head").number(number).bytes(mac).packed());
}

Mac staffMac(const Keys& keys, const std::string& id, const std::string& name, const std::string& role,
             bool active) {
    return keyedHash(keys.chain,
                     Packer{}.text("staff").text(id).text(name).text(role).number(active ? 1 : 0).packed());
}

} // namespace rhizograph
