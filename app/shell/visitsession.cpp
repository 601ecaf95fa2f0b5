#include "shell/visitsession.h"

#include "compare/compare.h"
#include "language/language.h"
#include "shell/changecommand.h"
#include "shell/recordthread.h"

#include <algorithm>
#include <QDateTime>

namespace rhizograph::app {
namespace {

std::optional<Finding> findingAt(const Exam& exam, const FindingKey& key) {
    const Finding* found = exam.find(key);
    return found != nullptr ? std::optional{*found} : std::nullopt;
}

/// The last change of each key, in order, without those that leave the exam as it is.
std::vector<FindingChange> effective(const Exam& exam, std::vector<FindingChange> changes) {
    std::vector<FindingChange> out;
    for (FindingChange& change : changes) {
        std::erase_if(out, [&](const FindingChange& earlier) { return earlier.key == change.key; });
        if (findingAt(exam, change.key) != change.finding) out.push_back(std::move(change));
    }
    return out;
}

QString stepText(const Catalogue& catalogue, const FindingKey& key, const std::optional<Value>& value) {
    const Item* item = catalogue.find(key.item);
    if (item == nullptr) return {};
    QString text = medical(item->label);
    if (key.side == Side::right) text += ", " + VisitSession::tr("right");
    if (key.side == Side::left) text += ", " + VisitSession::tr("left");
    return text + ": " + (value ? medical(display(item->scale, *value)) : VisitSession::tr("cleared"));
}

} // namespace

QString urgencyWord(Urgency urgency) {
    switch (urgency) {
    case Urgency::emergency:
        return QStringLiteral("emergency");
    case Urgency::urgent:
        return QStringLiteral("urgent");
    case Urgency::note:
        break;
    }
    return QStringLiteral("note");
}

VisitSession::VisitSession(Knowledge knowledge, Start start, RecordThread* record, QObject* parent)
    : QObject(parent), knowledge_(std::move(knowledge)), start_(std::move(start)), exam_(start_.exam),
      openRedSigns_(start_.visit.openRedSigns), worse_(start_.visit.worse), record_(record) {
    if (record_ != nullptr) {
        connect(record_, &RecordThread::saved, this, &VisitSession::saved);
        connect(record_, &RecordThread::failed, this, &VisitSession::saveFailed);
    }
    reassess();
}

VisitSession::~VisitSession() = default;

void VisitSession::change(const QString& text, std::vector<FindingChange> changes) {
    if (start_.readOnly) return;
    std::vector<FindingChange> after = effective(exam_, std::move(changes));
    if (after.empty()) return;
    std::vector<FindingChange> before;
    for (const FindingChange& each : after)
        before.push_back({each.key, findingAt(exam_, each.key)});
    undo_.push(std::make_unique<ChangeCommand>(*this, text, std::move(after), std::move(before)).release());
}

void VisitSession::tap(const FindingKey& key, const Value& value) {
    const Finding* now = exam_.find(key);
    // A press on a value filled in bulk confirms it by hand; only a second press of one's own clears.
    if (now != nullptr && now->value == value && !now->bulk) {
        change(stepText(catalogue(), key, std::nullopt), {{key, std::nullopt}});
        return;
    }
    Finding next{value, false, now != nullptr ? now->note : std::string{}};
    change(stepText(catalogue(), key, value), {{key, std::move(next)}});
}

void VisitSession::restNormal(const QString& text, const std::vector<const Item*>& items) {
    std::vector<FindingChange> changes;
    for (const Item* item : items) {
        const std::optional<Value> normal = normalValue(item->scale);
        if (!normal) continue;
        for (const FindingKey& key : keysOf(*item))
            if (exam_.find(key) == nullptr) changes.push_back({key, Finding{*normal, true, {}}});
    }
    change(text, std::move(changes));
}

void VisitSession::setPlan(const QString& text) {
    if (!mayPlan() || text == start_.plan) return;
    start_.plan = text;
    if (record_ != nullptr) record_->setPlan(start_.visit.id, text);
    emit planChanged();
}

void VisitSession::acknowledge(const QString& sign, const QString& urgency) {
    if (!mayAcknowledge()) return;
    start_.acknowledgements.push_back({sign.toStdString(), urgency.toStdString(),
                                       start_.userName.toStdString(),
                                       QDateTime::currentDateTimeUtc().toString(Qt::ISODate).toStdString()});
    if (record_ != nullptr) record_->acknowledge(start_.visit.id, sign, urgency);
    countOpenRedSigns();
    emit acknowledgementsChanged();
}

bool VisitSession::acknowledged(const RedSign& sign) const {
    const auto covers = [&](const RedSignAcknowledgement& given) {
        if (given.sign != sign.id) return false;
        for (const Urgency urgency : {Urgency::note, Urgency::urgent, Urgency::emergency})
            if (urgencyWord(urgency).toStdString() == given.urgency) return urgency >= sign.urgency;
        return false;
    };
    return std::any_of(start_.acknowledgements.begin(), start_.acknowledgements.end(), covers);
}

void VisitSession::apply(const std::vector<FindingChange>& changes) {
    const std::vector<FindingKey> keys = put(changes);
    if (record_ != nullptr) record_->record(start_.visit.id, changes);
    show(keys);
}

void VisitSession::takeOver(const std::vector<FindingChange>& changes) {
    if (changes.empty()) return;
    const std::vector<FindingKey> keys = put(changes);
    for (int step = 0; step < undo_.count(); ++step) {
        const auto* command = dynamic_cast<const ChangeCommand*>(undo_.command(step));
        if (command == nullptr || !command->concerns(keys)) continue;
        undo_.clear();
        break;
    }
    show(keys);
}

void VisitSession::takeOverPlan(const QString& text) {
    if (text == start_.plan) return;
    start_.plan = text;
    emit planChanged();
}

void VisitSession::takeOverAcknowledgements(std::vector<RedSignAcknowledgement> all) {
    start_.acknowledgements = std::move(all);
    countOpenRedSigns();
    emit acknowledgementsChanged();
}

void VisitSession::close() {
    start_.readOnly = true;
    undo_.clear();
}

std::vector<FindingKey> VisitSession::put(const std::vector<FindingChange>& changes) {
    std::vector<FindingKey> keys;
    for (const FindingChange& each : changes) {
        if (each.finding)
            exam_.set(each.key, *each.finding);
        else
            exam_.clear(each.key);
        keys.push_back(each.key);
    }
    return keys;
}

void VisitSession::show(const std::vector<FindingKey>& keys) {
    reassess();
    emit findingsChanged(keys);
    emit assessed();
}

void VisitSession::reassess() {
    assessment_ = assess(exam_, knowledge_, previous());
    bringForward();
    countOpenRedSigns();
    countWorse();
}

void VisitSession::bringForward() {
    for (const auto& [key, finding] : exam_.findings())
        forward_.insert(key.item);
    if (previous() != nullptr)
        for (const auto& [key, finding] : previous()->findings())
            forward_.insert(key.item);
    for (const NextTest& next : assessment_.nextTests)
        forward_.insert(next.test.item);
    for (const FindingKey& key : assessment_.notAsked)
        forward_.insert(key.item);
}

bool VisitSession::everyday(const Item& item) const {
    return item.tier == Tier::core ? !places_.behindMore.contains(item.id) : places_.atOnce.contains(item.id);
}

bool VisitSession::shows(const Item& item) const {
    return everyday(item) || forward_.contains(item.id);
}

std::vector<const Item*> VisitSession::shown(const StepId& step) const {
    std::vector<const Item*> out;
    for (const Item& item : catalogue().items())
        if (item.step == step && shows(item)) out.push_back(&item);
    return out;
}

void VisitSession::countOpenRedSigns() {
    const auto open = [this](const RedSign& sign) {
        return sign.urgency != Urgency::note && !acknowledged(sign);
    };
    const auto& signs = assessment_.redSigns;
    const int count = static_cast<int>(std::count_if(signs.begin(), signs.end(), open));
    if (count == openRedSigns_ || start_.readOnly) return;
    openRedSigns_ = count;
    if (record_ != nullptr) record_->setOpenRedSigns(start_.visit.id, count);
}

/// For the list of the whole clinic, which cannot compare every patient's visits itself.
void VisitSession::countWorse() {
    if (start_.readOnly || record_ == nullptr) return;
    const int count = previous() == nullptr ? 0 : worseCount(compareVisits(*previous(), exam_, knowledge_));
    if (count == worse_) return;
    worse_ = count;
    record_->setWorse(start_.visit.id, count);
}

std::vector<FindingKey> keysOf(const Item& item) {
    if (item.sided) return {{item.id, Side::right}, {item.id, Side::left}};
    return {{item.id, Side::none}};
}

std::optional<Value> normalValue(const Scale& scale) {
    if (scale.normal) return Value::token(*scale.normal);
    if (scale.normalNumber) return Value::number(*scale.normalNumber);
    return std::nullopt;
}

} // namespace rhizograph::app
