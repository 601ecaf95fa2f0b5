#include "clinicfixture.h"

#include "record/sqlite.h"

#include <algorithm>
#include <csignal>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <sys/wait.h>

namespace rhizograph::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

class TwoAtOnce : public Clinic {
protected:
    TwoAtOnce() {
        options.busyMilliseconds = 30000; // both write without pause, so one may wait long on a busy machine
        store = signedIn("Ada Thornfield");
    }
};

TEST_F(TwoAtOnce, InTwoProcessesOnOneVisitKeepEveryTapOfBoth) {
    const Visit visit = someVisit();
    std::array<int, 2> ends{};
    ASSERT_EQ(::pipe(ends.data()), 0);
    const pid_t other = ::fork();
    if (other == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::execl(RECORD_TAPPER, RECORD_TAPPER, file.c_str(), visit.id.text().c_str(), passphrase, "1",
                nullptr);
        std::_Exit(127);
    }
    ::close(ends[1]);
    std::array<char, 4096> part{};
    std::string said;
    const auto listen = [&] {
        const ssize_t count = ::read(ends[0], part.data(), part.size());
        if (count > 0) said.append(part.data(), static_cast<std::size_t>(count));
        return count > 0;
    };
    ASSERT_TRUE(listen()) << "the other process did not start";
    constexpr int own = 300;
    for (int number = 1; number <= own; ++number)
        need(store->record(visit.id,
                           {{{ItemId{"own"}, Side::right}, Finding{Value::number(number), false, ""}}}));
    // Whoever waits for the lock sleeps between tries: let the other come to its turn, however busy the
    // machine.
    while (std::count(said.begin(), said.end(), '\n') < 10 && listen()) {
    }
    ::kill(other, SIGKILL);
    while (listen()) {
    }
    ::close(ends[0]);
    ::waitpid(other, nullptr, 0);
    said.resize(said.rfind('\n'));
    const int acknowledged =
        std::stoi(said.substr(said.rfind('\n') == std::string::npos ? 0 : said.rfind('\n') + 1));

    int mine = 0;
    int theirs = 0;
    int place = 0;
    for (const FindingEvent& event : need(store->eventsAfter(visit.id, 0))) {
        EXPECT_EQ(event.number, ++place);
        const int number = static_cast<int>(event.finding->value.number());
        const bool isOwn = event.key.item == ItemId{"own"};
        EXPECT_EQ(event.here, isOwn) << "what the other wrote is news, one's own is not";
        if (isOwn)
            EXPECT_EQ(number, ++mine);
        else
            theirs = std::max(theirs, number);
    }
    EXPECT_EQ(mine, own);
    EXPECT_GE(theirs, acknowledged);
    EXPECT_GT(acknowledged, 3) << "the other hardly came to its turn";
    EXPECT_TRUE(need(store->verify()).sound());
    fmt::print("two processes on one visit: {} and {} taps, all kept, in one order\n", mine, theirs);
}

TEST_F(TwoAtOnce, SeeTheCounterMoveOnlyWhenTheOtherWrites) {
    const Visit visit = someVisit();
    auto nurse = signedInAs(Role::nurse);
    std::int64_t seen = need(store->changeCounter());
    need(store->record(visit.id, {token("one", Side::left, "1")}));
    need(store->exam(visit.id));
    need(nurse->exam(visit.id));
    EXPECT_EQ(need(store->changeCounter()), seen) << "own writing and anybody's reading are no news";
    need(nurse->record(visit.id, {token("one", Side::left, "2")}));
    EXPECT_NE(need(store->changeCounter()), seen);
    seen = need(store->changeCounter());
    EXPECT_EQ(need(store->changeCounter()), seen);
}

TEST_F(TwoAtOnce, OnOneFindingShowTheLaterAndTellTheOther) {
    const Visit visit = someVisit();
    auto nurse = signedInAs(Role::nurse);
    need(store->record(visit.id, {token("one", Side::left, "1")}));
    const int seen = need(store->eventsAfter(visit.id, 0)).back().number;
    need(nurse->record(visit.id, {token("one", Side::left, "2")}));
    EXPECT_EQ(need(store->exam(visit.id)).find("one", Side::left)->value, Value::token("2"));
    const auto news = need(store->eventsAfter(visit.id, seen));
    ASSERT_EQ(news.size(), 1U);
    EXPECT_EQ(news[0].by, "The nurse");
    EXPECT_FALSE(news[0].here);
    EXPECT_EQ(need(store->history(visit.id, {ItemId{"one"}, Side::left})).size(), 2U)
        << "the earlier one is kept";
}

TEST_F(TwoAtOnce, CannotWriteToAVisitTheOtherHasSigned) {
    const Visit visit = someVisit();
    auto clinician = signedInAs(Role::clinician);
    need(clinician->sign(visit.id, "knowledge-7"));
    EXPECT_THAT(reasons(store->record(visit.id, {token("one", Side::left, "1")}).problems()),
                HasSubstr("signed"));
    EXPECT_FALSE(store->setPlan(visit.id, "later"));
    EXPECT_FALSE(store->setState(visit.id, VisitState::intake));
    EXPECT_FALSE(store->sign(visit.id, "knowledge-7"));
    EXPECT_TRUE(store->addAddendum(visit.id, "later").ok());
}

class Duplicates : public Clinic {
protected:
    std::vector<std::string> found(const std::string& text) {
        std::vector<std::string> out;
        for (const Patient& one : need(store->searchPatients(text)))
            out.push_back(one.identity.name);
        return out;
    }
    Patient patient = somebody("Quillon Fernwhistle", "Q-1077");
    Patient duplicate = somebody("Quilon Fernwhistl", "Q-1707");
    Visit early = need(store->addVisit(duplicate.id, "2025-01-02"));
    Visit late = need(store->addVisit(patient.id, "2026-03-04"));
};

TEST_F(Duplicates, JoinedAreOnePersonWithAllVisitsInOrder) {
    need(store->mergePatients(duplicate.id, patient.id));
    EXPECT_THAT(found("fernwhistl"), ElementsAre("Quillon Fernwhistle"));
    EXPECT_THAT(found("q-1707"), ElementsAre("Quillon Fernwhistle")) << "whoever holds the old number";
    const auto joined = need(store->duplicatesOf(patient.id));
    ASSERT_EQ(joined.size(), 1U);
    EXPECT_EQ(joined[0].id, duplicate.id);
    EXPECT_EQ(joined[0].identity, duplicate.identity);
    const auto visits = need(store->visitsOf(patient.id));
    ASSERT_EQ(visits.size(), 2U);
    EXPECT_EQ(visits[0].id, early.id);
    EXPECT_EQ(visits[0].patient, patient.id);
    EXPECT_EQ(visits[1].number, 2);
    const auto newest = need(store->newestVisits({patient.id, duplicate.id}));
    ASSERT_EQ(newest.size(), 1U) << "they are one person";
    EXPECT_EQ(newest[0].id, late.id);
    EXPECT_EQ(newest[0].patient, patient.id);
    EXPECT_EQ(newest[0].number, 2);
    EXPECT_EQ(need(store->patient(duplicate.id)).id, patient.id) << "an old link leads to the person";
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(Duplicates, PartedAreAsTheyWere) {
    need(store->mergePatients(duplicate.id, patient.id));
    need(store->partPatients(duplicate.id));
    EXPECT_TRUE(need(store->duplicatesOf(patient.id)).empty());
    EXPECT_THAT(found("q-1707"), ElementsAre("Quilon Fernwhistl"));
    EXPECT_EQ(need(store->patient(duplicate.id)).identity, duplicate.identity);
    EXPECT_EQ(need(store->visitsOf(duplicate.id)).size(), 1U);
    EXPECT_EQ(need(store->visitsOf(patient.id)).size(), 1U);
    EXPECT_EQ(need(store->visitsOf(patient.id))[0].number, 1);
    EXPECT_EQ(found("fernwhistl").size(), 2U);
    EXPECT_TRUE(need(store->verify()).sound());
}

TEST_F(Duplicates, AreNotJoinedInCirclesOrChains) {
    const Patient third = somebody("Third Person", "T-3");
    EXPECT_FALSE(store->mergePatients(patient.id, patient.id));
    EXPECT_FALSE(store->partPatients(patient.id));
    need(store->mergePatients(duplicate.id, patient.id));
    EXPECT_FALSE(store->mergePatients(duplicate.id, third.id)) << "belongs to another already";
    EXPECT_FALSE(store->mergePatients(patient.id, third.id)) << "has a duplicate of its own";
    EXPECT_FALSE(store->mergePatients(patient.id, duplicate.id));
    EXPECT_FALSE(store->mergePatients(PatientId{"nobody"}, patient.id));
    // Joining to a duplicate joins to the person behind it.
    need(store->mergePatients(third.id, duplicate.id));
    EXPECT_EQ(need(store->patient(third.id)).id, patient.id);
}

TEST_F(Duplicates, AreJoinedForEverybodySignedIn) {
    auto other = signedIn("Ada Thornfield");
    EXPECT_EQ(need(other->searchPatients("fernwhistl")).size(), 2U);
    need(store->mergePatients(duplicate.id, patient.id));
    EXPECT_EQ(need(other->searchPatients("fernwhistl")).size(), 1U);
    need(store->partPatients(duplicate.id));
    EXPECT_EQ(need(other->searchPatients("fernwhistl")).size(), 2U);
}

class Erasing : public Duplicates {};

TEST_F(Erasing, RemovesThePersonWithDuplicatesAndSignedVisitsAndLeavesTheReason) {
    need(store->record(late.id, {token("one", Side::left, "1")}));
    need(store->sign(late.id, "knowledge-7"));
    need(store->mergePatients(duplicate.id, patient.id));
    somebody("Third Person", "T-3");
    EXPECT_FALSE(store->erasePatient(patient.id, "")) << "a reason is needed";
    need(store->erasePatient(duplicate.id, "asked to be forgotten")); // by either of their ids
    EXPECT_THAT(found("fernwhistl"), IsEmpty());
    EXPECT_FALSE(store->patient(patient.id));
    EXPECT_FALSE(store->patient(duplicate.id));
    EXPECT_FALSE(store->visit(late.id));
    EXPECT_FALSE(store->exam(early.id));
    EXPECT_EQ(found("").size(), 1U);
    std::vector<std::string> subjects;
    std::string reason;
    for (const AuditEntry& entry : need(store->audit(100))) {
        if (entry.action != AuditAction::patientErased) continue;
        subjects.push_back(entry.subject);
        if (entry.subject == patient.id.text()) reason = entry.detail;
    }
    EXPECT_THAT(subjects, ::testing::UnorderedElementsAre(patient.id.text(), duplicate.id.text(),
                                                          early.id.text(), late.id.text()));
    EXPECT_EQ(reason, "asked to be forgotten");
    const Verification whole = need(store->verify());
    EXPECT_TRUE(whole.sound()) << whole.damage.front().what;
}

TEST_F(Erasing, LeavesNoSealedByteInTheFiles) {
    need(store->addNote(late.id, "a note about this person"));
    std::vector<std::string> sealed;
    {
        sqlite::Database look{file, 100};
        for (const char* from : {"select sealed from patient", "select sealed from patient_version",
                                 "select sealed from visit_event"})
            for (const sql::Row& row : look.rows(from))
                sealed.push_back(textOf(row.bytes(0)));
    }
    ASSERT_EQ(sealed.size(), 5U);
    const auto inFiles = [&] {
        const std::string all = contentOf(file) + contentOf(file.string() + "-wal");
        return std::count_if(sealed.begin(), sealed.end(),
                             [&](const std::string& one) { return all.find(one) != std::string::npos; });
    };
    EXPECT_EQ(inFiles(), 5) << "the search finds nothing even before";
    need(store->erasePatient(patient.id, "asked to be forgotten"));
    need(store->erasePatient(duplicate.id, "asked to be forgotten"));
    EXPECT_EQ(inFiles(), 0);
}

TEST_F(Erasing, IsNoticedByEverybodySignedIn) {
    auto other = signedIn("Ada Thornfield");
    EXPECT_EQ(need(other->searchPatients("")).size(), 2U);
    need(store->erasePatient(patient.id, "asked to be forgotten"));
    EXPECT_EQ(need(other->searchPatients("")).size(), 1U);
    EXPECT_FALSE(other->record(late.id, {token("one", Side::left, "1")}));
}

} // namespace
} // namespace rhizograph::testing
