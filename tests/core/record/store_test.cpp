#include "clinicfixture.h"

#include <map>

#include <algorithm>
#include <gmock/gmock.h>
#include <sys/stat.h>

namespace rhizograph::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

class ARecord : public Clinic {};

std::vector<std::string> names(const std::vector<Patient>& patients) {
    std::vector<std::string> out;
    for (const Patient& patient : patients)
        out.push_back(patient.identity.name);
    return out;
}

TEST_F(ARecord, IsCreatedForItsOwnerAlone) {
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        struct stat info {};
        ASSERT_EQ(::stat(entry.path().c_str(), &info), 0);
        EXPECT_EQ(info.st_mode & 0777U, 0600U) << entry.path();
    }
}

TEST_F(ARecord, IsNotCreatedOverAnExistingFile) {
    const Outcome second = createClinic(file, "Other", {"Bo", Role::administrator, passphrase}, options);
    ASSERT_FALSE(second);
    EXPECT_THAT(reasons(second.problems()), HasSubstr("already a file"));
    EXPECT_EQ(need(store->clinicName()), "Clinic of the Nine Bridges");
}

TEST_F(ARecord, OfANewClinicNeedsAnAdministratorWithAPassphraseAndLeavesNothingOtherwise) {
    const auto other = folder.path() / "other.rhz";
    EXPECT_FALSE(createClinic(other, "Other", {"Bo", Role::nurse, passphrase}, options));
    EXPECT_FALSE(createClinic(other, "Other", {"Bo", Role::administrator, "short"}, options));
    EXPECT_FALSE(createClinic(other, "", {"Bo", Role::administrator, passphrase}, options));
    EXPECT_FALSE(std::filesystem::exists(other));
}

TEST_F(ARecord, KeepsPatientsVisitsAndFindingsWhenOpenedAgain) {
    const Patient patient = somebody();
    const Visit visit = need(store->addVisit(patient.id, "2026-03-04"));
    need(store->record(
        visit.id,
        {token("reflex.ankle", Side::left, "0"),
         token("reflex.ankle", Side::right, "2", true),
         {{ItemId{"measure.slr"}, Side::left}, Finding{Value::number(37.5), false, "to the calf"}},
         {{ItemId{"history.text"}, Side::none}, Finding{Value::text("fell off a ladder"), false, ""}},
         {{ItemId{"gait.heel"}, Side::left}, Finding{Value::notTestable("pain"), false, ""}}}));
    const Exam before = need(store->exam(visit.id));
    store.reset();
    store = signedIn("Ada Thornfield");
    const Exam after = need(store->exam(visit.id));
    EXPECT_EQ(after, before);
    EXPECT_EQ(after.findings().size(), 5U);
    EXPECT_EQ(after.find("measure.slr", Side::left)->value, Value::number(37.5));
    EXPECT_EQ(after.find("measure.slr", Side::left)->note, "to the calf");
    EXPECT_TRUE(after.find("reflex.ankle", Side::right)->bulk);
    EXPECT_EQ(after.find("history.text")->value, Value::text("fell off a ladder"));
    EXPECT_EQ(after.find("gait.heel", Side::left)->value, Value::notTestable("pain"));
    EXPECT_EQ(after.subject.sex, "male");
    EXPECT_EQ(after.subject.age, 64) << "65 only on the thirtieth of May";
    EXPECT_EQ(after.date, "2026-03-04");
    EXPECT_EQ(need(store->patient(patient.id)).identity, patient.identity);
}

TEST_F(ARecord, ReadsSeveralVisitsAtOnceEachAsByItself) {
    const Patient patient = somebody();
    const Visit first = need(store->addVisit(patient.id, "2026-03-04"));
    const Visit second = need(store->addVisit(patient.id, "2026-03-11"));
    need(store->record(first.id, {token("reflex.ankle", Side::left, "0")}));
    need(store->record(second.id,
                       {token("reflex.ankle", Side::left, "1"), token("gait.heel", Side::right, "1")}));
    need(store->record(second.id, {{{ItemId{"gait.heel"}, Side::right}, std::nullopt}}));
    const auto read = store->exams({second.id, VisitId{"nowhere"}, first.id});
    ASSERT_EQ(read.size(), 3U);
    EXPECT_EQ(need(read[0]), need(store->exam(second.id)));
    EXPECT_EQ(need(read[0]).findings().size(), 1U) << "what was taken back is not read";
    EXPECT_FALSE(read[1]) << "there is no such visit";
    EXPECT_EQ(need(read[2]), need(store->exam(first.id)));
    store->signOut();
    for (const Result<Exam>& exam : store->exams({first.id, second.id}))
        EXPECT_FALSE(exam) << "nobody is signed in";
}

TEST_F(ARecord, ShowsTheLastValueAndRemembersEveryOneBefore) {
    const Visit visit = someVisit();
    const FindingKey key{ItemId{"reflex.knee"}, Side::right};
    need(store->record(visit.id, {token("reflex.knee", Side::right, "1")}));
    time.pass(std::chrono::seconds{5});
    need(store->record(visit.id, {token("reflex.knee", Side::right, "2")}));
    need(store->record(visit.id, {{key, std::nullopt}}));
    EXPECT_EQ(need(store->exam(visit.id)).find(key), nullptr);
    const auto history = need(store->history(visit.id, key));
    ASSERT_EQ(history.size(), 3U);
    EXPECT_EQ(history[0].finding->value, Value::token("1"));
    EXPECT_EQ(history[0].at, "2026-03-04T09:00:00Z");
    EXPECT_EQ(history[0].by, "Ada Thornfield");
    EXPECT_EQ(history[1].finding->value, Value::token("2"));
    EXPECT_EQ(history[1].at, "2026-03-04T09:00:05Z");
    EXPECT_FALSE(history[2].finding);
}

TEST_F(ARecord, NamesTheNewestVisitOfManyPatientsAtOnce) {
    std::vector<PatientId> asked;
    std::map<PatientId, Visit> expected;
    for (int i = 0; i < 60; ++i) {
        const PatientId id = somebody("Somebody " + std::to_string(i), std::to_string(i)).id;
        asked.push_back(id);
        for (int visit = 0; visit < i % 4; ++visit)
            need(store->addVisit(id, visit % 2 == 0 ? "2026-02-1" + std::to_string(visit) : "2025-06-01"));
        if (const auto visits = need(store->visitsOf(id)); !visits.empty())
            expected.emplace(id, visits.back());
    }
    const auto newest = need(store->newestVisits(asked));
    ASSERT_EQ(newest.size(), 45U) << "a quarter was never seen";
    for (const Visit& visit : newest) {
        ASSERT_TRUE(expected.contains(visit.patient));
        EXPECT_EQ(visit.id, expected.at(visit.patient).id);
        EXPECT_EQ(visit.number, expected.at(visit.patient).number);
    }
    EXPECT_TRUE(need(store->newestVisits({})).empty());
}

TEST_F(ARecord, CountsVisitsOfAPatientByDate) {
    const Patient patient = somebody();
    const Visit second = need(store->addVisit(patient.id, "2026-03-04"));
    const Visit first = need(store->addVisit(patient.id, "2025-11-20"));
    const auto visits = need(store->visitsOf(patient.id));
    ASSERT_EQ(visits.size(), 2U);
    EXPECT_EQ(visits[0].id, first.id);
    EXPECT_EQ(visits[0].number, 1);
    EXPECT_EQ(visits[1].id, second.id);
    EXPECT_EQ(visits[1].number, 2);
    EXPECT_EQ(need(store->visitsOn("2025-11-20")).size(), 1U);
    EXPECT_EQ(visits[1].author, "Ada Thornfield");
    EXPECT_EQ(visits[1].state, VisitState::intake);
}

TEST_F(ARecord, RefusesDatesThatAreNone) {
    const Patient patient = somebody();
    for (const char* date : {"2026-02-30", "2026-13-01", "04.03.2026", "2026-3-4", "", "2026-03-04 "})
        EXPECT_FALSE(store->addVisit(patient.id, date)) << date;
    EXPECT_FALSE(store->addPatient({"Name", "", "2001-02-29", "", "", ""}));
    EXPECT_TRUE(store->addPatient({"Name", "", "2000-02-29", "", "", ""}).ok());
    EXPECT_FALSE(store->addPatient({"", "12", "", "", "", ""}));
    EXPECT_FALSE(store->addPatient({"Name", "", "", "unknown", "", ""}));
}

TEST_F(ARecord, FindsPatientsWhateverTheCaseAndAccents) {
    somebody("Åsa Öberg-Lindqvist", "A-1");
    somebody("Marten Bjorkson", "B-22");
    somebody("NGUYỄN Thị Hồng", "C-3");
    EXPECT_THAT(names(need(store->searchPatients("oberg asa"))), ElementsAre("Åsa Öberg-Lindqvist"));
    EXPECT_THAT(names(need(store->searchPatients("BJÖRK"))), ElementsAre("Marten Bjorkson"));
    EXPECT_THAT(names(need(store->searchPatients("nguyen hong"))), ElementsAre("NGUYỄN Thị Hồng"));
    EXPECT_THAT(names(need(store->searchPatients("b-2 marten"))), ElementsAre("Marten Bjorkson"));
    EXPECT_TRUE(need(store->searchPatients("marten asa")).empty());
}

TEST_F(ARecord, PutsTheBestMatchFirst) {
    somebody("Zeno Ninety", "88");
    somebody("Anna Tall", "1088");
    somebody("Bert Eightyeight", "9");
    EXPECT_THAT(names(need(store->searchPatients("88"))), ElementsAre("Zeno Ninety", "Anna Tall"));
    somebody("Mary Langton", "1");
    somebody("Lang Osric", "2");
    somebody("Volang Orm", "3");
    EXPECT_THAT(names(need(store->searchPatients("lang"))),
                ElementsAre("Lang Osric", "Mary Langton", "Volang Orm"));
    EXPECT_EQ(need(store->searchPatients("lang", 1)).size(), 1U);
}

TEST_F(ARecord, ListsEveryoneByNewestVisitWhenNothingIsTyped) {
    const Patient early = somebody("Early Bird", "1");
    const Patient late = somebody("Late Riser", "2");
    somebody("Never Seen", "3");
    need(store->addVisit(late.id, "2026-03-04"));
    need(store->addVisit(early.id, "2026-03-02"));
    EXPECT_THAT(names(need(store->searchPatients(""))),
                ElementsAre("Late Riser", "Early Bird", "Never Seen"));
}

TEST_F(ARecord, SeesWhatAnotherConnectionWrote) {
    auto other = signedIn("Ada Thornfield");
    const Patient patient = somebody();
    EXPECT_THAT(names(need(other->searchPatients("fernwhistle"))), ElementsAre("Quillon Fernwhistle"));
    Patient corrected = patient;
    corrected.identity.name = "Quillon Fernwhistler";
    need(other->updatePatient(corrected));
    EXPECT_EQ(need(store->patient(patient.id)).identity.name, "Quillon Fernwhistler");
}

TEST_F(ARecord, KeepsPlanNotesAndAcknowledgements) {
    const Visit visit = someVisit();
    EXPECT_EQ(need(store->plan(visit.id)), "");
    need(store->setPlan(visit.id, "first thought"));
    need(store->setPlan(visit.id, "second thought"));
    EXPECT_EQ(need(store->plan(visit.id)), "second thought");
    need(store->addNote(visit.id, "came by taxi"));
    ASSERT_EQ(need(store->notes(visit.id)).size(), 1U);
    EXPECT_EQ(need(store->notes(visit.id))[0].text, "came by taxi");
    need(store->acknowledge(visit.id, "saddle", "emergency"));
    const auto acknowledged = need(store->acknowledgements(visit.id));
    ASSERT_EQ(acknowledged.size(), 1U);
    EXPECT_EQ(acknowledged[0].sign, "saddle");
    EXPECT_EQ(acknowledged[0].urgency, "emergency");
    EXPECT_EQ(acknowledged[0].by, "Ada Thornfield");
    EXPECT_EQ(acknowledged[0].at, "2026-03-04T09:00:00Z");
}

TEST_F(ARecord, CountsFindingsAndOpenRedSigns) {
    const Visit visit = someVisit();
    need(store->record(
        visit.id, {token("a", Side::left, "1"), token("a", Side::right, "1"), token("a", Side::left, "2")}));
    need(store->setOpenRedSigns(visit.id, 2));
    need(store->setState(visit.id, VisitState::toReview));
    const Visit now = need(store->visit(visit.id));
    EXPECT_EQ(now.findings, 2);
    EXPECT_EQ(now.openRedSigns, 2);
    EXPECT_EQ(now.state, VisitState::toReview);
    EXPECT_EQ(need(store->unsignedVisits()).size(), 1U);
}

TEST_F(ARecord, WritesAllChangesOfOneCallOrNone) {
    const Visit visit = someVisit();
    const FindingChange bad{{ItemId{"measure"}, Side::none}, Finding{Value::number(std::nan("")), false, ""}};
    EXPECT_FALSE(store->record(visit.id, {token("a", Side::left, "1"), bad}));
    EXPECT_EQ(store->lastFailure(), Failure::refused);
    EXPECT_TRUE(need(store->exam(visit.id)).findings().empty());
    EXPECT_EQ(store->lastFailure(), Failure::none);
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(ARecord, NeedsSomebodySignedIn) {
    const Visit visit = someVisit();
    store->signOut();
    EXPECT_FALSE(store->signedIn());
    EXPECT_FALSE(store->searchPatients(""));
    EXPECT_FALSE(store->exam(visit.id));
    EXPECT_FALSE(store->plan(visit.id));
    EXPECT_FALSE(store->record(visit.id, {token("a", Side::left, "1")}));
    EXPECT_FALSE(store->duplicate());
    EXPECT_TRUE(store->users().ok());
    EXPECT_TRUE(store->clinicName().ok());
}

TEST_F(ARecord, DuplicateGoesOnAfterTheFirstSignsOut) {
    const Visit visit = someVisit();
    auto second = need(store->duplicate());
    store->signOut();
    need(second->record(visit.id, {token("a", Side::left, "1")}));
    EXPECT_EQ(need(second->exam(visit.id)).findings().size(), 1U);
}

TEST_F(ARecord, KeepsSettings) {
    EXPECT_FALSE(need(store->setting("idle_minutes")));
    need(store->setSetting("idle_minutes", "5"));
    need(store->setSetting("idle_minutes", "7"));
    store->signOut();
    EXPECT_EQ(need(store->setting("idle_minutes")), "7");
    EXPECT_FALSE(store->setSetting("idle_minutes", "9"));
}

} // namespace
} // namespace rhizograph::testing
