#include "record/backup.h"
#include "record/backupfile.h"
#include "record/schema.h"
#include "record/sqlite.h"
#include "record/sqlstore.h"
#include "record/verify.h"

#include <algorithm>
#include <fmt/format.h>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;

/// One restoring, from the sealed file to the clinic in its place.
class Restoring {
public:
    Restoring(const RestoreOrder& order, const ClinicOptions& options)
        : order_(order), options_(options), part_(order.clinic) {
        part_ += fmt::format(".{}.part", randomId().substr(0, 8));
    }
    ~Restoring() { removeDatabaseFiles(part_); }
    Restoring(const Restoring&) = delete;
    Restoring& operator=(const Restoring&) = delete;

    Restored run();

private:
    [[nodiscard]] SecretKey dataKey(const BackupHeader& header);
    void unseal(BackupReader& reader, const SecretKey& key);
    Verification check(const BackupHeader& header, const SecretKey& key);
    void checkVerified(const Verification& verification) const;
    void checkAdministrator(sql::Connection& record) const;
    void checkPlace(const std::string& clinic) const;
    std::optional<fs::path> putInPlace();

    const RestoreOrder& order_;
    const ClinicOptions& options_;
    fs::path part_;
    std::string user_; ///< id
};

SecretKey Restoring::dataKey(const BackupHeader& header) {
    const auto opener = std::find_if(header.openers.begin(), header.openers.end(),
                                     [&](const auto& candidate) { return candidate.name == order_.user; });
    if (opener == header.openers.end())
        refuse(fmt::format("The backup knows no user named {}.", order_.user));
    user_ = opener->user;
    auto key = opener->slot.unwrapped(user_, order_.passphrase);
    if (!key) refuse("The passphrase is wrong. It is the one this user had when the backup was made.");
    return std::move(*key);
}

void Restoring::unseal(BackupReader& reader, const SecretKey& key) {
    const OpenFile out = OpenFile::created(part_);
    reader.unseal(key, [&](std::string_view piece) { out.write(piece); });
    out.sync();
}

void Restoring::checkVerified(const Verification& verification) const {
    if (verification.sound() || order_.despiteDamage) return;
    const Damage& first = verification.damage.front();
    refuse(fmt::format("The record in this backup was already damaged when the backup was made ({} places, "
                       "the first: {}{}). "
                       "Nothing was changed. Use an older backup, or restore this one despite the damage.",
                       verification.damage.size(), first.what,
                       first.visit.empty() ? "" : " Visit " + first.visit.text()));
}

void Restoring::checkAdministrator(sql::Connection& record) const {
    const auto row = record.first("select role, active from staff where id = $1", {user_});
    if (!row || !row->flag(1) || row->text(0) != name(Role::administrator))
        refuse(
            fmt::format("{} was no administrator when the backup was made. Only an administrator restores.",
                        order_.user));
}

Verification Restoring::check(const BackupHeader& header, const SecretKey& key) {
    const Keys keys{SecretKey::from(Bytes(key.data(), key.data() + SecretKey::size))};
    auto database = std::make_unique<sqlite::Database>(part_, options_.busyMilliseconds);
    (void)schema::versionOf(*database);
    const Verification verification = verifyRecord(*database, keys);
    checkVerified(verification);
    checkAdministrator(*database);
    database->prepareForWriting();
    schema::migrate(*database);
    SqlStore{std::move(database), options_}.noteRestored(keys, user_, "backup of " + header.madeAt);
    return verification;
}

/// What stands where the clinic is to go: nothing, or the same clinic.
void Restoring::checkPlace(const std::string& clinic) const {
    std::error_code error;
    if (!fs::exists(order_.clinic, error)) return;
    std::string there;
    try {
        sqlite::Database present{order_.clinic, options_.busyMilliseconds, sqlite::Database::Mode::readOnly};
        (void)schema::versionOf(present);
        if (const auto row = present.first("select value from meta where key = 'clinic'"))
            there = row->text(0);
    } catch (const RecordError& failure) {
        if (failure.kind() == Failure::damaged) return; // what restoring is for
        if (failure.kind() != Failure::foreign) throw;
        refuse(fmt::format("{} cannot be replaced: {} Restore to another name, or move that file away first.",
                           order_.clinic.string(), failure.what()));
    }
    if (there != clinic)
        refuse(fmt::format(
            "{} is another clinic than the one in the backup. Nothing was changed. Restore to another name.",
            order_.clinic.string()));
}

std::optional<fs::path> Restoring::putInPlace() {
    std::error_code error;
    if (!fs::exists(order_.clinic, error)) {
        placeNewFile(part_, order_.clinic);
        return std::nullopt;
    }
    std::string stamp = utcText(options_.clock());
    std::erase_if(stamp, [](char c) { return c == ':' || c == '-'; });
    fs::path aside = order_.clinic;
    aside += fmt::format(".before-restore-{}-{}", stamp, randomId().substr(0, 4));
    sqlite::closeForGood(order_.clinic, options_.busyMilliseconds);
    // A log that could not be written back belongs to the old file, never to the new one.
    for (const char* suffix : {"-wal", "-journal"})
        fs::rename(order_.clinic.string() + suffix, aside.string() + suffix, error);
    fs::remove(order_.clinic.string() + "-shm", error);
    fs::create_hard_link(order_.clinic, aside, error);
    if (error) replaceFile(order_.clinic, aside); // file systems without hard links
    replaceFile(part_, order_.clinic);
    return aside;
}

Restored Restoring::run() {
    BackupReader reader{order_.backup};
    checkPlace(reader.header().clinic);
    const SecretKey key = dataKey(reader.header());
    unseal(reader, key);
    Restored restored{reader.header().info(), check(reader.header(), key), std::nullopt};
    checkPlace(reader.header().clinic);
    restored.keptAside = putInPlace();
    return restored;
}

} // namespace

Result<Restored> restoreBackup(const RestoreOrder& order, const ClinicOptions& options) {
    try {
        return Restoring{order, options}.run();
    } catch (const RecordError& error) {
        return Problem{"", "", error.what()};
    }
}

} // namespace rhizograph
