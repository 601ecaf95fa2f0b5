#pragma once

#include "base/problem.h"
#include "base/strong.h"
#include "catalogue/catalogue.h"

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rhizograph {

/// One head of the written examination.
struct PhraseSection {
    std::string id;
    std::string title;
    std::string notDone; ///< how missing items begin: "Not examined", "Not asked"
};

/// The same sentence for a question without sides, for one side and for both. Templates hold {names},
/// {plurals}, {value}, {side}, {right}, {left}, {whole}, and {one|many} which reads by the number of names.
/// An empty one leaves the finding unsaid.
struct PhraseSides {
    std::string plain;
    std::string side;
    std::string both;
};

/// How a kind of finding is said.
struct PhraseForm {
    std::string subject; ///< the question alone, for what was not done: "{names} {reflex|reflexes}"
    std::string join;    ///< last joint of a list of normal findings: "and", "or"
    PhraseSides abnormal;
    PhraseSides normal;
    PhraseSides neutral;                       ///< values that carry no judgement
    std::string pair;                          ///< both sides with differing values: {right}, {left}
    std::string other;                         ///< the other side beside an abnormal one: "{side} {value}"
    std::string otherUnknown;                  ///< the other side was not examined: "{side} not examined"
    std::map<std::string, std::string> values; ///< token -> words
};

/// A name for a set of items, said instead of all their names ("the thighs").
struct PhraseSet {
    std::string name;
    std::vector<ItemId> items;
};

/// Items that share sentences.
struct PhraseFamily {
    std::string id;
    std::size_t section = 0;
    std::size_t form = 0;
    std::string whole; ///< the family as one thing that was not done: "light touch"; empty: never missed
    bool listMissing =
        true; ///< name each missing item; else only the whole family when nothing of it was done
    std::vector<PhraseSet> sets;
};

/// How one item is said.
struct PhraseItem {
    std::size_t family = 0;
    std::string name;
    std::string plural;                        ///< "knees"
    std::map<std::string, std::string> values; ///< beside and before those of the form
};

/// How numbers of a unit are shown, as measured and in the other system of units.
struct PhraseUnit {
    std::string suffix;
    std::string customarySuffix; ///< empty: shown as measured
    double factor = 1;
    double offset = 0;
    int decimals = 0;
};

/// The language of the written examination, as loaded from phrases.json; immutable after loading.
class PhraseBook {
public:
    static Result<PhraseBook> load(const std::filesystem::path& file, const Catalogue& catalogue);
    static Result<PhraseBook> parse(std::string_view text, const std::string& name,
                                    const Catalogue& catalogue);

    [[nodiscard]] const std::vector<PhraseSection>& sections() const { return sections_; }
    [[nodiscard]] const std::vector<PhraseFamily>& families() const { return families_; }
    [[nodiscard]] const PhraseForm& form(const PhraseFamily& family) const { return forms_[family.form]; }
    /// Every item of the catalogue has an entry. Precondition: the item is in the catalogue loaded with.
    [[nodiscard]] const PhraseItem& item(const ItemId& id) const { return items_.at(id); }
    /// Null for a unit that is said as it is written.
    [[nodiscard]] const PhraseUnit* unit(const std::string& unit) const;
    /// A sentence or word that belongs to no item ("leading", "cautions"). Throws std::out_of_range when
    /// there is none: loading has checked all that the program uses.
    [[nodiscard]] const std::string& word(const std::string& key) const { return words_.at(key); }
    /// The same, null when there is none.
    [[nodiscard]] const std::string* findWord(const std::string& key) const;

private:
    friend class PhraseReader;
    std::vector<PhraseSection> sections_;
    std::vector<PhraseForm> forms_;
    std::vector<PhraseFamily> families_;
    std::map<ItemId, PhraseItem> items_;
    std::map<std::string, PhraseUnit> units_;
    std::map<std::string, std::string> words_;
};

/// Values for the places of a template.
struct PhraseFields {
    std::map<std::string, std::string> text;
    std::size_t count = 1; ///< how many names; picks from {one|many}
};

/// First letter in lower case unless the word is an abbreviation ("L5 root").
[[nodiscard]] std::string lowerFirst(std::string text);
/// First letter in upper case.
[[nodiscard]] std::string upperFirst(std::string text);

/// The template with its places filled. A place without a value stays empty.
[[nodiscard]] std::string fillPhrase(std::string_view phrase, const PhraseFields& fields);

} // namespace rhizograph
