#pragma once

#include "record/chain.h"

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

namespace rhizograph {

/// What an audit entry vouches for: by kind of thing, the keyed hash of the stored row it wrote. The audit is
/// one chain, so a row that was put back to an older state, or taken out, is found by what the audit says of
/// it.
using Claims = std::map<std::string, std::string>;

/// What stands sealed in an audit entry: words for people, and claims.
struct AuditText {
    std::string detail;
    Claims claims;

    [[nodiscard]] std::string joined() const;
    static AuditText from(std::string_view joined);
};

namespace claim {
constexpr const char* all = "all";       ///< the clinic's whole audit makes claims: what has none is not ours
constexpr const char* clinic = "clinic"; ///< the clinic's own id
constexpr const char* staff = "staff";   ///< a user's name, role and whether active
constexpr const char* slot = "slot";     ///< a user's passphrase slot
constexpr const char* identity = "identity"; ///< one version of a patient's identity
constexpr const char* event = "event";       ///< one version of an event of a patient

[[nodiscard]] std::string ofIdentity(const Keys& keys, const std::string& patient, const Bytes& sealed);
[[nodiscard]] std::string ofSlot(const Keys& keys, const std::string& user, const Bytes& salt,
                                 const Bytes& wrapped);
} // namespace claim

/// All that a whole audit says must be there.
struct AuditClaims {
    bool complete = false; ///< everything in the record was claimed when it was written
    std::string clinicId;
    std::string clinicName;
    std::unordered_set<std::string> visits;                             ///< added
    std::unordered_map<std::string, std::set<std::int64_t>> events;     ///< by visit: signature and addenda
    std::unordered_map<std::string, std::vector<std::string>> patients; ///< their identities, oldest first
    std::unordered_set<std::string> erased;                             ///< patients and visits
    std::map<std::string, std::string> joined; ///< duplicate to the patient it belongs to
    std::map<std::string, std::string> staff;
    std::map<std::string, std::string> slots;
    std::map<std::string, std::string> settings;
    struct Event {
        std::string patient;
        std::vector<std::string> versions; ///< oldest first
    };
    std::map<std::string, Event> patientEvents;

    /// Takes in the next entry of a chain that has been checked up to it.
    void add(const Keys& keys, const AuditRow& row);
};

} // namespace rhizograph
