#include "shell/changecommand.h"

#include "shell/visitsession.h"

#include <algorithm>

namespace rhizograph::app {

ChangeCommand::ChangeCommand(VisitSession& session, const QString& text, std::vector<FindingChange> after,
                             std::vector<FindingChange> before)
    : QUndoCommand(text), session_(session), after_(std::move(after)), before_(std::move(before)) {}

bool ChangeCommand::concerns(const std::vector<FindingKey>& keys) const {
    return std::any_of(after_.begin(), after_.end(), [&](const FindingChange& change) {
        return std::find(keys.begin(), keys.end(), change.key) != keys.end();
    });
}

void ChangeCommand::redo() {
    session_.apply(after_);
}

void ChangeCommand::undo() {
    session_.apply(before_);
}

} // namespace rhizograph::app
