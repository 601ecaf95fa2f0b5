// Patients out of one clinic and into another, on the command line.

#include "core/record/clinicfixture.h"
#include "support/process.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace rhizograph::testing {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;
using ::testing::Not;

class RhizoExchange : public Clinic {
protected:
    RhizoExchange() {
        demo = (folder.path() / "demo.clinic").string();
        const ProcessResult made = runProcess({RHIZO_PROGRAM, "demo", "--database", demo});
        if (made.code != 0) throw std::runtime_error(made.err);
        write("demo-secret", "demo clinic only\n");
        write("secret", std::string{passphrase} + "\n");
        store.reset();
    }

    fs::path write(const std::string& name, const std::string& content) {
        std::ofstream(folder.path() / name) << content;
        fs::permissions(folder.path() / name, fs::perms::owner_read | fs::perms::owner_write);
        return folder.path() / name;
    }
    [[nodiscard]] std::string path(const std::string& name) const { return (folder.path() / name).string(); }

    static ProcessResult rhizo(std::vector<std::string> words, const std::vector<std::string>& more) {
        words.insert(words.begin(), RHIZO_PROGRAM);
        words.insert(words.end(), more.begin(), more.end());
        return runProcess(words);
    }
    ProcessResult inDemo(const std::vector<std::string>& words) {
        return rhizo(words, {"--database", demo, "--user", "Clara Demo, clinician", "--passphrase-file",
                             path("demo-secret")});
    }
    ProcessResult here(const std::vector<std::string>& words) {
        return rhizo(words, {"--database", file.string(), "--user", "Ada Thornfield", "--passphrase-file",
                             path("secret")});
    }
    /// The last thing in the audit of our clinic but signing in.
    AuditEntry lastDone() {
        for (const AuditEntry& entry : need(signedIn("Ada Thornfield")->audit()))
            if (entry.action != AuditAction::signedIn) return entry;
        return {};
    }

    std::string demo;
};

TEST_F(RhizoExchange, APatientWithAllVisitsGoesFromOneClinicToAnother) {
    const ProcessResult out =
        inDemo({"export", "--patient", "D-1003", "--names", "yes", "--output", path("patient.json")});
    ASSERT_EQ(out.code, 0) << out.err;
    const ProcessResult in = here({"import", path("patient.json")});
    ASSERT_EQ(in.code, 0) << in.err;
    EXPECT_THAT(in.out, HasSubstr("Cora Thistlewick: 6 visits, to review and sign here"));
    const auto clinic = signedIn("Ada Thornfield");
    const auto found = need(clinic->searchPatients("D-1003"));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(need(clinic->visitsOf(found[0].id)).size(), 6U);
    EXPECT_EQ(lastDone().action, AuditAction::imported);
    const ProcessResult again = here({"import", path("patient.json")});
    EXPECT_EQ(again.code, 2);
    EXPECT_THAT(again.err, HasSubstr("record number"));
    EXPECT_EQ(need(clinic->searchPatients("")).size(), 1U);
}

TEST_F(RhizoExchange, AnExportNamesNobodyUnlessAskedAndIsAudited) {
    const ProcessResult bare = inDemo({"export", "--patient", "D-1003"});
    ASSERT_EQ(bare.code, 0) << bare.err;
    EXPECT_THAT(bare.out, Not(HasSubstr("Thistlewick")));
    EXPECT_THAT(bare.out, Not(HasSubstr("D-1003")));
    const ProcessResult table = inDemo({"export", "--format", "csv"});
    ASSERT_EQ(table.code, 0) << table.err;
    EXPECT_THAT(table.out,
                HasSubstr("patient,day,visit,age,sex,item,label,side,value,unit,state,because,bulk,note"));
    for (const char* name : {"Thistlewick", "Oakhollow", "D-10"})
        EXPECT_THAT(table.out, Not(HasSubstr(name)));
    const ProcessResult whole =
        inDemo({"export", "--format", "csv", "--names", "yes", "--patient", "D-1003"});
    EXPECT_THAT(whole.out, HasSubstr("D-1003,"));
    const ProcessResult log =
        rhizo({"person", "--patient", "D-1003"}, {"--database", demo, "--user", "Alma Demo, administrator",
                                                  "--passphrase-file", path("demo-secret")});
    EXPECT_EQ(log.code, 0) << log.err;
    file = demo;
    ClinicOptions plain;
    options = plain;
    auto clinic = need(openClinic(demo, options));
    for (const User& user : need(clinic->users()))
        if (user.role == Role::administrator) need(clinic->signIn(user.id, "demo clinic only"));
    int exports = 0;
    for (const AuditEntry& entry : need(clinic->audit()))
        if (entry.action == AuditAction::exported) ++exports;
    EXPECT_EQ(exports, 4);
}

TEST_F(RhizoExchange, WhatIsWrongIsToldAndLeavesTheClinicAsItWas) {
    const auto refused = [&](const std::vector<std::string>& words, const std::string& why) {
        const ProcessResult result = here(words);
        EXPECT_EQ(result.code, 2) << words[0];
        EXPECT_THAT(result.err, HasSubstr(why));
    };
    refused({"export"}, "--patient");
    refused({"export", "--patient", "D-9"}, "knows no patient");
    refused({"import", write("half.json", "{\"resourceType\": \"Bundle\", \"type\"").string()}, "half.json");
    refused({"import", write("empty.json", "").string()}, "is empty");
    refused({"import", write("deep.json", std::string(100'000, '[')).string()}, "deep.json");
    refused({"import", write("text.json", "[1, 2]").string()}, "is no FHIR resource");
    refused({"import", write("two.json", R"({"resourceType": "Bundle", "entry": [
        {"resource": {"resourceType": "Patient"}}, {"resource": {"resourceType": "Patient"}}]})")
                           .string()},
            "holds 2 patients");
    refused({"import", write("nobody.json", R"({"resourceType": "Patient", "gender": "male"})").string()},
            "names nobody");
    EXPECT_TRUE(need(signedIn("Ada Thornfield")->searchPatients("")).empty());
    EXPECT_EQ(rhizo({"export"}, {}).code, 2);
    EXPECT_EQ(rhizo({"import", path("half.json"), "--patient", "1"}, {}).code, 2);
}

TEST_F(RhizoExchange, AnotherSystemsPatientBecomesAnIntakeAndWhatIsLeftIsListed) {
    const ProcessResult in =
        here({"import", write("other.json", R"({"resourceType": "Bundle", "type": "searchset",
        "entry": [
        {"resource": {"resourceType": "Patient", "name": [{"given": ["Tamsin"], "family": "Rookvale"}],
                      "gender": "female", "birthDate": "1970-04-05", "telecom": [{"value": "1"}]}},
        {"resource": {"resourceType": "Condition", "code": {"text": "Diabetes", "coding":
            [{"system": "http://hl7.org/fhir/sid/icd-10-cm", "code": "E11.9"}]}}},
        {"resource": {"resourceType": "Condition", "code": {"text": "Hay fever"}}}]})")
                            .string()});
    ASSERT_EQ(in.code, 0) << in.err;
    EXPECT_THAT(in.out, HasSubstr("Tamsin Rookvale: an intake with 1 answers to confirm"));
    EXPECT_THAT(in.err, HasSubstr("not taken: Condition \"Hay fever\": answers no question of the intake"));
    EXPECT_THAT(in.err, HasSubstr("not taken: the patient's telecom: has no place here"));
    const auto clinic = signedIn("Ada Thornfield");
    const auto visits = need(clinic->unsignedVisits());
    ASSERT_EQ(visits.size(), 1U);
    EXPECT_EQ(visits[0].state, VisitState::intake);
    const Exam exam = need(clinic->exam(visits[0].id));
    ASSERT_NE(exam.find("history.diabetes"), nullptr);
    EXPECT_EQ(exam.find("history.diabetes")->note, "from another record: Condition \"Diabetes\", E11.9");
}

TEST_F(RhizoExchange, AListOfPatientsIsShownBeforeItIsTakenAndTakenWholeOrNot) {
    const std::string list =
        write("list.csv", "Record number;Surname;First name;Date of birth;Sex;Shoe size\r\n"
                          "L-1;Brindlecombe;Wren;05.04.1970;f;38\r\n"
                          "L-2;\"Oat; von\";Piers;31.12.1949;M;44\r\n")
            .string();
    const ProcessResult shown = here({"patients", list, "--dates", "dmy"});
    ASSERT_EQ(shown.code, 0) << shown.err;
    EXPECT_THAT(shown.out, HasSubstr("column 2, \"Surname\": family_name"));
    EXPECT_THAT(shown.out, HasSubstr("column 6, \"Shoe size\": left out"));
    EXPECT_THAT(shown.out, HasSubstr("line 3: Piers Oat; von | L-2 | 1949-12-31 | male"));
    EXPECT_THAT(shown.out, HasSubstr("2 patients ready, 0 rows with problems"));
    EXPECT_TRUE(need(signedIn("Ada Thornfield")->searchPatients("")).empty());
    const ProcessResult wrong = here({"patients", list, "--write", "all"});
    EXPECT_EQ(wrong.code, 2);
    EXPECT_THAT(wrong.err, HasSubstr("line 2: \"05.04.1970\" is no date of birth"));
    EXPECT_THAT(wrong.err, HasSubstr("Nothing was imported."));
    const ProcessResult taken = here({"patients", list, "--dates", "dmy", "--write", "all"});
    ASSERT_EQ(taken.code, 0) << taken.err;
    EXPECT_THAT(taken.out, HasSubstr("2 patients imported."));
    EXPECT_EQ(lastDone().detail, "2 patients of a list");
    const ProcessResult again = here({"patients", list, "--dates", "dmy", "--write", "all"});
    EXPECT_EQ(again.code, 2);
    EXPECT_THAT(again.err, HasSubstr("a patient of the clinic has the record number \"L-1\""));
    EXPECT_EQ(need(signedIn("Ada Thornfield")->searchPatients("")).size(), 2U);
    EXPECT_EQ(here({"patients", list, "--columns", "name=9"}).code, 2);
}

} // namespace
} // namespace rhizograph::testing
