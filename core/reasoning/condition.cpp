#include "reasoning/condition.h"

#include <algorithm>

namespace rhizograph {
namespace {

Truth truthOf(bool value) {
    return value ? Truth::yes : Truth::no;
}

void add(std::vector<FindingKey>* to, const std::vector<FindingKey>& from) {
    if (to == nullptr) return;
    to->insert(to->end(), from.begin(), from.end());
    std::sort(to->begin(), to->end());
    to->erase(std::unique(to->begin(), to->end()), to->end());
}

void add(std::vector<FindingKey>* to, const FindingKey& key) {
    if (to != nullptr) add(to, std::vector<FindingKey>{key});
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

Condition::Place::Place(const ItemId& item, Which which, Side side) {
    const std::array<Side, 3> same{Side::left, Side::right, Side::none};
    for (std::size_t i = 0; i < same.size(); ++i)
        keys[i] = {item, which == Which::same ? same[i] : which == Which::other ? mirrored(same[i]) : side};
}

const FindingKey& Condition::Place::key(Side same) const {
    return keys[same == Side::left ? 0 : same == Side::right ? 1 : 2];
}

Answer Condition::evaluate(const Circumstances& circumstances) const {
    Answer answer;
    answer.truth = judge(circumstances, &answer.because);
    return answer;
}

Truth Condition::judge(const Circumstances& at, Because because) const {
    return std::visit([&](const auto& form) { return of(form, at, because); }, form_);
}

Truth Condition::of(const Count& count, const Circumstances& at, Because because) {
    std::size_t yes = 0;
    std::size_t no = 0;
    std::vector<FindingKey> held;
    std::vector<FindingKey> failed;
    for (const Condition& part : count.parts) {
        std::vector<FindingKey> why;
        const Truth truth = part.judge(at, because == nullptr ? nullptr : &why);
        if (truth == Truth::yes) {
            ++yes;
            if (because != nullptr) add(&held, why);
        } else if (truth == Truth::no) {
            ++no;
            if (because != nullptr) add(&failed, why);
        }
        const bool settled = yes >= count.needed || no + count.needed > count.parts.size();
        if (settled && because == nullptr) break;
    }
    if (yes >= count.needed) {
        add(because, held);
        return Truth::yes;
    }
    if (no + count.needed <= count.parts.size()) return Truth::unknown;
    add(because, failed);
    return Truth::no;
}

Truth Condition::of(const Not& negation, const Circumstances& at, Because because) {
    return negated(negation.part.front().judge(at, because));
}

Truth Condition::of(const Unless& unless, const Circumstances& at, Because) {
    return truthOf(unless.part.front().truth(at) != Truth::yes);
}

Truth Condition::of(const Sides& sides, const Circumstances& at, Because because) {
    Circumstances left = at;
    Circumstances right = at;
    left.same = Side::left;
    right.same = Side::right;
    std::array<std::vector<FindingKey>, 2> why;
    const Truth one = sides.part.front().judge(left, because == nullptr ? nullptr : &why[0]);
    const Truth two = sides.part.front().judge(right, because == nullptr ? nullptr : &why[1]);
    const Truth decisive = sides.both ? Truth::no : Truth::yes; // one side with this settles it
    Truth out = Truth::unknown;
    if (one == decisive || two == decisive)
        out = decisive;
    else if (one == two)
        out = one;
    if (out == Truth::unknown) return out;
    if (one == out) add(because, why[0]);
    if (two == out) add(because, why[1]);
    return out;
}

Truth Condition::of(const FindingTest& test, const Circumstances& at, Because because) {
    const FindingKey& key = test.place.key(at.same);
    const Finding* finding = read(at.exam, key);
    if (test.recorded) {
        if (finding != nullptr) add(because, key);
        return truthOf((finding != nullptr) == *test.recorded);
    }
    if (finding == nullptr) return Truth::unknown;
    const bool compares = test.fellBy || !test.was.empty();
    std::vector<FindingKey> why;
    const Truth present = now(test, finding->value, at, because == nullptr ? nullptr : &why);
    const Truth change = compares ? before(test, key, finding->value, at.previous) : Truth::yes;
    if (present != Truth::no && change != Truth::no &&
        (present == Truth::unknown || change == Truth::unknown))
        return Truth::unknown;
    add(because, why);
    return truthOf(present == Truth::yes && change == Truth::yes);
}

Truth Condition::now(const FindingTest& test, const Value& value, const Circumstances& at, Because because) {
    const FindingKey& key = test.place.key(at.same);
    if (!test.accepted.empty()) {
        const auto& tokens = test.accepted;
        add(because, key);
        return truthOf(std::find(tokens.begin(), tokens.end(), value.word()) != tokens.end());
    }
    if (!test.atLeast && !test.atMost) { // only the earlier visit is asked about
        add(because, key);
        return Truth::yes;
    }
    if (!value.isNumber()) return Truth::unknown;
    double number = value.number();
    if (test.minus) {
        const Finding* other = read(at.exam, test.minus->key(at.same));
        if (other == nullptr || !other->value.isNumber()) return Truth::unknown;
        number -= other->value.number();
        add(because, test.minus->key(at.same));
    }
    add(because, key);
    constexpr double rounding = 1e-9; // 38.1 - 35.1 is to count as 3
    return truthOf((!test.atLeast || number >= *test.atLeast - rounding) &&
                   (!test.atMost || number <= *test.atMost + rounding));
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

Truth Condition::of(const AgeTest& test, const Circumstances& at, Because) {
    if (at.exam == nullptr || !at.exam->subject.age) return Truth::unknown;
    return truthOf(*at.exam->subject.age >= test.least && *at.exam->subject.age <= test.most);
}

Truth Condition::of(const SexTest& test, const Circumstances& at, Because) {
    if (at.exam == nullptr || at.exam->subject.sex.empty()) return Truth::unknown;
    return truthOf(at.exam->subject.sex == test.sex);
}

Truth Condition::of(const SiteTest& test, const Circumstances& at, Because) {
    if (at.assessment == nullptr || at.assessment->localization.empty() || at.assessment->nothingKnown)
        return Truth::unknown;
    const auto side = sideMeant(test.which != Which::given, test.which == Which::other, test.side, at.same);
    double sum = 0;
    for (const SiteResult& result : at.assessment->localization)
        if (test.sites.contains(result.site.text()) && (!side || result.side == *side))
            sum += result.probability;
    return truthOf(sum >= test.probability);
}

Truth Condition::of(const RedSignTest& test, const Circumstances& at, Because because) {
    if (at.assessment == nullptr) return Truth::unknown;
    Truth truth = Truth::no;
    for (const RedSign& sign : at.assessment->redSigns) {
        if ((test.id != "*" && sign.id != test.id) || sign.urgency < test.least) continue;
        truth = Truth::yes;
        add(because, sign.because);
    }
    return truth;
}

Truth Condition::of(const ScreenTest& test, const Circumstances& at, Because because) {
    if (at.assessment == nullptr) return Truth::unknown;
    const auto side = sideMeant(test.which != Which::given, test.which == Which::other, test.side, at.same);
    Truth truth = Truth::unknown;
    std::vector<FindingKey> held;
    std::vector<FindingKey> failed;
    for (const ScreenResult& screen : at.assessment->screens) {
        if (screen.id != test.id || screen.verdict == ScreenVerdict::notExamined) continue;
        if (side && screen.side != Side::none && screen.side != *side) continue;
        if (test.verdicts.contains(screen.verdict)) {
            truth = Truth::yes;
            add(&held, screen.because);
        } else if (truth == Truth::unknown) {
            truth = Truth::no;
            add(&failed, screen.because);
        }
    }
    if (truth != Truth::unknown) add(because, truth == Truth::yes ? held : failed);
    return truth;
}

} // namespace rhizograph
