#pragma once

#include "support/appclinic.h"

#include <cmath>

namespace rhizograph::app::testing {

/// The last visits of invented patients with courses that are hard to draw.
struct Courses {
    VisitId sixty;   ///< two visits a month and more, with treatments in between
    VisitId sameDay; ///< three visits of one day and two years before them
    VisitId crossing;
};

inline std::vector<FindingChange> inventedCourse(int visit) {
    const double wave = 5 + 3 * std::sin(visit / 4.0);
    const char* const grades[] = {"5", "4", "3", "4", "5"};
    std::vector<FindingChange> out{
        number("pain.back", Side::none, std::round(wave)),
        number("pain.leg", Side::left, std::round(10 - wave)),
        number("score.oswestry", Side::none, std::round(60 - visit % 40)),
        number("tension.slr_supine_angle", Side::left, 30 + (visit * 13) % 50),
        number("tension.slr_supine_angle", Side::right, 80),
        word("strength.great_toe_extension", Side::left, grades[visit / 3 % 5]),
        word("strength.great_toe_extension", Side::right, "5"),
        word("touch.great_toe", Side::left, visit % 5 < 2 ? "absent" : "reduced"),
        word("touch.dorsum_central", Side::left, visit % 7 < 4 ? "reduced" : "normal"),
        word("touch.outer_shin", Side::left, visit % 9 < 3 ? "reduced" : "normal")};
    if (visit % 11 == 5) out.erase(out.begin(), out.begin() + 5); // an examination in haste
    return out;
}

inline PatientId newPatient(Store& store, const std::string& name, const std::string& record) {
    return need(store.addPatient({name, record, "1966-08-14", "female", {}, {}})).id;
}

inline void event(Store& store, const PatientId& patient, int onDay, const char* kind, const char* words,
                  bool awaited = false) {
    need(store.writeEvent({{}, patient, day(onDay), kind, words, awaited, {}, {}}));
}

inline VisitId inventSixty(Store& store) {
    const PatientId patient = newPatient(store, "Evergreen Longwalker", "00040");
    VisitId last;
    for (int i = 0; i < 60; ++i) {
        last = need(store.addVisit(patient, day(-900 + i * 15))).id;
        need(store.record(last, inventedCourse(i)));
    }
    event(store, patient, -2000, "surgery", "L4-L5, right");
    event(store, patient, -700, "injection", "L5, left");
    event(store, patient, -690, "therapy_start", "");
    event(store, patient, -655, "injection", "L5, left, again");
    event(store, patient, -400, "surgery", "L4-L5, left");
    event(store, patient, -380, "therapy_start", "after the operation");
    event(store, patient, 40, "follow_up", "", true);
    return last;
}

inline VisitId inventSameDay(Store& store) {
    const PatientId patient = newPatient(store, "Rowan Tidewater", "00052");
    VisitId last;
    for (const int onDay : {-730, -400, 0, 0, 0}) {
        last = need(store.addVisit(patient, day(onDay))).id;
        need(store.record(last, inventedCourse(onDay == 0 ? 7 : -onDay / 100)));
    }
    event(store, patient, 0, "injection", "between the second and the third visit of the day");
    return need(store.visitsOf(patient)).back().id;
}

/// Strength returns on one side while the other side, the back and the skin go the other way; one item of the
/// earlier visit is not examined again.
inline VisitId inventCrossing(Store& store) {
    const PatientId patient = newPatient(store, "Bryony Saltmarsh", "00061");
    const Visit before = need(store.addVisit(patient, day(-28)));
    need(store.record(
        before.id,
        {number("pain.back", Side::none, 3), number("pain.leg", Side::left, 8),
         number("pain.leg", Side::right, 1), word("strength.great_toe_extension", Side::left, "3"),
         word("strength.great_toe_extension", Side::right, "5"),
         word("strength.knee_extension", Side::right, "5"), word("reflex.ankle", Side::left, "0"),
         word("reflex.ankle", Side::right, "2"), word("touch.great_toe", Side::left, "absent"),
         word("touch.dorsum_central", Side::left, "reduced"), word("touch.outer_shin", Side::left, "reduced"),
         word("touch.knee_front", Side::right, "normal"), word("touch.inner_shin", Side::right, "normal"),
         word("touch.calf_posterior", Side::right, "normal"), number("girth.calf", Side::left, 36)}));
    const Visit now = need(store.addVisit(patient, day(0)));
    need(store.record(
        now.id,
        {number("pain.back", Side::none, 7), number("pain.leg", Side::left, 4),
         number("pain.leg", Side::right, 6), word("strength.great_toe_extension", Side::left, "4"),
         word("strength.great_toe_extension", Side::right, "5"),
         word("strength.knee_extension", Side::right, "4"), word("reflex.ankle", Side::left, "1"),
         word("reflex.ankle", Side::right, "2"), word("touch.great_toe", Side::left, "reduced"),
         word("touch.dorsum_central", Side::left, "normal"), word("touch.outer_shin", Side::left, "reduced"),
         word("touch.knee_front", Side::right, "reduced"), word("touch.inner_shin", Side::right, "reduced"),
         word("touch.calf_posterior", Side::right, "reduced")}));
    return now.id;
}

inline Courses inventCourses(Store& store) {
    return {inventSixty(store), inventSameDay(store), inventCrossing(store)};
}

} // namespace rhizograph::app::testing
