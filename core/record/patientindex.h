#pragma once

#include "record/model.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace rhizograph {

/// Small letters without accents, for comparing what people type: "Müller" and "MULLER" fold to the same.
[[nodiscard]] std::string folded(std::string_view text);

/// Patients by what they are searched for, kept in memory only while somebody is signed in.
class PatientIndex {
public:
    /// An entry, and the person it belongs to: itself, or the one it was joined to as a duplicate.
    void put(const Patient& entry, const PatientId& person);
    void clear();
    [[nodiscard]] const Identity* find(const PatientId& id) const;
    /// Whoever has an entry, joined ones too, with every word of `text` within name or record number; best
    /// first: the exact record number, then words that begin with what was typed, then the rest; by name
    /// among equals.
    [[nodiscard]] std::vector<PatientId> search(std::string_view text, std::size_t limit) const;

private:
    struct Entry {
        Identity identity;
        std::string name;   ///< folded
        std::string number; ///< folded
        PatientId person;
    };
    static int rank(const Entry& entry, const std::vector<std::string>& words);
    std::map<PatientId, Entry> entries_;
    std::size_t joined_ = 0; ///< entries that belong to another one
};

} // namespace rhizograph
