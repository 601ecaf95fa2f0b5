#pragma once

#include "core/reasoning/exam_maker.h"
#include "reasoning/knowledge.h"
#include "reasoning/rulebook.h"

#include <optional>
#include <string>

namespace rhizograph::safety {

using testing::catalogue;
using testing::ExamMaker;

inline const RuleBook& rules() {
    static const Result<RuleBook> loaded = RuleBook::load(testing::knowledgeDirectory(), catalogue());
    return *loaded;
}

inline std::optional<RedSign> sign(const std::string& id, const Exam& exam, const Exam* previous = nullptr) {
    for (RedSign& sign : rules().redSigns(exam, previous))
        if (sign.id == id) return std::move(sign);
    return std::nullopt;
}

/// How loud a red sign is, as a word that a failing test can print; "silent" when it is not raised.
inline std::string level(const std::string& id, const Exam& exam, const Exam* previous = nullptr) {
    const auto found = sign(id, exam, previous);
    if (!found) return "silent";
    return found->urgency == Urgency::emergency ? "emergency"
           : found->urgency == Urgency::urgent  ? "urgent"
                                                : "note";
}

/// The loudest word of all signs.
inline std::string loudest(const Exam& exam, const Exam* previous = nullptr) {
    const auto all = rules().redSigns(exam, previous);
    return all.empty() ? "silent" : level(all.front().id, exam, previous);
}

} // namespace rhizograph::safety
