#pragma once

#include "reasoning/knowledge.h"
#include "reasoning/phrases.h"

#include <string>
#include <vector>

namespace rhizograph {

/// Units in which measures are written. Customary: inches, feet, pounds, degrees Fahrenheit.
enum class Units { metric, customary };

/// Says single findings in the words of the phrase book.
class Wording {
public:
    Wording(const Knowledge& knowledge, Units units) : knowledge_(knowledge), units_(units) {}

    [[nodiscard]] const Catalogue& catalogue() const { return knowledge_.catalogue(); }
    [[nodiscard]] const PhraseBook& book() const { return knowledge_.phrases(); }
    [[nodiscard]] const PhraseFamily& family(const Item& item) const;
    [[nodiscard]] const PhraseForm& form(const Item& item) const { return book().form(family(item)); }
    [[nodiscard]] const std::string& word(const std::string& key) const { return book().word(key); }
    /// "left", "right", "both sides"; empty for none.
    [[nodiscard]] std::string side(Side side) const;
    /// "absent (0)", "3/5", "62°".
    [[nodiscard]] std::string value(const Item& item, const Value& value) const;
    /// Why something could not be tested, for people.
    [[nodiscard]] std::string reason(const std::string& because) const;
    /// One finding alone: "left great-toe extension 3/5"; with a value that is not testable it says so.
    [[nodiscard]] std::string finding(const FindingKey& key, const Value& value) const;
    /// The same for a finding of the exam; only the question's name where there is none.
    [[nodiscard]] std::string finding(const Exam& exam, const FindingKey& key) const;
    /// The question alone: "ankle reflex on the left".
    [[nodiscard]] std::string subject(const FindingKey& key) const;
    /// "ankle reflex on the left"
    [[nodiscard]] std::string onSide(const std::string& what, Side side) const;
    /// "left L5 root".
    [[nodiscard]] std::string site(const SiteId& site, Side side) const;

private:
    const Knowledge& knowledge_;
    Units units_;
};

/// "a, b and c"; semicolons where a name holds a comma or the joint itself.
[[nodiscard]] std::string joined(const std::vector<std::string>& names, const std::string& joint);
/// A sentence: first letter in upper case, full stop at the end.
[[nodiscard]] std::string sentence(std::string text);
/// Appends a sentence to a paragraph.
void addSentence(std::string& paragraph, const std::string& text);

} // namespace rhizograph
