#include "record/sql.h"

#include "record/failure.h"

#include <limits>

namespace rhizograph::sql {

template <class T> const T& Row::as(std::size_t column) const {
    const T* value = column < cells_.size() ? std::get_if<T>(&cells_[column]) : nullptr;
    if (value == nullptr) reportDamage("The clinic file holds something of the wrong kind.");
    return *value;
}

std::int64_t Row::integer(std::size_t column) const {
    return as<std::int64_t>(column);
}
const std::string& Row::text(std::size_t column) const {
    return as<std::string>(column);
}
const Bytes& Row::bytes(std::size_t column) const {
    return as<Bytes>(column);
}

int Row::smallInteger(std::size_t column) const {
    const std::int64_t value = integer(column);
    if (value < std::numeric_limits<int>::min() || value > std::numeric_limits<int>::max())
        reportDamage("The clinic file holds a number that makes no sense.");
    return static_cast<int>(value);
}

bool Row::flag(std::size_t column) const {
    const std::int64_t value = integer(column);
    if (value != 0 && value != 1)
        reportDamage("The clinic file holds neither yes nor no where one of them must be.");
    return value == 1;
}

bool Row::isNull(std::size_t column) const {
    return column < cells_.size() && std::holds_alternative<std::monostate>(cells_[column]);
}

std::vector<Row> Connection::rows(const std::string& statement, const Parameters& parameters) {
    std::vector<Row> all;
    each(statement, parameters, [&](const Row& row) {
        all.push_back(row);
        return true;
    });
    return all;
}

void Connection::run(const std::string& statement, const Parameters& parameters) {
    each(statement, parameters, [](const Row&) { return true; });
}

std::optional<Row> Connection::first(const std::string& statement, const Parameters& parameters) {
    std::optional<Row> found;
    each(statement, parameters, [&](const Row& row) {
        found = row;
        return false;
    });
    return found;
}

} // namespace rhizograph::sql
