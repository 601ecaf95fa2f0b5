#include "summary/beforesigning.h"

#include "language/language.h"
#include "shell/visitsession.h"

#include <QCoreApplication>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("rhizograph::app", text);
}

} // namespace

std::vector<SigningWarning> warningsBeforeSigning(const VisitSession& session, const QStringList& outdated) {
    std::vector<SigningWarning> out;
    const Assessment& assessment = session.assessment();
    for (const RedSign& sign : assessment.redSigns) {
        if (sign.urgency == Urgency::note || session.acknowledged(sign)) continue;
        const auto where = sign.because.empty() ? std::nullopt : std::optional{sign.because.front()};
        out.push_back({tr("Red sign not acknowledged: %1").arg(medical(sign.sentence)), where, true});
    }
    if (!assessment.notAsked.empty()) {
        const auto count = static_cast<int>(assessment.notAsked.size());
        out.push_back({tr("Warning questions not asked: %1. The page says so.").arg(count),
                       assessment.notAsked.front(), false});
    }
    for (const QString& title : outdated)
        out.push_back(
            {tr("%1: the findings changed after these words were written.").arg(title), std::nullopt, false});
    if (session.plan().trimmed().isEmpty()) out.push_back({tr("No plan is written."), std::nullopt, false});
    return out;
}

} // namespace rhizograph::app
