#pragma once

#include "base/strong.h"
#include "exam/exam.h"
#include "record/clock.h"
#include "record/roles.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

using PatientId = Id<struct PatientTag>; ///< random, 32 hex digits; says nothing about the person
using VisitId = Id<struct VisitTag>;
using UserId = Id<struct UserTag>;
using PatientEventId = Id<struct PatientEventTag>;

struct User {
    UserId id;
    std::string name;
    Role role = Role::clinician;
    bool active = true;
};

/// What identifies a person; stored sealed only.
struct Identity {
    std::string name;
    std::string recordNumber;
    std::string birthDate; ///< ISO 8601 calendar date or empty
    std::string sex;       ///< "female", "male", "other" or empty
    std::string contact;
    std::string notes;
    bool operator==(const Identity&) const = default;
};

struct Patient {
    PatientId id;
    Identity identity;
};

/// Where a visit stands on its way through the house.
enum class VisitState { intake, inRoom, toReview, signedOff };

struct Visit {
    VisitId id;
    PatientId patient;
    int number = 1;        ///< 1 for the patient's first visit
    std::string date;      ///< ISO 8601 calendar date
    std::string startedAt; ///< UTC, ISO 8601 to the second
    std::string changedAt; ///< UTC, last write
    VisitState state = VisitState::intake;
    std::optional<int> ageAtVisit;
    std::string author;   ///< name of who opened it
    int findings = 0;     ///< how many are recorded
    int openRedSigns = 0; ///< urgent or emergency and not acknowledged, as last assessed by the app
    int worse = 0;        ///< findings worse or new against the visits before, as last compared by the app
};

/// One change of one finding: `finding` empty means cleared.
struct FindingChange {
    FindingKey key;
    std::optional<Finding> finding;
};

/// One change as it was written; the last of a key is its current value.
struct FindingEvent {
    int number = 0; ///< place in the visit's own sequence of events, from 1
    FindingKey key;
    std::optional<Finding> finding; ///< empty: cleared
    std::string by;
    std::string at;    ///< UTC
    bool here = false; ///< written by this sign-in, so not news to who is looking
};

struct RedSignAcknowledgement {
    std::string sign;    ///< red-sign id
    std::string urgency; ///< as it stood when acknowledged
    std::string by;
    std::string at; ///< UTC
    bool operator==(const RedSignAcknowledgement&) const = default;
};

/// A text with its author: a note on the visit or an addendum after signing.
struct AuthoredText {
    std::string text;
    std::string by;
    std::string at; ///< UTC
    bool operator==(const AuthoredText&) const = default;
};

struct Signature {
    std::string by;
    std::string at;               ///< UTC
    std::string knowledgeVersion; ///< of the knowledge the impression was made with; empty when not stated
    bool operator==(const Signature&) const = default;
};

/// Something that happened to a patient, or is awaited, on the axis of the course: an injection, an
/// operation, the start of a therapy, a follow-up.
struct PatientEvent {
    PatientEventId id; ///< empty: not in the record yet
    PatientId patient;
    std::string date;     ///< ISO 8601 calendar date
    std::string kind;     ///< id of a kind of event of the knowledge; the record takes any
    std::string text;     ///< the clinic's own words; may be empty
    bool awaited = false; ///< a follow-up: overdue once its day has passed without a visit on or after it
    std::string by;       ///< name of who wrote it last
    std::string at;       ///< UTC
    bool operator==(const PatientEvent&) const = default;
};

/// A patient somebody should look at, and why.
struct Attention {
    PatientId patient;
    VisitId visit;    ///< the one to open; empty where there is none yet
    std::string date; ///< of that visit
    int redSigns = 0; ///< not acknowledged, over all visits
    int worse = 0;    ///< findings worse or new at the newest visit
    int unsignedVisits = 0;
    std::string overdueSince; ///< day of the oldest follow-up that passed without a visit; empty: none
};

/// Who needs somebody's eye in the whole clinic: red signs first, then what got worse, then follow-ups that
/// passed, then what is not signed; the longest waiting first within each.
struct Practice {
    std::vector<Attention> patients; ///< at most as many as asked for
    // How many patients there are in all, and of each kind.
    int all = 0;
    int withRedSigns = 0;
    int withWorse = 0;
    int withOverdue = 0;
    int withUnsigned = 0;
};

/// What the audit distinguishes.
enum class AuditAction {
    clinicCreated,
    signedIn,
    signInFailed,
    opened,
    exported,
    printed,
    settingsChanged,
    userAdded,
    userChanged,
    passphraseChanged,
    visitSigned,
    addendumAdded,
    patientsMerged,
    patientsParted,
    patientAdded,
    patientChanged,
    visitAdded,
    patientErased,
    backedUp,
    restored,
    verified,
    unsavedReplayed,
    eventWritten,
    imported,
};

struct AuditEntry {
    std::int64_t number = 0;
    std::string at; ///< UTC
    std::string by; ///< name of the user; empty for what no user did
    AuditAction action = AuditAction::opened;
    std::string subject; ///< id of the patient, visit or user concerned, or empty
    std::string detail;
};

/// One place where the record is not what was written.
struct Damage {
    VisitId visit; ///< empty when it concerns the audit, the users or the patients
    std::string what;
};

struct Verification {
    int visits = 0;
    int events = 0;
    int auditEntries = 0;
    std::vector<Damage> damage;
    [[nodiscard]] bool sound() const { return damage.empty(); }
};

/// Why the last call failed, coarsely: enough to offer the right way out.
enum class Failure {
    none,
    refused,  ///< the record will not do this (not allowed, signed, unknown, malformed): retrying changes
              ///< nothing
    busy,     ///< someone else is writing; retry
    full,     ///< no space; make some and retry, or save a copy elsewhere
    readOnly, ///< cannot be written; change permissions and retry, or save a copy elsewhere
    damaged,  ///< the file is damaged; restore a backup
    foreign,  ///< not a clinic of this program, or of a newer one
    device,   ///< the disk or the network reports an error, or the file is gone
};

} // namespace rhizograph
