#include "window/clinic.h"

#include "reasoning/rulebook.h"

#include <cstdlib>

namespace rhizograph::app {

namespace fs = std::filesystem;

fs::path resourceFolder() {
    if (const char* set = std::getenv("RHIZOGRAPH_RESOURCES"); set != nullptr && *set != '\0') return set;
    std::error_code error;
    return fs::read_symlink("/proc/self/exe", error).parent_path().parent_path() / "share" / "rhizograph";
}

Result<Materials> Materials::load(const fs::path& resources) {
    auto knowledge = Knowledge::load(resources / "knowledge");
    auto art = FigureArt::load(resources / "figures");
    if (!knowledge) {
        Problems problems = knowledge.problems();
        if (!art) problems.insert(problems.end(), art.problems().begin(), art.problems().end());
        return problems;
    }
    auto howTos = HowTos::load(resources / "knowledge" / "howto.json", knowledge->catalogue());
    if (art.ok() && howTos.ok())
        return Materials{std::move(*knowledge), std::make_shared<const FigureArt>(std::move(*art)),
                         std::make_shared<const HowTos>(std::move(*howTos))};
    Problems problems;
    if (!howTos) problems = howTos.problems();
    if (!art) problems.insert(problems.end(), art.problems().begin(), art.problems().end());
    return problems;
}

PromisedMaterials loadMaterials(const fs::path& resources) {
    return std::async(std::launch::deferred, [resources] { return Materials::load(resources); }).share();
}

PromisedMaterials promised(Result<Materials> materials) {
    std::promise<Result<Materials>> kept;
    kept.set_value(std::move(materials));
    return kept.get_future().share();
}

namespace {

/// Adds the visits before this one: what it is compared with.
Outcome addEarlier(Store& store, VisitSession::Start& start) {
    auto visits = store.visitsOf(start.visit.patient);
    if (!visits) return visits.problems();
    std::vector<Exam> earlier;
    for (const Visit& visit : *visits) {
        if (visit.number >= start.visit.number) continue;
        auto exam = store.exam(visit.id);
        if (!exam) return exam.problems();
        earlier.push_back(std::move(*exam));
        start.previousVisit = visit;
    }
    if (earlier.empty()) return {};
    start.previous = carriedForward(earlier);
    start.previous->date = start.previousVisit->date;
    return {};
}

Result<VisitSession::Start> startOf(Store& store, const VisitId& id, bool onlyRead) {
    VisitSession::Start start;
    const auto user = store.signedIn();
    if (!user) return Problem{{}, {}, "Nobody is signed in."};
    auto visit = store.visit(id);
    if (!visit) return visit.problems();
    auto patient = store.patient(visit->patient);
    if (!patient) return patient.problems();
    auto exam = store.exam(id);
    if (!exam) return exam.problems();
    auto acknowledgements = store.acknowledgements(id);
    if (!acknowledgements) return acknowledgements.problems();
    auto plan = store.plan(id);
    if (!plan) return plan.problems();
    start.visit = std::move(*visit);
    start.patient = std::move(*patient);
    start.exam = std::move(*exam);
    start.acknowledgements = std::move(*acknowledgements);
    start.plan = QString::fromStdString(*plan);
    start.userName = QString::fromStdString(user->name);
    start.readOnly = onlyRead || start.visit.state == VisitState::signedOff ||
                     !allows(user->role, Permission::recordFindings);
    start.rights = {allows(user->role, Permission::acknowledgeSigns),
                    allows(user->role, Permission::writePlan), allows(user->role, Permission::sign)};
    if (auto outcome = addEarlier(store, start); !outcome) return outcome.problems();
    return start;
}

/// Reads the whole past of a finding, after what is still waiting to be written.
FindingPast pastOf(Store& store, const PatientId& patient, QueuedRecord* record) {
    return [&store, patient, record](const FindingKey& key) -> Result<std::vector<PastValue>> {
        if (record != nullptr) record->flush(std::chrono::seconds{1});
        auto visits = store.visitsOf(patient);
        if (!visits) return visits.problems();
        std::vector<PastValue> out;
        for (auto visit = visits->rbegin(); visit != visits->rend(); ++visit) {
            auto events = store.history(visit->id, key);
            if (!events) return events.problems();
            for (auto event = events->rbegin(); event != events->rend(); ++event)
                out.push_back({*visit, std::move(*event)});
        }
        return out;
    };
}

} // namespace

Result<OpenVisit> openVisit(Store& store, const Knowledge& knowledge, const VisitId& id, bool onlyRead) {
    auto start = startOf(store, id, onlyRead);
    if (!start) return start.problems();
    OpenVisit open;
    if (!start->readOnly) {
        auto second = store.duplicate();
        if (!second) return second.problems();
        open.record = std::make_unique<QueuedRecord>(std::move(second).value());
    }
    // Looking at a patient is part of the record's own history.
    if (auto outcome = store.log(AuditAction::opened, id.text(), {}); !outcome) return outcome.problems();
    start->past = pastOf(store, start->patient.id, open.record.get());
    open.session = std::make_unique<VisitSession>(knowledge, std::move(start).value(), open.record.get());
    return open;
}

} // namespace rhizograph::app
