#pragma once

#include "record/writer.h"
#include "shell/recordthread.h"

#include <chrono>
#include <filesystem>
#include <memory>

namespace rhizograph::app {

/// Carries the open visit's changes to the record's writer thread and its news back to the screens.
class QueuedRecord final : public RecordThread {
    Q_OBJECT

public:
    /// Takes over a signed-in store of its own (see Store::duplicate).
    explicit QueuedRecord(std::unique_ptr<Store> store, QObject* parent = nullptr);
    ~QueuedRecord() override;

    void record(const VisitId& visit, const std::vector<FindingChange>& changes) override;
    void setPlan(const VisitId& visit, const QString& text) override;
    void acknowledge(const VisitId& visit, const QString& sign, const QString& urgency) override;
    void setOpenRedSigns(const VisitId& visit, int count) override;
    void setWorse(const VisitId& visit, int count) override;

    /// How many changes are not on disk yet.
    [[nodiscard]] std::size_t waiting() const { return writer_->waiting(); }
    /// Whether the last write failed and what was handed over is kept in memory only.
    [[nodiscard]] bool failing() const { return failing_; }
    /// UTC of the last commit; empty before the first.
    [[nodiscard]] const QString& savedUntil() const { return savedUntil_; }
    void retry() { writer_->retry(); }
    /// Waits until everything is on disk; false when it is not by then.
    bool flush(std::chrono::milliseconds limit) { return writer_->flush(limit); }
    Outcome saveCopy(const std::filesystem::path& file) { return writer_->saveCopy(file); }

signals:
    void handedOver();                   ///< a change waits
    void refused(const QString& reason); ///< the record will not take a change; it is left out

private:
    void write(UnsavedChange change);
    void hear(const RecordWriter::Report& report);

    QString savedUntil_;
    bool failing_ = false;
    std::unique_ptr<RecordWriter> writer_;
};

} // namespace rhizograph::app
