#include "shell/changecommand.h"

#include "shell/visitsession.h"

namespace rhizograph::app {

ChangeCommand::ChangeCommand(VisitSession& session, const QString& text, std::vector<FindingChange> after,
                             std::vector<FindingChange> before)
    : QUndoCommand(text), session_(session), after_(std::move(after)), before_(std::move(before)) {}

void ChangeCommand::redo() {
    session_.apply(after_);
}

void ChangeCommand::undo() {
    session_.apply(before_);
}

} // namespace rhizograph::app
