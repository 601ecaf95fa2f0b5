#pragma once

#include "record/store.h"

#include <map>
#include <QString>

namespace rhizograph::app {

/// "Signed in", "Visit signed".
[[nodiscard]] QString actionText(AuditAction action);

/// Puts the entries of the audit into words: ids become the people and visits they stand for.
class AuditWords {
public:
    explicit AuditWords(Store& store);

    /// Whom or what an entry is about; the id where the record no longer knows more.
    [[nodiscard]] QString subject(const AuditEntry& entry);
    /// What else it says; empty where the detail only repeats an id.
    [[nodiscard]] QString detail(const AuditEntry& entry);

private:
    [[nodiscard]] QString patient(const std::string& id);
    [[nodiscard]] QString duplicate(const std::string& id, const std::string& person);
    [[nodiscard]] QString visit(const std::string& id);
    [[nodiscard]] QString user(const std::string& id);

    Store& store_;
    std::map<std::string, QString> users_;
    std::map<std::string, QString> known_;
};

} // namespace rhizograph::app
