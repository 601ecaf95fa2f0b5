#pragma once

#include "shell/visitsession.h"

#include <QTimer>

namespace rhizograph::app {

class QueuedRecord;

/// Looks four times a second whether somebody else wrote to the open visit (findings, plan, acknowledgements
/// of red signs), lets the session show it, and tells where it took the place of what stood here.
class VisitWatch : public QObject {
    Q_OBJECT

public:
    /// `record` may be null where the visit is only read. All outlive the watch.
    VisitWatch(Store& store, VisitSession& session, QueuedRecord* record);

signals:
    void overwritten(const QString& text);
    /// The visit was signed, or the role of who is signed in is another now: what may be changed has to be
    /// judged anew. Until then the session takes nothing more.
    void judgementDue();

private:
    void look();
    void show(const std::vector<FindingEvent>& events);
    void showPlan(const QString& plan);
    void showAcknowledgements(std::vector<RedSignAcknowledgement> all);
    void judge(VisitState state);

    Store& store_;
    VisitSession& session_;
    QueuedRecord* record_;
    QTimer timer_;
    std::int64_t counter_ = -1;
    int seen_ = 0;             ///< number of the last event looked at
    std::optional<Role> role_; ///< when the visit was opened
};

} // namespace rhizograph::app
