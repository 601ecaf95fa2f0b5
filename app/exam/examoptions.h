#pragma once

#include "catalogue/howto.h"

#include <memory>
#include <QString>

namespace rhizograph::app {

enum class LengthUnit { centimeters, inches };

/// What a clinic or a person chose about how the steps show. Nothing here changes what is stored.
struct ExamOptions {
    LengthUnit length = LengthUnit::centimeters;
    bool splitGrades = false; ///< also offers the grades between whole ones
    bool legend = true;
    std::shared_ptr<const HowTos> howTos = nullptr; ///< offered in the menu of a row; may be null
    bool operator==(const ExamOptions&) const = default;
};

/// How a numeric scale is shown and typed: shown = stored × factor.
struct ShownUnit {
    QString suffix; ///< with its leading space where one belongs, e.g. " cm" or "°"; may be empty
    double factor = 1;
    int decimals = 0;
};

[[nodiscard]] ShownUnit shownUnit(const Scale& scale, LengthUnit length);
/// A stored number as people read it, e.g. "71.2 cm"; without the unit when `bare`.
[[nodiscard]] QString shownNumber(const Scale& scale, double stored, LengthUnit length, bool bare = false);
/// True for a short whole-number score that fits on buttons (0 to 10).
[[nodiscard]] bool isScore(const Scale& scale);

} // namespace rhizograph::app
