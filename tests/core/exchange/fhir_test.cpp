#include "exchange/examfile.h"
#include "exchange/fhir.h"

#include "randomexam.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <iostream>
#include <set>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;
using nlohmann::ordered_json;
using rhizograph::testing::RandomExams;
using ::testing::HasSubstr;

const Knowledge& knowledge() {
    static const auto loaded = Knowledge::load(fs::path{RHIZOGRAPH_RESOURCES} / "knowledge");
    return *loaded;
}

const FhirCodes& codes() {
    static const auto loaded =
        FhirCodes::load(fs::path{RHIZOGRAPH_RESOURCES} / "knowledge" / "fhir.json", knowledge().catalogue());
    return *loaded;
}

ordered_json documentOf(const Exam& exam, const Assessment& assessment = {}) {
    return fhirDocument({exam, assessment, randomUuid(), "2026-03-04T10:20:00Z", "1.0.0"}, knowledge(),
                        codes());
}

Result<Exam> importOf(const std::string& text) {
    return examFromFhir(text, "document.json", knowledge().catalogue());
}

std::string reasonsOf(const Result<Exam>& result) {
    std::string out;
    if (!result)
        for (const Problem& problem : result.problems())
            out += problem.text() + "\n";
    return out;
}

/// The n-th Observation of a document.
ordered_json& observation(ordered_json& document, const std::string& item) {
    for (auto& entry : document["entry"])
        if (entry["resource"]["resourceType"] == "Observation" &&
            entry.dump().find("\"" + item + "\"") != std::string::npos)
            return entry["resource"];
    throw std::runtime_error("no observation of " + item);
}

TEST(Fhir, ExportAndImportGiveTheSameExamForAThousandRandomExams) {
    // Most hold what a usual examination holds, some nearly everything there is to ask.
    RandomExams usual{knowledge().catalogue(), 31337, true, 0.2};
    RandomExams full{knowledge().catalogue(), 31338, true};
    std::size_t findings = 0;
    for (int round = 0; round < 1000; ++round) {
        const Exam exam = round % 25 == 0 ? full.next() : usual.next();
        const auto back = importOf(documentOf(exam).dump());
        ASSERT_TRUE(back.ok()) << back.problems().front().text();
        ASSERT_EQ(*back, exam);
        findings += exam.findings().size();
    }
    std::cout << "1000 exams with " << findings << " findings went out and came back unchanged\n";
    EXPECT_GT(findings, 30000U);
}

TEST(Fhir, EveryFindingIsOneObservationAndNothingElseIsExamined) {
    RandomExams exams{knowledge().catalogue(), 5};
    for (int round = 0; round < 20; ++round) {
        const Exam exam = exams.next();
        const ordered_json document = documentOf(exam);
        const auto count =
            std::count_if(document["entry"].begin(), document["entry"].end(), [](const auto& entry) {
                return entry["resource"]["resourceType"] == "Observation";
            });
        EXPECT_EQ(static_cast<std::size_t>(count), exam.findings().size() + (exam.subject.age ? 1 : 0));
    }
}

TEST(Fhir, NotTestableHasAReasonAndNoValueAndBulkIsTold) {
    Exam exam;
    exam.set({ItemId{"reflex.knee"}, Side::left}, {Value::notTestable("declined"), false, {}});
    exam.set({ItemId{"reflex.ankle"}, Side::left}, {Value::token("2"), true, {}});
    ordered_json document = documentOf(exam);
    const ordered_json knee = observation(document, "reflex.knee");
    EXPECT_EQ(knee["dataAbsentReason"]["coding"][0]["code"], "asked-declined");
    for (const auto& [key, value] : knee.items())
        EXPECT_NE(key.rfind("value", 0), 0U) << key;
    EXPECT_FALSE(knee.contains("interpretation"));
    EXPECT_EQ(observation(document, "reflex.ankle")["method"]["text"], "confirmed normal in bulk");
    EXPECT_EQ(observation(document, "reflex.ankle")["interpretation"][0]["coding"][0]["code"], "N");
}

TEST(Fhir, ProbabilitiesAreADevicesAndAddUpToAHundred) {
    const auto exam = readExamFile(fs::path{RHIZOGRAPH_TEST_DATA} / "cases" / "textbook" / "root-L5.json",
                                   knowledge().catalogue());
    const ordered_json document = documentOf(*exam, assess(*exam, knowledge()));
    double sum = 0;
    int flags = 0;
    std::string device;
    for (const auto& entry : document["entry"])
        if (entry["resource"]["resourceType"] == "Device") device = entry["fullUrl"];
    for (const auto& entry : document["entry"]) {
        const auto& resource = entry["resource"];
        if (resource["resourceType"] == "Flag") {
            ++flags;
            EXPECT_EQ(resource["author"]["reference"], device);
        }
        if (resource["resourceType"] != "RiskAssessment") continue;
        EXPECT_EQ(resource["performer"]["reference"], device);
        EXPECT_THAT(resource["note"][0]["text"].get<std::string>(), HasSubstr("not a diagnosis"));
        for (const auto& prediction : resource["prediction"])
            sum += prediction["probabilityDecimal"].get<double>();
    }
    EXPECT_NEAR(sum, 100, 0.01);
    EXPECT_EQ(flags, 1) << "the grade 3 of the toe";
}

/// LOINC numbers end in a check digit: mod 10, doubling every other digit from the right (LOINC Users' Guide,
/// from memory).
bool hasCheckDigit(const std::string& code) {
    const std::size_t dash = code.find('-');
    int sum = 0;
    for (std::size_t i = 0; i < dash; ++i) {
        int digit = code[dash - 1 - i] - '0';
        if (i % 2 == 0) digit = digit * 2 > 9 ? digit * 2 - 9 : digit * 2;
        sum += digit;
    }
    return (10 - sum % 10) % 10 == code[dash + 1] - '0';
}

TEST(FhirCodesFile, EveryLoincNumberHasItsCheckDigit) {
    for (const auto* list : {&codes().sections, &codes().groups, &codes().items})
        for (const auto& [key, code] : *list)
            EXPECT_TRUE(hasCheckDigit(code.code)) << code.code;
    EXPECT_TRUE(hasCheckDigit(codes().document.code));
    EXPECT_TRUE(hasCheckDigit(codes().age.code));
    EXPECT_FALSE(hasCheckDigit("10212-8"));
}

TEST(FhirImport, RefusesWhatIsNoWholeDocumentOfThisProgramAndSaysWhere) {
    Exam exam;
    exam.subject = {54, "female"};
    exam.date = "2026-03-02";
    exam.set({ItemId{"reflex.knee"}, Side::left}, {Value::token("1"), false, {}});
    exam.set({ItemId{"pain.back"}, Side::none}, {Value::number(6), false, {}});
    exam.set({ItemId{"motion.flexion"}, Side::none}, {Value::number(40), false, {}});
    const auto refusal = [&](const std::function<void(ordered_json&)>& change) {
        ordered_json document = documentOf(exam);
        change(document);
        return reasonsOf(importOf(document.dump()));
    };
    EXPECT_EQ(refusal([](auto&) {}), "");
    EXPECT_THAT(refusal([](auto& d) { d["type"] = "collection"; }), HasSubstr("is no FHIR document"));
    EXPECT_THAT(refusal([](auto& d) { d["entry"].erase(0); }), HasSubstr("begins with its Composition"));
    EXPECT_THAT(refusal([](auto& d) { d["entry"].erase(2); }), HasSubstr("not written by this program"));
    EXPECT_THAT(refusal([](auto& d) { d["entry"].erase(1); }), HasSubstr("holds 0 patients"));
    EXPECT_THAT(
        refusal([](auto& d) { observation(d, "reflex.knee")["code"]["coding"][1]["code"] = "reflex.elbow"; }),
        HasSubstr("the catalogue has no item \"reflex.elbow\""));
    EXPECT_THAT(refusal([](auto& d) { observation(d, "reflex.knee")["status"] = "entered-in-error"; }),
                HasSubstr("only final"));
    EXPECT_THAT(refusal([](auto& d) { observation(d, "reflex.knee").erase("bodySite"); }),
                HasSubstr("/entry/"));
    EXPECT_THAT(refusal([](auto& d) { observation(d, "reflex.knee").erase("valueCodeableConcept"); }),
                HasSubstr("needs one value"));
    EXPECT_THAT(refusal([](auto& d) {
                    observation(d, "reflex.knee")["valueCodeableConcept"]["coding"][0]["code"] = "reflex.2";
                }),
                HasSubstr("does not go with its value"));
    EXPECT_THAT(refusal([](auto& d) {
                    observation(d, "reflex.knee")["valueCodeableConcept"]["coding"][0]["code"] = "reflex.9";
                }),
                HasSubstr("is no value of"));
    EXPECT_THAT(refusal([](auto& d) { observation(d, "motion.flexion")["valueQuantity"]["unit"] = "rad"; }),
                HasSubstr("is not the unit of"));
    EXPECT_THAT(
        refusal([](auto& d) { observation(d, "motion.flexion")["component"] = ordered_json::array(); }),
        HasSubstr("component"));
    EXPECT_THAT(refusal([](auto& d) { d["entry"].push_back(d["entry"][5]); }), HasSubstr("twice"));
    EXPECT_THAT(refusal([](auto& d) { d["entry"].erase(5); }), HasSubstr("missing from the document"));
    EXPECT_THAT(refusal([](auto& d) { observation(d, "pain.back")["valueInteger"] = 60; }),
                HasSubstr("/entry/"));
}

TEST(FhirImport, MalformedInputIsRefusedClearlyOrReadWholeNeverInPart) {
    RandomExams exams{knowledge().catalogue(), 8, true, 0.2};
    std::mt19937 random{2026};
    int refused = 0;
    for (int round = 0; round < 600; ++round) {
        Exam exam = exams.next();
        std::string text = documentOf(exam).dump();
        for (int hits = 1 + static_cast<int>(random() % 4); hits > 0; --hits) {
            const std::size_t at = random() % text.size();
            switch (random() % 4) {
            case 0:
                text[at] = static_cast<char>(random() % 256);
                break;
            case 1:
                text.erase(at, 1 + random() % 40);
                break;
            case 2:
                text.insert(at, text.substr(random() % text.size(), random() % 60));
                break;
            default:
                text.resize(at + 1);
                break;
            }
        }
        const auto back = importOf(text);
        if (back) {
            EXPECT_EQ(back->findings().size(), exam.findings().size()) << "a finding was lost without a word";
            continue;
        }
        ++refused;
        for (const Problem& problem : back.problems()) {
            EXPECT_EQ(problem.file, "document.json");
            EXPECT_FALSE(problem.reason.empty());
        }
    }
    EXPECT_GT(refused, 300);
}

TEST(ExamCsv, LeavesFreeTextOutUnlessAskedAndDisarmsFormulas) {
    Exam exam;
    exam.subject = {54, "female"};
    exam.date = "2026-03-02";
    exam.set({ItemId{"history.complaint"}, Side::none}, {Value::text("=Ada, \"leg\""), false, {}});
    exam.set({ItemId{"reflex.knee"}, Side::left}, {Value::token("1"), false, "said by Bram"});
    exam.set({ItemId{"reflex.ankle"}, Side::left}, {Value::notTestable("pain"), false, {}});
    const std::string plain = examCsv(exam, knowledge().catalogue(), false);
    EXPECT_EQ(plain, "visit_date,age,sex,item,label,side,value,unit,state,because,bulk,note\r\n"
                     "2026-03-02,54,female,history.complaint,\"Main complaint, in the patient's "
                     "words\",,,,text_left_out,,no,\r\n"
                     "2026-03-02,54,female,reflex.knee,Knee reflex,left,1,,abnormal,,no,left_out\r\n"
                     "2026-03-02,54,female,reflex.ankle,Ankle reflex,left,,,not_testable,pain,no,\r\n");
    const std::string full = examCsv(exam, knowledge().catalogue(), true);
    EXPECT_THAT(full, HasSubstr("\"'=Ada, \"\"leg\"\"\""));
    EXPECT_THAT(full, HasSubstr("said by Bram"));
}

} // namespace
} // namespace rhizograph
