#pragma once

#include "base/problem.h"
#include "record/store.h"

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>

namespace rhizograph {

/// Writes changes to the record on a thread of its own, in order, each in its own durable transaction, and
/// acknowledges each one only after its commit. When a write fails for a reason that may pass (disk full,
/// locked, read-only, damaged) nothing is dropped: the queue is kept and reported until retry() succeeds or
/// the changes are saved elsewhere. A change the record refuses (signed visit, not allowed) is reported and
/// left out.
class RecordWriter {
public:
    using Ticket = std::uint64_t; ///< counts from 1

    struct Report {
        Ticket ticket = 0;
        Outcome outcome; ///< ok: on disk
        Failure failure = Failure::none;
        std::size_t waiting = 0; ///< changes not on disk, this one included when it is kept
        std::string savedUntil;  ///< UTC of the last commit, empty when there was none yet
        [[nodiscard]] bool kept() const { return failure != Failure::none && failure != Failure::refused; }
    };
    /// Called on the writer's thread; must not call back into the writer other than waiting().
    using Callback = std::function<void(const Report&)>;

    /// Takes over a signed-in store, usually from Store::duplicate().
    RecordWriter(std::unique_ptr<Store> store, Callback report, Clock clock = systemClock());
    /// Tries once more to write what waits, then stops. Ask waiting() and saveCopy() before, when it matters.
    ~RecordWriter();
    RecordWriter(const RecordWriter&) = delete;
    RecordWriter& operator=(const RecordWriter&) = delete;

    /// Hands a change over and returns at once.
    Ticket write(UnsavedChange change);
    /// Tries what waits again, after a failure.
    void retry();
    /// Waits until nothing waits (true), or until a failure holds the queue up or the time is over (false).
    bool flush(std::chrono::milliseconds limit);
    [[nodiscard]] std::size_t waiting() const;
    /// Writes what is not on disk to a sealed file (see Store::saveUnsaved); the queue is kept all the same.
    Outcome saveCopy(const std::filesystem::path& file);

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace rhizograph
