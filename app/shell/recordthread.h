#pragma once

#include "record/store.h"

#include <QObject>
#include <QString>
#include <vector>

namespace rhizograph::app {

/// Takes the open visit's changes to the record without making anybody wait. Every call returns at once and
/// keeps its order; the signals tell when all of it is on disk, or why it is not.
class RecordThread : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    virtual void record(const VisitId& visit, const std::vector<FindingChange>& changes) = 0;
    virtual void setPlan(const VisitId& visit, const QString& text) = 0;
    virtual void acknowledge(const VisitId& visit, const QString& sign, const QString& urgency) = 0;
    virtual void setOpenRedSigns(const VisitId& visit, int count) = 0;
    virtual void setWorse(const VisitId& visit, int count) = 0;

signals:
    void saved();                       ///< everything handed over so far is on disk
    void failed(const QString& reason); ///< worded for people; what was handed over is kept in memory
};

} // namespace rhizograph::app
