#include "impression/impressionrows.h"

#include "language/language.h"
#include "parts/findingwords.h"
#include "shell/visitsession.h"

#include <algorithm>
#include <cmath>
#include <QCoreApplication>

namespace rhizograph::app {
namespace {

using Kind = ImpressionRow::Kind;

constexpr std::size_t reasonsFor = 5; // shown before "more"
constexpr std::size_t reasonsAgainst = 3;
constexpr std::size_t nextSites = 4;
constexpr double leastSite = 0.02;  // below it a site is counted among the rest
constexpr double leastReason = 0.5; // decibans; less moves nothing that could be seen
constexpr std::size_t nextTests = 5;

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

class Rows {
public:
    Rows(const VisitSession& session, const ImpressionView& view)
        : session_(session), assessment_(session.assessment()), view_(view) {}

    std::vector<ImpressionRow> build() {
        redSigns();
        if (assessment_.nothingKnown)
            nothingKnown();
        else
            sites();
        const std::size_t before = rows_.size();
        levels();
        screens();
        notAsked();
        consistency();
        if (rows_.size() > before) rows_.insert(rows_.begin() + static_cast<std::ptrdiff_t>(before), line());
        tests();
        return std::move(rows_);
    }

private:
    static QString tr(const char* words) {
        return QCoreApplication::translate("rhizograph::app::Rows", words);
    }

    [[nodiscard]] static ImpressionRow line() {
        ImpressionRow row;
        row.kind = Kind::line;
        return row;
    }

    [[nodiscard]] const Catalogue& catalogue() const { return session_.catalogue(); }

    [[nodiscard]] static std::optional<FindingKey> first(const std::vector<FindingKey>& keys) {
        return keys.empty() ? std::nullopt : std::optional{keys.front()};
    }

    [[nodiscard]] QString siteWords(const SiteResult& result) const {
        return withSide(medical(session_.knowledge().siteLabel(result.site)), result.side);
    }

    [[nodiscard]] QString acknowledgedBy(const RedSign& sign) const {
        const auto& given = session_.start().acknowledgements;
        const auto last = std::find_if(given.rbegin(), given.rend(), [&](const RedSignAcknowledgement& each) {
            return each.sign == sign.id;
        });
        return last == given.rend() || !session_.acknowledged(sign) ? QString() : text(last->by);
    }

    void redSigns() {
        for (const RedSign& sign : assessment_.redSigns) {
            ImpressionRow row;
            row.kind = Kind::redSign;
            row.bold = urgencyTitle(sign.urgency);
            row.text = medical(sign.sentence);
            row.second = medical(sign.action);
            row.quiet = sign.urgency == Urgency::note;
            const QString by = acknowledgedBy(sign);
            if (!by.isEmpty()) row.right = tr("acknowledged by %1").arg(by);
            row.finding = first(sign.because);
            row.spoken = tr("Red sign, %1: %2 %3 %4")
                             .arg(smallFirst(row.bold), row.text, row.second, row.right)
                             .trimmed();
            rows_.push_back(row);
        }
    }

    void nothingKnown() {
        ImpressionRow row;
        row.bold = tr("No site yet.");
        row.text =
            tr("No finding so far bears on a nerve, root or other cause. Until one does, nothing is named "
               "here: starting weights are not a finding.");
        row.spoken = row.bold + QStringLiteral(" ") + row.text;
        rows_.push_back(row);
    }

    [[nodiscard]] bool isChosen(std::size_t index) const {
        const auto& list = assessment_.localization;
        const auto holds = [&](const SiteResult& each) {
            return view_.chosen && SitePlace{each.site, each.side} == *view_.chosen;
        };
        if (std::any_of(list.begin(), list.end(), holds)) return holds(list[index]);
        return index == 0;
    }

    void sites() {
        const auto& list = assessment_.localization;
        double shown = 0;
        std::size_t count = 0;
        for (std::size_t i = 0; i < list.size(); ++i) {
            const bool chosen = isChosen(i);
            if (i > 0 && !chosen && (i > nextSites || list[i].probability < leastSite)) continue;
            site(list[i], i == 0, chosen);
            if (chosen) reasons(list[i]);
            if (i == 0) surprises();
            shown += list[i].probability;
            ++count;
        }
        if (count > 0 && 1 - shown >= 0.005) rest(1 - shown);
    }

    void site(const SiteResult& result, bool leads, bool chosen) {
        ImpressionRow row;
        row.kind = leads ? Kind::firstSite : Kind::nextSite;
        row.text = siteWords(result);
        const QString percent = percentWords(result.probability);
        row.right = leads ? supportWord(result.support) + QStringLiteral(" ") + percent : percent;
        row.share = result.probability;
        row.chosen = chosen;
        row.site = SitePlace{result.site, result.side};
        row.spoken = tr("%1, %2 support, %3").arg(row.text, supportWord(result.support), percent);
        rows_.push_back(row);
    }

    void rest(double share) {
        ImpressionRow row;
        row.text = tr("all other sites together");
        row.right = percentWords(share);
        row.quiet = true;
        row.spoken = row.text + QStringLiteral(", ") + row.right;
        rows_.push_back(row);
    }

    void reasons(const SiteResult& result) {
        const auto count = [](const std::vector<Reason>& all) {
            return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [](const Reason& reason) {
                return std::abs(reason.decibans) >= leastReason;
            }));
        };
        const std::size_t speaksFor = count(result.speaksFor);
        const std::size_t against = count(result.speaksAgainst);
        if (speaksFor + against == 0) return;
        ImpressionRow head;
        head.kind = Kind::reasonHead;
        head.text = tr("Why");
        head.right = tr("for");
        head.second = tr("against");
        head.spoken = tr("Reasons for and against %1").arg(siteWords(result));
        rows_.push_back(head);
        list(result.speaksFor, view_.allReasons ? speaksFor : std::min(speaksFor, reasonsFor), result.side);
        list(result.speaksAgainst, view_.allReasons ? against : std::min(against, reasonsAgainst),
             result.side);
        const std::size_t usual = std::min(speaksFor, reasonsFor) + std::min(against, reasonsAgainst);
        if (speaksFor + against > usual) more(speaksFor + against - usual);
    }

    void list(const std::vector<Reason>& all, std::size_t count, Side side) {
        for (std::size_t i = 0; i < count; ++i) {
            ImpressionRow row;
            row.kind = Kind::reason;
            row.text = findingWords(catalogue(), session_.exam(), all[i].finding, side);
            row.decibans = all[i].decibans;
            row.finding = all[i].finding;
            row.spoken = (row.decibans < 0 ? tr("against: %1, %2 decibans") : tr("for: %1, %2 decibans"))
                             .arg(findingWords(catalogue(), session_.exam(), all[i].finding))
                             .arg(std::abs(row.decibans), 0, 'f', 1);
            rows_.push_back(row);
        }
    }

    void more(std::size_t hidden) {
        ImpressionRow row;
        row.kind = Kind::more;
        row.text = view_.allReasons ? tr("fewer reasons") : tr("%1 more reasons").arg(hidden);
        row.spoken = row.text;
        rows_.push_back(row);
    }

    void surprises() {
        if (assessment_.fit.verdict == FitVerdict::fits) return;
        for (const FitWorst& worst : assessment_.fit.worst) {
            if (worst.findings.empty()) continue;
            ImpressionRow row;
            row.bold = tr("Hard to explain:");
            QStringList words;
            for (const FindingKey& key : worst.findings)
                words << findingWords(catalogue(), session_.exam(), key);
            row.text = words.join(QStringLiteral("; "));
            row.finding = worst.findings.front();
            row.quiet = true;
            row.spoken = row.bold + QStringLiteral(" ") + row.text;
            rows_.push_back(row);
        }
    }

    void levels() {
        if (assessment_.nothingKnown || assessment_.levels.empty()) return;
        const auto disc = [](const Level& level) {
            return QStringLiteral("%1 %2").arg(text(level.disc).replace(u'-', u'–'),
                                               text(level.zone).replace(u'_', u' '));
        };
        ImpressionRow row;
        row.text = tr("Would fit the disc %1").arg(disc(assessment_.levels.front()));
        for (std::size_t i = 1; i < assessment_.levels.size(); ++i)
            row.text += (i == 1 ? tr("; less often %1") : tr(", %1")).arg(disc(assessment_.levels[i]));
        row.text += QStringLiteral(".");
        row.spoken = row.text;
        rows_.push_back(row);
    }

    void screens() {
        QStringList low;
        QStringList open;
        for (const ScreenResult& screen : assessment_.screens) {
            const QString name = withSide(inSentence(medical(screen.label)), screen.side);
            if (screen.verdict == ScreenVerdict::low)
                low << name;
            else if (screen.verdict == ScreenVerdict::notExamined)
                open << inSentence(medical(screen.label));
            else
                raised(screen, name);
        }
        open.removeDuplicates();
        QStringList words;
        if (!low.isEmpty()) words << tr("low: %1").arg(low.join(QStringLiteral(", ")));
        if (!open.isEmpty()) words << tr("not examined: %1").arg(open.join(QStringLiteral(", ")));
        if (words.isEmpty()) return;
        ImpressionRow row;
        row.text = tr("Screens, %1").arg(words.join(QStringLiteral("; ")));
        row.quiet = true;
        row.spoken = row.text;
        rows_.push_back(row);
    }

    void raised(const ScreenResult& screen, const QString& name) {
        ImpressionRow row;
        row.bold = tr("Screen %1:").arg(screen.verdict == ScreenVerdict::high ? tr("high") : tr("raised"));
        QStringList because;
        for (const FindingKey& key : screen.because)
            because << inSentence(findingWords(catalogue(), session_.exam(), key));
        row.text = name + (because.isEmpty() ? QString()
                                             : QStringLiteral(" (") + because.join(QStringLiteral("; ")) +
                                                   QStringLiteral(")"));
        row.finding = first(screen.because);
        row.spoken = row.bold + QStringLiteral(" ") + row.text;
        rows_.push_back(row);
    }

    void notAsked() {
        if (assessment_.notAsked.empty()) return;
        ImpressionRow row;
        row.bold = tr("Warning questions not asked: %1").arg(assessment_.notAsked.size());
        row.finding = assessment_.notAsked.front();
        row.spoken = row.bold;
        rows_.push_back(row);
    }

    void consistency() {
        for (const ConsistencyNote& note : assessment_.consistency) {
            ImpressionRow row;
            row.bold = tr("Consistency:");
            row.text = medical(note.sentence);
            row.finding = first(note.because);
            row.spoken = row.bold + QStringLiteral(" ") + row.text;
            rows_.push_back(row);
        }
    }

    [[nodiscard]] QString why(const NextTest& test) const {
        if (test.urgent) return tr("red-sign question, still open");
        if (test.separates.size() < 2) return tr("would tell most now");
        const QString one = inSentence(medical(session_.knowledge().siteLabel(test.separates[0])));
        const QString other = inSentence(medical(session_.knowledge().siteLabel(test.separates[1])));
        return one == other ? tr("tells the sides apart for %1").arg(one)
                            : tr("parts %1 from %2").arg(one, other);
    }

    void tests() {
        if (assessment_.nextTests.empty()) return;
        rows_.push_back(line());
        ImpressionRow head;
        head.kind = Kind::head;
        head.text = tr("Next tests");
        head.spoken = head.text;
        rows_.push_back(head);
        for (std::size_t i = 0; i < std::min(nextTests, assessment_.nextTests.size()); ++i) {
            const NextTest& test = assessment_.nextTests[i];
            ImpressionRow row;
            row.kind = Kind::nextTest;
            row.bold = itemWords(catalogue(), test.test);
            row.text = why(test);
            row.finding = test.test;
            row.spoken = tr("Next test: %1, %2").arg(row.bold, row.text);
            rows_.push_back(row);
        }
    }

    const VisitSession& session_;
    const Assessment& assessment_;
    const ImpressionView& view_;
    std::vector<ImpressionRow> rows_;
};

} // namespace

std::vector<ImpressionRow> impressionRows(const VisitSession& session, const ImpressionView& view) {
    return Rows{session, view}.build();
}

QString fitWords(const Assessment& assessment) {
    if (assessment.nothingKnown) return tr("nothing to go on yet");
    switch (assessment.fit.verdict) {
    case FitVerdict::fits:
        return tr("fits one site well");
    case FitVerdict::partly:
        return tr("fits one site in part");
    case FitVerdict::poor:
        return tr("fits no one site");
    }
    return {};
}

QString supportWord(Support support) {
    switch (support) {
    case Support::strong:
        return tr("strong");
    case Support::moderate:
        return tr("moderate");
    case Support::weak:
        return tr("weak");
    case Support::none:
        break;
    }
    return tr("little");
}

QString urgencyTitle(Urgency urgency) {
    switch (urgency) {
    case Urgency::emergency:
        return tr("Emergency");
    case Urgency::urgent:
        return tr("Urgent");
    case Urgency::note:
        break;
    }
    return tr("Note");
}

QString cautionWords() {
    return tr("Decision support for a licensed clinician, not a diagnosis.");
}

} // namespace rhizograph::app
