#pragma once

#include "page/pagecontent.h"
#include "record/model.h"

#include <map>

namespace rhizograph::app {

/// Words a person put in place of those the program wrote for one section.
struct SummaryEdit {
    QString words;
    QString basis; ///< the program's words at that time
    QString by;
    bool operator==(const SummaryEdit&) const = default;
};

/// The changed words of a visit by section. They are kept as notes of the visit, each with its author and
/// time: the last note of a section counts, and one whose words equal the program's takes the change back.
using SummaryEdits = std::map<QString, SummaryEdit>;

/// The note that records one change of words.
[[nodiscard]] QString noteOf(const QString& section, const SummaryEdit& edit);

/// The changes among the notes of a visit, oldest first; other notes are left alone.
[[nodiscard]] SummaryEdits editsOf(const std::vector<AuthoredText>& notes);

/// What can be changed of a section: all but what was not examined, which always stays.
[[nodiscard]] QString editableWords(const PageSection& section);

/// Puts the changed words in place and says who changed them. What stands in bold stays bold where it is
/// still the beginning. Yields the titles of sections whose findings have changed since the words were
/// written.
QStringList applyEdits(std::vector<PageSection>& sections, const SummaryEdits& edits);

} // namespace rhizograph::app
