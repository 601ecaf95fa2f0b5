#include "exchange/fhir.h"
#include "exchange/patientlist.h"

#include <filesystem>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>

namespace rhizograph {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

std::string refusal(const std::string& text) {
    const auto table = parseCsv(text, "list.csv");
    return table ? "taken" : table.problems().front().text();
}

TEST(Csv, ReadsQuotedFieldsOverLinesAndEverySeparator) {
    // RFC 4180 (Shafranovich 2005), section 2: quotes, doubled quotes, line breaks within quotes.
    const auto table =
        parseCsv("\xEF\xBB\xBFname,note\r\n\"A, \"\"B\"\"\",\"two\r\nlines\"\n\n C ,\r\nlast,", "x");
    ASSERT_TRUE(table.ok());
    EXPECT_THAT(table->head, ElementsAre("name", "note"));
    ASSERT_EQ(table->rows.size(), 3U);
    EXPECT_THAT(table->rows[0].fields, ElementsAre("A, \"B\"", "two\r\nlines"));
    EXPECT_EQ(table->rows[1].line, 5);
    EXPECT_THAT(table->rows[1].fields, ElementsAre("C", ""));
    EXPECT_THAT(table->rows[2].fields, ElementsAre("last", ""));
    EXPECT_THAT(parseCsv("a;b\n1,5;2\n", "x")->rows[0].fields, ElementsAre("1,5", "2"));
    EXPECT_THAT(parseCsv("a\tb\n1;5\t2\n", "x")->rows[0].fields, ElementsAre("1;5", "2"));
}

TEST(Csv, RefusesWhatIsNoTableWithItsLine) {
    EXPECT_THAT(refusal(""), HasSubstr("is empty"));
    EXPECT_THAT(refusal("a,b\n1,2,3\n"), HasSubstr("line 2: has 3 columns, the head has 2"));
    EXPECT_THAT(refusal("a,b\n1,\"2\n"), HasSubstr("does not end"));
    EXPECT_THAT(refusal("a,b\n1,2\"3\n"), HasSubstr("quote within a field"));
    EXPECT_THAT(refusal("a,b\n1,\"2\"3\n"), HasSubstr("after a closing quote"));
    EXPECT_THAT(refusal("a,a\n"), HasSubstr("two columns are named"));
    EXPECT_THAT(refusal("a,\n"), HasSubstr("column 2 has no name"));
    EXPECT_THAT(refusal("a,b\n\xFF,2\n"), HasSubstr("line 2: is not UTF-8"));
    EXPECT_THAT(refusal(std::string{"a,b\n1,\0\n", 8}), HasSubstr("control character"));
    std::string wide = "a0";
    for (int i = 1; i < 200; ++i)
        wide += ",a" + std::to_string(i);
    EXPECT_THAT(refusal(wide), HasSubstr("more than 100 columns"));
    std::string longTable = "a\n";
    for (int i = 0; i < 50'001; ++i)
        longTable += "1\n";
    EXPECT_THAT(refusal(longTable), HasSubstr("more than 50000 rows"));
}

ListPreview previewOf(const std::string& text, DateOrder dates = DateOrder::yearMonthDay) {
    const auto table = parseCsv(text, "list.csv");
    ListMapping mapping = guessedMapping(*table);
    mapping.dates = dates;
    return previewList(*table, "list.csv", mapping, {{PatientId{"p"}, {"Old One", "7", "", "", "", ""}}});
}

TEST(PatientList, ReadsDaysOnlyInTheOrderTheyAreSaidToHave) {
    const auto born = [](const std::string& day, DateOrder order) {
        const ListPreview preview = previewOf("name,born\nA," + day + "\n", order);
        return preview.ready.empty() ? "" : preview.ready[0].identity.birthDate;
    };
    EXPECT_EQ(born("1970-04-05", DateOrder::yearMonthDay), "1970-04-05");
    EXPECT_EQ(born("05.04.1970", DateOrder::dayMonthYear), "1970-04-05");
    EXPECT_EQ(born("5/4/1970", DateOrder::monthDayYear), "1970-05-04");
    for (const char* wrong :
         {"05/04/1970", "1970-02-30", "70-04-05", "1970-4", "1970-04-05x", "-1970-04-05", "today"})
        EXPECT_EQ(born(wrong, DateOrder::yearMonthDay), "") << wrong;
    EXPECT_EQ(born("13/13/1970", DateOrder::dayMonthYear), "");
}

TEST(PatientList, EveryBadRowIsNamedAndNoneOfThemIsReady) {
    const ListPreview preview =
        previewOf("Name,Record No.,Gender,DOB\n"
                  "A,1,f,1970-01-01\n,2,m,\nC,1,,\nD,7,,\nE,5,robot,\nF,6,,1970-99-01\nG,,,\n");
    ASSERT_EQ(preview.ready.size(), 2U);
    EXPECT_EQ(preview.ready[0].identity, (Identity{"A", "1", "1970-01-01", "female", "", ""}));
    EXPECT_EQ(preview.ready[1].identity.name, "G");
    EXPECT_EQ(preview.bad, 5);
    std::string all;
    for (const Problem& problem : preview.problems)
        all += problem.text() + "\n";
    EXPECT_THAT(all, HasSubstr("line 3: has no name"));
    EXPECT_THAT(all, HasSubstr("line 4: the record number \"1\" stands in line 2 too"));
    EXPECT_THAT(all, HasSubstr("line 5: a patient of the clinic has the record number \"7\""));
    EXPECT_THAT(all, HasSubstr("line 6: \"robot\""));
    EXPECT_THAT(all, HasSubstr("line 7: \"1970-99-01\""));
    EXPECT_THAT(previewOf("a,b\n1,2\n").problems.front().reason, HasSubstr("no column is taken as the name"));
}

TEST(PatientList, AnyBytesGiveATableOrARefusal) {
    std::mt19937 random{11};
    const std::string good =
        "Name;Record number;Date of birth;Sex\n\"A; b\";1;1970-01-01;f\nC;2;1980-02-03;m\n";
    int taken = 0;
    for (int round = 0; round < 5000; ++round) {
        std::string text = good;
        for (int hits = 1 + static_cast<int>(random() % 4); hits > 0; --hits) {
            const std::size_t at = random() % text.size();
            if (random() % 3 == 0)
                text.erase(at, 1 + random() % 8);
            else
                text[at] = "\";\n,\r\t\xFF\xC3"[random() % 8];
            if (text.empty()) text = "x";
        }
        const auto table = parseCsv(text, "list.csv");
        if (!table) {
            EXPECT_FALSE(table.problems().front().place.empty());
            continue;
        }
        ++taken;
        const ListPreview preview = previewList(*table, "list.csv", guessedMapping(*table), {});
        if (!preview.problems.empty() && preview.bad == 0) continue; // the mapping itself
        EXPECT_EQ(preview.ready.size() + static_cast<std::size_t>(preview.bad), table->rows.size());
    }
    EXPECT_GT(taken, 100);
}

TEST(RecordsCsv, HoldsNoIdentityByDefaultAndOneRowAFinding) {
    const auto catalogue =
        loadCatalogue(std::filesystem::path{RHIZOGRAPH_RESOURCES} / "knowledge" / "catalogue.json");
    PatientRecord record;
    record.identity = {"Zebulon Quickthorn", "ZQ-77", "1930-01-01", "male", "", ""};
    for (const char* date : {"2026-01-05", "2026-01-19"}) {
        VisitRecord& visit = record.visits.emplace_back();
        visit.exam.date = date;
        visit.exam.subject = {96, "male"};
        visit.exam.set({ItemId{"reflex.knee"}, Side::left}, {Value::token("1"), false, "said Zebulon"});
        visit.exam.set({ItemId{"history.complaint"}, Side::none}, {Value::text("Zebulon says"), false, {}});
    }
    const std::string bare = recordsCsv({record}, *catalogue, {});
    EXPECT_EQ(std::count(bare.begin(), bare.end(), '\n'), 5);
    for (const char* name : {"Zebulon", "ZQ-77", "1930", "2026", ",96,"})
        EXPECT_EQ(bare.find(name), std::string::npos) << name;
    EXPECT_THAT(bare, HasSubstr(",14,2,90+,male,reflex.knee,Knee reflex,left,1,,abnormal,,no,left_out\r\n"));
    const std::string full = recordsCsv({record}, *catalogue, {true, true});
    EXPECT_THAT(
        full,
        HasSubstr(
            "ZQ-77,2026-01-19,2,96,male,reflex.knee,Knee reflex,left,1,,abnormal,,no,said Zebulon\r\n"));
}

} // namespace
} // namespace rhizograph
