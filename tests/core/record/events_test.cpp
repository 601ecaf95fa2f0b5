#include "clinicfixture.h"

#include <gmock/gmock.h>

namespace rhizograph::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

class EventsOfAPatient : public Clinic {
protected:
    PatientEvent event(const std::string& date, const std::string& kind, const std::string& text = "") {
        return {{}, patient.id, date, kind, text, false, "", ""};
    }
    std::vector<std::string> listed(const PatientId& of) {
        std::vector<std::string> out;
        for (const PatientEvent& each : need(store->eventsOf(of)))
            out.push_back(each.date + " " + each.kind + (each.text.empty() ? "" : ": " + each.text));
        return out;
    }
    Patient patient = somebody();
};

TEST_F(EventsOfAPatient, AreListedOldestFirstAndStayWhenTheClinicIsOpenedAgain) {
    need(store->writeEvent(event("2026-02-10", "surgery", "L4-L5, left")));
    need(store->writeEvent(event("2025-12-01", "injection")));
    store.reset();
    store = signedIn("Ada Thornfield");
    EXPECT_THAT(listed(patient.id), ElementsAre("2025-12-01 injection", "2026-02-10 surgery: L4-L5, left"));
    const PatientEvent first = need(store->eventsOf(patient.id)).front();
    EXPECT_EQ(first.by, "Ada Thornfield");
    EXPECT_EQ(first.at, "2026-03-04T09:00:00Z");
}

TEST_F(EventsOfAPatient, AreCorrectedWithoutASecondEntry) {
    PatientEvent written = need(store->writeEvent(event("2026-02-10", "injection", "left")));
    written.text = "right";
    written.date = "2026-02-11";
    need(store->writeEvent(written));
    EXPECT_THAT(listed(patient.id), ElementsAre("2026-02-11 injection: right"));
}

TEST_F(EventsOfAPatient, TakenOffTheListAreGoneFromItAndCannotBeWrittenAgain) {
    const PatientEvent written = need(store->writeEvent(event("2026-02-10", "injection")));
    need(store->removeEvent(written.id));
    EXPECT_TRUE(listed(patient.id).empty());
    EXPECT_FALSE(store->removeEvent(written.id));
    const auto again = store->writeEvent(written);
    ASSERT_FALSE(again);
    EXPECT_THAT(reasons(again.problems()), HasSubstr("taken off the list"));
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(EventsOfAPatient, AreRefusedWithoutADayAKindOrAPatient) {
    EXPECT_FALSE(store->writeEvent(event("2026-02-30", "injection")));
    EXPECT_FALSE(store->writeEvent(event("", "injection")));
    EXPECT_FALSE(store->writeEvent(event("2026-02-10", "")));
    PatientEvent nobodys = event("2026-02-10", "injection");
    nobodys.patient = PatientId{"0123"};
    EXPECT_FALSE(store->writeEvent(nobodys));
    EXPECT_TRUE(listed(patient.id).empty());
}

TEST_F(EventsOfAPatient, OfADuplicateAreThePatientsUntilTheyArePartedAgain) {
    const Patient duplicate = somebody("Quilon Fernwhistl", "Q-1707");
    PatientEvent theirs = event("2026-01-05", "surgery");
    theirs.patient = duplicate.id;
    need(store->writeEvent(theirs));
    need(store->writeEvent(event("2026-02-10", "injection")));
    need(store->mergePatients(duplicate.id, patient.id));
    EXPECT_THAT(listed(patient.id), ElementsAre("2026-01-05 surgery", "2026-02-10 injection"));
    need(store->partPatients(duplicate.id));
    EXPECT_THAT(listed(duplicate.id), ElementsAre("2026-01-05 surgery"));
    EXPECT_THAT(listed(patient.id), ElementsAre("2026-02-10 injection"));
}

TEST_F(EventsOfAPatient, AreErasedWithThePatientAndTheRecordStaysWhole) {
    need(store->writeEvent(event("2026-02-10", "injection", "told nobody else")));
    need(store->erasePatient(patient.id, "asked to"));
    EXPECT_TRUE(need(store->verify()).sound());
    EXPECT_FALSE(store->eventsOf(patient.id));
}

TEST_F(EventsOfAPatient, DoNotStandReadableInTheFile) {
    need(store->writeEvent(event("2026-02-10", "injection", "told nobody else")));
    store.reset();
    EXPECT_EQ(contentOf(file).find("told nobody else"), std::string::npos);
    EXPECT_EQ(contentOf(file).find("injection"), std::string::npos);
}

} // namespace
} // namespace rhizograph::testing
