// A patient with all visits on the way out of one clinic and into another.

#include "exchange/democlinic.h"
#include "exchange/fhir.h"

#include "randomexam.h"

#include <algorithm>
#include <filesystem>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <iostream>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;
using nlohmann::ordered_json;
using rhizograph::testing::RandomExams;
using ::testing::HasSubstr;

const fs::path kResources = RHIZOGRAPH_RESOURCES;
const TimePoint kToday = std::chrono::sys_days{std::chrono::year{2026} / 3 / 4} + std::chrono::hours{15};
constexpr const char* kNow = "2026-03-04T10:20:00Z";

const Knowledge& knowledge() {
    static const auto loaded = Knowledge::load(kResources / "knowledge");
    return *loaded;
}
const FhirCodes& codes() {
    static const auto loaded =
        FhirCodes::load(kResources / "knowledge" / "fhir.json", knowledge().catalogue());
    return *loaded;
}

template <class T> T need(Result<T> result) {
    if (!result) throw std::runtime_error(result.problems().front().text());
    return std::move(result).value();
}
void need(const Outcome& outcome) {
    if (!outcome) throw std::runtime_error(outcome.problems().front().text());
}

std::string collectionOf(const PatientRecord& record) {
    return fhirCollection(record, kNow, "1.0.0", knowledge(), codes()).dump();
}
Result<PatientRecord> imported(const std::string& text) {
    return patientFromFhir(text, "patient.json", knowledge().catalogue());
}
std::string reasonsOf(const Problems& problems) {
    std::string out;
    for (const Problem& problem : problems)
        out += problem.text() + "\n";
    return out;
}

class FhirRecord : public ::testing::Test {
protected:
    FhirRecord() {
        std::string pattern = (fs::temp_directory_path() / "fhir.XXXXXX").string();
        folder_ = ::mkdtemp(pattern.data());
    }
    ~FhirRecord() override { fs::remove_all(folder_); }

    std::unique_ptr<Store> demo() {
        const fs::path file = folder_ / "demo.clinic";
        const DemoClinic made =
            need(createDemoClinic(file, kResources / "demo" / "clinic.json", knowledge(), kToday));
        return opened(file, made.passphrase);
    }
    std::unique_ptr<Store> empty() {
        const fs::path file = folder_ / "other.clinic";
        ClinicOptions options;
        options.cost = KeyCost::cheapest();
        need(createClinic(file, "Another clinic", {"Otto Elsewhere", Role::administrator, "long enough"},
                          options));
        return opened(file, "long enough");
    }
    static std::vector<PatientRecord> recordsOf(Store& store) {
        std::vector<PatientRecord> out;
        for (const Patient& patient : need(store.searchPatients("")))
            out.push_back(need(readPatientRecord(store, patient.id)));
        return out;
    }
    /// The patient with the most visits.
    static PatientRecord richest(Store& store) {
        const auto all = recordsOf(store);
        return *std::max_element(all.begin(), all.end(), [](const PatientRecord& a, const PatientRecord& b) {
            return a.visits.size() < b.visits.size();
        });
    }

    fs::path folder_;

private:
    static std::unique_ptr<Store> opened(const fs::path& file, const std::string& passphrase) {
        ClinicOptions options;
        options.clock = [] { return kToday; };
        auto store = need(openClinic(file, options));
        for (const User& user : need(store->users()))
            if (user.role == Role::administrator) need(store->signIn(user.id, passphrase));
        return store;
    }
};

TEST_F(FhirRecord, EveryPatientOfTheDemoClinicComesBackAsItWentOut) {
    const auto store = demo();
    std::size_t visits = 0;
    std::size_t papers = 0;
    for (PatientRecord& record : recordsOf(*store)) {
        record.identity.contact = "Mill Street 4 <7>";
        record.identity.notes = "prefers mornings & \"quiet\"";
        record.events.push_back({{}, {}, "2026-01-05", "injection", "left L5", false, "Alma", kNow});
        record.events.push_back({{}, {}, "2026-09-05", "follow_up", "", true, "", kNow});
        const auto back = imported(collectionOf(record));
        ASSERT_TRUE(back.ok()) << reasonsOf(back.problems());
        ASSERT_EQ(*back, record);
        const auto bare = withoutIdentity(record);
        ASSERT_EQ(need(imported(collectionOf(bare))), bare);
        for (const VisitRecord& visit : record.visits) {
            ++visits;
            papers += visit.papers.acknowledgements.size() + visit.papers.addenda.size() +
                      (visit.papers.signature ? 1 : 0);
        }
    }
    EXPECT_GT(visits, 20U);
    EXPECT_GT(papers, 20U);
}

TEST_F(FhirRecord, AnotherClinicTakesTheVisitsExactlyAndHasThemReviewed) {
    const PatientRecord record = richest(*demo());
    ASSERT_GT(record.visits.size(), 3U);
    const auto other = empty();
    const Patient patient = need(addPatientRecord(*other, need(imported(collectionOf(record))), knowledge()));
    const PatientRecord there = need(readPatientRecord(*other, patient.id));
    EXPECT_EQ(there.identity, record.identity);
    ASSERT_EQ(there.visits.size(), record.visits.size());
    for (std::size_t i = 0; i < record.visits.size(); ++i) {
        EXPECT_EQ(there.visits[i].exam, record.visits[i].exam);
        EXPECT_EQ(there.visits[i].papers.plan, record.visits[i].papers.plan);
        EXPECT_FALSE(there.visits[i].papers.signature) << "nobody of this clinic has signed it";
        ASSERT_EQ(there.visits[i].papers.notes.size(), 1U);
        if (const auto& signature = record.visits[i].papers.signature) {
            EXPECT_THAT(there.visits[i].papers.notes[0].text,
                        HasSubstr("Signed there by " + signature->by + ", " + signature->at));
        }
    }
    EXPECT_EQ(need(other->audit()).front().action, AuditAction::imported);
    EXPECT_TRUE(need(other->verify()).sound());
}

TEST_F(FhirRecord, VisitsThatDoNotGoWithThePatientLeaveTheClinicAsItWas) {
    const PatientRecord record = richest(*demo());
    const auto other = empty();
    const Patient first = need(addPatientRecord(*other, record, knowledge()));
    const auto counts = [&] {
        return std::pair{need(other->searchPatients("")).size(), need(other->visitsOf(first.id)).size()};
    };
    const auto before = counts();
    const auto refusal = [&](const PatientRecord& which, const std::optional<PatientId>& into) {
        const auto result = addPatientRecord(*other, which, knowledge(), into);
        return result ? "taken" : reasonsOf(result.problems());
    };
    EXPECT_THAT(refusal(record, {}), HasSubstr("record number"));
    EXPECT_THAT(refusal(record, first.id), HasSubstr("has a visit on"));
    EXPECT_THAT(refusal(withoutIdentity(record), {}), HasSubstr("names nobody"));
    PatientRecord stranger = record;
    stranger.identity.name = "Somebody Else";
    EXPECT_THAT(refusal(stranger, first.id), HasSubstr("another name"));
    const Patient younger =
        need(other->addPatient({"Vesper Moonhollow", "V-1", "2001-02-03", record.identity.sex, "", ""}));
    EXPECT_THAT(refusal(withoutIdentity(record), younger.id), HasSubstr("age or sex"));
    PatientRecord late = record;
    late.identity.recordNumber = "N-2";
    late.visits.back().exam.date = "2026-02-30";
    EXPECT_THAT(refusal(late, {}), HasSubstr("2026-02-30"));
    EXPECT_EQ(counts(), (std::pair{before.first + 1, before.second})) << "only the one added by hand came in";
    EXPECT_TRUE(need(other->visitsOf(younger.id)).empty());
    EXPECT_TRUE(need(other->verify()).sound());
}

TEST_F(FhirRecord, WithoutIdentityNothingAPersonWroteGoesOut) {
    PatientRecord record = richest(*demo());
    record.identity = {"Zebulon Quickthorn", "ZQ-77",  record.identity.birthDate,
                       record.identity.sex,  "Mill 4", "shy"};
    auto& visit = record.visits.back();
    visit.exam.set({ItemId{"history.complaint"}, Side::none}, {Value::text("Zebulon says"), false, {}});
    visit.exam.set({ItemId{"reflex.knee"}, Side::left}, {Value::token("1"), false, "told by Quickthorn"});
    visit.papers.plan = "Call Zebulon";
    visit.papers.notes = {{"Quickthorn phoned", "Alma", kNow},
                          {noteOf("reflexes", {"Zebulon's reflexes", "x", ""}), "Alma", kNow}};
    visit.papers.addenda = {{"Zebulon came back", "Alma", kNow}};
    const std::string text = collectionOf(withoutIdentity(record));
    for (const char* name : {"Zebulon", "Quickthorn", "ZQ-77", "Mill 4", "shy", "Alma", "Clara"})
        EXPECT_EQ(text.find(name), std::string::npos) << name;
    EXPECT_EQ(text.find(record.identity.birthDate), std::string::npos);
    EXPECT_THAT(text, HasSubstr("[left out]"));
    EXPECT_THAT(text, HasSubstr("Words that people wrote were left out of this export."));
    const std::string named = collectionOf(record);
    for (const char* name : {"Zebulon Quickthorn", "ZQ-77", "Zebulon's reflexes", "Words changed by Alma"})
        EXPECT_THAT(named, HasSubstr(name));
}

TEST_F(FhirRecord, MalformedCollectionsAreRefusedOrReadWhole) {
    const PatientRecord record = richest(*demo());
    const std::string good = collectionOf(record);
    const auto refusal = [&](const std::function<void(ordered_json&)>& change) {
        ordered_json document = ordered_json::parse(good);
        change(document);
        const auto result = imported(document.dump());
        return result ? "taken" : reasonsOf(result.problems());
    };
    EXPECT_EQ(refusal([](auto&) {}), "taken");
    EXPECT_THAT(refusal([](auto& d) { d["entry"].erase(0); }), HasSubstr("holds 0 patients"));
    EXPECT_THAT(refusal([](auto& d) { d["entry"].erase(1); }), HasSubstr("not written by this program"));
    EXPECT_THAT(refusal([](auto& d) { d["entry"][0]["resource"]["name"][0]["text"] = "Another"; }),
                HasSubstr("another person"));
    EXPECT_THAT(refusal([](auto& d) { std::swap(d["entry"][2], d["entry"].back()); }),
                HasSubstr("stands after"));
    EXPECT_THAT(refusal([](auto& d) { d["entry"].back()["resource"]["type"] = "message"; }),
                HasSubstr("none of the resources"));
    std::mt19937 random{77};
    int refused = 0;
    for (int round = 0; round < 60; ++round) {
        std::string text = good;
        for (int hits = 1 + static_cast<int>(random() % 3); hits > 0; --hits) {
            const std::size_t at = random() % text.size();
            if (random() % 2 == 0)
                text[at] = static_cast<char>(random() % 256);
            else
                text.erase(at, 1 + random() % 40);
        }
        const auto back = imported(text);
        if (!back) {
            ++refused;
            for (const Problem& problem : back.problems())
                EXPECT_FALSE(problem.reason.empty());
            continue;
        }
        ASSERT_EQ(back->visits.size(), record.visits.size());
        for (std::size_t i = 0; i < record.visits.size(); ++i)
            EXPECT_EQ(back->visits[i].exam.findings().size(), record.visits[i].exam.findings().size());
    }
    EXPECT_GT(refused, 30);
}

} // namespace
} // namespace rhizograph
