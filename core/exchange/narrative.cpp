#include "exchange/narrative.h"

#include "exchange/comparison.h"
#include "exchange/familywriter.h"
#include "exchange/impressionwords.h"

#include <fmt/format.h>
#include <map>

namespace rhizograph {
namespace {

constexpr std::size_t kColumns = 78;

void addPart(std::string& list, const std::string& part) {
    if (!part.empty()) list += (list.empty() ? "" : "; ") + part;
}

/// Sections of the examination, in the order of the phrase book.
class ExamWriter {
public:
    ExamWriter(const Wording& words, const Exam& exam) : words_(words), exam_(exam) {
        for (const Item& item : words.catalogue().items())
            items_[words.book().item(item.id).family].push_back(&item);
    }

    std::vector<NarrativeSection> write() {
        std::vector<NarrativeSection> out;
        const auto& sections = words_.book().sections();
        for (std::size_t i = 0; i < sections.size(); ++i) {
            NarrativeSection section = write(i, sections[i]);
            if (!section.positives.empty() || !section.rest.empty() || !section.notExamined.empty())
                out.push_back(std::move(section));
        }
        return out;
    }

private:
    NarrativeSection write(std::size_t index, const PhraseSection& phrases) {
        NarrativeSection section{phrases.id, phrases.title, {}, {}, {}};
        std::string missing;
        std::string notTestable;
        const auto& families = words_.book().families();
        for (std::size_t i = 0; i < families.size(); ++i) {
            if (families[i].section != index) continue;
            const FamilyWords said = FamilyWriter{words_, exam_, families[i], items_[i]}.write();
            append(section.positives, said.positives);
            append(section.rest, said.rest);
            for (const std::string& part : said.notTestable)
                addPart(notTestable, part);
            for (const std::string& part : said.missing)
                addPart(missing, part);
        }
        if (!notTestable.empty())
            addSentence(section.notExamined, words_.word("not_testable") + ": " + notTestable);
        if (!missing.empty()) addSentence(section.notExamined, phrases.notDone + ": " + missing);
        return section;
    }

    static void append(std::string& paragraph, const std::string& more) {
        if (!more.empty()) paragraph += (paragraph.empty() ? "" : " ") + more;
    }

    const Wording& words_;
    const Exam& exam_;
    std::map<std::size_t, std::vector<const Item*>> items_;
};

/// Columns a text takes: bytes that begin a UTF-8 character.
std::size_t width(std::string_view text) {
    std::size_t columns = 0;
    for (const char byte : text)
        columns += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U ? 1 : 0;
    return columns;
}

void wrap(std::string& out, std::string_view text, std::string_view indent) {
    std::size_t column = 0;
    while (!text.empty()) {
        const std::size_t end = text.find_first_of(" \n");
        const std::string_view word = text.substr(0, end);
        if (column > 0 && column + 1 + width(word) > kColumns) {
            out += '\n';
            column = 0;
        }
        out += column == 0 ? indent : " ";
        column += (column == 0 ? indent.size() : 1) + width(word);
        out += word;
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    out += '\n';
}

} // namespace

Narrative narrate(const Exam& exam, const Assessment& assessment, const Knowledge& knowledge,
                  const Exam* previous, Units units) {
    const Wording words{knowledge, units};
    Narrative out;
    out.sections = ExamWriter{words, exam}.write();
    for (NarrativeSection& section : impressionSections(words, exam, assessment))
        out.sections.push_back(std::move(section));
    if (previous != nullptr)
        out.sections.push_back(comparisonSection(words, compareVisits(*previous, exam, knowledge)));
    out.cautions = words.word("cautions");
    return out;
}

std::string asText(const Narrative& narrative) {
    std::string out;
    for (const NarrativeSection& section : narrative.sections) {
        out += section.title + "\n";
        for (const std::string* part : {&section.positives, &section.rest, &section.notExamined})
            if (!part->empty()) wrap(out, *part, "  ");
        out += '\n';
    }
    wrap(out, narrative.cautions, "");
    return out;
}

} // namespace rhizograph
