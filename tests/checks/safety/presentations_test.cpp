// Fifteen presentations that must not be missed, each with one that looks like it and must not cry wolf.
// The pairs and their urgencies are common practice, no source, unless a source stands beside them.
#include "checks/safety/levels.h"

#include <gmock/gmock.h>

namespace rhizograph::safety {
namespace {

using ::testing::HasSubstr;

TEST(Presentation01, RetentionOrSaddleNumbnessThatIsSaidIsAnEmergency) {
    // GIRFT National Suspected Cauda Equina Syndrome Pathway, 2023.
    EXPECT_EQ(level("cauda_equina", ExamMaker().none("history.bladder", "retention")), "emergency");
    EXPECT_EQ(level("cauda_equina", ExamMaker().none("history.saddle_numbness", "yes")), "emergency");
}
TEST(Presentation01, ALongStandingUnchangedBladderIsANote) {
    EXPECT_EQ(level("cauda_equina", ExamMaker(72, "male")
                                        .none("history.bladder", "long_standing")
                                        .none("bladder.post_void_residual", 210)),
              "note");
    EXPECT_EQ(
        level("cauda_equina",
              ExamMaker().none("history.saddle_numbness", "long_standing").left("touch.perineum", "reduced")),
        "note");
}

TEST(Presentation02, ANewFootDropOnOneSideIsUrgentTheSameDay) {
    const Exam exam =
        ExamMaker(50, "male").none("history.duration_weeks", 1).left("strength.ankle_dorsiflexion", "2");
    EXPECT_EQ(level("severe_motor_deficit", exam), "urgent");
    EXPECT_EQ(sign("severe_motor_deficit", exam)->due, "same_day");
}
TEST(Presentation02, AKnownUnchangedFootDropIsANote) {
    const Exam before = ExamMaker(50, "male").left("strength.ankle_dorsiflexion", "2");
    const Exam now =
        ExamMaker(50, "male").none("history.duration_weeks", 52).left("strength.ankle_dorsiflexion", "2");
    EXPECT_EQ(level("severe_motor_deficit", now, &before), "note");
    const Exam worse =
        ExamMaker(50, "male").none("history.duration_weeks", 52).left("strength.ankle_dorsiflexion", "1");
    EXPECT_EQ(level("progressive_motor_deficit", worse, &before), "urgent");
    EXPECT_EQ(level("severe_motor_deficit", worse, &before), "urgent");
}
TEST(Presentation02, AFailedHeelWalkWithAFullGradeByHandIsANote) {
    EXPECT_EQ(level("severe_motor_deficit",
                    ExamMaker().both("gait.heel_walk", "unable").both("strength.ankle_dorsiflexion", "5")),
              "note");
    EXPECT_EQ(level("severe_motor_deficit",
                    ExamMaker().left("gait.heel_walk", "unable").right("gait.heel_walk", "normal")),
              "urgent");
    EXPECT_EQ(level("severe_motor_deficit",
                    ExamMaker().both("gait.heel_walk", "unable").left("strength.ankle_dorsiflexion", "4")),
              "urgent");
}

ExamMaker areflexicWeakness(const std::string& grade) {
    return ExamMaker(45, "female")
        .both("strength.hip_flexion", grade)
        .both("strength.ankle_dorsiflexion", grade)
        .both("reflex.knee", "0")
        .both("reflex.ankle", "0");
}
TEST(Presentation03, WeakLegsWithoutReflexesThatGrowWithinDaysAreAnEmergency) {
    // Progression over days to four weeks with lost reflexes: World J Clin Cases 2017;5(7):270-279, table 2.
    EXPECT_EQ(level("acute_neuropathy", areflexicWeakness("4")
                                            .none("history.duration_weeks", 1)
                                            .none("history.weakness_progressing", "yes")),
              "emergency");
    EXPECT_EQ(level("acute_neuropathy", areflexicWeakness("4+").none("history.duration_weeks", 1)),
              "emergency");
    EXPECT_EQ(level("acute_neuropathy", areflexicWeakness("4").none("history.breathing_swallowing", "yes")),
              "emergency");
}
TEST(Presentation03, ATenYearNeuropathyWithAWorseningBackIsNoEmergency) {
    const Exam old = areflexicWeakness("4")
                         .none("history.duration_weeks", 156)
                         .none("history.onset_speed", "weeks")
                         .none("history.course", "worsening")
                         .none("history.weakness_weeks", 520);
    EXPECT_EQ(level("acute_neuropathy", old), "note");
    EXPECT_EQ(level("acute_neuropathy", ExamMaker(70, "male")
                                            .both("strength.great_toe_extension", "4")
                                            .both("reflex.ankle", "0")
                                            .none("history.weakness_weeks", 6)
                                            .none("history.course", "worsening")),
              "silent"); // ankle reflexes are lost in health at that age
}

TEST(Presentation04, SacralShinglesWithRetentionAreUrgentAndTheBladderAnEmergency) {
    const Exam exam = ExamMaker(70, "female")
                          .left("inspect.rash_region", "buttock_saddle")
                          .none("history.bladder", "retention");
    EXPECT_EQ(level("zoster", exam), "urgent");
    EXPECT_EQ(level("cauda_equina", exam), "emergency");
}
TEST(Presentation04, ARashOnOneLegDoesNotExplainAWeaknessOfTheOther) {
    EXPECT_EQ(level("zoster", ExamMaker()
                                  .left("inspect.rash_region", "outer_leg_foot_top")
                                  .right("strength.knee_extension", "4")),
              "note");
    EXPECT_EQ(level("zoster", ExamMaker()
                                  .left("inspect.rash_region", "outer_leg_foot_top")
                                  .left("strength.knee_extension", "4")),
              "urgent");
}

TEST(Presentation05, AFeltPulsationWithLowPressureIsAnEmergency) {
    // Lederle FA, Simel DL, JAMA 1999;281:77-82: a wide pulsation has a likelihood ratio of 12 to 16.
    EXPECT_EQ(
        level("aortic_aneurysm",
              ExamMaker(74, "male").none("abdomen.pulsatile_mass", "yes").none("vitals.bp_systolic", 90)),
        "emergency");
}
TEST(Presentation05, AKnownStableAneurysmIsANoteAndOrdinarySciaticaWithItNoEmergency) {
    EXPECT_EQ(level("aortic_aneurysm", ExamMaker(74, "male").none("history.aneurysm_known", "yes")), "note");
    EXPECT_EQ(level("aortic_aneurysm", ExamMaker(74, "male")
                                           .none("history.aneurysm_known", "yes")
                                           .none("pain.back", 7)
                                           .none("history.duration_weeks", 1)
                                           .left("history.leg_pain_below_knee", "yes")
                                           .left("tension.slr_supine", "leg_pain")),
              "urgent");
    EXPECT_EQ(level("aortic_aneurysm", ExamMaker(74, "male")
                                           .none("history.aneurysm_known", "yes")
                                           .none("history.duration_weeks", 520)
                                           .none("history.onset_speed", "sudden")
                                           .none("pain.back", 9)),
              "emergency"); // ten years of back pain do not hide a new sudden one
}

TEST(Presentation06, ALostFeelingOfAFullRectumIsAnEmergency) {
    // GIRFT 2023, item 4.
    EXPECT_EQ(level("cauda_equina", ExamMaker().none("history.rectal_fullness_lost", "yes")), "emergency");
}
TEST(Presentation06, ConstipationIsANoteAlsoWithOldPainInBothLegs) {
    EXPECT_EQ(level("cauda_equina", ExamMaker().none("history.bowel", "altered")), "note");
    EXPECT_NE(level("cauda_equina", ExamMaker()
                                        .none("history.bowel", "altered")
                                        .none("history.both_legs", "yes")
                                        .none("history.duration_weeks", 200)),
              "emergency");
}

TEST(Presentation07, CordSignsWithABladderChangeSendTheReaderToTheCordFirst) {
    const Exam exam = ExamMaker().both("reflex.plantar", "up").none("history.bladder", "altered");
    const auto all = rules().redSigns(exam, nullptr);
    ASSERT_GE(all.size(), 2U);
    EXPECT_EQ(all[0].id, "upper_motor_neuron");
    EXPECT_EQ(all[0].urgency, Urgency::emergency);
    EXPECT_THAT(all[0].sentence, HasSubstr("image the whole spine, cord first"));
    EXPECT_EQ(level("cauda_equina", exam), "emergency");
}
TEST(Presentation07, CordSignsThatCameWithinDaysAreAnEmergencyAndBriskKneesAloneANote) {
    EXPECT_EQ(level("upper_motor_neuron", ExamMaker()
                                              .both("reflex.plantar", "up")
                                              .left("strength.hip_flexion", "4")
                                              .none("history.onset_speed", "hours_days")),
              "emergency");
    const Exam stroke = ExamMaker()
                            .left("strength.ankle_dorsiflexion", "2")
                            .left("reflex.plantar", "up")
                            .none("arm.signs", "yes")
                            .none("history.onset_speed", "sudden");
    EXPECT_EQ(level("upper_motor_neuron", stroke), "emergency");
    EXPECT_THAT(sign("upper_motor_neuron", stroke)->sentence, HasSubstr("stroke"));
    EXPECT_EQ(level("upper_motor_neuron", ExamMaker().none("arm.signs", "yes").none("gait.tandem", "unable")),
              "urgent");
    EXPECT_EQ(level("upper_motor_neuron", ExamMaker().left("reflex.ankle", "4")),
              "urgent"); // grade 4 is clonus
    EXPECT_EQ(level("upper_motor_neuron", ExamMaker().left("reflex.knee", "3").right("reflex.knee", "2")),
              "note");
    EXPECT_EQ(level("upper_motor_neuron", ExamMaker()
                                              .both("reflex.knee", "3")
                                              .left("strength.great_toe_extension", "4+")
                                              .both("reflex.plantar", "down")
                                              .both("reflex.clonus", "no")),
              "note");
}

TEST(Presentation08, CancerWithWeakLegsOrCordSignsIsAnEmergencyWithAWholeSpineImage) {
    // National Institute for Health and Care Excellence, quality standard 56, statement 3: within 24 hours.
    EXPECT_EQ(level("malignancy", ExamMaker()
                                      .none("history.cancer", "yes")
                                      .both("strength.hip_flexion", "4")
                                      .none("history.duration_weeks", 3)),
              "emergency");
    EXPECT_EQ(
        level("malignancy", ExamMaker().none("history.cancer", "yes").none("trunk.sensory_level", "yes")),
        "emergency");
}
TEST(Presentation08, AnOldCuredCancerOrWeightLossWithNightPainIsANote) {
    EXPECT_EQ(
        level("malignancy", ExamMaker().none("history.cancer", "yes").none("history.cancer_when", "older")),
        "note");
    // Night pain found nothing in 213 people: Harding I et al., Spine 2005;30:1985-1988.
    EXPECT_EQ(
        level("malignancy",
              ExamMaker(40, "male").none("history.weight_loss", "yes").none("history.worse_at_night", "yes")),
        "note");
    const Exam past = ExamMaker().none("history.cancer", "yes");
    EXPECT_EQ(level("malignancy", past), "urgent");
    EXPECT_EQ(sign("malignancy", past)->due, "days");
}

TEST(Presentation09, FeverOrInjectedDrugsWithNewWeaknessIsAnEmergency) {
    EXPECT_EQ(level("infection", ExamMaker()
                                     .none("history.fever", "yes")
                                     .none("vitals.temperature", 38.9)
                                     .left("strength.hip_flexion", "4")
                                     .left("strength.knee_extension", "4")),
              "emergency");
    EXPECT_EQ(
        level("infection",
              ExamMaker().none("history.injection_drug_use", "yes").none("history.bladder", "retention")),
        "emergency");
    EXPECT_EQ(level("infection", ExamMaker()
                                     .none("vitals.temperature", 38.9)
                                     .none("vitals.bp_systolic", 88)
                                     .none("vitals.heart_rate", 132)),
              "emergency");
    // Fever in 55 to 60 percent only: Yusuf M et al. 2019, Maamari J et al. 2022.
    EXPECT_EQ(level("infection", ExamMaker()
                                     .none("history.injection_drug_use", "yes")
                                     .none("history.back_pain", "yes")
                                     .none("history.duration_weeks", 2)),
              "urgent");
    EXPECT_THAT(sign("infection", ExamMaker().none("history.fever", "yes").left("hip.rotation_pain", "yes"))
                    ->sentence,
                HasSubstr("joint"));
}
TEST(Presentation09, SweatsOverYearsOrDiabetesWithNightPainRaiseNoUrgency) {
    const Exam years = ExamMaker()
                           .none("history.fever", "yes")
                           .none("vitals.temperature", 36.6)
                           .none("history.duration_weeks", 208)
                           .none("history.course", "unchanged");
    EXPECT_EQ(level("infection", years), "note");
    EXPECT_EQ(level("infection", ExamMaker().none("history.sweats", "yes")), "silent");
    EXPECT_EQ(
        level("infection", ExamMaker().none("history.diabetes", "yes").none("history.worse_at_night", "yes")),
        "silent");
}

TEST(Presentation10, HighEnergyWithADeficitIsAnEmergencyAndABruiseOrAStiffSpineUrgent) {
    EXPECT_EQ(level("fracture", ExamMaker()
                                    .none("history.onset", "major_trauma")
                                    .none("history.duration_weeks", 0)
                                    .none("history.back_pain", "yes")
                                    .left("strength.knee_extension", "3")),
              "emergency");
    // Contusion or abrasion over the spine: 62 percent after the test, Downie A et al., BMJ 2013;347:f7095.
    EXPECT_EQ(level("fracture", ExamMaker().none("inspect.spine_bruise", "yes")), "urgent");
    EXPECT_EQ(level("fracture", ExamMaker()
                                    .none("history.spine_stiff_inflammatory", "yes")
                                    .none("history.injury_mechanism", "fall_standing")),
              "urgent");
    // Prolonged corticosteroids: 33 percent after the test, the same review.
    EXPECT_EQ(level("fracture", ExamMaker(62, "male")
                                    .none("history.steroids_prolonged", "yes")
                                    .none("pain.back", 8)
                                    .none("history.duration_weeks", 1)),
              "urgent");
}
TEST(Presentation10, AnAccidentTwentyYearsAgoOrAgeWithOsteoporosisAndNoPainIsANote) {
    EXPECT_EQ(level("fracture", ExamMaker(50, "male")
                                    .none("history.onset", "major_trauma")
                                    .none("history.duration_weeks", 1040)
                                    .none("history.course", "unchanged")),
              "note");
    EXPECT_EQ(
        level("fracture",
              ExamMaker(75, "female").none("history.osteoporosis", "yes").none("history.back_pain", "no")),
        "note");
}

TEST(Presentation11, ALegWithOnePulseExaminedIsNotLeftAtANote) {
    const auto leg = [] { return ExamMaker(68, "male").left("history.leg_pain", "yes").left("pain.leg", 9); };
    EXPECT_EQ(level("acute_limb_ischemia",
                    leg().left("pulse.dorsalis_pedis", "absent").none("history.onset_speed", "sudden")),
              "urgent");
    EXPECT_EQ(level("acute_limb_ischemia",
                    leg().left("pulse.dorsalis_pedis", "absent").left("vessels.leg_cold", "yes")),
              "emergency");
    EXPECT_EQ(level("acute_limb_ischemia", leg()
                                               .left("pulse.dorsalis_pedis", "absent")
                                               .left("pulse.posterior_tibial", "absent")
                                               .none("history.onset_speed", "sudden")
                                               .none("history.duration_weeks", 40)),
              "emergency"); // acute on chronic
    EXPECT_EQ(level("acute_limb_ischemia", ExamMaker().both("pulse.femoral", "absent")), "urgent");
    EXPECT_EQ(level("acute_limb_ischemia", ExamMaker().left("vessels.ankle_brachial_index", 0.45)), "urgent");
    EXPECT_EQ(level("acute_limb_ischemia",
                    ExamMaker().left("vessels.tissue_loss", "yes").left("vessels.ankle_brachial_index", 0.7)),
              "emergency");
}
TEST(Presentation11, PulsesNotFeltOnEitherSideOfAWarmLegAreNoEmergency) {
    const Exam exam = ExamMaker(60, "male")
                          .both("pulse.dorsalis_pedis", "absent")
                          .both("pulse.posterior_tibial", "absent")
                          .both("vessels.ankle_brachial_index", 1.05)
                          .left("history.leg_pain", "yes")
                          .none("history.duration_weeks", 1);
    EXPECT_EQ(level("acute_limb_ischemia", exam),
              "urgent"); // a normal index does not exclude: Xu D et al. 2010
    EXPECT_EQ(
        level("acute_limb_ischemia",
              ExamMaker().left("pulse.dorsalis_pedis", "absent").left("pulse.posterior_tibial", "palpable")),
        "note");
}

TEST(Presentation12, NumbOrPinsOnTheSaddleOfTheDrawingAreUrgentAndAnEmergencyOnceConfirmed) {
    for (const char* mark : {"numb", "pins"})
        EXPECT_EQ(level("cauda_equina", ExamMaker().left("drawn.perineum", mark)), "urgent") << mark;
    EXPECT_EQ(level("cauda_equina",
                    ExamMaker().left("drawn.perineum", "numb").none("history.saddle_numbness", "yes")),
              "emergency");
    EXPECT_EQ(level("cauda_equina", ExamMaker().right("touch.perianal", "heightened")),
              "emergency"); // altered, GIRFT 2023
}
TEST(Presentation12, AnAcheDrawnOnTheSaddleOrOneAbsentSkinReflexIsNoEmergency) {
    EXPECT_EQ(level("cauda_equina", ExamMaker().left("drawn.perineum", "ache")), "silent");
    EXPECT_EQ(level("cauda_equina", ExamMaker()
                                        .left("perineum.anal_wink", "absent")
                                        .right("perineum.anal_wink", "present")
                                        .both("touch.perianal", "normal")
                                        .none("perineum.anal_tone", "normal")),
              "note");
    EXPECT_EQ(level("cauda_equina", ExamMaker().none("perineum.anal_tone", "reduced")), "urgent");
    EXPECT_EQ(level("cauda_equina",
                    ExamMaker().none("perineum.anal_tone", "reduced").left("perineum.anal_wink", "absent")),
              "emergency");
}

TEST(Presentation13, NewSciaticaOfBothLegsIsUrgentHoweverItWasRecorded) {
    // Bilateral sciatica: Katzouraki G et al., Bone Joint J 2020;102-B:677-682 (17 percent had compression).
    EXPECT_EQ(level("cauda_equina", ExamMaker()
                                        .both("history.leg_pain", "yes")
                                        .both("pain.leg", 8)
                                        .none("history.duration_weeks", 1)),
              "urgent");
    EXPECT_EQ(level("cauda_equina", ExamMaker()
                                        .left("history.leg_pain", "yes")
                                        .right("history.leg_tingling", "yes")
                                        .none("history.duration_weeks", 7)
                                        .none("history.course", "worsening")
                                        .both("strength.ankle_dorsiflexion", "4")),
              "urgent");
    EXPECT_EQ(
        level(
            "progressive_motor_deficit",
            ExamMaker().none("history.weakness_progressing", "yes").both("strength.ankle_dorsiflexion", "4")),
        "emergency");
}
TEST(Presentation13, OldUnchangedPainInBothLegsIsSilent) {
    EXPECT_EQ(level("cauda_equina", ExamMaker()
                                        .both("history.leg_pain", "yes")
                                        .none("history.duration_weeks", 104)
                                        .none("history.course", "unchanged")),
              "silent");
    EXPECT_EQ(level("cauda_equina", ExamMaker()
                                        .left("history.leg_pain", "yes")
                                        .right("history.leg_pain", "no")
                                        .none("history.duration_weeks", 1)),
              "silent");
}

TEST(Presentation14, WeaknessWithinHoursUnderAnticoagulantsIsAnEmergency) {
    // Stetkarova I et al., Neurol Neurochir Pol 2021;55:574-581: 8 of 14 spinal bleeds were under
    // anticoagulants.
    EXPECT_EQ(level("spinal_bleed", ExamMaker(70, "male")
                                        .none("history.anticoagulant", "yes")
                                        .none("history.onset_speed", "sudden")
                                        .both("strength.hip_flexion", "4")),
              "emergency");
    EXPECT_EQ(level("spinal_bleed", ExamMaker(70, "male")
                                        .none("history.anticoagulant", "yes")
                                        .none("history.onset_speed", "hours_days")
                                        .left("strength.hip_flexion", "3")
                                        .left("strength.knee_extension", "3")),
              "emergency");
}
TEST(Presentation14, AnticoagulantsAloneOrWithOldWeaknessAreSilent) {
    EXPECT_EQ(level("spinal_bleed", ExamMaker(70, "male").none("history.anticoagulant", "yes")), "silent");
    EXPECT_EQ(level("spinal_bleed", ExamMaker(70, "male")
                                        .none("history.anticoagulant", "yes")
                                        .none("history.onset_speed", "months_years")
                                        .none("history.weakness_weeks", 100)
                                        .left("strength.knee_extension", "4")),
              "silent");
}

TEST(Presentation15, SuddenPainWithCollapseAtSixtyIsAnEmergencyWithoutAFeltMass) {
    EXPECT_EQ(level("aortic_aneurysm", ExamMaker(74, "male")
                                           .none("history.onset_speed", "sudden")
                                           .none("pain.back", 9)
                                           .none("vitals.bp_systolic", 85)
                                           .none("vitals.heart_rate", 120)
                                           .none("abdomen.pulsatile_mass", "no")),
              "emergency"); // not feeling it excludes nothing: Lederle FA, Simel DL, JAMA 1999
    EXPECT_EQ(level("aortic_aneurysm", ExamMaker(66, "male")
                                           .none("history.onset_speed", "sudden")
                                           .none("history.abdomen_flank_pain", "yes")
                                           .none("history.faintness", "yes")),
              "emergency");
}
TEST(Presentation15, SuddenPainAloneIsSilent) {
    EXPECT_EQ(level("aortic_aneurysm", ExamMaker(74, "male")
                                           .none("history.onset_speed", "sudden")
                                           .none("pain.back", 9)
                                           .none("vitals.bp_systolic", 140)),
              "silent");
}

TEST(FurtherPresentations, APainfulSwollenCalfThatIsNewIsUrgent) {
    // More than 3 cm: Wells PS et al., Lancet 1997;350:1795-1798.
    EXPECT_EQ(level("vein_clot", ExamMaker()
                                     .left("girth.calf", 39.5)
                                     .right("girth.calf", 35.5)
                                     .left("history.leg_pain", "yes")
                                     .none("history.duration_weeks", 1)),
              "urgent");
    EXPECT_EQ(level("vein_clot", ExamMaker().left("girth.calf", 39.5).right("girth.calf", 35.5)), "note");
    EXPECT_EQ(level("vein_clot", ExamMaker().left("girth.calf", 36.5).right("girth.calf", 35.5)), "silent");
}

TEST(FurtherPresentations, MarkedWeaknessOfBothLegsIsAnEmergencyOnlyWhereItIsNewAndNotOfToesOrPain) {
    const auto both = [](const std::string& muscle) { return ExamMaker().both(muscle, "3"); };
    EXPECT_EQ(level("severe_motor_deficit", both("strength.knee_extension")),
              "emergency"); // GIRFT 2023, item 3
    EXPECT_EQ(level("severe_motor_deficit", both("strength.toe_flexion")), "note");
    EXPECT_NE(
        level("severe_motor_deficit", both("strength.knee_extension").none("history.weakness_weeks", 1000)),
        "emergency");
    EXPECT_EQ(
        level("severe_motor_deficit", both("strength.knee_extension").both("pain.limits_strength", "yes")),
        "urgent");
    EXPECT_EQ(
        level("severe_motor_deficit", both("strength.knee_extension").none("history.weakness_weeks", 5)),
        "emergency");
}

} // namespace
} // namespace rhizograph::safety
