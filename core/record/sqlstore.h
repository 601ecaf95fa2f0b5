#pragma once

#include "record/chain.h"
#include "record/claims.h"
#include "record/failure.h"
#include "record/patientindex.h"
#include "record/sql.h"
#include "record/store.h"

#include <functional>
#include <memory>
#include <optional>
#include <set>

namespace rhizograph {

struct BackupHeader;

/// The record on an SQL database. The parts are in users.cpp, patients.cpp, events.cpp, visits.cpp,
/// findings.cpp, practice.cpp and audit.cpp.
class SqlStore final : public Store {
public:
    SqlStore(std::unique_ptr<sql::Connection> database, ClinicOptions options);

    Result<std::vector<User>> users() override;
    Outcome signIn(const UserId& user, const std::string& passphrase) override;
    void signOut() override;
    [[nodiscard]] std::optional<User> signedIn() const override;
    Result<std::unique_ptr<Store>> duplicate() override;
    [[nodiscard]] Failure lastFailure() const override { return lastFailure_; }

    Outcome together(const std::function<Outcome()>& work) override;

    Result<Patient> addPatient(const Identity& identity) override;
    Outcome updatePatient(const Patient& patient) override;
    Result<Patient> patient(const PatientId& id) override;
    Result<std::vector<Patient>> searchPatients(const std::string& text, int limit) override;
    Outcome mergePatients(const PatientId& duplicate, const PatientId& into) override;
    Outcome partPatients(const PatientId& duplicate) override;
    Result<std::vector<Patient>> duplicatesOf(const PatientId& patient) override;
    Outcome erasePatient(const PatientId& patient, const std::string& reason) override;

    Result<std::vector<PatientEvent>> eventsOf(const PatientId& patient) override;
    Result<PatientEvent> writeEvent(const PatientEvent& event) override;
    Outcome removeEvent(const PatientEventId& event) override;

    Result<Visit> addVisit(const PatientId& patient, const std::string& date) override;
    Result<Visit> visit(const VisitId& id) override;
    Result<std::vector<Visit>> visitsOf(const PatientId& patient) override;
    Result<std::vector<Visit>> newestVisits(const std::vector<PatientId>& patients) override;
    Result<std::vector<Visit>> visitsOn(const std::string& date) override;
    Result<std::vector<Visit>> unsignedVisits() override;
    Outcome setState(const VisitId& visit, VisitState state) override;
    Outcome setOpenRedSigns(const VisitId& visit, int count) override;
    Outcome setWorse(const VisitId& visit, int count) override;
    Result<Practice> practice(const std::string& today, int limit) override;

    Result<Exam> exam(const VisitId& visit) override;
    std::vector<Result<Exam>> exams(const std::vector<VisitId>& visits) override;
    Outcome record(const VisitId& visit, const std::vector<FindingChange>& changes) override;
    Result<std::vector<FindingEvent>> history(const VisitId& visit, const FindingKey& key) override;
    Result<std::vector<FindingEvent>> eventsAfter(const VisitId& visit, int number) override;
    Result<std::int64_t> changeCounter() override;

    Result<std::string> plan(const VisitId& visit) override;
    Outcome setPlan(const VisitId& visit, const std::string& text) override;
    Outcome addNote(const VisitId& visit, const std::string& text) override;
    Result<std::vector<AuthoredText>> notes(const VisitId& visit) override;
    Outcome acknowledge(const VisitId& visit, const std::string& sign, const std::string& urgency) override;
    Result<std::vector<RedSignAcknowledgement>> acknowledgements(const VisitId& visit) override;

    Outcome sign(const VisitId& visit, const std::string& knowledgeVersion) override;
    Result<std::optional<Signature>> signature(const VisitId& visit) override;
    Outcome addAddendum(const VisitId& visit, const std::string& text) override;
    Result<std::vector<AuthoredText>> addenda(const VisitId& visit) override;

    Result<User> addUser(const std::string& name, Role role, const std::string& passphrase) override;
    Outcome updateUser(const User& user) override;
    Outcome setPassphrase(const UserId& user, const std::string& passphrase) override;

    Result<std::string> clinicName() override;
    Result<std::optional<std::string>> setting(const std::string& key) override;
    Outcome setSetting(const std::string& key, const std::string& value) override;

    Outcome log(AuditAction action, const std::string& subject, const std::string& detail) override;
    Result<std::vector<AuditEntry>> audit(int limit) override;
    Result<Verification> verify() override;

    Result<Backup> backUp(const std::filesystem::path& file) override;
    Result<DailyBackup> backUpDaily(const std::filesystem::path& folder, int keep) override;

    Outcome saveUnsaved(const std::filesystem::path& file,
                        const std::vector<UnsavedChange>& changes) override;
    Result<int> replayUnsaved(const std::filesystem::path& file) override;

    /// Fills an empty database: the clinic, its data key and its first user.
    void found(const std::string& clinicName, const FirstUser& first);

    /// Writes into the audit of a clinic that is being restored who did it.
    void noteRestored(const Keys& keys, const std::string& user, const std::string& detail);

private:
    struct Session {
        User user;
        std::shared_ptr<const Keys> keys;
        std::string id; ///< random, one for each sign-in: tells one's own writing from others'
    };
    /// A new event before it has its place in the chain.
    struct NewEvent {
        std::string kind;
        std::string content;
        FindingKey key;
        bool bulk = false;
    };

    // The boundary: runs `work`, turning RecordErrors into Problems that name the clinic.
    template <class T> Result<T> guarded(const std::function<T()>& work);
    Outcome guardedAction(const std::function<void()>& work);
    Problem problemOf(const RecordError& error);

    [[nodiscard]] const Session& session() const;
    [[nodiscard]] const Keys& keys() const { return *session().keys; }
    /// Refuses unless the user's role, as it stands in the record at this moment, allows it.
    void require(Permission permission);
    [[nodiscard]] std::string now() const { return utcText(options_.clock()); }
    [[nodiscard]] std::string userName(const std::string& id);

    // users.cpp
    void checkPassphraseAllowed(const std::string& passphrase) const;
    struct NewUser {
        User user;
        Claims claims;
    };
    NewUser insertUser(const Keys& keys, const std::string& name, Role role, const std::string& passphrase);
    [[nodiscard]] User userFrom(const sql::Row& row) const;
    [[nodiscard]] std::optional<User> readableUser(const sql::Row& row) const;
    [[nodiscard]] User userOf(const UserId& id);
    void openSession(const sql::Row& staff, const std::string& passphrase);
    void noteFailedSignIn(const std::string& user, std::int64_t failures);
    void noteSuccessfulSignIn();
    void refuseWhileSlowedDown(std::int64_t failures, std::int64_t failedAt) const;

    // patients.cpp
    void refreshPatients();
    void forgetPatients();
    [[nodiscard]] Identity unsealedIdentity(const PatientId& id, const Bytes& sealed);
    [[nodiscard]] std::int64_t counter(const std::string& key);
    std::int64_t nextPatientRevision();
    /// Writes a new version of an identity; what the audit is to say of it.
    Claims storeIdentity(const PatientId& id, const Identity& identity, bool isNew);
    [[nodiscard]] std::string personOf(const PatientId& id);
    [[nodiscard]] Patient loadedPatient(const PatientId& id);
    [[nodiscard]] std::vector<PatientId> byNewestVisit(std::size_t limit);

    // events.cpp
    [[nodiscard]] PatientEventRow eventRow(const PatientEventId& id);
    [[nodiscard]] PatientEvent eventFrom(const PatientEventRow& row);
    void storeEvent(PatientEventRow row, const std::string& content);

    // visits.cpp
    [[nodiscard]] std::vector<Visit> visitsWhere(const std::string& condition,
                                                 const sql::Parameters& parameters);
    [[nodiscard]] VisitRow visitRow(const VisitId& id);
    [[nodiscard]] VisitRow unsignedVisitRow(const VisitId& id);
    void append(VisitRow& visit, const std::vector<NewEvent>& events);
    void store(VisitRow& visit);
    [[nodiscard]] std::vector<EventRow> eventsOfKind(const VisitId& visit, const std::string& kind);
    [[nodiscard]] std::vector<AuthoredText> textsOfKind(const VisitId& visit, const std::string& kind);
    /// One transaction on an unsigned visit.
    void changeVisit(const VisitId& visit, Permission permission,
                     const std::function<void(VisitRow&)>& change);
    void signWithin(VisitRow& visit, const std::string& knowledgeVersion);

    // findings.cpp
    void recordWithin(VisitRow& visit, const std::vector<FindingChange>& changes);
    Exam loadedExam(const VisitId& visit);
    [[nodiscard]] FindingEvent findingEvent(const EventRow& row);
    // unsaved.cpp
    void replayWithin(const UnsavedChange& change);
    [[nodiscard]] std::string unsavedContext();
    // backup.cpp
    [[nodiscard]] BackupHeader backupHeader();
    Backup writeBackup(const std::filesystem::path& file);

    // audit.cpp
    void addAudit(AuditAction action, const std::string& subject, const std::string& detail,
                  const Claims& claims = {});
    void addAuditFor(const Keys& keys, const std::string& staff, const std::string& at, AuditAction action,
                     const std::string& subject, const std::string& detail, const Claims& claims = {});

    std::unique_ptr<sql::Connection> database_;
    ClinicOptions options_;
    std::optional<Session> session_;
    PatientIndex index_;
    std::set<PatientId> unreadable_;
    std::int64_t indexedRevision_ = -1;
    std::int64_t indexedErasures_ = 0;
    Failure lastFailure_ = Failure::none;
};

template <class T> Result<T> SqlStore::guarded(const std::function<T()>& work) {
    lastFailure_ = Failure::none;
    try {
        return work();
    } catch (const RecordError& error) {
        return problemOf(error);
    }
}

/// An identity, a finding, as sealed bytes.
[[nodiscard]] std::string packIdentity(const Identity& identity);
[[nodiscard]] Identity unpackIdentity(std::string_view bytes);
[[nodiscard]] std::string packFinding(const std::optional<Finding>& finding);
[[nodiscard]] std::optional<Finding> unpackFinding(std::string_view bytes, bool bulk);

/// Whether `text` is an existing day as YYYY-MM-DD.
[[nodiscard]] bool isCalendarDate(const std::string& text);

/// The audit's own words for its actions, as stored.
[[nodiscard]] std::string_view name(AuditAction action);
[[nodiscard]] std::optional<AuditAction> auditActionNamed(std::string_view word);

} // namespace rhizograph
