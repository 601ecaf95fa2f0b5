#include "record/sqlstore.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>

namespace rhizograph {
namespace {

/// Visits of one kind, person by person, the newest last. Each kind has an index of its own, so that only the
/// visits asked for are read, however many the clinic has.
constexpr const char* visitsOfPeople = "select p.person, v.id, v.date, v.open_red_signs, v.worse from visit "
                                       "v join patient p on p.id = v.patient ";
constexpr const char* newestLast = " order by v.date, v.started_at, v.id";
/// What got worse counts until the next visit says otherwise.
constexpr const char* newestOfThePerson =
    " and not exists (select 1 from patient q join visit w on w.patient = q.id where q.person = p.person "
    "and (w.date, w.started_at, w.id) > (v.date, v.started_at, v.id))";
constexpr const char* overdueFollowUps =
    "select p.person, min(e.date) from patient_event e join patient p on p.id = e.patient "
    "where e.awaited = 1 and e.date < $1 and e.removed = 0 "
    "and e.revision = (select max(revision) from patient_event f where f.id = e.id) "
    "and not exists (select 1 from patient q join visit w on w.patient = q.id "
    "where q.person = p.person and w.date >= e.date) group by p.person";

int rank(const Attention& one) {
    return one.redSigns > 0 ? 0 : one.worse > 0 ? 1 : !one.overdueSince.empty() ? 2 : 3;
}

class PracticeReader {
public:
    PracticeReader(sql::Connection& database, const std::string& today)
        : database_(database), today_(today) {}

    Practice read(std::size_t limit) {
        // The later a kind is read, the more its visit is the one to open.
        readVisits("where v.state <> 'signed'",
                   [](Attention& one, const sql::Row&) { ++one.unsignedVisits; });
        readVisits(std::string{"where v.worse > 0"} + newestOfThePerson,
                   [](Attention& one, const sql::Row& row) { one.worse = row.smallInteger(4); });
        readVisits("where v.open_red_signs > 0",
                   [](Attention& one, const sql::Row& row) { one.redSigns += row.smallInteger(3); });
        database_.each(overdueFollowUps, {today_}, [&](const sql::Row& row) {
            byPerson_[row.text(0)].overdueSince = row.text(1);
            return true;
        });
        Practice out = counted();
        std::sort(out.patients.begin(), out.patients.end(), [](const Attention& a, const Attention& b) {
            return std::tuple{rank(a), a.date, a.patient} < std::tuple{rank(b), b.date, b.patient};
        });
        if (out.patients.size() > limit) out.patients.resize(limit);
        for (Attention& one : out.patients)
            if (one.visit.empty()) openNewest(one);
        return out;
    }

private:
    template <class Note> void readVisits(const std::string& condition, const Note& note) {
        database_.each(visitsOfPeople + condition + newestLast, {}, [&](const sql::Row& row) {
            Attention& one = byPerson_[row.text(0)];
            one.visit = VisitId{row.text(1)};
            one.date = row.text(2);
            note(one, row);
            return true;
        });
    }

    Practice counted() {
        Practice out;
        out.patients.reserve(byPerson_.size());
        for (auto& [person, one] : byPerson_) {
            out.withRedSigns += one.redSigns > 0 ? 1 : 0;
            out.withWorse += one.worse > 0 ? 1 : 0;
            out.withOverdue += one.overdueSince.empty() ? 0 : 1;
            out.withUnsigned += one.unsignedVisits > 0 ? 1 : 0;
            one.patient = PatientId{person};
            if (one.date.empty()) one.date = one.overdueSince; // waits since then, for the order
            out.patients.push_back(std::move(one));
        }
        out.all = static_cast<int>(out.patients.size());
        return out;
    }

    /// A follow-up that passed leads to the last visit there was.
    void openNewest(Attention& one) {
        one.date.clear();
        const auto row = database_.first(
            "select v.id, v.date from visit v join patient p on p.id = v.patient where p.person = $1 "
            "order by v.date desc, v.started_at desc, v.id desc",
            {one.patient.text()});
        if (!row) return;
        one.visit = VisitId{row->text(0)};
        one.date = row->text(1);
    }

    sql::Connection& database_;
    std::string today_;
    std::unordered_map<std::string, Attention> byPerson_;
};

} // namespace

Result<Practice> SqlStore::practice(const std::string& today, int limit) {
    return guarded<Practice>([&] {
        require(Permission::reviewPractice);
        if (!isCalendarDate(today)) refuse("What is overdue depends on the day, and this is none.");
        const sql::Transaction moment{*database_, sql::Transaction::Use::reading};
        return PracticeReader{*database_, today}.read(static_cast<std::size_t>(std::max(limit, 0)));
    });
}

} // namespace rhizograph
