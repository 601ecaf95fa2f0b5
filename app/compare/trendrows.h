#pragma once

#include "compare/compare.h"
#include "record/model.h"

#include <optional>
#include <QString>
#include <vector>

namespace rhizograph::app {

/// One side, or the one line of a question without sides.
struct TrendLine {
    QString name; ///< "L", "R" or empty
    bool dashed = false;
    std::vector<std::optional<double>> place; ///< on the row's axis; empty: not examined
    std::vector<Change> change;               ///< against the visit before; may be empty
    std::vector<QString> value;               ///< in words, one a visit
};

/// One measure over all visits.
struct TrendRow {
    QString id; ///< of the measure, to remember the choice
    QString title;
    QString unit;
    double low = 0;
    double high = 1;
    std::vector<std::pair<double, QString>> ticks;
    std::vector<TrendLine> lines;
    bool score = false;   ///< a total or pain score: shown with "scores only"
    bool usual = false;   ///< shown until the person chooses, however much else changed
    bool changed = false; ///< a change passed its threshold at some visit
};

/// The id of the row with the numb area of one side.
[[nodiscard]] QString areaCurve(const GroupId& group, Side side);
/// The id of the row in which a finding shows: its own, or for a region of skin that of the area.
[[nodiscard]] QString curveOf(const Catalogue& catalogue, const FindingKey& key);

/// Rows in the order of importance: what changed first, then the rest; numb skin and the likeliest site last.
[[nodiscard]] std::vector<TrendRow> trendRows(const Trend& trend, const Knowledge& knowledge);

} // namespace rhizograph::app
