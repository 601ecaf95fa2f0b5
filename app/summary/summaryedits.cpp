#include "summary/summaryedits.h"

#include <QCoreApplication>
#include <QStringList>

namespace rhizograph::app {
namespace {

// Notes are plain text that people read in the record; these two lines mark the ones that hold words of the
// summary.
const QString head = QStringLiteral("Summary words for section ");
const QString instead = QStringLiteral("\nInstead of:\n");

} // namespace

QString noteOf(const QString& section, const SummaryEdit& edit) {
    return head + section + QStringLiteral("\n") + edit.words + instead + edit.basis;
}

SummaryEdits editsOf(const std::vector<AuthoredText>& notes) {
    SummaryEdits edits;
    for (const AuthoredText& note : notes) {
        const QString text = QString::fromStdString(note.text);
        if (!text.startsWith(head)) continue;
        const auto line = text.indexOf(u'\n');
        const auto basis = text.indexOf(instead, line);
        if (line < 0 || basis < 0) continue;
        const QString section = text.mid(head.size(), line - head.size());
        const SummaryEdit edit{text.mid(line + 1, basis - line - 1), text.mid(basis + instead.size()),
                               QString::fromStdString(note.by)};
        if (edit.words == edit.basis)
            edits.erase(section);
        else
            edits[section] = edit;
    }
    return edits;
}

QString editableWords(const PageSection& section) {
    return section.bold +
           (section.bold.isEmpty() || section.text.isEmpty() ? QString() : QStringLiteral(" ")) +
           section.text;
}

QStringList applyEdits(std::vector<PageSection>& sections, const SummaryEdits& edits) {
    QStringList outdated;
    for (PageSection& section : sections) {
        const auto found = edits.find(section.id);
        if (found == edits.end()) continue;
        const SummaryEdit& edit = found->second;
        if (editableWords(section) != edit.basis) outdated << section.title;
        if (!section.bold.isEmpty() && edit.words.startsWith(section.bold)) {
            section.text = edit.words.mid(section.bold.size()).trimmed();
        } else {
            section.bold.clear();
            section.text = edit.words;
        }
        const QString by = QCoreApplication::translate("Summary", "Words changed by %1.").arg(edit.by);
        section.quiet += (section.quiet.isEmpty() ? QString() : QStringLiteral(" ")) + by;
    }
    return outdated;
}

} // namespace rhizograph::app
