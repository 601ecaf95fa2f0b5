#include "exchange/democlinic.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

const fs::path kResources = RHIZOGRAPH_RESOURCES;
const TimePoint kToday = std::chrono::sys_days{std::chrono::year{2026} / 3 / 4} + std::chrono::hours{15};

class Demo : public ::testing::Test {
protected:
    Demo() {
        std::string pattern = (fs::temp_directory_path() / "demo.XXXXXX").string();
        folder_ = ::mkdtemp(pattern.data());
    }
    ~Demo() override { fs::remove_all(folder_); }

    static const Knowledge& knowledge() {
        static const auto loaded = Knowledge::load(kResources / "knowledge");
        return *loaded;
    }
    Result<DemoClinic> make(const fs::path& data = kResources / "demo" / "clinic.json") {
        return createDemoClinic(folder_ / "demo.clinic", data, knowledge(), kToday);
    }

    fs::path folder_;
};

TEST_F(Demo, IsASoundClinicOfEightToTwelvePatientsWithUpToSixVisits) {
    const auto made = make();
    ASSERT_TRUE(made.ok()) << made.problems().front().text();
    ClinicOptions options;
    options.clock = [] { return kToday; };
    auto store = openClinic(folder_ / "demo.clinic", options);
    ASSERT_TRUE(store.ok());
    std::set<Role> roles;
    const auto users = (*store)->users();
    for (const User& user : *users)
        roles.insert(user.role);
    EXPECT_EQ(roles, (std::set{Role::nurse, Role::clinician, Role::reviewer, Role::administrator}));
    for (const User& user : *users)
        ASSERT_TRUE((*store)->signIn(user.id, made->passphrase).ok()) << user.name;
    const auto admin = std::find_if(users->begin(), users->end(),
                                    [](const User& u) { return u.role == Role::administrator; });
    ASSERT_TRUE((*store)->signIn(admin->id, made->passphrase).ok());

    const auto patients = (*store)->searchPatients("");
    ASSERT_TRUE(patients.ok());
    EXPECT_GE(patients->size(), 8U);
    EXPECT_LE(patients->size(), 12U);
    EXPECT_EQ(static_cast<int>(patients->size()), made->patients);
    std::set<VisitState> states;
    int openSigns = 0;
    int signedVisits = 0;
    for (const Patient& patient : *patients) {
        const auto visits = (*store)->visitsOf(patient.id);
        EXPECT_GE(visits->size(), 1U);
        EXPECT_LE(visits->size(), 6U);
        for (const Visit& visit : *visits) {
            EXPECT_LE(visit.startedAt, utcText(kToday));
            states.insert(visit.state);
            openSigns += visit.openRedSigns > 0 && visit.state != VisitState::signedOff ? 1 : 0;
            signedVisits += visit.state == VisitState::signedOff ? 1 : 0;
        }
    }
    EXPECT_GE(openSigns, 1) << "a red sign waits to be acknowledged";
    EXPECT_GE(signedVisits, 1);
    const auto today = (*store)->visitsOn("2026-03-04");
    ASSERT_EQ(today->size(), 1U);
    EXPECT_EQ(today->front().state, VisitState::intake);
    const auto verified = (*store)->verify();
    ASSERT_TRUE(verified.ok());
    EXPECT_TRUE(verified->sound()) << verified->damage.front().what;
}

TEST_F(Demo, RefusesAnExistingFileAndLeavesItAsItWas) {
    std::ofstream{folder_ / "demo.clinic"} << "mine";
    const auto made = make();
    ASSERT_FALSE(made.ok());
    EXPECT_THAT(made.problems().front().reason, HasSubstr("exists already"));
    EXPECT_EQ(fs::file_size(folder_ / "demo.clinic"), 4U);
}

TEST_F(Demo, DataThatTheCatalogueDoesNotKnowMakesNoClinic) {
    const fs::path data = folder_ / "data.json";
    std::ifstream shipped{kResources / "demo" / "clinic.json"};
    std::string text{std::istreambuf_iterator<char>{shipped}, {}};
    const std::string known = "\"reflex.ankle right\": \"1\"";
    text.replace(text.find(known), known.size(), "\"reflex.ankle right\": \"9\"");
    std::ofstream{data} << text;
    const auto made = make(data);
    ASSERT_FALSE(made.ok());
    EXPECT_THAT(made.problems().front().place, HasSubstr("reflex.ankle right"));
    EXPECT_FALSE(fs::exists(folder_ / "demo.clinic"));
}

} // namespace
} // namespace rhizograph
