#pragma once

#include "exam/exam.h"
#include "reasoning/knowledge.h"
#include "record/store.h"

#include <functional>
#include <memory>
#include <optional>
#include <QObject>
#include <QString>
#include <QUndoStack>
#include <set>
#include <vector>

namespace rhizograph::app {

class RecordThread;

/// A value a finding once had, and the visit it was written in.
struct PastValue {
    Visit visit;
    FindingEvent event;
};
/// Reads every value a finding of the patient ever had, the newest first.
using FindingPast = std::function<Result<std::vector<PastValue>>(const FindingKey&)>;

/// "note", "urgent", "emergency": the words of the record.
[[nodiscard]] QString urgencyWord(Urgency urgency);
/// The findings an item can have: right and left (in that order, as they stand on the screen), or the one.
[[nodiscard]] std::vector<FindingKey> keysOf(const Item& item);
/// The scale's normal value; none where no value is normal.
[[nodiscard]] std::optional<Value> normalValue(const Scale& scale);

/// What a clinic moved between the tiers of the catalogue. Nothing is hidden that was recorded, that a red
/// sign asks for or that the engine suggests.
struct ItemPlaces {
    std::set<ItemId> behindMore; ///< everyday items that wait
    std::set<ItemId> atOnce;     ///< extended items that show
    bool operator==(const ItemPlaces&) const = default;
};

/// The one open visit: exam, assessment, undo stack. Screens hold no state of their own but what is on
/// screen. Every change goes through change(): it is one undo step, is handed to the record's thread and
/// reassessed before the call returns.
class VisitSession : public QObject {
    Q_OBJECT

public:
    /// What the role of who is signed in lets them do besides recording.
    struct Rights {
        bool acknowledge = true;
        bool plan = true;
        bool sign = true; ///< and write addenda once it is signed
    };
    struct Start {
        Patient patient;
        Visit visit;
        Exam exam;
        std::optional<Exam> previous; ///< exam of the visit before, for ghosts and change
        std::optional<Visit> previousVisit;
        std::vector<RedSignAcknowledgement> acknowledgements;
        QString plan;
        QString userName;
        bool readOnly = false;
        Rights rights;
        FindingPast past; ///< empty where there is no record to ask
    };

    /// `record` may be null (nothing is stored then: pictures, tests of single widgets).
    VisitSession(Knowledge knowledge, Start start, RecordThread* record, QObject* parent = nullptr);
    ~VisitSession() override;

    [[nodiscard]] const Knowledge& knowledge() const { return knowledge_; }
    [[nodiscard]] const Catalogue& catalogue() const { return knowledge_.catalogue(); }
    [[nodiscard]] const Start& start() const { return start_; }
    [[nodiscard]] const Exam& exam() const { return exam_; }
    [[nodiscard]] const Exam* previous() const { return start_.previous ? &*start_.previous : nullptr; }
    [[nodiscard]] const Assessment& assessment() const { return assessment_; }
    [[nodiscard]] bool readOnly() const { return start_.readOnly; }
    [[nodiscard]] bool mayAcknowledge() const { return !start_.readOnly && start_.rights.acknowledge; }
    [[nodiscard]] bool mayPlan() const { return !start_.readOnly && start_.rights.plan; }
    [[nodiscard]] bool maySign() const { return !start_.readOnly && start_.rights.sign; }
    [[nodiscard]] QUndoStack& undoStack() { return undo_; }

    /// Where the clinic moved items between what shows at once and what waits behind More.
    void setPlaces(ItemPlaces places) { places_ = std::move(places); }
    /// Whether an item belongs to this clinic's everyday examination.
    [[nodiscard]] bool everyday(const Item& item) const;

    /// One undo step named `text`; changes that change nothing are dropped, and with none left nothing
    /// happens.
    void change(const QString& text, std::vector<FindingChange> changes);
    /// Sets one finding, or clears it when it already holds this value (second tap).
    void tap(const FindingKey& key, const Value& value);
    /// Fills what shows, is unexamined and has a normal value; one undo step, marked as filled in bulk.
    void restNormal(const QString& text, const std::vector<const Item*>& items);

    /// What somebody else wrote to this visit: it shows, and is not written again. Steps of the undo stack
    /// that would take it back are dropped.
    void takeOver(const std::vector<FindingChange>& changes);
    void takeOverPlan(const QString& text);
    void takeOverAcknowledgements(std::vector<RedSignAcknowledgement> all);
    /// Somebody else signed the visit: from now on nothing can be changed.
    void close();

    void setPlan(const QString& text);
    [[nodiscard]] const QString& plan() const { return start_.plan; }
    void acknowledge(const QString& sign, const QString& urgency);
    /// Whether an item shows without being asked for: everyday items, and extended ones that were recorded
    /// now or last time, that the engine suggested, or that a red sign still asks for. Once forward, an item
    /// stays for as long as the visit is open, so that no row vanishes under a finger.
    [[nodiscard]] bool shows(const Item& item) const;
    /// What shows of a step, in the catalogue's order.
    [[nodiscard]] std::vector<const Item*> shown(const StepId& step) const;
    /// Whether this red sign was acknowledged at this urgency or a graver one.
    [[nodiscard]] bool acknowledged(const RedSign& sign) const;

signals:
    void findingsChanged(const std::vector<rhizograph::FindingKey>& keys);
    void assessed(); ///< assessment() is new; panel, rail and figures repaint
    void acknowledgementsChanged();
    void planChanged();
    void saved();                           ///< everything handed over so far is on disk
    void saveFailed(const QString& reason); ///< kept in memory; the strip says so and offers a way out

private:
    friend class ChangeCommand;
    void apply(const std::vector<FindingChange>& changes);
    std::vector<FindingKey> put(const std::vector<FindingChange>& changes);
    void show(const std::vector<FindingKey>& keys);
    void reassess();
    void countOpenRedSigns();
    void countWorse();
    void bringForward();

    Knowledge knowledge_;
    Start start_;
    Exam exam_;
    Assessment assessment_;
    QUndoStack undo_;
    ItemPlaces places_;
    std::set<ItemId> forward_; ///< extended items that came forward
    int openRedSigns_ = 0;     ///< as last handed to the record
    int worse_ = 0;            ///< the same: findings worse than at the visits before
    RecordThread* record_;
};

} // namespace rhizograph::app
