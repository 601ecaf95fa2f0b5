#pragma once

#include "cli/arguments.h"
#include "reasoning/knowledge.h"

#include <optional>

namespace rhizograph::cli {

/// The knowledge of the installation.
Result<Knowledge> loadKnowledge();

/// The exam named on the command line and the one of the visit before.
struct ExamPair {
    Exam exam;
    std::optional<Exam> previous;

    [[nodiscard]] const Exam* before() const { return previous ? &*previous : nullptr; }
};

/// Reads FILE and, where given, --previous FILE; the problems of both at once. A previous visit dated after
/// this one is a problem.
Result<ExamPair> readVisit(const Arguments& arguments, const Catalogue& catalogue);

/// --form: whether the short form is wanted.
Result<bool> briefForm(const Arguments& arguments);

} // namespace rhizograph::cli
