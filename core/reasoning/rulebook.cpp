#include "reasoning/rulebook.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace rhizograph {
namespace {

constexpr Side bothLegs[] = {Side::left, Side::right};

void merge(std::vector<FindingKey>& to, const std::vector<FindingKey>& from) {
    to.insert(to.end(), from.begin(), from.end());
    std::sort(to.begin(), to.end());
    to.erase(std::unique(to.begin(), to.end()), to.end());
}

/// What the decided rules of one group come to. Rules of a group look at the same thing, so only one counts:
/// the strongest that holds, else the strongest that does not.
struct GroupPull {
    bool held = false;
    double logRatio = 0;
    std::vector<FindingKey> because;

    void take(bool holds, double ratio, const std::vector<FindingKey>& why) {
        const double pull = std::log(ratio);
        const bool better = holds == held ? std::abs(pull) > std::abs(logRatio) : holds;
        if (!better) return;
        held = holds;
        logRatio = pull;
        because = why;
    }
};

} // namespace

std::vector<FindingKey> RuleBook::inOrder(std::vector<FindingKey> keys) const {
    std::stable_sort(keys.begin(), keys.end(), [&](const FindingKey& a, const FindingKey& b) {
        const auto one = order_.find(a.item);
        const auto two = order_.find(b.item);
        return (one == order_.end() ? order_.size() : one->second) <
               (two == order_.end() ? order_.size() : two->second);
    });
    return keys;
}

ScreenResult RuleBook::judge(const Screen& screen, const Exam& exam, Side side) const {
    ScreenResult result{screen.id, screen.label, side, screen.prior, ScreenVerdict::notExamined, {}};
    std::map<std::string, GroupPull> groups;
    bool looked = false;
    for (const ScreenRule& rule : screen.rules) {
        const Answer answer = rule.when.evaluate({&exam, nullptr, nullptr, side});
        if (answer.truth == Truth::unknown) continue;
        looked = looked || (!rule.background && !answer.because.empty()); // age alone is no look
        groups[rule.group].take(answer.holds(), answer.holds() ? rule.ifTrue : rule.ifFalse, answer.because);
    }
    if (!looked) return result;
    double logRatio = 0;
    for (const auto& [group, pull] : groups) {
        logRatio += pull.logRatio;
        if (pull.logRatio != 0) merge(result.because, pull.because);
    }
    const double cap = std::log(screen.cap);
    const double odds = screen.prior / (1 - screen.prior) * std::exp(std::clamp(logRatio, -cap, cap));
    result.probability = odds / (1 + odds);
    result.because = inOrder(std::move(result.because));
    if (result.probability >= screen.high)
        result.verdict = ScreenVerdict::high;
    else if (result.probability >= screen.raised)
        result.verdict = ScreenVerdict::raised;
    else
        result.verdict = ScreenVerdict::low;
    return result;
}

std::vector<ScreenResult> RuleBook::screens(const Exam& exam) const {
    std::vector<ScreenResult> out;
    for (const Screen& screen : screens_) {
        if (!screen.perSide) {
            out.push_back(judge(screen, exam, Side::none));
            continue;
        }
        for (const Side side : bothLegs)
            out.push_back(judge(screen, exam, side));
    }
    return out;
}

std::vector<RedSign> RuleBook::redSigns(const Exam& exam, const Exam* previous) const {
    std::vector<RedSign> out;
    for (const RedSignRule& rule : redSigns_) {
        for (const RedSignLevel& level : rule.levels) {
            const Circumstances at{&exam, previous, nullptr, Side::none};
            if (level.when.truth(at) != Truth::yes) continue;
            const Answer answer = level.when.evaluate(at);
            out.push_back({rule.id, level.urgency, level.due, level.sentence, level.action,
                           inOrder(answer.because), level.source});
            break;
        }
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const RedSign& a, const RedSign& b) { return a.urgency > b.urgency; });
    return out;
}

std::vector<Answer> RuleBook::behavior(const Exam& exam) const {
    std::vector<Answer> out;
    for (const Condition& group : behavior_.groups) {
        Answer answer = group.evaluate({&exam, nullptr, nullptr, Side::none});
        if (answer.holds()) out.push_back(std::move(answer));
    }
    return out;
}

int RuleBook::behavioralGroups(const Exam& exam) const {
    return static_cast<int>(behavior(exam).size());
}

std::vector<ConsistencyNote> RuleBook::consistency(const Exam& exam) const {
    std::vector<ConsistencyNote> out;
    for (const ConsistencyRule& rule : consistency_) {
        const std::vector<Side> sides =
            rule.perSide ? std::vector<Side>{Side::left, Side::right} : std::vector<Side>{Side::none};
        for (const Side side : sides) {
            const Circumstances at{&exam, nullptr, nullptr, side};
            if (rule.when.truth(at) == Truth::yes)
                out.push_back(
                    {rule.id, side, rule.sentence, inOrder(rule.when.evaluate(at).because), rule.source});
        }
    }
    const std::vector<Answer> groups = behavior(exam);
    if (static_cast<int>(groups.size()) >= behavior_.noteAt) {
        ConsistencyNote note{"behavioral_signs", Side::none, behavior_.sentence, {}, behavior_.source};
        for (const Answer& group : groups)
            merge(note.because, group.because);
        note.because = inOrder(std::move(note.because));
        out.push_back(std::move(note));
    }
    return out;
}

std::vector<WorkupNote> RuleBook::workup(const Exam& exam, const Assessment& assessment) const {
    std::vector<WorkupNote> out;
    for (const WorkupRule& rule : workup_)
        if (rule.when.truth({&exam, nullptr, &assessment, Side::none}) == Truth::yes)
            out.push_back(rule.note);
    return out;
}

std::vector<Code> RuleBook::codes(const Exam& exam, const Assessment& assessment) const {
    std::vector<Code> out;
    for (const CodeRule& rule : codes_)
        if (rule.when.truth({&exam, nullptr, &assessment, Side::none}) == Truth::yes)
            out.push_back(rule.code);
    return out;
}

std::vector<FindingKey> RuleBook::notAsked(const Exam& exam) const {
    std::vector<FindingKey> out;
    for (const FindingKey& key : askAlways_)
        if (exam.find(key) == nullptr) out.push_back(key);
    return out;
}

std::vector<std::string> RuleBook::redSignIds() const {
    std::vector<std::string> out;
    for (const RedSignRule& rule : redSigns_)
        out.push_back(rule.id);
    return out;
}

std::vector<std::string> RuleBook::screenIds() const {
    std::vector<std::string> out;
    for (const Screen& screen : screens_)
        out.push_back(screen.id);
    return out;
}

Exam carriedForward(const std::vector<Exam>& earlier) {
    Exam out;
    for (const Exam& exam : earlier) {
        out.subject = exam.subject;
        out.date = exam.date;
        for (const auto& [key, finding] : exam.findings())
            if (finding.value.testable()) out.set(key, finding);
    }
    return out;
}

} // namespace rhizograph
