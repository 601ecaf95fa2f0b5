// What must hold for every exam: nothing reassuring lowers an alarm, nothing unexamined raises one.
#include "checks/safety/levels.h"

#include <fstream>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>
#include <set>

namespace rhizograph::safety {
namespace {

/// Any value of an item, normal and abnormal alike.
rc::Gen<Value> anyValue(const Item& item) {
    if (item.scale.numeric()) {
        const int steps = static_cast<int>((item.scale.maximum - item.scale.minimum) / item.scale.step);
        return rc::gen::map(rc::gen::inRange(0, steps + 1), [&item](int i) {
            return Value::number(item.scale.minimum + i * item.scale.step);
        });
    }
    return rc::gen::map(rc::gen::inRange<std::size_t>(0, item.scale.values.size()),
                        [&item](std::size_t i) { return Value::token(item.scale.values[i].token); });
}

std::vector<Side> sidesOf(const Item& item) {
    return item.sided ? std::vector<Side>{Side::left, Side::right} : std::vector<Side>{Side::none};
}

rc::Gen<Exam> anyExam() {
    return rc::gen::exec([] {
        Exam exam;
        if (*rc::gen::arbitrary<bool>()) exam.subject.age = *rc::gen::inRange(0, 100);
        if (*rc::gen::arbitrary<bool>()) exam.subject.sex = *rc::gen::element<std::string>("female", "male");
        const int share = *rc::gen::inRange(2, 60);
        for (const Item& item : catalogue().items()) {
            if (item.scale.kind == Scale::Kind::text) continue;
            for (const Side side : sidesOf(item))
                if (*rc::gen::inRange(0, 100) < share)
                    exam.set({item.id, side}, {*anyValue(item), false, ""});
        }
        return exam;
    });
}

int rank(const std::string& word) {
    return word == "emergency" ? 3 : word == "urgent" ? 2 : word == "note" ? 1 : 0;
}

/// The signs that are quieter in the second exam than in the first.
std::vector<std::string> lowered(const Exam& first, const Exam& second) {
    std::vector<std::string> out;
    for (const std::string& id : rules().redSignIds())
        if (rank(level(id, second)) < rank(level(id, first))) out.push_back(id);
    return out;
}

bool isMuscle(const Item& item) {
    return item.scale.name == "mrc";
}

// A full grade measures the very function that a failed walk or a felt weakness only suggests, so it may
// correct those. Nothing else that was found normal lowers anything.
RC_GTEST_PROP(Honesty, ANormalFindingNeverLowersARedSign, ()) {
    const Exam exam = *anyExam();
    Exam more = exam;
    for (const Item& item : catalogue().items()) {
        if (!item.scale.normal || isMuscle(item)) continue;
        for (const Side side : sidesOf(item))
            if (exam.find({item.id, side}) == nullptr && *rc::gen::inRange(0, 3) == 0)
                more.set({item.id, side}, {Value::token(*item.scale.normal), false, ""});
    }
    RC_ASSERT(lowered(exam, more).empty());
}

RC_GTEST_PROP(Honesty, AFullGradeLowersOnlyTheSignsThatSpeakOfStrength, ()) {
    const Exam exam = *anyExam();
    Exam more = exam;
    for (const Item& item : catalogue().items()) {
        if (!isMuscle(item)) continue;
        for (const Side side : sidesOf(item))
            if (exam.find({item.id, side}) == nullptr)
                more.set({item.id, side}, {Value::token(*item.scale.normal), false, ""});
    }
    for (const std::string& id : lowered(exam, more)) {
        RC_ASSERT(id == "severe_motor_deficit" || id == "progressive_motor_deficit");
        RC_ASSERT(level(id, more) == "note");
    }
}

// One in two confirmed cases had 200 mL or less: case audit of residuals in scans that showed compression,
// record 1241300.
RC_GTEST_PROP(Honesty, ALowResidualVolumeNeverLowersARedSign, ()) {
    const Exam exam = *anyExam();
    Exam without = exam;
    without.clear({ItemId{"bladder.post_void_residual"}, Side::none});
    Exam low = without;
    low.set({ItemId{"bladder.post_void_residual"}, Side::none},
            {Value::number(5.0 * *rc::gen::inRange(0, 40)), false, ""});
    RC_ASSERT(lowered(without, low).empty());
}

// Fishbain DA et al., Clin J Pain 2004;20:399-408; Main CJ, Waddell G, Spine 1998: the signs disprove no
// disease.
RC_GTEST_PROP(Honesty, BehavioralSignsChangeNoRedSignAndNoGrade, ()) {
    const Exam exam = *anyExam();
    Exam none = exam;
    Exam all = exam;
    for (const Item& item : catalogue().items()) {
        if (item.id.text().rfind("behavior.", 0) != 0 && item.id.text() != "strength.give_way") continue;
        for (const Side side : sidesOf(item)) {
            none.clear({item.id, side});
            all.set({item.id, side}, {Value::token("yes"), false, ""});
        }
    }
    const auto quiet = rules().redSigns(none, nullptr);
    const auto loud = rules().redSigns(all, nullptr);
    RC_ASSERT(quiet.size() == loud.size());
    for (std::size_t i = 0; i < quiet.size(); ++i)
        RC_ASSERT(quiet[i].id == loud[i].id && quiet[i].urgency == loud[i].urgency &&
                  quiet[i].because == loud[i].because);
}

RC_GTEST_PROP(Honesty, TakingFindingsAwayNeverInventsASign, ()) {
    const Exam exam = *anyExam();
    Exam ageAndSexAlone;
    ageAndSexAlone.subject = exam.subject;
    RC_ASSERT(rules().redSigns(ageAndSexAlone, &exam).empty());
    for (const RedSign& sign : rules().redSigns(exam, nullptr)) {
        Exam rest = exam;
        for (const FindingKey& key : sign.because)
            rest.clear(key);
        Exam only;
        only.subject = exam.subject;
        for (const FindingKey& key : sign.because)
            only.set(key, *exam.find(key));
        RC_ASSERT(rank(level(sign.id, only)) >= 1); // what it names is enough to be heard
    }
}

// National figures: most people with back pain have at least one flag, under one percent serious disease
// (Henschke N et al., Arthritis Rheum 2009;60:3072-3080), so one weak flag must not be loud.
TEST(Honesty, OneWeakFlagAloneRaisesANoteAtMost) {
    const std::vector<std::pair<std::string, std::string>> weak = {{"history.weight_loss", "yes"},
                                                                   {"history.worse_at_night", "yes"},
                                                                   {"history.steroids_prolonged", "yes"},
                                                                   {"history.osteoporosis", "yes"},
                                                                   {"history.anticoagulant", "yes"},
                                                                   {"history.immunosuppressed", "yes"},
                                                                   {"history.diabetes", "yes"},
                                                                   {"history.recent_infection", "yes"},
                                                                   {"history.injection_drug_use", "yes"},
                                                                   {"history.spinal_procedure", "yes"},
                                                                   {"history.onset", "minor_trauma"},
                                                                   {"history.bowel", "altered"},
                                                                   {"history.course", "worsening"},
                                                                   {"history.thoracic_pain", "yes"},
                                                                   {"history.sweats", "yes"},
                                                                   {"history.faintness", "yes"},
                                                                   {"history.aneurysm_known", "yes"},
                                                                   {"history.zoster_rash_recent", "yes"},
                                                                   {"history.both_legs", "yes"},
                                                                   {"history.abdomen_flank_pain", "yes"},
                                                                   {"history.breathing_swallowing", "yes"},
                                                                   {"palpate.percussion", "yes"},
                                                                   {"gait.tandem", "unable"},
                                                                   {"gait.romberg", "yes"},
                                                                   {"inspect.comfort", "marked_distress"},
                                                                   {"history.smoker", "yes"},
                                                                   {"palpate.step", "yes"}};
    for (const auto& [item, value] : weak)
        for (const int age : {30, 75})
            EXPECT_LE(rank(loudest(ExamMaker(age, "female").none(item, value))), 1) << item << " at " << age;
    for (const char* pulse : {"pulse.dorsalis_pedis", "pulse.posterior_tibial"})
        EXPECT_EQ(loudest(ExamMaker(60, "male").left(pulse, "absent")), "note") << pulse;
    EXPECT_EQ(loudest(ExamMaker(60, "male").left("reflex.knee", "3")), "note");
    EXPECT_EQ(loudest(ExamMaker(60, "male").left("perineum.anal_wink", "absent")), "note");
    EXPECT_EQ(loudest(ExamMaker(60, "male").none("vitals.bp_systolic", 85)), "silent");
}

TEST(Honesty, AGraveChangeSinceTheLastVisitIsHeard) {
    const Exam before = ExamMaker()
                            .both("strength.knee_extension", "5")
                            .left("touch.perianal", "normal")
                            .none("history.saddle_numbness", "no")
                            .none("history.bladder", "normal");
    EXPECT_EQ(level("progressive_motor_deficit", ExamMaker().left("strength.knee_extension", "3"), &before),
              "urgent");
    EXPECT_EQ(level("progressive_motor_deficit", ExamMaker().both("strength.knee_extension", "4"), &before),
              "emergency");
    EXPECT_EQ(level("cauda_equina", ExamMaker().none("history.bladder", "altered"), &before), "emergency");
    EXPECT_EQ(
        level("cauda_equina",
              ExamMaker().none("history.saddle_numbness", "long_standing").left("touch.perianal", "reduced"),
              &before),
        "emergency")
        << "found normal last time, so it is new whatever is said";
}

TEST(Honesty, AMuscleNotTestedLastTimeIsNoChange) {
    const Exam before = ExamMaker().left("reflex.knee", "2");
    EXPECT_EQ(level("progressive_motor_deficit", ExamMaker().left("strength.knee_extension", "4"), &before),
              "silent");
}

TEST(Honesty, ALongStandingAnswerMovesNoSite) {
    const auto knowledge = Knowledge::load(testing::knowledgeDirectory());
    ASSERT_TRUE(knowledge.ok());
    const ExamMaker base = ExamMaker(45, "male").left("strength.great_toe_extension", "3");
    const auto sites = [&](const Exam& exam) {
        std::vector<std::pair<std::string, double>> out;
        for (const SiteResult& site : assess(exam, *knowledge).localization)
            out.emplace_back(site.site.text(), site.probability);
        return out;
    };
    const auto plain = sites(base);
    for (const char* item :
         {"history.bladder", "history.bowel", "history.saddle_numbness", "history.sexual_function_change"}) {
        ExamMaker known = base;
        EXPECT_EQ(sites(known.none(item, "long_standing")), plain)
            << item << " is neither normal nor a new loss";
        ExamMaker normal = base;
        EXPECT_NE(sites(normal.none(item, catalogue().find(ItemId{item})->scale.normal.value())), plain)
            << item;
    }
}

TEST(Honesty, ALongStandingAnswerLooksNeitherNormalNorLost) {
    for (const Item& item : catalogue().items())
        for (const ScaleValue& value : item.scale.values)
            if (value.token == "long_standing") {
                EXPECT_EQ(value.look, Look::plain) << item.id.text();
            }
}

TEST(RedSignData, EveryLevelSaysWhenAndDefersToTheLocalPathway) {
    const auto json = readJsonFile(testing::knowledgeDirectory() / "redsigns.json");
    ASSERT_TRUE(json.ok());
    const std::set<std::string> when = {"now", "same_day", "days", "next_visit"};
    int levels = 0;
    for (const auto& sign : json->at("red_signs")) {
        for (const auto& level : sign.at("levels")) {
            ++levels;
            const std::string action = level.at("action");
            EXPECT_TRUE(action.starts_with("Usually ")) << sign.at("id") << action;
            EXPECT_TRUE(action.ends_with("; follow the local pathway.")) << sign.at("id") << action;
            EXPECT_EQ(action.find(".;"), std::string::npos) << action;
            EXPECT_EQ(action.find(",;"), std::string::npos) << action;
            const std::string due = level.at("due");
            EXPECT_TRUE(when.contains(due)) << due;
            EXPECT_EQ(due == "now", level.at("urgency") == "emergency")
                << sign.at("id") << ": only an emergency is due now";
            EXPECT_EQ(due == "next_visit", level.at("urgency") == "note") << sign.at("id");
        }
    }
    EXPECT_GE(levels, 28);
}

TEST(RedSignData, TheUrgencyAndTheTimeReachTheReader) {
    const auto found = sign("severe_motor_deficit", ExamMaker().left("strength.ankle_dorsiflexion", "2"));
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(found->due, "same_day");
}

} // namespace
} // namespace rhizograph::safety
