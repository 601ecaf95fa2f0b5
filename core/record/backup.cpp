#include "record/backup.h"

#include "record/backupfile.h"
#include "record/schema.h"
#include "record/sqlstore.h"
#include "record/stream.h"
#include "record/verify.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;

fs::path besideWith(fs::path file, std::string_view suffix) {
    file += fmt::format(".{}{}", randomId().substr(0, 8), suffix);
    return file;
}

/// A working file that is gone at the end, whatever happens.
class WorkingFile {
public:
    explicit WorkingFile(fs::path file) : file_(std::move(file)) {}
    ~WorkingFile() { removeDatabaseFiles(file_); }
    WorkingFile(const WorkingFile&) = delete;
    WorkingFile& operator=(const WorkingFile&) = delete;
    [[nodiscard]] const fs::path& path() const { return file_; }

private:
    fs::path file_;
};

/// Copies the database beside itself, where the same protection holds; beside the backup when there is no
/// space.
std::unique_ptr<WorkingFile> snapshot(sql::Connection& database, const fs::path& backup) {
    for (const fs::path& near : {fs::path{database.place()}, backup}) {
        auto copy = std::make_unique<WorkingFile>(besideWith(near, ".copy"));
        try {
            database.copyInto(copy->path());
            return copy;
        } catch (const RecordError& error) {
            const bool elsewhere = error.kind() == Failure::full || error.kind() == Failure::readOnly;
            if (!elsewhere || near == backup) throw;
        }
    }
    throw std::logic_error("the last place either holds the copy or throws");
}

/// Reads a finished backup to its end: what a person will one day depend on.
void checkWritten(const fs::path& sealed, const SecretKey& dataKey, const Bytes& expected) {
    Digest digest;
    BackupReader{sealed}.unseal(dataKey, [&](std::string_view piece) { digest.add(piece); });
    if (digest.finished() != expected)
        reportDamage(
            "The disk gave back something else than the backup that was written to it. Use another disk.");
}

std::string dailyName(const std::string& clinic, const std::string& date) {
    return fmt::format("clinic-{}-{}{}", clinic.substr(0, 8), date, backupSuffix);
}

/// The daily backups of this clinic in a folder, oldest first. Anything else there is left alone.
std::vector<fs::path> dailyBackups(const fs::path& folder, const std::string& clinic) {
    std::vector<fs::path> found;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder, error)) {
        const std::string file = entry.path().filename().string();
        const std::string begin = dailyName(clinic, "");
        const std::string head = begin.substr(0, begin.size() - std::string_view{backupSuffix}.size());
        if (!file.starts_with(head) || !file.ends_with(backupSuffix)) continue;
        if (!isCalendarDate(file.substr(head.size(), file.size() - begin.size()))) continue;
        const auto info = inspectBackup(entry.path());
        if (info && info->clinic == clinic) found.push_back(entry.path());
    }
    if (error)
        throw RecordError(Failure::device,
                          fmt::format("The folder {} cannot be read: {}.", folder.string(), error.message()));
    std::sort(found.begin(), found.end());
    return found;
}

} // namespace

Result<BackupInfo> inspectBackup(const fs::path& file) {
    try {
        return BackupReader{file}.header().info();
    } catch (const RecordError& error) {
        return Problem{"", "", error.what()};
    }
}

BackupHeader SqlStore::backupHeader() {
    BackupHeader header;
    for (const sql::Row& row : database_->rows("select key, value from meta")) {
        if (row.text(0) == "clinic") header.clinic = row.text(1);
        if (row.text(0) == "clinic_name") header.clinicName = row.text(1);
    }
    header.madeAt = now();
    header.schema = schema::currentVersion();
    for (const sql::Row& row :
         database_->rows("select id, name, salt, operations, memory, wrapped from staff "
                         "where active = 1 order by name, id"))
        header.openers.push_back({row.text(0),
                                  row.text(1),
                                  {{row.bytes(2), static_cast<std::uint64_t>(row.integer(3)),
                                    static_cast<std::uint64_t>(row.integer(4))},
                                   row.bytes(5)}});
    return header;
}

Backup SqlStore::writeBackup(const fs::path& file) {
    std::error_code error;
    if (fs::exists(file, error))
        refuse(fmt::format("There is already a file {}. Choose another name.", file.string()));
    if (!file.parent_path().empty() && !fs::is_directory(file.parent_path(), error))
        refuse(fmt::format("There is no folder {}.", file.parent_path().string()));
    const auto copy = snapshot(*database_, file);
    Backup made{file, 0, {}, true};
    made.verification = verifyRecord(*database_->another(copy->path()), keys());
    const WorkingFile sealed{besideWith(file, ".part")};
    checkWritten(sealed.path(), keys().data,
                 sealFile(copy->path(), sealed.path(), backupHeader(), keys().data));
    made.bytes = fs::file_size(sealed.path(), error);
    placeNewFile(sealed.path(), file);
    try {
        sql::Transaction transaction{*database_};
        addAudit(AuditAction::backedUp, "", file.filename().string());
        transaction.commit();
    } catch (const RecordError& failure) {
        // The backup may be the way out of exactly this trouble.
        if (failure.kind() == Failure::damaged) throw;
        made.noted = false;
    }
    return made;
}

Result<Backup> SqlStore::backUp(const fs::path& file) {
    return guarded<Backup>([&] {
        require(Permission::backUp);
        return writeBackup(file);
    });
}

Result<DailyBackup> SqlStore::backUpDaily(const fs::path& folder, int keep) {
    return guarded<DailyBackup>([&] {
        require(Permission::backUp);
        if (keep < 1) refuse("At least one backup must be kept.");
        makePrivateFolder(folder);
        DailyBackup round;
        const std::string clinic = backupHeader().clinic;
        const fs::path today = folder / dailyName(clinic, utcDate(options_.clock()));
        std::vector<fs::path> present = dailyBackups(folder, clinic);
        if (std::find(present.begin(), present.end(), today) == present.end()) {
            round.made = writeBackup(today);
            present = dailyBackups(folder, clinic);
            // A damaged record must not push out the backups from before it was damaged.
            if (!round.made->verification.sound()) return round;
        }
        const auto most = static_cast<std::size_t>(keep);
        const std::size_t surplus = present.size() > most ? present.size() - most : 0;
        for (std::size_t i = 0; i < surplus; ++i)
            if (std::error_code error; fs::remove(present[i], error)) round.removed.push_back(present[i]);
        return round;
    });
}

} // namespace rhizograph
