#pragma once

#include "exam/exam.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace rhizograph::casesreport {

/// A published case: the examination as reported, and what the report found to be the cause.
struct Case {
    std::string id;
    Exam exam;
    bool localizable = true;
    std::vector<std::string> sites;    ///< accepted answers
    std::optional<Side> side;          ///< none: the answer has no side or any side counts
    std::vector<std::string> redSigns; ///< expected at any urgency
    std::vector<std::string> mustNot;  ///< must not be raised as an emergency
    std::vector<std::string> screens;  ///< expected raised or high
    std::string citation;
};

/// All *.json of a folder, by name, without its subfolders. Throws std::runtime_error naming the first
/// problem: the cases are part of the program, not input.
[[nodiscard]] std::vector<Case> readCases(const std::filesystem::path& folder, const Catalogue& catalogue);

} // namespace rhizograph::casesreport
