#pragma once

#include "catalogue/catalogue.h"
#include "exam/exam.h"

#include <array>
#include <cmath>
#include <random>
#include <string>

namespace rhizograph::testing {

/// Exams of every fullness: each question answered with a chance drawn anew for each exam, half of the
/// answers normal, some not testable, some with remarks. The same seed gives the same exams.
class RandomExams {
public:
    /// `fullest`: share of the questions that are answered at most.
    RandomExams(const Catalogue& catalogue, unsigned seed, bool remarks = false, double fullest = 0.95)
        : catalogue_(catalogue), random_(seed), remarks_(remarks), fullest_(fullest) {}

    Exam next() {
        Exam exam;
        if (chance(0.8)) exam.subject.age = static_cast<int>(random_() % 100);
        if (chance(0.8)) exam.subject.sex = std::array{"female", "male", "other"}[random_() % 3];
        if (chance(0.9))
            exam.date = "2026-0" + std::to_string(1 + random_() % 9) + "-1" + std::to_string(random_() % 10);
        const double fullness = std::uniform_real_distribution<>{0.02, fullest_}(random_);
        const double normal = std::uniform_real_distribution<>{0.1, 0.95}(random_);
        for (const Item& item : catalogue_.items()) {
            if (!item.sided)
                answer(exam, item, Side::none, fullness, normal);
            else
                for (const Side side : {Side::left, Side::right})
                    answer(exam, item, side, fullness, normal);
        }
        return exam;
    }

    bool chance(double probability) { return std::uniform_real_distribution<>{}(random_) < probability; }
    std::mt19937& random() { return random_; }

    /// A value the item can hold.
    Value value(const Item& item, double normal) {
        if (chance(0.04)) {
            const auto& reasons = catalogue_.notTestableReasons();
            return Value::notTestable(reasons[random_() % reasons.size()]);
        }
        if (item.scale.listed()) {
            if (item.scale.normal && chance(normal)) return Value::token(*item.scale.normal);
            return Value::token(item.scale.values[random_() % item.scale.values.size()].token);
        }
        if (!item.scale.numeric()) return Value::text("words " + std::to_string(random_() % 1000));
        if (item.scale.normalNumber && chance(normal)) return Value::number(*item.scale.normalNumber);
        const double span = item.scale.maximum - item.scale.minimum;
        const double steps = std::floor(span / item.scale.step * std::uniform_real_distribution<>{}(random_));
        const double scale = std::pow(10, item.scale.decimals());
        return Value::number(std::round((item.scale.minimum + steps * item.scale.step) * scale) / scale);
    }

private:
    void answer(Exam& exam, const Item& item, Side side, double fullness, double normal) {
        if (!chance(fullness)) return;
        Finding finding{value(item, normal), chance(0.1), {}};
        if (remarks_ && chance(0.1))
            finding.note = "remark “" + std::to_string(random_() % 1000) + "” <&> \\ end";
        exam.set({item.id, side}, std::move(finding));
    }

    const Catalogue& catalogue_;
    std::mt19937 random_;
    bool remarks_;
    double fullest_;
};

} // namespace rhizograph::testing
