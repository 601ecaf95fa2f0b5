#include "reasoning/condition.h"

#include <algorithm>

namespace rhizograph {
namespace {

Truth truthOf(bool value) {
    return value ? Truth::yes : Truth::no;
}

void add(std::vector<FindingKey>& to, const std::vector<FindingKey>& from) {
    to.insert(to.end(), from.begin(), from.end());
    std::sort(to.begin(), to.end());
    to.erase(std::unique(to.begin(), to.end()), to.end());
}

/// The finding when it was made and could be tested, else null.
const Finding* read(const Exam* exam, const FindingKey& key) {
    const Finding* finding = exam == nullptr ? nullptr : exam->find(key);
    return finding != nullptr && finding->value.testable() ? finding : nullptr;
}

std::optional<double> magnitude(const Value& value) {
    if (value.isNumber()) return value.number();
    if (const auto grade = wholeGrade(value.word())) return *grade;
    return std::nullopt;
}

std::optional<Side> sideMeant(bool relative, bool mirror, const std::optional<Side>& given, Side same) {
    if (!relative) return given;
    return mirror ? mirrored(same) : same;
}

} // namespace

Truth negated(Truth truth) {
    if (truth == Truth::unknown) return truth;
    return truth == Truth::yes ? Truth::no : Truth::yes;
}

std::optional<int> wholeGrade(const std::string& token) {
    if (token.empty() || token.front() < '0' || token.front() > '9') return std::nullopt;
    return token.front() - '0';
}

FindingKey Condition::Place::key(Side same) const {
    if (which == Which::same) return {item, same};
    if (which == Which::other) return {item, mirrored(same)};
    return {item, side};
}

Answer Condition::evaluate(const Circumstances& circumstances) const {
    return std::visit([&](const auto& form) { return of(form, circumstances); }, form_);
}

Answer Condition::of(const Count& count, const Circumstances& at) {
    std::size_t yes = 0;
    std::size_t open = 0;
    Answer held;
    Answer failed;
    for (const Condition& part : count.parts) {
        const Answer answer = part.evaluate(at);
        if (answer.truth == Truth::yes) {
            ++yes;
            add(held.because, answer.because);
        } else if (answer.truth == Truth::unknown) {
            ++open;
        } else {
            add(failed.because, answer.because);
        }
    }
    if (yes >= count.needed) return {Truth::yes, std::move(held.because)};
    if (yes + open < count.needed) return {Truth::no, std::move(failed.because)};
    return {};
}

Answer Condition::of(const Not& negation, const Circumstances& at) {
    Answer answer = negation.part.front().evaluate(at);
    answer.truth = negated(answer.truth);
    return answer;
}

Answer Condition::of(const Unless& unless, const Circumstances& at) {
    const Answer inner = unless.part.front().evaluate(at);
    return {truthOf(!inner.holds()), {}};
}

Answer Condition::of(const Sides& sides, const Circumstances& at) {
    Circumstances left = at;
    Circumstances right = at;
    left.same = Side::left;
    right.same = Side::right;
    const Answer one = sides.part.front().evaluate(left);
    const Answer two = sides.part.front().evaluate(right);
    const Truth decisive = sides.both ? Truth::no : Truth::yes; // one side with this settles it
    Answer out;
    if (one.truth == decisive || two.truth == decisive)
        out.truth = decisive;
    else if (one.truth == two.truth)
        out.truth = one.truth;
    if (one.truth == out.truth) add(out.because, one.because);
    if (two.truth == out.truth) add(out.because, two.because);
    if (out.truth == Truth::unknown) out.because.clear();
    return out;
}

Answer Condition::of(const FindingTest& test, const Circumstances& at) {
    const FindingKey key = test.place.key(at.same);
    const Finding* finding = read(at.exam, key);
    if (test.recorded) {
        Answer answer{truthOf((finding != nullptr) == *test.recorded), {}};
        if (finding != nullptr) answer.because = {key};
        return answer;
    }
    if (finding == nullptr) return {};
    Answer answer = now(test, key, finding->value, at.same, *at.exam);
    if (!test.fellBy && test.was.empty()) return answer;
    const Truth change = before(test, key, finding->value, at.previous);
    if (answer.truth == Truth::no || change == Truth::no) return {Truth::no, std::move(answer.because)};
    if (answer.truth == Truth::unknown || change == Truth::unknown) return {};
    return answer;
}

Answer Condition::now(const FindingTest& test, const FindingKey& key, const Value& value, Side same,
                      const Exam& exam) {
    if (!test.accepted.empty()) {
        const auto& tokens = test.accepted;
        return {truthOf(std::find(tokens.begin(), tokens.end(), value.word()) != tokens.end()), {key}};
    }
    if (!test.atLeast && !test.atMost) return {Truth::yes, {key}}; // only the earlier visit is asked about
    if (!value.isNumber()) return {};
    double number = value.number();
    std::vector<FindingKey> because{key};
    if (test.minus) {
        const FindingKey otherKey = test.minus->key(same);
        const Finding* other = read(&exam, otherKey);
        if (other == nullptr || !other->value.isNumber()) return {};
        number -= other->value.number();
        add(because, {otherKey});
    }
    constexpr double rounding = 1e-9; // 38.1 - 35.1 is to count as 3
    const bool holds = (!test.atLeast || number >= *test.atLeast - rounding) &&
                       (!test.atMost || number <= *test.atMost + rounding);
    return {truthOf(holds), std::move(because)};
}

Truth Condition::before(const FindingTest& test, const FindingKey& key, const Value& value,
                        const Exam* previous) {
    const Finding* earlier = read(previous, key);
    if (earlier == nullptr) return Truth::unknown;
    const auto& was = test.was;
    if (!was.empty() && std::find(was.begin(), was.end(), earlier->value.word()) == was.end())
        return Truth::no;
    if (!test.fellBy) return Truth::yes;
    const auto present = magnitude(value);
    const auto then = magnitude(earlier->value);
    if (!present || !then) return Truth::unknown;
    return truthOf(*then - *present >= *test.fellBy);
}

Answer Condition::of(const AgeTest& test, const Circumstances& at) {
    if (at.exam == nullptr || !at.exam->subject.age) return {};
    return {truthOf(*at.exam->subject.age >= test.least && *at.exam->subject.age <= test.most), {}};
}

Answer Condition::of(const SexTest& test, const Circumstances& at) {
    if (at.exam == nullptr || at.exam->subject.sex.empty()) return {};
    return {truthOf(at.exam->subject.sex == test.sex), {}};
}

Answer Condition::of(const SiteTest& test, const Circumstances& at) {
    if (at.assessment == nullptr || at.assessment->localization.empty() || at.assessment->nothingKnown)
        return {};
    const auto side = sideMeant(test.which != Which::given, test.which == Which::other, test.side, at.same);
    double sum = 0;
    for (const SiteResult& result : at.assessment->localization)
        if (test.sites.contains(result.site.text()) && (!side || result.side == *side))
            sum += result.probability;
    return {truthOf(sum >= test.probability), {}};
}

Answer Condition::of(const RedSignTest& test, const Circumstances& at) {
    if (at.assessment == nullptr) return {};
    Answer answer{Truth::no, {}};
    for (const RedSign& sign : at.assessment->redSigns) {
        if ((test.id != "*" && sign.id != test.id) || sign.urgency < test.least) continue;
        answer.truth = Truth::yes;
        add(answer.because, sign.because);
    }
    return answer;
}

Answer Condition::of(const ScreenTest& test, const Circumstances& at) {
    if (at.assessment == nullptr) return {};
    const auto side = sideMeant(test.which != Which::given, test.which == Which::other, test.side, at.same);
    Answer answer;
    for (const ScreenResult& screen : at.assessment->screens) {
        if (screen.id != test.id || screen.verdict == ScreenVerdict::notExamined) continue;
        if (side && screen.side != Side::none && screen.side != *side) continue;
        if (test.verdicts.contains(screen.verdict)) {
            if (answer.truth != Truth::yes) answer.because.clear();
            answer.truth = Truth::yes;
            add(answer.because, screen.because);
        } else if (answer.truth == Truth::unknown) {
            answer.truth = Truth::no;
            add(answer.because, screen.because);
        }
    }
    return answer;
}

} // namespace rhizograph
