#include "exchange/foreign.h"

#include <filesystem>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;
using ::testing::Contains;
using ::testing::HasSubstr;

const Catalogue& catalogue() {
    static const auto loaded = loadCatalogue(fs::path{RHIZOGRAPH_RESOURCES} / "knowledge" / "catalogue.json");
    return *loaded;
}
const FhirCodes& codes() {
    static const auto loaded =
        FhirCodes::load(fs::path{RHIZOGRAPH_RESOURCES} / "knowledge" / "fhir.json", catalogue());
    return *loaded;
}
Result<ForeignIntake> intake(const std::string& text) {
    return intakeFromFhir(text, "other.json", catalogue(), codes(), "2026-03-04");
}
ForeignIntake taken(const std::string& resources) {
    const auto result = intake(R"({"resourceType": "Bundle", "entry": [)" + resources + "]}");
    if (!result) throw std::runtime_error(result.problems().front().text());
    return *result;
}
std::string measure(const std::string& code, const std::string& value, const std::string& date = "2026-03-04",
                    const std::string& status = "final") {
    return R"({"resource": {"resourceType": "Observation", "status": ")" + status +
           R"(", "code": {"text": "a measure", "coding": [{"system": "http://loinc.org", "code": ")" + code +
           R"("}]}, "effectiveDateTime": ")" + date + "T08:00:00Z\", " + value + "}}";
}
std::string quantity(const std::string& value, const std::string& unit) {
    return R"("valueQuantity": {"value": )" + value +
           R"(, "system": "http://unitsofmeasure.org", "code": ")" + unit + "\"}";
}

TEST(Foreign, TakesMeasuresOfTheDayInTheUnitsOfTheCatalogue) {
    // 1 [lb_av] = 0.45359237 kg and 1 [in_i] = 2.54 cm exactly (international yard and pound agreement,
    // 1959); 100 degF = 37.8 Cel.
    const ForeignIntake got =
        taken(measure("8867-4", quantity("72", "/min")) + "," + measure("8310-5", quantity("100", "[degF]")) +
              "," + measure("29463-7", quantity("165", "[lb_av]")) + "," +
              measure("8302-2", quantity("70", "[in_i]")) + "," + measure("72514-3", "\"valueInteger\": 6"));
    const auto number = [&](const char* item) { return got.exam.find(item)->value.number(); };
    EXPECT_EQ(number("vitals.heart_rate"), 72);
    EXPECT_NEAR(number("vitals.temperature"), 37.8, 1e-9);
    EXPECT_NEAR(number("vitals.weight"), 74.8, 1e-9);
    EXPECT_NEAR(number("vitals.height"), 178, 1e-9);
    EXPECT_EQ(number("pain.back"), 6);
    EXPECT_THAT(got.exam.find("pain.back")->note, HasSubstr("confirm that it is of the back"));
    EXPECT_TRUE(got.notTaken.empty());
}

TEST(Foreign, TakesBloodPressureFromItsTwoComponents) {
    const ForeignIntake got = taken(R"({"resource": {"resourceType": "Observation", "status": "final",
        "effectiveDateTime": "2026-03-04", "code": {"coding": [{"system": "http://loinc.org", "code": "85354-9"}]},
        "component": [
         {"code": {"coding": [{"system": "http://loinc.org", "code": "8480-6"}]}, )" +
                                    quantity("128", "mm[Hg]") + R"(},
         {"code": {"coding": [{"system": "http://loinc.org", "code": "8462-4"}]}, )" +
                                    quantity("82", "mm[Hg]") + "}]}}");
    EXPECT_EQ(got.exam.find("vitals.bp_systolic")->value.number(), 128);
    EXPECT_EQ(got.exam.find("vitals.bp_diastolic")->value.number(), 82);
}

TEST(Foreign, ListsWhatItDoesNotTakeAndWhy) {
    const auto left = [](const std::string& resource) {
        const ForeignIntake got = taken(resource);
        EXPECT_TRUE(got.exam.findings().empty()) << resource;
        std::string out;
        for (const std::string& each : got.notTaken)
            out += each + "\n";
        return out;
    };
    EXPECT_THAT(left(measure("8867-4", quantity("72", "/min"), "2026-02-01")),
                HasSubstr("too old, of 2026-02-01"));
    EXPECT_THAT(left(measure("8867-4", quantity("72", "/min"), "2027-02-01")), HasSubstr("after today"));
    EXPECT_THAT(left(measure("8867-4", quantity("72", "/min"), "2026")), HasSubstr("no full date"));
    EXPECT_THAT(left(measure("8867-4", quantity("72", "Hz"))), HasSubstr("value or unit"));
    EXPECT_THAT(left(measure("8867-4", quantity("7200", "/min"))), HasSubstr("250"));
    EXPECT_THAT(left(measure("8867-4", R"("valueString": "fast")")), HasSubstr("value or unit"));
    EXPECT_THAT(left(measure("8867-4", quantity("72", "/min"), "2026-03-04", "preliminary")),
                HasSubstr("not final"));
    EXPECT_THAT(left(measure("2160-0", quantity("1", "mg/dL"))), HasSubstr("answers no question"));
    EXPECT_THAT(left(R"({"resource": {"resourceType": "MedicationStatement"}})"),
                HasSubstr("kind of resource"));
    const auto condition = [](const std::string& code, const std::string& more) {
        return R"({"resource": {"resourceType": "Condition", "code": {"coding": [{"system":
            "http://hl7.org/fhir/sid/icd-10-cm", "code": ")" +
               code + "\"}]}" + more + "}}";
    };
    EXPECT_THAT(left(condition("E11.9", R"(, "verificationStatus": {"coding": [{"code": "refuted"}]})")),
                HasSubstr("not confirmed"));
    EXPECT_THAT(left(condition("C61", R"(, "clinicalStatus": {"coding": [{"code": "remission"}]})")),
                HasSubstr("ask when it was"));
    EXPECT_THAT(left(condition("C44.9", "")), HasSubstr("answers no question"))
        << "minor skin cancer is no answer";
    EXPECT_EQ(taken(condition("C61", "")).exam.find("history.cancer")->value.word(), "yes");
}

TEST(Foreign, TakesTheNewestOfTwoAndMakesNoAnswerOfWhatIsAbsent) {
    const ForeignIntake got = taken(measure("29463-7", quantity("80", "kg"), "2026-01-02") + "," +
                                    measure("29463-7", quantity("78", "kg"), "2026-03-01") + "," +
                                    measure("29463-7", quantity("81", "kg"), "2026-02-01"));
    EXPECT_EQ(got.exam.find("vitals.weight")->value.number(), 78);
    EXPECT_EQ(got.exam.findings().size(), 1U);
}

TEST(Foreign, HostileInputIsReadOrRefusedAndNeverBreaks) {
    const std::string good =
        R"({"resourceType": "Bundle", "entry": [)" + measure("8867-4", quantity("72", "/min")) + "," +
        measure("29463-7", quantity("78", "kg")) +
        R"(, {"resource": {"resourceType": "Patient", "name": [{"text": "A B"}], "birthDate": "1970-01-01"}},
                             {"resource": {"resourceType": "Condition", "code": {"coding": [{"system": "http://hl7.org/fhir/sid/icd-10", "code": "E11"}]}}}]})";
    std::mt19937 random{5};
    const std::vector<std::string> poison{"null", "[]",   "{}",       "1e999",      "-1",
                                          "\"\"", "true", "[[[[]]]]", "\"\\u0000\""};
    int refused = 0;
    for (int round = 0; round < 3000; ++round) {
        std::string text = good;
        for (int hits = 1 + static_cast<int>(random() % 3); hits > 0; --hits) {
            const std::size_t at = random() % text.size();
            switch (random() % 4) {
            case 0:
                text[at] = static_cast<char>(random() % 256);
                break;
            case 1:
                text.erase(at, 1 + random() % 30);
                break;
            case 2:
                if (const std::size_t colon = text.find(": ", at); colon != std::string::npos)
                    text.insert(colon + 2, poison[random() % poison.size()] + ", \"x\": ");
                break;
            default:
                if (const std::size_t colon = text.find(": ", at); colon != std::string::npos)
                    text.replace(colon + 2, text.find_first_of(",}", colon) - colon - 2,
                                 poison[random() % poison.size()]);
                break;
            }
        }
        const auto result = intake(text);
        if (!result) {
            ++refused;
            EXPECT_FALSE(result.problems().front().reason.empty());
            continue;
        }
        for (const auto& [key, finding] : result->exam.findings())
            EXPECT_EQ(check(catalogue(), key, finding.value), std::nullopt);
    }
    EXPECT_GT(refused, 500);
    EXPECT_FALSE(
        intake("{\"resourceType\": \"Bundle\", \"entry\": [" + std::string(17U << 20U, ' ') + "]}").ok())
        << "too big";
    EXPECT_FALSE(intake("{}").ok());
    EXPECT_FALSE(intake(R"({"resourceType": "Bundle"})").ok()) << "holds nothing";
    std::string nested = R"({"resourceType": "Patient"})";
    for (int i = 0; i < 30; ++i)
        nested = R"({"resourceType": "Bundle", "entry": [{"resource": )" + nested + "}]}";
    EXPECT_FALSE(intake(nested).ok()) << "nested deeper than JSON may be here";
}

} // namespace
} // namespace rhizograph
