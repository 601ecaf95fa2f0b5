#pragma once

#include "record/store.h"

#include <QUndoCommand>
#include <vector>

namespace rhizograph::app {

class VisitSession;

/// One step of the undo stack: findings as they become and as they were.
class ChangeCommand : public QUndoCommand {
public:
    ChangeCommand(VisitSession& session, const QString& text, std::vector<FindingChange> after,
                  std::vector<FindingChange> before);
    /// Whether it sets one of these findings.
    [[nodiscard]] bool concerns(const std::vector<FindingKey>& keys) const;
    void redo() override;
    void undo() override;

private:
    VisitSession& session_;
    std::vector<FindingChange> after_;
    std::vector<FindingChange> before_;
};

} // namespace rhizograph::app
