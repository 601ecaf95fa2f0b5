#pragma once

#include "support/appclinic.h"

namespace rhizograph::app::testing {

/// What the nurse asked: a left leg that hurts below the knee, everything else denied.
inline std::vector<FindingChange> inventedIntake() {
    std::vector<FindingChange> out{
        {{ItemId{"history.complaint"}, Side::none},
         Finding{Value::text("Left leg since carrying a harmonium up the stairs"), false, {}}},
        number("history.duration_weeks", Side::none, 8),
        word("history.onset", Side::none, "after_lifting"),
        word("history.onset_speed", Side::none, "hours_days"),
        word("history.back_pain", Side::none, "yes"),
        word("history.leg_pain", Side::left, "yes"),
        word("history.leg_pain", Side::right, "no"),
        word("history.course", Side::none, "worsening"),
        number("pain.back", Side::none, 4),
        number("pain.leg", Side::left, 7),
        number("pain.leg", Side::right, 0),
        word("history.leg_pain_below_knee", Side::left, "yes"),
        word("history.leg_tingling", Side::left, "yes"),
        word("history.weakness_felt", Side::left, "yes"),
        word("history.worse_sitting", Side::none, "yes"),
        word("history.worse_cough", Side::none, "yes"),
        word("history.bladder", Side::none, "normal"),
        word("history.bowel", Side::none, "normal"),
        word("history.saddle_numbness", Side::none, "no"),
        word("history.both_legs", Side::none, "no"),
        word("drawn.outer_shin", Side::left, "sharp"),
        word("drawn.calf_lateral", Side::left, "sharp"),
        word("drawn.dorsum_central", Side::left, "pins"),
        word("drawn.great_toe", Side::left, "numb"),
        word("drawn.buttock_lower", Side::left, "ache"),
        word("drawn.posterior_thigh", Side::left, "ache"),
        word("drawn.low_back", Side::left, "ache")};
    for (const char* denied : {"cancer", "weight_loss", "fever", "recent_infection", "injection_drug_use",
                               "immunosuppressed", "steroids_prolonged", "osteoporosis", "anticoagulant"})
        out.push_back(word(std::string("history.") + denied, Side::none, "no", true));
    return out;
}

/// A visit in the middle of the examination: the left foot weak and numb as a fifth lumbar root would make
/// it. `toe` is the strength of great toe extension, so that two visits can differ.
inline std::vector<FindingChange> inventedExamination(const std::string& toe) {
    std::vector<FindingChange> out{word("inspect.comfort", Side::none, "uncomfortable"),
                                   word("inspect.iliac_crest", Side::none, "level"),
                                   word("motion.flexion_pain", Side::none, "leg"),
                                   number("motion.fingertip_floor", Side::none, 32),
                                   word("gait.heel_walk", Side::left, "difficult"),
                                   word("gait.heel_walk", Side::right, "normal"),
                                   word("gait.toe_walk", Side::left, "normal"),
                                   word("gait.toe_walk", Side::right, "normal"),
                                   word("strength.ankle_dorsiflexion", Side::left, "4"),
                                   word("strength.great_toe_extension", Side::left, toe),
                                   word("strength.ankle_eversion", Side::left, "4"),
                                   word("strength.hip_abduction", Side::left, "4"),
                                   word("touch.outer_shin", Side::left, "reduced"),
                                   word("touch.dorsum_central", Side::left, "absent"),
                                   word("touch.great_toe", Side::left, "absent"),
                                   word("touch.first_web", Side::left, "absent"),
                                   word("touch.middle_toes", Side::left, "reduced"),
                                   word("touch.calf_lateral", Side::left, "reduced"),
                                   word("touch.lateral_malleolus", Side::left, "heightened"),
                                   word("tension.slr_supine", Side::left, "leg_pain"),
                                   word("tension.slr_supine", Side::right, "negative")};
    for (const char* item :
         {"strength.hip_flexion", "strength.knee_extension", "strength.ankle_plantarflexion"})
        for (const Side side : {Side::right, Side::left})
            out.push_back(word(item, side, "5", true));
    for (const char* item : {"strength.ankle_dorsiflexion", "strength.great_toe_extension"})
        out.push_back(word(item, Side::right, "5"));
    for (const char* item : {"reflex.knee", "reflex.ankle"})
        for (const Side side : {Side::right, Side::left})
            out.push_back(word(item, side, "2"));
    return out;
}

/// Six patients of one invented day; the first has been here before and is in the room. The visit is that
/// one's.
inline VisitId inventDay(Store& store) {
    struct Invented {
        Identity identity;
        VisitState state;
    };
    const std::vector<Invented> others{
        {{"Marigold Teasel-Thorne", "00388", "1959-03-11", "female", {}, {}}, VisitState::inRoom},
        {{"Barnaby Oxlip", "00502", "1992-07-02", "male", {}, {}}, VisitState::intake},
        {{"Tansy Brackenfold", "00461", "1981-01-28", "female", {}, {}}, VisitState::toReview},
        {{"Cornelius Sorrelby", "00219", "1955-06-09", "male", {}, {}}, VisitState::signedOff},
        {{"Prunella Withyway", "00476", "1968-02-17", "female", {}, {}}, VisitState::intake}};
    const Patient first =
        need(store.addPatient({"Quillon Fernwhistle", "00417", "1974-05-30", "male", {}, {}}));
    const Visit before = need(store.addVisit(first.id, day(-12)));
    need(store.record(before.id, inventedIntake()));
    need(store.record(before.id, inventedExamination("4")));
    need(store.sign(before.id, "invented"));
    const Visit now = need(store.addVisit(first.id, day(0)));
    need(store.record(now.id, inventedIntake()));
    need(store.record(now.id, inventedExamination("3")));
    need(store.setState(now.id, VisitState::inRoom));
    need(store.setOpenRedSigns(now.id, 1));
    need(store.setPlan(now.id, "Surgical opinion this week. Told what would need same-day care."));
    for (const Invented& other : others) {
        const Visit visit = need(store.addVisit(need(store.addPatient(other.identity)).id, day(0)));
        const bool begun = other.identity.name != "Prunella Withyway";
        if (begun) need(store.record(visit.id, inventedIntake()));
        if (other.state != VisitState::intake) need(store.setState(visit.id, other.state));
    }
    return now.id;
}

} // namespace rhizograph::app::testing
