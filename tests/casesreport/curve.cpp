#include "casesreport/curve.h"

#include "reasoning/localizer.h"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>

namespace rhizograph::casesreport {
namespace {

bool leads(const Case& given, const Exam& exam, const Knowledge& knowledge) {
    Case so = given;
    so.exam = exam;
    return localizationScore(so, knowledge).rank == 1;
}

/// Splits a case into what is known at the start and what is still to be asked, in the order of the
/// catalogue.
void split(const Case& given, const Catalogue& catalogue, Exam& known, std::vector<FindingKey>& open) {
    known.subject = given.exam.subject;
    for (const Item& item : catalogue.items())
        for (const Side side : {Side::none, Side::left, Side::right}) {
            const Finding* finding = given.exam.find({item.id, side});
            if (finding == nullptr) continue;
            if (item.step.text() == "intake" || item.step.text() == "gait")
                known.set({item.id, side}, *finding);
            else
                open.push_back({item.id, side});
        }
}

/// The engine's first suggestion among what the case reports; what it does not rank comes last.
std::size_t suggestion(const Exam& known, const std::vector<FindingKey>& open, const Knowledge& knowledge) {
    for (const NextTest& test : knowledge.localizer().nextTests(known))
        if (const auto found = std::find(open.begin(), open.end(), test.test); found != open.end())
            return static_cast<std::size_t>(found - open.begin());
    return 0;
}

template <class Choose>
std::size_t findingsUntilLead(const Case& given, const Knowledge& knowledge, Choose choose) {
    Exam known;
    std::vector<FindingKey> open;
    split(given, knowledge.catalogue(), known, open);
    std::size_t count = 0;
    while (!leads(given, known, knowledge) && !open.empty()) {
        const std::size_t next = choose(known, open);
        known.set(open[next], *given.exam.find(open[next]));
        open.erase(open.begin() + static_cast<std::ptrdiff_t>(next));
        ++count;
    }
    return count;
}

double mean(const std::vector<std::size_t>& counts) {
    return counts.empty()
               ? 0
               : static_cast<double>(std::accumulate(counts.begin(), counts.end(), std::size_t{0})) /
                     static_cast<double>(counts.size());
}

double shareWithin(const std::vector<std::size_t>& counts, std::size_t limit) {
    const auto within =
        std::count_if(counts.begin(), counts.end(), [&](std::size_t n) { return n <= limit; });
    return counts.empty() ? 0 : static_cast<double>(within) / static_cast<double>(counts.size());
}

} // namespace

Revealed reveal(const std::vector<Case>& cases, const Knowledge& knowledge) {
    Revealed out;
    for (const Case& given : cases) {
        if (!given.localizable) continue;
        if (!leads(given, given.exam, knowledge)) {
            ++out.never;
            continue;
        }
        out.suggested.push_back(findingsUntilLead(given, knowledge, [&](const Exam& known, const auto& open) {
            return suggestion(known, open, knowledge);
        }));
        out.catalogue.push_back(
            findingsUntilLead(given, knowledge, [](const Exam&, const auto&) { return std::size_t{0}; }));
    }
    return out;
}

std::string curve(const Revealed& revealed) {
    std::string out = "findings revealed   true site leads: as suggested   in catalogue order\n";
    for (const std::size_t limit : {0U, 1U, 2U, 3U, 5U, 8U, 12U, 20U, 30U})
        out += fmt::format("{:>17}   {:>29.2f}   {:>18.2f}\n", limit, shareWithin(revealed.suggested, limit),
                           shareWithin(revealed.catalogue, limit));
    return out + fmt::format("{:>17}   {:>29.2f}   {:>18.2f}\n", "mean", mean(revealed.suggested),
                             mean(revealed.catalogue));
}

} // namespace rhizograph::casesreport
