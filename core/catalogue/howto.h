#pragma once

#include "base/problem.h"
#include "catalogue/catalogue.h"

#include <filesystem>
#include <map>
#include <string>
#include <string_view>

namespace rhizograph {

/// A reminder of how one test is done and what counts as found.
struct HowTo {
    std::string how;
    std::string counts;
    std::string source; ///< "common practice", "from memory: …", "read: …"
};

/// The reminders of howto.json; not every item has one.
class HowTos {
public:
    /// Every problem at once, with its place: unknown items, items named twice, empty words.
    static Result<HowTos> load(const std::filesystem::path& file, const Catalogue& catalogue);
    /// The same from text; `name` stands for the file in problems.
    static Result<HowTos> parse(std::string_view text, const std::string& name, const Catalogue& catalogue);

    /// Null when there is none for this item.
    [[nodiscard]] const HowTo* find(const ItemId& item) const;
    [[nodiscard]] std::size_t size() const { return entries_.size(); }

private:
    std::map<ItemId, HowTo> entries_;
};

} // namespace rhizograph
