#pragma once

#include "compare/changemark.h"

#include <optional>
#include <vector>

namespace rhizograph::app {

/// One line of the table.
struct ChangeRow {
    QString item;
    QString side;
    QString before; ///< or the right side
    QString now;    ///< or the left side
    ChangeMark mark;
    QString threshold;                 ///< what counts as a change, or why nothing can be said
    QString source;                    ///< where the threshold comes from
    std::optional<FindingKey> finding; ///< where a press leads
    QString curve;                     ///< id of its row on the course
    std::optional<int> fold;           ///< a line that shows or hides the lines of this fold
    [[nodiscard]] QString spoken() const;
};

/// The lines of a comparison in folds: what changed, what stayed the same, what cannot be compared.
struct ChangeRows {
    QString title;     ///< "3 worse, 1 better, 1 new"
    QStringList heads; ///< of the columns: item, side, before, now, change, threshold
    std::vector<std::vector<ChangeRow>> folds;
    std::vector<QString> foldNames; ///< "34 the same"; the first fold has none and always shows
};

[[nodiscard]] ChangeRows visitRows(const VisitComparison& comparison, const Catalogue& catalogue,
                                   const Theme& theme, const QString& earlierName);

[[nodiscard]] ChangeRows sideRows(const std::vector<SideDifference>& differences, const Catalogue& catalogue,
                                  const Theme& theme);

} // namespace rhizograph::app
