#pragma once

#include "record/sql.h"

#include <filesystem>
#include <map>
#include <memory>
#include <string>

struct sqlite3;
struct sqlite3_stmt;

namespace rhizograph::sqlite {

/// A prepared statement.
class Statement {
public:
    Statement(sqlite3* database, const std::string& text);
    /// Runs it from the start with these parameters ($1 is the first) until `use` returns false.
    void each(const sql::Parameters& parameters, const std::function<bool(const sql::Row&)>& use);
    /// Somewhere up the stack its rows are being handed over.
    [[nodiscard]] bool running() const;

private:
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const;
    };
    void bind(int place, const sql::Cell& cell);
    [[nodiscard]] sql::Row currentRow() const;

    sqlite3* database_;
    std::unique_ptr<sqlite3_stmt, Finalize> statement_;
};

/// A SQLite file, which must exist. Every commit is on disk when commit() returns.
class Database : public sql::Connection {
public:
    enum class Mode { readWrite, readOnly };
    Database(std::filesystem::path file, int busyMilliseconds, Mode mode = Mode::readWrite);

    void each(const std::string& statement, const sql::Parameters& parameters,
              const std::function<bool(const sql::Row&)>& use) override;
    void begin() override;
    void beginReading() override;
    void commit() override;
    void rollback() noexcept override;
    std::optional<std::string> structuralDamage() override;
    void purge() noexcept override;
    std::int64_t changeCounter() override;
    [[nodiscard]] std::unique_ptr<sql::Connection> duplicate() const override;
    void copyInto(const std::filesystem::path& file) override;
    [[nodiscard]] std::unique_ptr<sql::Connection> another(const std::filesystem::path& file) const override;
    [[nodiscard]] std::string place() const override;

    /// Several statements at once, without parameters: for schemas.
    void script(const std::string& statements);
    /// Write-ahead log, synchronized commits, foreign keys. Only for a file known to be a clinic: it writes.
    void prepareForWriting();
    /// Copies the whole database, as of now, over `target`, while others go on writing.
    void copyTo(Database& target);
    [[nodiscard]] const std::filesystem::path& file() const { return file_; }

private:
    void beginInner();
    struct Close {
        void operator()(sqlite3* database) const;
    };
    std::filesystem::path file_;
    int busyMilliseconds_;
    Mode mode_;
    std::unique_ptr<sqlite3, Close> database_; // before the statements: they are finalized first
    std::map<std::string, Statement> statements_;
    int depth_ = 0; ///< transactions within one another
};

/// Writes the log of a database back into it and closes it. Throws RecordError (busy) when anybody has it
/// open; a damaged one is left as it is.
void closeForGood(const std::filesystem::path& file, int busyMilliseconds);

} // namespace rhizograph::sqlite
