#include "summary/worddifference.h"

#include <algorithm>
#include <QStringList>

namespace rhizograph::app {
namespace {

QStringList wordsOf(const QString& text) {
    return text.simplified().split(u' ', Qt::SkipEmptyParts);
}

/// Length of the longest common subsequence of what follows each pair of positions.
std::vector<std::vector<int>> commonLengths(const QStringList& before, const QStringList& after) {
    const auto rows = static_cast<std::size_t>(before.size());
    const auto columns = static_cast<std::size_t>(after.size());
    std::vector<std::vector<int>> length(rows + 1, std::vector<int>(columns + 1));
    for (std::size_t i = rows; i-- > 0;) {
        for (std::size_t j = columns; j-- > 0;) {
            const bool equal = before[static_cast<int>(i)] == after[static_cast<int>(j)];
            length[i][j] = equal ? length[i + 1][j + 1] + 1 : std::max(length[i + 1][j], length[i][j + 1]);
        }
    }
    return length;
}

void add(std::vector<WordChange>& out, WordChange::Kind kind, const QString& word) {
    if (!out.empty() && out.back().kind == kind)
        out.back().words += QStringLiteral(" ") + word;
    else
        out.push_back({kind, word});
}

} // namespace

std::vector<WordChange> wordDifference(const QString& before, const QString& after) {
    const QStringList old = wordsOf(before);
    const QStringList now = wordsOf(after);
    const auto length = commonLengths(old, now);
    std::vector<WordChange> out;
    int i = 0;
    int j = 0;
    while (i < old.size() || j < now.size()) {
        const auto at = [&](int row, int column) {
            return length[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)];
        };
        if (i < old.size() && j < now.size() && old[i] == now[j]) {
            add(out, WordChange::Kind::same, old[i]);
            ++i, ++j;
        } else if (j == now.size() || (i < old.size() && at(i + 1, j) >= at(i, j + 1))) {
            add(out, WordChange::Kind::removed, old[i++]);
        } else {
            add(out, WordChange::Kind::added, now[j++]);
        }
    }
    return out;
}

} // namespace rhizograph::app
