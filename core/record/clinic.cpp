#include "record/files.h"
#include "record/schema.h"
#include "record/sqlstore.h"

#include <fmt/format.h>
#include <system_error>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;

void checkIsFile(const fs::path& file) {
    std::error_code error;
    const fs::file_status status = fs::status(file, error);
    if (status.type() == fs::file_type::not_found)
        throw RecordError(Failure::device, "There is no such clinic file.");
    if (error)
        throw RecordError(Failure::readOnly, "The clinic file cannot be reached: " + error.message() + ".");
    if (!fs::is_regular_file(status))
        throw RecordError(Failure::foreign, "This is not a file, so no clinic can be in it.");
    if (fs::file_size(file, error) == 0 && !error)
        throw RecordError(Failure::foreign, "This file is empty: it holds no clinic.");
}

/// Brings an older clinic up to date, keeping it as it was beside it.
void bringUpToDate(sqlite::Database& database, int version, int busyMilliseconds) {
    if (version == schema::currentVersion()) return;
    fs::path kept = database.file();
    kept += fmt::format(".schema-{}-{}", version, randomId().substr(0, 8));
    createPrivateFile(kept);
    sqlite::Database copy{kept, busyMilliseconds};
    database.copyTo(copy);
    if (copy.first("pragma integrity_check")->text(0) != "ok")
        reportDamage("The clinic must be brought up to date, but the copy made first is damaged, so nothing "
                     "was changed.");
    schema::migrate(database);
}

} // namespace

Result<std::unique_ptr<Store>> openClinic(const fs::path& file, const ClinicOptions& options) {
    try {
        checkIsFile(file);
        auto database = std::make_unique<sqlite::Database>(file, options.busyMilliseconds);
        const int version = schema::versionOf(*database);
        database->prepareForWriting();
        bringUpToDate(*database, version, options.busyMilliseconds);
        return std::unique_ptr<Store>(std::make_unique<SqlStore>(std::move(database), options));
    } catch (const RecordError& error) {
        return Problem{file.string(), "", error.what()};
    }
}

Outcome createClinic(const fs::path& file, const std::string& clinicName, const FirstUser& first,
                     const ClinicOptions& options) {
    bool created = false;
    try {
        createPrivateFile(file);
        created = true;
        auto database = std::make_unique<sqlite::Database>(file, options.busyMilliseconds);
        database->prepareForWriting();
        schema::migrate(*database);
        SqlStore{std::move(database), options}.found(clinicName, first);
        return {};
    } catch (const RecordError& error) {
        if (created) removeDatabaseFiles(file);
        return Problem{file.string(), "", error.what()};
    }
}

} // namespace rhizograph
