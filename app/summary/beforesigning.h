#pragma once

#include "exam/exam.h"

#include <optional>
#include <QString>
#include <QStringList>
#include <vector>

namespace rhizograph::app {

class VisitSession;

/// Something to look at before the visit is signed; it never forbids signing.
struct SigningWarning {
    QString text;
    std::optional<FindingKey> finding; ///< where "Go there" leads
    bool grave = false;                ///< a red sign nobody has acknowledged
};

/// Red signs not acknowledged, warning questions not asked, words written before the findings changed, no
/// plan.
[[nodiscard]] std::vector<SigningWarning> warningsBeforeSigning(const VisitSession& session,
                                                                const QStringList& outdated);

} // namespace rhizograph::app
