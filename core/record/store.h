#pragma once

#include "base/problem.h"
#include "record/backup.h"
#include "record/model.h"
#include "record/unsaved.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

/// The clinic's record. One object per thread; every call is complete and durable when it returns.
/// Failures are Problems worded for people (disk full, read-only, locked, corrupt, newer schema, not
/// allowed).
class Store {
public:
    virtual ~Store() = default;

    virtual Result<std::vector<User>> users() = 0;
    /// Unseals the clinic for this user; everything below needs it. Wrong passphrases slow down.
    virtual Outcome signIn(const UserId& user, const std::string& passphrase) = 0;
    virtual void signOut() = 0;
    [[nodiscard]] virtual std::optional<User> signedIn() const = 0;
    /// A second connection to the same clinic, signed in as the same user, for another thread. It stays
    /// signed in when this one signs out, so that what is still to be written can be.
    virtual Result<std::unique_ptr<Store>> duplicate() = 0;
    /// Why the last call on this object failed.
    [[nodiscard]] virtual Failure lastFailure() const = 0;

    /// Runs `work`, whose calls on this object become one: when it fails, or the last of them cannot be kept,
    /// none of them happened. Others wait meanwhile, so it must be quick and ask nobody anything.
    virtual Outcome together(const std::function<Outcome()>& work) = 0;

    virtual Result<Patient> addPatient(const Identity& identity) = 0;
    virtual Outcome updatePatient(const Patient& patient) = 0;
    virtual Result<Patient> patient(const PatientId& id) = 0;
    /// Patients whose name or record number holds every word of `text` (case and accents ignored),
    /// best first; all when empty, newest visit first; at most `limit`.
    virtual Result<std::vector<Patient>> searchPatients(const std::string& text, int limit = 200) = 0;
    /// Joins a duplicate to the patient it belongs to: from then on its visits are `into`'s. Nothing is
    /// rewritten, so partPatients undoes it exactly.
    virtual Outcome mergePatients(const PatientId& duplicate, const PatientId& into) = 0;
    virtual Outcome partPatients(const PatientId& duplicate) = 0;
    /// The entries that were joined to this patient, in the order they came into the clinic.
    virtual Result<std::vector<Patient>> duplicatesOf(const PatientId& patient) = 0;
    /// Removes a patient with all visits for good, signed ones too. The audit keeps the ids and the reason.
    virtual Outcome erasePatient(const PatientId& patient, const std::string& reason) = 0;

    /// What happened to the patient, oldest first.
    virtual Result<std::vector<PatientEvent>> eventsOf(const PatientId& patient) = 0;
    /// Adds an event (without an id), or writes a new version of one; former versions are kept.
    virtual Result<PatientEvent> writeEvent(const PatientEvent& event) = 0;
    /// Takes an event off the list; what it said is kept.
    virtual Outcome removeEvent(const PatientEventId& event) = 0;

    virtual Result<Visit> addVisit(const PatientId& patient, const std::string& date) = 0;
    virtual Result<Visit> visit(const VisitId& id) = 0;
    virtual Result<std::vector<Visit>> visitsOf(const PatientId& patient) = 0; ///< oldest first
    /// The newest visit of each of these patients who has one, in one question; its number says how many
    /// there are. `patient` is the entry a duplicate was joined to.
    virtual Result<std::vector<Visit>> newestVisits(const std::vector<PatientId>& patients) = 0;
    virtual Result<std::vector<Visit>> visitsOn(const std::string& date) = 0;
    virtual Result<std::vector<Visit>> unsignedVisits() = 0;
    /// Whom somebody should look at. `today` (ISO 8601) decides what is overdue.
    virtual Result<Practice> practice(const std::string& today, int limit = 200) = 0;
    /// Any order while unsigned. signedOff signs without stating a knowledge version; prefer sign().
    virtual Outcome setState(const VisitId& visit, VisitState state) = 0;
    virtual Outcome setOpenRedSigns(const VisitId& visit, int count) = 0;
    virtual Outcome setWorse(const VisitId& visit, int count) = 0;

    /// The findings as they stand, with subject and date filled in.
    virtual Result<Exam> exam(const VisitId& visit) = 0;
    /// The same for several visits as they stand at one moment, such as those of a patient's course: one
    /// result a visit, in their order. One that cannot be read leaves the others whole.
    virtual std::vector<Result<Exam>> exams(const std::vector<VisitId>& visits) = 0;
    /// Appends the events and updates the current values in one transaction.
    virtual Outcome record(const VisitId& visit, const std::vector<FindingChange>& changes) = 0;
    /// Every value this finding ever had, oldest first.
    virtual Result<std::vector<FindingEvent>> history(const VisitId& visit, const FindingKey& key) = 0;
    /// What was recorded after event `number` (0: everything), by whomever, oldest first.
    virtual Result<std::vector<FindingEvent>> eventsAfter(const VisitId& visit, int number) = 0;
    /// Changes when any other connection has committed; cheap enough to ask four times a second.
    virtual Result<std::int64_t> changeCounter() = 0;

    virtual Result<std::string> plan(const VisitId& visit) = 0;
    virtual Outcome setPlan(const VisitId& visit, const std::string& text) = 0;
    virtual Outcome addNote(const VisitId& visit, const std::string& text) = 0;
    virtual Result<std::vector<AuthoredText>> notes(const VisitId& visit) = 0;
    virtual Outcome acknowledge(const VisitId& visit, const std::string& sign,
                                const std::string& urgency) = 0;
    virtual Result<std::vector<RedSignAcknowledgement>> acknowledgements(const VisitId& visit) = 0;

    /// Signs the visit: from then on it only takes addenda.
    virtual Outcome sign(const VisitId& visit, const std::string& knowledgeVersion) = 0;
    virtual Result<std::optional<Signature>> signature(const VisitId& visit) = 0;
    virtual Outcome addAddendum(const VisitId& visit, const std::string& text) = 0;
    virtual Result<std::vector<AuthoredText>> addenda(const VisitId& visit) = 0;

    virtual Result<User> addUser(const std::string& name, Role role, const std::string& passphrase) = 0;
    /// Name, role and whether active. The last active administrator stays one.
    virtual Outcome updateUser(const User& user) = 0;
    /// One's own, or anybody's for an administrator.
    virtual Outcome setPassphrase(const UserId& user, const std::string& passphrase) = 0;

    /// Readable before sign-in: they hold nothing of patients.
    virtual Result<std::string> clinicName() = 0;
    virtual Result<std::optional<std::string>> setting(const std::string& key) = 0;
    virtual Outcome setSetting(const std::string& key, const std::string& value) = 0;

    /// For what only the app knows: opened, printed, exported, imported. `detail` is stored sealed.
    virtual Outcome log(AuditAction action, const std::string& subject, const std::string& detail) = 0;
    virtual Result<std::vector<AuditEntry>> audit(int limit = 1000) = 0; ///< newest first
    /// Writes an encrypted copy of the whole record to a new file while others go on working, and reads it
    /// back to its end. Whoever could sign in when it was made can open it (see restoreBackup).
    virtual Result<Backup> backUp(const std::filesystem::path& file) = 0;
    /// Makes the day's backup in `folder` (created when missing) unless it is there, then removes this
    /// clinic's oldest beyond `keep`, but none while the record is damaged.
    virtual Result<DailyBackup> backUpDaily(const std::filesystem::path& folder, int keep) = 0;

    /// Recomputes every chained hash and compares what is shown with what was written.
    virtual Result<Verification> verify() = 0;

    /// Writes what could not be saved to a sealed file of its own (0600), complete or not at all.
    virtual Outcome saveUnsaved(const std::filesystem::path& file,
                                const std::vector<UnsavedChange>& changes) = 0;
    /// Writes such a file's changes into the record, all or none; how many there were.
    virtual Result<int> replayUnsaved(const std::filesystem::path& file) = 0;
};

/// What a passphrase costs to try, for thief and owner alike (Argon2id).
struct KeyCost {
    std::uint64_t operations = 2;
    std::uint64_t memoryBytes = 64U << 20U;

    /// libsodium's "interactive" limits: about 0.07 s.
    static KeyCost interactive() { return {}; }
    /// No protection; for tests and demo clinics of invented patients only.
    static KeyCost cheapest() { return {1, 8192}; }
};

struct ClinicOptions {
    Clock clock = systemClock();
    KeyCost cost = KeyCost::interactive(); ///< for passphrases set from now on; old ones keep theirs
    int busyMilliseconds = 2000;           ///< how long to wait for another writer before giving up
};

/// The fewest characters of a passphrase.
constexpr std::size_t shortestPassphrase = 8;

/// Opens an existing clinic file (SQLite). The file is not created.
Result<std::unique_ptr<Store>> openClinic(const std::filesystem::path& file,
                                          const ClinicOptions& options = {});

/// First user of a new clinic.
struct FirstUser {
    std::string name;
    Role role = Role::administrator;
    std::string passphrase;
};

/// Creates a clinic file (0600, refuses an existing one) with its first user, who must be an administrator.
Outcome createClinic(const std::filesystem::path& file, const std::string& clinicName, const FirstUser& first,
                     const ClinicOptions& options = {});

} // namespace rhizograph
