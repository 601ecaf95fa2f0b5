#pragma once

#include "base/problem.h"

#include <functional>
#include <memory>
#include <QObject>
#include <QThread>

namespace rhizograph::app {

/// Runs one piece of slow work (deriving a key) beside the user interface and hands its outcome back on the
/// caller's thread. Who calls must leave alone what the work uses until then.
class OffThread : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;
    ~OffThread() override; ///< waits for the work; its outcome is then dropped

    [[nodiscard]] bool busy() const { return thread_ != nullptr; }
    /// Precondition: not busy.
    void run(std::function<Outcome()> work, std::function<void(const Outcome&)> done);

private:
    std::unique_ptr<QThread> thread_;
};

} // namespace rhizograph::app
