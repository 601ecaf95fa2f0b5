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

/// One side over the visits; places from 0 (foot of the chart) to 1.
struct PageTrendLine {
    QString name; ///< "right", "left" or empty
    bool left = false;
    std::vector<std::optional<double>> places; ///< empty: not examined at that visit
};

/// The course of one question, drawn small.
struct PageTrend {
    QString title;
    QString words; ///< "left 4/5 → 2/5": first and last values
    std::vector<PageTrendLine> lines;
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
    std::vector<PageTrend> trends;   ///< stand after the comparison
    std::vector<QString> trendDates; ///< of the visits, oldest first
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

/// The narrative that sections stand for, so that it can be put into its short form or into plain words.
[[nodiscard]] Narrative narrativeOf(const std::vector<PageSection>& sections, const QString& cautions);

/// The questions with the most important change over the visits (oldest first), at most `most`; and the
/// dates.
void addTrends(PageContent& content, const std::vector<Exam>& visits, const Knowledge& knowledge,
               std::size_t most = 3);

/// "52 y, man"; what is not known is said to be unknown.
[[nodiscard]] QString aboutWords(const Subject& subject);

/// "24 November 2026" from an ISO date; "date not given" when empty.
[[nodiscard]] QString longDate(const std::string& iso);

/// "24 November 2026, 10:49" in local time from a UTC moment of the record.
[[nodiscard]] QString longMoment(const std::string& utc);

} // namespace rhizograph::app
