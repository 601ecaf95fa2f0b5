#include "clinicfixture.h"

namespace rhizograph {
namespace {

using namespace rhizograph::testing;

class Together : public Clinic {};

const Identity kBirk{"Birk Wendelmoor", "B-7", "1961-05-04", "male", "", ""};

TEST_F(Together, WhatFailsHalfwayLeavesNothingBehind) {
    const std::size_t audited = need(store->audit()).size();
    const Outcome refused = store->together([&]() -> Outcome {
        const Patient patient = need(store->addPatient(kBirk));
        EXPECT_EQ(need(store->searchPatients("Birk")).size(), 1U) << "it is there while work goes on";
        const Visit visit = need(store->addVisit(patient.id, "2026-03-01"));
        need(store->record(visit.id, {token("reflex.ankle", Side::left, "0")}));
        const auto second = store->addVisit(patient.id, "yesterday");
        return second ? Outcome{} : Outcome{second.problems()};
    });
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.problems().front().reason.find("yesterday"), std::string::npos);
    EXPECT_EQ(store->lastFailure(), Failure::refused);
    EXPECT_TRUE(need(store->searchPatients("Birk")).empty());
    EXPECT_TRUE(need(store->unsignedVisits()).empty());
    EXPECT_EQ(need(store->audit()).size(), audited);
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(Together, WhatSucceedsIsThereWhole) {
    Visit visit;
    need(store->together([&]() -> Outcome {
        const Patient patient = need(store->addPatient(kBirk));
        visit = need(store->addVisit(patient.id, "2026-03-01"));
        return store->record(visit.id, {token("reflex.ankle", Side::left, "0")});
    }));
    EXPECT_EQ(need(store->exam(visit.id)).findings().size(), 1U);
    EXPECT_EQ(need(store->searchPatients("Birk")).size(), 1U);
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(Together, AFailureThatTheWorkPassesOverUndoesOnlyThatCall) {
    need(store->together([&]() -> Outcome {
        need(store->addPatient(kBirk));
        static_cast<void>(store->addPatient({"", "", "", "", "", ""}));
        return {};
    }));
    EXPECT_EQ(need(store->searchPatients("")).size(), 1U);
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(Together, AnImportIsAudited) {
    need(store->log(AuditAction::imported, "", "12 patients of a list"));
    EXPECT_EQ(need(store->audit()).front().action, AuditAction::imported);
}

} // namespace
} // namespace rhizograph
