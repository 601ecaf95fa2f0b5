#include "summary/summaryedits.h"

#include "exchange/papers.h"

#include <QCoreApplication>
#include <QStringList>

namespace rhizograph::app {
QString noteOf(const QString& section, const SummaryEdit& edit) {
    return QString::fromStdString(rhizograph::noteOf(
        section.toStdString(), {edit.words.toStdString(), edit.basis.toStdString(), edit.by.toStdString()}));
}

SummaryEdits editsOf(const std::vector<AuthoredText>& notes) {
    SummaryEdits edits;
    for (const auto& [section, changed] : changedWords(notes))
        edits[QString::fromStdString(section)] = {QString::fromStdString(changed.words),
                                                  QString::fromStdString(changed.basis),
                                                  QString::fromStdString(changed.by)};
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
