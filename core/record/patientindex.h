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
    /// What a search looks at, close together in memory and in the order of names.
    struct Row {
        std::string_view name;
        std::string_view number;
        const PatientId* id;
        const PatientId* person;
    };
    static bool byName(const Row& left, const Row& right);
    static int rank(const Row& row, const std::vector<std::string>& words);
    [[nodiscard]] static Row rowOf(const std::pair<const PatientId, Entry>& entry);
    void arrange() const;
    void arrangeAll() const;

    std::map<PatientId, Entry> entries_;
    // Brought up to date when somebody searches.
    mutable std::vector<PatientId> changed_; ///< since the rows were arranged
    mutable std::vector<Row> rows_;
    mutable std::string text_; ///< what the rows show
};

} // namespace rhizograph
