#include "record/sqlite.h"

#include "record/failure.h"
#include "record/files.h"
#include "record/sqliteproblem.h"

#include <fmt/format.h>
#include <sqlite3.h>
#include <stdexcept>

namespace rhizograph::sqlite {
namespace {

void check(int code) {
    if (code != SQLITE_OK) throw errorFor(code);
}

} // namespace

void Statement::Finalize::operator()(sqlite3_stmt* statement) const {
    sqlite3_finalize(statement);
}

Statement::Statement(sqlite3* database, const std::string& text) : database_(database) {
    sqlite3_stmt* statement = nullptr;
    const int code =
        sqlite3_prepare_v3(database, text.c_str(), -1, SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
    statement_.reset(statement);
    if ((code & 0xff) == SQLITE_ERROR)
        throw RecordError(Failure::damaged,
                          fmt::format("The clinic file is not built as it should be ({}). Restore the "
                                      "latest backup.",
                                      sqlite3_errmsg(database)));
    if (code != SQLITE_OK) throw errorFor(sqlite3_extended_errcode(database));
}

void Statement::bind(int place, const sql::Cell& cell) {
    sqlite3_stmt* s = statement_.get();
    const int index = sqlite3_bind_parameter_index(s, fmt::format("${}", place).c_str());
    if (index == 0) throw std::logic_error("a parameter is not in the statement");
    if (const auto* number = std::get_if<std::int64_t>(&cell))
        check(sqlite3_bind_int64(s, index, *number));
    else if (const auto* real = std::get_if<double>(&cell))
        check(sqlite3_bind_double(s, index, *real));
    else if (const auto* text = std::get_if<std::string>(&cell))
        check(sqlite3_bind_text64(s, index, text->data(), text->size(), SQLITE_STATIC, SQLITE_UTF8));
    else if (const auto* bytes = std::get_if<Bytes>(&cell))
        // An empty vector may have no address, and a null address would bind NULL.
        check(sqlite3_bind_blob64(s, index, bytes->empty() ? "" : static_cast<const void*>(bytes->data()),
                                  bytes->size(), SQLITE_STATIC));
    else
        check(sqlite3_bind_null(s, index));
}

sql::Row Statement::currentRow() const {
    sqlite3_stmt* s = statement_.get();
    std::vector<sql::Cell> cells;
    const int columns = sqlite3_column_count(s);
    cells.reserve(static_cast<std::size_t>(columns));
    for (int i = 0; i < columns; ++i) {
        switch (sqlite3_column_type(s, i)) {
        case SQLITE_INTEGER:
            cells.emplace_back(static_cast<std::int64_t>(sqlite3_column_int64(s, i)));
            break;
        case SQLITE_FLOAT:
            cells.emplace_back(sqlite3_column_double(s, i));
            break;
        case SQLITE_TEXT: {
            const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(s, i));
            cells.emplace_back(std::string(text, static_cast<std::size_t>(sqlite3_column_bytes(s, i))));
            break;
        }
        case SQLITE_BLOB: {
            const auto* start = static_cast<const unsigned char*>(sqlite3_column_blob(s, i));
            cells.emplace_back(Bytes(start, start + sqlite3_column_bytes(s, i)));
            break;
        }
        default:
            cells.emplace_back(std::monostate{});
        }
    }
    return sql::Row{std::move(cells)};
}

bool Statement::running() const {
    return sqlite3_stmt_busy(statement_.get()) != 0;
}

void Statement::each(const sql::Parameters& parameters, const std::function<bool(const sql::Row&)>& use) {
    sqlite3_stmt* s = statement_.get();
    if (static_cast<std::size_t>(sqlite3_bind_parameter_count(s)) != parameters.size())
        throw std::logic_error("a statement has another number of parameters");
    struct Reset {
        sqlite3_stmt* statement;
        ~Reset() {
            sqlite3_reset(statement);
            sqlite3_clear_bindings(statement);
        }
    } const reset{s};
    for (std::size_t i = 0; i < parameters.size(); ++i)
        bind(static_cast<int>(i) + 1, parameters[i]);
    int code = SQLITE_ROW;
    while ((code = sqlite3_step(s)) == SQLITE_ROW)
        if (!use(currentRow())) return;
    if (code != SQLITE_DONE) throw errorFor(sqlite3_extended_errcode(database_));
}

void Database::Close::operator()(sqlite3* database) const {
    sqlite3_close(database);
}

Database::Database(std::filesystem::path file, int busyMilliseconds, Mode mode)
    : file_(std::move(file)), busyMilliseconds_(busyMilliseconds), mode_(mode) {
    sqlite3* database = nullptr;
    const int flags = (mode == Mode::readOnly ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE) |
                      SQLITE_OPEN_NOMUTEX | SQLITE_OPEN_EXRESCODE;
    const int code = sqlite3_open_v2(file_.c_str(), &database, flags, nullptr);
    database_.reset(database);
    check(code);
    sqlite3_busy_timeout(database, busyMilliseconds_);
    // SQLite quietly opens what cannot be written for reading only.
    if (mode == Mode::readWrite && sqlite3_db_readonly(database, "main") == 1)
        throw errorFor(SQLITE_READONLY);
    script("pragma trusted_schema = off; pragma cell_size_check = on; pragma temp_store = memory; "
           "pragma secure_delete = on; pragma foreign_keys = on; "
           "pragma cache_size = -32768;"); // 32 MB: what one patient's course is read from, again and again
}

void Database::each(const std::string& statement, const sql::Parameters& parameters,
                    const std::function<bool(const sql::Row&)>& use) {
    auto found = statements_.find(statement);
    if (found == statements_.end())
        found = statements_.emplace(statement, Statement{database_.get(), statement}).first;
    // Starting it afresh would cut off the rows somebody is still being handed.
    if (found->second.running())
        Statement{database_.get(), statement}.each(parameters, use);
    else
        found->second.each(parameters, use);
}

void Database::script(const std::string& statements) {
    if (sqlite3_exec(database_.get(), statements.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK)
        throw errorFor(sqlite3_extended_errcode(database_.get()));
}

void Database::prepareForWriting() {
    script("pragma journal_mode = wal; pragma synchronous = full;");
    if (first("pragma journal_mode")->text(0) != "wal")
        throw RecordError(Failure::readOnly,
                          "The place of the clinic file does not allow safe writing (no write-ahead log). "
                          "Move the clinic to a local disk.");
}

void Database::begin() {
    if (depth_ > 0) return beginInner();
    // With a write-ahead log SQLite itself does not look: it would go on writing to a file that has no name
    // any more.
    int moved = 0;
    if (sqlite3_file_control(database_.get(), "main", SQLITE_FCNTL_HAS_MOVED, &moved) == SQLITE_OK &&
        moved != 0)
        throw errorFor(SQLITE_READONLY_DBMOVED);
    run("begin immediate");
    ++depth_;
}

void Database::beginReading() {
    if (depth_ > 0) return beginInner();
    run("begin");
    ++depth_;
}

void Database::beginInner() {
    // After a full disk or a device error SQLite has undone the outer transaction by itself: what came next
    // would be kept without it.
    if (sqlite3_get_autocommit(database_.get()) != 0)
        throw RecordError(Failure::device, "What belongs together was undone, so nothing more is written.");
    run("savepoint inner");
    ++depth_;
}

void Database::commit() {
    run(depth_ > 1 ? "release inner" : "commit");
    --depth_;
}

void Database::rollback() noexcept {
    // SQLite has already rolled back after a full disk or a device error; asking again is harmless then.
    sqlite3_exec(database_.get(), depth_ > 1 ? "rollback to inner; release inner" : "rollback", nullptr,
                 nullptr, nullptr);
    --depth_;
}

std::optional<std::string> Database::structuralDamage() {
    try {
        const std::string found = first("pragma integrity_check(1)")->text(0);
        return found == "ok" ? std::nullopt : std::optional{found};
    } catch (const RecordError& error) {
        if (error.kind() != Failure::damaged) throw;
        return error.what();
    }
}

void Database::purge() noexcept {
    // Deleted rows are overwritten with zeros in the file, but the log still holds pages from before. Where
    // somebody is reading an older state they go with the next checkpoint.
    sqlite3_wal_checkpoint_v2(database_.get(), nullptr, SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr);
}

std::int64_t Database::changeCounter() {
    return first("pragma data_version")->integer(0);
}

std::unique_ptr<sql::Connection> Database::duplicate() const {
    auto second = std::make_unique<Database>(file_, busyMilliseconds_, mode_);
    if (mode_ == Mode::readWrite) second->prepareForWriting();
    return second;
}

std::string Database::place() const {
    return file_.string();
}

void Database::copyTo(Database& target) {
    sqlite3_backup* backup = sqlite3_backup_init(target.database_.get(), "main", database_.get(), "main");
    if (backup == nullptr) throw errorFor(sqlite3_extended_errcode(target.database_.get()));
    const int code = sqlite3_backup_step(backup, -1);
    sqlite3_backup_finish(backup);
    if (code != SQLITE_DONE) throw errorFor(code);
}

void Database::copyInto(const std::filesystem::path& file) {
    createPrivateFile(file);
    Database copy{file, busyMilliseconds_};
    copy.script("pragma synchronous = off;"); // it is worth nothing after a power cut
    copyTo(copy);
    copy.script("pragma journal_mode = delete;"); // all of it in the one file
}

std::unique_ptr<sql::Connection> Database::another(const std::filesystem::path& file) const {
    return std::make_unique<Database>(file, busyMilliseconds_);
}

void closeForGood(const std::filesystem::path& file, int busyMilliseconds) {
    try {
        Database database{file, busyMilliseconds};
        // With a write-ahead log every open connection holds a shared lock, so this succeeds for the only
        // one.
        database.script("pragma locking_mode = exclusive; begin exclusive; commit;"
                        "pragma wal_checkpoint(truncate); pragma journal_mode = delete;");
    } catch (const RecordError& error) {
        if (error.kind() == Failure::busy)
            throw RecordError(
                Failure::busy,
                "The clinic is open in another program. Close it everywhere and try again; nothing "
                "was changed.");
        if (error.kind() != Failure::damaged && error.kind() != Failure::foreign) throw;
    }
}

} // namespace rhizograph::sqlite
