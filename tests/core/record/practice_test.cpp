#include "clinicfixture.h"

#include <gmock/gmock.h>

namespace rhizograph::testing {
namespace {

using ::testing::ElementsAre;

/// The clinic's day is 2026-03-04.
class ThePractice : public Clinic {
protected:
    Visit signedVisit(const PatientId& patient, const std::string& date, int redSigns = 0, int worse = 0) {
        const Visit visit = need(store->addVisit(patient, date));
        if (redSigns > 0) need(store->setOpenRedSigns(visit.id, redSigns));
        if (worse > 0) need(store->setWorse(visit.id, worse));
        need(store->sign(visit.id, "knowledge-7"));
        time.pass(std::chrono::seconds{1});
        return visit;
    }
    void awaited(const PatientId& patient, const std::string& date) {
        need(store->writeEvent({{}, patient, date, "follow_up", "", true, "", ""}));
    }
    Practice now(int limit = 100) { return need(store->practice("2026-03-04", limit)); }
};

TEST_F(ThePractice, HasNobodyToLookAtWhereAllIsWell) {
    signedVisit(somebody().id, "2026-01-10");
    EXPECT_EQ(now().all, 0);
    EXPECT_TRUE(now().patients.empty());
}

TEST_F(ThePractice, ShowsEachPatientOnceWithEveryReason) {
    const Patient patient = somebody();
    signedVisit(patient.id, "2026-01-10", 2);
    const Visit open = need(store->addVisit(patient.id, "2026-03-01"));
    need(store->setWorse(open.id, 3));
    need(store->setOpenRedSigns(open.id, 1));
    awaited(patient.id, "2026-03-03");
    const Practice found = now();
    ASSERT_EQ(found.patients.size(), 1U);
    const Attention& one = found.patients.front();
    EXPECT_EQ(one.patient, patient.id);
    EXPECT_EQ(one.visit, open.id);
    EXPECT_EQ(one.redSigns, 3);
    EXPECT_EQ(one.worse, 3);
    EXPECT_EQ(one.unsignedVisits, 1);
    EXPECT_EQ(one.overdueSince, "2026-03-03");
    EXPECT_EQ(found.all, 1);
    EXPECT_EQ(found.withRedSigns + found.withWorse + found.withOverdue + found.withUnsigned, 4);
}

TEST_F(ThePractice, PutsRedSignsFirstThenWhatGotWorseThenFollowUpsThenTheUnsigned) {
    const PatientId unsignedOne = somebody("U", "1").id;
    const PatientId late = somebody("L", "2").id;
    const PatientId worse = somebody("W", "3").id;
    const PatientId red = somebody("R", "4").id;
    need(store->addVisit(unsignedOne, "2026-01-01"));
    awaited(late, "2026-01-02");
    signedVisit(worse, "2026-02-03", 0, 1);
    signedVisit(red, "2026-03-03", 1);
    std::vector<PatientId> order;
    for (const Attention& one : now().patients)
        order.push_back(one.patient);
    EXPECT_THAT(order, ElementsAre(red, worse, late, unsignedOne));
    EXPECT_TRUE(now().patients[2].visit.empty()) << "who never came has no visit to open";
}

TEST_F(ThePractice, ForgetsAWorseningOnceALaterVisitIsNotWorse) {
    const PatientId patient = somebody().id;
    signedVisit(patient, "2026-01-10", 0, 2);
    EXPECT_EQ(now().withWorse, 1);
    signedVisit(patient, "2026-02-10");
    EXPECT_EQ(now().all, 0);
}

TEST_F(ThePractice, CallsAFollowUpOverdueFromTheDayAfterAndOnlyWithoutAVisit) {
    const PatientId patient = somebody().id;
    awaited(patient, "2026-03-04");
    EXPECT_EQ(now().withOverdue, 0) << "it is today";
    EXPECT_EQ(need(store->practice("2026-03-05", 10)).withOverdue, 1);
    signedVisit(patient, "2026-03-04");
    EXPECT_EQ(need(store->practice("2026-03-05", 10)).withOverdue, 0);
}

TEST_F(ThePractice, CountsADuplicatesVisitsAsThePatients) {
    const Patient patient = somebody();
    const Patient duplicate = somebody("Quilon Fernwhistl", "Q-1707");
    signedVisit(duplicate.id, "2026-01-10", 1);
    need(store->mergePatients(duplicate.id, patient.id));
    const Practice found = now();
    ASSERT_EQ(found.patients.size(), 1U);
    EXPECT_EQ(found.patients.front().patient, patient.id);
}

TEST_F(ThePractice, ListsNoMoreThanAskedForButCountsThemAll) {
    for (int i = 0; i < 7; ++i)
        need(store->addVisit(somebody("P" + std::to_string(i), std::to_string(i)).id, "2026-03-01"));
    const Practice found = now(3);
    EXPECT_EQ(found.patients.size(), 3U);
    EXPECT_EQ(found.all, 7);
    EXPECT_EQ(found.withUnsigned, 7);
}

TEST_F(ThePractice, NeedsADay) {
    EXPECT_FALSE(store->practice("soon", 10));
}

} // namespace
} // namespace rhizograph::testing
