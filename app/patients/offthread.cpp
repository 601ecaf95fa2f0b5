#include "patients/offthread.h"

#include <stdexcept>

namespace rhizograph::app {

OffThread::~OffThread() {
    if (thread_ != nullptr) thread_->wait();
}

void OffThread::run(std::function<Outcome()> work, std::function<void(const Outcome&)> done) {
    if (busy()) throw std::logic_error("one piece of work at a time");
    auto outcome = std::make_shared<Outcome>();
    thread_.reset(QThread::create([outcome, work = std::move(work)] { *outcome = work(); }));
    connect(thread_.get(), &QThread::finished, this, [this, outcome, done = std::move(done)] {
        thread_->wait();
        thread_.reset();
        done(*outcome);
    });
    thread_->start();
}

} // namespace rhizograph::app
