#pragma once

#include "exam/exam.h"

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace rhizograph::testing {

/// Any value of a scale that is not free text.
inline Value someValue(const Scale& scale, std::mt19937& random) {
    const auto upTo = [&](std::size_t n) {
        return std::uniform_int_distribution<std::size_t>{0, n - 1}(random);
    };
    if (!scale.numeric()) return Value::token(scale.values[upTo(scale.values.size())].token);
    const auto steps = static_cast<std::size_t>(std::floor((scale.maximum - scale.minimum) / scale.step));
    return Value::number(scale.minimum +
                         static_cast<double>(upTo(std::min<std::size_t>(steps, 200) + 1)) * scale.step);
}

/// Any of the items, on one side or both, of a person whose age is known three times in four; the same for
/// the same state of `random` on every machine.
inline Exam someExam(const std::vector<const Item*>& items, std::size_t findings, std::mt19937& random) {
    Exam exam;
    if (random() % 4 != 0) exam.subject.age = static_cast<int>(18 + random() % 75);
    for (std::size_t i = 0; i < findings; ++i) {
        const Item& item = *items[random() % items.size()];
        const bool both = random() % 2 == 0;
        const Side side = item.sided ? (random() % 2 == 0 ? Side::left : Side::right) : Side::none;
        exam.set({item.id, side}, {someValue(item.scale, random), false, {}});
        if (item.sided && both)
            exam.set({item.id, mirrored(side)}, {someValue(item.scale, random), false, {}});
    }
    return exam;
}

/// Only the items of one family ("reflex.", "gait."), so that findings which share a hidden quantity meet.
inline std::vector<const Item*> oneFamily(const std::vector<const Item*>& items, std::mt19937& random) {
    const auto family = [](const Item& item) { return item.id.text().substr(0, item.id.text().find('.')); };
    const std::string wanted = family(*items[random() % items.size()]);
    std::vector<const Item*> out;
    std::copy_if(items.begin(), items.end(), std::back_inserter(out),
                 [&](const Item* item) { return family(*item) == wanted; });
    return out;
}

} // namespace rhizograph::testing
