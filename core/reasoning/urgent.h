#pragma once

#include "reasoning/condition.h"

#include <filesystem>
#include <memory>
#include <vector>

namespace rhizograph {

/// The red-sign questions that come before any other test while they are open and something points to them.
class UrgentQuestions {
public:
    /// Reads "urgent_questions" of observation.json.
    static Result<UrgentQuestions> load(const std::filesystem::path& file, const Vocabulary& vocabulary);

    /// What has not been asked or tested yet, in the order of the file; empty while nothing points there.
    [[nodiscard]] std::vector<FindingKey> open(const Exam& exam, const Assessment& assessment) const;

private:
    Condition when_;
    std::vector<FindingKey> ask_;
};

} // namespace rhizograph
