#pragma once

#include "compare/compare.h"
#include "exchange/narrative.h"
#include "exchange/wording.h"
#include "record/model.h"

#include <nlohmann/json.hpp>
#include <string>

namespace rhizograph {

/// "left great-toe extension: 3/5 → 4/5"; what is missing at a visit is named as not examined.
[[nodiscard]] std::string changeWords(const Wording& words, const ItemChange& change);

/// What changed since the visit before, as a section of the narrative: worse and new first, then better and
/// resolved; abnormal findings that were lost from sight are named as not comparable.
[[nodiscard]] NarrativeSection comparisonSection(const Wording& words, const VisitComparison& comparison);

/// Right against left of one visit, in words, one line a question.
[[nodiscard]] std::string sidesText(const Wording& words, const std::vector<SideDifference>& sides);
/// Visit against visit, in words, grouped by what became of each question, with the threshold used.
[[nodiscard]] std::string comparisonText(const Wording& words, const VisitComparison& comparison);
/// The course over all visits, one line a question.
[[nodiscard]] std::string trendText(const Wording& words, const Trend& trend);

/// The same under the keys of the file contract (format "rhizograph.comparison", version 1).
[[nodiscard]] nlohmann::ordered_json sidesToJson(const std::vector<SideDifference>& sides);
[[nodiscard]] nlohmann::ordered_json comparisonToJson(const VisitComparison& comparison);
[[nodiscard]] nlohmann::ordered_json trendToJson(const Trend& trend);

/// The same as tidy tables (RFC 4180), one row a question, or a question and visit.
[[nodiscard]] std::string sidesCsv(const std::vector<SideDifference>& sides);
[[nodiscard]] std::string comparisonCsv(const VisitComparison& comparison);
/// What happened in between stands behind the findings, each event with its words as the value.
[[nodiscard]] std::string trendCsv(const Trend& trend, const std::vector<PatientEvent>& events = {});

} // namespace rhizograph
