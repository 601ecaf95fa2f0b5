#pragma once

#include "record/pack.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// A small layer over database engines. The SQL text is the same for every engine ($1, $2 … as parameters);
/// failures are RecordErrors worded for people.
namespace rhizograph::sql {

using Cell = std::variant<std::monostate, std::int64_t, double, std::string, Bytes>; ///< monostate: null
using Parameters = std::vector<Cell>;

/// One row of an answer. Each getter insists on the stored type: nothing is converted, so text never reads as
/// 0.
class Row {
public:
    explicit Row(std::vector<Cell> cells) : cells_(std::move(cells)) {}
    [[nodiscard]] std::int64_t integer(std::size_t column) const;
    [[nodiscard]] int smallInteger(std::size_t column) const; ///< fits an int, else damaged
    [[nodiscard]] const std::string& text(std::size_t column) const;
    [[nodiscard]] const Bytes& bytes(std::size_t column) const;
    [[nodiscard]] bool flag(std::size_t column) const; ///< 0 or 1, else damaged
    [[nodiscard]] bool isNull(std::size_t column) const;

private:
    template <class T> const T& as(std::size_t column) const;
    std::vector<Cell> cells_;
};

class Connection {
public:
    virtual ~Connection() = default;

    /// Runs one statement and hands over its rows one by one, until there are no more or `use` returns false.
    virtual void each(const std::string& statement, const Parameters& parameters,
                      const std::function<bool(const Row&)>& use) = 0;
    /// Takes the right to write at once, so that two writers wait for each other instead of failing halfway.
    /// Within another transaction it is a part of that one, which decides.
    virtual void begin() = 0;
    /// Until commit or rollback every answer is of one moment, whatever others write meanwhile.
    virtual void beginReading() = 0;
    virtual void commit() = 0;
    virtual void rollback() noexcept = 0;
    /// What the engine finds wrong with its own file; nothing when it is in order. Reads all of it.
    virtual std::optional<std::string> structuralDamage() = 0;
    /// Makes sure that what was deleted stands nowhere in the files any more, as far as that can be done now.
    virtual void purge() noexcept = 0;
    /// Changes when another connection has committed.
    virtual std::int64_t changeCounter() = 0;
    virtual std::unique_ptr<Connection> duplicate() const = 0;
    /// Writes the whole database, as of now, into a new SQLite file of its own (0600), while others go on
    /// writing.
    virtual void copyInto(const std::filesystem::path& file) = 0;
    /// Another SQLite file, opened the same way.
    [[nodiscard]] virtual std::unique_ptr<Connection> another(const std::filesystem::path& file) const = 0;
    /// The place of the clinic, for people.
    [[nodiscard]] virtual std::string place() const = 0;

    /// All rows of a statement.
    std::vector<Row> rows(const std::string& statement, const Parameters& parameters = {});
    void run(const std::string& statement, const Parameters& parameters = {});
    /// The first row of a statement.
    std::optional<Row> first(const std::string& statement, const Parameters& parameters = {});
};

/// Undone unless committed.
class Transaction {
public:
    enum class Use { writing, reading };
    explicit Transaction(Connection& connection, Use use = Use::writing) : connection_(connection) {
        if (use == Use::writing)
            connection_.begin();
        else
            connection_.beginReading();
    }
    ~Transaction() {
        if (!done_) connection_.rollback();
    }
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    void commit() {
        connection_.commit();
        done_ = true;
    }

private:
    Connection& connection_;
    bool done_ = false;
};

} // namespace rhizograph::sql
