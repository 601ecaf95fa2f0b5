#pragma once

#include "record/failure.h"

namespace rhizograph::sqlite {

/// What an extended SQLite result code means to the person in front of the screen, and the way out.
[[nodiscard]] RecordError errorFor(int extendedCode);

} // namespace rhizograph::sqlite
