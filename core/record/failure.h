#pragma once

#include "record/model.h"

#include <stdexcept>
#include <string>

namespace rhizograph {

/// Thrown inside the record's room only; the store turns it into a Problem at its boundary.
class RecordError : public std::runtime_error {
public:
    RecordError(Failure kind, const std::string& reason) : std::runtime_error(reason), kind_(kind) {}
    [[nodiscard]] Failure kind() const { return kind_; }

private:
    Failure kind_;
};

[[noreturn]] inline void refuse(const std::string& reason) {
    throw RecordError(Failure::refused, reason);
}
[[noreturn]] inline void reportDamage(const std::string& reason) {
    throw RecordError(Failure::damaged, reason);
}

} // namespace rhizograph
