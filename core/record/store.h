#pragma once

#include "base/problem.h"
#include "base/strong.h"
#include "exam/exam.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

using PatientId = Id<struct PatientTag>; ///< random, 32 hex digits; says nothing about the person
using VisitId = Id<struct VisitTag>;
using UserId = Id<struct UserTag>;

enum class Role { nurse, clinician, reviewer, administrator };

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
    int number = 1;         ///< 1 for the patient's first visit
    std::string date;       ///< ISO 8601 calendar date
    std::string startedAt;  ///< UTC, ISO 8601 to the second
    std::string changedAt;  ///< UTC, last write
    VisitState state = VisitState::intake;
    std::optional<int> ageAtVisit;
    std::string author;     ///< name of who opened it
    int findings = 0;       ///< how many are recorded
    int openRedSigns = 0;   ///< urgent or emergency and not acknowledged, as last assessed by the app
};

/// One change of one finding: `finding` empty means cleared.
struct FindingChange {
    FindingKey key;
    std::optional<Finding> finding;
};

struct RedSignAcknowledgement {
    std::string sign;    ///< red-sign id
    std::string urgency; ///< as it stood when acknowledged
    std::string by;
    std::string at; ///< UTC
};

/// The clinic's record. One object per thread; every call is complete and durable when it returns.
/// Failures are Problems worded for people (disk full, read-only, locked, corrupt, newer schema, not allowed).
class Store {
public:
    virtual ~Store() = default;

    virtual Result<std::vector<User>> users() = 0;
    /// Unseals the clinic for this user; everything below needs it. Wrong passphrases slow down.
    virtual Outcome signIn(const UserId& user, const std::string& passphrase) = 0;
    virtual void signOut() = 0;
    [[nodiscard]] virtual std::optional<User> signedIn() const = 0;

    virtual Result<Patient> addPatient(const Identity& identity) = 0;
    virtual Outcome updatePatient(const Patient& patient) = 0;
    virtual Result<Patient> patient(const PatientId& id) = 0;
    /// Patients whose name or record number holds every word of `text` (case and accents ignored),
    /// best first; all when empty, newest visit first; at most `limit`.
    virtual Result<std::vector<Patient>> searchPatients(const std::string& text, int limit = 200) = 0;

    virtual Result<Visit> addVisit(const PatientId& patient, const std::string& date) = 0;
    virtual Result<Visit> visit(const VisitId& id) = 0;
    virtual Result<std::vector<Visit>> visitsOf(const PatientId& patient) = 0; ///< oldest first
    virtual Result<std::vector<Visit>> visitsOn(const std::string& date) = 0;
    virtual Result<std::vector<Visit>> unsignedVisits() = 0;
    virtual Outcome setState(const VisitId& visit, VisitState state) = 0;
    virtual Outcome setOpenRedSigns(const VisitId& visit, int count) = 0;

    /// The findings as they stand, with subject and date filled in.
    virtual Result<Exam> exam(const VisitId& visit) = 0;
    /// Appends the events and updates the current values in one transaction.
    virtual Outcome record(const VisitId& visit, const std::vector<FindingChange>& changes) = 0;

    virtual Result<std::string> plan(const VisitId& visit) = 0;
    virtual Outcome setPlan(const VisitId& visit, const std::string& text) = 0;
    virtual Outcome acknowledge(const VisitId& visit, const std::string& sign, const std::string& urgency) = 0;
    virtual Result<std::vector<RedSignAcknowledgement>> acknowledgements(const VisitId& visit) = 0;
};

/// Opens an existing clinic file (SQLite). The file is not created.
Result<std::unique_ptr<Store>> openClinic(const std::filesystem::path& file);

/// First user of a new clinic.
struct FirstUser {
    std::string name;
    Role role = Role::administrator;
    std::string passphrase;
};

/// Creates a clinic file (0600, refuses an existing one) with its first user.
Outcome createClinic(const std::filesystem::path& file, const std::string& clinicName, const FirstUser& first);

} // namespace rhizograph
