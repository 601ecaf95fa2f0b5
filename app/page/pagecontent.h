#pragma once

#include "exchange/narrative.h"
#include "figures/figurepainter.h"

#include <map>
#include <optional>
#include <QString>
#include <utility>
#include <vector>

namespace rhizograph::app {

/// Who was examined, when, and by which house, in the words that stand on the page.
struct PageIdentity {
    QString clinic;     ///< "Hillside Spine Clinic"; may be empty
    QString letterhead; ///< address and the like, may have several lines
    QString name;       ///< of the patient
    QString about;      ///< "52 y, man"
    QString record;     ///< "Record 00417 · visit 4"; stands on every page
    QString date;       ///< "24 November 2026"
};

/// One head with its words.
struct PageSection {
    QString id;
    QString title;
    QString bold; ///< what is not normal, printed first
    QString text;
    QString quiet; ///< what was not examined, and who changed the words
    bool operator==(const PageSection&) const = default;
};

/// One row of skin figures: what the regions wear, and a word for every mark used.
struct PageFigures {
    QString title; ///< "Light touch"
    QString after; ///< id of the section it belongs to
    std::map<RegionKey, SkinMark> marks;
    std::vector<std::pair<SkinMark, QString>> legend;
};

struct PageSignature {
    QString by;
    QString at; ///< "24 November 2026, 10:49"
};

struct PageAddendum {
    QString text;
    QString by;
    QString at;
};

/// Everything one printed examination says. A value.
struct PageContent {
    PageIdentity identity;
    std::vector<PageSection> sections;
    std::vector<PageFigures> figures;
    QString plan;
    std::optional<PageSignature> signature; ///< none: the page says that it is a draft
    std::vector<PageAddendum> addenda;
    QString cautions; ///< at the foot of every page
};

/// The sections of a narrative. With `notExamined` false what was not examined is left off the page.
[[nodiscard]] std::vector<PageSection> pageSections(const Narrative& narrative, bool notExamined = true);

/// One row of figures for every layer on which something was recorded.
[[nodiscard]] std::vector<PageFigures> pageFigures(const Catalogue& catalogue, const FigureArt& art,
                                                   const Exam& exam);

/// "52 y, man"; what is not known is said to be unknown.
[[nodiscard]] QString aboutWords(const Subject& subject);

/// "24 November 2026" from an ISO date; "date not given" when empty.
[[nodiscard]] QString longDate(const std::string& iso);

/// "24 November 2026, 10:49" in local time from a UTC moment of the record.
[[nodiscard]] QString longMoment(const std::string& utc);

} // namespace rhizograph::app
