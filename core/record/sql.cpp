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

bool Row::isNull(std::size_t column) const {
    return column < cells_.size() && std::holds_alternative<std::monostate>(cells_[column]);
}

std::optional<Row> Connection::first(const std::string& statement, const Parameters& parameters) {
    std::vector<Row> all = rows(statement, parameters);
    if (all.empty()) return std::nullopt;
    return std::move(all.front());
}

} // namespace rhizograph::sql
