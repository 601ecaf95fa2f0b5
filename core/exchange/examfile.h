#pragma once

#include "base/problem.h"
#include "exam/exam.h"

#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

namespace rhizograph {

/// Reads one exam file (format "rhizograph.exam", version 1) against the catalogue. Every problem is listed
/// at once with its place ("/findings/3/value"): unknown item, side missing or superfluous, value off its
/// scale or out of range, the same item and side twice, a duplicate key, "not_testable" without "because", a
/// date that is no day. Other top-level keys are left alone; inside a finding, the patient and the visit an
/// unknown key is refused, because a misspelt one would silently drop what it says.
Result<Exam> readExamFile(const std::filesystem::path& path, const Catalogue& catalogue);

/// The same from text; `name` stands for the file in problems.
Result<Exam> parseExam(std::string_view text, const std::string& name, const Catalogue& catalogue);

/// The same from parsed JSON.
Result<Exam> examFromJson(const nlohmann::json& json, const std::string& name, const Catalogue& catalogue);

/// The exam as the file format holds it, findings in the order of the examination. What was not examined is
/// not in it. Reading it back yields an equal exam.
[[nodiscard]] nlohmann::ordered_json examToJson(const Exam& exam, const Catalogue& catalogue);

/// examToJson as text, one finding a line, ending with a line break.
[[nodiscard]] std::string examText(const Exam& exam, const Catalogue& catalogue);

} // namespace rhizograph
