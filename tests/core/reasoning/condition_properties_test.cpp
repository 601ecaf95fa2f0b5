#include "exam_maker.h"
#include "reasoning/rulebook.h"

#include <rapidcheck/gtest.h>

namespace rhizograph {
namespace {

using testing::catalogue;

const RuleBook& rules() {
    static const Result<RuleBook> loaded = RuleBook::load(testing::knowledgeDirectory(), catalogue());
    return *loaded;
}

rc::Gen<Value> anyValue(const Item& item) {
    if (item.scale.numeric()) {
        const int steps = static_cast<int>((item.scale.maximum - item.scale.minimum) / item.scale.step);
        return rc::gen::map(rc::gen::inRange(0, steps + 1), [&item](int i) {
            return Value::number(item.scale.minimum + i * item.scale.step);
        });
    }
    return rc::gen::map(rc::gen::inRange<std::size_t>(0, item.scale.values.size()),
                        [&item](std::size_t i) { return Value::token(item.scale.values[i].token); });
}

/// Exams with any subset of findings at any values, sparse and dense ones alike.
rc::Gen<Exam> anyExam() {
    return rc::gen::exec([] {
        Exam exam;
        if (*rc::gen::arbitrary<bool>()) exam.subject.age = *rc::gen::inRange(0, 100);
        if (*rc::gen::arbitrary<bool>()) exam.subject.sex = *rc::gen::element<std::string>("female", "male");
        const int share = *rc::gen::inRange(2, 100);
        for (const Item& item : catalogue().items()) {
            if (item.scale.kind == Scale::Kind::text) continue;
            for (const Side side : {Side::none, Side::left, Side::right}) {
                if (item.sided == (side == Side::none) || *rc::gen::inRange(0, 100) >= share) continue;
                exam.set({item.id, side}, {*anyValue(item), false, ""});
            }
        }
        return exam;
    });
}

std::vector<FindingKey> mirroredKeys(std::vector<FindingKey> keys) {
    for (FindingKey& key : keys)
        key.side = mirrored(key.side);
    std::sort(keys.begin(), keys.end());
    return keys;
}

std::vector<FindingKey> sorted(std::vector<FindingKey> keys) {
    std::sort(keys.begin(), keys.end());
    return keys;
}

RC_GTEST_PROP(Rules, SwappingTheSidesSwapsTheAnswer, ()) {
    const Exam exam = *anyExam();
    const Exam before = *anyExam();
    const Exam turned = exam.mirrored();
    const Exam turnedBefore = before.mirrored();

    const auto signs = rules().redSigns(exam, &before);
    const auto turnedSigns = rules().redSigns(turned, &turnedBefore);
    RC_ASSERT(signs.size() == turnedSigns.size());
    for (std::size_t i = 0; i < signs.size(); ++i) {
        RC_ASSERT(signs[i].id == turnedSigns[i].id);
        RC_ASSERT(signs[i].urgency == turnedSigns[i].urgency);
        RC_ASSERT(mirroredKeys(signs[i].because) == sorted(turnedSigns[i].because));
    }
    RC_ASSERT(rules().behavioralGroups(exam) == rules().behavioralGroups(turned));
    const auto screens = rules().screens(exam);
    const auto turnedScreens = rules().screens(turned);
    for (const ScreenResult& screen : screens)
        RC_ASSERT(std::any_of(turnedScreens.begin(), turnedScreens.end(), [&](const ScreenResult& other) {
            return other.id == screen.id && other.side == mirrored(screen.side) &&
                   other.verdict == screen.verdict &&
                   std::abs(other.probability - screen.probability) < 1e-12;
        }));
    RC_ASSERT(rules().consistency(exam).size() == rules().consistency(turned).size());
}

RC_GTEST_PROP(Rules, EveryRedSignNamesFindingsThatWereRecorded, ()) {
    const Exam exam = *anyExam();
    for (const RedSign& sign : rules().redSigns(exam, nullptr)) {
        RC_ASSERT(!sign.because.empty());
        for (const FindingKey& key : sign.because)
            RC_ASSERT(exam.find(key) != nullptr);
    }
}

RC_GTEST_PROP(Rules, WhatWasNotTestableFiresNothing, ()) {
    Exam exam = *anyExam();
    Exam blank;
    blank.subject = exam.subject;
    for (const auto& [key, finding] : exam.findings())
        blank.set(key, {Value::notTestable("pain"), false, ""});
    RC_ASSERT(rules().redSigns(blank, &exam).empty());
    RC_ASSERT(rules().consistency(blank).empty());
    RC_ASSERT(rules().behavioralGroups(blank) == 0);
    for (const ScreenResult& screen : rules().screens(blank))
        RC_ASSERT(screen.verdict == ScreenVerdict::notExamined);
}

RC_GTEST_PROP(Rules, TheOrderInWhichFindingsWereMadeDoesNotMatter, ()) {
    const Exam exam = *anyExam();
    std::vector<std::pair<FindingKey, Finding>> findings(exam.findings().begin(), exam.findings().end());
    std::reverse(findings.begin(), findings.end());
    Exam again;
    again.subject = exam.subject;
    for (const auto& [key, finding] : findings)
        again.set(key, finding);
    const auto one = rules().redSigns(exam, nullptr);
    const auto two = rules().redSigns(again, nullptr);
    RC_ASSERT(one.size() == two.size());
    for (std::size_t i = 0; i < one.size(); ++i)
        RC_ASSERT(one[i].id == two[i].id && one[i].because == two[i].because);
}

} // namespace
} // namespace rhizograph
