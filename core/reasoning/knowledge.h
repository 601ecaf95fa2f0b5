#pragma once

#include "base/problem.h"
#include "catalogue/catalogue.h"
#include "exam/exam.h"
#include "reasoning/assessment.h"
#include "reasoning/eventkinds.h"
#include "reasoning/thresholds.h"

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace rhizograph {

class Localizer;       ///< the compiled localization model (localizer.h)
class UrgentQuestions; ///< red-sign questions that go first (urgent.h)
class PhraseBook;      ///< the language of the written examination (phrases.h)
class RuleBook;        ///< red signs, screens, consistency, work-up, codes (rulebook.h)

/// The medicine, loaded once and immutable; cheap to copy. Loading validates every file of
/// resources/knowledge and reports every problem with file and place.
class Knowledge {
public:
    static Result<Knowledge> load(const std::filesystem::path& directory);

    [[nodiscard]] const Catalogue& catalogue() const { return *catalogue_; }
    [[nodiscard]] const Localizer& localizer() const { return *localizer_; }
    [[nodiscard]] const RuleBook& rules() const { return *rules_; }
    [[nodiscard]] const UrgentQuestions& urgentQuestions() const { return *urgent_; }
    [[nodiscard]] const Thresholds& thresholds() const { return *thresholds_; }
    /// Empty where the figures are not installed beside the knowledge.
    [[nodiscard]] const RegionAreas& regionAreas() const { return *areas_; }
    [[nodiscard]] const PhraseBook& phrases() const { return *phrases_; }
    /// What may happen to a patient between visits, in the order to offer it.
    [[nodiscard]] const std::vector<EventKind>& eventKinds() const { return *eventKinds_; }
    /// Hash over the content of all knowledge files; stored with every signed visit.
    [[nodiscard]] const std::string& version() const { return version_; }
    /// English label of a site ("L5 root"); the id itself when unknown.
    [[nodiscard]] std::string siteLabel(const SiteId& site) const;

private:
    std::shared_ptr<const Catalogue> catalogue_;
    std::shared_ptr<const Localizer> localizer_;
    std::shared_ptr<const RuleBook> rules_;
    std::shared_ptr<const UrgentQuestions> urgent_;
    std::shared_ptr<const PhraseBook> phrases_;
    std::shared_ptr<const Thresholds> thresholds_;
    std::shared_ptr<const RegionAreas> areas_;
    std::shared_ptr<const std::vector<EventKind>> eventKinds_;
    std::string version_;
};

/// The whole answer for one visit; `previous` is the exam of the visit before, if any, for change since then.
/// Pure: no I/O, no state. Well under a few milliseconds.
[[nodiscard]] Assessment assess(const Exam& exam, const Knowledge& knowledge, const Exam* previous = nullptr);

} // namespace rhizograph
