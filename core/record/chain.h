#pragma once

#include "record/seal.h"
#include "record/sql.h"

#include <optional>
#include <string>

namespace rhizograph {

struct AuditText;

/// The keys of an unsealed clinic, all made from its one data key.
struct Keys {
    explicit Keys(SecretKey dataKey);
    SecretKey data;
    SecretKey sealing; ///< identities, values, texts
    SecretKey chain;   ///< keyed hashes
};

/// A visit's row as it is stored.
struct VisitRow {
    std::string id;
    std::string patient;
    std::string date;
    std::string startedAt;
    std::string changedAt;
    std::string state;
    std::optional<std::int64_t> age;
    std::string author;
    std::int64_t openRedSigns = 0;
    std::int64_t worse = 0;
    std::int64_t events = 0;
    Mac head;
    Mac mac;

    static constexpr const char* columns = "id, patient, date, started_at, changed_at, state, age, author, "
                                           "open_red_signs, worse, events, head, mac";
    static VisitRow from(const sql::Row& row);
    /// What mac should be.
    [[nodiscard]] Mac expectedMac(const Keys& keys) const;
    /// What head is before the first event.
    [[nodiscard]] Mac origin(const Keys& keys) const;
};

/// One event of a visit as it is stored.
struct EventRow {
    std::string visit;
    std::int64_t number = 0;
    std::string kind;
    std::string item;
    std::string side;
    bool bulk = false;
    std::string author;
    std::string session;
    std::string at;
    Bytes sealed;
    Mac mac;

    static constexpr const char* columns =
        "visit, number, kind, item, side, bulk, author, session, at, sealed, mac";
    static EventRow from(const sql::Row& row);
    /// What mac should be after `before`, the hash of the event before.
    [[nodiscard]] Mac expectedMac(const Keys& keys, const Mac& before) const;
    /// What the content was sealed for; another place in the record cannot open it.
    [[nodiscard]] std::string context() const;
    [[nodiscard]] std::string content(const Keys& keys) const {
        return open(keys.sealing, sealed, context());
    }
};

/// One version of an event of a patient as it is stored; the last of an id is the one that counts.
struct PatientEventRow {
    std::string id;
    std::int64_t revision = 0;
    std::string patient;
    std::string date;
    bool awaited = false;
    bool removed = false;
    std::string author;
    std::string at;
    Bytes sealed;

    static constexpr const char* columns =
        "id, revision, patient, date, awaited, removed, author, at, sealed";
    static PatientEventRow from(const sql::Row& row);
    /// What the content was sealed for.
    [[nodiscard]] std::string context() const;
    /// What the audit says of this row.
    [[nodiscard]] std::string claim(const Keys& keys) const;
};

struct AuditRow {
    std::int64_t number = 0;
    std::string at;
    std::string staff; ///< empty: no user
    std::string action;
    std::string subject;
    Bytes sealed;
    Mac mac;

    static constexpr const char* columns = "number, at, coalesce(staff, ''), action, subject, sealed, mac";
    static AuditRow from(const sql::Row& row);
    [[nodiscard]] Mac expectedMac(const Keys& keys, const Mac& before) const;
    [[nodiscard]] std::string context() const;
    [[nodiscard]] AuditText content(const Keys& keys) const;
    /// What vouches for this entry being the last.
    [[nodiscard]] Mac asEnd(const Keys& keys) const;
};

/// Keyed hash of a user's row, so that nobody makes himself administrator with a database tool.
[[nodiscard]] Mac staffMac(const Keys& keys, const std::string& id, const std::string& name,
                           const std::string& role, bool active);

} // namespace rhizograph
