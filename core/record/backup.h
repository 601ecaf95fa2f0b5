#pragma once

#include "base/problem.h"
#include "record/model.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace rhizograph {

struct ClinicOptions;

/// What a backup says of itself before it is unsealed: whose it is and who can open it, nothing of patients.
struct BackupInfo {
    std::string clinic; ///< the clinic's random id
    std::string clinicName;
    std::string madeAt; ///< UTC
    int schema = 0;
    std::vector<std::string> users; ///< names of those whose passphrase at that time opens it
};

struct Backup {
    std::filesystem::path file;
    std::uintmax_t bytes = 0;
    Verification verification; ///< of the copied record; the backup is whole even when the record is damaged
    bool noted = true;         ///< false: the audit could not be written (say the clinic's disk is full)
};

/// What a round of daily backups did.
struct DailyBackup {
    std::optional<Backup> made;                 ///< nothing when today's was there already
    std::vector<std::filesystem::path> removed; ///< too old
};

struct Restored {
    BackupInfo info;
    Verification verification;
    std::optional<std::filesystem::path> keptAside; ///< where the clinic went that stood there before
};

struct RestoreOrder {
    std::filesystem::path backup;
    std::filesystem::path clinic; ///< where it is to stand; a clinic already there is kept aside
    std::string user;             ///< an administrator's name
    std::string passphrase;       ///< as it was when the backup was made
    /// Take the record although verifying finds damage that it already had when it was backed up.
    bool despiteDamage = false;
};

constexpr const char* backupSuffix = ".rhzbackup";

/// Reads the beginning of a backup file. Refuses what is none.
Result<BackupInfo> inspectBackup(const std::filesystem::path& file);

/// Unseals, checks and verifies a backup beside `clinic`, and only then puts it in its place, at one stroke.
/// Refuses a damaged, foreign or newer file, a clinic that somebody has open and a file that is no clinic,
/// before touching anything. Only an administrator restores; the audit of the restored clinic notes it.
Result<Restored> restoreBackup(const RestoreOrder& order, const ClinicOptions& options);

} // namespace rhizograph
