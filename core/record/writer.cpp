#include "record/writer.h"

#include <condition_variable>
#include <deque>
#include <future>
#include <mutex>
#include <thread>
#include <utility>

namespace rhizograph {
namespace {

/// How long to leave a failing record alone before trying again unasked.
constexpr std::chrono::seconds retryPause{5};

struct Pending {
    RecordWriter::Ticket ticket;
    UnsavedChange change;
};

struct CopyOrder {
    std::filesystem::path file;
    std::promise<Outcome> done;
};

Outcome writeTo(Store& store, const UnsavedChange& change) {
    struct Writing {
        Store& store;
        const VisitId& visit;
        Outcome operator()(const std::vector<FindingChange>& c) const { return store.record(visit, c); }
        Outcome operator()(const PlanChange& c) const { return store.setPlan(visit, c.text); }
        Outcome operator()(const NoteAdded& c) const { return store.addNote(visit, c.text); }
        Outcome operator()(const SignAcknowledged& c) const {
            return store.acknowledge(visit, c.sign, c.urgency);
        }
        Outcome operator()(const OpenRedSigns& c) const { return store.setOpenRedSigns(visit, c.count); }
        Outcome operator()(const WorseFindings& c) const { return store.setWorse(visit, c.count); }
    };
    return std::visit(Writing{store, change.visit}, change.what);
}

} // namespace

struct RecordWriter::State {
    State(std::unique_ptr<Store> s, Callback r, Clock c)
        : store(std::move(s)), report(std::move(r)), clock(std::move(c)) {}

    void run(const std::stop_token& stop);
    void writeFirst(std::unique_lock<std::mutex>& lock);
    void copyUnsaved(std::unique_lock<std::mutex>& lock);
    [[nodiscard]] bool mayWrite() const { return !queue.empty() && !held; }

    std::unique_ptr<Store> store; // the thread's alone
    Callback report;
    Clock clock;
    mutable std::mutex mutex; // guards what follows
    std::condition_variable_any wake;
    std::condition_variable settled;
    std::deque<Pending> queue;
    std::deque<CopyOrder> copies;
    Ticket lastTicket = 0;
    bool held = false; ///< the first in the queue failed; waiting for a retry
    Failure heldBy = Failure::none;
    std::string savedUntil;
    std::jthread thread; // last: it uses all of the above
};

void RecordWriter::State::run(const std::stop_token& stop) {
    std::unique_lock lock{mutex};
    while (!stop.stop_requested()) {
        const bool work =
            wake.wait_for(lock, stop, retryPause, [this] { return mayWrite() || !copies.empty(); });
        if (!work) held = false;
        if (!copies.empty())
            copyUnsaved(lock);
        else if (mayWrite())
            writeFirst(lock);
    }
    held = false;
    while (!copies.empty())
        copyUnsaved(lock);
    while (mayWrite())
        writeFirst(lock);
}

void RecordWriter::State::writeFirst(std::unique_lock<std::mutex>& lock) {
    const Pending& first = queue.front(); // stays in place while unlocked: only this thread removes
    lock.unlock();
    Outcome outcome = writeTo(*store, first.change);
    const Failure failure = outcome ? Failure::none : store->lastFailure();
    lock.lock();
    Report news{first.ticket, std::move(outcome), failure, 0, {}};
    // Unasked retries that fail as before are no news.
    const bool tell = !news.kept() || failure != heldBy;
    held = news.kept();
    heldBy = held ? failure : Failure::none;
    if (failure == Failure::none) savedUntil = utcText(clock());
    if (!held) queue.pop_front();
    news.waiting = queue.size();
    news.savedUntil = savedUntil;
    lock.unlock();
    if (tell && report) report(news);
    lock.lock();
    settled.notify_all();
}

void RecordWriter::State::copyUnsaved(std::unique_lock<std::mutex>& lock) {
    CopyOrder order = std::move(copies.front());
    copies.pop_front();
    std::vector<UnsavedChange> changes;
    for (const Pending& pending : queue)
        changes.push_back(pending.change);
    lock.unlock();
    order.done.set_value(store->saveUnsaved(order.file, changes));
    lock.lock();
}

RecordWriter::RecordWriter(std::unique_ptr<Store> store, Callback report, Clock clock)
    : state_(std::make_unique<State>(std::move(store), std::move(report), std::move(clock))) {
    state_->thread = std::jthread([state = state_.get()](const std::stop_token& stop) { state->run(stop); });
}

RecordWriter::~RecordWriter() {
    state_->thread.request_stop();
    state_->thread.join();
}

RecordWriter::Ticket RecordWriter::write(UnsavedChange change) {
    const std::scoped_lock lock{state_->mutex};
    state_->queue.push_back({++state_->lastTicket, std::move(change)});
    state_->wake.notify_one();
    return state_->lastTicket;
}

void RecordWriter::retry() {
    const std::scoped_lock lock{state_->mutex};
    state_->held = false;
    state_->heldBy = Failure::none;
    state_->wake.notify_one();
}

bool RecordWriter::flush(std::chrono::milliseconds limit) {
    std::unique_lock lock{state_->mutex};
    state_->settled.wait_for(lock, limit, [this] { return state_->queue.empty() || state_->held; });
    return state_->queue.empty();
}

std::size_t RecordWriter::waiting() const {
    const std::scoped_lock lock{state_->mutex};
    return state_->queue.size();
}

Outcome RecordWriter::saveCopy(const std::filesystem::path& file) {
    std::future<Outcome> done;
    {
        const std::scoped_lock lock{state_->mutex};
        state_->copies.push_back({file, {}});
        done = state_->copies.back().done.get_future();
        state_->wake.notify_one();
    }
    return done.get();
}

} // namespace rhizograph
