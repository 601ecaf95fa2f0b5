#include "window/visitwatch.h"

#include "parts/findingwords.h"
#include "window/queuedrecord.h"

#include <map>

namespace rhizograph::app {
namespace {

constexpr std::chrono::milliseconds betweenLooks{250};

QString valueOr(const Item& item, const std::optional<Finding>& finding) {
    return finding ? valueWords(item, finding->value) : VisitWatch::tr("nothing recorded");
}

} // namespace

VisitWatch::VisitWatch(Store& store, VisitSession& session, QueuedRecord* record)
    : store_(store), session_(session), record_(record) {
    connect(&timer_, &QTimer::timeout, this, &VisitWatch::look);
    if (session.start().visit.state != VisitState::signedOff) timer_.start(betweenLooks);
}

void VisitWatch::look() {
    // What waits here is later than what is there: first it has to be written.
    if (!store_.signedIn() || (record_ != nullptr && record_->waiting() > 0)) return;
    const auto counter = store_.changeCounter();
    if (!counter || *counter == counter_) return;
    const auto events = store_.eventsAfter(session_.start().visit.id, seen_);
    if (!events) return; // said where something is to be written
    counter_ = *counter;
    if (!events->empty()) seen_ = events->back().number;
    show(*events);
}

void VisitWatch::show(const std::vector<FindingEvent>& events) {
    std::map<FindingKey, const FindingEvent*> last;
    for (const FindingEvent& event : events)
        last[event.key] = &event;
    std::vector<FindingChange> changes;
    QStringList told;
    for (const auto& [key, event] : last) {
        const Finding* here = session_.exam().find(key);
        const std::optional<Finding> before = here != nullptr ? std::optional{*here} : std::nullopt;
        if (event->here || before == event->finding) continue;
        changes.push_back({key, event->finding});
        const Item* item = session_.catalogue().find(key.item);
        // A new value in an empty place contradicts nobody.
        if (before && item != nullptr)
            told << tr("%1: %2 (was %3), by %4")
                        .arg(itemWords(session_.catalogue(), key), valueOr(*item, event->finding),
                             valueOr(*item, before), QString::fromStdString(event->by));
    }
    session_.takeOver(changes);
    if (!told.isEmpty())
        emit overwritten(tr("Changed by somebody else. %1").arg(told.join(QStringLiteral("; "))));
}

} // namespace rhizograph::app
