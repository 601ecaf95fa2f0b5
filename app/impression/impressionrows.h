#pragma once

#include "exam/exam.h"
#include "reasoning/assessment.h"

#include <optional>
#include <QString>
#include <utility>
#include <vector>

namespace rhizograph::app {

class VisitSession;

/// One site on one side.
using SitePlace = std::pair<SiteId, Side>;

/// One line of the impression, ready to be painted and read aloud.
struct ImpressionRow {
    enum class Kind {
        redSign,    ///< `bold` urgency, `text` what stands out, `second` what is usually done and who
                    ///< acknowledged
        firstSite,  ///< `text` site, `right` support and percent, `share` of the bar
        nextSite,   ///< the same, smaller
        reasonHead, ///< the words over the signed bars
        reason,     ///< `text` finding, `decibans` for (positive) or against
        more,       ///< shows or hides the weaker reasons
        words,      ///< plain text, `bold` part first; quiet when `quiet`
        head,       ///< a small title over what follows
        nextTest,   ///< `bold` what, `text` why
        line,       ///< a hairline
    };

    Kind kind = Kind::words;
    QString bold;
    QString text;
    QString second;
    QString right;
    double share = 0;    ///< 0 to 1
    double decibans = 0; ///< positive speaks for the site
    bool quiet = false;
    bool chosen = false;               ///< the site whose reasons show
    std::optional<FindingKey> finding; ///< where a press leads
    std::optional<SitePlace> site;     ///< what a press chooses
    QString spoken;                    ///< the whole row in one sentence

    [[nodiscard]] bool pressable() const { return finding || site || kind == Kind::more; }
    bool operator==(const ImpressionRow&) const = default;
};

/// What the person has opened.
struct ImpressionView {
    std::optional<SitePlace> chosen; ///< whose reasons show; the first site's when empty
    bool allReasons = false;
};

/// The impression of the open visit in its fixed order: red signs, first site, reasons, next sites, disc
/// level, screens, consistency, next tests. Where nothing is known no site is named: starting weights are not
/// a finding.
[[nodiscard]] std::vector<ImpressionRow> impressionRows(const VisitSession& session,
                                                        const ImpressionView& view);

/// "fits one site well", "fits one site in part", "fits no one site", "nothing to go on yet".
[[nodiscard]] QString fitWords(const Assessment& assessment);

/// "strong", "moderate", "weak", "little".
[[nodiscard]] QString supportWord(Support support);

/// "Emergency", "Urgent", "Note".
[[nodiscard]] QString urgencyTitle(Urgency urgency);

/// The line that always stands under an impression.
[[nodiscard]] QString cautionWords();

} // namespace rhizograph::app
