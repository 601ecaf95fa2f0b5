#pragma once

#include "exam/exam.h"

#include <algorithm>
#include <cmath>
#include <rapidcheck.h>
#include <string>

namespace rhizograph::testing {

/// Any value an item can hold, "not testable" now and then.
inline rc::Gen<Value> anyValue(const Item& item, const std::vector<std::string>& reasons) {
    return rc::gen::exec([&item, &reasons] {
        if (*rc::gen::inRange(0, 12) == 0) return Value::notTestable(*rc::gen::elementOf(reasons));
        const Scale& scale = item.scale;
        if (scale.kind == Scale::Kind::text)
            return Value::text(*rc::gen::container<std::string>(rc::gen::inRange<char>(' ', '~')));
        if (!scale.numeric()) return Value::token((*rc::gen::elementOf(scale.values)).token);
        const int steps = static_cast<int>(std::floor((scale.maximum - scale.minimum) / scale.step));
        return Value::number(
            std::min(scale.maximum, scale.minimum + *rc::gen::inRange(0, steps + 1) * scale.step));
    });
}

inline rc::Gen<Subject> anySubject() {
    return rc::gen::exec([] {
        Subject subject;
        if (*rc::gen::arbitrary<bool>()) subject.age = *rc::gen::inRange(0, 131);
        subject.sex = *rc::gen::element<std::string>("", "female", "male", "other");
        return subject;
    });
}

/// An exam of any items of the catalogue, each with any value on any of its sides.
inline rc::Gen<Exam> anyExam(const Catalogue& catalogue) {
    return rc::gen::exec([&catalogue] {
        Exam exam;
        exam.subject = *anySubject();
        if (*rc::gen::arbitrary<bool>())
            exam.date = *rc::gen::element<std::string>("2026-02-28", "2024-02-29", "1999-12-31");
        const int count = *rc::gen::inRange(0, 60);
        for (int i = 0; i < count; ++i) {
            const auto index = *rc::gen::inRange<std::size_t>(0, catalogue.items().size());
            const Item& item = catalogue.items()[index];
            const Side side = item.sided ? *rc::gen::element(Side::left, Side::right) : Side::none;
            Finding finding{*anyValue(item, catalogue.notTestableReasons()), *rc::gen::arbitrary<bool>(), {}};
            if (*rc::gen::inRange(0, 8) == 0)
                finding.note = *rc::gen::container<std::string>(rc::gen::inRange<char>(' ', '~'));
            exam.set({item.id, side}, std::move(finding));
        }
        return exam;
    });
}

} // namespace rhizograph::testing
