#pragma once

#include <QString>
#include <vector>

namespace rhizograph::app {

/// A stretch of words that two texts share, or that only one of them holds.
struct WordChange {
    enum class Kind { same, removed, added };
    Kind kind = Kind::same;
    QString words;
    bool operator==(const WordChange&) const = default;
};

/// How `after` differs from `before`, word by word, with as few changes as can be.
[[nodiscard]] std::vector<WordChange> wordDifference(const QString& before, const QString& after);

} // namespace rhizograph::app
