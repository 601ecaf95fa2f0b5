// Documents of all cases against the R4 definitions that the npm packages fhir 4.12.0, ajv 8.20.0 with the R4
// JSON schema, and fhirpath 5.2.2 carry (HL7 FHIR R4, 4.0.1, 2019). The checkers come with packaging/deps
// --tests.

#include "exchange/democlinic.h"
#include "exchange/examfile.h"
#include "exchange/fhir.h"
#include "support/process.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace rhizograph::cli {
namespace {

namespace fs = std::filesystem;
using nlohmann::json;
using rhizograph::testing::ProcessResult;
using rhizograph::testing::runProcess;

const fs::path kData = RHIZOGRAPH_TEST_DATA;
const fs::path kKnowledge = fs::path{RHIZOGRAPH_RESOURCES} / "knowledge";

const Knowledge& knowledge() {
    static const auto loaded = Knowledge::load(kKnowledge);
    return *loaded;
}

class FhirOutside : public ::testing::Test {
protected:
    FhirOutside() {
        std::string pattern = (fs::temp_directory_path() / "fhir.XXXXXX").string();
        folder_ = ::mkdtemp(pattern.data());
    }
    ~FhirOutside() override { fs::remove_all(folder_); }

    void SetUp() override {
        ASSERT_TRUE(fs::exists(kData / "outside" / "node_modules" / "fhir"))
            << "the outside checkers are not installed: packaging/deps --tests";
    }

    /// The document as the library writes it: the program needs a start for each.
    fs::path written(const fs::path& file, const FhirCodes& codes) {
        const auto exam = readExamFile(file, knowledge().catalogue());
        const Assessment assessment = assess(*exam, knowledge());
        const fs::path out = folder_ / (file.stem().string() + ".json");
        std::ofstream{out} << fhirDocument({*exam, assessment, randomUuid(), "2026-03-04T10:20:00Z", "1.0.0"},
                                           knowledge(), codes);
        return out;
    }

    fs::path exported(const fs::path& exam) {
        const fs::path out = folder_ / (exam.stem().string() + ".json");
        const ProcessResult result = runProcess(
            {RHIZO_PROGRAM, "export", exam.string(), "--format", "fhir", "--output", out.string()}, {});
        EXPECT_EQ(result.code, 0) << result.err;
        return out;
    }

    static ProcessResult checked(const std::vector<fs::path>& documents) {
        std::vector<std::string> words{"/usr/bin/env", "node",
                                       (kData / "outside" / "fhir-check.mjs").string()};
        for (const fs::path& document : documents)
            words.push_back(document.string());
        return runProcess(words, {});
    }

    /// Breaks one thing at a time within the last document of a collection; each must be refused.
    void expectBroken(const json& collection) {
        const auto in = [](json& d, const std::string& type) -> json& {
            for (json& entry : d["entry"].back()["resource"]["entry"])
                if (entry["resource"]["resourceType"] == type) return entry["resource"];
            throw std::runtime_error("no " + type);
        };
        const std::vector<std::function<void(json&)>> breaches = {
            [](json& d) { d["entry"][0]["resource"]["birthDate"] = "May"; },
            [](json& d) { d["entry"].back()["resource"].erase("timestamp"); },
            [&](json& d) { in(d, "Encounter").erase("class"); },
            [&](json& d) { in(d, "Provenance").erase("recorded"); },
            [&](json& d) { in(d, "Provenance")["agent"][0]["who"]["reference"] = "urn:uuid:nobody"; },
            [&](json& d) {
                in(d, "Composition")["author"][0] = {
                    {"reference", d["entry"].back()["resource"]["entry"][0]["fullUrl"]}};
            },
        };
        std::vector<fs::path> files;
        for (const auto& breach : breaches) {
            json broken = collection;
            breach(broken);
            files.push_back(folder_ / ("broken-collection-" + std::to_string(files.size()) + ".json"));
            std::ofstream{files.back()} << broken;
        }
        const ProcessResult result = checked(files);
        for (const fs::path& file : files)
            EXPECT_NE(result.out.find("REJECTED " + file.string()), std::string::npos) << file << "\n"
                                                                                       << result.out;
    }

    fs::path folder_;
};

TEST_F(FhirOutside, TheDocumentsOfAllCasesHaveNoError) {
    const auto codes = FhirCodes::load(kKnowledge / "fhir.json", knowledge().catalogue());
    ASSERT_TRUE(codes.ok());
    std::vector<fs::path> documents;
    for (const auto& entry : fs::recursive_directory_iterator(kData / "cases"))
        if (entry.path().extension() == ".json") documents.push_back(written(entry.path(), *codes));
    ASSERT_GT(documents.size(), 100U);
    const ProcessResult result = checked(documents);
    EXPECT_EQ(result.code, 0) << result.out << result.err;
    EXPECT_EQ(std::count(result.out.begin(), result.out.end(), '\n'), static_cast<long>(documents.size()));
    EXPECT_EQ(result.out.find("REJECTED"), std::string::npos);
}

TEST_F(FhirOutside, TheExportsOfTheDemoClinicHaveNoErrorWithNamesAndWithout) {
    const auto codes = FhirCodes::load(kKnowledge / "fhir.json", knowledge().catalogue());
    ASSERT_TRUE(codes.ok());
    const auto made =
        createDemoClinic(folder_ / "demo.clinic", fs::path{RHIZOGRAPH_RESOURCES} / "demo" / "clinic.json",
                         knowledge(), systemClock()());
    ASSERT_TRUE(made.ok());
    const auto store = openClinic(folder_ / "demo.clinic");
    ASSERT_TRUE((*store)->signIn((*store)->users()->front().id, made->passphrase).ok());
    std::vector<fs::path> documents;
    const auto patients = (*store)->searchPatients("");
    for (const Patient& patient : *patients) {
        const auto record = readPatientRecord(**store, patient.id);
        ASSERT_TRUE(record.ok());
        const bool bare = documents.size() < 4; // they differ in what is left out only
        for (const PatientRecord& each :
             bare ? std::vector{*record, withoutIdentity(*record)} : std::vector{*record}) {
            documents.push_back(folder_ / ("patient-" + std::to_string(documents.size()) + ".json"));
            std::ofstream{documents.back()}
                << fhirCollection(each, "2026-03-04T10:20:00Z", "1.0.0", knowledge(), *codes);
        }
    }
    ASSERT_GT(documents.size(), 9U);
    const ProcessResult result = checked(documents);
    EXPECT_EQ(result.code, 0) << result.out << result.err;
    EXPECT_EQ(result.out.find("REJECTED"), std::string::npos);
    expectBroken(json::parse(std::ifstream{documents.front()}));
}

TEST_F(FhirOutside, TheCheckRefusesBrokenDocuments) {
    const json good = json::parse(std::ifstream{exported(kData / "cases" / "textbook" / "root-L5.json")});
    const auto indexOf = [&](const std::string& type) {
        for (std::size_t i = 0; i < good["entry"].size(); ++i)
            if (good["entry"][i]["resource"]["resourceType"] == type) return i;
        throw std::runtime_error("no " + type);
    };
    const auto in = [&](json& d, const std::string& type) -> json& {
        return d["entry"][indexOf(type)]["resource"];
    };
    const std::vector<std::function<void(json&)>> breaches = {
        [](json& d) { d.erase("identifier"); },
        [](json& d) { d.erase("timestamp"); },
        [](json& d) { d["entry"].erase(0); },
        [](json& d) { d["entry"][1]["fullUrl"] = d["entry"][2]["fullUrl"]; },
        [&](json& d) { in(d, "Observation").erase("status"); },
        [&](json& d) { in(d, "Observation").erase("code"); },
        [&](json& d) { in(d, "Observation")["status"] = "done"; },
        [&](json& d) {
            in(d, "Observation")["valueString"] = "also";
            in(d, "Observation")["valueInteger"] = 3;
        },
        [&](json& d) { in(d, "Observation")["effectiveDateTime"] = "yesterday"; },
        [&](json& d) { in(d, "Observation")["colour"] = "red"; },
        [&](json& d) {
            in(d, "Observation")["subject"]["reference"] = "urn:uuid:00000000-0000-4000-8000-000000000000";
        },
        [&](json& d) {
            in(d, "Observation")["subject"]["reference"] = d["entry"][indexOf("Composition")]["fullUrl"];
        },
        [&](json& d) { in(d, "Composition").erase("title"); },
        [&](json& d) { in(d, "RiskAssessment")["prediction"][0]["probabilityDecimal"] = "much"; },
        [&](json& d) { in(d, "Flag").erase("subject"); },
    };
    std::vector<fs::path> files;
    for (const auto& breach : breaches) {
        json broken = good;
        breach(broken);
        files.push_back(folder_ / ("broken-" + std::to_string(files.size()) + ".json"));
        std::ofstream{files.back()} << broken;
    }
    const ProcessResult result = checked(files);
    EXPECT_EQ(result.code, 1);
    for (const fs::path& file : files)
        EXPECT_NE(result.out.find("REJECTED " + file.string()), std::string::npos) << file << "\n"
                                                                                   << result.out;
}

TEST_F(FhirOutside, ImportingAnExportGivesTheExamFileBack) {
    const fs::path document = exported(kData / "cases" / "textbook" / "cauda-equina.json");
    const ProcessResult back = runProcess({RHIZO_PROGRAM, "import", document.string()}, {});
    ASSERT_EQ(back.code, 0) << back.err;
    const fs::path exam = folder_ / "exam.json";
    std::ofstream{exam} << back.out;
    const auto assessed = [](const fs::path& file) {
        return runProcess({RHIZO_PROGRAM, "assess", file.string()}, {}).out;
    };
    EXPECT_EQ(assessed(exam), assessed(kData / "cases" / "textbook" / "cauda-equina.json"));
    std::ofstream{folder_ / "half.json"} << "{\"resourceType\": \"Bundle\", \"type\"";
    const ProcessResult half = runProcess({RHIZO_PROGRAM, "import", (folder_ / "half.json").string(),
                                           "--output", (folder_ / "out.json").string()},
                                          {});
    EXPECT_EQ(half.code, 2);
    EXPECT_FALSE(fs::exists(folder_ / "out.json"));
}

} // namespace
} // namespace rhizograph::cli
