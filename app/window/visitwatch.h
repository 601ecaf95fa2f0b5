#pragma once

#include "shell/visitsession.h"

#include <QTimer>

namespace rhizograph::app {

class QueuedRecord;

/// Looks four times a second whether somebody else wrote to the open visit, lets the session show it, and
/// tells where it took the place of what stood here.
class VisitWatch : public QObject {
    Q_OBJECT

public:
    /// `record` may be null where the visit is only read. All outlive the watch.
    VisitWatch(Store& store, VisitSession& session, QueuedRecord* record);

signals:
    void overwritten(const QString& text);

private:
    void look();
    void show(const std::vector<FindingEvent>& events);

    Store& store_;
    VisitSession& session_;
    QueuedRecord* record_;
    QTimer timer_;
    std::int64_t counter_ = -1;
    int seen_ = 0; ///< number of the last event looked at
};

} // namespace rhizograph::app
