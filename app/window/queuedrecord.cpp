#include "window/queuedrecord.h"

#include "patients/words.h"

namespace rhizograph::app {

QueuedRecord::QueuedRecord(std::unique_ptr<Store> store, QObject* parent) : RecordThread(parent) {
    // The report comes on the writer's thread; what it says is heard on this one.
    const auto report = [this](const RecordWriter::Report& news) {
        QMetaObject::invokeMethod(
            this, [this, news] { hear(news); }, Qt::QueuedConnection);
    };
    writer_ = std::make_unique<RecordWriter>(std::move(store), report);
}

QueuedRecord::~QueuedRecord() = default;

void QueuedRecord::record(const VisitId& visit, const std::vector<FindingChange>& changes) {
    write({visit, changes});
}

void QueuedRecord::setPlan(const VisitId& visit, const QString& text) {
    write({visit, PlanChange{text.toStdString()}});
}

void QueuedRecord::acknowledge(const VisitId& visit, const QString& sign, const QString& urgency) {
    write({visit, SignAcknowledged{sign.toStdString(), urgency.toStdString()}});
}

void QueuedRecord::setOpenRedSigns(const VisitId& visit, int count) {
    write({visit, OpenRedSigns{count}});
}

void QueuedRecord::setWorse(const VisitId& visit, int count) {
    write({visit, WorseFindings{count}});
}

void QueuedRecord::write(UnsavedChange change) {
    writer_->write(std::move(change));
    emit handedOver();
}

void QueuedRecord::hear(const RecordWriter::Report& report) {
    savedUntil_ = QString::fromStdString(report.savedUntil);
    failing_ = report.kept();
    if (failing_) {
        emit failed(reasonText(report.outcome.problems()));
        return;
    }
    if (!report.outcome) emit refused(reasonText(report.outcome.problems()));
    if (report.waiting == 0) emit saved();
}

} // namespace rhizograph::app
