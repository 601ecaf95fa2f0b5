#include "window/visitwatch.h"

#include "language/language.h"
#include "parts/findingwords.h"
#include "window/queuedrecord.h"

#include <algorithm>
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
    if (const auto user = store.signedIn()) role_ = user->role;
    connect(&timer_, &QTimer::timeout, this, &VisitWatch::look);
    if (session.start().visit.state != VisitState::signedOff) timer_.start(betweenLooks);
}

void VisitWatch::look() {
    // What waits here is later than what is there: first it has to be written.
    if (!store_.signedIn() || (record_ != nullptr && record_->waiting() > 0)) return;
    const auto counter = store_.changeCounter();
    if (!counter || *counter == counter_) return;
    const VisitId& id = session_.start().visit.id;
    const auto events = store_.eventsAfter(id, seen_);
    auto plan = store_.plan(id);
    auto acknowledgements = store_.acknowledgements(id);
    const auto visit = store_.visit(id);
    if (!events || !plan || !acknowledgements || !visit) return; // said where something is to be written
    counter_ = *counter;
    if (!events->empty()) seen_ = events->back().number;
    show(*events);
    showPlan(QString::fromStdString(*plan));
    showAcknowledgements(std::move(*acknowledgements));
    judge(visit->state);
}

void VisitWatch::showPlan(const QString& plan) {
    const QString before = session_.plan();
    if (plan == before) return;
    session_.takeOverPlan(plan);
    if (!before.trimmed().isEmpty())
        emit overwritten(tr("Somebody else wrote this plan: “%1” Before, it was: “%2”").arg(plan, before));
}

void VisitWatch::showAcknowledgements(std::vector<RedSignAcknowledgement> all) {
    // One's own were shown when they were given, with this machine's time instead of the record's.
    const auto same = [](const RedSignAcknowledgement& a, const RedSignAcknowledgement& b) {
        return a.sign == b.sign && a.urgency == b.urgency && a.by == b.by;
    };
    if (std::ranges::equal(all, session_.start().acknowledgements, same)) return;
    std::vector<RedSign> open;
    for (const RedSign& sign : session_.assessment().redSigns)
        if (sign.urgency != Urgency::note && !session_.acknowledged(sign)) open.push_back(sign);
    session_.takeOverAcknowledgements(std::move(all));
    const auto& given = session_.start().acknowledgements;
    QStringList told;
    for (const RedSign& sign : open) {
        if (!session_.acknowledged(sign)) continue;
        const auto last = std::find_if(given.rbegin(), given.rend(),
                                       [&](const auto& each) { return each.sign == sign.id; });
        told << tr("%1 Acknowledged by %2.").arg(medical(sign.sentence), QString::fromStdString(last->by));
    }
    if (!told.isEmpty()) emit overwritten(told.join(u' '));
}

void VisitWatch::judge(VisitState state) {
    const auto user = store_.signedIn();
    const bool sealed = state != session_.start().visit.state && state == VisitState::signedOff;
    if (!sealed && user && user->role == role_) return;
    timer_.stop();
    session_.close();
    emit judgementDue();
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
