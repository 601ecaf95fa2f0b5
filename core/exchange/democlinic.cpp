#include "exchange/democlinic.h"

#include "base/json.h"

#include <algorithm>
#include <map>
#include <memory>
#include <system_error>

namespace rhizograph {
namespace {

using std::chrono::days;
using std::chrono::hours;
using std::chrono::minutes;

/// One visit as the data file has it, checked against the catalogue.
struct PlannedVisit {
    int daysAgo = 0;
    VisitState state = VisitState::signedOff;
    std::vector<FindingChange> nurse;  ///< in the order of the examination
    std::vector<FindingChange> doctor; ///< likewise
    std::string plan;
    std::string addendum;
    bool acknowledge = false;
};

struct PlannedPatient {
    Identity identity;
    std::vector<PlannedVisit> visits;
};

struct Plan {
    DemoClinic clinic;
    std::vector<PlannedPatient> patients;
};

/// Reads the data file; every problem at once.
class PlanReader {
public:
    PlanReader(const JsonNode& root, const Catalogue& catalogue, TimePoint today)
        : root_(root), catalogue_(catalogue), today_(today) {}

    Plan read() {
        root_.onlyKeys({"format", "version", "note", "clinic", "passphrase", "nurse_step", "users", "sheets",
                        "patients"});
        if (root_.at("format").string() != "rhizograph.demo") root_.fail("format is not rhizograph.demo");
        if (root_.at("version").integer() != 1) root_.fail("version is not 1");
        Plan plan;
        plan.clinic.clinic = root_.at("clinic").string();
        plan.clinic.passphrase = root_.at("passphrase").string();
        nurseStep_ = StepId{root_.at("nurse_step").string()};
        for (const JsonNode& user : root_.at("users").items()) {
            const auto role = roleNamed(user.at("role").string());
            if (!role) user.fail("no such role");
            plan.clinic.users.push_back({user.at("name").string(), role.value_or(Role::nurse)});
        }
        for (const Role role : {Role::administrator, Role::nurse, Role::clinician})
            if (std::none_of(plan.clinic.users.begin(), plan.clinic.users.end(),
                             [&](const DemoUser& user) { return user.role == role; }))
                root_.at("users").fail("there is no " + std::string{name(role)});
        for (const JsonNode& patient : root_.at("patients").items())
            plan.patients.push_back(readPatient(patient));
        return plan;
    }

private:
    PlannedPatient readPatient(const JsonNode& node) {
        node.onlyKeys({"name", "record", "years", "sex", "notes", "visits"});
        PlannedPatient out;
        out.identity.name = node.at("name").string();
        out.identity.recordNumber = node.at("record").string();
        out.identity.sex = node.at("sex").string();
        out.identity.notes = node.at("notes").string();
        // Born that many years and half a year ago, so that the age is the same at every visit of the demo's
        // last months.
        out.identity.birthDate = utcDate(today_ - days{365} * node.at("years").integer() - days{200});
        for (const JsonNode& visit : node.at("visits").items())
            out.visits.push_back(readVisit(visit));
        return out;
    }

    PlannedVisit readVisit(const JsonNode& node) {
        node.onlyKeys({"days_ago", "state", "sheets", "findings", "plan", "addendum", "acknowledge"});
        PlannedVisit out;
        out.daysAgo = node.at("days_ago").integer();
        out.state = state(node.at("state"));
        if (const auto plan = node.find("plan")) out.plan = plan->string();
        if (const auto addendum = node.find("addendum")) out.addendum = addendum->string();
        if (const auto acknowledge = node.find("acknowledge")) out.acknowledge = acknowledge->boolean();
        std::map<FindingKey, Finding> findings;
        for (const JsonNode& sheet : node.at("sheets").items())
            for (const JsonNode& item : root_.at("sheets").at(sheet.string()).items())
                addNormal(item, findings);
        for (const auto& [key, value] : node.at("findings").members())
            addFinding(key, value, findings);
        sort(findings, out);
        return out;
    }

    static VisitState state(const JsonNode& node) {
        static const std::map<std::string, VisitState> words = {{"intake", VisitState::intake},
                                                                {"in_room", VisitState::inRoom},
                                                                {"to_review", VisitState::toReview},
                                                                {"signed", VisitState::signedOff}};
        const auto found = words.find(node.string());
        if (found == words.end()) node.fail("no such state");
        return found == words.end() ? VisitState::intake : found->second;
    }

    void addNormal(const JsonNode& node, std::map<FindingKey, Finding>& findings) const {
        const Item* item = catalogue_.find(node.string());
        if (item == nullptr || !item->scale.normal) return node.fail("no item with a normal value");
        for (const Side side : {Side::none, Side::left, Side::right})
            if (item->sided == (side != Side::none))
                findings.insert_or_assign({item->id, side},
                                          Finding{Value::token(*item->scale.normal), true, {}});
    }

    /// "item" or "item side".
    void addFinding(const std::string& words, const JsonNode& node,
                    std::map<FindingKey, Finding>& findings) const {
        const std::size_t space = words.find(' ');
        const auto side = space == std::string::npos ? Side::none : sideNamed(words.substr(space + 1));
        const FindingKey key{ItemId{words.substr(0, space)}, side.value_or(Side::none)};
        const Item* item = catalogue_.find(key.item);
        if (item == nullptr) return node.fail("no such item");
        Value value = node.isNumber()        ? Value::number(node.number())
                      : item->scale.listed() ? Value::token(node.string())
                                             : Value::text(node.string());
        if (const auto wrong = check(catalogue_, key, value)) return node.fail(*wrong);
        findings.insert_or_assign(key, Finding{std::move(value), false, {}});
    }

    void sort(const std::map<FindingKey, Finding>& findings, PlannedVisit& out) const {
        for (const auto& [key, finding] : findings)
            (catalogue_.find(key.item)->step == nurseStep_ ? out.nurse : out.doctor)
                .push_back({key, finding});
        const auto order = [&](const FindingChange& a, const FindingChange& b) {
            return std::pair{catalogue_.order(a.key.item), a.key.side} <
                   std::pair{catalogue_.order(b.key.item), b.key.side};
        };
        std::sort(out.nurse.begin(), out.nurse.end(), order);
        std::sort(out.doctor.begin(), out.doctor.end(), order);
    }

    const JsonNode& root_;
    const Catalogue& catalogue_;
    TimePoint today_;
    StepId nurseStep_;
};

/// Lives the planned visits through in the order of time, each step by who does it.
class Rehearsal {
public:
    Rehearsal(std::filesystem::path file, const Plan& plan, const Knowledge& knowledge, TimePoint today)
        : file_(std::move(file)), plan_(plan), knowledge_(knowledge), today_(today) {
        options_.cost = KeyCost::cheapest();
        options_.clock = [time = time_] { return *time; };
    }

    Outcome play() {
        int first = 0;
        for (const PlannedPatient& patient : plan_.patients)
            for (const PlannedVisit& visit : patient.visits)
                first = std::max(first, visit.daysAgo);
        *time_ = startOf(first + 1);
        return found() && openUsers() && playVisits() ? Outcome{} : Outcome{problems_};
    }

private:
    bool take(const Outcome& outcome) {
        if (!outcome) problems_ = outcome.problems();
        return outcome.ok();
    }
    template <class T> bool take(Result<T> result, T& into) {
        if (result)
            into = std::move(result).value();
        else
            problems_ = result.problems();
        return result.ok();
    }

    /// Nine in the morning of a past day; for today an hour ago, so that nothing lies in the future.
    [[nodiscard]] TimePoint startOf(int daysAgo) const {
        if (daysAgo == 0) return today_ - hours{1};
        return std::chrono::floor<days>(today_) - days{daysAgo} + hours{9};
    }

    [[nodiscard]] const DemoUser& user(Role role) const {
        return *std::find_if(plan_.clinic.users.begin(), plan_.clinic.users.end(),
                             [&](const DemoUser& each) { return each.role == role; });
    }

    bool found() {
        return take(createClinic(
                   file_, plan_.clinic.clinic,
                   {user(Role::administrator).name, Role::administrator, plan_.clinic.passphrase},
                   options_)) &&
               take(openClinic(file_, options_), store_);
    }

    bool openUsers() {
        std::vector<User> users;
        if (!take(store_->users(), users)) return false;
        ids_[user(Role::administrator).name] = users.front().id;
        if (!signIn(Role::administrator)) return false;
        for (const DemoUser& each : plan_.clinic.users) {
            if (each.name == user(Role::administrator).name) continue;
            User added;
            if (!take(store_->addUser(each.name, each.role, plan_.clinic.passphrase), added)) return false;
            ids_[each.name] = added.id;
        }
        return true;
    }

    bool signIn(Role role) { return take(store_->signIn(ids_.at(user(role).name), plan_.clinic.passphrase)); }

    bool playVisits() {
        struct Turn {
            const PlannedPatient* patient;
            const PlannedVisit* visit;
        };
        std::vector<Turn> turns;
        for (const PlannedPatient& patient : plan_.patients)
            for (const PlannedVisit& visit : patient.visits)
                turns.push_back({&patient, &visit});
        std::stable_sort(turns.begin(), turns.end(),
                         [](const Turn& a, const Turn& b) { return a.visit->daysAgo > b.visit->daysAgo; });
        return std::all_of(turns.begin(), turns.end(),
                           [&](const Turn& turn) { return play(*turn.patient, *turn.visit); });
    }

    bool play(const PlannedPatient& planned, const PlannedVisit& visit) {
        *time_ = std::max(*time_ + minutes{5}, startOf(visit.daysAgo));
        if (!signIn(Role::nurse)) return false;
        auto& patient = patients_[planned.identity.recordNumber];
        if (patient.id.empty() && !take(store_->addPatient(planned.identity), patient)) return false;
        Visit opened;
        if (!take(store_->addVisit(patient.id, utcDate(*time_)), opened)) return false;
        *time_ += minutes{8};
        if (!take(store_->record(opened.id, visit.nurse))) return false;
        if (visit.state == VisitState::intake) return true;
        return signIn(Role::clinician) && examine(patient, opened, visit);
    }

    bool examine(const Patient& patient, const Visit& opened, const PlannedVisit& visit) {
        *time_ += minutes{7};
        if (!take(store_->setState(opened.id, VisitState::inRoom))) return false;
        *time_ += minutes{6};
        if (!visit.doctor.empty() && !take(store_->record(opened.id, visit.doctor))) return false;
        if (!answerRedSigns(patient, opened, visit.acknowledge)) return false;
        if (!visit.plan.empty() && !take(store_->setPlan(opened.id, visit.plan))) return false;
        *time_ += minutes{3};
        if (visit.state != VisitState::signedOff) return take(store_->setState(opened.id, visit.state));
        if (!take(store_->sign(opened.id, knowledge_.version()))) return false;
        *time_ += minutes{2};
        return visit.addendum.empty() || take(store_->addAddendum(opened.id, visit.addendum));
    }

    bool answerRedSigns(const Patient& patient, const Visit& visit, bool acknowledge) {
        Exam exam;
        if (!take(store_->exam(visit.id), exam)) return false;
        auto& before = previous_[patient.id];
        int open = 0;
        for (const RedSign& sign : assess(exam, knowledge_, before.get()).redSigns) {
            if (sign.urgency == Urgency::note) continue;
            if (!acknowledge)
                ++open;
            else if (!take(store_->acknowledge(visit.id, sign.id,
                                               sign.urgency == Urgency::urgent ? "urgent" : "emergency")))
                return false;
        }
        before = std::make_unique<Exam>(exam);
        return take(store_->setOpenRedSigns(visit.id, open));
    }

    std::filesystem::path file_;
    const Plan& plan_;
    const Knowledge& knowledge_;
    TimePoint today_;
    std::shared_ptr<TimePoint> time_ = std::make_shared<TimePoint>();
    ClinicOptions options_;
    std::unique_ptr<Store> store_;
    std::map<std::string, UserId> ids_;
    std::map<std::string, Patient> patients_;
    std::map<PatientId, std::unique_ptr<Exam>> previous_;
    Problems problems_;
};

} // namespace

Result<DemoClinic> createDemoClinic(const std::filesystem::path& file, const std::filesystem::path& data,
                                    const Knowledge& knowledge, TimePoint today) {
    std::error_code error;
    if (std::filesystem::exists(std::filesystem::symlink_status(file, error)))
        return Problem{file.string(), "", "exists already; a demo clinic takes a new file"};
    const auto json = readJsonFile(data);
    if (!json) return json.problems();
    Problems problems;
    const JsonNode root{*json, data.string(), problems};
    Plan plan = PlanReader{root, knowledge.catalogue(), today}.read();
    if (!problems.empty()) return problems;
    Outcome played;
    {
        Rehearsal rehearsal{file, plan, knowledge, today};
        played = rehearsal.play();
    }
    if (!played) {
        for (const char* end : {"", "-wal", "-shm"})
            std::filesystem::remove(file.string() + end, error);
        return played.problems();
    }
    plan.clinic.patients = static_cast<int>(plan.patients.size());
    for (const PlannedPatient& patient : plan.patients)
        plan.clinic.visits += static_cast<int>(patient.visits.size());
    return plan.clinic;
}

} // namespace rhizograph
