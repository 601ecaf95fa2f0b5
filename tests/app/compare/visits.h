#pragma once

#include "record/store.h"
#include "shell/visitsession.h"

#include <memory>
#include <QTemporaryDir>
#include <stdexcept>

namespace rhizograph::app {

template <class T> T taken(Result<T> result) {
    if (!result) throw std::runtime_error(result.problems().front().text());
    return std::move(result).value();
}

inline void held(const Outcome& outcome) {
    if (!outcome) throw std::runtime_error(outcome.problems().front().text());
}

inline const Knowledge& knowledge() {
    static const Knowledge loaded =
        taken(Knowledge::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "knowledge"));
    return loaded;
}

/// A clinic of its own with one invented patient and as many visits as dates; the last one is open.
class Course {
public:
    explicit Course(const std::vector<std::pair<std::string, std::vector<FindingChange>>>& visits) {
        const auto file = std::filesystem::path(folder_.filePath("clinic.rhizo").toStdString());
        ClinicOptions options;
        options.cost = KeyCost::cheapest();
        held(createClinic(file, "Hillside Clinic", {"Head", Role::administrator, "long enough"}, options));
        store = taken(openClinic(file, options));
        held(store->signIn(taken(store->users()).front().id, "long enough"));
        const User clinician = taken(store->addUser("Clinician Two", Role::clinician, "long enough"));
        store->signOut();
        held(store->signIn(clinician.id, "long enough"));
        const Patient patient =
            taken(store->addPatient({"Quillon Fernwhistle", "00417", "1974-03-02", "male", "", ""}));
        VisitSession::Start start;
        start.patient = patient;
        for (const auto& [date, findings] : visits) {
            ids.push_back(taken(store->addVisit(patient.id, date)).id);
            if (!findings.empty()) held(store->record(ids.back(), findings));
        }
        start.visit = taken(store->visit(ids.back()));
        start.exam = taken(store->exam(ids.back()));
        session = std::make_unique<VisitSession>(knowledge(), start, nullptr);
    }

    std::unique_ptr<Store> store;
    std::vector<VisitId> ids;
    std::unique_ptr<VisitSession> session;

private:
    QTemporaryDir folder_;
};

inline FindingChange found(const std::string& item, Side side, Value value) {
    return {{ItemId{item}, side}, Finding{std::move(value), false, {}}};
}

} // namespace rhizograph::app
