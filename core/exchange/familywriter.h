#pragma once

#include "exchange/wording.h"

#include <string>
#include <vector>

namespace rhizograph {

/// Sentences of one family of items for one exam.
struct FamilyWords {
    std::string positives;
    std::string rest;
    std::vector<std::string> notTestable; ///< "left ankle plantarflexion (pain)"
    std::vector<std::string> missing;     ///< everyday items without a finding
    bool untouched = true;                ///< no finding in the whole family
};

/// Groups the findings of one family and says them. Findings with the same value, side and other side share a
/// sentence; a finding with a remark has a sentence of its own.
class FamilyWriter {
public:
    FamilyWriter(const Wording& words, const Exam& exam, const PhraseFamily& family,
                 std::vector<const Item*> items);

    [[nodiscard]] FamilyWords write();
    /// Only what was found, a clause each with the items it speaks of; nothing about sides that were not.
    struct Part {
        std::string words;
        std::vector<const Item*> items;
    };
    [[nodiscard]] std::vector<Part> parts();

private:
    /// How a finding is printed: abnormal ones first, the gravest of them before the others.
    enum class Kind { marked, abnormal, normal, neutral };
    /// One side of an item, judged.
    struct Seen {
        const Finding* finding = nullptr;
        Kind kind = Kind::neutral;
        std::string words;
        [[nodiscard]] bool examined() const { return finding != nullptr && finding->value.testable(); }
        [[nodiscard]] bool positive() const { return examined() && kind <= Kind::abnormal; }
    };
    struct Clause {
        Kind kind = Kind::neutral;
        Side side = Side::none;
        bool pair = false;
        std::string value; ///< of that side; of the right in a pair
        std::string other; ///< in a pair the left's value, else the aside about the other side
        std::vector<std::string> notes;
        std::vector<const Item*> items;
    };

    [[nodiscard]] Seen see(const Item& item, Side side) const;
    void take();
    void takePlain(const Item& item);
    void takeSided(const Item& item);
    void takeBoth(const Item& item, const Seen& right, const Seen& left);
    void takeSide(const Item& item, Side side, const Seen& seen, const Seen& other);
    [[nodiscard]] std::string aside(const Seen& seen, const Seen& other, Side otherSide) const;
    void add(Clause clause, const Item& item);
    [[nodiscard]] bool sharesSentence(const Clause& a, const Clause& b) const;
    [[nodiscard]] const std::string& phraseOf(const Clause& clause) const;
    [[nodiscard]] std::string said(const Clause& clause) const;
    [[nodiscard]] std::vector<std::string> names(const std::vector<const Item*>& items, bool plural) const;
    [[nodiscard]] std::string subjects(const std::vector<const Item*>& items) const;
    void findMissing(FamilyWords& out) const;

    const Wording& words_;
    const Exam& exam_;
    const PhraseFamily& family_;
    const PhraseForm& form_;
    std::vector<const Item*> items_;
    bool asides_ = true;
    std::vector<Clause> clauses_;
    std::vector<std::string> notTestable_;
};

/// Findings of the exam as clauses separated by semicolons, in the order of `keys`; what is said alike of
/// several is said once. Keys without a finding are left out.
[[nodiscard]] std::string findingWords(const Wording& words, const Exam& exam,
                                       const std::vector<FindingKey>& keys);

} // namespace rhizograph
