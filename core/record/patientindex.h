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
    void put(const Patient& patient);
    void remove(const PatientId& id);
    void clear();
    [[nodiscard]] const Identity* find(const PatientId& id) const;
    /// Every word of `text` within name or record number; best first: the exact record number, then words
    /// that begin with what was typed, then the rest; by name among equals.
    [[nodiscard]] std::vector<PatientId> search(std::string_view text, std::size_t limit) const;

private:
    struct Entry {
        Identity identity;
        std::string name;   ///< folded
        std::string number; ///< folded
    };
    static int rank(const Entry& entry, const std::vector<std::string>& words);
    std::map<PatientId, Entry> entries_;
};

} // namespace rhizograph
